package swashlight.desk.work;

import java.nio.file.Path;
import swashlight.files.demo.DemoShelf;
import swashlight.files.prices.PricesFiles;
import swashlight.findings.cost.Prices;

/** Finds the prices that are named: a demo by name, or a file. */
final class PricesShelf {
    private PricesShelf() {}

    static Prices open(Stated asked) {
        String name = asked.text();
        if (name.startsWith(DemoShelf.PREFIX)) {
            return PricesFiles.open(DemoShelf.prices(name.substring(DemoShelf.PREFIX.length())));
        }
        return DemoShelf.prices().contains(name)
                ? PricesFiles.open(DemoShelf.prices(name))
                : PricesFiles.read(Path.of(name));
    }
}
