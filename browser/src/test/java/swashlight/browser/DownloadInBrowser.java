package swashlight.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;

/** What a page has to fetch before it can compute. */
final class DownloadInBrowser {
    private static final int AT_MOST = 300_000; // bytes, compressed
    private static final Path PHYSICS = Path.of(System.getProperty("physics.directory"));

    @Test
    void webAssemblyWithItsRuntimeIsSmall() throws IOException {
        report("WebAssembly", "physics.js", "loading.js", "swashlight.wasm-runtime.js", "swashlight.wasm");
    }

    @Test
    void javaScriptIsSmall() throws IOException {
        report("JavaScript", "physics.js", "loading.js", "swashlight-fallback.js");
    }

    @Test
    void theDiagnosisIsSmallToo() throws IOException {
        String runtime = "swashlight.wasm-runtime.js";
        report("diagnosis, WebAssembly", "diagnosis.js", "loading.js", runtime, "diagnosis.wasm");
        report("diagnosis, JavaScript", "diagnosis.js", "loading.js", "diagnosis-fallback.js");
    }

    private static void report(String what, String... files) throws IOException {
        int whole = 0;
        int small = 0;
        for (String file : files) {
            byte[] bytes = Files.readAllBytes(PHYSICS.resolve(file));
            whole += bytes.length;
            small += compressed(bytes);
        }
        System.out.printf("%s: %d bytes, %d compressed (gzip)%n", what, whole, small);
        assertThat(small).as(what + ", bytes compressed").isLessThan(AT_MOST);
    }

    private static int compressed(byte[] bytes) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(out)) {
            gzip.write(bytes);
        }
        return out.size();
    }
}
