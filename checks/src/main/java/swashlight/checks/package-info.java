/**
 * Published values as data: each theme is one CSV file of rows, each row one number from a book, standard or paper.
 * The idea: the numbers stand outside any language, so the JVM, the browser and a peer program run the same book.
 * Imports nothing but the JDK. A row knows its inputs in SI, what is expected, how closely, why that closely and who says so.
 * The laws that answer the rows live elsewhere (in tests); rows still waiting for a law are listed in {@code later.csv}.
 * Begin at {@link swashlight.checks.CheckBook}.
 */
package swashlight.checks;
