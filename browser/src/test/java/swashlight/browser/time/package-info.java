/** How fast the physics is in a browser, beside the JVM. Begin with {@link swashlight.browser.time.HowFastInTheBrowser}. */
package swashlight.browser.time;
