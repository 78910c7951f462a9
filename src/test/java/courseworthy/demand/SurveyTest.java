package courseworthy.demand;

import static courseworthy.ride.InventedCourse.ground;
import static courseworthy.ride.InventedCourse.stretch;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.course.Climbing;
import courseworthy.course.Course;
import courseworthy.course.ElevationLine;
import courseworthy.course.GeoPoint;
import courseworthy.course.Ground;
import courseworthy.course.Smoothness;
import courseworthy.course.Stretch;
import courseworthy.course.Surface;
import courseworthy.event.Event;
import courseworthy.ride.InventedCourse;
import courseworthy.rider.Bike;
import courseworthy.rider.Rider;
import courseworthy.rider.Rider.MaximalEffort;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Demands of invented courses, riders and days, worked by hand. */
class SurveyTest {

    private static final Bike GRAVEL_BIKE = Bike.builder("gravel").mass(9.0).rimInnerWidth(0.025).hookless(true).markedTyrePressure(499_000.0)
            .markedRimPressure(450_000.0).tyreClearance(0.0457).tubeless(true).ledgeLimit(0.15).useCategory("EN 2").massLimit(110.0).lights(7200.0)
            .mostRotor(0.160).powerMeter(false).build();

    /** Two kilometres of asphalt, three of gravel, one of sand, two of trail and two unknown, on a line with one climb of 150 m in 3 km. */
    private static Course course() {
        Ground sharp = Ground.builder().surface(Surface.GRAVEL).smoothness(Smoothness.BAD).sharpStones(true).waterCrossings(1).turnsPerKm(2.0)
                .build();
        Ground trail = Ground.builder().surface(Surface.DIRT).mtbScale(2.0).roots(true).mudWhenWet(true).waterCrossings(2).ledgeHeight(0.32)
                .turnsPerKm(8.0).build();
        List<Stretch> stretches = List.of(stretch(2, 0, 0, ground(Surface.ASPHALT, Smoothness.GOOD, null, null)), stretch(3, 150, 0, sharp),
                stretch(1, 0, 0, ground(Surface.SAND)), stretch(2, 0, 150, trail), stretch(2, 0, 0, Ground.UNKNOWN));
        ElevationLine line = InventedCourse.line(10_000, 10,
                d -> 400 + (d < 2000 ? 0 : d < 5000 ? 0.05 * (d - 2000) : d < 6000 ? 150 : d < 8000 ? 150 - 0.075 * (d - 6000) : 0));
        return Course.builder("five grounds", stretches).line(line).climbing(Climbing.written(150.0, 150.0)).start(new GeoPoint(47.0, 8.0)).build();
    }

    private static Rider rider() {
        return Rider.builder().mass(70.0).kit(2.5).efforts(List.of(new MaximalEffort(3600, 260))).skill("expert").climbingCadence(65.0)
                .highestCadence(100.0).racesAYear(12).barWidth(0.42).stops(new Rider.StopCosts(120.0, 400.0, 300.0)).build();
    }

    private static Event event() {
        Event.Forecast forecast = Event.Forecast.builder().low(10.0).high(22.0).going("wet").wind(5.0).from(270.0).build();
        return Event.builder().role("race").date(LocalDate.of(2027, 6, 21)).start(LocalTime.of(9, 0)).zone(ZoneOffset.ofHours(2)).laps(2)
                .aim("podium").timeLimit(14_400.0).groupShare(0.2).forecast(forecast)
                .support(List.of(new Event.Support(6000, true, false, false, 0), new Event.Support(13_000, false, true, true, 0))).supportKnown(true)
                .rules(new Event.Rules(false, 0.0504, null, true, false, List.of(), "", null)).build();
    }

    private static Demands surveyed() {
        return Survey.of(course(), rider(), event(), GRAVEL_BIKE);
    }

    private static double mid(Demands demands, Measure measure) {
        return measure.scale().resolution().shown(demands.get(measure).mid());
    }

