package courseworthy.demand;

import courseworthy.course.Course;
import courseworthy.course.Ground;
import courseworthy.course.Smoothness;
import courseworthy.course.Stretch;
import courseworthy.course.Surface;
import courseworthy.ride.Range;
import courseworthy.ride.Roughness;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * What the ground of the stretches asks. A share is of what is known; its low end takes all unknown ground as without, its high end as
 * with, unless said otherwise.
 */
final class TerrainDemands {

    /** Worst part of the course by roughness, as the measure is defined (judgement). */
    private static final double WORST_PART = 0.1;
    /** Of ground no rule applies of, the share that may have cutting stones or loose sand at the high end (practice). */
    private static final double UNSPOKEN = 0.1;

    private final List<Stretch> stretches;
    private final double length;

    TerrainDemands(Course course) {
        this.stretches = course.stretches();
        this.length = course.length();
    }

    /** Ground that is inferred rather than known counts as known, save at the low end. */
    Range known() {
        double likely = 0;
        double certain = 0;
        for (Stretch stretch : stretches) {
            double known = isKnown(stretch.ground()) ? stretch.length() : 0;
            likely += known;
            certain += stretch.alternatives().isEmpty() ? known : 0;
        }
        return new Range(certain, likely, likely).times(1 / length);
    }

    /** What ground can be, cannot be, or is not known to be. */
    enum Property {
        PAVED, GRAVEL, TRAIL, SOFT, LOOSE, SHARP_STONES, SANDY, MUD_ALWAYS, MUD_WHEN_WET, MUD_PERHAPS, STONES_TOLD, SAND_TOLD, MUD_TOLD;

        /** Null where it is not known. */
        Boolean of(Ground ground) {
            Surface surface = ground.surface();
            return switch (this) {
                case PAVED -> surface == null ? null : isPaved(ground);
                case GRAVEL -> surface == null ? null : isOf(surface, Surface.Family.FIRM, Surface.Family.GRAVEL);
                case TRAIL -> surface == null ? null : isOf(surface, Surface.Family.EARTH, Surface.Family.ROCK);
                case SOFT -> surface == null ? null : isOf(surface, Surface.Family.SOFT, Surface.Family.SOFT);
                case LOOSE -> loose(ground);
                case SHARP_STONES -> sharpStones(ground);
                case SANDY -> sandy(ground);
                case MUD_ALWAYS -> surface == Surface.MUD;
                case MUD_WHEN_WET -> surface != Surface.MUD && Boolean.TRUE.equals(ground.mudWhenWet());
                case MUD_PERHAPS -> ground.mudWhenWet() == null && (surface == null || surface.family() == Surface.Family.EARTH);
                case STONES_TOLD -> ground.sharpStones() != null;
                case SAND_TOLD -> surface != null || ground.sand() != null;
                case MUD_TOLD -> surface != null || ground.mudWhenWet() != null;
            };
        }

        private static boolean isOf(Surface surface, Surface.Family one, Surface.Family other) {
            return surface.family() == one || surface.family() == other;
        }
    }

    /** Whether anything is known by which the ground can be judged. */
    static boolean isKnown(Ground ground) {
        return ground.surface() != null || ground.smoothness() != null || ground.trackGrade() != null || ground.mtbScale() != null;
    }

    static boolean isPaved(Ground ground) {
        return ground.surface() != null && ground.surface().family() == Surface.Family.PAVED;
    }

    /**
     * Whether wheels slip on loose stones or sand: sand; pebbles; gravel, unless its smoothness is intermediate or better or its tracktype
     * grade1, which ballast never is; mtb:scale 2 and more ("much loose"). Null where neither surface nor mtb:scale is known.
     */
    static Boolean loose(Ground ground) {
        if (Boolean.TRUE.equals(ground.sand()) || ground.mtbScale() != null && ground.mtbScale() >= 2 && !isPaved(ground)) {
            return true;
        }
        if (ground.surface() == null) {
            return ground.mtbScale() == null ? null : false;
        }
        return switch (ground.surface()) {
            case SAND, PEBBLESTONE -> true;
            case GRAVEL -> !bound(ground);
            default -> false;
        };
    }

