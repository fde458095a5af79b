/**
 * The command line: words in, {@link swashlight.desk.work.Desk} asked, text, tables, JSON or pictures out.
 *
 * <p>Idea: one small class a command, loaded only when it is called, so that help is quick; what a command line looks like is picocli's
 * business, what the answer is that of work. Imports work, report, text, picture, picocli. Begin with {@code Swashlight}.
 */
package swashlight.desk.line;