    /** In the unit shown; exact to the tick. */
    @ParameterizedTest
    @CsvSource({"DISTANCE, 20.0", "LAPS, 2", "ASCENT, 300", "DESCENT, 300", "CLIMBING_PER_KM, 15.0", "DESCENT_PER_KM, 15.0",
        "HIGHEST_POINT, 550", "CLIMBS, 2", "LONGEST_CLIMB, 3.0", "LONGEST_CLIMB_ASCENT, 150", "LAST_LONG_CLIMB, 3.0",
        "LAST_LONG_CLIMB_ASCENT, 150", "LAST_LONG_CLIMB_GRADIENT, 5.0", "STEEPEST_RAMP, 5.0", "STEEPEST_100_M, 5.0", "STEEPEST_500_M, 5.0",
        "STEEPEST_1_KM, 5.0", "KNOWN_GROUND, 80", "PAVED_SHARE, 25", "GRAVEL_SHARE, 38", "TRAIL_SHARE, 25", "SOFT_SHARE, 13",
        "LOOSE_SHARE, 75", "SHARP_STONES, 30", "SAND, 10", "MUD, 20", "WATER_CROSSINGS, 6", "LEDGE_HEIGHT, 0.35", "HARDEST_MTB_SCALE, 2.0",
        "RIDER_MASS, 70", "HOUR_POWER, 260", "POWER_PER_KG, 3.70", "CLIMBING_CADENCE, 65", "HIGHEST_CADENCE, 100", "RACES_A_YEAR, 12",
        "USED_BAR_WIDTH, 420", "GROUP_SHARE, 20", "WIND, 18", "TIME_LIMIT, 240", "RIM_INNER_WIDTH, 25", "LEAST_TYRE_WIDTH_ON_THE_RIM, 30",
        "MARKED_TYRE_PRESSURE, 4.95", "MARKED_RIM_PRESSURE, 4.50", "LOWER_MARKED_PRESSURE, 4.50", "TYRE_CLEARANCE, 45", "TYRE_WIDTH_ALLOWED, 50",
        "BIKE_LEDGE_LIMIT, 0.15", "LEDGE_ABOVE_THE_MARK, 0.20", "BIKE_MASS_LIMIT, 110", "MASS_ABOVE_THE_MARK, 0", "LIGHTS_AT_HAND, 120",
        "MOST_ROTOR, 160", "SUPPORT_GAP, 10.0", "START_LINE_MASS, 82.0"})
    void measuresWhatIsWritten(Measure measure, double shown) {
        assertThat(mid(surveyed(), measure)).isCloseTo(shown, within(1e-9));
    }

    /**
     * Technical grade, off paved ground and of what is known: gravel of smoothness bad 0 over 3 km, trail 2 over 2 km, sand not known: 4 / 5.
     * Turns: (2 x 3 + 8 x 2) / 5 = 4.4, to the half: 4.5. Roughness over 8 known km: good 0.3 x 2, bad 1.7 x 3, sand 1.8, mtb:scale 2 with
     * roots 3.5 x 2: 14.5 / 8 = 1.81. The worst tenth is trail: 3.5.
     */
    private static Demands ridden(Integer born, Integer toAge, Double barWidth) {
        Rider rider = Rider.builder().height(1.72).barWidth(barWidth).preference("speed").body(new Rider.BodyMeasures(0.4, "weak", born, List.of("back"))).build();
        Event race = Event.builder().role("race").date(LocalDate.of(2026, 5, 2))
                .rules(new Event.Rules(null, null, null, null, null, List.of(), "", new Event.GearLimit(6.94, toAge))).build();
        return Survey.of(course(), rider, race, Bike.of("road"));
    }

    /** The age is the one reached in the year of the race, as in the rules of the sport's world body (UCI 1.1.034, from memory). */
    @ParameterizedTest
    @CsvSource({"2010, 16, true", "2009, 16, false", ", 16, false", ", , true", "1980, , true"})
    void aLimitOnGearsHoldsToAnAge(Integer born, Integer toAge, boolean limited) {
        Demands demands = ridden(born, toAge, null);
        assertThat(demands.known(Measure.GEARS_LIMITED)).isEqualTo(born != null || toAge == null);
        assertThat(demands.known(Measure.DEVELOPMENT_ALLOWED)).isEqualTo(limited);
        assertThat(demands.known(Measure.HARDEST_GEAR_ALLOWED)).isEqualTo(limited);
    }

