/**
 * The published JSON Schemas of the files, made from the same lists the readers use.
 *
 * <p>Idea: an editor that knows a schema completes keys and marks slips while typing; what a reader accepts a schema accepts, and the
 * reader has the last word. Imports the other packages of this room. Begin with {@code Schemas}; the made files stand in {@code
 * docs/schema}.
 */
package swashlight.files.schema;
