/** The page, looked at in a real browser on the real server: a visit, what it complains of, and what it is asked. */
package swashlight.server.look;
