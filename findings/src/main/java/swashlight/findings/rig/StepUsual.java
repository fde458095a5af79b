package swashlight.findings.rig;

/** A step's usual conditions: means over the healthy rows. */
record StepUsual(String name, double pressure, double power, double flow) {}
