package courseworthy.demand;

import static courseworthy.demand.DerivedCalculator.afterLayer;
import static courseworthy.demand.InputKeys.ALWAYS;
import static courseworthy.demand.InputKeys.bike;
import static courseworthy.demand.InputKeys.climbing;
import static courseworthy.demand.InputKeys.event;
import static courseworthy.demand.InputKeys.ground;
import static courseworthy.demand.InputKeys.rider;
import static courseworthy.demand.MeasureCalculator.atLeast;
import static courseworthy.demand.MeasureCalculator.atMost;
import static courseworthy.demand.MeasureCalculator.exact;
import static courseworthy.demand.MeasureCalculator.range;
import static courseworthy.demand.MeasureCalculator.ticks;
import static courseworthy.demand.MeasureCalculator.word;
import static courseworthy.demand.MeasureCalculator.yesNo;
import static courseworthy.demand.MeasureGroup.BIKE;
import static courseworthy.demand.MeasureGroup.COURSE;
import static courseworthy.demand.MeasureGroup.DAY;
import static courseworthy.demand.MeasureGroup.EQUIPMENT;
import static courseworthy.demand.MeasureGroup.EVENT;
import static courseworthy.demand.MeasureGroup.RIDE;
import static courseworthy.demand.MeasureGroup.RIDER;
import static courseworthy.demand.MeasureGroup.TERRAIN;
import static courseworthy.demand.MeasureScale.options;
import static courseworthy.demand.MeasureScale.quantity;
import static courseworthy.demand.MeasureScale.words;
import static courseworthy.demand.MeasureScale.yesNo;

import courseworthy.demand.Climbs.Climb;
import courseworthy.demand.TerrainDemands.Property;
import courseworthy.event.Event;
import courseworthy.rider.Rider;
import courseworthy.topic.End;
import courseworthy.topic.Topics;
import courseworthy.units.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * One measured property of a course, a rider or a day that rules may test. The constants are the catalogue, in the order in which output lists
 * them, and each declares all there is to a measure: the name that sheets use; its group; how it is counted, with the least and the most that
 * any day has of it; the keys that make it known where it is not; how it is worked out; and its definition.
 *
 * <p>The limits follow from what the readers of courses, riders and events take; where those set none they are what no day comes near
 * (judgement, no source).
 */
