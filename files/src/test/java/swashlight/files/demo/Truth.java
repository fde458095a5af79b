package swashlight.files.demo;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import swashlight.drive.description.Dimension;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Parameters;
import swashlight.drive.description.Quantity;
import swashlight.drive.fault.Fault;
import swashlight.drive.fault.Faults;
import swashlight.files.unit.UnitAnswer;
import swashlight.files.unit.UnitText;

/** What a demo case was computed from: the true machine, and readings spoilt by hand. */
record Truth(List<CSVRecord> rows) {
    static Truth of(String name) {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setCommentMarker('#')
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (Reader reader =
                new InputStreamReader(Truth.class.getResourceAsStream("/demo/truth.csv"), StandardCharsets.UTF_8)) {
            return new Truth(format.parse(reader).stream()
                    .filter(row -> row.get("case").equals(name))
                    .toList());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** The machine as it is: what differs from its papers, then the faults. */
    DriveDescription machine(DriveDescription papers) {
        DriveDescription machine = papers;
        List<CSVRecord> faults = new ArrayList<>();
        for (CSVRecord row : rows) {
            Optional<Parameter> parameter = Parameters.find(row.get("what"));
            if (parameter.isPresent()) {
                double value = value(row.get("value"), parameter.get().dimension());
                machine = machine.with(parameter.get(), Quantity.given(value));
            } else if (!row.get("what").equals("wrong")) {
                faults.add(row);
            }
        }
        for (CSVRecord row : faults) {
            Fault fault = Faults.find(row.get("what")).orElseThrow();
            machine = fault.on(machine, value(row.get("value"), fault.dimension()));
        }
        return machine;
    }

    /** Labels of readings that were changed by hand. */
    Set<String> wrong() {
        Set<String> labels = new HashSet<>();
        rows.stream().filter(row -> row.get("what").equals("wrong")).forEach(row -> labels.add(row.get("value")));
        return labels;
    }

    private static double value(String text, Dimension dimension) {
        return ((UnitAnswer.Understood) UnitText.read(text, dimension)).value();
    }
}
