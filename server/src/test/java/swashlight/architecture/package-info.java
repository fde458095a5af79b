/** Where the room stands in the house. */
package swashlight.architecture;
