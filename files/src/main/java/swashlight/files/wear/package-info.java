/**
 * Teardowns and what a drive's papers say about its parts, in files.
 *
 * <p>Begin with {@link swashlight.files.wear.TeardownFiles}. Imports findings, {@code document}, {@code drive}, {@code machine}.
 */
package swashlight.files.wear;
