package courseworthy.demand;

import courseworthy.course.Climbing;
import courseworthy.course.Course;
import courseworthy.course.ElevationLine;
import courseworthy.course.Stretch;
import courseworthy.demand.Demands.AssumedInput;
import courseworthy.event.Event;
import courseworthy.event.WeatherHour;
import courseworthy.ride.Air;
import courseworthy.ride.BikeKind;
import courseworthy.ride.DiscretisedCourse;
import courseworthy.ride.DragArea;
import courseworthy.ride.Endurance;
import courseworthy.ride.HourlyWeather;
import courseworthy.ride.Range;
import courseworthy.ride.RideAssumptions;
import courseworthy.ride.Roughness;
import courseworthy.rider.Bike;
import courseworthy.rider.Rider;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

/**
 * What the survey goes by: what was given, or else an assumption with a range, of which account is kept. The
 * assumed figures are those of an ordinary keen amateur (common practice, no source).
 */
final class SurveyAssumptions {

    /** An ordinary rider, kg (common practice, no source). */
    private static final Range RIDER_MASS = Range.within(75, 10);
    /** Clothing, helmet, shoes, tools and spares, kg. */
    private static final Range KIT_MASS = Range.within(3, 1);
    /** Water on the bike over the ride, kg: a bottle or two, a pack on top. What the start is left with is worked out later, where taps are known. */
    private static final Range WATER_MASS = new Range(0.6, 1.2, 2.5);
    private static final Range HOUR_POWER_PER_KG = new Range(2.5, 3.0, 3.7);
    private static final Range CLIMBING_CADENCE = Range.within(60, 8);
    private static final Range HIGHEST_CADENCE = Range.within(100, 10);
    /** Minutes from the hiss to being back at speed (common practice, no source). */
    private static final Range PLUG_STOP = new Range(2, 3, 6);
    private static final Range TUBE_STOP = new Range(5, 8, 15);
    /** A cadence that is written is good to this, per minute (judgement). */
    private static final double CADENCE_KNOWN = 2;
    /** A body or bike that was weighed is good to this, kg. */
    private static final double WEIGHED = 0.5;
    private static final String SKILL = "good";
    private static final int LIKELY_START = 8 * 3600;
    /** Air for the ride model where no temperature is forecast, °C. */
    private static final double TEMPERATURE = 15;
    private static final double START_HEIGHT = 300;
    /**
     * How far climbing that is written may be off: barometers were up to 5 % off on dry climbs (Menaspà et al. 2016, J. Sci. Cycling
     * 5(1):10-12) and 5 % over 202 rides (Sánchez and Villena 2020, Proc. IMechE P 234:312-319). What a track measures has its own range.
     */
    static final Range CLIMBING_OFF = Range.within(1, 0.05);
    /** Less than this up and down in all is flat, m: a share of it means nothing. */
    private static final double FLAT = 1;
    /** Assumed climbing may be none or two and a half times as much. */
    private static final Range ASSUMED_CLIMBING = new Range(0, 1, 2.5);
    private static final Range MOST_OF_A_RACE_IN_A_GROUP = new Range(0, 0, 0.3);

    /** How much of what could be held is ridden (practice): a race to finish, for a time, for the podium; training. */
    private static final Range TO_FINISH = new Range(0.82, 0.90, 0.98);
    private static final Range FOR_A_TIME = new Range(0.94, 0.98, 1.0);
    private static final Range FOR_THE_PODIUM = new Range(0.96, 1.0, 1.03);
    private static final Range IN_TRAINING = new Range(0.75, 0.85, 0.95);

    final Course course;
    final Rider rider;
    final Event event;
    /** The bike at hand, as written. */
    final Bike atHand;
    /** What is known of the bike that is ridden: the bike at hand where it is of its kind. */
    final Bike bike;
    /** Of the bike that is ridden. */
    final BikeKind kind;
    final boolean training;
    final String aim;
    final int laps;
    final Range riderMass;
    /** Rider, kit and bike. */
    final Range dryMass;
    final Range startLineMass;
    final Range hourPower;
    final Range climbingCadence;
    final Range highestCadence;
    final Range groupShare;
    /** What a stop costs, s. */
    final Range plugStop;
    final Range tubeStop;
    final int skill;
    final boolean startKnown;
    /** Seconds after midnight, local. */
    final int start;

    private final List<AssumedInput> assumed = new ArrayList<>();

