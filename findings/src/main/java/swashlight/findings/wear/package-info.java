/**
 * What wear measured at teardown costs, and how much of it a machine may keep.
 *
 * <p>Idea: a {@link swashlight.findings.wear.WearPart} turns what a gauge shows into a number of the drive; the drive is then computed at
 * what its owner needs ({@link swashlight.findings.wear.Requirement}) on machines with everything unknown drawn. Limits follow from the
 * requirement and are copied from nowhere. Imports drive, {@code reading}, {@code expect}, {@code evidence}. Begin with {@code Teardown} and
 * {@code LimitTable}.
 */
package swashlight.findings.wear;
