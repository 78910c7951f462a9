package courseworthy.ride;

import courseworthy.course.Course;
import courseworthy.course.Ground;
import courseworthy.course.GroundOrigin;
import courseworthy.course.GroundPairs;
import courseworthy.course.RecordedRide;
import courseworthy.course.Smoothness;
import courseworthy.course.Stretch;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * What the speed of a recorded ride says of ground that is not known. How hard it was ridden is found on ground that is known, so that the model takes
 * there as long as was recorded. Then the model rides each piece on each ground that it may be; grounds on which it would have taken clearly longer or
 * shorter are left out. What remains is a range, never one ground, and nothing that is mapped or written changes.
 */
public final class RecordedGround {

    /** Stands as the rule by which ground was inferred. */
    public static final String RULE = "recorded-ride";

    /** What ground of which nothing is known may be: good to horrible, the rough ones as trails are (common practice, no source). */
    private static final List<Ground> LADDER = List.of(
            Ground.builder().smoothness(Smoothness.GOOD).build(),
            Ground.builder().smoothness(Smoothness.INTERMEDIATE).build(),
            Ground.builder().smoothness(Smoothness.BAD).build(),
            Ground.builder().smoothness(Smoothness.VERY_BAD).mtbScale(1.0).build(),
            Ground.builder().smoothness(Smoothness.HORRIBLE).mtbScale(2.0).build());
    /** Over less a recorded time says little, m (judgement: a quarter of a minute lost at a gate would be a sixth of it). */
    private static final double SHORTEST = 400;
    /** Longer pieces are judged part by part, m (judgement). */
    private static final double LONGEST = 2000;
    /** So much known ground is needed to tell how hard the ride was ridden, m (judgement). */
    private static final double REFERENCE = 2000;
    /** Known ground is compared part by part to see how evenly it was ridden, m (judgement). */
    private static final double PART = 1000;
    /** How unevenly, as a share of the time of a part, where that cannot be seen (judgement: junctions, wind and company). */
    private static final double UNEVEN = 0.15;
    /** Parts from which it can (judgement). */
    private static final int PARTS = 8;
    /** The 95th hundredth of a normal distribution, in standard deviations (exact to its digits). */
    private static final double OF_NORMAL = 1.645;
    /** Height of the start where none is known, m (judgement: its error is in the air's). */
    private static final double START_HEIGHT = 300;
    /** A rider of whom nothing is known, and what is carried, kg (common practice, no source). */
    private static final Range RIDER = Range.within(75, 10);
    private static final Range CARRIED = new Range(2.6, 4.2, 6.5);
    private static final int GOOD_RIDER = 2;
    /** Temperature on a day of which nothing is known, C (judgement). */
    private static final double TEMPERATURE = 15;
    private static final Range CLIMBING = Range.within(1, 0.05);
    /** Between what the hour power of a rider is looked for, W (judgement). */
    private static final double LEAST_POWER = 40;
    private static final double MOST_POWER = 600;
    /** Modelled and recorded time agree to this share (computing). */
    private static final double AGREED = 0.003;

    private final Course course;
    private final BikeKind kind;
    private final List<Stretch> stretches;
    /** By stretch: riding time as recorded, s; NaN where it was not. */
    private final double[] recorded;
    private final double[] from;
    private final RecordedTimes times;

    private RecordedGround(Course course, RecordedRide ride, BikeKind kind) {
        this.course = course;
        this.kind = kind;
        this.stretches = parts(course.stretches());
        this.recorded = new double[stretches.size()];
        this.from = new double[stretches.size() + 1];
        this.times = RecordedTimes.of(course.track(), ride);
        for (int i = 0; i < recorded.length; i++) {
            from[i + 1] = from[i] + stretches.get(i).length();
            recorded[i] = times.between(from[i], Math.min(from[i + 1], course.track().length()));
        }
    }

    /**
     * The course with what a ride hints at, and a note on how much that is.
     *
     * @param course with a track
     * @param kind   of the bike that was ridden
     */
    public static Course hinted(Course course, RecordedRide ride, BikeKind kind) {
        return new RecordedGround(course, ride, kind).hinted();
    }

    private static boolean isKnown(Ground ground) {
        return Roughness.of(ground) != null;
    }

    private static boolean isOpen(Stretch stretch) {
        return !isKnown(stretch.ground()) || !stretch.alternatives().isEmpty();
    }

    private static List<Stretch> parts(List<Stretch> whole) {
        List<Stretch> out = new ArrayList<>();
        for (Stretch stretch : whole) {
            int parts = isOpen(stretch) ? (int) Math.ceil(stretch.length() / LONGEST) : 1;
            for (int i = 0; i < parts; i++) {
                out.add(parts == 1 ? stretch : stretch.over(stretch.length() / parts, part(stretch.ascent(), parts), part(stretch.descent(), parts)));
            }
        }
        return out;
    }

