/**
 * The architecture of the house, as tests that read as prose. Begin at {@link swashlight.architecture.RoomsTest}.
 */
package swashlight.architecture;
