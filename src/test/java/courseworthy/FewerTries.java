package courseworthy;

import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropagationMode;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/**
 * A bound on the tries of every property, for runs in which each test runs hundreds of times: {@code -Dcourseworthy.tries=200}. Found by jqwik as a
 * service. A property that has fewer keeps them, and failures are not shrunk.
 */
public final class FewerTries implements AroundPropertyHook {

    /** jqwik's own number where a property names none. */
    private static final int USUAL = 1000;

    @Override
    public PropagationMode propagateTo() {
        return PropagationMode.ALL_DESCENDANTS;
    }

    @Override
    public PropertyExecutionResult aroundProperty(PropertyLifecycleContext context, PropertyExecutor property) {
        Integer most = Integer.getInteger("courseworthy.tries");
        if (most != null) {
            context.attributes().setTries(Math.min(most, context.attributes().tries().orElse(USUAL)));
            context.attributes().setShrinking(ShrinkingMode.OFF);
        }
        return property.execute();
    }
}
