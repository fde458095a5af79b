package swashlight.drive.fault;

import swashlight.drive.description.Parameter;

/** One parameter that a fault moves, and how. */
record Effect(Parameter parameter, Change change) {
    void apply(double[] vector, double severity) {
        int index = parameter.index();
        vector[index] = change.apply(parameter, vector[index], severity);
    }
}