    SurveyAssumptions(Course course, Rider rider, Event event, Bike atHand, BikeKind ridden) {
        this.course = course;
        this.rider = rider;
        this.event = event;
        this.atHand = atHand;
        training = "training".equals(event.role());
        assumeIf(event.role() == null, "role", "race");
        aim = event.aim() != null ? event.aim() : training ? "finish" : "time";
        assumeIf(event.aim() == null && !training, "aim", aim);
        laps = event.laps() == null ? 1 : event.laps();
        assumeIf(event.laps() == null, "laps", "1");
        kind = ridden == null ? kind() : ridden;
        bike = atHand.as(kind.written());
        riderMass = known(rider.mass(), WEIGHED, RIDER_MASS, "rider mass", "kg", 0);
        dryMass = dryMass();
        startLineMass = dryMass.plus(WATER_MASS);
        assume("water on the bike, for the estimate of time", text(WATER_MASS, "kg", 1));
        hourPower = hourPower();
        climbingCadence = known(rider.climbingCadence(), CADENCE_KNOWN, CLIMBING_CADENCE, "climbing cadence", "rpm", 0);
        highestCadence = known(rider.highestCadence(), CADENCE_KNOWN, HIGHEST_CADENCE, "highest cadence", "rpm", 0);
        skill = Rider.SKILLS.indexOf(rider.skill() == null ? SKILL : rider.skill());
        assumeIf(rider.skill() == null, "skill", SKILL);
        groupShare = groupShare();
        plugStop = stop(rider.stops().plug(), PLUG_STOP, "plug stop");
        tubeStop = stop(rider.stops().tube(), TUBE_STOP, "tube stop");
        startKnown = event.start() != null;
        start = startKnown ? event.start().toSecondOfDay() : LIKELY_START;
    }

    /** Notes down something that is not written and is therefore assumed. */
    void assume(String what, String value) {
        assumed.add(new AssumedInput(what, value));
    }

    /** What was assumed so far, in the order in which it was needed. */
    List<AssumedInput> assumed() {
        return assumed;
    }

    private void assumeIf(boolean notWritten, String what, String value) {
        if (notWritten) {
            assume(what, value);
        }
    }

    private Range known(Double written, double off, Range otherwise, String what, String unit, int decimals) {
        if (written != null) {
            return Range.within(written, off);
        }
        assume(what, text(otherwise, unit, decimals));
        return otherwise;
    }

    /** In s; a stop that is written is taken as it is. */
    private Range stop(Double written, Range minutes, String what) {
        if (written != null) {
            return Range.exact(written);
        }
        assume(what, text(minutes, "min", 0));
        return minutes.times(60);
    }

    /** A range in words: {@code 75 kg (65 to 85)}. */
    static String text(Range range, String unit, int decimals) {
        return number(range.mid(), decimals) + " " + unit + " (" + number(range.low(), decimals) + " to " + number(range.high(), decimals)
                + ")";
    }

    /** With no or one decimal; the formatter of the library is slow to load. */
    private static String number(double value, int decimals) {
        return decimals == 0 ? Long.toString(Math.round(value)) : Double.toString(Math.round(value * 10) / 10.0);
    }

    /** The bike at hand, or for the estimate of time alone one that suits the ground. */
    private BikeKind kind() {
        BikeKind written = atHand.kind() == null ? null : BikeKind.of(atHand.kind());
        if (written != null) {
            return written;
        }
        BikeKind likely = likelyKind(course.stretches());
        assume("bike, for the estimate of time", likely.written());
        return likely;
    }

    /** Mean roughness and technical grade from which another kind of bike is likelier (common practice, no source). */
    private static final double ROUGH_FOR_A_DROP_BAR = 2.5;
    private static final double RUGGED = 3.1;
    private static final double TECHNICAL = 1.5;
    private static final double SMOOTH = 0.7;

    private static BikeKind likelyKind(List<Stretch> stretches) {
        double length = 0;
        double known = 0;
        double rough = 0;
        double technical = 0;
        double paved = 0;
        for (Stretch stretch : stretches) {
            length += stretch.length();
            paved += TerrainDemands.isPaved(stretch.ground()) ? stretch.length() : 0;
            Double grade = TerrainDemands.technicalGrade(stretch.ground());
            technical += grade == null ? 0 : grade * stretch.length();
            Range roughness = Roughness.of(stretch.ground());
            known += roughness == null ? 0 : stretch.length();
            rough += roughness == null ? 0 : roughness.mid() * stretch.length();
        }
        double roughness = known > 0 ? rough / known : 0;
        if (roughness >= RUGGED || technical / length >= TECHNICAL) {
            return BikeKind.FULL;
        }
        if (roughness >= ROUGH_FOR_A_DROP_BAR || technical / length >= TECHNICAL / 2) {
            return BikeKind.HARDTAIL;
        }
        return paved == length && roughness < SMOOTH ? BikeKind.ROAD : BikeKind.GRAVEL;
    }

