package courseworthy.task;

import courseworthy.call.CloseThreshold;
import courseworthy.call.Firmness;
import courseworthy.call.Firmness.EvidenceGrade;
import courseworthy.claim.Force;
import courseworthy.decision.Decision;
import courseworthy.demand.Assumptions;
import courseworthy.demand.InputKeys;
import courseworthy.demand.InputKeys.InputPlace;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureScale;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.units.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A decision that may well turn out otherwise, and what would settle it.
 *
 * @param firmness how firm the decision is
 * @param close    the threshold it rests on closely, whose measure settles it when it is known better; null where it rests on none
 * @param wanted   what to write so that rules can be checked that would change it; empty where none would
 */
public record LeastFirm(Firmness firmness, CloseThreshold close, List<MissingInputs> wanted) {

    /** So many are named (judgement: what a reader keeps in mind). */
    private static final int MOST_LISTED = 3;
    /** How much less firm each makes a decision (judgement); what nobody insists on counts less, and a common value on which nobody advises anything comes last. */
    private static final int THIN = 6;
    private static final int THIN_AND_MILD = 4;
    private static final int CLOSE = 3;
    private static final int FAIR = 2;
    private static final int NO_ADVICE = 1;

    public LeastFirm {
        wanted = List.copyOf(wanted);
    }

    /** What would settle a decision. */
    public enum Means {
        /** Something on the rider, the bike or the climbs is measured. */
        MEASUREMENT("a measurement"),
        /** Somebody looks at the ground. */
        SCOUTING("a look at the ground"),
        /** A later forecast. */
        FORECAST("a later forecast"),
        /** Something that is known to the rider is written. */
        INPUT("something to write"),
        /** Both are tried. */
        TEST_RIDE("a test ride"),
        /** Nothing that is ridden or measured would tell: what is carried for a mishap, and what is serviced when. */
        CHOICE("your own choice");

        private final String words;

        Means(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    public Decision decision() {
        return firmness.decision();
    }

    /** What would settle it: what it is close to comes first, then what is unknown, then what was assumed; else it has to be tried, or chosen. */
    public Means means() {
        if (close != null) {
            return means(close.measure());
        }
        if (!wanted.isEmpty()) {
            return ofPlace(wanted.get(0).place()) == Means.SCOUTING ? Means.SCOUTING : Means.INPUT;
        }
        if (firmness.assumed().isEmpty()) {
            return isFelt(decision().topic()) ? Means.TEST_RIDE : Means.CHOICE;
        }
        String first = firmness.assumed().get(0);
        Measure measure = Measure.find(first);
        if (first.equals(Assumptions.EVENT_RULES)) {
            return Means.INPUT;
        }
        return first.equals(Assumptions.GROUND) ? Means.SCOUTING : measure == null ? Means.MEASUREMENT : means(measure);
    }

    /** A gear that is worked out from legs, load and slopes is tried; skill is written; what else is of the rider, the bike or the climbs is measured. */
    private static Means means(Measure measure) {
        if (measure.scale().kind() == MeasureScale.Kind.QUANTITY && measure.scale().resolution().unit() == Unit.RATIO) {
            return Means.TEST_RIDE;
        }
        return measure == Measure.SKILL ? Means.INPUT : means(measure.input());
    }

    /** Whether a ride would tell which of two is better. */
    private static boolean isFelt(Topic topic) {
        return switch (topic.work()) {
            case CARRY -> topic == Topics.FOOD || topic == Topics.WATER || topic == Topics.WATER_CARRIER;
            case ELECTRONICS, LIGHTS, UPKEEP -> false;
            default -> true;
        };
    }

    private static Means means(InputKeys input) {
        return input.place() == null ? Means.MEASUREMENT : ofPlace(input.place());
    }

    private static Means ofPlace(InputPlace place) {
        return switch (place) {
            case GROUND -> Means.SCOUTING;
            case EVENT -> Means.FORECAST;
            case CLIMBING, RIDER, BIKE -> Means.MEASUREMENT;
        };
    }

    /**
     * The decisions that are least firm or closest, the least firm first: thin advice weighs most, then a measure that flips the value within
     * what it may be, then fair advice; advice that only may be followed counts less; of equals the first in the catalogue. A decision counts by itself,
     * since what it rests on is named too. Of two ends alike the front is named.
     */
    static List<LeastFirm> of(Brief brief) {
        List<LeastFirm> all = new ArrayList<>();
        for (Firmness firmness : brief.firmness()) {
            Decision decision = firmness.decision();
            LeastFirm each = new LeastFirm(firmness, brief.close(decision), MissingInputs.of(firmness.unknown(), brief.demands()));
            boolean listed = all.stream().anyMatch(other -> other.decision().topic().isFrontOf(decision.topic()) && other.weight() == each.weight());
            if (each.weight() > 0 && !listed) {
                all.add(each);
            }
        }
        all.sort(Comparator.comparingInt(LeastFirm::weight).reversed());
        return List.copyOf(all.subList(0, Math.min(MOST_LISTED, all.size())));
    }

    private int weight() {
        boolean noAdvice = firmness.evidence() == EvidenceGrade.NONE && decision().lost().isEmpty();
        boolean mild = !firmness.carriers().isEmpty() && firmness.carriers().stream().allMatch(claim -> claim.origin().force() == Force.MAY);
        int word = switch (firmness.grade().level()) {
            case FIRM -> 0;
            case FAIR -> FAIR;
            case THIN -> noAdvice ? NO_ADVICE : mild ? THIN_AND_MILD : THIN;
        };
        return word + (close == null ? 0 : CLOSE);
    }
}
