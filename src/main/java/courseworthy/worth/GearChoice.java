package courseworthy.worth;

import courseworthy.call.Call;
import courseworthy.decision.Decision;
import courseworthy.demand.EstimatedRide;
import courseworthy.demand.EstimatedRide.RidePiece;
import courseworthy.engine.GearPairs;
import courseworthy.ride.BikeKind;
import courseworthy.ride.Range;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What a course asks of the gears, and what rings and cassettes that are ridden together give on it.
 *
 * @param bike     the kind of bike they are for
 * @param ridden   the kind of bike the estimate rides
 * @param width    of the driven tyre, m
 * @param lowest   cadence the rider turns for long on a climb, a minute
 * @param usual    cadence at which gears are changed, a minute
 * @param highest  cadence the rider turns for long, a minute
 * @param pieces   where it is steep
 * @param decided  the decided gears; null where the decision names none that are made
 * @param common   what else is ridden, the easiest first: what no other beats in easiest gear, hardest gear and largest step at once,
 *                 those nearest the decided
 */
public record GearChoice(String bike, String ridden, double width, Range lowest, double usual, Range highest, List<RidePiece> pieces,
        DrivetrainResult decided, List<DrivetrainResult> common) {

    /** So many besides the decided (judgement). */
    private static final int SHOWN = 9;
    /** Bead seat diameter of all kinds of bike here, m (ISO 5775-1: 622 mm). */
    private static final double BEAD_SEAT = 0.622;

    public GearChoice {
        pieces = List.copyOf(pieces);
        common = List.copyOf(common);
    }

    /**
     * Works it out for a call.
     *
     * @param call  surveyed
     * @param pairs the gears that exist
     */
    public static GearChoice of(Call call, GearPairs pairs) {
        return of(call, pairs, null);
    }

    /** As {@link #of(Call, RealPairs)}. @param mounted rings and cassette of a build, in place of the decided; null for none */
    public static GearChoice of(Call call, GearPairs pairs, Drivetrain mounted) {
        String bike = text(call, Topics.BIKE);
        double width = width(call);
        CadenceAnalysis turning = new CadenceAnalysis(call.demands(), BikeKind.circumference(BEAD_SEAT, width));
        Drivetrain decided = mounted == null ? decided(call, pairs) : mounted;
        List<DrivetrainResult> common = new ArrayList<>();
        for (Drivetrain each : nearest(decided, pairs.within(GearPairs.allowed(call.demands())).on(bike))) {
            common.add(turning.of(each));
        }
        EstimatedRide on = call.demands().estimated();
        return new GearChoice(bike, on.estimate().basis().kind().written(), width, turning.lowestCadence(), turning.usualCadence(),
                turning.highestCadence(), on.pieces(), decided == null ? null : turning.of(decided), common);
    }

    /** How the cranks turn with the wheel a call decides. */
    static CadenceAnalysis turning(Call call) {
        return new CadenceAnalysis(call.demands(), BikeKind.circumference(BEAD_SEAT, width(call)));
    }

    /** Width of the driven tyre, m; the usual one of the bike where none is decided. */
    private static double width(Call call) {
        Decision width = call.on(Topics.REAR_TYRE_WIDTH);
        return width.value() == null ? call.demands().estimated().estimate().basis().kind().tyreWidth()
                : width.topic().resolution().base(width.value());
    }

    private static String text(Call call, Topic topic) {
        Decision decision = call.on(topic);
        return decision.value() == null ? call.demands().estimated().estimate().basis().kind().written()
                : decision.topic().text(decision.value());
    }

    /** The rings and the cassette of a call; null where it names none that are made. */
    static Drivetrain decided(Call call, GearPairs pairs) {
        Long easiest = call.on(Topics.EASIEST_GEAR).value();
        Long hardest = call.on(Topics.HARDEST_GEAR).value();
        Long step = call.on(Topics.LARGEST_STEP).value();
        if (easiest == null || hardest == null || step == null) {
            return null;
        }
        List<GearPairs.Teeth> made = pairs.within(GearPairs.allowed(call.demands())).with(text(call, Topics.BIKE), easiest, hardest, step);
        return made.isEmpty() ? null : Drivetrain.of(made.get(0));
    }

    private static List<Drivetrain> nearest(Drivetrain decided, List<GearPairs.Teeth> made) {
        List<Drivetrain> all = new ArrayList<>();
        for (GearPairs.Teeth each : made) {
            Drivetrain drivetrain = Drivetrain.of(each);
            if (!all.contains(drivetrain)) {
                all.add(drivetrain);
            }
        }
        List<Drivetrain> best = new ArrayList<>();
        for (Drivetrain each : all) {
            if (!each.equals(decided) && all.stream().noneMatch(each::beatenBy)) {
                best.add(each);
            }
        }
        if (decided != null) {
            best.sort(Comparator.comparingDouble(each -> Math.abs(Math.log(each.easiest().ratio() / decided.easiest().ratio()))));
        }
        List<Drivetrain> out = new ArrayList<>(best.subList(0, Math.min(SHOWN, best.size())));
        out.sort(Comparator.comparingDouble((Drivetrain each) -> each.easiest().ratio()).thenComparing(Drivetrain::teeth));
        return out;
    }
}
