/** What the command line asks of a server, so that it need not know which one there is. */
package swashlight.desk.door;
