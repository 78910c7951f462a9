package courseworthy.worth;

import courseworthy.call.Call;
import courseworthy.course.Course;
import courseworthy.course.ElevationLine;
import courseworthy.course.ElevationThinner;
import courseworthy.course.Ground;
import courseworthy.course.GroundCertainty;
import courseworthy.course.Stretch;
import courseworthy.course.Surface;
import courseworthy.demand.DayDemands;
import courseworthy.demand.DayDemands.Ascent;
import courseworthy.demand.EstimatedRide;
import courseworthy.engine.ShippedRules;
import courseworthy.ride.PossibleGround;
import courseworthy.ride.Range;
import courseworthy.ride.Roughness;
import courseworthy.worth.RoadBook.GearPiece;
import courseworthy.worth.RoadBook.GearUse;
import courseworthy.worth.RoadBook.GroundLook;
import courseworthy.worth.RoadBook.RoadBookGround;
import courseworthy.worth.RoadBook.HeightChange;
import courseworthy.worth.RoadBook.SimplifiedHeights;
import courseworthy.worth.RoadBook.SupportMark;
import courseworthy.worth.RoadBook.RoadBookPassage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/** Makes the road book of a call from the ride that its times come from. */
public final class RoadBookMaker {

    /** How closely clock and gears are given, m: by the kilometre, but in no fewer parts of a lap and no more than so many (judgement). */
    private static final double[] CLOSER = {1000, 500, 200, 100};
    private static final double[] WIDER = {1000, 2000, 5000, 10_000};
    private static final double LEAST_PARTS = 30;
    private static final double MOST_PARTS = 400;
    /** Gradients no further apart are one (computing). */
    private static final double SAME_SLOPE = 1e-9;
    /** What is shorter is left over from adding up lengths, m (computing). */
    private static final double SHORTEST = 0.5;

    private final Course course;
    private final Call call;
    private final EstimatedRide on;
    private final double lap;
    private final ArrivalTimes arrivals;
    private final GearLog gears;
    private final Drivetrain drivetrain;

    private RoadBookMaker(Course course, Call call, Drivetrain mounted) {
        this.course = course;
        this.call = call;
        on = call.demands().estimated();
        lap = on.estimate().way().length();
        arrivals = new ArrivalTimes(on);
        drivetrain = mounted != null ? mounted : GearChoice.decided(call, ShippedRules.realPairs());
        gears = new GearLog(on.estimate(), course.stretches(), GearChoice.turning(call), drivetrain);
    }

    /**
     * The road book of a call.
     *
     * @param course  what was surveyed for it
     * @param mounted rings and cassette of a build, in place of those recommended; null for none
     * @return null where no ride was estimated
     */
    public static RoadBook of(Course course, Call call, Drivetrain mounted) {
        return call.demands().estimated() == null ? null : new RoadBookMaker(course, call, mounted).make();
    }

    private RoadBook make() {
        List<RoadBookGround> ground = ground();
        TreeSet<Double> places = places(ground);
        return new RoadBook(lap, laps(), SimplifiedHeights.of(course.line()), ground, drivetrain, gears(gearPlaces(ground, places)), passages(places), on.day().climbs(), deciding(), marks());
    }

    private int laps() {
        return on.estimate().basis().laps();
    }

    /**
     * Stretches, neighbours that look the same as one; without a measured line only where they climb the same too. Lengths are as they are
     * ridden, which a track may tell a little otherwise.
     */
    private List<RoadBookGround> ground() {
        List<Stretch> stretches = course.stretches();
        double ridden = lap / course.length();
        List<RoadBookGround> out = new ArrayList<>();
        double from = 0;
        for (int first = 0; first < stretches.size();) {
            GroundLook look = look(stretches.get(first));
            HeightChange change = change(stretches.get(first));
            double length = stretches.get(first).length();
            int next = first + 1;
            while (next < stretches.size() && look.equals(look(stretches.get(next))) && goesOn(stretches.get(first), stretches.get(next))) {
                change = sum(change, change(stretches.get(next)));
                length += stretches.get(next++).length();
            }
            double to = next == stretches.size() ? lap : from + length * ridden;
            out.add(new RoadBookGround(from, to, look, change, gears.between(from, to), arrivals.after(from)));
            from = to;
            first = next;
        }
        return out;
    }

    private boolean goesOn(Stretch one, Stretch other) {
        boolean passedAlike = one.onFoot() == other.onFoot() && one.isFerried() == other.isFerried();
        return passedAlike && (on.estimate().way().isMeasured() || sameSlope(one.ascent(), one.length(), other.ascent(), other.length())
                && sameSlope(one.descent(), one.length(), other.descent(), other.length()));
    }

    private static boolean sameSlope(Double one, double oneOver, Double other, double otherOver) {
        return one == null || other == null ? one == other : Math.abs(one / oneOver - other / otherOver) < SAME_SLOPE;
    }

