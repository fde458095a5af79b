/**
 * The invented drives and machine cases that come along, as texts.
 *
 * <p>Idea: a shelf of resources by name, read by the same readers as anybody's files. Imports files.document. Begin with
 * {@code DemoShelf}.
 */
package swashlight.files.demo;
