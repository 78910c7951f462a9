package courseworthy.build;

import courseworthy.build.BuildCount.Shortfall;
import courseworthy.call.Call;
import courseworthy.claim.Claim;
import courseworthy.claim.Rank;
import courseworthy.claim.Verb;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Status;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.ToLongFunction;

/**
 * What the decisions want of parts, and what a part loses against them. A loss is counted in notches, a notch being the smallest
 * difference that is worth a swap (judgement, no source), times the weight of the strongest advice behind the decision: must 4,
 * should 2, may 1. More than is wanted of what only weighs more (gears, rotors, dropper travel) is no loss, nor is the safe side of a limit.
 *
 * <p>In a race, where the time between what is decided and what a part has can be computed, every whole 10 s of it on this course is a
 * notch more, whichever of the two is faster: what is slower costs that time, and what is faster gives up what the call spent it on,
 * which was worth at least as much to it. So the force of the advice and the time multiply, and neither outvotes the other.
 *
 * <p>Where one build is ridden on several days, the losses of all days are added, and a limit of any day is a limit.
 */
final class BuildObjective {

    /** A part may not be used, because it breaks a limit that is not one of fit. */
    static final long FORBIDDEN = Long.MAX_VALUE / 4;

    /** What a place costs that needs a part and has none: more than any other loss. */
    static final long EMPTY = 100_000;

    /** What a part of unknown figures, and an option other than the one wanted, count as, in notches (practice). */
    private static final int UNKNOWN_NOTCHES = 2;
    private static final int OTHER_OPTION = 2;

    /** Limits of the bike at hand as written for it alone: with a workshop, fit says the same of the parts themselves. */
    private static final Set<String> SAID_BY_FIT = Set.of("limit/tyre-clears-the-frame", "limit/tyre-wider-than-the-rim",
            "limit/fork-travel-the-frame-permits", "limit/rotors-the-frame-permits", "limit/bike-above-its-marks", "limit/not-made-for-tubeless");

    /** So many seconds on the course are a notch (judgement, no source). */
    static final long NOTCH_SECONDS = 10;

    /** What has more of these than is wanted meets it, and pays for it by its mass alone (common practice, no source). */
    private static final Map<Topic, Topic.Safe> ENOUGH = Map.of(Topics.EASIEST_GEAR, Topic.Safe.DOWN, Topics.HARDEST_GEAR, Topic.Safe.UP,
            Topics.FRONT_ROTOR, Topic.Safe.UP, Topics.REAR_ROTOR, Topic.Safe.UP, Topics.DROPPER_TRAVEL, Topic.Safe.UP);

    private final TimeSavings returns;
    private final Map<MountingPlace, List<Aim>> byPlace = new EnumMap<>(MountingPlace.class);
    private final List<Aim> ofBike = new ArrayList<>();
    private final List<Aim> ofGears = new ArrayList<>();
    private final Aim power;
    private final List<BuildObjective> others;

    /** @param returns what departures cost in time */
    BuildObjective(Call call, TimeSavings returns) {
        this(call, returns, List.of());
    }

    /** Of a recommendation, with those of the other days on which the build is ridden. */
    static BuildObjective of(Recommendation recommendation) {
        return new BuildObjective(recommendation.call(), TimeSavings.of(recommendation.call(), recommendation.worths()),
                recommendation.others().stream().map(BuildObjective::of).toList());
    }

    private BuildObjective(Call call, TimeSavings returns, List<BuildObjective> others) {
        this.returns = returns;
        this.others = others;
        Aim meter = null;
        for (Decision decision : call.decisions()) {
            for (TopicPlacement wanted : decision.status() == Status.SETTLED ? TopicPlacement.all(decision.topic()) : List.<TopicPlacement>of()) {
                Aim aim = aim(decision, wanted, returns);
                switch (wanted.of()) {
                    case BIKE -> ofBike.add(aim);
                    case GEARS -> ofGears.add(aim);
                    case POWER -> meter = aim;
                    default -> byPlace.computeIfAbsent(wanted.place(), place -> new ArrayList<>()).add(aim);
                }
            }
        }
        power = meter;
    }