    private static boolean bound(Ground ground) {
        boolean smooth = ground.smoothness() != null && ground.smoothness().compareTo(Smoothness.INTERMEDIATE) <= 0;
        return smooth || Integer.valueOf(1).equals(ground.trackGrade());
    }

    /**
     * The mtb:scale: mtb:scale where given; 0 where a road, or ground firm and even enough for ordinary wheels, is known (mtb:scale 0
     * means gravel or packed earth without obstacles); else null.
     */
    static Double technicalGrade(Ground ground) {
        if (ground.mtbScale() != null && !(isPaved(ground) && ground.mtbScale() < 1)) {
            return ground.mtbScale();
        }
        if (isPaved(ground)) {
            return 0.0;
        }
        boolean firm = ground.surface() == Surface.COMPACTED || ground.surface() == Surface.FINE_GRAVEL;
        boolean even = ground.smoothness() != null && ground.smoothness().compareTo(Smoothness.BAD) <= 0;
        boolean solid = ground.trackGrade() != null && ground.trackGrade() <= 2;
        return even || (firm || solid) && ground.smoothness() == null ? Double.valueOf(0) : null;
    }

    /** The length of ground that has a property, has not (false), or is not known to have (null). */
    private double lengthOf(Property property, Boolean whether) {
        double sum = 0;
        for (Stretch stretch : stretches) {
            sum += Objects.equals(property.of(stretch.ground()), whether) ? stretch.length() : 0;
        }
        return sum;
    }

    private boolean any(Property property) {
        for (Stretch stretch : stretches) {
            if (Boolean.TRUE.equals(property.of(stretch.ground()))) {
                return true;
            }
        }
        return false;
    }

    private boolean paved() {
        for (Stretch stretch : stretches) {
            if (!isPaved(stretch.ground())) {
                return false;
            }
        }
        return true;
    }

    /** The share of a property of what is known, null where nothing is. */
    Range share(Property property) {
        double with = lengthOf(property, true);
        double unknown = lengthOf(property, null);
        double known = length - unknown;
        if (!(known > 0)) {
            return null;
        }
        return Range.around((with - doubtful(property, true)) / length, with / known, (with + unknown + doubtful(property, false)) / length);
    }

    /** The length of ground that likely has a property, or likely has it not, and of which the opposite may be true. */
    private double doubtful(Property property, boolean likely) {
        double sum = 0;
        for (Stretch stretch : stretches) {
            boolean opposite = false;
            for (Ground other : stretch.alternatives()) {
                opposite |= !Objects.equals(property.of(other), likely);
            }
            sum += opposite && Objects.equals(property.of(stretch.ground()), likely) ? stretch.length() : 0;
        }
        return sum;
    }

    /** Of the ground that is known; null where none is. */
    Range roughness() {
        return roughness(1);
    }

    Range worstRoughness() {
        return roughness(WORST_PART);
    }

    private Range roughness(double part) {
        List<Rough> rough = new ArrayList<>();
        for (Stretch stretch : stretches) {
            Range number = Roughness.of(stretch.possible());
            if (number != null) {
                rough.add(new Rough(stretch.length(), number));
            }
        }
        rough.sort(null);
        return rough.isEmpty() ? null : mean(rough, part);
    }

    /** The roughest first. */
    private record Rough(double length, Range number) implements Comparable<Rough> {
        @Override
        public int compareTo(Rough other) {
            return Double.compare(other.number.mid(), number.mid());
        }
    }

    /** The mean over the first part of some ground, by length. */
    private static Range mean(List<Rough> rough, double part) {
        double all = 0;
        for (Rough each : rough) {
            all += each.length;
        }
        double left = all * part;
        double low = 0;
        double mid = 0;
        double high = 0;
        for (Rough each : rough) {
            double taken = Math.min(left, each.length);
            low += taken * each.number.low();
            mid += taken * each.number.mid();
            high += taken * each.number.high();
            left -= taken;
        }
        return new Range(low, mid, high).times(1 / (all * part));
    }

