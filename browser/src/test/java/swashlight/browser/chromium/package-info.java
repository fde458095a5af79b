/** A real browser for tests: serves the compiled physics and small scripts to Debian's Chromium. Begin with {@link swashlight.browser.chromium.Chromium}. */
package swashlight.browser.chromium;
