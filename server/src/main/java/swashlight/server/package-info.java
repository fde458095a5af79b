/** The page's server: files of the page with their headers, demo drives, nothing else. Started by one command, by no other. */
package swashlight.server;
