package swashlight.server;

import io.vertx.core.MultiMap;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a browser may do with the page: run its own scripts, fetch from where it came, nothing else (Content Security Policy Level 3). The one
 * inline script is the import map, allowed by its hash; the physics' worker may build functions from text, which WebAssembly's runtime needs.
 */
final class Policy {
    private static final Pattern IMPORT_MAP =
            Pattern.compile("<script type=\"importmap\">(.*?)</script>", Pattern.DOTALL);
    private static final String WORKER =
            "default-src 'none'; script-src 'self' 'unsafe-eval'; connect-src 'self'; frame-ancestors 'none'";

    private final String page;

    Policy(String html) {
        page = "default-src 'none'; script-src 'self' " + hashes(html)
                + "; style-src 'self'; img-src 'self' data: blob:; "
                + "connect-src 'self'; worker-src 'self'; manifest-src 'self'; base-uri 'none'; form-action 'none'; "
                + "frame-ancestors 'none'";
    }

    /** Sets the headers of one answer. */
    void apply(MultiMap headers, String path) {
        headers.set("Content-Security-Policy", path.endsWith("/page/engine/worker.js") ? WORKER : page);
        headers.set("X-Content-Type-Options", "nosniff");
        headers.set("Referrer-Policy", "no-referrer");
        headers.set("Cross-Origin-Opener-Policy", "same-origin");
        headers.set("Cross-Origin-Resource-Policy", "same-origin");
    }

    private static String hashes(String html) {
        StringBuilder hashes = new StringBuilder();
        Matcher maps = IMPORT_MAP.matcher(html);
        while (maps.find()) {
            hashes.append("'sha256-").append(sha256(maps.group(1))).append("' ");
        }
        return hashes.toString().trim();
    }

    private static String sha256(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return Base64.getEncoder().encodeToString(hash);
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("every Java has SHA-256", missing);
        }
    }
}