    /** 6.94 m is 46x14 on wheels of 2.11 m: 6.94 over 3.286. */
    @Test
    void theGearAllowedIsTheDevelopmentOverTheWheel() {
        assertThat(mid(ridden(2010, 16, null), Measure.HARDEST_GEAR_ALLOWED)).isCloseTo(46 / 14.0, within(0.05));
    }

    @Test
    void theBodyAsItIsWritten() {
        Demands demands = ridden(2010, 16, null);
        assertThat(mid(demands, Measure.RIDER_HEIGHT)).isEqualTo(1.72);
        assertThat(mid(demands, Measure.SHOULDER_WIDTH)).isEqualTo(400);
        assertThat(mid(demands, Measure.DROP_BAR_WIDTH_BY_THE_SHOULDERS)).isEqualTo(424);
        assertThat(mid(demands, Measure.RACING_AGE)).isEqualTo(16);
        assertThat(demands.get(Measure.HAND_STRENGTH).mid()).isZero();
        assertThat(demands.get(Measure.PREFERENCE).mid()).isEqualTo(2);
        assertThat(demands.get(Measure.INJURED_BACK).mid()).isEqualTo(1);
        assertThat(demands.get(Measure.INJURED_KNEES).mid()).isZero();
    }

    @Test
    void itIsKnownWhetherABarWidthIsGiven() {
        assertThat(ridden(2010, 16, 0.42).get(Measure.BAR_WIDTH_GIVEN).mid()).isEqualTo(1);
        assertThat(ridden(2010, 16, null).get(Measure.BAR_WIDTH_GIVEN).mid()).isZero();
    }

    @Test
    void meansAreByLength() {
        Demands demands = surveyed();
        assertThat(mid(demands, Measure.MTB_SCALE)).isCloseTo(0.8, within(1e-9));
        assertThat(mid(demands, Measure.TURNS_PER_KM)).isCloseTo(4.5, within(1e-9));
        assertThat(mid(demands, Measure.ROUGHNESS)).isCloseTo(1.8, within(1e-9));
        assertThat(mid(demands, Measure.WORST_ROUGHNESS)).isCloseTo(3.5, within(1e-9));
    }

    /** Two of ten kilometres are unknown: paved is 2 of 8 known, and from 2 to 4 of 10 whatever the rest is. */
    @Test
    void unknownGroundWidensShares() {
        assertThat(surveyed().get(Measure.PAVED_SHARE)).isEqualTo(new MeasureValue(20, 25, 40));
        assertThat(surveyed().get(Measure.SHARP_STONES)).isEqualTo(new MeasureValue(30, 30, 35));
    }

    @Test
    void wordsAndYesOrNo() {
        Demands demands = surveyed();
        assertThat(text(demands, Measure.GOING)).isEqualTo("wet");
        assertThat(text(demands, Measure.SKILL)).isEqualTo("expert");
        assertThat(text(demands, Measure.AIM)).isEqualTo("podium");
        assertThat(text(demands, Measure.ROLE)).isEqualTo("race");
        assertThat(text(demands, Measure.BIKE_AT_HAND)).isEqualTo("gravel");
        assertThat(text(demands, Measure.HOOKLESS)).isEqualTo("yes");
        assertThat(text(demands, Measure.AERO_EXTENSIONS_ALLOWED)).isEqualTo("no");
        assertThat(text(demands, Measure.BAG_ON_THE_COURSE)).isEqualTo("yes");
        assertThat(text(demands, Measure.POWER_METER_AT_HAND)).isEqualTo("no");
        assertThat(demands.known(Measure.LIGHTS_REQUIRED)).isFalse();
        assertThat(demands.known(Measure.MOST_FORK_TRAVEL)).isFalse();
    }

    private static String text(Demands demands, Measure measure) {
        return measure.scale().text(demands.get(measure).mid());
    }