    private static Double part(Double metres, int parts) {
        return metres == null ? null : Double.valueOf(metres / parts);
    }

    /** Whether a ride may tell something of a stretch. */
    private boolean isAsked(int i) {
        return isOpen(stretches.get(i)) && stretches.get(i).length() >= SHORTEST && !Double.isNaN(recorded[i]);
    }

    private boolean isReference(int i) {
        return !isOpen(stretches.get(i)) && !Double.isNaN(recorded[i]);
    }

    private Course hinted() {
        double asked = 0;
        double reference = 0;
        int most = 0;
        for (int i = 0; i < recorded.length; i++) {
            asked += isAsked(i) ? stretches.get(i).length() : 0;
            reference += isReference(i) ? stretches.get(i).length() : 0;
            most = isAsked(i) ? Math.max(most, possible(stretches.get(i)).size()) : most;
        }
        if (asked == 0) {
            return noted("The recorded ride gives no hint: it passes over no piece of unknown ground of at least " + Math.round(SHORTEST) + " m.");
        }
        if (reference < REFERENCE) {
            return noted("The recorded ride gives no hint: only " + kilometres(reference) + " km of it lie on ground that is known, and at least "
                    + kilometres(REFERENCE) + " km are needed to tell how hard it was ridden.");
        }
        List<RideEstimate> rides = new ArrayList<>();
        for (int each = 0; each < most; each++) {
            rides.add(ridden(each));
        }
        return hinted(rides, reference);
    }

    private static String kilometres(double metres) {
        return String.format(Locale.ROOT, "%.1f", metres / 1000);
    }

    private Course noted(String note) {
        return withNote(course.stretches(), note);
    }

    private Course withNote(List<Stretch> ground, String note) {
        List<String> notes = new ArrayList<>(course.notes());
        notes.add(note);
        return course.with(ground, notes);
    }

    /** What a stretch may be, the likely one first. */
    private static List<Ground> possible(Stretch stretch) {
        if (stretch.alternatives().isEmpty()) {
            return LADDER.stream().map(stretch.ground()::orElse).filter(each -> GroundPairs.agree(GroundPairs.of(each))).toList();
        }
        return stretch.possible().stream().filter(RecordedGround::isKnown).toList();
    }

    /** The whole course on one of the grounds that each stretch may be, ridden so hard that known ground takes as long as was recorded. */
    private RideEstimate ridden(int which) {
        List<Stretch> ground = new ArrayList<>();
        for (Stretch stretch : stretches) {
            List<Ground> possible = possible(stretch);
            ground.add(!isOpen(stretch) || possible.isEmpty() ? stretch : stretch.known(possible.get(Math.min(which, possible.size() - 1))));
        }
        Course tried = course.with(ground);
        DiscretisedCourse way = DiscretisedCourse.of(tried, START_HEIGHT);
        double low = LEAST_POWER;
        double high = MOST_POWER;
        RideEstimate out = null;
        double off = 1;
        double power = 180;
        while (Math.abs(off) > AGREED && high / low > 1.001) {
            out = RideEstimate.of(way, rider(power), ground);
            off = off(out);
            if (off > 0) {
                low = power;
            } else {
                high = power;
            }
            double next = power * Math.exp(2 * off);
            power = next > low && next < high ? next : Math.sqrt(low * high);
        }
        return out;
    }

    /** How much longer than recorded the model takes on known ground, as a logarithm. */
    private double off(RideEstimate ride) {
        double model = 0;
        double took = 0;
        for (int i = 0; i < recorded.length; i++) {
            if (isReference(i)) {
                model += ride.arrivalAt(at(ride, from[i + 1])) - ride.arrivalAt(at(ride, from[i]));
                took += recorded[i];
            }
        }
        return Math.log(model / took);
    }

    /** A place of the course on the way that is ridden, m. */
    private double at(RideEstimate ride, double metres) {
        return metres * ride.way().length() / from[from.length - 1];
    }

    private RideAssumptions rider(double power) {
        return new RideAssumptions(kind, kind.mass().plus(RIDER).plus(CARRIED), DragArea.alone(kind, RIDER.mid()),
                new RideAssumptions.PacingRanges(Range.exact(power), Range.exact(1), true), GOOD_RIDER, 0, 1, -1, CLIMBING,
                new RideAssumptions.WeatherAssumptions(TEMPERATURE, START_HEIGHT, false, 0, Double.NaN));
    }

