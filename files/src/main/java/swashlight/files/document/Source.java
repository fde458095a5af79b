package swashlight.files.document;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A text with the name of its file, and the folder beside it where other files may be named.
 *
 * @param file name for messages
 * @param text the content
 * @param folder where relative names are looked for; empty: no other file may be named
 */
public record Source(String file, String text, Optional<Path> folder) {
    /** Bytes in the largest file that is read, unit 1: a hundred times the largest sensible one. */
    public static final int MOST_BYTES = 1 << 20;

    private static final String BYTE_ORDER_MARK = "\uFEFF";

    /** A text that came from elsewhere: it may name no other file. */
    public static Source of(String file, String text) {
        return new Source(file, text, Optional.empty());
    }

    /** A file on disk; throws {@link InputFault} when there is none or it cannot be text. */
    public static Source read(Path path) {
        String name = path.toString();
        byte[] bytes;
        try (InputStream stream = Files.newInputStream(path)) {
            bytes = stream.readNBytes(MOST_BYTES + 1);
        } catch (IOException | SecurityException broken) {
            boolean there = Files.exists(path);
            throw fault(
                    "not-found",
                    name,
                    there ? "the file cannot be opened" : "there is no such file",
                    "name a file that can be read");
        }
        return new Source(
                name, decoded(name, bytes), Optional.of(path.toAbsolutePath().getParent()));
    }

    /** A path as somebody wrote it; throws {@link InputFault} when it cannot be one. */
    public static Path path(String text) {
        try {
            return Path.of(text);
        } catch (InvalidPathException broken) {
            throw fault("not-found", text, "this cannot be the name of a file", "name a file that can be read");
        }
    }

    /** Bytes that came from elsewhere, UTF-8; throws {@link InputFault} when they cannot be text. */
    public static Source of(String file, byte[] bytes) {
        return of(file, decoded(file, bytes));
    }

    private static String decoded(String name, byte[] bytes) {
        if (bytes.length > MOST_BYTES) {
            throw fault("too-large", name, "the file is larger than 1 MiB", "a description has some kilobytes");
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
        } catch (CharacterCodingException broken) {
            throw fault("not-text", name, "the file is not UTF-8 text", "save it as text in UTF-8");
        }
    }

    private static InputFault fault(String key, String file, String wrong, String right) {
        Complaints complaints = new Complaints(file);
        complaints.add(key, Spot.START, "", "", wrong, right);
        return complaints.fault();
    }
}