    /**
     * At 47 N, 8 E on the longest day the sun rises at 5:31 and sets at 21:29 (sunrise equation). At 9:00 the two curves lie at 0.54 and
     * 0.33 of the day's range, so it is 10 + 12 x 0.44 = 15 C (by hand); the ride is over by half past ten, before 18 C; at the top, 150 m
     * up, it is 0.975 C less than the hour gives; a short morning ride sees no night.
     */
    @Test
    void temperaturesFollowHourAndHeight() {
        Demands demands = surveyed();
        assertThat(mid(demands, Measure.START_TEMPERATURE)).isEqualTo(15);
        assertThat(mid(demands, Measure.COLDEST_TEMPERATURE)).isBetween(14.0, 15.0);
        assertThat(mid(demands, Measure.HOTTEST_TEMPERATURE)).isBetween(16.0, 18.0);
        assertThat(mid(demands, Measure.SUMMIT_TEMPERATURE)).isBetween(14.0, 17.0);
        assertThat(demands.known(Measure.NIGHT_TEMPERATURE)).isFalse();
        assertThat(demands.get(Measure.DARK_HOURS)).isEqualTo(MeasureValue.exact(0));
        assertThat(mid(demands, Measure.DAYLIGHT_TO_SPARE)).isBetween(8 * 60.0, 13 * 60.0);
    }

    @Test
    void slowHoursAreTheSlowEnd() {
        Demands demands = surveyed();
        assertThat(demands.get(Measure.SLOW_HOURS).mid()).isEqualTo(demands.get(Measure.HOURS).high());
        assertThat(mid(demands, Measure.HOURS)).isBetween(45.0, 75.0);
        assertThat(demands.get(Measure.SUPPORT_GAP_HOURS).mid()).isLessThan(demands.get(Measure.SLOW_HOURS).mid());
    }

    @Test
    void whatIsWrittenIsNotAssumed() {
        assertThat(surveyed().assumed()).extracting(Demands.AssumedInput::what).containsExactly("water on the bike, for the estimate of time");
    }

    @Test
    void whatIsNotWrittenIsAssumedAndSaid() {
        Demands demands = Survey.of(course(), Rider.UNKNOWN, Event.UNKNOWN, Bike.UNKNOWN);
        assertThat(demands.assumed()).contains(new Demands.AssumedInput("rider mass", "75 kg (65 to 85)"),
                new Demands.AssumedInput("hour power", "3.0 W/kg (2.5 to 3.7)"), new Demands.AssumedInput("skill", "good"),
                new Demands.AssumedInput("role", "race"), new Demands.AssumedInput("aim", "time"), new Demands.AssumedInput("laps", "1"),
                new Demands.AssumedInput("bike, for the estimate of time", "gravel"),
                new Demands.AssumedInput("going, for the estimate of time", "dry"));
        assertThat(demands.get(Measure.RIDER_MASS)).isEqualTo(new MeasureValue(130, 150, 170));
        for (Measure unknown : List.of(Measure.BIKE_AT_HAND, Measure.GOING, Measure.DARK_HOURS, Measure.DAYLIGHT_TO_SPARE,
                Measure.START_TEMPERATURE, Measure.SUPPORT_GAP, Measure.WATER_OVER_THE_HOTTEST_GAP, Measure.RACES_A_YEAR,
                Measure.LOWER_MARKED_PRESSURE, Measure.MASS_ABOVE_THE_MARK, Measure.HOOKLESS, Measure.WIND, Measure.TIME_LIMIT)) {
            assertThat(demands.known(unknown)).as(unknown.written()).isFalse();
        }
    }

    /** Nothing known of the ground: no measure of it, yet a time, wider than on known ground. */
    @Test
    void unknownGroundIsNeverAssumedSmooth() {
        Course blank = InventedCourse.course(null, null, List.of(new Stretch(40_000, null, null, null, Ground.UNKNOWN, 0)));
        Course silent = Course.builder("", blank.stretches()).build();
        Demands demands = Survey.of(silent, rider(), Event.UNKNOWN, GRAVEL_BIKE);
        assertThat(mid(demands, Measure.KNOWN_GROUND)).isZero();
        for (Measure unknown : List.of(Measure.ROUGHNESS, Measure.WORST_ROUGHNESS, Measure.PAVED_SHARE, Measure.LOOSE_SHARE, Measure.SAND,
                Measure.MUD, Measure.SHARP_STONES, Measure.MTB_SCALE, Measure.LEDGE_HEIGHT, Measure.TURNS_PER_KM, Measure.ASCENT,
                Measure.CLIMBS, Measure.STEEPEST_100_M, Measure.HIGHEST_POINT, Measure.RATIO_NEEDED_ON_THE_LAST_CLIMB)) {
            assertThat(demands.known(unknown)).as(unknown.written()).isFalse();
        }
        MeasureValue hours = demands.get(Measure.HOURS);
        assertThat((double) hours.high() / hours.low()).isGreaterThan(1.3);
        assertThat(demands.assumed()).extracting(Demands.AssumedInput::what)
                .contains("climbing where it is not given, for the estimate of time");
        assertThat(demands.stretches().get(0).get(StretchMeasure.SURFACE)).isEqualTo(StretchFacts.UNKNOWN);
        assertThat(demands.stretches().get(0).get(StretchMeasure.SHARP_STONES)).isEqualTo(StretchFacts.UNKNOWN);
    }

