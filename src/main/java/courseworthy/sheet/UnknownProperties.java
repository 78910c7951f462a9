package courseworthy.sheet;

import courseworthy.demand.StretchFacts;
import java.util.Set;

/** The properties of a stretch that are unknown although they matter. */
final class UnknownProperties {

    private UnknownProperties() {
    }

    static void of(StretchConditions set, StretchFacts facts, Set<String> out) {
        if (set.on(facts) == Truth.FALSE) {
            return;
        }
        for (StretchConditions.One one : set.tests()) {
            if (facts.get(one.measure()) == StretchFacts.UNKNOWN) {
                out.add(one.measure().written());
            }
        }
    }
}
