package swashlight.desk.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import swashlight.drive.description.Dimension;
import swashlight.drive.fault.Fault;
import swashlight.drive.fault.Faults;

/** Faults from texts such as {@code motor-face-worn=30 µm}; a key alone means its usual severity. */
final class AilmentReader {
    private AilmentReader() {}

    static List<SickDrive.Ailment> read(List<Stated> stated, Inspection inspection) {
        List<SickDrive.Ailment> ails = new ArrayList<>();
        for (Stated text : stated) {
            one(text, inspection).ifPresent(ails::add);
        }
        return ails;
    }

    private static Optional<SickDrive.Ailment> one(Stated stated, Inspection inspection) {
        int equals = stated.text().indexOf('=');
        String key = (equals < 0 ? stated.text() : stated.text().substring(0, equals)).strip();
        Optional<Fault> found = Faults.find(key);
        if (found.isEmpty()) {
            List<String> keys = Faults.all().stream().map(Fault::key).toList();
            inspection.refuse("unknown-fault", stated, "no fault is called " + key, unknown(key, keys));
            return Optional.empty();
        }
        Fault fault = found.get();
        if (equals < 0) {
            return Optional.of(new SickDrive.Ailment(fault, fault.usual()));
        }
        Stated severity = new Stated(stated.where(), stated.text().substring(equals + 1));
        OptionalDouble value = severity(fault, severity, inspection);
        return value.isEmpty() ? Optional.empty() : Optional.of(new SickDrive.Ailment(fault, value.getAsDouble()));
    }

    /** A severity of a fault, SI unit of the fault. */
    static OptionalDouble severity(Fault fault, Stated severity, Inspection inspection) {
        double low = Math.min(0, fault.least());
        return fault.dimension() == Dimension.TEMPERATURE
                ? inspection.difference(severity, fault.dimension(), low, fault.most())
                : inspection.number(severity, fault.dimension(), low, fault.most());
    }

    private static String unknown(String key, List<String> keys) {
        String near = Inspection.choice(key, keys);
        return near.startsWith("one of") ? "the command \"faults\" lists them all" : near;
    }
}
