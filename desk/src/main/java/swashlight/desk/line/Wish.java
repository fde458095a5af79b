package swashlight.desk.line;

import java.nio.file.Path;
import java.util.Optional;
import swashlight.files.unit.UnitSystem;

/**
 * How an answer is wanted.
 *
 * @param form text, JSON or CSV
 * @param units of all numbers
 * @param out file for the answer; empty for standard output
 * @param svg file for the picture as drawing
 * @param png file for the picture as image
 */
record Wish(Form form, UnitSystem units, Optional<Path> out, Optional<Path> svg, Optional<Path> png) {
    /** What the answer is written as. */
    enum Form {
        TEXT,
        JSON,
        CSV
    }

    static Wish of(
            Session session, OutputOptions output, Optional<TableOptions> table, Optional<PictureOptions> picture) {
        boolean csv = table.map(options -> options.csv).orElse(false);
        return new Wish(
                output.json ? Form.JSON : csv ? Form.CSV : Form.TEXT,
                output.units.system(),
                Optional.ofNullable(output.out).map(session::file),
                picture.flatMap(options -> Optional.ofNullable(options.svg)).map(session::file),
                picture.flatMap(options -> Optional.ofNullable(options.png)).map(session::file));
    }
}
