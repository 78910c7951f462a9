package courseworthy.rulebase.check;

import courseworthy.demand.Measure;
import courseworthy.rulebase.Condition;
import courseworthy.rulebase.Limits;
import courseworthy.rulebase.OccasionTest;
import courseworthy.rulebase.StretchSet;
import courseworthy.rulebase.Subject;
import courseworthy.topic.Topic;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.LongFunction;

/** What the rows of one check ask about, each thing once, numbered in the order in which it is met. */
final class Things {

    private static final Values YES_NO = open(0, 1);

    /** Dates have a year of four digits. */
    static final LocalDate FIRST_DAY = LocalDate.of(1901, 1, 1);
    static final LocalDate LAST_DAY = LocalDate.of(2099, 12, 31);
    private static final String SOMEONE_ELSE = "someone else";

    private final Map<String, Thing> met = new LinkedHashMap<>();
    /** Names of riders as written first, and in small letters. */
    private final List<String> names = new ArrayList<>();
    private final List<String> lower = new ArrayList<>();

    /** What of the occasion is asked. */
    enum Whose {
        RIDER, DATE, DAY_OF_YEAR
    }

    /** Whether the rider has it is asked. */
    record Tag(String name) {
    }

    Thing of(Measure measure) {
        Thing known = met.get(measure.written());
        Subject subject = Subject.of(measure);
        return known != null ? known : add(measure.written(), measure.written(), subject, open(Limits.least(subject), Limits.most(subject)), measure);
    }

    /** What is settled on a topic may lie outside what is sensible for it, where a bound asks for that. */
    Thing of(Topic topic) {
        String name = "decided: " + topic.name();
        Thing known = met.get(name);
        boolean quantity = topic.kind() == Topic.Kind.QUANTITY;
        return known != null ? known : add(name, name, Subject.of(topic),
                quantity ? open(Long.MIN_VALUE, Long.MAX_VALUE) : open(topic.least(), topic.most()), topic);
    }

    Thing of(Condition.Stretches stretches) {
        String key = "any stretch: " + key(stretches.set());
        Thing known = met.get(key);
        return known != null ? known : add(key, "any stretch: " + written(stretches.set()), null, YES_NO, stretches.set());
    }

    Thing of(Condition.Share share) {
        String key = "share of course: " + key(share.where());
        Thing known = met.get(key);
        return known != null ? known
                : add(key, "share of course: " + written(share.where()), Subject.SHARE, open(0, 100), share.where());
    }

    /** Whose day it is: 0 is someone nobody names, the others count the names as they are met, capital letters like small ones. */
    Thing rider() {
        Thing known = met.get(OccasionTest.Riders.KEY);
        return known != null ? known : add(OccasionTest.Riders.KEY, OccasionTest.Riders.KEY, null, open(0, Long.MAX_VALUE), Whose.RIDER,
                this::rider);
    }

    /** The number of a rider's name. */
    long rider(String name) {
        int at = lower.indexOf(name.toLowerCase(Locale.ROOT));
        if (at >= 0) {
            return at + 1;
        }
        lower.add(name.toLowerCase(Locale.ROOT));
        names.add(name);
        return names.size();
    }

    private String rider(long number) {
        return number >= 1 && number <= names.size() ? names.get((int) number - 1) : SOMEONE_ELSE;
    }

    /** Whether the rider has a tag. */
    Thing tag(String tag) {
        String name = OccasionTest.Tags.KEY + " " + tag;
        String key = name.toLowerCase(Locale.ROOT);
        Thing known = met.get(key);
        return known != null ? known : add(key, name, null, YES_NO, new Tag(tag), Things::yesNo);
    }

    /** The day, counted from 1970-01-01. */
    Thing date() {
        Thing known = met.get(OccasionTest.Days.KEY);
        return known != null ? known : add(OccasionTest.Days.KEY, OccasionTest.Days.KEY, null,
                open(FIRST_DAY.toEpochDay(), LAST_DAY.toEpochDay()), Whose.DATE, day -> LocalDate.ofEpochDay(day).toString());
    }

    /** The day of a leap year, 1 to 366; taken as free of the date, save what {@link Region} knows of short spans. */
    Thing dayOfYear() {
        Thing known = met.get("day of the year");
        return known != null ? known : add("day of the year", "day of the year", null, open(1, 366), Whose.DAY_OF_YEAR, Long::toString);
    }

    private Thing add(String key, String name, Subject scale, Values all, Object asked) {
        return add(key, name, scale, all, asked, scale == null ? Things::yesNo : scale::text);
    }

    private Thing add(String key, String name, Subject scale, Values all, Object asked, LongFunction<String> words) {
        Thing thing = new Thing(met.size(), name, scale, all, asked, words);
        met.put(key, thing);
        return thing;
    }

    private static String yesNo(long value) {
        return value == 1 ? "yes" : "no";
    }

    /** Neither the order nor the wording of conditions matters. */
    private static String key(StretchSet set) {
        return String.join(", ", set.tests().stream().map(one -> one.measure().written() + one.test().canonical()).sorted().toList());
    }

    private static String written(StretchSet set) {
        return String.join(", ", set.tests().stream().map(one -> one.measure().written() + " " + one.written()).toList());
    }

    private static Values open(long least, long most) {
        return Values.of(least, most).orUnknown(true);
    }
}
