package courseworthy.task;

import courseworthy.demand.Demands;
import courseworthy.demand.InputKeys;
import courseworthy.demand.InputKeys.InputPlace;
import courseworthy.demand.Measure;
import courseworthy.demand.StretchMeasure;
import courseworthy.engine.UndeterminedRule;
import courseworthy.sheet.OccasionCondition;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a user could write so that rules which could not tell can.
 *
 * @param place where it is written
 * @param keys  the keys to write there, in the order in which its files list them
 * @param rules how many rules want something of it
 */
public record MissingInputs(InputPlace place, List<String> keys, int rules) {

    /** What tells whose day it is, and which. */
    private static final Map<String, InputKeys> OCCASION = Map.of(OccasionCondition.Riders.KEY, InputKeys.rider("name"),
            OccasionCondition.Tags.KEY, InputKeys.rider("tags"), OccasionCondition.Days.KEY, InputKeys.event("date"));

    /** What each place is asked for, in the order of {@link InputPlace}; nothing for what the day is known not to have. */
    public static List<MissingInputs> of(List<UndeterminedRule> untold, Demands demands) {
        Map<InputPlace, Set<String>> keys = new EnumMap<>(InputPlace.class);
        Map<InputPlace, Set<String>> rules = new EnumMap<>(InputPlace.class);
        for (UndeterminedRule rule : untold) {
            for (String measure : rule.wanting()) {
                InputKeys input = input(measure);
                boolean absent = Measure.find(measure) != null && demands.isAbsent(Measure.find(measure));
                if (!absent && !input.keys().isEmpty()) {
                    keys.computeIfAbsent(input.place(), place -> new HashSet<>()).addAll(input.keys());
                    rules.computeIfAbsent(input.place(), place -> new HashSet<>()).add(rule.origin().rule());
                }
            }
        }
        List<MissingInputs> out = new ArrayList<>();
        keys.forEach((place, found) -> out.add(new MissingInputs(place, inOrder(place, found), rules.get(place).size())));
        return out;
    }

    private static List<String> inOrder(InputPlace place, Set<String> found) {
        Set<String> out = new LinkedHashSet<>(place.keys());
        out.retainAll(found);
        return List.copyOf(out);
    }

    /** What tells a measure of a course, a stretch, a rider or a day; no keys for what is found out on the way. */
    private static InputKeys input(String name) {
        Measure measure = Measure.find(name);
        StretchMeasure ofStretch = StretchMeasure.find(name);
        return measure != null ? measure.input() : ofStretch != null ? ofStretch.input() : OCCASION.getOrDefault(name, InputKeys.ALWAYS);
    }
}
