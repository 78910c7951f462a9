package courseworthy.call;

import courseworthy.rulebase.DroolsRules;
import courseworthy.rulebase.House;

/** The shipped rules, joins included, for tests. */
final class HouseRules {

    private HouseRules() {
    }

    static DroolsRules read() {
        return new DroolsRules(House.rules(), House.load());
    }
}