public enum Measure {
    DISTANCE("distance", COURSE, quantity(Unit.KM, "0.1", 0, 5000), ALWAYS, exact(s -> s.course.length() * s.laps()),
            "Length of the event over all laps, by geodesic where there is a track"),
    LAPS("laps", COURSE, quantity(Unit.ONE, "1", 1, 100), event("laps"), exact(SurveyInput::laps),
            "Laps of the course"),
    ASCENT("ascent", COURSE, quantity(Unit.M, "10", 0, 200_000), climbing("ascent", "descent"), range(s -> s.climbing.ascent(s.laps())),
            "Climbing over all laps, from the cleaned elevation with its dead band"),
    DESCENT("descent", COURSE, quantity(Unit.M, "10", 0, 200_000), climbing("ascent", "descent"), range(s -> s.climbing.descent(s.laps())),
            "Descending over all laps, from the cleaned elevation with its dead band"),
    CLIMBING_PER_KM("climbing per km", COURSE, quantity(Unit.M, "0.1", 0, 1000), climbing("ascent", "descent"), range(s -> s.climbing.ascent(s.perKm())),
            "Ascent over distance"),
    DESCENT_PER_KM("descent per km", COURSE, quantity(Unit.M, "0.1", 0, 1000), climbing("ascent", "descent"), range(s -> s.climbing.descent(s.perKm())),
            "Descent over distance"),
    HIGHEST_POINT("highest point", COURSE, quantity(Unit.M, "10", -450, 9000), climbing("start height"), exact(s -> s.climbing.highestPoint()),
            "Highest point above sea level"),
    CLIMBS("climbs", COURSE, quantity(Unit.ONE, "1", 0, 10_000), climbing("ascent", "descent"), exact(s -> s.climbing.climbs(s.laps())),
            "Climbs over all laps: pieces of line that gain at least 30 m at 3 % or more on average; a climb goes on over dips of 10 m, or 15 % of its gain"),
    LONGEST_CLIMB("longest climb", COURSE, quantity(Unit.KM, "0.1", 0, 5000), climbing("ascent", "descent"), exact(s -> s.climbing.longest(Climb::length)),
            "Length of the longest climb"),
    LONGEST_CLIMB_ASCENT("longest climb ascent", COURSE, quantity(Unit.M, "10", 0, 9000), climbing("ascent", "descent"),
            exact(s -> s.climbing.longest(Climb::rise)),
            "Ascent of the longest climb"),
    LAST_LONG_CLIMB("last long climb", COURSE, quantity(Unit.KM, "0.1", 0, 5000), climbing("ascent", "descent"), exact(s -> s.climbing.lastLong(Climb::length)),
            "Length of the last climb that gains at least half of what the biggest gains"),
    LAST_LONG_CLIMB_ASCENT("last long climb ascent", COURSE, quantity(Unit.M, "10", 0, 9000), climbing("ascent", "descent"),
            exact(s -> s.climbing.lastLong(Climb::rise)),
            "Ascent of the last long climb"),
    LAST_LONG_CLIMB_GRADIENT("last long climb gradient", COURSE, quantity(Unit.PERCENT, "0.1", 0, 100), climbing("ascent", "descent"),
            exact(s -> s.climbing.lastLong(Climb::gradient)),
            "Mean gradient of the last long climb"),
    STEEPEST_RAMP("steepest ramp", COURSE, quantity(Unit.PERCENT, "0.5", 0, 100), climbing("a track"), range(s -> s.steepness.ramp()),
            "Steepest gradient over 20 m, measured, or the steepest that the profile gives for a climbing stretch"),
    STEEPEST_100_M("steepest 100 m", COURSE, quantity(Unit.PERCENT, "0.5", 0, 100), climbing("ascent", "descent"), range(s -> s.steepness.gradient(100)),
            "Steepest gradient sustained over 100 m; without a measured line a likely figure from the means of stretches and what is given "
                    + "as steepest"),
    STEEPEST_500_M("steepest 500 m", COURSE, quantity(Unit.PERCENT, "0.5", 0, 100), climbing("ascent", "descent"), range(s -> s.steepness.gradient(500)),
            "Steepest gradient sustained over 500 m; without a measured line a likely figure from the means of stretches and what is given "
                    + "as steepest"),
    STEEPEST_1_KM("steepest 1 km", COURSE, quantity(Unit.PERCENT, "0.5", 0, 100), climbing("ascent", "descent"), range(s -> s.steepness.gradient(1000)),
            "Steepest gradient sustained over 1 km; without a measured line a likely figure from the means of stretches and what is given "
                    + "as steepest"),
    PAVED_SHARE("paved share", TERRAIN, quantity(Unit.PERCENT, "1", 0, 100), ground("surface"), range(s -> s.terrain.share(Property.PAVED)),
            "Share of the course by length on asphalt, concrete, paving, sett or cobbles, of what is known"),
    GRAVEL_SHARE("gravel share", TERRAIN, quantity(Unit.PERCENT, "1", 0, 100), ground("surface"), range(s -> s.terrain.share(Property.GRAVEL)),
            "Share of the course by length on compacted ground, fine gravel and gravel, of what is known"),
    TRAIL_SHARE("trail share", TERRAIN, quantity(Unit.PERCENT, "1", 0, 100), ground("surface"), range(s -> s.terrain.share(Property.TRAIL)),
            "Share of the course by length on earth, grass and rock, of what is known"),
    SOFT_SHARE("soft share", TERRAIN, quantity(Unit.PERCENT, "1", 0, 100), ground("surface"), range(s -> s.terrain.share(Property.SOFT)),
            "Share of the course by length on sand, mud and snow, of what is known"),
    LOOSE_SHARE("loose share", TERRAIN, quantity(Unit.PERCENT, "1", 0, 100), ground("surface"), range(s -> s.terrain.share(Property.LOOSE)),
            "Share of the course by length on sand, pebbles, gravel that is not bound (smoothness intermediate or better, or tracktype grade1, is), or "
                    + "mtb:scale 2 and more, of what is known"),
    KNOWN_GROUND("known ground", TERRAIN, quantity(Unit.PERCENT, "1", 0, 100), ground("smoothness", "mtb:scale"), range(s -> s.terrain.known()),
            "Share of the course by length whose surface, smoothness, tracktype or mtb:scale is known; what is inferred from a map counts, save at the low end"),
    ROUGHNESS("roughness", TERRAIN, MeasureScale.ROUGHNESS, ground("smoothness", "mtb:scale"), range(s -> s.terrain.roughness()),
            "Mean roughness by length of the ground that is known, 0 like new asphalt to 5 barely rideable: the mean of what smoothness and mtb:scale "
                    + "say, or where neither is given of what tracktype and surface suggest; roots and ruts add 0.2 each"),
    WORST_ROUGHNESS("worst roughness", TERRAIN, MeasureScale.ROUGHNESS, ground("smoothness", "mtb:scale"), range(s -> s.terrain.worstRoughness()),
            "Mean roughness of the worst tenth by length"),
    MTB_SCALE("mtb:scale", TERRAIN, quantity(Unit.ONE, "0.1", 0, 6), ground("mtb:scale"), range(s -> s.grades.mean()),
            "Typical mtb:scale: mean of mtb:scale by length off paved ground; 0 where ground is firm or even enough for ordinary wheels"),
    HARDEST_MTB_SCALE("hardest mtb:scale", TERRAIN, quantity(Unit.ONE, "0.1", 0, 6), ground("mtb:scale"),
            range(s -> s.grades.hardest()),
            "Hardest mtb:scale on the course, of the ground that is known"),
    SHARP_STONES("sharp stones", TERRAIN, quantity(Unit.PERCENT, "1", 0, 100), ground("sharp stones"), range(s -> s.terrain.sharpStones()),
            "Share of the course by length given as having stones that cut casings; unknown where no stretch says anything; a tenth of the ground that "
                    + "does not say counts at the high end"),
    MUD("mud", TERRAIN, quantity(Unit.PERCENT, "1", 0, 100), ground("mud when wet"), range(s -> s.terrain.mud(s.weather.goingWord())),
            "Share of the course by length that is mud on the day: mud always, what turns to mud in rain when it is wet, half of that when "
                    + "it is damp"),
    SAND("sand", TERRAIN, quantity(Unit.PERCENT, "1", 0, 100), ground("sand"), range(s -> s.terrain.sand()),
            "Share of the course by length in loose sand; a tenth of the ground that does not say counts at the high end"),
    WATER_CROSSINGS("water crossings", TERRAIN, quantity(Unit.ONE, "1", 0, 10_000), ground("water crossings"), exact(s -> s.terrain.fords(s.laps())),
            "Fords over all laps"),
    LEDGE_HEIGHT("ledge height", TERRAIN, quantity(Unit.M, "0.05", 0, 5), ground("ledge height"), atLeast(s -> s.terrain.highestLedge()),
            "Highest ledge that must be ridden"),
    TURNS_PER_KM("turns per km", TERRAIN, quantity(Unit.ONE, "0.5", 0, 100), ground("turns per km"), exact(s -> s.terrain.turnsPerKm()),
            "Turns that must be braked for, per km"),
    AERO_SHARE("aero share", RIDE, quantity(Unit.PERCENT, "1", 0, 100), ALWAYS, range(s -> s.extensions.share()),
            "Share of the distance where aero extensions can be used: smooth, firm, straight, from 25 to 50 km/h, between 3 % down and 3 % up, alone, "
                    + "and hands back on the bar for 30 % of it"),
    HOURS("hours", RIDE, quantity(Unit.MIN, "1", 0, 180_000), ALWAYS, range(s -> s.estimate.total()),
            "Expected riding and stopping time, by steady power balance at the power that can be held for it"),
    SLOW_HOURS("slow hours", RIDE, quantity(Unit.MIN, "1", 0, 180_000), ALWAYS, exact(s -> s.estimate.total().high()),
            "The slow estimate of the time"),
    DARK_HOURS("dark hours", RIDE, quantity(Unit.MIN, "5", 0, 180_000), event("date", "start", "zone"), range(s -> s.light.dark()),
            "How much of the slow estimate lies between civil dusk and civil dawn, when the sun is 6 degrees down or lower"),
    DARK_SHARE("dark share", RIDE, quantity(Unit.PERCENT, "1", 0, 100), event("date", "start", "zone"), range(s -> s.light.darkShare()),
            "The same as a share of the slow estimate"),
    SUNLESS_HOURS("sunless hours", RIDE, quantity(Unit.MIN, "5", 0, 180_000), event("date", "start", "zone"), range(s -> s.light.sunless()),
            "How much of the slow estimate lies between sunset and sunrise"),
    DAYLIGHT_TO_SPARE("daylight to spare", RIDE, quantity(Unit.MIN, "5", 0, 1440), event("date", "start", "zone"), range(s -> s.light.toSpare()),
            "Time left until sunset where the ride takes as long as the slow estimate, 0 where it ends after sunset or before sunrise"),
    RATIO_NEEDED_WHERE_IT_IS_STEEPEST("ratio needed where it is steepest", RIDE, quantity(Unit.RATIO, "0.001", 0, 20), climbing("ascent", "descent"),
            range(s -> s.gears.whereSteepest()),
            "The gear that lets the rider turn the lowest climbing cadence where it is steepest over 100 m, at hour power, as tired as the rider is by "
                    + "then; never lower than walking speed needs"),
    RATIO_NEEDED_ON_THE_LAST_CLIMB("ratio needed on the last climb", RIDE, quantity(Unit.RATIO, "0.001", 0, 20), climbing("ascent", "descent"),
            range(s -> s.gears.onTheLastClimb()),
            "The gear that lets the rider turn the lowest climbing cadence on the hardest kilometre of 3 % or more, on the tired power of that "
                    + "hour; between similar climbs the last counts; never lower than walking speed needs"),
    RATIO_USEFUL_AT_SPEED("ratio useful at speed", RIDE, quantity(Unit.RATIO, "0.001", 0, 20), ALWAYS, range(s -> s.gears.atSpeed()),
            "The gear the rider turns at the highest cadence at the fastest of: descents where hour power still gains a fifth over coasting; the flat in "
                    + "the group with a tailwind; the finishing sprint in a race for a time or the podium"),
    GEAR_RANGE_NEEDED("gear range needed", RIDE, quantity(Unit.RATIO, "0.01", 0, 200), climbing("ascent", "descent"), range(s -> s.gears.rangeNeeded()),
            "Ratio useful at speed over ratio needed where it is steepest"),
    BRAKING_POWER("braking power", RIDE, quantity(Unit.W, "5", 0, 10_000), climbing("ascent", "descent"),
            range(s -> new BrakeHeat(s.assumptions, s.estimate).hardest()),
            "Mean power that both brakes together turn into heat over the hardest quarter of an hour of the way, at the speed the ground lets a rider of good "
                    + "skill go: gravity on the start-line mass less rolling and air"),
    SUPPORT_GAP("support gap", RIDE, quantity(Unit.KM, "0.1", 0, 5000), event("support"), exact(s -> s.support.longest()),
            "Longest distance between places to fill bottles; start, finish and each passage of them count"),
    SUPPORT_GAP_HOURS("support gap hours", RIDE, quantity(Unit.MIN, "5", 0, 180_000), event("support"), range(s -> s.support.longestTime()),
            "Longest riding time between places to fill bottles, slow estimate"),
    WATER_OVER_THE_HOTTEST_GAP("water over the hottest gap", RIDE, quantity(Unit.L, "0.1", 0, 5000), event("support", "forecast"),
            range(s -> s.support.mostWater()),
            "Water to leave with for the gap that needs most: so much of the sweat over the slow estimate that the loss since the start stays within "
                    + "2 % of body mass, at the least what thirst calls for, 15 % in reserve, and no less than half a litre"),
    WATER_AT_THE_START("water at the start", RIDE, quantity(Unit.L, "0.1", 0, 5000), event("support", "forecast"), range(s -> s.support.waterToStartWith()),
            "Water to leave the start with, worked out the same way, as far as the first place to fill bottles"),
    GOING("going", DAY, words(Event.Forecast.GOINGS), event("forecast"), ticks(s -> s.weather.going()),
            "Whether the ground is dry, damp or wet, by the forecast; under rain by the hour from the driest to the wettest on the way; rules go by the "
                    + "wettest under at least a third of the distance"),
    START_TEMPERATURE("start temperature", DAY, quantity(Unit.C, "1", -110, 70), event("forecast"), range(s -> s.temperatures.start()),
            "Temperature at the start"),
    SUMMIT_TEMPERATURE("summit temperature", DAY, quantity(Unit.C, "1", -110, 70), event("forecast"), range(s -> s.temperatures.summit()),
            "Temperature at the highest point at the hour the rider is there"),
    COLDEST_TEMPERATURE("coldest temperature", DAY, quantity(Unit.C, "1", -110, 70), event("forecast"), range(s -> s.temperatures.coldest()),
            "Lowest temperature anywhere on the ride, at its place and hour"),
    HOTTEST_TEMPERATURE("hottest temperature", DAY, quantity(Unit.C, "1", -110, 70), event("forecast"), range(s -> s.temperatures.hottest()),
            "Highest temperature anywhere on the ride, at its place and hour"),
    NIGHT_TEMPERATURE("night temperature", DAY, quantity(Unit.C, "1", -110, 70), event("forecast"), range(s -> s.temperatures.night()),
            "Lowest temperature while it is dark"),
    WIND("wind", DAY, quantity(Unit.KM_PER_H, "1", 0, 180), event("forecast"), range(s -> s.weather.wind()),
            "Mean wind of the forecast at 10 m height; by the hour that of the windiest hour of the ride, and where gusts are given at least the wind in "
                    + "which the strongest of them is usual, a 1.66th of it"),
    GROUP_SHARE("group share", RIDER, quantity(Unit.PERCENT, "1", 0, 100), event("group share"), range(s -> s.assumptions.groupShare),
            "Share of the distance ridden in a group"),
    START_LINE_MASS("start-line mass", RIDER, quantity(Unit.KG, "0.5", 30, 500), rider("mass"), range(s -> s.startLineMass),
            "Rider, kit, bike and water at the start line; the water as worked out to the first place to fill bottles, else a bottle or two"),
    RIDER_MASS("rider mass", RIDER, quantity(Unit.KG, "0.5", 30, 200), rider("mass"), range(s -> s.assumptions.riderMass),
            "Rider without kit"),
    HOUR_POWER("hour power", RIDER, quantity(Unit.W, "5", 20, 1000), rider("power"), range(s -> s.assumptions.hourPower),
            "Best mean power the rider holds for an hour"),
    POWER_PER_KG("power per kg", RIDER, quantity(Unit.W_PER_KG, "0.05", 0, 15), rider("power"), range(s -> s.assumptions.powerPerKg()),
            "Hour power over rider mass"),
    CLIMBING_CADENCE("climbing cadence", RIDER, quantity(Unit.RPM, "1", 30, 110), rider("climbing cadence"), range(s -> s.assumptions.climbingCadence),
            "Lowest cadence the rider will turn for long on a climb"),
    HIGHEST_CADENCE("highest cadence", RIDER, quantity(Unit.RPM, "1", 60, 160), rider("highest cadence"), range(s -> s.assumptions.highestCadence),
            "Highest cadence the rider will turn for long on the flat"),
    SKILL("skill", RIDER, words(Rider.SKILLS), rider("skill"), ticks(s -> s.assumptions.skills()),
            "Skill on rough ground"),
    AIM("aim", RIDER, words(Event.AIMS), event("aim"), word(s -> s.assumptions.aim),
            "What the rider wants: to finish, a time, the podium"),
    ROLE("role", RIDER, options(List.of("training", "race")), event("role"), word(s -> s.assumptions.role()),
            "What the bike is set up for"),
    RACES_A_YEAR("races a year", RIDER, quantity(Unit.ONE, "1", 0, 200), rider("races a year"), exact(s -> s.rider().racesAYear()),
            "Races a year on this bike"),
    PLUG_STOP("plug stop", RIDER, quantity(Unit.S, "10", 0, 14_400), rider("plug stop"), range(s -> s.assumptions.plugStop),
            "Time lost to a puncture that a plug repairs, until the rider is back at speed"),
    TUBE_STOP("tube stop", RIDER, quantity(Unit.S, "10", 0, 14_400), rider("tube stop"), range(s -> s.assumptions.tubeStop),
            "Time lost to a puncture that needs a tube, until the rider is back at speed"),
    LOST_GROUP("lost group", RIDER, quantity(Unit.S, "10", 0, 14_400), rider("lost group"), exact(s -> s.rider().stops().lostGroup()),
            "Time lost by riding on alone after a stop, as the rider puts it"),
    USED_BAR_WIDTH("used bar width", RIDER, quantity(Unit.MM, "1", 300, 900), rider("bar width"), exact(s -> s.rider().barWidth()),
            "Width of the bar the rider is used to"),
    BAR_WIDTH_GIVEN("bar width given", RIDER, yesNo(), rider("bar width"), yesNo(s -> s.rider().barWidth() != null),
            "Whether the rider's file gives a bar width, so that nothing else has to stand in for it"),
    RIDER_HEIGHT("rider height", RIDER, quantity(Unit.M, "0.01", 1.2, 2.3), rider("height"), exact(s -> s.rider().height()),
            "Height of the rider, standing without shoes"),
    SHOULDER_WIDTH("shoulder width", RIDER, quantity(Unit.MM, "1", 250, 550), rider("shoulder width"), exact(s -> s.rider().body().shoulderWidth()),
            "Across the bony points at the tips of the rider's shoulders"),
    DROP_BAR_WIDTH_BY_THE_SHOULDERS("drop bar width by the shoulders", RIDER, quantity(Unit.MM, "1", 270, 580), rider("shoulder width"),
            exact(SurveyInput::dropBarWidth),
            "Width of a drop bar, outside to outside, that is as wide as the shoulders from middle to middle of its ends"),
    HAND_STRENGTH("hand strength", RIDER, words(Rider.HAND_STRENGTHS), rider("hand strength"), word(s -> s.rider().body().handStrength()),
            "Strength of the hands, as the rider puts it"),
    PREFERENCE("preference", RIDER, words(Rider.PREFERENCES), rider("preference"), word(s -> s.rider().preference()),
            "What the rider favours where comfort and speed pull apart"),
    RACING_AGE("racing age", RIDER, quantity(Unit.ONE, "1", 0, 200), rider("year of birth"), exact(SurveyInput::racingAge),
            "The age the rider reaches in the year of the event, by which age groups go; unknown without the event's date"),
    INJURED_HANDS("injured hands", RIDER, yesNo(), rider("injuries"), yesNo(s -> s.rider().body().injured("hands")),
            "Whether the rider's file says that hands or wrists are injured or sore"),
    INJURED_NECK("injured neck", RIDER, yesNo(), rider("injuries"), yesNo(s -> s.rider().body().injured("neck")),
            "Whether the rider's file says that the neck is injured or sore"),
    INJURED_SHOULDERS("injured shoulders", RIDER, yesNo(), rider("injuries"), yesNo(s -> s.rider().body().injured("shoulders")),
            "Whether the rider's file says that shoulders are injured or sore"),
    INJURED_BACK("injured back", RIDER, yesNo(), rider("injuries"), yesNo(s -> s.rider().body().injured("back")),
            "Whether the rider's file says that the back is injured or sore"),
    INJURED_KNEES("injured knees", RIDER, yesNo(), rider("injuries"), yesNo(s -> s.rider().body().injured("knees")),
            "Whether the rider's file says that knees are injured or sore"),
    INJURED_SEAT("injured seat", RIDER, yesNo(), rider("injuries"), yesNo(s -> s.rider().body().injured("seat")),
            "Whether the rider's file says that the skin or bones the rider sits on are injured or sore"),
    BIKE_AT_HAND("bike at hand", EQUIPMENT, options(Topics.BIKE.options()), bike("kind"), word(s -> s.bike().kind()),
            "The kind of bike the rider has"),
    RIM_INNER_WIDTH("rim inner width", BIKE, quantity(Unit.MM, "1", 12, 60), bike("rim inner width"), exact(s -> s.bike().rimInnerWidth()),
            "Inner width of the rims at hand"),
    HOOKLESS("hookless", BIKE, yesNo(), bike("hookless"), yesNo(s -> s.bike().hookless()),
            "Whether the rims at hand are hookless"),
    MARKED_TYRE_PRESSURE("marked tyre pressure", BIKE, quantity(Unit.BAR, "0.05", 0.5, 15), bike("marked tyre pressure"),
            atMost(s -> s.bike().markedTyrePressure()),
            "Highest pressure marked on the tyres at hand"),
    MARKED_RIM_PRESSURE("marked rim pressure", BIKE, quantity(Unit.BAR, "0.05", 0.5, 15), bike("marked rim pressure"),
            atMost(s -> s.bike().markedRimPressure()),
            "Highest pressure marked on the rims at hand"),
    LOWER_MARKED_PRESSURE("lower marked pressure", BIKE, quantity(Unit.BAR, "0.05", 0.5, 15), bike("marked tyre pressure", "marked rim pressure"),
            atMost(s -> s.lowerMarkedPressure()),
            "The lower of the pressures marked on tyre and rim"),
    LEAST_TYRE_WIDTH_ON_THE_RIM("least tyre width on the rim", BIKE, quantity(Unit.MM, "1", 17, 65), bike("rim inner width"), atLeast(s -> s.leastTyreWidth()),
            "Rim inner width plus the least that a tyre is wider than its rim"),
    TYRE_CLEARANCE("tyre clearance", BIKE, quantity(Unit.MM, "1", 18, 130), bike("tyre clearance"), atMost(s -> s.bike().tyreClearance()),
            "Widest tyre that frame and fork at hand take"),
    TUBELESS_READY("tubeless ready", BIKE, yesNo(), bike("tubeless"), yesNo(s -> s.bike().tubeless()),
            "Whether rims and tyres at hand are made to run tubeless"),
    BIKE_LEDGE_LIMIT("bike ledge limit", BIKE, quantity(Unit.M, "0.05", 0, 5), bike("ledge limit"), atMost(s -> s.bike().ledgeLimit()),
            "Highest ledge of the marked intended-use category"),
    LEDGE_ABOVE_THE_MARK("ledge above the mark", EQUIPMENT, quantity(Unit.M, "0.05", 0, 5), bike("ledge limit"),
            ticks(s -> s.above(LEDGE_HEIGHT, BIKE_LEDGE_LIMIT)),
            "Ledge height less bike ledge limit, 0 where it is not above"),
    BIKE_MASS_LIMIT("bike mass limit", BIKE, quantity(Unit.KG, "0.5", 60, 300), bike("mass limit"), atMost(s -> s.bike().massLimit()),
            "Highest marked mass of rider, kit and bike"),
    MASS_ABOVE_THE_MARK("mass above the mark", EQUIPMENT, quantity(Unit.KG, "0.5", 0, 500), bike("mass limit"),
            ticks(s -> s.above(START_LINE_MASS, BIKE_MASS_LIMIT)),
            "Start-line mass less bike mass limit, 0 where it is not above"),
    MOST_FORK_TRAVEL("most fork travel", BIKE, quantity(Unit.MM, "1", 20, 250), bike("most fork travel"), atMost(s -> s.bike().forkTravel()),
            "Longest fork travel the frame permits"),
    MOST_ROTOR("most rotor", BIKE, quantity(Unit.MM, "1", 120, 250), bike("most rotor"), atMost(s -> s.bike().mostRotor()),
            "Largest rotor that frame and fork permit"),
    LIGHTS_AT_HAND("lights at hand", EQUIPMENT, quantity(Unit.MIN, "5", 0, 6000), bike("lights"), atMost(s -> s.bike().lights()),
            "Run time of the lights at hand at the mode used"),
    POWER_METER_AT_HAND("power meter at hand", BIKE, yesNo(), bike("power meter"), yesNo(s -> s.bike().powerMeter()),
            "Whether the bike at hand has a power meter"),
    AERO_EXTENSIONS_ALLOWED("aero extensions allowed", EVENT, yesNo(), event("rules"), yesNo(s -> s.rules().aeroExtensions()),
            "Whether the event allows aero extensions"),
    TYRE_WIDTH_ALLOWED("tyre width allowed", EVENT, quantity(Unit.MM, "1", 18, 130), event("rules"), atMost(s -> s.rules().tyreWidthMost()),
            "Widest tyre the event allows"),
    GEARS_LIMITED("gears limited", EVENT, yesNo(), rider("year of birth"), yesNo(SurveyInput::gearsLimited),
            "Whether the event limits how high this rider's gears may be; not where its rules name no limit, unknown where it holds to an age that is not known"),
    DEVELOPMENT_ALLOWED("development allowed", EVENT, quantity(Unit.M, "0.01", 2.5, 12), event("rules"), atMost(SurveyInput::developmentAllowed),
            "How far a turn of the cranks in the highest gear may take this rider's bike, by the event's rules and the rider's age"),
    HARDEST_GEAR_ALLOWED("hardest gear allowed", EVENT, quantity(Unit.RATIO, "0.001", 0, 20), event("rules"), atMost(SurveyInput::hardestGearAllowed),
            "The gear of the longest development allowed, on wheels of the usual size of the kind of bike"),
    LIGHTS_REQUIRED("lights required", EVENT, yesNo(), event("rules"), yesNo(s -> s.rules().lights()),
            "Whether the event requires lights"),
    MUDGUARDS_REQUIRED("mudguards required", EVENT, yesNo(), event("rules"), yesNo(s -> s.rules().mudguards()),
            "Whether the event requires mudguards"),
    OUTSIDE_HELP("outside help", EVENT, yesNo(), event("rules"), yesNo(s -> s.rules().outsideHelp()),
            "Whether the event allows outside help"),
    BAG_ON_THE_COURSE("bag on the course", EVENT, yesNo(), event("support"), yesNo(s -> s.bagOnTheCourse()),
            "Whether a bag of your own waits on the course"),
    TIME_LIMIT("time limit", EVENT, quantity(Unit.MIN, "1", 10, 14_400), event("time limit"), atMost(s -> s.event().timeLimit()),
            "Time allowed for the whole ride"),
    PRESSURE_CEILING("pressure ceiling", BIKE, quantity(Unit.BAR, "0.05", 0.5, 15), bike("hookless", "marked tyre pressure", "marked rim pressure"),
            atMost(s -> s.pressureCeiling()),
            "The most that tyres may be inflated to: the lower of what is marked on tyre and rim, and the hookless limit on a rim without hooks"),
    NARROWEST_FRONT_TYRE("narrowest front tyre", quantity(Unit.MM, "1", 0, 300), bike("hookless", "marked tyre pressure", "marked rim pressure"),
            afterLayer(1, List.of(Topics.BIKE), List.of(START_LINE_MASS, BIKE_AT_HAND, PAVED_SHARE, PRESSURE_CEILING), s -> s.narrowestTyre(End.FRONT)),
            "Narrowest front tyre whose reference pressure, in a light casing, stays under the pressure ceiling with the settled kind of bike"),
    NARROWEST_REAR_TYRE("narrowest rear tyre", quantity(Unit.MM, "1", 0, 300), bike("hookless", "marked tyre pressure", "marked rim pressure"),
            afterLayer(1, List.of(Topics.BIKE), List.of(START_LINE_MASS, BIKE_AT_HAND, PAVED_SHARE, PRESSURE_CEILING), s -> s.narrowestTyre(End.REAR)),
            "Narrowest rear tyre whose reference pressure, in a light casing, stays under the pressure ceiling with the settled kind of bike"),
    SHORTEST_REAR_TRAVEL("shortest rear travel", quantity(Unit.MM, "1", 0, 300), ALWAYS, afterLayer(2, List.of(Topics.FORK_TRAVEL), List.of(),
                    s -> s.rearTravel(-1)),
            "Settled fork travel less the most that front and rear travel may differ by"),
    LONGEST_REAR_TRAVEL("longest rear travel", quantity(Unit.MM, "1", 0, 300), ALWAYS, afterLayer(2, List.of(Topics.FORK_TRAVEL), List.of(),
                    s -> s.rearTravel(1)),
            "Settled fork travel plus the most that front and rear travel may differ by"),
    FRONT_REFERENCE_PRESSURE("front reference pressure", quantity(Unit.BAR, "0.05", 0, 30), ALWAYS,
            afterLayer(5, List.of(Topics.BIKE, Topics.FRONT_TYRE_WIDTH, Topics.FRONT_TYRE_CASING, Topics.FRONT_INSERT),
                    List.of(START_LINE_MASS, BIKE_AT_HAND, PAVED_SHARE), s -> s.referencePressure(End.FRONT)),
            "Starting pressure for the front tyre from its wheel load and settled width, casing and insert: the 15 % drop relation on hard ground up to "
                    + "37 mm, else a practice range"),
    REAR_REFERENCE_PRESSURE("rear reference pressure", quantity(Unit.BAR, "0.05", 0, 30), ALWAYS,
            afterLayer(5, List.of(Topics.BIKE, Topics.REAR_TYRE_WIDTH, Topics.REAR_TYRE_CASING, Topics.REAR_INSERT),
                    List.of(START_LINE_MASS, BIKE_AT_HAND, PAVED_SHARE), s -> s.referencePressure(End.REAR)),
            "Starting pressure for the rear tyre from its wheel load and settled width, casing and insert: the 15 % drop relation on hard ground up to "
                    + "37 mm, else a practice range"),
    FRONT_PRESSURE_FLOOR("front pressure floor", quantity(Unit.BAR, "0.05", 0, 30), ALWAYS,
            afterLayer(5, List.of(Topics.BIKE, Topics.FRONT_TYRE_WIDTH, Topics.FRONT_TYRE_CASING, Topics.FRONT_INSERT),
                    List.of(START_LINE_MASS, BIKE_AT_HAND, PAVED_SHARE, WORST_ROUGHNESS), s -> s.pressureFloor(End.FRONT)),
            "Lowest pressure of the front tyre that still keeps the rim off the ground on this course, a practice figure from wheel load, width, casing, "
                    + "insert and roughness"),
    REAR_PRESSURE_FLOOR("rear pressure floor", quantity(Unit.BAR, "0.05", 0, 30), ALWAYS,
            afterLayer(5, List.of(Topics.BIKE, Topics.REAR_TYRE_WIDTH, Topics.REAR_TYRE_CASING, Topics.REAR_INSERT),
                    List.of(START_LINE_MASS, BIKE_AT_HAND, PAVED_SHARE, WORST_ROUGHNESS), s -> s.pressureFloor(End.REAR)),
            "Lowest pressure of the rear tyre that still keeps the rim off the ground on this course, a practice figure from wheel load, width, casing, "
                    + "insert and roughness");

