package courseworthy.sheet;

import courseworthy.demand.Occasion;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;

/** What a condition asks of whose day it is, and which. */
public sealed interface OccasionCondition {

    /** As sheets write it: {@code rider}, {@code rider tag} or {@code date}. */
    String key();

    Truth on(Occasion occasion);

    /** What was found, in words; {@code unknown} where nothing is known. */
    String found(Occasion occasion);

    /** The same text for equal tests, and for no others. */
    String canonical();

    /** Tests with one thing wrong, each with a case that would notice. */
    List<Wrong> wrong();

    /**
     * A test with one thing wrong.
     *
     * @param what    what is wrong
     * @param lacking the case that would notice
     */
    record Wrong(String what, String lacking, OccasionCondition test) {
    }

    /** The rider has one of some names; capital letters count like small ones. */
    record Riders(List<String> names) implements OccasionCondition {

        public static final String KEY = "rider";

        public Riders {
            names = List.copyOf(names);
        }

        @Override
        public String key() {
            return KEY;
        }

        @Override
        public Truth on(Occasion occasion) {
            boolean known = occasion.rider() != null && !occasion.rider().isEmpty();
            return known ? Truth.of(among(names, occasion.rider())) : Truth.UNKNOWN;
        }

        @Override
        public String found(Occasion occasion) {
            return on(occasion) == Truth.UNKNOWN ? ConditionTrace.UNKNOWN : occasion.rider();
        }

        @Override
        public String canonical() {
            return KEY + OccasionCondition.canonical(names);
        }

        @Override
        public List<Wrong> wrong() {
            List<Wrong> out = new ArrayList<>();
            for (String name : names) {
                out.add(new Wrong("rider " + name + " taken away", "a firing case with rider " + name, new Riders(without(names, name))));
            }
            return out;
        }
    }

    /** The rider's file has one of some tags; a rider without tags has none. */
    record Tags(List<String> tags) implements OccasionCondition {

        public static final String KEY = "rider tag";

        public Tags {
            tags = List.copyOf(tags);
        }

        @Override
        public String key() {
            return KEY;
        }

        @Override
        public Truth on(Occasion occasion) {
            if (occasion.rider() == null) {
                return Truth.UNKNOWN;
            }
            for (String tag : occasion.tags()) {
                if (among(tags, tag)) {
                    return Truth.TRUE;
                }
            }
            return Truth.FALSE;
        }

        @Override
        public String found(Occasion occasion) {
            if (occasion.rider() == null) {
                return ConditionTrace.UNKNOWN;
            }
            return occasion.tags().isEmpty() ? "none" : String.join(", ", occasion.tags());
        }

        @Override
        public String canonical() {
            return KEY + OccasionCondition.canonical(tags);
        }

        @Override
        public List<Wrong> wrong() {
            List<Wrong> out = new ArrayList<>();
            for (String tag : tags) {
                out.add(new Wrong("rider tag " + tag + " taken away", "a firing case with rider tag " + tag, new Tags(without(tags, tag))));
            }
            return out;
        }
    }

    /** The day lies from one day to another, both included. */
    record Days(LocalDate from, LocalDate to) implements OccasionCondition {

        public static final String KEY = "date";

        @Override
        public String key() {
            return KEY;
        }

        @Override
        public Truth on(Occasion occasion) {
            LocalDate date = occasion.date();
            return date == null ? Truth.UNKNOWN : Truth.of(!date.isBefore(from) && !date.isAfter(to));
        }

        @Override
        public String found(Occasion occasion) {
            return occasion.date() == null ? ConditionTrace.UNKNOWN : occasion.date().toString();
        }

        @Override
        public String canonical() {
            return KEY + "[" + from + ".." + to + "]";
        }

        @Override
        public List<Wrong> wrong() {
            List<Wrong> out = new ArrayList<>();
            ends(out, from, from.minusDays(1), true);
            ends(out, to, to.plusDays(1), false);
            return out;
        }

        private void ends(List<Wrong> out, LocalDate at, LocalDate beyond, boolean first) {
            LocalDate within = first ? at.plusDays(1) : at.minusDays(1);
            String side = first ? "date from " : "date up to ";
            out.add(new Wrong(side + at + " moved to " + beyond, "a silent case with date " + beyond,
                    first ? new Days(beyond, to) : new Days(from, beyond)));
            out.add(new Wrong(side + at + " moved to " + within, "a firing case with date " + at,
                    first ? new Days(within, to) : new Days(from, within)));
        }
    }

    /**
     * The day lies in a season of every year, both ends included; one that starts later in the year than it ends goes over New Year.
     *
     * @param from month times 100 and day
     * @param to   month times 100 and day
     */
    record Season(int from, int to) implements OccasionCondition {

        private static final int LEAP = 2024;
        private static final int LEAP_DAY = 229;

        @Override
        public String key() {
            return Days.KEY;
        }

        @Override
        public Truth on(Occasion occasion) {
            if (occasion.date() == null) {
                return Truth.UNKNOWN;
            }
            int day = number(occasion.date());
            return Truth.of(from <= to ? day >= from && day <= to : day >= from || day <= to);
        }

        @Override
        public String found(Occasion occasion) {
            return occasion.date() == null ? ConditionTrace.UNKNOWN : occasion.date().toString();
        }

        @Override
        public String canonical() {
            return Days.KEY + "[" + text(from) + ".." + text(to) + "]";
        }

        @Override
        public List<Wrong> wrong() {
            List<Wrong> out = new ArrayList<>();
            out.add(new Wrong("date from " + text(from) + " moved to " + text(moved(from, -1)), "a silent case with date " + text(moved(from, -1)),
                    new Season(moved(from, -1), to)));
            out.add(new Wrong("date from " + text(from) + " moved to " + text(moved(from, 1)), "a firing case with date " + text(from),
                    new Season(moved(from, 1), to)));
            out.add(new Wrong("date up to " + text(to) + " moved to " + text(moved(to, 1)), "a silent case with date " + text(moved(to, 1)),
                    new Season(from, moved(to, 1))));
            out.add(new Wrong("date up to " + text(to) + " moved to " + text(moved(to, -1)), "a firing case with date " + text(to),
                    new Season(from, moved(to, -1))));
            return out;
        }

        private static int moved(int day, int by) {
            return number(LocalDate.of(day == LEAP_DAY ? LEAP : LEAP + 1, day / 100, day % 100).plusDays(by));
        }

        static int number(LocalDate date) {
            return date.getMonthValue() * 100 + date.getDayOfMonth();
        }

        private static String text(int day) {
            return String.format(Locale.ROOT, "%02d-%02d", day / 100, day % 100);
        }
    }

    private static boolean among(List<String> words, String word) {
        for (String one : words) {
            if (one.equalsIgnoreCase(word)) {
                return true;
            }
        }
        return false;
    }

    private static List<String> without(List<String> words, String word) {
        List<String> out = new ArrayList<>(words);
        out.remove(word);
        return out;
    }

    private static String canonical(List<String> words) {
        TreeSet<String> out = new TreeSet<>();
        for (String word : words) {
            out.add(word.toLowerCase(Locale.ROOT));
        }
        return out.toString();
    }
}
