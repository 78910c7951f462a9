package courseworthy.sheet;

import courseworthy.sheet.Condition.AllOf;
import courseworthy.sheet.Condition.AnyOf;
import courseworthy.sheet.Condition.DecisionCondition;
import courseworthy.sheet.Condition.MeasureCondition;
import courseworthy.sheet.Condition.NoneOf;
import courseworthy.sheet.Condition.OccasionTest;
import courseworthy.sheet.Condition.StretchShareCondition;
import courseworthy.sheet.Condition.Stretches;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** A condition with one thing wrong: a threshold moved by one step, an option lost, a part dropped. Cases must notice each. */
public final class ConditionMutants {

    /**
     * One wrong condition.
     *
     * @param what      what is wrong with it
     * @param lacking   the case that would notice
     * @param condition the wrong condition
     */
    public record ConditionMutant(String what, String lacking, Condition condition) {
    }

    private final List<ConditionMutant> out = new ArrayList<>();

    private ConditionMutants() {
    }

    public static List<ConditionMutant> of(AllOf condition) {
        ConditionMutants mutants = new ConditionMutants();
        mutants.thresholds(condition);
        mutants.options(condition);
        if (condition.parts().size() == 1) {
            mutants.drop(condition.parts().get(0), new AllOf(List.of()));
        }
        mutants.parts(condition, c -> c);
        return mutants.out;
    }

    private void thresholds(Condition condition) {
        List<Threshold> thresholds = condition.thresholds();
        for (int i = 0; i < thresholds.size(); i++) {
            Threshold at = thresholds.get(i);
            for (long to : new long[] {at.tick() - 1, at.tick() + 1}) {
                if (clamped(at.subject(), at.tick()) != clamped(at.subject(), to)) {
                    moved(condition, i, at, to);
                }
            }
        }
    }

    private static long clamped(TestSubject subject, long tick) {
        return Math.max(subject.least(), Math.min(subject.most(), tick));
    }

    private void moved(Condition condition, int i, Threshold at, long to) {
        boolean narrower = at.lower() == to > at.tick();
        String lacking = narrower ? "a firing case with " + name(at.subject()) + " " + text(at.subject(), at.tick())
                : "a silent case with " + name(at.subject()) + " " + text(at.subject(), to);
        String side = at.lower() ? " from " : " up to ";
        out.add(new ConditionMutant(name(at.subject()) + side + text(at.subject(), at.tick()) + " moved to " + text(at.subject(), to), lacking,
                condition.withThreshold(i, to)));
    }

    private static String text(TestSubject subject, long tick) {
        boolean words = subject.scale().resolution() == null;
        return words && (tick < subject.least() || tick > subject.most()) ? "beyond all words" : subject.text(tick);
    }

    private static String name(TestSubject subject) {
        return switch (subject.kind()) {
            case DECIDED -> "decided " + subject.written();
            case STRETCH -> "a stretch's " + subject.written();
            case MEASURE, SHARE -> subject.written();
        };
    }

    /** Each option of {@code one of} taken away; a single option exchanged for its neighbour. */
    private void options(Condition condition) {
        List<ValueTest.Among> all = new ArrayList<>();
        condition.map((subject, test) -> {
            if (test instanceof ValueTest.Among among) {
                all.add(among);
            }
            return test;
        });
        for (int i = 0; i < all.size(); i++) {
            for (long value : all.get(i).values()) {
                lost(condition, i, value);
            }
        }
    }

    private void lost(Condition condition, int index, long value) {
        int[] next = {0};
        String[] what = {""};
        String[] lacking = {""};
        Condition mutant = condition.map((subject, test) -> {
            if (!(test instanceof ValueTest.Among among) || next[0]++ != index) {
                return test;
            }
            List<Long> rest = new ArrayList<>(among.values());
            rest.remove(value);
            what[0] = name(subject) + " " + subject.text(value) + " taken away";
            if (rest.isEmpty()) {
                rest.add(value < subject.most() ? value + 1 : value - 1);
                what[0] = name(subject) + " " + subject.text(value) + " changed to " + subject.text(rest.get(0));
            }
            lacking[0] = "a firing case with " + name(subject) + " " + subject.text(value);
            return new ValueTest.Among(rest);
        });
        out.add(new ConditionMutant(what[0], lacking[0], mutant));
    }

