package courseworthy.debrief;

import courseworthy.claim.Verb;
import courseworthy.debrief.DebriefReader.DebriefPair;
import courseworthy.debrief.SavedBrief.Advice;
import courseworthy.debrief.SavedBrief.SavedClaim;
import courseworthy.debrief.Verdict.RuleVerdict;
import courseworthy.topic.Concern;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A debrief held against the brief that was given.
 *
 * <p>On each topic the rider's own word goes first: what would be changed the next time, or kept; but where something happened that points
 * the other way, nothing can be told. Else the outcomes that bear on the topic ({@link OutcomeTable}): one that speaks against goes before one
 * that speaks for, and outcomes that point both ways cannot tell.
 * Advice that was not followed is answered only as far as what was ridden instead says something of it; advice that rested on other
 * weather than there was is not answered.
 *
 * @param debrief  what happened
 * @param given    what was advised
 * @param verdicts one for each topic that was settled, in the brief's order
 */
public record DebriefResult(Debrief debrief, SavedBrief given, List<Verdict> verdicts) {

    /** Measures that are the weather's, and how far off a temperature may be, K (judgement, no source), to be as foretold. */
    private static final double OFF = 4;
    private static final List<String> OF_THE_GOING = List.of("going", "mud");
    private static final String COLDEST = "coldest temperature";
    private static final String HOTTEST = "hottest temperature";
    public static final String UNTESTED = "the day did not put it to the test";
    private static final String LIMIT = "a limit is not judged by how a day went";

    public DebriefResult {
        verdicts = List.copyOf(verdicts);
    }

    /** Holds one against the other. */
    public static DebriefResult of(DebriefPair pair) {
        List<Verdict> out = new ArrayList<>();
        for (Advice advice : pair.given().advice()) {
            out.add(new AdviceAssessment(pair.debrief(), pair.given(), advice).verdict());
        }
        return new DebriefResult(pair.debrief(), pair.given(), out);
    }

    /** Those with an answer. */
    public List<Verdict> with(AdviceOutcome answer) {
        List<Verdict> out = new ArrayList<>();
        for (Verdict verdict : verdicts) {
            if (verdict.answer() == answer) {
                out.add(verdict);
            }
        }
        return out;
    }

    /** Whether the time lay in the range that was told; null where either is not known. */
    public Boolean inTime() {
        Double hours = debrief.hours();
        SavedBrief.Time predicted = given.time();
        return hours == null || predicted == null ? null : Boolean.valueOf(hours >= predicted.fast() && hours <= predicted.slow());
    }

    /** What the day says of each rule, once for a rule: not borne out on one topic goes before borne out on another. */
    public Map<String, AdviceOutcome> rules() {
        Map<String, AdviceOutcome> out = new LinkedHashMap<>();
        for (Verdict verdict : verdicts) {
            for (RuleVerdict rule : verdict.rules()) {
                if (!rule.said().limit()) {
                    out.merge(rule.said().rule(), rule.answer(), (one, other) -> one.compareTo(other) <= 0 ? one : other);
                }
            }
        }
        return out;
    }

    /** One topic. */
    private static final class AdviceAssessment {

        private final Debrief debrief;
        private final SavedBrief given;
        private final Advice advice;
        private final Topic topic;
        /** Null where what the build had is not known. */
        private final Long ridden;
        private final Long would;
        private final List<ReportedValue> reported = new ArrayList<>();
        private final List<String> reasons = new ArrayList<>();
        private Direction way;

        AdviceAssessment(Debrief debrief, SavedBrief given, Advice advice) {
            this.debrief = debrief;
            this.given = given;
            this.advice = advice;
            this.topic = advice.topic();
            this.ridden = debrief.changed().getOrDefault(topic, advice.built());
            this.would = debrief.would().get(topic);
            for (ReportedValue each : debrief.reported()) {
                if (each.topic().equals(topic)) {
                    reported.add(each);
                }
            }
        }

        Verdict verdict() {
            way = ridden == null ? notKnown() : would != null ? ofTheRider() : ofOutcomes();
            if (ridden != null && ridden != advice.value()) {
                boolean built = !debrief.changed().containsKey(topic);
                reasons.add("ridden with " + text(ridden) + " instead" + (built ? ", as the build had it" : ""));
            }
            AdviceOutcome answer = way == null ? AdviceOutcome.UNKNOWN : new OutcomeAssessor(topic, ridden, way, would).of(Verb.PREFER, advice.value());
            List<RuleVerdict> rules = new ArrayList<>();
            for (SavedClaim said : advice.claims()) {
                rules.add(rule(said));
            }
            String otherDay = answer == AdviceOutcome.UNKNOWN ? "" : otherDay();
            if (!otherDay.isEmpty()) {
                reasons.add(otherDay);
                answer = AdviceOutcome.UNKNOWN;
            }
            return new Verdict(advice, answer, reasons, rules);
        }

