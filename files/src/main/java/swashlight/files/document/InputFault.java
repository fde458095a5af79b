package swashlight.files.document;

import java.util.List;
import java.util.stream.Collectors;

/** A file that cannot be used as it is: every {@link FileComplaint} found in it, in the order of its lines. */
public final class InputFault extends IllegalArgumentException {
    private static final long serialVersionUID = 1;
    private static final int MOST_SHOWN = 20;

    private final transient List<FileComplaint> complaints;

    /** A fault with at least one complaint. */
    public InputFault(List<FileComplaint> complaints) {
        super(text(complaints), null);
        this.complaints = List.copyOf(complaints);
    }

    /** All of them. */
    public List<FileComplaint> complaints() {
        return complaints;
    }

    private static String text(List<FileComplaint> complaints) {
        int more = complaints.size() - MOST_SHOWN;
        return complaints.stream().limit(MOST_SHOWN).map(FileComplaint::text).collect(Collectors.joining("\n"))
                + (more > 0 ? "\nand " + more + " more" : "");
    }
}