    /** Each part dropped where something is left of its group, on every level. */
    private void parts(Condition condition, Function<Condition, Condition> around) {
        if (condition instanceof AllOf all) {
            group(all.parts(), parts -> around.apply(new AllOf(parts)), "fails, and nothing else does");
        } else if (condition instanceof AnyOf any) {
            group(any.parts(), parts -> around.apply(new AnyOf(parts)), "alone holds of its list, in a firing case");
        } else if (condition instanceof NoneOf none) {
            group(none.parts(), parts -> around.apply(new NoneOf(parts)), "alone holds of its list, in a silent case");
        } else if (condition instanceof Stretches stretches) {
            set(stretches.set(), set -> around.apply(new Stretches(stretches.any(), set)));
        } else if (condition instanceof StretchShareCondition share) {
            set(share.where(), set -> around.apply(new StretchShareCondition(set, share.test(), share.written())));
        } else if (condition instanceof OccasionTest one) {
            for (OccasionCondition.Wrong wrong : one.test().wrong()) {
                out.add(new ConditionMutant(wrong.what(), wrong.lacking(), around.apply(new OccasionTest(wrong.test(), one.written()))));
            }
        }
    }

    private void group(List<Condition> parts, Function<List<Condition>, Condition> around, String how) {
        for (int i = 0; i < parts.size(); i++) {
            int at = i;
            if (parts.size() > 1) {
                List<Condition> rest = new ArrayList<>(parts);
                rest.remove(at);
                out.add(new ConditionMutant("\"" + text(parts.get(at)) + "\" dropped", "a case in which \"" + text(parts.get(at)) + "\" " + how,
                        around.apply(rest)));
            }
            parts(parts.get(at), changed -> {
                List<Condition> all = new ArrayList<>(parts);
                all.set(at, changed);
                return around.apply(all);
            });
        }
    }

    private void set(StretchConditions set, Function<StretchConditions, Condition> around) {
        for (int i = 0; i < set.tests().size() && set.tests().size() > 1; i++) {
            List<StretchConditions.One> rest = new ArrayList<>(set.tests());
            StretchConditions.One gone = rest.remove(i);
            String text = gone.measure().written() + " " + gone.written();
            out.add(new ConditionMutant("\"" + text + "\" of stretches dropped", "a case in which \"" + text + "\" of stretches fails, and nothing else does",
                    around.apply(StretchConditions.of(rest))));
        }
    }

    private void drop(Condition part, Condition rest) {
        out.add(new ConditionMutant("\"" + text(part) + "\" dropped", "a silent case in which \"" + text(part) + "\" fails", rest));
    }

    public static String text(Condition condition) {
        if (condition instanceof MeasureCondition measured) {
            return measured.measure().written() + " " + measured.written();
        } else if (condition instanceof DecisionCondition decided) {
            return "decided " + decided.topic().name() + " " + decided.written();
        } else if (condition instanceof Stretches stretches) {
            return (stretches.any() ? "any stretch " : "no stretch ") + stretches.set().written();
        } else if (condition instanceof StretchShareCondition share) {
            return "share of course " + share.where().written() + " is " + share.written();
        } else if (condition instanceof OccasionTest one) {
            return one.test().key() + " " + one.written();
        } else if (condition instanceof AllOf all) {
            return String.join(" and ", all.parts().stream().map(ConditionMutants::text).toList());
        } else if (condition instanceof AnyOf any) {
            return "any of (" + String.join(" | ", any.parts().stream().map(ConditionMutants::text).toList()) + ")";
        }
        return "none of (" + String.join(" | ", ((NoneOf) condition).parts().stream().map(ConditionMutants::text).toList()) + ")";
    }
}