    private static GroundLook look(Stretch stretch) {
        List<Surface> others = new ArrayList<>();
        for (Ground other : stretch.alternatives()) {
            if (other.surface() != null && other.surface() != stretch.ground().surface() && !others.contains(other.surface())) {
                others.add(other.surface());
            }
        }
        return new GroundLook(stretch.ground().surface(), others, GroundCertainty.of(stretch), Roughness.of(stretch.possible()),
                PossibleGround.range(stretch.possible(), ground -> ground.mtbScale() == null ? null : Range.exact(ground.mtbScale())));
    }

    private static HeightChange change(Stretch stretch) {
        boolean known = stretch.ascent() != null || stretch.descent() != null;
        return !known ? null : new HeightChange(stretch.ascent() == null ? 0 : stretch.ascent(), stretch.descent() == null ? 0 : stretch.descent());
    }

    private static HeightChange sum(HeightChange one, HeightChange other) {
        return one == null || other == null ? null : new HeightChange(one.ascent() + other.ascent(), one.descent() + other.descent());
    }

    /** Places on a lap where clock and gears are given: its ends, every so many metres between, and where the ground changes. */
    private TreeSet<Double> places(List<RoadBookGround> ground) {
        double spacing = spacing();
        TreeSet<Double> out = new TreeSet<>();
        out.add(0.0);
        out.add(lap);
        for (RoadBookGround piece : ground) {
            out.add(piece.from());
        }
        for (int i = 1; i * spacing < lap; i++) {
            Double near = out.floor(i * spacing + SHORTEST);
            if (i * spacing - near > SHORTEST && lap - i * spacing > SHORTEST) {
                out.add(i * spacing);
            }
        }
        return out;
    }

    private double spacing() {
        double spacing = CLOSER[0];
        for (int i = 1; i < CLOSER.length && lap / spacing < LEAST_PARTS; i++) {
            spacing = CLOSER[i];
        }
        for (int i = 1; i < WIDER.length && lap / spacing > MOST_PARTS; i++) {
            spacing = WIDER[i];
        }
        return spacing;
    }

    /** Without a measured line nobody knows where on a stretch its hills are, so the gear is given for the whole of it. */
    private TreeSet<Double> gearPlaces(List<RoadBookGround> ground, TreeSet<Double> places) {
        if (on.estimate().way().isMeasured()) {
            return places;
        }
        TreeSet<Double> out = new TreeSet<>();
        ground.forEach(piece -> out.add(piece.from()));
        out.add(lap);
        return out;
    }

    private List<GearPiece> gears(TreeSet<Double> places) {
        List<GearPiece> out = new ArrayList<>();
        Double from = drivetrain == null ? null : places.first();
        while (from != null && from < lap) {
            double to = places.higher(from);
            GearUse use = gears.between(from, to);
            GearPiece last = out.isEmpty() ? null : out.get(out.size() - 1);
            if (last != null && last.use().equals(use)) {
                out.set(out.size() - 1, new GearPiece(last.from(), to, use));
            } else {
                out.add(new GearPiece(from, to, use));
            }
            from = to;
        }
        return out;
    }

    private List<RoadBookPassage> passages(TreeSet<Double> places) {
        List<RoadBookPassage> out = new ArrayList<>();
        for (double at : places) {
            out.add(new RoadBookPassage(at, 1, at == 0 ? Range.exact(0) : arrivals.after(at)));
        }
        for (int i = 2; i <= laps(); i++) {
            out.add(new RoadBookPassage(i * lap, i, arrivals.after(i * lap)));
        }
        return out;
    }

    private Integer deciding() {
        List<Ascent> climbs = on.day().climbs();
        for (int i = 0; i < climbs.size(); i++) {
            if (on.easiestAt() != null && on.easiestAt() >= climbs.get(i).foot() && on.easiestAt() <= climbs.get(i).top()) {
                return i + 1;
            }
        }
        return null;
    }

    private List<SupportMark> marks() {
        List<SupportMark> out = new ArrayList<>();
        for (DayDemands.SupportStop stop : on.day().stops()) {
            out.add(new SupportMark(stop.at(), lapAt(stop.at()), stop.water(), stop.food(), stop.bag(), null));
        }
        for (DayDemands.Latest latest : on.day().latest()) {
            int with = with(out, latest.at());
            SupportMark stop = with < 0 ? new SupportMark(latest.at(), lapAt(latest.at()), false, false, false, null) : out.remove(with);
            out.add(new SupportMark(stop.at(), stop.lap(), stop.water(), stop.food(), stop.bag(), latest.within()));
        }
        out.sort(Comparator.comparingDouble(SupportMark::at));
        return out;
    }

    /** Which of some marks is at a place and has no latest time yet; -1 where none is. */
    private static int with(List<SupportMark> marks, double at) {
        for (int i = 0; i < marks.size(); i++) {
            if (Math.abs(marks.get(i).at() - at) < SHORTEST && marks.get(i).latest() == null) {
                return i;
            }
        }
        return -1;
    }

    private int lapAt(double at) {
        return (int) Math.min(laps(), Math.floor(at / lap) + 1);
    }
}
