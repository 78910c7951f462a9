package courseworthy.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/**
 * The condition on which browser tests run, and what gives them the browser: one for a whole run. Without one they are skipped, which is
 * said once on a line of its own that {@code .ci/run} looks for.
 */
final class BrowserExtension implements ExecutionCondition, ParameterResolver {

    private static final Namespace HERE = Namespace.create(BrowserExtension.class);

    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        Optional<Path> browser = Browser.find();
        if (browser.isPresent()) {
            return ConditionEvaluationResult.enabled(browser.get().toString());
        }
        String named = System.getProperty("courseworthy.browser", "");
        String why = named.isEmpty() ? "no chromium is on the path, and courseworthy.browser names none" : "courseworthy.browser is " + named
                + ", which is no program";
        context.getRoot().getStore(HERE).getOrComputeIfAbsent("said", key -> {
            System.err.println("BROWSER TESTS SKIPPED: " + why + " (DEVELOPERS.md)");
            return true;
        });
        return ConditionEvaluationResult.disabled(why);
    }

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        return parameter.getParameter().getType() == Browser.class;
    }

    @Override
    public Browser resolveParameter(ParameterContext parameter, ExtensionContext context) {
        return context.getRoot().getStore(HERE).getOrComputeIfAbsent("browser", key -> new Run(), Run.class).browser;
    }

    /** The browser of a run, closed when the run ends. */
    private static final class Run implements AutoCloseable {

        private final Browser browser;

        Run() {
            try {
                browser = Browser.start(Browser.find().orElseThrow());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        @Override
        public void close() {
            browser.close();
        }
    }
}