    @Test
    void stretchesSayWhatIsKnown() {
        List<StretchFacts> stretches = surveyed().stretches();
        assertThat(stretches).hasSize(5);
        StretchFacts trail = stretches.get(3);
        assertThat(trail.get(StretchMeasure.LENGTH)).isEqualTo(200);
        assertThat(trail.get(StretchMeasure.GRADIENT)).isEqualTo(-15);
        assertThat(trail.get(StretchMeasure.MTB_SCALE)).isEqualTo(20);
        assertThat(trail.get(StretchMeasure.ROUGHNESS)).isEqualTo(35);
        assertThat(trail.get(StretchMeasure.LOOSE)).isEqualTo(1);
        assertThat(trail.get(StretchMeasure.ROOTS)).isEqualTo(1);
        assertThat(trail.get(StretchMeasure.LEDGE_HEIGHT)).isEqualTo(6);
        assertThat(trail.get(StretchMeasure.SHARP_STONES)).isEqualTo(StretchFacts.UNKNOWN);
        StretchFacts road = stretches.get(0);
        assertThat(road.get(StretchMeasure.PAVED)).isEqualTo(1);
        assertThat(road.get(StretchMeasure.SHARP_STONES)).isZero();
        assertThat(road.get(StretchMeasure.SURFACE)).isEqualTo(Surface.tags().indexOf("asphalt"));
    }

    /** Mud: 20 % turns to mud in rain; wet all of it, damp half, dry none, unknown from none to all. */
    @ParameterizedTest
    @CsvSource({"wet, 20, 20, 20", "damp, 0, 10, 20", "dry, 0, 0, 0", ", 0, 0, 20"})
    void mudByForecast(String groundForecast, long low, long mid, long high) {
        Course course = InventedCourse.course(stretch(8, 0, 0, ground(Surface.ASPHALT)), stretch(2, 0, 0,
                Ground.builder().surface(Surface.DIRT).mudWhenWet(true).build()));
        Event day = with(Event.Forecast.builder().going(groundForecast).build());
        assertThat(Survey.of(course, rider(), day, GRAVEL_BIKE).get(Measure.MUD)).isEqualTo(new MeasureValue(low, mid, high));
    }

    private static Event with(Event.Forecast forecast) {
        return Event.builder().forecast(forecast).build();
    }

    /** Gravel is bound, and so not loose, where its smoothness is intermediate or better or its tracktype grade1. */
    @ParameterizedTest
    @CsvSource({"BAD, , true", "INTERMEDIATE, , false", ", 1, false", ", 2, true", ", , true"})
    void looseGravel(Smoothness smoothness, Integer trackGrade, boolean loose) {
        assertThat(TerrainDemands.loose(ground(Surface.GRAVEL, smoothness, trackGrade, null))).isEqualTo(loose);
    }

