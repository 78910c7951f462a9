package courseworthy.sheet;

import java.util.List;

/**
 * The cases of a sheet.
 *
 * @param ofRules cases of its rows, each alone
 * @param calls   cases of whole days
 */
public record Cases(List<RuleCase> ofRules, List<CallCase> calls) {

    public Cases {
        ofRules = List.copyOf(ofRules);
        calls = List.copyOf(calls);
    }
}
