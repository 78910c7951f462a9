package courseworthy.demand;

import courseworthy.course.Course;
import courseworthy.demand.WeatherDemands.Temperatures;
import courseworthy.event.Event;
import courseworthy.ride.DiscretisedCourse;
import courseworthy.ride.Range;
import courseworthy.ride.RideAssumptions;
import courseworthy.ride.RideEstimate;
import courseworthy.rider.Bike;
import courseworthy.rider.Rider;
import courseworthy.units.RuleValue;

/** What measures are calculated from: what is given or assumed of course, rider and day, and what several measures need, worked out once. */
final class SurveyInput {

    /** Thickness of a drop bar at its ends, m: 24 mm is usual (common practice, no source). */
    private static final double DROP_BAR_TUBE = 0.024;

    final Course course;
    final SurveyAssumptions assumptions;
    final ClimbingDemands climbing;
    final Steepness steepness;
    final TerrainDemands terrain;
    final TechnicalGrades grades;
    final RideEstimate estimate;
    final ExtensionUse extensions;
    final WeatherDemands weather;
    final LightDemands light;
    final Temperatures temperatures;
    final SupportPoints support;
    final GearDemands gears;
    final Range startLineMass;

    SurveyInput(SurveyAssumptions assumptions) {
        this.assumptions = assumptions;
        course = assumptions.course;
        climbing = new ClimbingDemands(assumptions);
        steepness = new Steepness(course);
        terrain = new TerrainDemands(course);
        grades = TechnicalGrades.of(course.stretches());
        estimate = RideEstimate.of(DiscretisedCourse.of(course, assumptions.startHeight()), assumptions.basis(), course.stretches());
        extensions = new ExtensionUse(assumptions, estimate);
        weather = new WeatherDemands(assumptions, estimate);
        light = LightDemands.of(assumptions, estimate);
        temperatures = weather.temperatures(light.civil());
        support = new SupportPoints(assumptions, estimate, weather);
        gears = new GearDemands(assumptions, estimate, steepness);
        Range water = waterOnTheScales();
        startLineMass = water == null ? assumptions.startLineMass : assumptions.dryMass.plus(water);
        assume();
    }

    private void assume() {
        if (!assumptions.startKnown && (light.known() || weather.known())) {
            assumptions.assume("start", "8:00 (6:00 to 10:00)");
        }
        if (light.known() && event().offset() == null) {
            assumptions.assume("local time's offset from UTC", "the sun's, by longitude");
        }
        weather.assume();
        support.assume();
    }

    /**
     * Water that counts on the scales, kg: that of a dry day, whatever the ground will be, so that rain, which only makes the ride longer,
     * never asks for more air in the same tyre; null where it is not known.
     */
    private Range waterOnTheScales() {
        RideAssumptions basis = estimate.basis();
        if (basis.isDry() || support.atTheStart() == null) {
            return support.atTheStart();
        }
        RideEstimate other = RideEstimate.of(estimate.way(), basis.dry(), course.stretches());
        return new SupportPoints(assumptions, other, new WeatherDemands(assumptions, other)).atTheStart();
    }

    Rider rider() {
        return assumptions.rider;
    }

    Event event() {
        return assumptions.event;
    }

    Event.Forecast forecast() {
        return event().forecast();
    }

    Event.Rules rules() {
        return event().rules();
    }

    /** The bike at hand. */
    Bike bike() {
        return assumptions.atHand;
    }

    int laps() {
        return assumptions.laps;
    }

    /** The part of a lap that is a kilometre. */
    double perKm() {
        return 1000 / course.length();
    }

    /** Whether a bag waits at a support point; null where those are not written. */
    Boolean bagOnTheCourse() {
        return event().supportKnown() ? Boolean.valueOf(event().support().stream().anyMatch(Event.Support::bag)) : null;
    }

    /** The drop bar that goes with the shoulders, m; null where they are not known. */
    Double dropBarWidth() {
        Double shoulders = rider().body().shoulderWidth();
        return shoulders == null ? null : Double.valueOf(shoulders + DROP_BAR_TUBE);
    }

    /** The age that the rider reaches in the year of the event; null where either is not written. */
    Integer racingAge() {
        return event().date() == null ? null : rider().body().ageIn(event().date().getYear());
    }

    /** Whether the event limits this rider's gears; null where that hangs on an age that is not known. */
    Boolean gearsLimited() {
        Event.GearLimit limit = rules().gearLimit();
        if (limit == null || limit.toAge() == null) {
            return limit != null;
        }
        Integer age = racingAge();
        return age == null ? null : Boolean.valueOf(age <= limit.toAge());
    }

    /** How long the highest gear may be for this rider, m; null where no limit is known to hold. */
    Double developmentAllowed() {
        return Boolean.TRUE.equals(gearsLimited()) ? Double.valueOf(rules().gearLimit().development()) : null;
    }

    /** The ratio of that development. */
    Double hardestGearAllowed() {
        Double development = developmentAllowed();
        return development == null ? null : Double.valueOf(development / assumptions.kind.circumference());
    }

    /** Of the pressures marked on tyre and rim at hand, Pa; null where neither is known. */
    Double lowerMarkedPressure() {
        return lower(bike().markedTyrePressure(), bike().markedRimPressure());
    }

    /** The most that tyres at hand may be inflated to, Pa; null where nothing limits them. */
    Double pressureCeiling() {
        return lower(lowerMarkedPressure(), Boolean.TRUE.equals(bike().hookless()) ? RuleValue.HOOKLESS_PRESSURE.inBase() : null);
    }

    /** The lower of two limits; the one that is known where only one is. */
    private static Double lower(Double a, Double b) {
        return a == null ? b : b == null ? a : Double.valueOf(Math.min(a, b));
    }

    /** The narrowest tyre that goes on the rims at hand, m; null where their width is not known. */
    Double leastTyreWidth() {
        return bike().rimInnerWidth() == null ? null : Double.valueOf(bike().rimInnerWidth() + RuleValue.TYRE_OVER_RIM.inBase());
    }

    /** By how much a measure is above a mark on the bike at hand, both of one resolution; null where either is unknown or another bike is ridden. */
    MeasureValue above(Measure measure, Measure mark) {
        MeasureValue value = measure.calculate(this);
        MeasureValue most = mark.calculate(this);
        if (assumptions.bike != bike() || value == null || most == null) {
            return null;
        }
        return new MeasureValue(Math.max(0, value.low() - most.mid()), Math.max(0, value.mid() - most.mid()), Math.max(0, value.high() - most.mid()));
    }
}
