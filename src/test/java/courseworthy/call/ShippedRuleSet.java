package courseworthy.call;

import courseworthy.engine.DroolsRules;
import courseworthy.engine.ShippedRules;

/** The shipped rules, joins included, for tests. */
final class ShippedRuleSet {

    private ShippedRuleSet() {
    }

    static DroolsRules read() {
        return new DroolsRules(ShippedRules.rules(), ShippedRules.load());
    }
}
