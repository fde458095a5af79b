/**
 * What the compiler to WebAssembly is told beyond its own knowledge; nothing of it reaches a page.
 *
 * <p>Imports TeaVM's compiler only. Begin with {@link swashlight.browser.compiler.OwnInstructions}.
 */
package swashlight.browser.compiler;
