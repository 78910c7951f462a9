package courseworthy.demand;

import courseworthy.course.Climbing;
import courseworthy.course.Course;
import courseworthy.course.ElevationLine;
import courseworthy.course.Interval;
import courseworthy.event.Event;
import courseworthy.ride.BikeKind;
import courseworthy.ride.DiscretisedCourse;
import courseworthy.ride.Range;
import courseworthy.ride.RideAssumptions;
import courseworthy.ride.RideEstimate;
import courseworthy.rider.Bike;
import courseworthy.rider.Rider;
import courseworthy.units.RuleValue;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds what a course, a rider and a day ask for: every measure of the catalogue that needs no decision. What is not written of the ground
 * stays unknown; what is not written of rider and day is assumed, with a range, and kept account of.
 */
public final class Survey {

    private final SurveyAssumptions on;
    private final DemandsBuilder ledger;
    private final TerrainDemands terrain;
    private List<Climbs.Climb> climbs = List.of();

    private Survey(SurveyAssumptions on, DemandsBuilder ledger) {
        this.on = on;
        this.ledger = ledger;
        this.terrain = new TerrainDemands(on.course);
    }

    /**
     * The demands, with what had to be assumed.
     *
     * @param course one lap
     * @param rider  {@link Rider#UNKNOWN} where nothing is known
     * @param event  {@link Event#UNKNOWN} where nothing is known
     * @param bike   the bike at hand, already merged (see {@link #bike})
     */
    public static Demands of(Course course, Rider rider, Event event, Bike bike) {
        return of(course, rider, event, bike, null);
    }

    /**
     * The demands on a kind of bike, whatever is at hand.
     *
     * @param ridden the kind that is called; null for the bike at hand, or one that suits the ground where none is written
     */
    static Demands of(Course course, Rider rider, Event event, Bike bike, BikeKind ridden) {
        DemandsBuilder ledger = new DemandsBuilder();
        return new Survey(new SurveyAssumptions(course, rider, event, bike, ridden, ledger), ledger).demands();
    }

    private Demands demands() {
        extent();
        Climbs.Climb lastLong = climbs();
        Steepness steepness = new Steepness(on.course);
        steepest(steepness);
        terrain.write(ledger, on.laps, on.event.forecast().going());
        RideEstimate estimate = estimate();
        ExtensionUse aero = new ExtensionUse(on, estimate);
        ledger.range(Measure.AERO_SHARE, aero.share());
        WeatherDemands weather = new WeatherDemands(on, estimate);
        weather.write(ledger);
        SupportPoints support = new SupportPoints(on, estimate, weather);
        support.write(ledger);
        GearDemands gears = new GearDemands(on, estimate);
        gears.write(ledger, steepness);
        ledger.range(Measure.BRAKING_POWER, new BrakeHeat(on, estimate).hardest());
        rider(waterAtTheStart(support, estimate));
        bikeAtHand();
        rules();
        return ledger.demands(terrain.facts(), new EstimatedRide(estimate, pieces(steepness, lastLong, gears), gears.sprintPower(), aero,
                new DayDemands(on, estimate, weather, support, climbs)), occasion()).ofBike(on.atHand.kind());
    }

    private Occasion occasion() {
        return new Occasion(on.rider == Rider.UNKNOWN ? null : on.rider.name(), on.rider.tags(), on.event.date());
    }

    private void extent() {
        double distance = on.course.length() * on.laps;
        ledger.exact(Measure.DISTANCE, distance);
        ledger.exact(Measure.LAPS, on.laps);
        Climbing lap = on.course.climbing();
        if (lap != null) {
            climbing(Measure.ASCENT, Measure.CLIMBING_PER_KM, lap.ascent(), lap.ascentRange());
            climbing(Measure.DESCENT, Measure.DESCENT_PER_KM, lap.descent(), lap.descentRange());
        }
        ElevationLine line = on.course.line();
        if (on.heightKnown()) {
            double highest = Double.NEGATIVE_INFINITY;
            for (double elevation : line.elevation()) {
                highest = Math.max(highest, elevation);
            }
            ledger.exact(Measure.HIGHEST_POINT, line.absolute() ? highest : on.startHeight() + highest - line.elevation()[0]);
        }
    }