    private Range dryMass() {
        Range kit = known(rider.kit(), WEIGHED, KIT_MASS, "kit mass", "kg", 0);
        Range machine = bike.mass() != null ? Range.within(bike.mass(), WEIGHED) : kind.mass();
        assumeIf(bike.mass() == null, "bike mass", text(machine, "kg", 1));
        return riderMass.plus(kit).plus(machine);
    }

    private Range hourPower() {
        Range byEfforts = Endurance.hourPower(rider.efforts());
        if (byEfforts != null) {
            return byEfforts;
        }
        assume("hour power", text(HOUR_POWER_PER_KG, "W/kg", 1));
        return HOUR_POWER_PER_KG.times(riderMass.mid());
    }

    private Range groupShare() {
        if (event.groupShare() != null) {
            return Range.exact(event.groupShare());
        }
        assume("share ridden in a group", training ? "0 %" : "0 % (0 to 30)");
        return training ? Range.exact(0) : MOST_OF_A_RACE_IN_A_GROUP;
    }

    Range powerPerKg() {
        return hourPower.times(1 / riderMass.mid());
    }

    String role() {
        return training ? "training" : "race";
    }

    /** By positions in {@link Rider#SKILLS}: one either way where it is not written. */
    MeasureValue skills() {
        return rider.skill() != null ? MeasureValue.exact(skill)
                : new MeasureValue(Math.max(0, skill - 1), skill, Math.min(Rider.SKILLS.size() - 1, skill + 1));
    }

    /** Height of the start above sea level, m. */
    double startHeight() {
        ElevationLine line = course.line();
        if (line != null && line.absolute()) {
            return line.elevation()[0];
        }
        return event.startHeight() != null ? event.startHeight() : START_HEIGHT;
    }

    boolean heightKnown() {
        return course.line() != null && (course.line().absolute() || event.startHeight() != null);
    }

    /** What the estimate rests on; notes down what it needs and is not written. */
    RideAssumptions basis() {
        boolean climbingKnown = DiscretisedCourse.saysClimbing(course.stretches())
                || course.line() != null && course.line().measured();
        assumeIf(!climbingKnown, "climbing where it is not given, for the estimate of time", "10 m per km (0 to 25)");
        assumeIf(!heightKnown(), "height of the start, for the density of air", number(START_HEIGHT, 0) + " m");
        Event.Forecast forecast = event.forecast();
        assumeIf(forecast.going() == null, rained() ? "going when the hours of the forecast begin" : "going, for the estimate of time", "dry");
        assumeIf(meanTemperature() == null, "temperature, for the density of air", number(TEMPERATURE, 0) + " C");
        assumeIf(!windKnown(), "wind, for the estimate of time", "none (to 3 m/s)");
        return new RideAssumptions(kind, startLineMass, dragArea(), new RideAssumptions.PacingRanges(hourPower, intensity(), training), skill, wetness(), laps, points(),
                climbingKnown ? climbing() : ASSUMED_CLIMBING, weather());
    }

    /** Factor on gradients that are known: by how far a track leaves its climbing open where there is one. */
    private Range climbing() {
        Climbing lap = course.climbing();
        if (lap == null || lap.ascentRange() == null || lap.total() < FLAT) {
            return CLIMBING_OFF;
        }
        return Range.around((lap.ascentRange().low() + lap.descentRange().low()) / lap.total(), 1,
                (lap.ascentRange().high() + lap.descentRange().high()) / lap.total());
    }

