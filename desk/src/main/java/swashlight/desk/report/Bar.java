package swashlight.desk.report;

/**
 * One bar.
 *
 * @param name what it stands for
 * @param from where it begins, SI of the figure's axis
 * @param to where it ends, SI of the figure's axis
 * @param kind which of the figure's kinds it is, 0 first: drawn by tone and pattern
 */
public record Bar(Value name, double from, double to, int kind) {}