    /**
     * What one decision wants.
     *
     * @param decision the decision
     * @param wanted   where it is realised
     * @param weight   of being off its value, 0 where nothing was preferred
     * @param returns  what being off it costs in time
     */
    record Aim(Decision decision, TopicPlacement wanted, int weight, TimeSavings returns) {

        Topic topic() {
            return decision.topic();
        }

        /** What a part has, in the topic's ticks or positions: null where it does not say, or where it is a bar of another kind of bike. */
        Long got(Part part) {
            return concerns(part) ? wanted.got(part) : null;
        }

        /** Whether the decision is about such a part: the width of a drop bar says nothing of a flat one. */
        boolean concerns(Part part) {
            return topic() != Topics.BAR_WIDTH || part == null || TopicPlacement.isDropBar(part) == null
                    || TopicPlacement.isDropBar(part) == decision.value() <= topic().resolution().ticks(TopicPlacement.WIDEST_DROP_BAR);
        }

        /** @param got ticks or a position; null where the part does not say */
        long loss(Long got) {
            return shortfall(got).loss();
        }

        /** How far a part is off. @param got ticks or a position; null where the part does not say */
        Shortfall shortfall(Long got) {
            if (got == null) {
                return new Shortfall(Math.max(1, weight), UNKNOWN_NOTCHES, 0, 0);
            }
            boolean meets = weight == 0 || suffices(got);
            long bounds = 0;
            for (Claim claim : decision.taken()) {
                long off = off(claim, got);
                bounds = off > 0 && isLimit(claim) ? FORBIDDEN : bounds + off * claim.origin().force().weight();
                if (bounds >= FORBIDDEN) {
                    break;
                }
            }
            return new Shortfall(weight, meets ? 0 : notches(got, decision.value()), meets ? 0 : secondsApart(got, decision.value()), bounds);
        }

        /** Whether a part is on the side of the decision on which more does no harm: a cassette of finer steps is as it should be. */
        boolean suffices(long got) {
            Topic.Safe side = topic().limit().isEmpty() ? ENOUGH.get(topic()) : topic().safe();
            return side == Topic.Safe.UP ? got >= decision.value() : side == Topic.Safe.DOWN && got <= decision.value();
        }

        private boolean isLimit(Claim claim) {
            return claim.origin().rank() == Rank.LIMIT && !SAID_BY_FIT.contains(claim.origin().rule());
        }

        /** How far beyond a bound or a veto, in notches; joins between topics are left to the rules of fit. */
        private long off(Claim claim, long got) {
            if (claim.origin().rule().startsWith("pairing/") || SAID_BY_FIT.contains(claim.origin().rule())) {
                return 0;
            }
            return switch (claim.verb()) {
                case AT_LEAST -> got < claim.value() ? beyond(claim, got) : 0;
                case AT_MOST -> got > claim.value() ? beyond(claim, got) : 0;
                case RULE_OUT, AVOID -> got == claim.value() ? OTHER_OPTION + timed(got, decision.value()) : 0;
                default -> 0;
            };
        }

        private long beyond(Claim claim, long got) {
            return Math.max(1, notches(got, claim.value())) + timed(got, claim.value());
        }

        private long timed(long got, long value) {
            return secondsApart(got, value) / NOTCH_SECONDS;
        }

        private long secondsApart(long got, long value) {
            return got == value ? 0 : returns.apart(topic(), value, got);
        }

        private long notches(long got, long value) {
            return switch (topic().kind()) {
                case OPTIONS -> got == value ? 0 : OTHER_OPTION;
                case ORDERED -> Math.abs(got - value);
                case QUANTITY -> {
                    long notch = topic().notch();
                    yield (Math.abs(got - value) + notch / 2) / notch;
                }
            };
        }
    }

