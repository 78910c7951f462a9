package courseworthy.analysis;

import courseworthy.analysis.ReasoningBudget.TooMany;
import courseworthy.sheet.Condition;
import java.util.ArrayList;
import java.util.List;

/** Looks for one situation in which some conditions hold and others do not: one alternative after the other, without laying out all. */
final class RegionSearch {

    /** Something that shall hold, or not. */
    record Goal(Condition condition, boolean truth) {
    }

    private final Region.RegionReader reader;
    private final ReasoningBudget steps;

    RegionSearch(Region.RegionReader reader, ReasoningBudget steps) {
        this.reader = reader;
        this.steps = steps;
    }

    /** A box within another in which all goals are met; null where there is none. @throws TooMany where it was not found in time */
    Box in(Box box, List<Goal> goals) throws TooMany {
        steps.spend(1);
        if (goals.isEmpty()) {
            return box;
        }
        Goal goal = goals.get(0);
        List<Goal> rest = goals.subList(1, goals.size());
        if (!(goal.condition() instanceof Condition.PartsCondition group)) {
            return leaf(box, goal, rest);
        }
        boolean any = group instanceof Condition.AnyOf || group instanceof Condition.NoneOf;
        boolean truth = group instanceof Condition.NoneOf ? !goal.truth() : goal.truth();
        if (any != truth) {
            List<Goal> all = new ArrayList<>();
            group.parts().forEach(part -> all.add(new Goal(part, truth)));
            all.addAll(rest);
            return in(box, all);
        }
        for (Condition part : group.parts()) {
            List<Goal> one = new ArrayList<>(List.of(new Goal(part, truth)));
            one.addAll(rest);
            Box found = in(box, one);
            if (found != null) {
                return found;
            }
        }
        return null;
    }

    private Box leaf(Box box, Goal goal, List<Goal> rest) throws TooMany {
        for (Box where : reader.of(goal.condition(), goal.truth()).boxes()) {
            Box both = box.and(where);
            Box found = both == null ? null : in(both, rest);
            if (found != null) {
                return found;
            }
        }
        return null;
    }
}
