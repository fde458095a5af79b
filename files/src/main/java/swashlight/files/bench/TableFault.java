package swashlight.files.bench;

import java.util.List;
import java.util.stream.Collectors;

/** A table that cannot be read, with every fault found in it. */
public final class TableFault extends IllegalArgumentException {
    private static final long serialVersionUID = 1;
    private static final int MOST_SHOWN = 20;

    private final transient List<Fault> faults;

    /**
     * One fault.
     *
     * @param key stable name: no-header, missing-column, not-a-number, out-of-range, unknown-unit, no-rows, short-row
     * @param file name of the file
     * @param line line in the file, from 1
     * @param field column
     * @param given what stands there
     * @param right what would be right
     */
    public record Fault(String key, String file, long line, String field, String given, String right) {
        /** The fault as one sentence. */
        public String text() {
            return file + ", line " + line + ", " + field + ": \"" + given + "\"; " + right;
        }
    }

    /**
     * A table with faults.
     *
     * @param faults at least one
     */
    public TableFault(List<Fault> faults) {
        super(faults.stream().limit(MOST_SHOWN).map(Fault::text).collect(Collectors.joining("\n"))
                + (faults.size() > MOST_SHOWN ? "\nand " + (faults.size() - MOST_SHOWN) + " more" : ""));
        this.faults = List.copyOf(faults);
    }

    /** All of them, in the order of the file. */
    public List<Fault> faults() {
        return faults;
    }
}
