package swashlight.desk.line;

import picocli.CommandLine.Option;

/** For answers that can be drawn. */
final class PictureOptions {
    @Option(names = "--svg", paramLabel = "FILE")
    String svg;

    @Option(names = "--png", paramLabel = "FILE")
    String png;
}
