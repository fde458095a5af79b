package swashlight.desk.report;

/** What an axis of a picture shows. */
public record Axis(Value name, Measure measure) {}
