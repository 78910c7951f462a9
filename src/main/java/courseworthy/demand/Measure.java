package courseworthy.demand;

import courseworthy.event.Event;
import courseworthy.rider.Rider;
import courseworthy.topic.Topics;
import courseworthy.units.Resolution;
import courseworthy.units.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One measured property of a course, a rider or a day that rules may test. The constants are the catalogue, in the order in which
 * output lists them; a measure with a layer is known once that layer is settled: it is derived from decisions, or is a figure of the bike at
 * hand, which holds where a bike of its kind is called.
 */
public enum Measure {
    DISTANCE("distance", Holder.quantity(Unit.KM, "0.1"), 0,
            "Length of the event over all laps, by geodesic where there is a track"),
    LAPS("laps", Holder.quantity(Unit.ONE, "1"), 0,
            "Laps of the course"),
    ASCENT("ascent", Holder.quantity(Unit.M, "10"), 0,
            "Climbing over all laps, from the cleaned elevation with its dead band"),
    DESCENT("descent", Holder.quantity(Unit.M, "10"), 0,
            "Descending over all laps, from the cleaned elevation with its dead band"),
    CLIMBING_PER_KM("climbing per km", Holder.quantity(Unit.M, "0.1"), 0,
            "Ascent over distance"),
    DESCENT_PER_KM("descent per km", Holder.quantity(Unit.M, "0.1"), 0,
            "Descent over distance"),
    HIGHEST_POINT("highest point", Holder.quantity(Unit.M, "10"), 0,
            "Highest point above sea level"),
    CLIMBS("climbs", Holder.quantity(Unit.ONE, "1"), 0,
            "Climbs over all laps: pieces of line that gain at least 30 m at 3 % or more on average; a climb goes on "
                    + "over dips of 10 m, or 15 % of its gain"),
    LONGEST_CLIMB("longest climb", Holder.quantity(Unit.KM, "0.1"), 0,
            "Length of the longest climb"),
    LONGEST_CLIMB_ASCENT("longest climb ascent", Holder.quantity(Unit.M, "10"), 0,
            "Ascent of the longest climb"),
    LAST_LONG_CLIMB("last long climb", Holder.quantity(Unit.KM, "0.1"), 0,
            "Length of the last climb that gains at least half of what the biggest gains"),
    LAST_LONG_CLIMB_ASCENT("last long climb ascent", Holder.quantity(Unit.M, "10"), 0,
            "Ascent of the last long climb"),
    LAST_LONG_CLIMB_GRADIENT("last long climb gradient", Holder.quantity(Unit.PERCENT, "0.1"), 0,
            "Mean gradient of the last long climb"),
    STEEPEST_RAMP("steepest ramp", Holder.quantity(Unit.PERCENT, "0.5"), 0,
            "Steepest gradient over 20 m, measured, or the steepest that a climbing stretch of a profile is written "
                    + "with"),
    STEEPEST_100_M("steepest 100 m", Holder.quantity(Unit.PERCENT, "0.5"), 0,
            "Steepest gradient sustained over 100 m; without a measured line a likely figure from the means of "
                    + "stretches and what they are written with as steepest"),
    STEEPEST_500_M("steepest 500 m", Holder.quantity(Unit.PERCENT, "0.5"), 0,
            "Steepest gradient sustained over 500 m; without a measured line a likely figure from the means of "
                    + "stretches and what they are written with as steepest"),
    STEEPEST_1_KM("steepest 1 km", Holder.quantity(Unit.PERCENT, "0.5"), 0,
            "Steepest gradient sustained over 1 km; without a measured line a likely figure from the means of "
                    + "stretches and what they are written with as steepest"),
    PAVED_SHARE("paved share", Holder.quantity(Unit.PERCENT, "1"), 0,
            "Share of the course by length on asphalt, concrete, paving, sett or cobbles, of what is known"),
    GRAVEL_SHARE("gravel share", Holder.quantity(Unit.PERCENT, "1"), 0,
            "Share of the course by length on compacted ground, fine gravel and gravel, of what is known"),
    TRAIL_SHARE("trail share", Holder.quantity(Unit.PERCENT, "1"), 0,
            "Share of the course by length on earth, grass and rock, of what is known"),
    SOFT_SHARE("soft share", Holder.quantity(Unit.PERCENT, "1"), 0,
            "Share of the course by length on sand, mud and snow, of what is known"),
    LOOSE_SHARE("loose share", Holder.quantity(Unit.PERCENT, "1"), 0,
            "Share of the course by length on sand, pebbles, gravel that is not bound (smoothness intermediate or "
                    + "better, or tracktype grade1, is), or mtb:scale 2 and more, of what is known"),
    KNOWN_GROUND("known ground", Holder.quantity(Unit.PERCENT, "1"), 0,
            "Share of the course by length whose surface, smoothness, tracktype or mtb:scale is known"),
    ROUGHNESS("roughness", Holder.ROUGHNESS, 0,
            "Mean roughness by length of the ground that is known, 0 like new asphalt to 5 barely rideable: the mean "
                    + "of what smoothness and mtb:scale say, or where neither is given of what tracktype and surface suggest; "
                    + "roots and ruts add 0.2 each"),
    WORST_ROUGHNESS("worst roughness", Holder.ROUGHNESS, 0,
            "Mean roughness of the worst tenth by length"),
    MTB_SCALE("mtb:scale", Holder.quantity(Unit.ONE, "0.1"), 0,
            "Typical mtb:scale: mean of mtb:scale by length off paved ground; 0 where ground is firm or even "
                    + "enough for ordinary wheels"),
    HARDEST_MTB_SCALE("hardest mtb:scale", Holder.quantity(Unit.ONE, "0.1"), 0,
            "Hardest mtb:scale on the course, of the ground that is known"),
    SHARP_STONES("sharp stones", Holder.quantity(Unit.PERCENT, "1"), 0,
            "Share of the course by length written to have stones that cut casings; unknown where no stretch says "
                    + "anything; a tenth of the ground that does not say counts at the high end"),
    MUD("mud", Holder.quantity(Unit.PERCENT, "1"), 0,
            "Share of the course by length that is mud on the day: mud always, what turns to mud in rain "
                    + "when it is wet, half of that when it is damp"),
    SAND("sand", Holder.quantity(Unit.PERCENT, "1"), 0,
            "Share of the course by length in loose sand; a tenth of the ground that does not say counts at the high "
                    + "end"),
    WATER_CROSSINGS("water crossings", Holder.quantity(Unit.ONE, "1"), 0,
            "Fords over all laps"),
    LEDGE_HEIGHT("ledge height", Holder.quantity(Unit.M, "0.05"), 0,
            "Highest ledge that must be ridden"),
    TURNS_PER_KM("turns per km", Holder.quantity(Unit.ONE, "0.5"), 0,
            "Turns that must be braked for, per km"),
    AERO_SHARE("aero share", Holder.quantity(Unit.PERCENT, "1"), 0,
            "Share of the distance where aero extensions can be used: smooth, firm, straight, from 25 to 50 km/h, "
                    + "between 3 % down and 3 % up, alone, and hands back on the bar for three parts in ten of it"),
    HOURS("hours", Holder.quantity(Unit.MIN, "1"), 0,
            "Expected riding and stopping time, by steady power balance at the power that can be held for it"),
    SLOW_HOURS("slow hours", Holder.quantity(Unit.MIN, "1"), 0,
            "The slow estimate of the time"),
    DARK_HOURS("dark hours", Holder.quantity(Unit.MIN, "5"), 0,
            "How much of the slow estimate lies between civil dusk and civil dawn, when the sun is 6 degrees down or lower"),
    DARK_SHARE("dark share", Holder.quantity(Unit.PERCENT, "1"), 0,
            "The same as a share of the slow estimate"),
    SUNLESS_HOURS("sunless hours", Holder.quantity(Unit.MIN, "5"), 0,
            "How much of the slow estimate lies between sunset and sunrise"),
    DAYLIGHT_TO_SPARE("daylight to spare", Holder.quantity(Unit.MIN, "5"), 0,
            "Time left until sunset where the ride takes as long as the slow estimate, 0 where it ends after sunset or before sunrise"),
    RATIO_NEEDED_WHERE_IT_IS_STEEPEST("ratio needed where it is steepest", Holder.quantity(Unit.RATIO, "0.001"), 0,
            "The gear that lets the rider turn the lowest climbing cadence where it is steepest over 100 m, at hour "
                    + "power as tired as the hour finds it; none easier than walking pace asks for"),
    RATIO_NEEDED_ON_THE_LAST_CLIMB("ratio needed on the last climb", Holder.quantity(Unit.RATIO, "0.001"), 0,
            "The gear that lets the rider turn the lowest climbing cadence on the hardest kilometre of 3 % or more, on the tired "
                    + "power of that hour, so that of climbs alike the last decides; none easier than walking pace asks for"),
    RATIO_USEFUL_AT_SPEED("ratio useful at speed", Holder.quantity(Unit.RATIO, "0.001"), 0,
            "The gear the rider turns at the highest cadence at the fastest of: descents where hour power still gains "
                    + "a fifth over coasting; the flat in the group with a tailwind; the finishing sprint in a race for a time "
                    + "or the podium"),
    GEAR_RANGE_NEEDED("gear range needed", Holder.quantity(Unit.RATIO, "0.01"), 0,
            "Ratio useful at speed over ratio needed where it is steepest"),
    BRAKING_POWER("braking power", Holder.quantity(Unit.W, "5"), 0,
            "Mean power that both brakes together turn into heat over the hardest quarter of an hour of the way, at the speed the "
                    + "ground lets run: gravity on the start-line mass less rolling and air"),
    SUPPORT_GAP("support gap", Holder.quantity(Unit.KM, "0.1"), 0,
            "Longest distance between places to fill bottles; start, finish and each passage of them count"),
    SUPPORT_GAP_HOURS("support gap hours", Holder.quantity(Unit.MIN, "5"), 0,
            "Longest riding time between places to fill bottles, slow estimate"),
    WATER_OVER_THE_HOTTEST_GAP("water over the hottest gap", Holder.quantity(Unit.L, "0.1"), 0,
            "Water to leave with for the gap that asks for most: so much of the sweat over the slow estimate that the loss "
                    + "since the start stays within 2 % of body mass, at the least what thirst asks for, 15 % in reserve, and no less than half a litre"),
    WATER_AT_THE_START("water at the start", Holder.quantity(Unit.L, "0.1"), 0,
            "Water to leave the start with, worked out likewise for the way to the first place to fill bottles"),
    GOING("going", MeasureScale.words(Event.Forecast.GOINGS), 0,
            "Whether the ground is dry, damp or wet, by the forecast"),
    START_TEMPERATURE("start temperature", Holder.quantity(Unit.C, "1"), 0,
            "Temperature at the start"),
    SUMMIT_TEMPERATURE("summit temperature", Holder.quantity(Unit.C, "1"), 0,
            "Temperature at the highest point at the hour the rider is there"),
    COLDEST_TEMPERATURE("coldest temperature", Holder.quantity(Unit.C, "1"), 0,
            "Lowest temperature anywhere on the ride, at its place and hour"),
    HOTTEST_TEMPERATURE("hottest temperature", Holder.quantity(Unit.C, "1"), 0,
            "Highest temperature anywhere on the ride, at its place and hour"),
    NIGHT_TEMPERATURE("night temperature", Holder.quantity(Unit.C, "1"), 0,
            "Lowest temperature while it is dark"),
    WIND("wind", Holder.quantity(Unit.KM_PER_H, "1"), 0,
            "Mean wind of the forecast at 10 m height"),
    GROUP_SHARE("group share", Holder.quantity(Unit.PERCENT, "1"), 0,
            "Share of the distance ridden in a group"),
    START_LINE_MASS("start-line mass", Holder.quantity(Unit.KG, "0.5"), 0,
            "Rider, kit, bike and water at the start line; the water as worked out to the first place to fill bottles, else a bottle or two"),
    RIDER_MASS("rider mass", Holder.quantity(Unit.KG, "0.5"), 0,
            "Rider without kit"),
    HOUR_POWER("hour power", Holder.quantity(Unit.W, "5"), 0,
            "Best mean power the rider holds for an hour"),
    POWER_PER_KG("power per kg", Holder.quantity(Unit.W_PER_KG, "0.05"), 0,
            "Hour power over rider mass"),
    CLIMBING_CADENCE("climbing cadence", Holder.quantity(Unit.RPM, "1"), 0,
            "Lowest cadence the rider will turn for long on a climb"),
    HIGHEST_CADENCE("highest cadence", Holder.quantity(Unit.RPM, "1"), 0,
            "Highest cadence the rider will turn for long on the flat"),
    SKILL("skill", MeasureScale.words(Rider.SKILLS), 0,
            "Skill on rough ground"),
    AIM("aim", MeasureScale.words(Event.AIMS), 0,
            "What the rider wants: to finish, a time, the podium"),
    ROLE("role", MeasureScale.options(List.of("training", "race")), 0,
            "What the bike is set up for"),
    RACES_A_YEAR("races a year", Holder.quantity(Unit.ONE, "1"), 0,
            "Races a year on this bike"),
    PLUG_STOP("plug stop", Holder.quantity(Unit.S, "10"), 0,
            "Time a puncture costs that a plug mends, until the rider is back at speed"),
    TUBE_STOP("tube stop", Holder.quantity(Unit.S, "10"), 0,
            "Time a puncture costs that takes a tube, until the rider is back at speed"),
    LOST_GROUP("lost group", Holder.quantity(Unit.S, "10"), 0,
            "Time lost by riding on alone after a stop, as the rider puts it"),
    USED_BAR_WIDTH("used bar width", Holder.quantity(Unit.MM, "1"), 0,
            "Width of the bar the rider is used to"),
    BIKE_AT_HAND("bike at hand", MeasureScale.options(Topics.BIKE.options()), 0,
            "The kind of bike the rider has"),
    RIM_INNER_WIDTH("rim inner width", Holder.quantity(Unit.MM, "1"), Holder.BIKE,
            "Inner width of the rims at hand"),
    HOOKLESS("hookless", MeasureScale.yesNo(), Holder.BIKE,
            "Whether the rims at hand are hookless"),
    MARKED_TYRE_PRESSURE("marked tyre pressure", Holder.quantity(Unit.BAR, "0.05"), Holder.BIKE,
            "Highest pressure marked on the tyres at hand"),
    MARKED_RIM_PRESSURE("marked rim pressure", Holder.quantity(Unit.BAR, "0.05"), Holder.BIKE,
            "Highest pressure marked on the rims at hand"),
    LOWER_MARKED_PRESSURE("lower marked pressure", Holder.quantity(Unit.BAR, "0.05"), Holder.BIKE,
            "The lower of the pressures marked on tyre and rim"),
    LEAST_TYRE_WIDTH_ON_THE_RIM("least tyre width on the rim", Holder.quantity(Unit.MM, "1"), Holder.BIKE,
            "Rim inner width and the least that a tyre is wider than its rim"),
    TYRE_CLEARANCE("tyre clearance", Holder.quantity(Unit.MM, "1"), Holder.BIKE,
            "Widest tyre that frame and fork at hand take"),
    TUBELESS_READY("tubeless ready", MeasureScale.yesNo(), Holder.BIKE,
            "Whether rims and tyres at hand are made to run tubeless"),
    BIKE_LEDGE_LIMIT("bike ledge limit", Holder.quantity(Unit.M, "0.05"), Holder.BIKE,
            "Highest ledge of the marked intended-use category"),
    LEDGE_ABOVE_THE_MARK("ledge above the mark", Holder.quantity(Unit.M, "0.05"), 0,
            "Ledge height less bike ledge limit, 0 where it is not above"),
    BIKE_MASS_LIMIT("bike mass limit", Holder.quantity(Unit.KG, "0.5"), Holder.BIKE,
            "Highest marked mass of rider, kit and bike"),
    MASS_ABOVE_THE_MARK("mass above the mark", Holder.quantity(Unit.KG, "0.5"), 0,
            "Start-line mass less bike mass limit, 0 where it is not above"),
    MOST_FORK_TRAVEL("most fork travel", Holder.quantity(Unit.MM, "1"), Holder.BIKE,
            "Longest fork travel the frame permits"),
    MOST_ROTOR("most rotor", Holder.quantity(Unit.MM, "1"), Holder.BIKE,
            "Largest rotor that frame and fork permit"),
    LIGHTS_AT_HAND("lights at hand", Holder.quantity(Unit.MIN, "5"), 0,
            "Run time of the lights at hand at the mode used"),
    POWER_METER_AT_HAND("power meter at hand", MeasureScale.yesNo(), Holder.BIKE,
            "Whether the bike at hand has a power meter"),
    AERO_EXTENSIONS_ALLOWED("aero extensions allowed", MeasureScale.yesNo(), 0,
            "Whether the event allows aero extensions"),
    TYRE_WIDTH_ALLOWED("tyre width allowed", Holder.quantity(Unit.MM, "1"), 0,
            "Widest tyre the event allows"),
    LIGHTS_REQUIRED("lights required", MeasureScale.yesNo(), 0,
            "Whether the event requires lights"),
    MUDGUARDS_REQUIRED("mudguards required", MeasureScale.yesNo(), 0,
            "Whether the event requires mudguards"),
    OUTSIDE_HELP("outside help", MeasureScale.yesNo(), 0,
            "Whether the event allows outside help"),
    BAG_ON_THE_COURSE("bag on the course", MeasureScale.yesNo(), 0,
            "Whether a bag of one's own waits on the course"),
    TIME_LIMIT("time limit", Holder.quantity(Unit.MIN, "1"), 0,
            "Time allowed for the whole ride"),
    PRESSURE_CEILING("pressure ceiling", Holder.quantity(Unit.BAR, "0.05"), Holder.BIKE,
            "The most that tyres may be inflated to: the lower of what is marked on tyre and rim, and the hookless limit on a rim without hooks"),
    NARROWEST_FRONT_TYRE("narrowest front tyre", Holder.quantity(Unit.MM, "1"), 1,
            "Narrowest front tyre whose reference pressure, in a light casing, stays under the pressure ceiling with the settled kind of bike"),
    NARROWEST_REAR_TYRE("narrowest rear tyre", Holder.quantity(Unit.MM, "1"), 1,
            "Narrowest rear tyre whose reference pressure, in a light casing, stays under the pressure ceiling with the settled kind of bike"),
    SHORTEST_REAR_TRAVEL("shortest rear travel", Holder.quantity(Unit.MM, "1"), 2,
            "Settled fork travel less the most that front and rear travel may differ by"),
    LONGEST_REAR_TRAVEL("longest rear travel", Holder.quantity(Unit.MM, "1"), 2,
            "Settled fork travel and the most that front and rear travel may differ by"),
    FRONT_REFERENCE_PRESSURE("front reference pressure", Holder.quantity(Unit.BAR, "0.05"), 5,
            "Starting pressure for the front tyre from its wheel load and settled width, casing and insert: the "
                    + "15 % drop relation on hard ground up to 37 mm, else a practice range"),
    REAR_REFERENCE_PRESSURE("rear reference pressure", Holder.quantity(Unit.BAR, "0.05"), 5,
            "Starting pressure for the rear tyre from its wheel load and settled width, casing and insert: the 15"
                    + " % drop relation on hard ground up to 37 mm, else a practice range"),
    FRONT_PRESSURE_FLOOR("front pressure floor", Holder.quantity(Unit.BAR, "0.05"), 5,
            "Lowest pressure of the front tyre that still keeps the rim off the ground on this course, a practice"
                    + " figure from wheel load, width, casing, insert and roughness"),
    REAR_PRESSURE_FLOOR("rear pressure floor", Holder.quantity(Unit.BAR, "0.05"), 5,
            "Lowest pressure of the rear tyre that still keeps the rim off the ground on this course, a practice "
                    + "figure from wheel load, width, casing, insert and roughness");

