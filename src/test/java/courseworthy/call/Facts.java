package courseworthy.call;

import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** What a course, a rider and a day might ask for, drawn so that it hangs together; to be varied one thing at a time. In ticks. */
final class Facts {

    private final Map<Measure, Long> ticks = new EnumMap<>(Measure.class);

    private Facts() {
    }

    /** A course and a day drawn at random. */
    static Facts of(long seed) {
        Facts facts = new Facts();
        Random random = new Random(seed);
        facts.ground(random);
        facts.hills(random);
        facts.time(random);
        facts.weather(random);
        facts.rider(random);
        facts.bike(random);
        return facts;
    }

    /** These facts with some changed. */
    Facts with(Object... measuresAndTicks) {
        Facts other = new Facts();
        other.ticks.putAll(ticks);
        for (int i = 0; i < measuresAndTicks.length; i += 2) {
            other.set((Measure) measuresAndTicks[i], ((Number) measuresAndTicks[i + 1]).longValue());
        }
        return other;
    }

    long get(Measure measure) {
        return ticks.get(measure);
    }

    Demands demands() {
        Map<Measure, MeasureValue> values = new EnumMap<>(Measure.class);
        ticks.forEach((measure, tick) -> values.put(measure, MeasureValue.exact(tick)));
        return new Demands(values, List.of(), List.of());
    }

    private void set(Measure measure, long tick) {
        ticks.put(measure, tick);
    }

    private static int between(Random random, int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    private void ground(Random random) {
        int paved = between(random, 0, 100);
        int gravel = between(random, 0, 100 - paved);
        int soft = between(random, 0, (100 - paved - gravel) / 3);
        set(Measure.PAVED_SHARE, paved);
        set(Measure.GRAVEL_SHARE, gravel);
        set(Measure.SOFT_SHARE, soft);
        set(Measure.TRAIL_SHARE, 100 - paved - gravel - soft);
        set(Measure.LOOSE_SHARE, between(random, 0, gravel + soft));
        set(Measure.SAND, between(random, 0, soft));
        set(Measure.MUD, random.nextBoolean() ? 0 : between(random, 0, soft));
        set(Measure.KNOWN_GROUND, 100);
        int roughness = between(random, 0, 45);
        set(Measure.ROUGHNESS, roughness);
        set(Measure.WORST_ROUGHNESS, Math.min(50, roughness + between(random, 0, 15)));
        set(Measure.MTB_SCALE, roughness < 20 ? 0 : between(random, 0, 25));
        set(Measure.HARDEST_MTB_SCALE, get(Measure.MTB_SCALE) + between(random, 0, 15));
        set(Measure.SHARP_STONES, random.nextBoolean() ? 0 : between(random, 0, 40));
        set(Measure.WATER_CROSSINGS, between(random, 0, 3));
        set(Measure.TURNS_PER_KM, between(random, 0, 20));
        set(Measure.AERO_SHARE, between(random, 0, 50));
    }

    private void hills(Random random) {
        int km = between(random, 15, 250);
        int perKm = between(random, 20, 350);
        set(Measure.DISTANCE, km * 10L);
        set(Measure.LAPS, km < 45 ? between(random, 1, 6) : 1);
        set(Measure.CLIMBING_PER_KM, perKm);
        set(Measure.DESCENT_PER_KM, perKm);
        set(Measure.ASCENT, km * perKm / 100L);
        set(Measure.DESCENT, km * perKm / 100L);
        set(Measure.HIGHEST_POINT, between(random, 10, 280));
        set(Measure.LONGEST_CLIMB, between(random, 5, 200));
        set(Measure.LONGEST_CLIMB_ASCENT, between(random, 3, 120));
        set(Measure.STEEPEST_100_M, between(random, 10, 40));
        int steepest = between(random, 500, 1500);
        set(Measure.RATIO_NEEDED_WHERE_IT_IS_STEEPEST, steepest);
        set(Measure.RATIO_NEEDED_ON_THE_LAST_CLIMB, steepest + between(random, -100, 300));
        int fastest = between(random, 2500, 5000);
        set(Measure.RATIO_USEFUL_AT_SPEED, fastest);
        set(Measure.GEAR_RANGE_NEEDED, fastest * 100L / steepest);
    }

    private void time(Random random) {
        long minutes = get(Measure.DISTANCE) * 6 / between(random, 12, 33);
        set(Measure.HOURS, minutes);
        set(Measure.SLOW_HOURS, minutes * 115 / 100);
        set(Measure.SUPPORT_GAP, get(Measure.DISTANCE) / between(random, 1, 6));
        set(Measure.SUPPORT_GAP_HOURS, minutes * get(Measure.SUPPORT_GAP) / get(Measure.DISTANCE) / 5);
        set(Measure.WATER_OVER_THE_HOTTEST_GAP, Math.max(3, get(Measure.SUPPORT_GAP_HOURS) / 2));
        set(Measure.WATER_AT_THE_START, Math.max(3, get(Measure.WATER_OVER_THE_HOTTEST_GAP) / between(random, 1, 3)));
        set(Measure.DARK_HOURS, random.nextInt(4) > 0 ? 0 : between(random, 1, 60));
        set(Measure.SUNLESS_HOURS, get(Measure.DARK_HOURS) > 0 ? get(Measure.DARK_HOURS) + between(random, 6, 12) : random.nextInt(8));
        set(Measure.DARK_SHARE, Math.min(100, get(Measure.DARK_HOURS) * 500 / get(Measure.SLOW_HOURS)));
        set(Measure.DAYLIGHT_TO_SPARE, get(Measure.SUNLESS_HOURS) > 0 ? 0 : between(random, 1, 120));
    }

    private void weather(Random random) {
        int coldest = between(random, -5, 25);
        set(Measure.COLDEST_TEMPERATURE, coldest);
        set(Measure.START_TEMPERATURE, coldest + between(random, 0, 8));
        set(Measure.HOTTEST_TEMPERATURE, coldest + between(random, 8, 18));
        set(Measure.GOING, get(Measure.MUD) > 0 ? between(random, 1, 2) : between(random, 0, 2));
        set(Measure.WIND, between(random, 0, 40));
    }

    private void rider(Random random) {
        int kilograms = between(random, 48, 100);
        int watts = kilograms * between(random, 20, 50) / 10;
        set(Measure.RIDER_MASS, kilograms * 2L);
        set(Measure.START_LINE_MASS, kilograms * 2L + between(random, 20, 36));
        set(Measure.HOUR_POWER, watts / 5);
        set(Measure.POWER_PER_KG, watts * 20L / kilograms);
        set(Measure.SKILL, between(random, 0, 3));
        set(Measure.AIM, between(random, 0, 2));
        set(Measure.ROLE, between(random, 0, 1));
        set(Measure.RACES_A_YEAR, between(random, 0, 20));
        set(Measure.GROUP_SHARE, between(random, 0, 60));
        set(Measure.OUTSIDE_HELP, between(random, 0, 1));
    }

    private void bike(Random random) {
        if (random.nextInt(4) == 0) {
            set(Measure.BIKE_AT_HAND, between(random, 0, 4));
        }
        if (random.nextInt(4) == 0) {
            set(Measure.HOOKLESS, between(random, 0, 1));
        }
        if (random.nextInt(4) == 0) {
            set(Measure.TUBELESS_READY, between(random, 0, 1));
        }
    }
}
