/**
 * What may be wrong: nothing, or one fault, each with its share among machines that come in, and the action it calls for.
 *
 * <p>Idea: a {@link swashlight.findings.cause.Cause} is a hypothesis; its severity has a {@link swashlight.findings.cause.SeverityPrior} in the
 * fault's own unit; causes with the same {@link swashlight.findings.cause.Action} need not be told apart. Imports drive and {@code reading}. Begin
 * with {@code Causes}.
 */
package swashlight.findings.cause;
