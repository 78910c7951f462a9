package courseworthy.call;

import courseworthy.problem.Faults;
import courseworthy.rulebase.PlainRules;
import courseworthy.rulebase.Rulebook;
import courseworthy.rulebase.Rules;
import courseworthy.rulebase.RulesFolder;
import java.nio.file.Path;
import java.util.List;

/** The shipped rules, for tests. */
final class HouseRules {

    private HouseRules() {
    }

    static Rules read() {
        Faults faults = new Faults();
        Rulebook rulebook = Rulebook.of(RulesFolder.read(Path.of("rules"), faults), List.of(), List.of(), faults);
        faults.throwIfAny();
        return new PlainRules(rulebook.rows());
    }
}
