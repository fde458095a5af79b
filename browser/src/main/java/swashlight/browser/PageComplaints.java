package swashlight.browser;

import java.util.List;
import org.teavm.jso.JSExport;
import swashlight.drive.description.Complaint;
import swashlight.drive.description.DescriptionFault;

/** What is wrong with a drive that cannot be, for pages that say it in their own words; none when it can be. */
public final class PageComplaints {
    private final List<Complaint> all;

    private PageComplaints(List<Complaint> all) {
        this.all = all;
    }

    static PageComplaints about(Runnable making) {
        try {
            making.run();
            return new PageComplaints(List.of());
        } catch (DescriptionFault fault) {
            return new PageComplaints(fault.complaints());
        }
    }

    /** Stable names of what is wrong: out-of-range, radii-order, … */
    @JSExport
    public String[] keys() {
        return PageWords.texts(all, Complaint::key);
    }

    /** Keys of the parameters at fault. */
    @JSExport
    public String[] fields() {
        return PageWords.texts(all, Complaint::field);
    }

    /** What stands there, SI. */
    @JSExport
    public double[] given() {
        return all.stream().mapToDouble(Complaint::given).toArray();
    }

    /** Least values that would be right, SI. */
    @JSExport
    public double[] lows() {
        return all.stream().mapToDouble(Complaint::low).toArray();
    }

    /** Greatest values that would be right, SI; the largest number there is where there is no limit. */
    @JSExport
    public double[] highs() {
        return all.stream().mapToDouble(Complaint::high).toArray();
    }
}
