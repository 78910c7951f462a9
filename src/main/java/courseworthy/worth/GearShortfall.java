package courseworthy.worth;

import courseworthy.call.Call;
import courseworthy.claim.Claim;
import courseworthy.claim.Verb;
import courseworthy.decision.Decision;
import courseworthy.demand.Demands;
import courseworthy.demand.EstimatedRide.Kind;
import courseworthy.demand.EstimatedRide.RidePiece;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.engine.GearPairs;
import courseworthy.ride.Gearing;
import courseworthy.ride.Range;
import courseworthy.ride.RideChange;
import courseworthy.ride.RideEstimate;
import courseworthy.ride.RideTrace;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * An easiest gear that is harder than the legs need, what it costs, and which kinds of bike have what they need.
 *
 * @param bike     the kind that is called
 * @param gear     the recommended gear as text, with its teeth where some pair has it
 * @param needed   the ratio the legs need, chainring over sprocket
 * @param sustained whether a kilometre of climbing needs it, else the steepest 100 m
 * @param mounted  whether they are the gears of a build, else those of the call
 * @param made     whether rings and a cassette that are ridden together on that kind of bike reach what is needed
 * @param easiest  the easiest gear there is on that kind of bike, chainring over sprocket
 * @param cost     what the recommended gear costs
 * @param others   kinds of bike that have what they need there, in the order of the catalogue; where none has, the one that comes nearest
 */
public record GearShortfall(String bike, String gear, double needed, boolean sustained, boolean mounted, boolean made, double easiest, Cost cost,
        List<Other> others) {

    /** Less than a tooth in fifty, a fiftieth, is no shortfall (judgement). */
    private static final double ABOUT = 1.02;
    /** No harder gear limits the ride: a ratio nobody has (computing). */
    private static final double HARD = 20;

    public GearShortfall {
        others = List.copyOf(others);
    }

    /**
     * What the recommended gear costs.
     *
     * @param cadence where an easier one is needed, a minute; null where the place is not known
     * @param lowest  cadence that the rider turns for long, a minute
     * @param onFoot  time on foot, s
     * @param slower  time lost against a gear that is easy enough, s
     */
    public record Cost(Range cadence, double lowest, double onFoot, double slower) {
    }

    /**
     * Another kind of bike.
     *
     * @param bike    its kind
     * @param easiest the easiest gear there is on it, chainring over sprocket
     * @param needed  what the legs need on it
     * @param total   time of the day on it, s
     */
    public record Other(String bike, double easiest, double needed, Range total) {

        /** Whether its gears are easy enough. */
        public boolean reaches() {
            return easiest <= needed * ABOUT;
        }
    }

    /**
     * Works it out for a call.
     *
     * @param onAnother the demands of the same ride on another kind of bike
     * @return null where the gears are easy enough, or nothing is known of them
     */
    public static GearShortfall of(Call call, GearPairs pairs, Function<String, Demands> onAnother) {
        Decision bike = call.on(Topics.BIKE);
        Decision easiest = call.on(Topics.EASIEST_GEAR);
        Double needed = needed(call.demands());
        if (bike.value() == null || easiest.value() == null || needed == null || call.demands().estimated() == null) {
            return null;
        }
        double decided = easiest.topic().resolution().base(easiest.value());
        if (decided <= needed * ABOUT) {
            return null;
        }
        double least = easiest(pairs, bike.text());
        RideEstimate estimate = call.demands().estimated().estimate();
        CadenceAnalysis turning = GearChoice.turning(call);
        RidePiece piece = call.demands().estimated().easiest();
        boolean sustained = piece != null && piece.kind() == Kind.KILOMETRE;
        double lowest = turning.lowestCadence().mid();
        RideTrace with = estimate.trace(RideChange.NONE.withGearing(new Gearing(List.of(decided, HARD), turning.circumference(), lowest,
                Math.max(lowest, turning.highestCadence().mid()))));
        return new GearShortfall(bike.text(), easiest.text(), needed, sustained, false, least <= needed * ABOUT, least,
                new Cost(piece == null ? null : turning.climbed(piece, decided).cadence(), lowest, onFoot(with),
                        Math.max(0, with.total() - estimate.trace().total())), others(bike, pairs, onAnother));
    }

    /** The same, of the gears of a build. */
    public GearShortfall ofABuild() {
        return new GearShortfall(bike, gear, needed, sustained, true, made, easiest, cost, others);
    }

    private static List<Other> others(Decision bike, GearPairs pairs, Function<String, Demands> onAnother) {
        List<Other> out = new ArrayList<>();
        Topic topic = bike.topic();
        for (long kind = topic.least(); kind <= topic.most(); kind++) {
            if (kind != bike.value() && !ruledOut(bike, kind)) {
                double least = easiest(pairs, topic.text(kind));
                Demands demands = least < easiest(pairs, bike.text()) ? onAnother.apply(topic.text(kind)) : null;
                Double needed = demands == null ? null : needed(demands);
                if (needed != null) {
                    out.add(new Other(topic.text(kind), least, needed, demands.estimated().estimate().total()));
                }
            }
        }
        return out.stream().anyMatch(Other::reaches) ? out.stream().filter(Other::reaches).toList()
                : out.stream().min(Comparator.comparingDouble(each -> each.easiest() / each.needed())).stream().toList();
    }

    private static boolean ruledOut(Decision bike, long kind) {
        for (Claim claim : bike.taken()) {
            if (claim.verb() == Verb.RULE_OUT && claim.value() == kind) {
                return true;
            }
        }
        return false;
    }

    private static double easiest(GearPairs pairs, String bike) {
        double least = Double.MAX_VALUE;
        for (GearPairs.Teeth teeth : pairs.on(bike)) {
            least = Math.min(least, Drivetrain.of(teeth).easiest().ratio());
        }
        return least;
    }

    /** The easier of what the steepest 100 m and the hardest kilometre ask for; null where neither is known. */
    private static Double needed(Demands demands) {
        Double steepest = ratio(demands, Measure.RATIO_NEEDED_WHERE_IT_IS_STEEPEST);
        Double sustained = ratio(demands, Measure.RATIO_NEEDED_ON_THE_LAST_CLIMB);
        return steepest == null ? sustained : sustained == null ? steepest : Double.valueOf(Math.min(steepest, sustained));
    }

    private static Double ratio(Demands demands, Measure measure) {
        MeasureValue value = demands.get(measure);
        return value == null ? null : Double.valueOf(measure.scale().resolution().base(value.mid()));
    }

    private static double onFoot(RideTrace trace) {
        double seconds = 0;
        for (int at = 0; at < trace.size(); at++) {
            seconds += trace.onFoot(at);
        }
        return seconds;
    }
}
