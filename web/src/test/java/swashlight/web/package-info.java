/** The page's modules: what they import is there, and imports only look up. */
package swashlight.web;
