package swashlight.drive.description;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A whole drive: a {@link Quantity} for every {@link Parameter}. Immutable; changes give a new one.
 *
 * <p>Values stand in the SI unit of their parameter. A description is checked on building: every value inside its range, radii
 * rising, torque curve falling, displacement as its geometry says.
 */
public final class DriveDescription {
    private final String name;
    private final boolean invented;
    private final List<Quantity> quantities;

    DriveDescription(String name, boolean invented, List<Quantity> quantities) {
        this.name = name;
        this.invented = invented;
        this.quantities = List.copyOf(quantities);
        List<Complaint> complaints = Consistency.complaints(this);
        if (!complaints.isEmpty()) {
            throw new DescriptionFault(complaints);
        }
    }

    /** The name its author gave it. */
    public String name() {
        return name;
    }

    /** True for demo drives, which no one builds. */
    public boolean invented() {
        return invented;
    }

    /** Value, spread and origin of one parameter. */
    public Quantity quantity(Parameter parameter) {
        return quantities.get(parameter.index());
    }

    /** Value of one parameter, SI unit of its dimension. */
    public double value(Parameter parameter) {
        return quantities.get(parameter.index()).value();
    }

    /** A copy with one parameter changed. */
    public DriveDescription with(Parameter parameter, Quantity quantity) {
        return with(Map.of(parameter, quantity));
    }

    /** A copy with some parameters changed. */
    public DriveDescription with(Map<Parameter, Quantity> changes) {
        List<Quantity> changed = new ArrayList<>(quantities);
        changes.forEach((parameter, quantity) -> changed.set(parameter.index(), quantity));
        return new DriveDescription(name, invented, changed);
    }

    /** A copy under another name. */
    public DriveDescription named(String otherName) {
        return new DriveDescription(otherName, invented, quantities);
    }

    /** All values in index order, each in the SI unit of its parameter: a fresh array. */
    public double[] vector() {
        double[] vector = new double[quantities.size()];
        for (int i = 0; i < vector.length; i++) {
            vector[i] = quantities.get(i).value();
        }
        return vector;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof DriveDescription that
                && name.equals(that.name)
                && invented == that.invented
                && quantities.equals(that.quantities);
    }

    @Override
    public int hashCode() {
        return 31 * name.hashCode() + quantities.hashCode();
    }

    @Override
    public String toString() {
        return "drive " + name;
    }
}