    /** What may be injured or sore. */
    public static final List<Measure> INJURIES =
            List.of(INJURED_HANDS, INJURED_NECK, INJURED_SHOULDERS, INJURED_BACK, INJURED_KNEES, INJURED_SEAT);

    private static final Map<String, Measure> BY_NAME = new LinkedHashMap<>();

    static {
        for (Measure measure : values()) {
            if (BY_NAME.put(measure.written, measure) != null) {
                throw new IllegalStateException("two measures " + measure.written);
            }
        }
    }

    private final String written;
    private final MeasureGroup group;
    private final MeasureScale scale;
    private final InputKeys input;
    private final MeasureCalculator<SurveyInput> calculator;
    private final DerivedCalculator derivation;
    private final String about;
    private final int layer;

    Measure(String written, MeasureGroup group, MeasureScale scale, InputKeys input, MeasureCalculator<SurveyInput> calculator, String about) {
        this(written, group, scale, input, Objects.requireNonNull(calculator), null, about);
    }

    Measure(String written, MeasureScale scale, InputKeys input, DerivedCalculator derivation, String about) {
        this(written, MeasureGroup.DECISIONS, scale, input, null, Objects.requireNonNull(derivation), about);
    }

    Measure(String written, MeasureGroup group, MeasureScale scale, InputKeys input, MeasureCalculator<SurveyInput> calculator,
            DerivedCalculator derivation, String about) {
        this.written = written;
        this.group = group;
        this.scale = scale;
        this.input = input;
        this.calculator = calculator;
        this.derivation = derivation;
        this.about = about;
        layer = derived() ? derivation.layer() : ofTheBike() ? Topics.BIKE.layer() : 0;
    }

