package swashlight.files.drive;

import java.util.List;
import swashlight.drive.description.Complaint;
import swashlight.drive.description.Dimension;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Parameters;
import swashlight.files.document.Fields;
import swashlight.files.document.Node;
import swashlight.files.unit.UnitSystem;

/** A complaint about a description, said with the line and in the units of its file. */
final class DriveWords {
    private DriveWords() {}

    static void add(Fields root, Complaint complaint) {
        Parameter parameter = Parameters.find(complaint.field()).orElseThrow();
        Node value = place(root, parameter);
        boolean stated = value instanceof Node.Leaf;
        Dimension dimension = parameter.dimension();
        String given = stated ? ((Node.Leaf) value).text() : "";
        String found = UnitSystem.SI.show(complaint.given(), dimension)
                + (stated ? "" : " (not given here: it follows from the rest)");
        root.complaints()
                .add(
                        complaint.key(),
                        value.spot(),
                        root.field(parameter.key()),
                        given,
                        found + " " + wrong(complaint.key()),
                        right(complaint, dimension));
    }

    private static String wrong(String key) {
        return switch (key) {
            case "viscosity-rises" -> "at 100 °C is not thinner than at 40 °C";
            case "torque-curve" -> "does not fit the engine's other speeds and torques";
            case "radii-order" -> "does not lie outside the radius before it";
            case "piston-leaves-bore" -> "lets the piston leave its bore at the end of the stroke";
            case "chamber-too-small" -> "is less than the piston displaces";
            case "displacement-geometry" -> "does not follow from pistons, pitch radius and swash angle";
            case "whole-number" -> "is not a number of pistons that can be";
            default -> "lies outside its range";
        };
    }

    private static String right(Complaint complaint, Dimension dimension) {
        String low = UnitSystem.SI.show(complaint.low(), dimension);
        if (complaint.high() == Double.MAX_VALUE) {
            return "a value of at least " + low + " would be right";
        }
        String high = UnitSystem.SI.show(complaint.high(), dimension);
        String range =
                low.equals(high) ? "for example " + low : "a value between " + low + " and " + high + " would be right";
        return complaint.key().equals("displacement-geometry") ? range + "; or leave out one of them" : range;
    }

    /** The value in the file, else its section, else the whole. */
    private static Node place(Fields root, Parameter parameter) {
        Node whole = new Node.Row(List.of(), root.spot());
        Node section = root.node(parameter.section()).orElse(whole);
        if (!(section instanceof Node.Branch branch)) {
            return section;
        }
        Node.Entry entry = branch.entries().get(parameter.term());
        if (entry == null) {
            return new Node.Row(List.of(), section.spot());
        }
        if (entry.value() instanceof Node.Branch parts && parts.entries().containsKey("value")) {
            return parts.entries().get("value").value();
        }
        return entry.value();
    }
}
