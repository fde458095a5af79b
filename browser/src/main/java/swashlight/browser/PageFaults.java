package swashlight.browser;

import java.util.List;
import org.teavm.jso.JSExport;
import swashlight.drive.fault.Fault;

/** All single faults. */
public final class PageFaults {
    private final List<Fault> all;

    PageFaults(List<Fault> all) {
        this.all = all;
    }

    /** Stable keys: {@code pump-face-worn}. */
    @JSExport
    public String[] keys() {
        return PageWords.texts(all, Fault::key);
    }

    /** Where in the drive, as keys. */
    @JSExport
    public String[] places() {
        return PageWords.texts(all, fault -> Key.of(fault.place()));
    }

    /** One plain line each. */
    @JSExport
    public String[] meanings() {
        return PageWords.texts(all, Fault::meaning);
    }

    /** What each severity measures. */
    @JSExport
    public String[] severityMeanings() {
        return PageWords.texts(all, Fault::severityMeaning);
    }

    /** SI units of the severities. */
    @JSExport
    public String[] units() {
        return PageWords.texts(all, fault -> fault.dimension().unit());
    }

    /** Smallest severities worth calling a fault, SI. */
    @JSExport
    public double[] least() {
        return all.stream().mapToDouble(Fault::least).toArray();
    }

    /** Middle severities of units that come back, SI. */
    @JSExport
    public double[] usual() {
        return all.stream().mapToDouble(Fault::usual).toArray();
    }

    /** Largest severities considered, SI; equal to the least where a fault is there or is not. */
    @JSExport
    public double[] most() {
        return all.stream().mapToDouble(Fault::most).toArray();
    }
}
