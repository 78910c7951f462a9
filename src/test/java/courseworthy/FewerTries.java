package courseworthy;

import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropagationMode;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/**
 * How many tries a property has: its share of {@link Draws} in the ordinary run; where each test runs hundreds of times, at most so many and no shrinking
 * of failures: {@code -Dcourseworthy.tries=200}. Found by jqwik as a service.
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
        int whole = context.attributes().tries().orElse(USUAL);
        context.attributes().setTries(most == null ? Draws.of(whole) : Math.min(most, whole));
        if (most != null) {
            context.attributes().setShrinking(ShrinkingMode.OFF);
        }
        return property.execute();
    }
}
