package swashlight.browser.chromium;

import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/** Starts Chromium when the first test asks for it and ends it after the last. */
final class ChromiumExtension implements ExecutionCondition, ParameterResolver {
    private static final ExtensionContext.Namespace OWN = ExtensionContext.Namespace.create(ChromiumExtension.class);

    private static final String NONE = "no chromium on the PATH: what a browser computes is not tried here; on Debian,"
            + " apt-get install chromium";

    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        if (Chromium.installed().isPresent()) {
            return ConditionEvaluationResult.enabled("there is a chromium");
        }
        System.err.println("skipped " + context.getDisplayName() + ": " + NONE);
        return ConditionEvaluationResult.disabled(NONE);
    }

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        return parameter.getParameter().getType() == Chromium.class;
    }

    @Override
    public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
        return context.getRoot()
                .getStore(OWN)
                .getOrComputeIfAbsent(Chromium.class, missing -> Chromium.start(), Chromium.class);
    }
}
