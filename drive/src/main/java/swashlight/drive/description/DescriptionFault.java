package swashlight.drive.description;

import java.util.List;

/** A description that cannot be a drive; carries every {@link Complaint} found. */
public final class DescriptionFault extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final transient List<Complaint> complaints;

    DescriptionFault(List<Complaint> complaints) {
        super(join(complaints));
        this.complaints = List.copyOf(complaints);
    }

    /** Everything wrong, in the order of the parameters. */
    public List<Complaint> complaints() {
        return complaints;
    }

    private static String join(List<Complaint> complaints) {
        StringBuilder text = new StringBuilder();
        for (Complaint complaint : complaints) {
            text.append(text.length() == 0 ? "" : "; ")
                    .append(complaint.field())
                    .append(": ")
                    .append(complaint.text());
        }
        return text.toString();
    }
}
