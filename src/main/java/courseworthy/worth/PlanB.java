package courseworthy.worth;

import courseworthy.call.Call;
import courseworthy.decision.Decision;
import courseworthy.ride.Range;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.topic.Work;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What changes if the forecast turns.
 *
 * @param turns  what it may turn to, in words
 * @param time   of the day then, riding and stopping, s
 * @param lines  the decisions that differ, in the order of the catalogue
 * @param lacking what the call would change then and no part of the workshop can, in the order of the catalogue
 * @param tooLate what would have to be changed longer before than a forecast holds, in the order of the catalogue
 * @param wet    the call on wet ground; null where the ground is not wet then
 */
public record PlanB(String turns, Range time, List<PlanBLine> lines, List<MissingItem> lacking, List<MissingItem> tooLate, Call wet) {

    /** The bike stands in the line-up so long before the start, s (practice). */
    public static final double LINED_UP = 20 * 60;
    /** Ratios nearer to each other than half the smallest step of a wide cassette, about 10 %, are one gear (common practice, no source). */
    private static final double SAME_GEAR = 0.05;
    private static final String NEW_CHAIN = "new a week before";
    private static final double MIN = 60;
    private static final double HOUR = 3600;

    public PlanB {
        lines = List.copyOf(lines);
        lacking = List.copyOf(lacking);
        tooLate = List.copyOf(tooLate);
    }

    /**
     * One decision that differs.
     *
     * @param topic   name
     * @param first   the call as it stands
     * @param second  the call then
     * @param change  the kind of work it takes, whose time the event may give
     * @param takes   work and waiting together, s
     * @param waits   how much of it is waiting, s
     * @param written whether that time was written; else it is an estimate
     * @param latest  the last moment to begin where all lines are changed one after another, s from the start, so below 0
     */
    public record PlanBLine(String topic, String first, String second, Work change, double takes, double waits, boolean written, double latest) {
        PlanBLine begun(double at) {
            return new PlanBLine(topic, first, second, change, takes, waits, written, at);
        }
    }

    /** When work on the first of the changes has to start, s from the start, so below 0; null where nothing changes. */
    public Double workStarts() {
        return lines.isEmpty() ? null : lines.stream().map(PlanBLine::latest).min(Comparator.naturalOrder()).orElseThrow();
    }

    /**
     * Compares two calls.
     *
     * @param turns  what the day may turn to, in words
     * @param first  the call
     * @param second the call then
     */
    public static PlanB of(String turns, Call first, Call second) {
        List<PlanBLine> lines = new ArrayList<>();
        List<MissingItem> tooLate = new ArrayList<>();
        for (Decision decision : first.decisions()) {
            Decision other = second.on(decision.topic());
            if (isTooLate(other) && !isTooLate(decision)) {
                tooLate.add(new MissingItem(decision.topic().name(), other.phrase(), decision.phrase()));
            } else if (!decision.text().equals(other.text()) && !sameGear(decision, other) || !tyre(decision.topic(), first, second).isEmpty()) {
                lines.add(line(decision, other, first, second));
            }
        }
        Map<Work, Double> begun = begun(lines, first);
        for (int i = 0; i < lines.size(); i++) {
            lines.set(i, lines.get(i).begun(begun.get(lines.get(i).change())));
        }
        return new PlanB(turns, second.demands().estimated().estimate().total(), lines, List.of(), tooLate, PressureSettings.wet(second) ? second : null);
    }

    /**
     * A change that cannot be made: no part of the workshop can, or it is too late for it.
     *
     * @param topic  name
     * @param wanted the call then
     * @param has    what there is instead
     */
    public record MissingItem(String topic, String wanted, String has) {
    }

    /**
     * Compares the builds of two calls.
     *
     * @param mounted   the first call made anew for the parts of its build
     * @param remounted the second for those of its own
     * @param parts     topics that parts realise
     */
    public static PlanB of(String turns, Call first, Call second, Call mounted, Call remounted, Set<Topic> parts) {
        PlanB plain = of(turns, mounted, remounted);
        List<MissingItem> out = new ArrayList<>();
        for (Decision decision : first.decisions()) {
            String wanted = second.on(decision.topic()).phrase();
            String has = remounted.on(decision.topic()).phrase();
            boolean stays = has.equals(mounted.on(decision.topic()).phrase()) && !has.equals(wanted);
            if (parts.contains(decision.topic()) && stays && !decision.phrase().equals(wanted)) {
                out.add(new MissingItem(decision.topic().name(), wanted, has));
            }
        }
        return new PlanB(turns, plain.time, plain.lines, out, plain.tooLate, plain.wet);
    }

    /** The same with what is lacking in the words of the build, by topic; what it has no words for stays. */
    public PlanB inWordsOf(Map<String, String> build) {
        return new PlanB(turns, time, lines, lacking.stream().map(each -> new MissingItem(each.topic(), each.wanted(),
                build.getOrDefault(each.topic(), each.has()))).toList(), tooLate, wet);
    }