    /** Share with stones that cut; null where no stretch says anything. */
    Range sharpStones() {
        return any(Property.STONES_TOLD) || paved() ? unspokenIsWithout(Property.SHARP_STONES) : null;
    }

    /** Whether there are stones that cut; a paved surface has none unless it is written. */
    static Boolean sharpStones(Ground ground) {
        return orNotOnRoads(ground.sharpStones(), ground);
    }

    /** What is written; no where it is not and the surface is paved. */
    static Boolean orNotOnRoads(Boolean written, Ground ground) {
        return written == null && isPaved(ground) ? Boolean.FALSE : written;
    }

    /** A share in which ground that is not spoken of counts as without, with a small allowance at the high end. */
    private Range unspokenIsWithout(Property property) {
        double with = lengthOf(property, true);
        double unspoken = lengthOf(property, null);
        return Range.around((with - doubtful(property, true)) / length, with / length,
                (with + UNSPOKEN * unspoken + doubtful(property, false)) / length);
    }

    /** Whether there is loose sand to steer in. */
    static Boolean sandy(Ground ground) {
        if (ground.surface() == Surface.SAND) {
            return true;
        }
        return orNotOnRoads(ground.sand(), ground);
    }

    Range sand() {
        return any(Property.SAND_TOLD) ? unspokenIsWithout(Property.SANDY) : null;
    }

    /**
     * Mud: surfaces of mud always; where it turns to mud, all of it when wet, half when damp. Where the forecast ground is not known, as if
     * dry with the wet share as the high end.
     */
    Range mud(String forecastGround) {
        if (!any(Property.MUD_TOLD)) {
            return null;
        }
        double always = lengthOf(Property.MUD_ALWAYS, true) / length;
        double whenWet = lengthOf(Property.MUD_WHEN_WET, true) / length;
        double maybe = lengthOf(Property.MUD_PERHAPS, true) / length;
        if (forecastGround == null) {
            return new Range(always, always, always + whenWet);
        }
        return switch (forecastGround) {
            case "wet" -> new Range(always + whenWet, always + whenWet, always + whenWet + UNSPOKEN * maybe);
            case "damp" -> new Range(always, always + whenWet / 2, always + whenWet + UNSPOKEN * maybe / 2);
            default -> Range.exact(always);
        };
    }

    /** Fords over some laps; null where no stretch says anything. */
    Integer fords(int laps) {
        Integer fords = null;
        for (Stretch stretch : stretches) {
            Integer here = stretch.ground().waterCrossings();
            fords = here == null ? fords : Integer.valueOf(here + (fords == null ? 0 : fords));
        }
        return fords == null ? null : Integer.valueOf(fords * laps);
    }

    /** Of the ledges that must be ridden, m. */
    Double highestLedge() {
        Double highest = null;
        for (Stretch stretch : stretches) {
            Double here = stretch.ground().ledgeHeight();
            highest = here == null || highest != null && highest > here ? highest : here;
        }
        return highest;
    }

    Double turnsPerKm() {
        double turns = 0;
        double known = 0;
        for (Stretch stretch : stretches) {
            Double here = stretch.ground().turnsPerKm();
            known += here == null ? 0 : stretch.length();
            turns += here == null ? 0 : here * stretch.length();
        }
        return known > 0 ? Double.valueOf(turns / known) : null;
    }

    /** What rules may ask of each stretch. */
    List<StretchFacts> facts() {
        List<StretchFacts> out = new ArrayList<>();
        for (Stretch stretch : stretches) {
            out.add(new StretchFacts(facts(stretch)));
        }
        return out;
    }

    private static Map<StretchMeasure, Long> facts(Stretch stretch) {
        Map<StretchMeasure, Long> known = new EnumMap<>(StretchMeasure.class);
        for (StretchMeasure measure : StretchMeasure.values()) {
            MeasureValue value = measure.calculate(stretch);
            if (value != null) {
                known.put(measure, value.mid());
            }
        }
        return known;
    }

    /** Ascent less descent over length; null where either is not known. */
    static Double gradient(Stretch stretch) {
        return stretch.ascent() == null || stretch.descent() == null ? null : Double.valueOf((stretch.ascent() - stretch.descent()) / stretch.length());
    }
}