    /** How far the recorded time of a part of known ground lies from the model's: standard deviation as a share. */
    private double uneven(RideEstimate ride) {
        double squares = 0;
        int parts = 0;
        double model = 0;
        double took = 0;
        double length = 0;
        for (int i = 0; i < recorded.length; i++) {
            if (!isReference(i)) {
                continue;
            }
            int pieces = (int) Math.max(1, Math.round(stretches.get(i).length() / PART));
            for (int piece = 0; piece < pieces; piece++) {
                double start = from[i] + piece * stretches.get(i).length() / pieces;
                double end = from[i] + (piece + 1) * stretches.get(i).length() / pieces;
                double time = times.between(start, end);
                if (Double.isNaN(time)) {
                    continue;
                }
                took += time;
                model += ride.arrivalAt(at(ride, end)) - ride.arrivalAt(at(ride, start));
                length += end - start;
                if (length >= PART / 2) {
                    squares += Math.pow(Math.log(took / model), 2) * length / PART;
                    parts++;
                    model = 0;
                    took = 0;
                    length = 0;
                }
            }
        }
        return parts < PARTS ? UNEVEN : Math.sqrt(squares / parts);
    }

    private Course hinted(List<RideEstimate> rides, double reference) {
        List<Stretch> out = new ArrayList<>();
        double[] uneven = rides.stream().mapToDouble(this::uneven).toArray();
        double known = 0;
        double asked = 0;
        for (int i = 0; i < recorded.length; i++) {
            Stretch stretch = stretches.get(i);
            Stretch hinted = isAsked(i) ? hinted(i, rides, uneven, reference) : null;
            asked += isAsked(i) ? stretch.length() : 0;
            known += hinted == null ? 0 : stretch.length();
            out.add(hinted == null ? stretch : hinted);
        }
        String of = kilometres(known) + " of the " + kilometres(asked) + " km of unknown ground that it passes over";
        return known == 0 ? noted("The recorded ride gives no hint on any of the " + kilometres(asked) + " km of unknown ground that it passes over.")
                : withNote(out, "The recorded ride hints at how rough the ground may be on " + of + ": a range, from its speed alone, as of a ride on a "
                + kind.written() + " bike.");
    }

    /** A stretch with fewer grounds that it may be; null where the ride leaves out none, or all. */
    private Stretch hinted(int i, List<RideEstimate> rides, double[] uneven, double reference) {
        Stretch stretch = stretches.get(i);
        List<Ground> possible = possible(stretch);
        List<Ground> left = new ArrayList<>();
        double[] off = new double[possible.size()];
        for (int each = 0; each < possible.size(); each++) {
            RideEstimate ride = rides.get(each);
            Range took = ride.betweenOfAKnownTotal(at(ride, from[i]), at(ride, from[i + 1]));
            off[each] = Math.log(recorded[i] / took.mid());
            double most = off[each] > 0 ? Math.log(took.high() / took.mid()) : Math.log(took.mid() / Math.max(1, took.low()));
            double apart = OF_NORMAL * uneven[each] * Math.sqrt(PART / stretch.length() + PART / reference);
            if (Math.abs(off[each]) <= Math.max(most, apart)) {
                left.add(possible.get(each));
            }
        }
        if (left.size() == 1) {
            left = withNext(left.get(0), possible, off);
        }
        return left.size() < 2 || left.size() == possible.size() ? null : narrowed(stretch, left);
    }

    /** One ground and the next that fits best: speed alone tells no single one. */
    private static List<Ground> withNext(Ground one, List<Ground> possible, double[] off) {
        int next = -1;
        for (int i = 0; i < off.length; i++) {
            if (!possible.get(i).equals(one) && (next < 0 || Math.abs(off[i]) < Math.abs(off[next]))) {
                next = i;
            }
        }
        Ground second = possible.get(next);
        return possible.stream().filter(each -> each.equals(one) || each.equals(second)).toList();
    }

    /** Where the likely ground is among those left out, only what is mapped or written stays. */
    private static Stretch narrowed(Stretch stretch, List<Ground> left) {
        GroundOrigin before = stretch.origin() == null ? GroundOrigin.UNMATCHED : stretch.origin();
        Map<String, Map<String, String>> inferred = new LinkedHashMap<>(before.inferred());
        List<Ground> others = new ArrayList<>(left);
        Ground likely = stretch.ground();
        if (!others.remove(likely) && isKnown(likely)) {
            Map<String, String> kept = GroundPairs.of(likely);
            before.imported().keySet().stream().filter(key -> !before.mapped().containsKey(key)).forEach(kept::remove);
            likely = GroundPairs.ground(kept);
            inferred.replaceAll((rule, values) -> Map.of());
        }
        inferred.put(RULE, Map.of());
        return new Stretch(stretch.length(), stretch.ascent(), stretch.descent(), stretch.steepest(), likely, others,
                new GroundOrigin(before.way(), before.mapped(), inferred), stretch.line()).passed(stretch.passage());
    }
}
