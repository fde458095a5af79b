package swashlight.desk.work;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;

/** Files that are written because somebody asked for them. */
public final class Paper {
    private Paper() {}

    /** Writes a text; the refusals where it cannot be written. */
    public static List<Refusal> write(Path file, String text) {
        return write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    /** Writes bytes, the whole file or none of it; the refusals where they cannot be written. */
    public static List<Refusal> write(Path file, byte[] bytes) {
        try {
            if (Files.exists(file) && !Files.isRegularFile(file)) { // a pipe or a device
                Files.write(file, bytes);
                return List.of();
            }
            Path real = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
            Path half = real.resolveSibling("." + real.getFileName() + ".part");
            half.toFile().deleteOnExit(); // also when somebody stops the program meanwhile
            try {
                Files.write(half, bytes);
                Files.move(half, real, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(half);
            }
            return List.of();
        } catch (IOException | SecurityException broken) {
            Path folder = file.toAbsolutePath().getParent();
            boolean noFolder = folder != null && !Files.isDirectory(folder);
            return List.of(new Refusal(
                    "not-writable",
                    file.toString(),
                    "",
                    noFolder ? "there is no folder " + folder : "this file cannot be written",
                    noFolder ? "make the folder first" : "name another file"));
        }
    }
}