    /** How roughness is counted: tenths from 0, with the words smooth, mixed, rough, rugged and severe from each whole number. */
    public static final MeasureScale ROUGHNESS_SCALE = Holder.ROUGHNESS;

    private static final Map<String, Measure> BY_NAME = new LinkedHashMap<>();

    static {
        for (Measure measure : values()) {
            if (BY_NAME.put(measure.written, measure) != null) {
                throw new IllegalStateException("two measures " + measure.written);
            }
        }
    }

    private final String written;
    private final MeasureScale scale;
    private final int layer;
    private final String about;

    Measure(String written, MeasureScale scale, int layer, String about) {
        this.written = written;
        this.scale = scale;
        this.layer = layer;
        this.about = about;
    }

    /** The name sheets use. */
    public String written() {
        return written;
    }

    public MeasureScale scale() {
        return scale;
    }

    /** The layer after which it is known; 0 where it needs no decision. */
    public int layer() {
        return layer;
    }

    /** Whether it is worked out from decisions, so that nobody can state it. */
    public boolean derived() {
        return layer > Holder.BIKE || this == NARROWEST_FRONT_TYRE || this == NARROWEST_REAR_TYRE;
    }

    /** Whether it belongs to the bike at hand, so that it holds only where a bike of that kind is called. */
    public boolean ofTheBike() {
        return layer == Holder.BIKE && !derived();
    }

    /** The definition, in words. */
    public String about() {
        return about;
    }

    /** The measure sheets write so, or null. */
    public static Measure find(String written) {
        return BY_NAME.get(written);
    }

    public static List<String> names() {
        return new ArrayList<>(BY_NAME.keySet());
    }

    static MeasureScale quantity(Unit unit, String step) {
        return Holder.quantity(unit, step);
    }

    @Override
    public String toString() {
        return written;
    }

    /** Exists before the constants do. */
    private static final class Holder {
        /** The layer in which the kind of bike is settled. */
        static final int BIKE = 1;
        static final MeasureScale ROUGHNESS = MeasureScale.banded(Resolution.of(Unit.ONE, "0.1"),
                List.of("smooth", "mixed", "rough", "rugged", "severe"), List.of(0L, 10L, 20L, 30L, 40L));

        static MeasureScale quantity(Unit unit, String step) {
            return MeasureScale.quantity(Resolution.of(unit, step));
        }
    }
}
