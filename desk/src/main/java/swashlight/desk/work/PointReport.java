package swashlight.desk.work;

import java.util.ArrayList;
import java.util.List;
import swashlight.desk.report.Chapter;
import swashlight.desk.report.Column;
import swashlight.desk.report.Fact;
import swashlight.desk.report.Line;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Report;
import swashlight.desk.report.Sentence;
import swashlight.desk.report.Table;
import swashlight.desk.report.Value;
import swashlight.drive.steady.Duty;
import swashlight.drive.steady.Event;
import swashlight.drive.steady.LedgerItem;
import swashlight.drive.steady.SteadyAnswer;
import swashlight.drive.steady.SteadyDrive;
import swashlight.drive.steady.SteadyPoint;

/** One operating point: how it runs, and where every litre a minute and every watt goes. */
final class PointReport {
    private final SickDrive drive;
    private final Circumstances circumstances;
    private final Duty duty;
    private final SteadyAnswer answer;
    private final SteadyPoint point;

    private PointReport(SickDrive drive, Circumstances circumstances) {
        this.drive = drive;
        this.circumstances = circumstances;
        this.duty = drive.on(circumstances.duty());
        this.answer = new SteadyDrive(drive.drive()).answer(duty);
        this.point = answer.point();
    }

    static Outcome of(SickDrive drive, Circumstances circumstances) {
        PointReport report = new PointReport(drive, circumstances);
        return report.answer instanceof SteadyAnswer.NotConverged lost
                ? new Outcome.NotConverged(report.lost(lost))
                : new Outcome.Answered(report.found(), LedgerPicture.of(report.point));
    }

    private Report found() {
        List<Line> lines = new ArrayList<>();
        lines.add(headline());
        for (Event event : point.events()) {
            if (event != Event.STANDS) {
                lines.add(Sentence.of("event." + event.name()));
            }
        }
        lines.add(new Chapter("conditions", conditions()));
        lines.add(new Chapter("state", state()));
        lines.add(new Chapter("ledger", List.of(Sentence.of("ledger.signs"), ledger(), balance())));
        return new Report("point", lines);
    }

    private Report lost(SteadyAnswer.NotConverged lost) {
        return new Report(
                "point",
                List.of(
                        Sentence.of(
                                "lost",
                                Value.of(lost.residual(), Measure.RATIO),
                                Value.of(lost.iterations(), Measure.RATIO),
                                Value.text(lost.advice())),
                        new Chapter("conditions", conditions()),
                        new Chapter("best", state())));
    }

    private Sentence headline() {
        Value name = Value.text(drive.sound().name());
        Value speed = Value.of(Math.abs(point.groundSpeed()), Measure.SPEED);
        if (point.events().contains(Event.STANDS) || point.motorSpeed() == 0) {
            return Sentence.of("answer.stands", name, Value.of(Math.abs(point.groundForce()), Measure.FORCE));
        }
        if (point.groundSpeed() == 0) {
            Value axle = Value.of(Math.abs(point.axleSpeed()), Measure.ROTATION);
            return Sentence.of(point.axleSpeed() < 0 ? "answer.turnsBack" : "answer.turns", name, axle);
        }
        return Sentence.of(point.groundSpeed() < 0 ? "answer.backward" : "answer.forward", name, speed);
    }

    private List<Line> conditions() {
        List<Line> lines = new ArrayList<>(circumstances.lines());
        lines.addAll(FaultWords.lines(drive));
        return lines;
    }

    private List<Line> state() {
        double ambient = duty.ambientPressure();
        double input = point.pumpTorque() * point.pumpSpeed();
        List<Line> lines = new ArrayList<>();
        add(lines, "groundSpeed", point.groundSpeed(), Measure.SPEED);
        add(lines, "groundForce", point.groundForce(), Measure.FORCE);
        add(lines, "axleSpeed", point.axleSpeed(), Measure.ROTATION);
        add(lines, "axleTorque", point.axleTorque(), Measure.TORQUE);
        add(lines, "motorSpeed", point.motorSpeed(), Measure.ROTATION);
        add(lines, "pressureA", point.pressureA() - ambient, Measure.PRESSURE);
        add(lines, "pressureB", point.pressureB() - ambient, Measure.PRESSURE);
        add(lines, "galleryPressure", point.galleryPressure() - ambient, Measure.PRESSURE);
        add(lines, "fillA", point.fillA(), Measure.SHARE);
        add(lines, "fillB", point.fillB(), Measure.SHARE);
        add(lines, "makeUpFlow", point.makeUpFlow(), Measure.FLOW);
        add(lines, "swashAngle", point.swashAngle(), Measure.ANGLE);
        add(lines, "engineSpeed", point.engineSpeed(), Measure.ROTATION);
        add(lines, "inputSpeed", point.pumpSpeed(), Measure.ROTATION);
        add(lines, "inputTorque", point.pumpTorque(), Measure.TORQUE);
        add(lines, "inputPower", input, Measure.POWER);
        add(lines, "beltSlip", point.beltSlip(), Measure.SHARE);
        add(lines, "wheelSlip", point.wheelSlip(), Measure.SHARE);
        add(lines, "heat", point.heat(), Measure.POWER);
        Efficiency.of(point).ifPresent(share -> add(lines, "efficiency", share, Measure.SHARE));
        return lines;
    }

    private Table ledger() {
        List<Column> columns = List.of(
                Column.words("item"),
                new Column("intoA", Measure.FLOW),
                new Column("intoB", Measure.FLOW),
                new Column("intoGallery", Measure.FLOW),
                new Column("power", Measure.POWER));
        List<List<Value>> rows = new ArrayList<>();
        double[] sums = new double[4];
        for (LedgerItem item : LedgerItem.values()) {
            double[] booked = booked(item);
            if (magnitude(booked) > 0) {
                rows.add(row(Value.wordOr("ledger." + item.name(), item.meaning()), booked));
            }
            for (int i = 0; i < sums.length; i++) {
                sums[i] += booked[i];
            }
        }
        rows.add(row(Value.word("point.ledger.sum"), sums));
        return new Table("ledger", columns, rows);
    }

    private double[] booked(LedgerItem item) {
        return new double[] {point.intoA(item), point.intoB(item), point.intoGallery(item), point.power(item)};
    }

    private static double magnitude(double[] booked) {
        double magnitude = 0;
        for (double part : booked) {
            magnitude += Math.abs(part);
        }
        return magnitude;
    }

    private static List<Value> row(Value name, double[] booked) {
        return List.of(name, flow(booked[0]), flow(booked[1]), flow(booked[2]), power(booked[3]));
    }

    private static Value flow(double flow) {
        return flow == 0 ? Value.nothing() : Value.of(flow, Measure.FLOW);
    }

    private static Value power(double watts) {
        return watts == 0 ? Value.nothing() : Value.of(watts, Measure.POWER);
    }

    private Chapter balance() {
        return Chapter.of(
                "balance",
                new Fact("flowResidual", Value.of(point.flowResidual(), Measure.RATIO)),
                new Fact("powerResidual", Value.of(point.powerResidual(), Measure.RATIO)),
                new Fact("steps", Value.of(answer.iterations(), Measure.RATIO)));
    }

    private static void add(List<Line> lines, String key, double value, Measure measure) {
        lines.add(new Fact(key, Value.of(value, measure)));
    }
}
