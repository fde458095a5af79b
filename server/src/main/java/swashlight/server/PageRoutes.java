package swashlight.server;

import io.netty.handler.codec.http.HttpResponseStatus;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpServerResponse;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Collectors;

/**
 * What is answered to which address. Files lie below their version ({@code /v/…/page/main.js}) and may be kept for a year, since another byte
 * means another version; the first page, the drives and the list of files are asked for anew each time.
 */
@ApplicationScoped
final class PageRoutes {
    private static final String BELOW = "/v/";
    private static final String FOREVER = "public, max-age=31536000, immutable";
    private static final String ASK = "no-cache";
    /** In a request: whether its answer may be kept for good. */
    private static final String KEPT = "kept";

    private static final int HEADERS_FIRST = 1000;
    /** Not needed to look into a drive, so not kept for offline. */
    private static final List<String> NOT_KEPT =
            List.of("index.html", "sw.js", "physics/diagnosis", "LICENSE", ".d.ts", ".schema.json");

    private final PageFiles files = PageFiles.find();
    private final String version = BELOW + files.version();
    private final String html = versioned(PageFiles.text("index.html"));
    private final Policy policy = new Policy(html);

    /** Headers of every answer. */
    void guard(@Observes Filters filters) {
        filters.register(
                context -> {
                    if (context.get(KEPT) == null) { // a file below its version comes by here twice
                        context.put(KEPT, context.request().path().startsWith(version + "/"));
                    }
                    context.addHeadersEndHandler(done -> finish(context));
                    context.next();
                },
                HEADERS_FIRST);
    }

    /** Addresses that are not simply files. */
    void answer(@Observes Router router) {
        // Worked out while the first page is on its way: reading the drives takes as long as all else here.
        CompletableFuture<String> drives = CompletableFuture.supplyAsync(DemoDrives::json);
        String list = files.names().stream()
                .filter(name -> NOT_KEPT.stream().noneMatch(name::contains))
                .map(name -> '"' + version + "/" + name + '"')
                .collect(Collectors.joining(",", "[", "]"));
        String worker = PageFiles.text("sw.js").replace("VERSION_OF_ALL_FILES", files.version());
        router.get("/").order(-1).handler(context -> tell(context, "text/html; charset=utf-8", html));
        router.get("/index.html").order(-1).handler(context -> tell(context, "text/html; charset=utf-8", html));
        router.get("/drives.json")
                .order(-1)
                .handler(context -> drives.whenComplete((json, broken) -> {
                    if (broken == null) {
                        tell(context, "application/json", json);
                    } else {
                        context.fail(broken);
                    }
                }));
        router.get("/files.json").order(-1).handler(context -> tell(context, "application/json", list));
        router.get("/sw.js").order(-1).handler(context -> tell(context, "text/javascript; charset=utf-8", worker));
        router.get(version + "/*")
                .order(-1)
                .handler(context -> context.reroute(context.request().path().substring(version.length())));
    }

    private void finish(RoutingContext context) {
        policy.apply(context.response().headers(), context.request().path());
        boolean kept = context.<Boolean>get(KEPT)
                && context.response().getStatusCode() < HttpResponseStatus.BAD_REQUEST.code();
        context.response().headers().set("Cache-Control", kept ? FOREVER : ASK);
    }

    private static void tell(RoutingContext context, String type, String text) {
        HttpServerResponse response = context.response();
        response.putHeader("Content-Type", type).end(text);
    }

    /** The first page asks for everything below the version. */
    private String versioned(String page) {
        return page.replace("\"/page/", "\"" + version + "/page/").replace("\"/lib/", "\"" + version + "/lib/");
    }
}