    private static Aim aim(Decision decision, TopicPlacement wanted, TimeSavings returns) {
        int weight = 0;
        for (Claim claim : decision.taken()) {
            switch (claim.verb()) {
                case PREFER, AVOID -> weight = Math.max(weight, claim.origin().force().weight());
                default -> {
                }
            }
        }
        // A middle between wishes meets none of them, and still is what weighs least against all.
        for (Decision.LosingClaim lost : weight == 0 ? decision.lost() : List.<Decision.LosingClaim>of()) {
            boolean voted = lost.how() == Decision.How.OUTVOTED && lost.claim().verb() == Verb.PREFER;
            weight = voted ? Math.max(weight, lost.claim().origin().force().weight()) : weight;
        }
        return new Aim(decision, wanted, weight, returns);
    }

    /** Seconds that 1 kg less returns, over all days. */
    long perKilogram() {
        return returns.perKilogram() + over(BuildObjective::perKilogram);
    }

    /** A figure of the other days, added up; never more than what forbids a part. */
    private long over(ToLongFunction<BuildObjective> figure) {
        long sum = 0;
        for (BuildObjective each : others) {
            sum = Math.min(FORBIDDEN, sum + figure.applyAsLong(each));
        }
        return sum;
    }

    /** Whether front and rear tyre are decided alike, so that a pair serves. */
    boolean pairOfTyres() {
        for (Aim front : byPlace.getOrDefault(MountingPlace.FRONT_TYRE, List.of())) {
            for (Aim rear : byPlace.getOrDefault(MountingPlace.REAR_TYRE, List.of())) {
                if (front.topic().isFrontOf(rear.topic()) && !rear.decision().value().equals(front.decision().value())) {
                    return false;
                }
            }
        }
        return others.stream().allMatch(BuildObjective::pairOfTyres);
    }

    /** What was decided for a place. */
    List<Aim> at(MountingPlace place) {
        return byPlace.getOrDefault(place, List.of());
    }

    /** What was decided for rings and cassette together. */
    List<Aim> ofGears() {
        return ofGears;
    }

    /** What a bike loses by itself: another kind, other rear travel. */
    long ofBike(Part bike) {
        return Math.min(FORBIDDEN, sum(ofBike, bike) + over(each -> each.ofBike(bike)));
    }

    /** What a part loses in a place; a place left empty is asked with null, and costs dearly where a bike needs a part there. */
    long of(MountingPlace place, Part part) {
        return part == null && place.needed() ? EMPTY : Math.min(FORBIDDEN, sum(byPlace.getOrDefault(place, List.of()), part) + over(each -> each.of(place, part)));
    }

    private static long sum(List<Aim> aims, Part part) {
        long sum = 0;
        for (Aim aim : aims) {
            long loss = aim.loss(aim.got(part));
            if (loss >= FORBIDDEN) {
                return FORBIDDEN;
            }
            sum += loss;
        }
        return sum;
    }

    /** What rings and cassette lose together. */
    long ofGears(Part rings, Part cassette) {
        long sum = 0;
        for (Aim aim : ofGears) {
            sum += aim.loss(TopicPlacement.gear(aim.topic(), rings, cassette));
        }
        return sum + over(each -> each.ofGears(rings, cassette));
    }

    /** What is decided of a power meter, in words; null where nothing is. */
    String power() {
        String other = others.stream().map(BuildObjective::power).filter(Objects::nonNull).findFirst().orElse(null);
        return power == null ? other : power.topic().name() + " " + power.decision().phrase();
    }

    /** What is lost for want of a power meter, or for having one. */
    long ofPower(Part crank, Part pedals, Part meter) {
        return (power == null ? 0 : power.loss(TopicPlacement.power(power.topic(), crank, pedals, meter))) + over(each -> each.ofPower(crank, pedals, meter));
    }

    /**
     * What a build loses in all, in notches.
     *
     * @param places those that were decided on; others are as they are
     * @param meter  the power meter on its crank; null for none
     */
    long of(Part bike, Map<MountingPlace, Part> parts, Set<MountingPlace> places, Part meter) {
        long sum = 0;
        for (AimedValue each : counted(bike, parts, places, meter)) {
            sum = Math.min(FORBIDDEN, sum + each.loss());
        }
        for (MountingPlace place : places) {
            sum += parts.get(place) == null && place.needed() ? EMPTY : 0;
        }
        return Math.min(FORBIDDEN, sum);
    }

