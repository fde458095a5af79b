package swashlight.server.look;

import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/** Opens server and browser when the first test asks for them and closes them after the last. */
final class EyesExtension implements ExecutionCondition, ParameterResolver {
    private static final ExtensionContext.Namespace OWN = ExtensionContext.Namespace.create(EyesExtension.class);

    private static final String NONE =
            "no chromium on the PATH: the page is not looked at here; on Debian, apt-get install chromium";

    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        if (Eyes.installed().isPresent()) {
            return ConditionEvaluationResult.enabled("there is a chromium");
        }
        System.err.println("skipped " + context.getDisplayName() + ": " + NONE);
        return ConditionEvaluationResult.disabled(NONE);
    }

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        return parameter.getParameter().getType() == Eyes.class;
    }

    @Override
    public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
        return context.getRoot().getStore(OWN).getOrComputeIfAbsent(Eyes.class, missing -> new Eyes(), Eyes.class);
    }
}
