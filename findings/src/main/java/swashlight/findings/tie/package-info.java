/**
 * What the readings so far cannot tell apart, whether that matters, and which reading would tell. Imports {@code next} and what it stands on.
 * Begin with {@code Ties}.
 */
package swashlight.findings.tie;
