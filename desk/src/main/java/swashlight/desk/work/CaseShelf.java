package swashlight.desk.work;

import java.nio.file.Path;
import java.util.Optional;
import swashlight.files.demo.DemoShelf;
import swashlight.files.document.Source;
import swashlight.files.machine.CaseFile;
import swashlight.files.machine.CaseFiles;

/** Finds the case that is asked about: a demo by name, or a file. */
final class CaseShelf {
    private CaseShelf() {}

    /** The case of a file or a demo; the first demo where none is named. */
    static CaseFile open(Optional<Stated> asked) {
        return CaseFiles.open(
                source(asked.map(Stated::text).orElse(DemoShelf.cases().get(0))));
    }

    private static Source source(String name) {
        if (name.startsWith(DemoShelf.PREFIX)) {
            return DemoShelf.machineCase(name.substring(DemoShelf.PREFIX.length()));
        }
        return DemoShelf.isCase(name) ? DemoShelf.machineCase(name) : Source.read(Path.of(name));
    }
}
