package swashlight.drive.checks;

import swashlight.checks.CheckRow;
import swashlight.drive.unit.LossModel;
import swashlight.drive.unit.RunningPoint;
import swashlight.drive.unit.WilsonModel;
import swashlight.drive.unit.WorkingFluid;

/** The law behind each row about whole-unit loss models. */
final class LossAnswers {
    private LossAnswers() {}

    static double answer(CheckRow row) {
        return switch (row.family()) {
            case "loss-model-flow-loss" -> model(row).flowLoss(point(row), fluid(row));
            case "loss-model-torque-loss" -> model(row).torqueLoss(point(row), fluid(row));
            case "loss-model-pump-volumetric" ->
                model(row).asPump(point(row), fluid(row)).volumetric();
            case "loss-model-pump-hydromechanical" ->
                model(row).asPump(point(row), fluid(row)).hydromechanical();
            case "loss-model-pump-overall" ->
                model(row).asPump(point(row), fluid(row)).overall();
            case "loss-model-motor-volumetric" ->
                model(row).asMotor(point(row), fluid(row)).volumetric();
            case "loss-model-motor-hydromechanical" ->
                model(row).asMotor(point(row), fluid(row)).hydromechanical();
            case "loss-model-motor-overall" ->
                model(row).asMotor(point(row), fluid(row)).overall();
            case "loss-model-pair-overall" ->
                model(row)
                        .asPump(point(row), fluid(row))
                        .then(model(row).asMotor(point(row), fluid(row)))
                        .overall();
            case "wilson-sigma" -> sigma(row);
            case "wilson-volumetric" -> wilson(row).at(sigma(row)).volumetric();
            case "wilson-hydromechanical" -> wilson(row).at(sigma(row)).hydromechanical();
            case "wilson-overall" -> wilson(row).at(sigma(row)).overall();
            case "wilson-best-sigma" -> wilson(row).bestSigma();
            case "wilson-best-overall" ->
                wilson(row).at(wilson(row).bestSigma()).overall();
            default -> throw new NoLaw(row);
        };
    }

    private static LossModel model(CheckRow row) {
        return new LossModel(row.si("V"), row.si("Cs"), row.si("Cst"), row.si("Cv"), row.si("Cf"), row.si("Ch"));
    }

    private static RunningPoint point(CheckRow row) {
        return new RunningPoint(row.si("x"), row.si("dp"), row.si("n"));
    }

    private static WorkingFluid fluid(CheckRow row) {
        return new WorkingFluid(row.si("nu") * row.si("rho"), row.si("rho"), row.si("B"));
    }

    private static WilsonModel wilson(CheckRow row) {
        return new WilsonModel(row.si("Cs"), row.si("Cf"), row.si("Cd"));
    }

    private static double sigma(CheckRow row) {
        return WilsonModel.sigma(row.si("mu"), new RunningPoint(1, row.si("dp"), row.si("n")));
    }
}
