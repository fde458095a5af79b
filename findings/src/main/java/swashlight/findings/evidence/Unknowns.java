package swashlight.findings.evidence;

import java.util.ArrayList;
import java.util.List;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.OilParameter;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Parameters;
import swashlight.drive.description.Quantity;
import swashlight.findings.expect.ConditionError;

/**
 * Everything about a sound machine that is not known exactly: first its parameters with a spread, then the errors of the conditions.
 *
 * <pre>
 *   value = median · e^(z √ln(1 + (σ/median)²))     of a parameter that cannot be 0 or less, with σ above a tenth of it
 *   value = mean + σ z                              otherwise; both held to the parameter's range
 *
 *   z   standard normal              1
 *   σ   spread of the description    SI unit of the parameter
 * </pre>
 *
 * Parameters are taken as independent of each other.
 */
public final class Unknowns {
    private static final double LOG_FROM = 0.1; // spread over value from which a positive parameter is log-normal, 1

    private static final double LEAST_THINNING =
            0.9; // viscosity at 100 °C over that at 40 °C, at most: an oil thins, 1
    private static final int THICK = OilParameter.VISCOSITY40.index();
    private static final int THIN = OilParameter.VISCOSITY100.index();

    private final double[] middle;
    private final List<Parameter> parameters = new ArrayList<>();
    private final List<ConditionError> errors;
    private final int[] index;
    private final double[] spread;
    private final boolean[] logarithmic;
    private final double[] low;
    private final double[] high;

    /** The unknowns of a drive and of the conditions of its readings. */
    public Unknowns(DriveDescription drive, List<ConditionError> errors) {
        this.middle = drive.vector();
        this.errors = List.copyOf(errors);
        for (Parameter parameter : Parameters.all()) {
            Quantity quantity = drive.quantity(parameter);
            if (quantity.spread() > 0) {
                parameters.add(parameter);
            }
        }
        int count = parameters.size();
        index = new int[count];
        spread = new double[count];
        logarithmic = new boolean[count];
        low = new double[count];
        high = new double[count];
        for (int j = 0; j < count; j++) {
            Parameter parameter = parameters.get(j);
            Quantity quantity = drive.quantity(parameter);
            double share = quantity.value() > 0 ? quantity.spread() / quantity.value() : 0;
            index[j] = parameter.index();
            logarithmic[j] = share > LOG_FROM && parameter.low() >= 0;
            spread[j] = logarithmic[j] ? Math.sqrt(Math.log(1 + share * share)) : quantity.spread();
            low[j] = parameter.low();
            high[j] = parameter.high();
        }
    }

    /** How many, parameters and errors together. */
    public int size() {
        return index.length + errors.size();
    }

    /** How many of them are parameters; they come first. */
    public int parameters() {
        return index.length;
    }

    /** Name of one: a parameter's key or a condition's error. */
    public String name(int place) {
        return place < index.length
                ? parameters.get(place).key()
                : errors.get(place - index.length).name();
    }

    /** The condition behind an unknown that is no parameter. */
    public ConditionError error(int place) {
        return errors.get(place - index.length);
    }

    /** Fills a drive's values, index order, SI, from deviations. */
    public void fill(double[] z, double[] vector) {
        System.arraycopy(middle, 0, vector, 0, middle.length);
        for (int j = 0; j < index.length; j++) {
            if (z[j] != 0) {
                double value = logarithmic[j]
                        ? middle[index[j]] * Math.exp(spread[j] * z[j])
                        : middle[index[j]] + spread[j] * z[j];
                vector[index[j]] = Math.max(low[j], Math.min(high[j], value));
            }
        }
        vector[THIN] =
                Math.min(vector[THIN], Math.max(LEAST_THINNING * vector[THICK], OilParameter.VISCOSITY100.low()));
    }
}
