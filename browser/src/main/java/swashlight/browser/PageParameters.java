package swashlight.browser;

import java.util.List;
import org.teavm.jso.JSExport;
import swashlight.drive.description.Parameter;

/** All parameters of a drive, in the order of its values. */
public final class PageParameters {
    private final List<Parameter> all;

    PageParameters(List<Parameter> all) {
        this.all = all;
    }

    /** Section and name: {@code pump.boreClearance}. */
    @JSExport
    public String[] keys() {
        return PageWords.texts(all, Parameter::key);
    }

    /** SI units as text. */
    @JSExport
    public String[] units() {
        return PageWords.texts(all, parameter -> parameter.dimension().unit());
    }

    /** One plain line each. */
    @JSExport
    public String[] meanings() {
        return PageWords.texts(all, Parameter::meaning);
    }

    /** Least allowed values, SI. */
    @JSExport
    public double[] lows() {
        return all.stream().mapToDouble(Parameter::low).toArray();
    }

    /** Greatest allowed values, SI. */
    @JSExport
    public double[] highs() {
        return all.stream().mapToDouble(Parameter::high).toArray();
    }
}