    private void climbing(Measure whole, Measure perKm, double oneLap, Interval measured) {
        Range lap = measured == null ? SurveyAssumptions.CLIMBING_OFF.times(oneLap) : new Range(measured.low(), oneLap, measured.high());
        ledger.range(whole, lap.times(on.laps));
        ledger.range(perKm, lap.times(1000 / on.course.length()));
    }

    /** Writes the climbs down and returns the last long one, or null. */
    private Climbs.Climb climbs() {
        if (on.course.line() == null) {
            return null;
        }
        climbs = Climbs.of(on.course.line());
        ledger.exact(Measure.CLIMBS, climbs.size() * (double) on.laps);
        Climbs.Climb longest = Climbs.longest(climbs);
        ledger.exact(Measure.LONGEST_CLIMB, longest == null ? 0 : longest.length());
        ledger.exact(Measure.LONGEST_CLIMB_ASCENT, longest == null ? 0 : longest.rise());
        Climbs.Climb last = Climbs.lastLong(climbs);
        if (last != null) {
            ledger.exact(Measure.LAST_LONG_CLIMB, last.length());
            ledger.exact(Measure.LAST_LONG_CLIMB_ASCENT, last.rise());
            ledger.exact(Measure.LAST_LONG_CLIMB_GRADIENT, last.gradient());
        }
        return last;
    }

    private void steepest(Steepness steepness) {
        ledger.range(Measure.STEEPEST_RAMP, steepness.ramp());
        gradient(Measure.STEEPEST_100_M, steepness.over(100));
        gradient(Measure.STEEPEST_500_M, steepness.over(500));
        gradient(Measure.STEEPEST_1_KM, steepness.over(1000));
    }

    /** The steep pieces that are known, and the last long climb. */
    private static List<EstimatedRide.Piece> pieces(Steepness steepness, Climbs.Climb lastLong, GearDemands gears) {
        List<EstimatedRide.Piece> out = new ArrayList<>();
        piece(out, EstimatedRide.Kind.RAMP, 20, steepness.rampPlace(), gears);
        piece(out, EstimatedRide.Kind.HUNDRED, 100, steepness.over(100), gears);
        piece(out, EstimatedRide.Kind.FIVE_HUNDRED, 500, steepness.over(500), gears);
        piece(out, EstimatedRide.Kind.KILOMETRE, 1000, steepness.over(1000), gears);
        if (lastLong != null) {
            Range gradient = Range.exact(lastLong.gradient());
            Steepness.Steepest climb = new Steepness.Steepest(gradient, (lastLong.from() + lastLong.to()) / 2);
            piece(out, EstimatedRide.Kind.LAST_CLIMB, lastLong.length(), climb, gears);
        }
        return out;
    }

    private static void piece(List<EstimatedRide.Piece> out, EstimatedRide.Kind kind, double length, Steepness.Steepest place, GearDemands gears) {
        if (place != null) {
            out.add(new EstimatedRide.Piece(kind, place.gradient(), place.middle(), length, gears.power(kind, place.middle(), length)));
        }
    }

    private void gradient(Measure measure, Steepness.Steepest found) {
        ledger.range(measure, found == null ? null : found.gradient());
    }

    private RideEstimate estimate() {
        RideAssumptions basis = on.basis();
        RideEstimate estimate = RideEstimate.of(DiscretisedCourse.of(on.course, on.startHeight()), basis, on.course.stretches());
        ledger.range(Measure.HOURS, estimate.total());
        ledger.exact(Measure.SLOW_HOURS, estimate.total().high());
        return estimate;
    }

