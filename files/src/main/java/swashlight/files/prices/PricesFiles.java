package swashlight.files.prices;

import java.nio.file.Path;
import java.util.List;
import swashlight.files.document.Complaints;
import swashlight.files.document.DocumentReader;
import swashlight.files.document.Fields;
import swashlight.files.document.InputFault;
import swashlight.files.document.Range;
import swashlight.files.document.Source;
import swashlight.findings.cost.Prices;

/** A workshop's prices in a file. */
public final class PricesFiles {
    private static final int LONGEST_ABOUT = 5000; // characters

    private PricesFiles() {}

    /** The prices in a file; throws {@link InputFault} with every fault of it. */
    public static Prices read(Path path) {
        return open(Source.read(path));
    }

    /** The prices in a text; throws {@link InputFault} with every fault of it. */
    public static Prices open(Source source) {
        Complaints complaints = new Complaints(source.file());
        Prices prices = new PricesReader(new Fields(DocumentReader.read(source, complaints), "", complaints)).read();
        complaints.check();
        return prices;
    }

    /** What a price list that comes along says about itself. */
    public static String about(Source source) {
        Complaints complaints = new Complaints(source.file());
        return new Fields(DocumentReader.read(source, complaints), "", complaints)
                .text("about", LONGEST_ABOUT)
                .orElse("");
    }

    /** How long work may take. */
    public static Range time() {
        return PricesReader.TIME;
    }

    /** What a chance may be. */
    public static Range chance() {
        return PricesReader.CHANCE;
    }

    /** Names of the readings whose time may be stated. */
    public static List<String> readings() {
        return Reads.KEYS;
    }
}
