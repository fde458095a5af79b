package swashlight.findings.finding;

import swashlight.findings.belief.Belief;

/**
 * A finding and the machines that stand for what is believed after it, for whoever decides on it.
 *
 * @param finding what is said
 * @param belief equally weighted suspects
 */
public record Found(Finding finding, Belief belief) {}
