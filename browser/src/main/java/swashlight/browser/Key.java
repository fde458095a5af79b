package swashlight.browser;

import java.util.Collection;

/** Keys of constants: small letters and underscores, as in traces. */
final class Key {
    private Key() {}

    static String of(Enum<?> constant) {
        String name = constant.name();
        StringBuilder key = new StringBuilder();
        for (int i = 0; i < name.length(); i++) {
            char letter = name.charAt(i);
            key.append(letter >= 'A' && letter <= 'Z' ? (char) (letter + 'a' - 'A') : letter);
        }
        return key.toString();
    }

    static String[] all(Collection<? extends Enum<?>> constants) {
        return constants.stream().map(Key::of).toArray(String[]::new);
    }

    /** The constant of a key. */
    static <E extends Enum<E>> E find(E[] constants, String key, String what) {
        StringBuilder all = new StringBuilder();
        for (E constant : constants) {
            String own = of(constant);
            if (own.equals(key)) {
                return constant;
            }
            all.append(all.isEmpty() ? "" : ", ").append(own);
        }
        throw new IllegalArgumentException("there is no " + what + " " + key + "; there are " + all);
    }
}
