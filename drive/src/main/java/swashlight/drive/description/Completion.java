package swashlight.drive.description;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A description being filled in: what is known stays, what is missing becomes typical with its stated spread. */
final class Completion {
    private final Map<Parameter, Quantity> quantities;

    Completion(Map<Parameter, Quantity> known) {
        this.quantities = new HashMap<>(known);
    }

    boolean has(Parameter parameter) {
        return quantities.containsKey(parameter);
    }

    double get(Parameter parameter) {
        return quantities.get(parameter).value();
    }

    /** The known value, or else the typical one given here, which is then remembered. */
    double give(Parameter parameter, double typical) {
        return quantities
                .computeIfAbsent(parameter, missing -> typicalQuantity(missing, typical))
                .value();
    }

    List<Quantity> inOrder() {
        return Parameters.all().stream().map(quantities::get).toList();
    }

    private static Quantity typicalQuantity(Parameter parameter, double value) {
        double held = Math.max(parameter.low(), Math.min(parameter.high(), value));
        double spread =
                parameter.relativeSpread() ? Math.abs(held) * parameter.typicalSpread() : parameter.typicalSpread();
        return new Quantity(held, spread, Origin.TYPICAL);
    }
}
