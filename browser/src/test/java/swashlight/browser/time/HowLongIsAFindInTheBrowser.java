package swashlight.browser.time;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import swashlight.browser.CaseNumbers;
import swashlight.browser.chromium.Chromium;
import swashlight.files.machine.CaseFiles;

/**
 * Times whole answers on invented cases in Chromium: the first after loading, and the median of the later ones. Started by
 * {@code bench/browser/run}; not a test.
 */
public final class HowLongIsAFindInTheBrowser {
    private static final int ROUNDS = 6;
    private static final String[] CASES = {
        "rider-too-little-known", "rider-fades-uphill", "side-weak-forward", "loader-howls-cold", "loader-worn-pump"
    };

    private HowLongIsAFindInTheBrowser() {}

    /** Prints one line a case and form. */
    public static void main(String[] arguments) {
        for (String target : new String[] {"webassembly", "javascript"}) {
            for (String name : CASES) {
                try (Chromium chromium = Chromium.start()) {
                    double[] row = CaseNumbers.of(CaseFiles.demo(name), 1);
                    double[] asked = DoubleStream.concat(DoubleStream.of(ROUNDS), Arrays.stream(row))
                            .toArray();
                    double[] seconds = chromium.run("time-find", "diagnosis-" + target, asked)
                            .numbers();
                    double[] later = Arrays.copyOfRange(seconds, 1, ROUNDS);
                    Arrays.sort(later);
                    System.out.printf(
                            "| %-11s | %-22s | %4.2f s | %4.2f s |%n",
                            target, name, seconds[0], later[later.length / 2]);
                }
            }
        }
    }
}