    /**
     * Support at 30 km of a flat 60 km: the ride is over in 2 to 3 h, so each half takes 1 to 1.6 h slow; at 20 C a rider of this power loses
     * about 1.3 L/h. A rider of 70 kg may lose 1.4 L, so thirst leads on the first half and the whole is carried at most on the second. With
     * a known sweat rate never above it.
     */
    @Test
    void waterLastsOverTheGap() {
        Course flat = InventedCourse.course(stretch(60, 0, 0, ground(Surface.COMPACTED)));
        Event day = Event.builder().role("race").start(LocalTime.of(9, 0)).laps(1).aim("time").groupShare(0.0)
                .forecast(Event.Forecast.builder().low(20.0).high(20.0).going("dry").wind(0.0).build())
                .support(List.of(new Event.Support(30_000, true, false, false, 0))).supportKnown(true).startHeight(400.0).build();
        Demands demands = Survey.of(flat, rider(), day, GRAVEL_BIKE);
        double hours = mid(demands, Measure.SUPPORT_GAP_HOURS) / 60;
        double water = mid(demands, Measure.WATER_OVER_THE_HOTTEST_GAP);
        assertThat(mid(demands, Measure.SUPPORT_GAP)).isEqualTo(30);
        assertThat(hours).isBetween(0.9, 1.6);
        assertThat(water / hours / 1.15).isBetween(0.6 * 1.1, 1.5);
        assertThat(mid(demands, Measure.WATER_AT_THE_START)).isLessThanOrEqualTo(water);
        Rider sweats = Rider.builder().mass(70.0).kit(2.5).efforts(List.of(new MaximalEffort(3600, 260))).skill("expert").climbingCadence(65.0)
                .highestCadence(100.0).racesAYear(12).sweatRate(0.5).barWidth(0.42).build();
        MeasureValue known = Survey.of(flat, sweats, day, GRAVEL_BIKE).get(Measure.WATER_OVER_THE_HOTTEST_GAP);
        assertThat(Measure.WATER_OVER_THE_HOTTEST_GAP.scale().resolution().shown(known.high())).isLessThanOrEqualTo(0.5 * hours * 1.15 + 0.1);
    }

    /** A race at 14:00 in June starts near the day's highest, 24 C, where one at 7:00 starts in its lower half (both curves' mean, by hand). */
    @Test
    void anAfternoonStartsWarm() {
        assertThat(start(LocalTime.of(14, 0))).isBetween(23.0, 24.0);
        assertThat(start(LocalTime.of(7, 0))).isBetween(8.0, 14.0);
    }

    private static double start(LocalTime time) {
        Event day = Event.builder().role("race").date(LocalDate.of(2027, 6, 21)).start(time).zone(ZoneOffset.ofHours(2)).laps(1).aim("time")
                .groupShare(0.0).forecast(Event.Forecast.builder().low(8.0).high(24.0).going("dry").wind(0.0).build()).supportKnown(true)
                .build();
        return mid(Survey.of(course(), rider(), day, GRAVEL_BIKE), Measure.START_TEMPERATURE);
    }

    /**
     * Air keeps the moisture of a dew point at the day's lowest (FAO-56): of 10 C it is at 38.8 % at 25 C (Tetens' formula, by hand), so at the
     * mean of a day from 10 to 40 C too, to half a percent; what is forecast counts first.
     */
    @Test
    void airIsAsMoistAsAtItsDewPoint() {
        assertThat(humidity(Event.Forecast.builder().low(10.0).high(40.0).going("dry").wind(0.0).build())).isCloseTo(0.388, within(0.005));
        assertThat(humidity(Event.Forecast.builder().low(10.0).high(10.0).going("dry").wind(0.0).build())).isCloseTo(1, within(1e-9));
        assertThat(humidity(Event.Forecast.builder().low(10.0).high(40.0).going("dry").wind(0.0).air(new Event.AirConditions(0.6, null)).build())).isEqualTo(0.6);
        assertThat(humidity(Event.Forecast.UNKNOWN)).isEqualTo(0.5);
    }

    private static double humidity(Event.Forecast forecast) {
        return Survey.of(course(), rider(), with(forecast), GRAVEL_BIKE).estimated().estimate().basis().weather().humidity();
    }

    /** Laps: passing start and finish counts, written or not. */
    @Test
    void lapsBreakTheGap() {
        Course lap = InventedCourse.course(stretch(8, 0, 0, ground(Surface.COMPACTED)));
        Event silent = Event.builder().role("race").laps(5).build();
        Demands demands = Survey.of(lap, rider(), silent, GRAVEL_BIKE);
        assertThat(mid(demands, Measure.DISTANCE)).isEqualTo(40);
        assertThat(mid(demands, Measure.SUPPORT_GAP)).isEqualTo(8);
        assertThat(demands.assumed()).contains(new Demands.AssumedInput("places to fill bottles", "start and finish of each lap"));
    }

