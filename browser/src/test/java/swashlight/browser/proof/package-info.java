/**
 * What tests alone ask of the compiler: a module of its own, compiled for the browser beside the physics. Begin with
 * {@link swashlight.browser.proof.Proof}.
 */
package swashlight.browser.proof;