    /** Whether a decision asks for work so long before the ride that no forecast reaches so far: a new chain has a week to show its faults. */
    private static boolean isTooLate(Decision decision) {
        return decision.topic().equals(Topics.CHAIN) && decision.value() != null && decision.text().equals(NEW_CHAIN);
    }

    /** Whether the gears differ by less than anybody changes a cassette for overnight. */
    private static boolean sameGear(Decision first, Decision second) {
        if (first.topic().work() != Work.GEARS || first.topic().kind() != Topic.Kind.QUANTITY || first.value() == null || second.value() == null) {
            return false;
        }
        double now = first.topic().resolution().base(first.value());
        return Math.abs(first.topic().resolution().base(second.value()) - now) < SAME_GEAR * now;
    }

    private static PlanBLine line(Decision decision, Decision other, Call call, Call second) {
        Work change = decision.topic().work();
        Double written = written(change, call);
        double waits = waits(change, call);
        double takes = (written != null ? written : hands(change)) + waits;
        return new PlanBLine(decision.topic().name(), decision.phrase(), other.phrase() + tyre(decision.topic(), call, second), change, takes, waits,
                written != null, 0);
    }

    /** A pressure belongs to its tyre: of which it is where that changes too, and what the tyre that is on would be given then. */
    private static String tyre(Topic topic, Call first, Call second) {
        if (topic.work() != Work.PRESSURE || PressureSettings.sameTyre(first, second, topic)) {
            return "";
        }
        Topic mounted = Topics.FRONT_TYRE_WIDTH.at(topic.end());
        String width = first.on(mounted).text();
        String other = second.on(mounted).text();
        String kept = PressureSettings.wet(second) ? PressureSettings.kept(first, topic) : "";
        return (width.equals(other) ? " in the other tyre" : " in the " + other + " tyre") + (kept.isEmpty() ? "" : ", or " + kept + " in the one you have");
    }

    /** What the event says a change takes, all of it work; null where it does not say. */
    private static Double written(Work change, Call call) {
        return call.demands().estimated().day().changes().get(change);
    }

    /**
     * The last moment to begin each change so that all are done by one pair of hands before the line-up: what has to wait longest is
     * begun first, and the waits run beside the work on the others. No other order lets the first of them begin later (longest tail
     * first: Jackson, Scheduling a production line to minimize maximum tardiness, 1955; from memory).
     */
    private static Map<Work, Double> begun(List<PlanBLine> lines, Call call) {
        List<Work> changes = new ArrayList<>();
        for (PlanBLine line : lines) {
            if (!changes.contains(line.change())) {
                changes.add(line.change());
            }
        }
        changes.sort(Comparator.comparingDouble(each -> waits(each, call)));
        Map<Work, Double> out = new EnumMap<>(Work.class);
        double free = -LINED_UP;
        for (Work change : changes) {
            Double written = written(change, call);
            free = Math.min(free, -LINED_UP - waits(change, call)) - (written != null ? written : hands(change));
            out.put(change, free);
        }
        return out;
    }

    private static double waits(Work change, Call call) {
        return written(change, call) != null ? 0 : waiting(change, call);
    }

    /**
     * How long a change takes someone who has done it before, parts and tools at hand, s (estimates, common practice, no source). Fresh sealant
     * wants a night to find its leaks, a chain its lubricant a night to creep in or set, a battery to charge. What stops, steers, drives or springs the bike wants a ride
     * by daylight that beds it in and shows its faults, and a night in which a brake that draws air is found: it is done by the evening before.
     */
    static double hands(Work change) {
        return switch (change) {
            case BIKE, BRAKES -> 60 * MIN;
            case TRAVEL -> 3 * HOUR;
            case TYRES, GEARS -> 45 * MIN;
            case UPKEEP, COCKPIT -> 30 * MIN;
            case SEATPOST, CONTACT_POINTS -> 20 * MIN;
            case WHEELS -> 15 * MIN;
            case PRESSURE, ELECTRONICS -> 5 * MIN;
            case SUSPENSION_SETTINGS, LIGHTS, CLOTHING, CARRY -> 10 * MIN;
        };
    }

    private static double waiting(Work change, Call call) {
        return switch (change) {
            case TYRES -> sealed(call) ? 12 * HOUR : 0;
            case BRAKES, COCKPIT, GEARS, SEATPOST, TRAVEL -> 12 * HOUR;
            case UPKEEP -> 8 * HOUR;
            case ELECTRONICS -> 2 * HOUR - 5 * MIN;
            default -> 0;
        };
    }

    private static boolean sealed(Call call) {
        Decision sealant = call.on(Topics.REAR_SEALANT);
        return sealant.value() != null && sealant.topic().text(sealant.value()).equals("tubeless");
    }
}