    @Test
    void theEventsBikeBlockWinsFieldByField() {
        Bike rider = Bike.builder("gravel").mass(9.0).rimInnerWidth(0.025).hookless(false).markedRimPressure(300_000.0).powerMeter(true).build();
        Bike event = Bike.builder("gravel").hookless(true).markedTyrePressure(500_000.0).build();
        assertThat(Survey.bike(rider, event)).isEqualTo(Bike.builder("gravel").mass(9.0).rimInnerWidth(0.025).hookless(true)
                .markedTyrePressure(500_000.0).markedRimPressure(300_000.0).powerMeter(true).build());
    }

    /** Of another kind it is another bike: nothing of the rider's holds but the lights, which are taken along. */
    @Test
    void theEventsBikeOfAnotherKindIsAnotherBike() {
        Bike rider = Bike.builder("gravel").mass(9.0).rimInnerWidth(0.025).hookless(false).markedRimPressure(300_000.0).tyreClearance(0.045).tubeless(true)
                .ledgeLimit(0.15).useCategory("EN 2").massLimit(110.0).lights(7200.0).mostRotor(0.16).powerMeter(true)
                .damping(new Bike.DampingSettings(9, 9, null, null, null)).build();
        Bike event = Bike.builder("road").hookless(true).markedTyrePressure(500_000.0).build();
        assertThat(Survey.bike(rider, event)).isEqualTo(Bike.builder("road").hookless(true).markedTyrePressure(500_000.0).lights(7200.0).build());
        assertThat(Survey.bike(rider, Bike.of("road"))).isEqualTo(Bike.builder("road").lights(7200.0).build());
        assertThat(Survey.bike(rider, Bike.UNKNOWN)).isEqualTo(rider);
    }

    /**
     * A start at 19:00 at 47 N, 8 E on the longest day: noon by the sun is 13:30 at UTC+2, half the day 7:57 h by the sunrise equation, so
     * the sun sets at 21:27, 147 min after the start, and what the slow estimate takes beyond is without sun (5 min of resolution either side);
     * civil dusk is 38 to 42 min later there. At 19:00 the curves lie at 0.84 and 0.87 of the day's range,
     * 8 + 16 x 0.86 = 22 C.
     */
    @Test
    void nightIsDarkAndCold() {
        Course far = Course.builder("", List.of(stretch(200, 0, 0, ground(Surface.COMPACTED))))
                .line(new ElevationLine(new double[] {0, 200_000}, new double[] {300, 300}, false, true)).climbing(Climbing.written(0.0, 0.0)).start(new GeoPoint(47, 8))
                .build();
        Event evening = Event.builder().role("race").date(LocalDate.of(2027, 6, 21)).start(LocalTime.of(19, 0)).zone(ZoneOffset.ofHours(2))
                .laps(1).aim("time").groupShare(0.0).forecast(Event.Forecast.builder().low(8.0).high(24.0).going("dry").wind(0.0).build())
                .supportKnown(true).build();
        Demands demands = Survey.of(far, rider(), evening, GRAVEL_BIKE);
        double sunless = mid(demands, Measure.SUNLESS_HOURS);
        double slow = mid(demands, Measure.SLOW_HOURS);
        assertThat(sunless).isCloseTo(slow - 147, within(8.0));
        assertThat(mid(demands, Measure.DARK_HOURS)).isCloseTo(sunless - 40, within(8.0));
        assertThat(mid(demands, Measure.DARK_SHARE)).isCloseTo(100 * mid(demands, Measure.DARK_HOURS) / slow, within(2.0));
        assertThat(mid(demands, Measure.DAYLIGHT_TO_SPARE)).isZero();
        assertThat(mid(demands, Measure.NIGHT_TEMPERATURE)).isBetween(8.0, 14.0);
        assertThat(mid(demands, Measure.START_TEMPERATURE)).isCloseTo(22, within(1.0));
    }

    /** Nothing depends on the clock, the locale or the zone: two surveys are alike. */
    @Test
    void theSameInputGivesTheSame() {
        assertThat(surveyed().values()).isEqualTo(surveyed().values());
        assertThat(surveyed().assumed()).isEqualTo(surveyed().assumed());
    }
}
