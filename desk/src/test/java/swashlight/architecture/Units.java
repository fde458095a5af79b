package swashlight.architecture;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** The closed list of units that physics and findings may use, and how they are recognised in a line of Javadoc. */
final class Units {
    /** SI as the house writes it; {@code 1} is the unit of a ratio, a count and a probability. Add one when a law needs it. */
    static final Set<String> KNOWN = Set.of(
            "1",
            "m",
            "m²",
            "m³",
            "m⁴",
            "m⁵",
            "1/m",
            "1/m³",
            "s",
            "1/s",
            "Hz",
            "rad",
            "1/rad",
            "rad/s",
            "rad/s²",
            "m/s",
            "m/s²",
            "m²/s",
            "m³/s",
            "m³/s²",
            "m³/rad",
            "m³/rev",
            "kg",
            "kg·m²",
            "kg/m³",
            "kg/s",
            "N",
            "N·m",
            "N·s",
            "N/m",
            "N·s/m",
            "N·m/rad",
            "N·m·s",
            "N·m·s/rad",
            "Pa",
            "1/Pa",
            "Pa/s",
            "Pa·s",
            "Pa/K",
            "Pa/m³",
            "Pa·s/m³",
            "m³/Pa",
            "m³/(s·Pa)",
            "m³/(Pa·s)",
            "m³·Pa",
            "m/Pa",
            "J",
            "W",
            "K",
            "1/K",
            "K/s",
            "J/K",
            "W/K",
            "K/W",
            "J/kg",
            "J/(kg·K)",
            "W/(m·K)",
            "W/(m²·K)",
            "W/(m²·K⁴)",
            "W·s/(K·rad)",
            "mm²/s",
            "nat",
            "1/h");

    /** For a number whose unit goes with it, such as the value of any parameter in that parameter's own unit. */
    static final List<String> OWN = List.of("own unit", "SI unit of");

    private Units() {}

    /** Whether one of the words of the text is a known unit, or it says that the number's unit goes with it. */
    static boolean saidIn(String text) {
        return OWN.stream().anyMatch(text::contains)
                || Arrays.stream(text.split("\\s+")).anyMatch(Units::isUnit);
    }

    /** "(m³/(s·Pa))," opens with one bracket too many and ends with one: its edges are taken off one by one. */
    private static boolean isUnit(String word) {
        String rest = word.replaceAll("^[(\\[\"'`{]+", "");
        while (!rest.isEmpty() && !KNOWN.contains(rest)) {
            boolean punctuation = ")]\"'`}.,;:".indexOf(rest.charAt(rest.length() - 1)) >= 0;
            rest = punctuation ? rest.substring(0, rest.length() - 1) : "";
        }
        return !rest.isEmpty();
    }

    /** Whether a line speaks of a name such as {@code boreClearance}: it has it, or a word that begins with each of its words. */
    static boolean speaksOf(String line, String name) {
        List<String> words = Arrays.asList(line.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+"));
        if (words.contains(name.toLowerCase(Locale.ROOT))) return true;
        return Arrays.stream(name.split("(?<=[a-z0-9])(?=[A-Z])"))
                .map(part -> part.toLowerCase(Locale.ROOT))
                .allMatch(part -> words.stream().anyMatch(word -> word.startsWith(part)));
    }
}
