package courseworthy.rulebase;

import courseworthy.demand.StretchFacts;
import java.util.Set;

/** The properties of a stretch that are unknown although they matter. */
final class Wanting {

    private Wanting() {
    }

    static void of(StretchSet set, StretchFacts facts, Set<String> out) {
        if (set.on(facts) == Truth.FALSE) {
            return;
        }
        for (StretchSet.One one : set.tests()) {
            if (facts.get(one.measure()) == StretchFacts.UNKNOWN) {
                out.add(one.measure().written());
            }
        }
    }
}
