/**
 * A YAML or JSON text as a tree whose every value knows its line, and what is wrong with it as values.
 *
 * <p>Idea: one small tree for both formats, made within sane limits; readers ask its {@link swashlight.files.document.Fields} and
 * gather every complaint before they stop. Imports files.unit and Jackson. Begin with {@code DocumentReader} and {@code InputFault}.
 */
package swashlight.files.document;
