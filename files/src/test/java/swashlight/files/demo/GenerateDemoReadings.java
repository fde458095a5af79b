package swashlight.files.demo;

import java.util.Random;
import java.util.regex.Pattern;
import swashlight.drive.description.Dimension;
import swashlight.files.document.Source;
import swashlight.files.machine.CaseFiles;
import swashlight.files.unit.UnitSystem;
import swashlight.findings.reading.MachineCase;
import swashlight.findings.reading.Reading;

/**
 * How the readings of the demo cases were made: the true machine read under the stated conditions, with the usual error of each instrument
 * from a fixed seed. Prints them; a person rounds them and writes them into the case file.
 */
final class GenerateDemoReadings {
    private static final long SEED = 20261125;
    private static final Pattern OPEN = Pattern.compile("@");

    private GenerateDemoReadings() {}

    public static void main(String[] names) {
        for (String name : names.length == 0 ? DemoShelf.cases() : java.util.List.of(names)) {
            Source text = DemoShelf.machineCase(name);
            Source filled = Source.of(text.file(), OPEN.matcher(text.text()).replaceAll("1"));
            print(name, CaseFiles.open(filled).machineCase());
        }
    }

    private static void print(String name, MachineCase machineCase) {
        Witness papers = new Witness(machineCase.drive());
        Witness machine = new Witness(Truth.of(name).machine(machineCase.drive()));
        Random random = new Random(SEED + name.hashCode());
        System.out.println(name);
        for (Reading reading : machineCase.readings()) {
            double healthy = papers.reads(reading.kind(), reading.setup());
            double true_ = machine.reads(reading.kind(), reading.setup());
            double error = reading.error().orElse(reading.kind().usualError(true_));
            double read = true_ + error * random.nextGaussian();
            Dimension dimension = reading.kind().dimension();
            System.out.println("  " + reading.label() + ": " + UnitSystem.SI.show(read, dimension) + "   (machine "
                    + UnitSystem.SI.show(true_, dimension) + ", papers " + UnitSystem.SI.show(healthy, dimension)
                    + ")");
        }
    }
}