    /** @param water to leave the start with, kg; null where not known */
    /**
     * Water that counts on the scales, kg: that of a dry day, whatever the ground will be, so that rain, which only makes the ride longer,
     * never asks for more air in the same tyre.
     */
    private Range waterAtTheStart(SupportPoints support, RideEstimate estimate) {
        RideAssumptions basis = estimate.basis();
        if (basis.wetness() == 0 || support.atTheStart() == null) {
            return support.atTheStart();
        }
        RideAssumptions dry = new RideAssumptions(basis.kind(), basis.mass(), basis.dragArea(), basis.hourPower(), basis.intensity(), basis.skill(), 0, basis.laps(),
                basis.points(), basis.training(), basis.climbing(), basis.weather());
        RideEstimate other = RideEstimate.of(estimate.way(), dry, on.course.stretches());
        return new SupportPoints(on, other, new WeatherDemands(on, other)).atTheStart();
    }

    private void rider(Range water) {
        ledger.range(Measure.GROUP_SHARE, on.groupShare);
        ledger.range(Measure.START_LINE_MASS, water == null ? on.startLineMass : on.dryMass.plus(water));
        ledger.range(Measure.RIDER_MASS, on.riderMass);
        ledger.range(Measure.HOUR_POWER, on.hourPower);
        ledger.range(Measure.POWER_PER_KG, on.hourPower.times(1 / on.riderMass.mid()));
        ledger.range(Measure.CLIMBING_CADENCE, on.climbingCadence);
        ledger.range(Measure.HIGHEST_CADENCE, on.highestCadence);
        skill();
        ledger.word(Measure.AIM, on.aim);
        ledger.word(Measure.ROLE, on.training ? "training" : "race");
        if (on.rider.racesAYear() != null) {
            ledger.exact(Measure.RACES_A_YEAR, on.rider.racesAYear());
        }
        ledger.range(Measure.PLUG_STOP, on.plugStop);
        ledger.range(Measure.TUBE_STOP, on.tubeStop);
        ledger.exact(Measure.LOST_GROUP, on.rider.stops().lostGroup());
        ledger.exact(Measure.USED_BAR_WIDTH, on.rider.barWidth());
    }

    private void skill() {
        List<String> words = Rider.SKILLS;
        String likely = words.get(on.skill);
        if (on.rider.skill() != null) {
            ledger.word(Measure.SKILL, likely);
        } else {
            ledger.word(Measure.SKILL, words.get(Math.max(0, on.skill - 1)), likely, words.get(Math.min(words.size() - 1, on.skill + 1)));
        }
    }

    private void bikeAtHand() {
        Bike bike = on.atHand;
        ledger.word(Measure.BIKE_AT_HAND, bike.kind());
        ledger.exact(Measure.RIM_INNER_WIDTH, bike.rimInnerWidth());
        ledger.yesNo(Measure.HOOKLESS, bike.hookless());
        ledger.atMost(Measure.MARKED_TYRE_PRESSURE, bike.markedTyrePressure());
        ledger.atMost(Measure.MARKED_RIM_PRESSURE, bike.markedRimPressure());
        ledger.atMost(Measure.LOWER_MARKED_PRESSURE, lower(bike.markedTyrePressure(), bike.markedRimPressure()));
        Double hookless = Boolean.TRUE.equals(bike.hookless()) ? RuleValue.HOOKLESS_PRESSURE.inBase() : null;
        ledger.atMost(Measure.PRESSURE_CEILING, lower(lower(bike.markedTyrePressure(), bike.markedRimPressure()), hookless));
        ledger.atLeast(Measure.LEAST_TYRE_WIDTH_ON_THE_RIM,
                bike.rimInnerWidth() == null ? null : Double.valueOf(bike.rimInnerWidth() + RuleValue.TYRE_OVER_RIM.inBase()));
        ledger.atMost(Measure.TYRE_CLEARANCE, bike.tyreClearance());
        ledger.yesNo(Measure.TUBELESS_READY, bike.tubeless());
        ledger.atMost(Measure.BIKE_LEDGE_LIMIT, bike.ledgeLimit());
        ledger.atMost(Measure.BIKE_MASS_LIMIT, bike.massLimit());
        ledger.atMost(Measure.MOST_FORK_TRAVEL, bike.forkTravel());
        ledger.atMost(Measure.MOST_ROTOR, bike.mostRotor());
        ledger.atMost(Measure.LIGHTS_AT_HAND, bike.lights());
        ledger.yesNo(Measure.POWER_METER_AT_HAND, bike.powerMeter());
        if (on.bike == on.atHand) {
            above(Measure.LEDGE_ABOVE_THE_MARK, Measure.LEDGE_HEIGHT, Measure.BIKE_LEDGE_LIMIT);
            above(Measure.MASS_ABOVE_THE_MARK, Measure.START_LINE_MASS, Measure.BIKE_MASS_LIMIT);
        }
    }

