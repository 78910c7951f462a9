package courseworthy.engine;

import java.util.List;
import java.util.SplittableRandom;

/**
 * Sheets made up so that looking them over is as hard as can be: where nearly every row has to be held against every other, or where
 * each comparison is of many alternatives. No coach writes such; a program might.
 */
public enum HardSheet {

    /** Every row on one topic, asking of one to three measures. */
    ONE_TOPIC {
        @Override
        String when(int number, SplittableRandom chance) {
            return hoursOver(chance) + (chance.nextBoolean() ? ", " + distanceUnder(chance) : "") + (chance.nextBoolean() ? ", " + ascentOver(chance) : "");
        }
    },
    /** Every row word for word the first. */
    ALIKE {
        @Override
        String when(int number, SplittableRandom chance) {
            return "hours: over 3:00 h, distance: over 40 km";
        }

        @Override
        String say(SplittableRandom chance) {
            return SAME;
        }
    },
    /** Every two overlap in part, and ask for another value with equal force. */
    OVERLAPPING {
        @Override
        String when(int number, SplittableRandom chance) {
            return "hours: between " + (1 + chance.nextInt(900)) + " min and " + (901 + chance.nextInt(900)) + " min, distance: between "
                    + (1 + chance.nextInt(99)) + " km and " + (101 + chance.nextInt(99)) + " km";
        }

        @Override
        String say(SplittableRandom chance) {
            return "front tyre width: prefer " + (30 + chance.nextInt(30)) + " mm";
        }
    },
    /** Every row has an answer of its own, so that no two sayings are compared twice. */
    ALL_DIFFERENT {
        @Override
        String when(int number, SplittableRandom chance) {
            return hoursOver(chance) + ", " + distanceUnder(chance);
        }

        @Override
        String say(SplittableRandom chance) {
            return "easiest gear: prefer 0." + (500 + chance.nextInt(499)) + ", front tyre width: prefer " + (30 + chance.nextInt(30))
                    + " mm, fork travel: at least " + (80 + chance.nextInt(80)) + " mm";
        }
    },
    /** Every row holds in one of several cases, some of which overlap with those of every other row. */
    ALTERNATIVES {
        @Override
        String when(int number, SplittableRandom chance) {
            return "any of: [{" + hoursOver(chance) + ", " + distanceUnder(chance) + "}, {" + hoursOver(chance) + ", " + ascentOver(chance) + "}, {"
                    + distanceUnder(chance) + ", " + ascentOver(chance) + "}, {" + distanceUnder(chance) + ", descent: 10 m}]";
        }
    },
    /** The same, and all say the same: what one row lacks another may have. */
    ALTERNATIVES_ALIKE {
        @Override
        String when(int number, SplittableRandom chance) {
            return ALTERNATIVES.when(number, chance);
        }

        @Override
        String say(SplittableRandom chance) {
            return SAME;
        }
    },
    /** Every row takes away what is taken away of what is taken away. */
    NESTED {
        @Override
        String when(int number, SplittableRandom chance) {
            return "none of: [{none of: [{" + hoursOver(chance) + ", none of: [{" + distanceUnder(chance) + ", " + ascentOver(chance)
                    + "}, {skill: expert, " + ascentOver(chance) + "}]}]}, {distance: over " + (420 + chance.nextInt(400)) + " km, "
                    + hoursOver(chance) + "}]";
        }
    },
    /** Every row asks as much as fits into the largest file. */
    MANY_CONDITIONS {
        @Override
        String when(int number, SplittableRandom chance) {
            StringBuilder out = new StringBuilder(hoursOver(chance));
            for (String measure : List.of("laps", "climbs", "races a year")) {
                out.append(", ").append(measure).append(": over ").append(1 + chance.nextInt(8));
            }
            for (String measure : List.of("mud", "sand", "paved share", "trail share", "soft share", "loose share", "aero share", "group share")) {
                out.append(", ").append(measure).append(chance.nextBoolean() ? ": over " : ": under ").append(10 + chance.nextInt(80)).append(" %");
            }
            return out.append(", ").append(ascentOver(chance)).append(", ").append(distanceUnder(chance)).toString();
        }
    },
    /** Every row lies next to another that says the same. */
    JOINABLE {
        @Override
        String when(int number, SplittableRandom chance) {
            return "hours: between " + (2 * (number % 100) + 1) + " min and " + (2 * (number % 100) + 2) + " min, distance: between "
                    + (number / 100) + ".1 km and " + (number / 100 + 1) + " km";
        }

        @Override
        String say(SplittableRandom chance) {
            return SAME;
        }
    },
    /** Every row speaks where the first does, said another way. */
    REWORDED {
        @Override
        String when(int number, SplittableRandom chance) {
            int at = 120 + chance.nextInt(500);
            return "any of: [{hours: over 60 min, none of: [{hours: over " + at + " min}]}, {hours: over " + (at - chance.nextInt(60)) + " min}]";
        }

        @Override
        String say(SplittableRandom chance) {
            return SAME;
        }
    },
    /** Every row speaks only where many others do, which say the same. */
    WITHIN {
        @Override
        String when(int number, SplittableRandom chance) {
            return hoursOver(chance) + ", distance: over " + (number / 10) + "." + number % 10 + " km";
        }

        @Override
        String say(SplittableRandom chance) {
            return SAME;
        }
    },
    /** Every row is for riders and days of its own. */
    OCCASIONS {
        @Override
        String when(int number, SplittableRandom chance) {
            return "rider: [Rider " + chance.nextInt(90) + ", Someone " + chance.nextInt(90) + "], date: between 2027-0" + (1 + chance.nextInt(4))
                    + "-1" + chance.nextInt(9) + " and 2027-0" + (5 + chance.nextInt(4)) + "-1" + chance.nextInt(9) + ", rider tag: team "
                    + chance.nextInt(90);
        }
    };

    private static final String SAME = "plugs: prefer 3";

    /** What a row asks, on one line. */
    abstract String when(int number, SplittableRandom chance);

    String say(SplittableRandom chance) {
        return "front tyre width: " + List.of("prefer ", "prefer ", "at least ", "at most ").get(chance.nextInt(4)) + (30 + chance.nextInt(30)) + " mm";
    }

    /** The text of a sheet with so many rows. */
    public String of(int rows, long seed) {
        SplittableRandom chance = new SplittableRandom(seed);
        StringBuilder out = new StringBuilder("sheet: Hard\nauthor: a coach\nadvice:\n");
        for (int i = 0; i < rows; i++) {
            out.append("- id: row-").append(i).append("\n  when: {").append(when(i, chance)).append("}\n  say: {").append(say(chance))
                    .append("}\n  because: It is so.\n");
        }
        return out.toString();
    }

    private static String hoursOver(SplittableRandom chance) {
        return "hours: over " + (1 + chance.nextInt(900)) + " min";
    }

    private static String distanceUnder(SplittableRandom chance) {
        return "distance: under " + (20 + chance.nextInt(400)) + " km";
    }

    private static String ascentOver(SplittableRandom chance) {
        return "ascent: over " + 10 * (1 + chance.nextInt(500)) + " m";
    }
}