    /** What a build has on every decision that counts, on every day. @param places those that were decided on */
    List<AimedValue> counted(Part bike, Map<MountingPlace, Part> parts, Set<MountingPlace> places, Part meter) {
        List<AimedValue> out = new ArrayList<>(gotOfBike(bike));
        for (MountingPlace place : places) {
            Part part = parts.get(place);
            for (Aim aim : part == null && place.needed() ? List.<Aim>of() : at(place)) {
                out.add(new AimedValue(aim, aim.got(part)));
            }
        }
        Part rings = parts.get(MountingPlace.CHAINRING);
        Part cassette = parts.get(MountingPlace.CASSETTE);
        boolean geared = rings != null && cassette != null && places.contains(MountingPlace.CHAINRING) && places.contains(MountingPlace.CASSETTE);
        for (Aim aim : geared ? ofGears : List.<Aim>of()) {
            out.add(new AimedValue(aim, TopicPlacement.gear(aim.topic(), rings, cassette)));
        }
        if (power != null && places.contains(MountingPlace.CRANK)) {
            out.add(new AimedValue(power, TopicPlacement.power(power.topic(), parts.get(MountingPlace.CRANK), parts.get(MountingPlace.PEDALS), meter)));
        }
        others.forEach(each -> out.addAll(each.counted(bike, parts, places, meter)));
        return out;
    }

    /** What a bike by itself has on every decision that counts, on every day. */
    List<AimedValue> countedOfBike(Part bike) {
        List<AimedValue> out = new ArrayList<>(gotOfBike(bike));
        others.forEach(each -> out.addAll(each.countedOfBike(bike)));
        return out;
    }

    private List<AimedValue> gotOfBike(Part bike) {
        return ofBike.stream().map(aim -> new AimedValue(aim, aim.got(bike))).toList();
    }

    /** Everything wanted, to say what was not met, with what was got. */
    List<AimedValue> got(Part bike, Map<MountingPlace, Part> parts) {
        List<AimedValue> out = new ArrayList<>(gotOfBike(bike));
        byPlace.forEach((place, aims) -> {
            for (Aim aim : aims) {
                Part part = parts.get(place);
                if ((part != null || !place.needed()) && aim.concerns(part)) {
                    out.add(new AimedValue(aim, aim.got(part)));
                }
            }
        });
        if (parts.get(MountingPlace.CHAINRING) != null && parts.get(MountingPlace.CASSETTE) != null) {
            for (Aim aim : ofGears) {
                out.add(new AimedValue(aim, TopicPlacement.gear(aim.topic(), parts.get(MountingPlace.CHAINRING), parts.get(MountingPlace.CASSETTE))));
            }
        }
        if (power != null && parts.get(MountingPlace.CRANK) != null) {
            out.add(new AimedValue(power, TopicPlacement.power(power.topic(), parts.get(MountingPlace.CRANK), parts.get(MountingPlace.PEDALS), parts.get(MountingPlace.METER))));
        }
        return out;
    }

    /**
     * What a build has on a topic.
     *
     * @param value ticks or a position; null where the part does not say
     */
    record AimedValue(Aim aim, Long value) {
        long loss() {
            return aim.loss(value);
        }
    }

    /** The tread of a tyre and the like, as a position among a topic's options. */
    static Long option(Topic topic, String word) {
        int position = word == null ? -1 : topic.option(word);
        return position < 0 ? null : Long.valueOf(position);
    }

    static Long option(Topic topic, Boolean yes, String whenYes, String whenNo) {
        return yes == null ? null : option(topic, yes ? whenYes : whenNo);
    }

    static Long ticks(Topic topic, Part part, PartDetail detail) {
        Double value = part.number(detail);
        return value == null ? null : Long.valueOf(topic.resolution().ticks(value.doubleValue()));
    }
}
