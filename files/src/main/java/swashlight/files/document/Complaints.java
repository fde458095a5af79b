package swashlight.files.document;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What is wrong with one file, while it is being read. */
public final class Complaints {
    private static final int MOST = 200; // more help nobody

    private final String file;
    private final List<FileComplaint> found = new ArrayList<>();

    /** Nothing wrong yet with the file of that name. */
    public Complaints(String file) {
        this.file = file;
    }

    /** The file's name. */
    public String file() {
        return file;
    }

    /** Notes a complaint. */
    public void add(String key, Spot spot, String field, String given, String wrong, String right) {
        if (found.size() < MOST) {
            found.add(new FileComplaint(key, file, spot.line(), spot.column(), field, given, wrong, right));
        }
    }

    /** Takes over what was found in another file that this one names. */
    public void addAll(List<FileComplaint> others) {
        found.addAll(others.subList(0, Math.min(others.size(), Math.max(0, MOST - found.size()))));
    }

    /** True while nothing is wrong. */
    public boolean none() {
        return found.isEmpty();
    }

    /** How many there are so far, unit 1. */
    public int count() {
        return found.size();
    }

    /** Stops here if anything was found. */
    public void check() {
        if (!found.isEmpty()) {
            throw fault();
        }
    }

    /** All that was found, as a fault to throw. */
    public InputFault fault() {
        List<FileComplaint> sorted = new ArrayList<>(found);
        sorted.sort(Comparator.comparing(
                        (FileComplaint complaint) -> !complaint.file().equals(file))
                .thenComparingInt(FileComplaint::line)
                .thenComparingInt(FileComplaint::column));
        return new InputFault(sorted);
    }
}