    /** The name sheets use. */
    public String written() {
        return written;
    }

    public MeasureGroup group() {
        return group;
    }

    public MeasureScale scale() {
        return scale;
    }

    /** What a user writes to make it known. */
    public InputKeys input() {
        return input;
    }

    /** The layer after which it is known; 0 where it needs no decision. */
    public int layer() {
        return layer;
    }

    /** Whether it is worked out from decisions, so that nobody can state it. */
    public boolean derived() {
        return derivation != null;
    }

    /** Whether it belongs to the bike at hand, so that it holds only where a bike of that kind is called. */
    public boolean ofTheBike() {
        return group == MeasureGroup.BIKE;
    }

    /** The definition, in words. */
    public String about() {
        return about;
    }

    /** The value of a measure that needs no decision; null where it cannot be known, or follows from decisions. */
    MeasureValue calculate(SurveyInput survey) {
        return derived() ? null : calculator.calculate(survey, scale);
    }

    /** How it follows from decisions; null where it does not. */
    DerivedCalculator derivation() {
        return derivation;
    }

    /** The measure sheets write so, or null. */
    public static Measure find(String written) {
        return BY_NAME.get(written);
    }

    public static List<String> names() {
        return new ArrayList<>(BY_NAME.keySet());
    }

    @Override
    public String toString() {
        return written;
    }
}
