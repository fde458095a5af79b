package swashlight.files.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import swashlight.files.document.Syntax;
import swashlight.files.document.TreeText;

/** Spoils a text: its bytes, or a value or key of its tree. Everything follows from the seed. */
final class Mutator {
    private static final List<String> SPLINTERS = List.of(
            "{",
            "}",
            "[",
            "]",
            ":",
            ": ",
            ",",
            "\"",
            "'",
            "- ",
            "? ",
            "| ",
            "> ",
            "#",
            "&a ",
            "*a",
            "!!int ",
            "!x ",
            "%YAML 1.1\n",
            "---\n",
            "...\n",
            "\t",
            "\n",
            "\r\n",
            "\u0000",
            "\u0007",
            "\uFEFF",
            "\u2028",
            "🙂",
            "<<: ",
            "~",
            "null",
            "true",
            "\\u0041",
            "\\",
            "@",
            "`",
            "[[[[[[[[[[[[[[[[[[[[[[[[[[",
            "{a: {a: {a: {a: {a: {a: {a: {a: {a: {a: {a: {a: ",
            "\"\\ud800\"");
    private static final List<Object> ODD_VALUES = List.of(
            "",
            " ",
            "7",
            "-7",
            "0",
            "1e999 m",
            "1e-999 m",
            "-0",
            "1e308 bar",
            "NaN",
            "Infinity",
            "7.1 cm3/rev",
            "3000 rpm",
            "12 in",
            "10 %",
            "5 ± 1 deg",
            "5 ± -1 deg",
            "±",
            "5 ±",
            "± 5",
            "80 °C",
            "-300 °C",
            "20 s",
            "9 km/h",
            "0.3 kN",
            "7,1 mm",
            "1 000 rpm",
            "007 m",
            "12 mmmmm",
            "9".repeat(60) + " m",
            "0." + "0".repeat(60) + "1 m",
            "x".repeat(300),
            "demo:light-rider",
            "demo:",
            "demo:x",
            "../x.yaml",
            "/",
            "\u0000",
            "pump.boreClearance",
            "SAE 30",
            "forward",
            "running",
            "lifted",
            "oilDark",
            true,
            false,
            7,
            -1.5,
            1e300,
            Map.of(),
            List.of(),
            List.of("a", List.of(1)),
            Map.of("value", "3 mm"),
            Map.of("value", "3 mm", "spread", "1 mm"),
            Map.of("value", Map.of("value", "3 mm")),
            Map.of("spread", "1 mm", "origin", "fitted"));

    private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?");

    private final Random random;
    private final List<String> keys;

    Mutator(long seed, List<String> keys) {
        this.random = new Random(seed);
        this.keys = keys;
    }

    /** The bytes of a text with one to five of them, or splinters among them, spoilt. */
    byte[] bytes(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        for (int i = random.nextInt(3); i >= 0; i--) {
            bytes = once(bytes);
        }
        return bytes;
    }

    private byte[] once(byte[] bytes) {
        int at = random.nextInt(bytes.length + 1);
        int length = Math.min(bytes.length - at, random.nextInt(20));
        return switch (random.nextInt(6)) {
            case 0 -> joined(bytes, at, splinter(), at);
            case 1 -> joined(bytes, at, new byte[0], at + length);
            case 2 -> joined(bytes, at, Arrays.copyOfRange(bytes, at, at + length), at);
            case 3 ->
                joined(
                        bytes,
                        at,
                        new byte[] {(byte) random.nextInt(random.nextInt(8) == 0 ? 256 : 128)},
                        Math.min(bytes.length, at + 1));
            case 4 -> joined(bytes, at, splinter(), at + length);
            default -> {
                int from = random.nextInt(bytes.length + 1);
                int span = Math.min(bytes.length - from, random.nextInt(60));
                yield joined(bytes, at, Arrays.copyOfRange(bytes, from, from + span), at);
            }
        };
    }

    private byte[] splinter() {
        return SPLINTERS.get(random.nextInt(SPLINTERS.size())).getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] joined(byte[] bytes, int end, byte[] middle, int start) {
        byte[] joined = Arrays.copyOf(bytes, end + middle.length + bytes.length - start);
        System.arraycopy(middle, 0, joined, end, middle.length);
        System.arraycopy(bytes, start, joined, end + middle.length, bytes.length - start);
        return joined;
    }

    /** A tree with one to four of its values or keys changed, as text. */
    byte[] tree(Map<String, Object> tree, Syntax syntax) {
        Map<String, Object> changed = copy(tree);
        for (int i = random.nextInt(4); i >= 0; i--) {
            change(changed);
        }
        return TreeText.of(changed, syntax).getBytes(StandardCharsets.UTF_8);
    }

    @SuppressWarnings("unchecked")
    private void change(Map<String, Object> map) {
        if (map.isEmpty()) {
            map.put(key(), odd());
            return;
        }
        String key = new ArrayList<>(map.keySet()).get(random.nextInt(map.size()));
        Object value = map.get(key);
        if (value instanceof Map && random.nextInt(5) > 0) {
            change((Map<String, Object>) value);
        } else if (value instanceof List<?> list && !list.isEmpty() && random.nextInt(5) > 0) {
            Object item = list.get(random.nextInt(list.size()));
            if (item instanceof Map) {
                change((Map<String, Object>) item);
            } else {
                map.put(key, List.of(odd()));
            }
        } else {
            switch (random.nextInt(9)) {
                case 0 -> map.remove(key);
                case 3, 4, 5, 6 -> map.put(key, scaled(value));
                case 1 -> map.put(key(), odd());
                case 2 -> {
                    map.remove(key);
                    map.put(key.substring(random.nextInt(Math.max(1, key.length()))) + "x", value);
                }
                default -> map.put(key, odd());
            }
        }
    }

    /** The same text with its number made larger or smaller, mostly a little. */
    private Object scaled(Object value) {
        Matcher number = NUMBER.matcher(String.valueOf(value));
        if (!number.find()) {
            return odd();
        }
        double factor = Math.exp(random.nextGaussian() * (random.nextInt(4) == 0 ? 4 : 0.4));
        return number.replaceFirst(String.valueOf(Double.parseDouble(number.group()) * factor));
    }

    private String key() {
        return keys.get(random.nextInt(keys.size()));
    }

    private Object odd() {
        Object odd = ODD_VALUES.get(random.nextInt(ODD_VALUES.size()));
        return odd instanceof Map || odd instanceof List ? copyOf(odd) : odd;
    }

    static Map<String, Object> copy(Map<String, Object> map) {
        Map<String, Object> copy = new LinkedHashMap<>();
        map.forEach((key, value) -> copy.put(key, copyOf(value)));
        return copy;
    }

    @SuppressWarnings("unchecked")
    private static Object copyOf(Object value) {
        if (value instanceof Map) {
            return copy((Map<String, Object>) value);
        }
        return value instanceof List<?> list
                ? new ArrayList<>(list.stream().map(Mutator::copyOf).toList())
                : value;
    }
}
