package swashlight.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Every import of the page finds its file, and looks up the page's rooms only. */
final class ModulesTest {
    private static final int LINES_AT_MOST = 400;

    /** The rooms of the page, ground floor first, and what each may import beside itself. */
    private static final Map<String, Set<String>> MAY_IMPORT = Map.of(
            "core", Set.of(),
            "engine", Set.of("core"),
            "scene", Set.of("core"),
            "circuit", Set.of("core", "graphs"),
            "graphs", Set.of("core", "circuit"),
            "stories", Set.of("core", "engine"),
            "shell", Set.of("core", "engine", "scene", "circuit", "graphs", "stories"));

    private final Modules modules = new Modules();

    @Test
    void everyImportIsThere() {
        Deque<Path> waiting = new ArrayDeque<>(Modules.in("page"));
        Set<Path> seen = new TreeSet<>(waiting);
        List<String> missing = new ArrayList<>();
        while (!waiting.isEmpty()) {
            Path module = waiting.pop();
            for (String name : Modules.imports(module)) {
                Path file = modules.resolved(module, name);
                if (!Files.isRegularFile(file)) {
                    missing.add(Modules.ROOT.relativize(module) + " imports " + name);
                } else if (seen.add(file)) {
                    waiting.push(file);
                }
            }
        }
        assertThat(seen).as("libraries are followed too").anyMatch(file -> file.endsWith("lib/lit-html/lit-html.js"));
        assertThat(missing)
                .as("imports that find nothing; what of a library the page uses is listed in web/pom.xml")
                .isEmpty();
    }

    /** Rooms may be moved together below the version (docs/decisions/0100), and drawn from a folder when the page is tried. */
    @Test
    void noModuleNamesAnotherFromTheRoot() {
        for (Path module : Modules.in("page")) {
            assertThat(Modules.imports(module)).as(module.toString()).noneMatch(name -> name.startsWith("/"));
        }
    }

    @Test
    void roomsLookUpOnly() {
        Path page = Modules.ROOT.resolve("page");
        List<String> wrong = new ArrayList<>();
        for (String room : MAY_IMPORT.keySet()) {
            assertThat(Modules.in("page/" + room)).as(room).isNotEmpty();
            for (Path module : Modules.in("page/" + room)) {
                for (String name : Modules.imports(module)) {
                    Path file = modules.resolved(module, name);
                    boolean ours = file.startsWith(page);
                    String other = ours ? page.relativize(file).getName(0).toString() : room;
                    if (!other.equals(room) && !MAY_IMPORT.get(room).contains(other)) {
                        wrong.add(page.relativize(module) + " imports " + name);
                    }
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void noModuleIsTooLongToRead() {
        assertThat(Modules.in("page"))
                .allSatisfy(module -> assertThat(Modules.text(module).lines().count())
                        .as(module + ": one idea a file")
                        .isLessThanOrEqualTo(LINES_AT_MOST));
    }

    /** Only three.js, uPlot and Lit, each with its licence beside it. */
    @Test
    void librariesBringTheirLicences() {
        for (String address : modules.importMap().values()) {
            String library = address.split("/")[2];
            assertThat(Modules.ROOT.resolve("lib").resolve(library).resolve("LICENSE"))
                    .exists();
        }
        assertThat(modules.importMap()).containsKeys("lit", "three", "uplot");
    }
}
