package swashlight.drive.steady;

import swashlight.drive.description.InputParameter;
import swashlight.drive.description.OutputParameter;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Parameters;

/** Asks the laws inside the steady view one question at a time, for the published values. */
public final class SteadyAnswers {
    private final double[] vector = new double[Parameters.count()];

    /** Sets one parameter, SI unit of its dimension. */
    public SteadyAnswers set(Parameter parameter, double value) {
        vector[parameter.index()] = value;
        return this;
    }

    /** A machine on a slope that is driven straight up; the ground holds whatever is asked. */
    public static SteadyAnswers machine(double weight) {
        return new SteadyAnswers()
                .set(OutputParameter.MACHINE_MASS, weight / LoadLaw.GRAVITY)
                .set(OutputParameter.GEARS_RATIO, 1)
                .set(OutputParameter.GEARS_MESH_EFFICIENCY, 1)
                .set(OutputParameter.GEARS_CONNECTED, 1)
                .set(OutputParameter.WHEELS_ROLLING_RADIUS, 1)
                .set(OutputParameter.WHEELS_TRACTION, 1.2)
                .set(OutputParameter.WHEELS_LOAD_SHARE, 1)
                .set(OutputParameter.WHEELS_TRACTION_STIFFNESS, 25);
    }

    /** A governed engine on a belt that holds, speed in rad/s. */
    public static SteadyAnswers engine(double noLoadSpeed) {
        return new SteadyAnswers()
                .set(InputParameter.ENGINE_NO_LOAD_SPEED, noLoadSpeed)
                .set(InputParameter.ENGINE_RATED_TORQUE, 100)
                .set(InputParameter.ENGINE_PEAK_TORQUE, 120)
                .set(InputParameter.ENGINE_PEAK_SPEED_SHARE, 0.7)
                .set(InputParameter.ENGINE_STALL_SPEED_SHARE, 0.35)
                .set(InputParameter.ENGINE_STRENGTH, 1)
                .set(InputParameter.BELT_SPEED_RATIO, 1)
                .set(InputParameter.BELT_CAPACITY, 1e9)
                .set(InputParameter.BELT_CREEP, 1e-6);
    }

    /** Grade force, N, on a slope in rad. */
    public double gradeForce(double slope) {
        return load(slope).gradeForce;
    }

    /** Force at the tyres uphill, N. */
    public double groundForce(double slope) {
        return load(slope).groundForce;
    }

    /** Torque at the axle uphill, N·m. */
    public double axleTorque(double slope) {
        return load(slope).axleTorque;
    }

    /** Torque at the motor uphill, N·m. */
    public double motorTorque(double slope) {
        return load(slope).motorTorque;
    }

    /** Engine speed at rated torque, rad/s. */
    public double ratedSpeed() {
        EngineLaw law = new EngineLaw();
        law.load(vector, 1);
        law.at(law.loadFor(vector[InputParameter.ENGINE_RATED_TORQUE.index()] * (1 - 1e-12)));
        return law.engineSpeed;
    }

    /** Shaft speed behind a belt that slips by a share, rad/s. */
    public double shaftSpeed(double slip) {
        EngineLaw law = new EngineLaw();
        law.load(vector, 1);
        law.at(slip * vector[InputParameter.BELT_CAPACITY.index()] / vector[InputParameter.BELT_CREEP.index()]);
        return law.shaftSpeed;
    }

    private LoadLaw load(double slope) {
        LoadLaw law = new LoadLaw();
        law.load(vector);
        law.ground(vector, 0, slope, 0);
        law.moving(1);
        return law;
    }
}
