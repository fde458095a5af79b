package swashlight.browser.chromium;

/** A script to run on one form of the physics ("webassembly" or "javascript"), with numbers. */
record Job(String script, String target, double[] input) {}
