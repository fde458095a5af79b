package swashlight.desk.line;

import picocli.CommandLine.Option;

/** For answers that are a table. */
final class TableOptions {
    @Option(names = "--csv")
    boolean csv;
}
