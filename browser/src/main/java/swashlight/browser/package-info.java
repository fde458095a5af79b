/**
 * The face of the physics for a web page: what it exports, in numbers and words.
 *
 * <p>Idea: nothing is computed here; each export asks {@code drive} and hands the answer over as plain arrays and text. Compiled by TeaVM to
 * WebAssembly with a JavaScript fallback. Imports drive. Begin with {@link swashlight.browser.Physics}; what a page sees is described in
 * {@code META-INF/resources/physics/physics.d.ts}, and a test holds the two together.
 */
package swashlight.browser;
