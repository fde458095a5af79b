package swashlight.browser;

import java.util.List;
import java.util.function.Function;
import org.teavm.jso.JSExport;

/** Keys with their units and meanings, in one order. */
public final class PageWords {
    private final String[] keys;
    private final String[] units;
    private final String[] meanings;

    private PageWords(String[] keys, String[] units, String[] meanings) {
        this.keys = keys;
        this.units = units;
        this.meanings = meanings;
    }

    static <T> PageWords of(
            List<? extends T> things, Function<T, String> key, Function<T, String> unit, Function<T, String> meaning) {
        return new PageWords(texts(things, key), texts(things, unit), texts(things, meaning));
    }

    static <T> String[] texts(List<? extends T> things, Function<T, String> text) {
        return things.stream().map(text).toArray(String[]::new);
    }

    /** Stable keys. */
    @JSExport
    public String[] keys() {
        return keys.clone();
    }

    /** SI units as text. */
    @JSExport
    public String[] units() {
        return units.clone();
    }

    /** One plain line each. */
    @JSExport
    public String[] meanings() {
        return meanings.clone();
    }
}
