/**
 * Whether a repair did what it should.
 *
 * <p>Idea: the crowd that is believed after the first readings is repaired; what it then shows is what a good repair must show on this very
 * machine. Readings taken afterwards are brought to the conditions of those before by the model, and held against that, not only against
 * before. Imports drive, {@code belief}, {@code choice}, {@code finding} and what they stand on. Begin with {@code ProofPlan} and {@code
 * Proof}.
 */
package swashlight.findings.proof;