    private RideAssumptions.WeatherAssumptions weather() {
        Event.Forecast forecast = event.forecast();
        Event.AirConditions air = forecast.air();
        Double mean = meanTemperature();
        HourlyWeather hourly = hourly();
        double wind = hourly != null && hourly.hasWind() ? hourly.meanWind(0, until(hourly)) : forecast.wind() == null ? 0 : forecast.wind();
        double from = hourly != null && hourly.hasWind() && hourly.hasDirection() ? hourly.meanFrom(0, until(hourly))
                : forecast.from() == null ? Double.NaN : Math.toRadians(forecast.from());
        return new RideAssumptions.WeatherAssumptions(mean == null ? TEMPERATURE : mean, startHeight(), windKnown(), wind, from, hours(), humidity(),
                air.pressure() == null ? Air.STANDARD_PRESSURE : air.pressure(), air.pressure() != null, hourly);
    }

    /** The weather by the hour; null where the forecast is of the whole day. */
    HourlyWeather hourly() {
        Event.Forecast forecast = event.forecast();
        return forecast.hours().isEmpty() ? null
                : new HourlyWeather(forecast.hours(), start, forecast.wind(), forecast.from(), forecast.going() == null ? null : wetness());
    }

    private static double until(HourlyWeather hourly) {
        return Math.max(0, hourly.lastBegins()) + 3600;
    }

    private boolean rained() {
        return WeatherHour.give(event.forecast().hours(), WeatherHour::rain);
    }

    boolean windKnown() {
        return event.forecast().wind() != null || WeatherHour.give(event.forecast().hours(), WeatherHour::wind);
    }

    /**
     * Relative humidity at the mean temperature: as forecast, else of air whose dew point is the lowest of the day (Allen and others 1998, FAO
     * Irrigation and Drainage Paper 56). By the hour the vapour pressure is held, not the relative humidity.
     */
    private double humidity() {
        Double written = event.forecast().air().humidity();
        if (WeatherHour.give(event.forecast().hours(), WeatherHour::humidity)) {
            return event.forecast().hours().stream().mapToDouble(WeatherHour::humidity).average().orElseThrow();
        }
        Double low = event.forecast().low();
        boolean dew = event.forecast().high() != null && low != null;
        return written != null ? written : dew ? Air.saturationPressure(low) / Air.saturationPressure(meanTemperature()) : RideAssumptions.WeatherAssumptions.HUMIDITY;
    }

    /** The temperature by the hour, where both its ends are forecast. */
    private RideAssumptions.Hours hours() {
        Event.Forecast forecast = event.forecast();
        double[] sun = sun();
        return forecast.low() == null || forecast.high() == null ? null : new RideAssumptions.Hours(start, forecast.low(), forecast.high(),
                sun == null ? Double.NaN : sun[0], sun == null ? Double.NaN : sun[1]);
    }

    /** Local midnight of the day, where date and place are known; else null. */
    Instant midnight() {
        if (event.date() == null || course.start() == null) {
            return null;
        }
        ZoneOffset offset = event.offset();
        double beside = offset != null ? offset.getTotalSeconds() : Math.round(course.start().longitude() / 15 * 3600);
        return event.date().atStartOfDay().toInstant(ZoneOffset.UTC).minusSeconds(Math.round(beside));
    }

    /** Sunrise and sunset of the day, s after local midnight, NaN where there is none; null where date or place are not known. */
    double[] sun() {
        Instant midnight = midnight();
        return midnight == null ? null : Daylight.of(midnight, course.start(), Daylight.SUN);
    }

    /** Civil dawn and dusk likewise. */
    double[] twilight() {
        Instant midnight = midnight();
        return midnight == null ? null : Daylight.of(midnight, course.start(), Daylight.CIVIL);
    }

    private Double meanTemperature() {
        Double low = event.forecast().low();
        Double high = event.forecast().high();
        return low == null ? high : high == null ? low : Double.valueOf((low + high) / 2);
    }

    /** Drag area over the whole ride, company counted. */
    private Range dragArea() {
        Range alone = DragArea.alone(kind, riderMass.mid());
        Range middle = DragArea.over(alone, groupShare.mid());
        double most = DragArea.over(alone, groupShare.high()).mid();
        return new Range(Math.min(middle.low(), most), middle.mid(), middle.high());
    }

    private int wetness() {
        return event.forecast().going() == null ? 0 : Event.Forecast.GOINGS.indexOf(event.forecast().going());
    }

    private int points() {
        return event.supportKnown() ? event.support().size() : -1;
    }

    private Range intensity() {
        if (training) {
            return IN_TRAINING;
        }
        return switch (aim) {
            case "finish" -> TO_FINISH;
            case "podium" -> FOR_THE_PODIUM;
            default -> FOR_A_TIME;
        };
    }
}
