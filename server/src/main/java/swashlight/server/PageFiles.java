package swashlight.server;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The files of the page: their names, and one version of them all, which changes with any byte of any of them. Found where the class path has
 * them, in a jar or in folders.
 */
final class PageFiles {
    private static final String ROOT = "META-INF/resources";
    /** Letters of the version: enough never to meet twice, short enough to read. */
    private static final int VERSION_LETTERS = 16;

    private final List<String> names;
    private final String version;

    private PageFiles(Map<String, byte[]> files) {
        names = List.copyOf(files.keySet());
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            files.forEach((name, bytes) -> {
                digest.update(name.getBytes(StandardCharsets.UTF_8));
                digest.update(bytes);
            });
            version = HexFormat.of().formatHex(digest.digest()).substring(0, VERSION_LETTERS);
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("every Java has SHA-256", missing);
        }
    }

    /** Looks through the class path. */
    static PageFiles find() {
        Map<String, byte[]> files = new TreeMap<>();
        try {
            ClassLoader loader = Thread.currentThread().getContextClassLoader();
            for (URL root : Collections.list(loader.getResources(ROOT))) {
                if (root.getProtocol().equals("jar")) {
                    URI jar = URI.create(
                            root.toString().substring(0, root.toString().indexOf("!/")));
                    try (FileSystem opened = FileSystems.newFileSystem(jar, Map.of())) {
                        collect(opened.getPath(ROOT), files);
                    }
                } else {
                    collect(Path.of(root.toURI()), files);
                }
            }
        } catch (IOException broken) {
            throw new UncheckedIOException("the page's files cannot be read", broken);
        } catch (URISyntaxException broken) {
            throw new IllegalStateException("the page's files lie at no address", broken);
        }
        return new PageFiles(files);
    }

    private static void collect(Path root, Map<String, byte[]> files) throws IOException {
        try (Stream<Path> all = Files.walk(root)) {
            for (Path file : (Iterable<Path>) all.filter(Files::isRegularFile)::iterator) {
                String name = root.relativize(file).toString().replace('\\', '/');
                files.putIfAbsent(name, Files.readAllBytes(file));
            }
        }
    }

    /** Below the root, in order. */
    List<String> names() {
        return names;
    }

    String version() {
        return version;
    }

    /** Text of one of them. */
    static String text(String name) {
        try (var stream = Thread.currentThread().getContextClassLoader().getResourceAsStream(ROOT + "/" + name)) {
            if (stream == null) {
                throw new IllegalStateException("the page has no file " + name);
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException("the page's file " + name + " cannot be read", broken);
        }
    }
}
