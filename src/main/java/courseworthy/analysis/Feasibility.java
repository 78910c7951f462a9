package courseworthy.analysis;

import courseworthy.analysis.ReasoningBudget.TooMany;
import courseworthy.claim.Rank;
import courseworthy.claim.Verb;
import courseworthy.sheet.Row;
import courseworthy.sheet.Saying;
import courseworthy.sheet.StretchConditions;
import courseworthy.sheet.TestSubject;
import courseworthy.topic.Topic;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What boxes take as free of each other and is not: an answer that a limit rules out is never settled, stretches that are asked about in
 * different words may not lie on one course, and a date has one day of the year.
 */
final class Feasibility {

    private static final long STEPS = 3_000;

    /** Where a limit speaks, with an answer that it rules out. */
    private record LimitBox(String limit, Box box) {
    }

    private final Map<Object, List<LimitBox>> byTopic = new HashMap<>();
    private final Map<Box, Boolean> known = new ConcurrentHashMap<>();

    /** @param shipped of which the limits are taken */
    Feasibility(List<Row> shipped, Region.RegionReader reader, VariableTable things) {
        for (Row row : shipped) {
            if (row.origin().rank() == Rank.LIMIT) {
                for (Saying saying : row.sayings()) {
                    limit(row, saying, reader, things);
                }
            }
        }
    }

    private void limit(Row row, Saying saying, Region.RegionReader reader, VariableTable things) {
        try {
            for (Box where : reader.of(row.condition()).boxes()) {
                for (Box box : ruledOut(saying, things)) {
                    Box both = where.and(box);
                    if (both != null) {
                        byTopic.computeIfAbsent(saying.topic(), topic -> new ArrayList<>()).add(new LimitBox(row.origin().rule(), both));
                    }
                }
            }
        } catch (TooMany e) {
            // What a limit of many alternatives rules out goes unseen.
            return;
        }
    }

    private static List<Box> ruledOut(Saying saying, VariableTable things) {
        Variable on = things.of(saying.topic());
        List<Box> out = new ArrayList<>();
        if (saying.source() instanceof Saying.Literal literal) {
            out.add(Box.of(on, against(saying.verb(), literal.value()).and(on.known())));
        } else if (saying.topic().kind() != Topic.Kind.QUANTITY) {
            Saying.Times times = (Saying.Times) saying.source();
            TestSubject measure = TestSubject.of(times.measure());
            for (long value = measure.least(); value <= measure.most(); value++) {
                out.add(Box.of(things.of(times.measure()), ValueSet.of(value, value))
                        .and(Box.of(on, against(saying.verb(), times.on(saying.topic(), value)).and(on.known()))));
            }
        }
        out.removeIf(box -> box.of(on).isEmpty());
        return out;
    }

    private static ValueSet against(Verb verb, long value) {
        return switch (verb) {
            case AT_LEAST -> ValueSet.of(Long.MIN_VALUE, value - 1);
            case AT_MOST -> ValueSet.of(value + 1, Long.MAX_VALUE);
            case RULE_OUT -> ValueSet.of(value, value);
            default -> ValueSet.NONE;
        };
    }

    /** What is left of a box once limits have spoken; null where nothing is. */
    Box left(Box box) {
        List<Box> ruled = new ArrayList<>();
        for (LimitBox one : ruled(box)) {
            ruled.add(one.box());
        }
        try {
            return ruled.isEmpty() ? box : Region.beyond(box, ruled.toArray(new Box[0]), 0, new ReasoningBudget(STEPS), any -> true);
        } catch (TooMany e) {
            return box;
        }
    }

    /** The limits that speak somewhere in a box and rule out an answer in it, by id. */
    TreeSet<String> limits(Box box) {
        TreeSet<String> out = new TreeSet<>();
        ruled(box).forEach(one -> out.add(one.limit()));
        return out;
    }

    /** A limit keeps silent where something it asks about is left unknown. */
    private List<LimitBox> ruled(Box box) {
        List<LimitBox> out = new ArrayList<>();
        for (int i = 0; i < box.size(); i++) {
            for (LimitBox one : byTopic.getOrDefault(box.thing(i).asked(), List.of())) {
                if (box.names(one.box()) && one.box().meets(box)) {
                    out.add(one);
                }
            }
        }
        return out;
    }

    /** A region without the boxes of which limits leave nothing. */
    Region left(Region region) {
        List<Box> out = new ArrayList<>();
        for (Box box : region.boxes()) {
            if (left(box) != null) {
                out.add(box);
            }
        }
        return out.size() == region.size() ? region : Region.of(out);
    }

    /** Whether a region asks about something that may not go together with what others ask. */
    boolean delicate(Region region) {
        for (Box box : region.boxes()) {
            for (int i = 0; i < box.size(); i++) {
                Object asked = box.thing(i).asked();
                if (byTopic.containsKey(asked) || asked instanceof StretchConditions || asked == VariableTable.VariableOwner.DATE || asked == VariableTable.VariableOwner.DAY_OF_YEAR) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether a day is found on which both regions are met. */
    boolean together(Region one, Region other) {
        for (int i = 0; i < one.size(); i++) {
            for (int j = 0; j < other.size(); j++) {
                if (one.box(i).meets(other.box(j)) && goes(one.box(i).and(other.box(j)))) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean goes(Box box) {
        Box hanging = hanging(box);
        return left(box) != null && (hanging == null || known.computeIfAbsent(hanging, one -> ExampleSituation.of(one) != null));
    }

    /** What in a box may hang together: stretches, or the day; null where there are no two of either. */
    private static Box hanging(Box box) {
        int stretches = 0;
        int days = 0;
        for (int i = 0; i < box.size(); i++) {
            stretches += box.thing(i).asked() instanceof StretchConditions ? 1 : 0;
            days += box.thing(i).asked() == VariableTable.VariableOwner.DATE || box.thing(i).asked() == VariableTable.VariableOwner.DAY_OF_YEAR ? 1 : 0;
        }
        Box out = null;
        for (int i = 0; i < box.size(); i++) {
            Object asked = box.thing(i).asked();
            if (stretches > 1 && asked instanceof StretchConditions || days > 1 && asked instanceof VariableTable.VariableOwner && asked != VariableTable.VariableOwner.RIDER) {
                Box one = Box.of(box.thing(i), box.values(i));
                out = out == null ? one : out.and(one);
            }
        }
        return out;
    }
}