        /** The first rule behind the advice, limits left out, that rested on other weather. */
        private String otherDay() {
            for (SavedClaim said : advice.claims()) {
                String other = said.limit() || said.verb() != Verb.PREFER || said.value() == null || said.value() != advice.value() ? ""
                        : otherWeather(said);
                if (!other.isEmpty()) {
                    return other;
                }
            }
            return "";
        }

        /** A value as the advice has it, or as its topic writes it; a gear other than the one advised has no teeth, only a ratio. */
        private String text(long value) {
            boolean gear = topic == Topics.EASIEST_GEAR || topic == Topics.HARDEST_GEAR;
            return value == advice.value() ? advice.text() : gear ? "a ratio of " + topic.text(value) : topic.text(value);
        }

        private Direction notKnown() {
            if (!reported.isEmpty() || would != null) {
                reasons.add("what was ridden is not known: the build did not say; write it under changed on the day");
            }
            return null;
        }

        private Direction ofTheRider() {
            if (would.equals(ridden)) {
                reasons.add("you would take " + text(would) + " again");
                return Direction.RIGHT;
            }
            reasons.add("you would take " + text(would));
            addAll();
            Direction wanted = topic.kind() == Topic.Kind.OPTIONS ? Direction.ANOTHER : would > ridden ? Direction.MORE : Direction.LESS;
            if (any(Direction.MORE) && wanted == Direction.LESS || any(Direction.LESS) && wanted == Direction.MORE) {
                // A rim that struck asks for more air whatever the rider would like: no rule is told wrong for having asked for enough.
                reasons.add("that points both ways");
                return null;
            }
            return wanted;
        }

        private Direction ofOutcomes() {
            addAll();
            boolean right = any(Direction.RIGHT);
            boolean more = any(Direction.MORE);
            boolean less = any(Direction.LESS);
            if (more && less) {
                reasons.add("that points both ways");
                return null;
            }
            return more ? Direction.MORE : less ? Direction.LESS : any(Direction.ANOTHER) ? Direction.ANOTHER : right ? Direction.RIGHT : null;
        }

        private boolean any(Direction wanted) {
            for (ReportedValue each : reported) {
                if (each.way() == wanted) {
                    return true;
                }
            }
            return false;
        }

        private void addAll() {
            for (ReportedValue each : reported) {
                reasons.add(each.words());
            }
        }

        private RuleVerdict rule(SavedClaim said) {
            if (said.limit()) {
                return new RuleVerdict(said, AdviceOutcome.UNKNOWN, LIMIT);
            }
            if (way == null || said.value() == null) {
                return new RuleVerdict(said, AdviceOutcome.UNKNOWN, way == null ? "nothing reported bears on it" : "it named no single value");
            }
            String other = otherWeather(said);
            if (!other.isEmpty()) {
                return new RuleVerdict(said, AdviceOutcome.UNKNOWN, other);
            }
            AdviceOutcome answer = new OutcomeAssessor(topic, ridden, way, would).of(said.verb(), said.value());
            return new RuleVerdict(said, answer, answer == AdviceOutcome.UNKNOWN ? UNTESTED : text(ridden) + " " + (way == Direction.RIGHT
                    ? way.words() : "was ridden, and " + way.words()));
        }

        /** How the weather that the rule rested on differed; empty where it did not, or is not known. */
        private String otherWeather(SavedClaim said) {
            List<String> grounds = new ArrayList<>(said.grounds());
            if (topic.concerns().contains(Concern.WEATHER)) {
                grounds.addAll(List.of("going", COLDEST, HOTTEST));
            } else if (topic.concerns().contains(Concern.WET)) {
                grounds.add("going");
            }
            for (String ground : grounds) {
                if (OF_THE_GOING.contains(ground) && given.going() != null && debrief.weather().going() != null
                        && !given.going().equals(debrief.weather().going())) {
                    return "predicted for " + given.going() + " going, and it was " + debrief.weather().going();
                }
                if (ground.equals(COLDEST) && far(given.coldest(), debrief.weather().low())) {
                    return temperatures("coldest", given.coldest(), debrief.weather().low());
                }
                if (ground.equals(HOTTEST) && far(given.hottest(), debrief.weather().high())) {
                    return temperatures("hottest", given.hottest(), debrief.weather().high());
                }
            }
            return "";
        }

        private static boolean far(Double foretold, Double was) {
            return foretold != null && was != null && Math.abs(foretold - was) > OFF;
        }

        private static String temperatures(String which, double foretold, double was) {
            return "predicted for " + Math.round(foretold) + " C at the " + which + ", and it was " + Math.round(was) + " C";
        }
    }
}