    /** The lower of two markings; the one that is known where only one is. */
    private static Double lower(Double a, Double b) {
        return a == null ? b : b == null ? a : Double.valueOf(Math.min(a, b));
    }

    /** By how much a measure is above its mark, all three of one resolution; unknown where either is. */
    private void above(Measure difference, Measure what, Measure mark) {
        MeasureValue value = ledger.get(what);
        MeasureValue most = ledger.get(mark);
        if (value != null && most != null) {
            ledger.count(difference, Math.max(0, value.low() - most.mid()), Math.max(0, value.mid() - most.mid()),
                    Math.max(0, value.high() - most.mid()));
        }
    }

    private void rules() {
        Event.Rules rules = on.event.rules();
        ledger.yesNo(Measure.AERO_EXTENSIONS_ALLOWED, rules.aeroExtensions());
        ledger.atMost(Measure.TYRE_WIDTH_ALLOWED, rules.tyreWidthMost());
        ledger.yesNo(Measure.LIGHTS_REQUIRED, rules.lights());
        ledger.yesNo(Measure.MUDGUARDS_REQUIRED, rules.mudguards());
        ledger.yesNo(Measure.OUTSIDE_HELP, rules.outsideHelp());
        if (on.event.supportKnown()) {
            ledger.yesNo(Measure.BAG_ON_THE_COURSE, on.event.support().stream().anyMatch(Event.Support::bag));
        }
        ledger.atMost(Measure.TIME_LIMIT, on.event.timeLimit());
    }

    /**
     * The bike at hand: what is written in the event's block wins over the rider's, field by field where both are of one kind. Of two kinds the
     * event's is at hand, and of the rider's only what is taken from bike to bike is known.
     */
    public static Bike bike(Bike fromRider, Bike fromEvent) {
        Bike a = fromEvent;
        Bike b = a.kind() == null ? fromRider : fromRider.as(a.kind());
        return new Bike(or(a.kind(), b.kind()), or(a.mass(), b.mass()), or(a.rimInnerWidth(), b.rimInnerWidth()),
                or(a.hookless(), b.hookless()), or(a.markedTyrePressure(), b.markedTyrePressure()), or(a.markedRimPressure(), b.markedRimPressure()),
                or(a.tyreClearance(), b.tyreClearance()), or(a.tubeless(), b.tubeless()), or(a.ledgeLimit(), b.ledgeLimit()),
                or(a.useCategory(), b.useCategory()), or(a.massLimit(), b.massLimit()), or(a.forkTravel(), b.forkTravel()),
                or(a.lights(), b.lights()), or(a.mostRotor(), b.mostRotor()), or(a.powerMeter(), b.powerMeter()),
                a.damping().or(b.damping()));
    }

    private static <T> T or(T first, T second) {
        return first != null ? first : second;
    }
}
