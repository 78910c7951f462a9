package courseworthy.analysis;

import courseworthy.demand.Measure;
import courseworthy.sheet.Condition;
import courseworthy.sheet.OccasionCondition;
import courseworthy.sheet.StretchConditions;
import courseworthy.sheet.TestSubject;
import courseworthy.topic.Topic;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.LongFunction;

/** What the rows of one check ask about, each thing once, numbered in the order in which it is met. */
final class VariableTable {

    private static final ValueSet YES_NO = open(0, 1);

    /** Dates have a year of four digits. */
    static final LocalDate FIRST_DAY = LocalDate.of(1901, 1, 1);
    static final LocalDate LAST_DAY = LocalDate.of(2099, 12, 31);
    private static final String SOMEONE_ELSE = "someone else";

    private final Map<String, Variable> met = new LinkedHashMap<>();
    /** Names of riders as written first, and in small letters. */
    private final List<String> names = new ArrayList<>();
    private final List<String> lower = new ArrayList<>();

    /** What of the occasion is asked. */
    enum VariableOwner {
        RIDER, DATE, DAY_OF_YEAR
    }

    /** Whether the rider has it is asked. */
    record TagVariable(String name) {
    }

    Variable of(Measure measure) {
        Variable known = met.get(measure.written());
        TestSubject subject = TestSubject.of(measure);
        return known != null ? known : add(measure.written(), measure.written(), subject, open(subject.scale().least(), subject.scale().most()), measure);
    }

    /** What is settled on a topic may lie outside what is sensible for it, where a bound asks for that. */
    Variable of(Topic topic) {
        String name = "decided: " + topic.name();
        Variable known = met.get(name);
        boolean quantity = topic.kind() == Topic.Kind.QUANTITY;
        return known != null ? known : add(name, name, TestSubject.of(topic),
                quantity ? open(Long.MIN_VALUE, Long.MAX_VALUE) : open(topic.least(), topic.most()), topic);
    }

    Variable of(Condition.Stretches stretches) {
        String key = "any stretch: " + key(stretches.set());
        Variable known = met.get(key);
        return known != null ? known : add(key, "any stretch: " + written(stretches.set()), null, YES_NO, stretches.set());
    }

    Variable of(Condition.StretchShareCondition share) {
        String key = "share of course: " + key(share.where());
        Variable known = met.get(key);
        return known != null ? known
                : add(key, "share of course: " + written(share.where()), TestSubject.SHARE, open(0, 100), share.where());
    }

    /** Whose day it is: 0 is someone nobody names, the others count the names as they are met, capital letters like small ones. */
    Variable rider() {
        Variable known = met.get(OccasionCondition.Riders.KEY);
        return known != null ? known : add(OccasionCondition.Riders.KEY, OccasionCondition.Riders.KEY, null, open(0, Long.MAX_VALUE), VariableOwner.RIDER,
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
    Variable tag(String tag) {
        String name = OccasionCondition.Tags.KEY + " " + tag;
        String key = name.toLowerCase(Locale.ROOT);
        Variable known = met.get(key);
        return known != null ? known : add(key, name, null, YES_NO, new TagVariable(tag), VariableTable::yesNo);
    }

    /** The day, counted from 1970-01-01. */
    Variable date() {
        Variable known = met.get(OccasionCondition.Days.KEY);
        return known != null ? known : add(OccasionCondition.Days.KEY, OccasionCondition.Days.KEY, null,
                open(FIRST_DAY.toEpochDay(), LAST_DAY.toEpochDay()), VariableOwner.DATE, day -> LocalDate.ofEpochDay(day).toString());
    }

    /** The day of a leap year, 1 to 366; taken as free of the date, save what {@link Region} knows of short spans. */
    Variable dayOfYear() {
        Variable known = met.get("day of the year");
        return known != null ? known : add("day of the year", "day of the year", null, open(1, 366), VariableOwner.DAY_OF_YEAR, Long::toString);
    }

    private Variable add(String key, String name, TestSubject scale, ValueSet all, Object asked) {
        return add(key, name, scale, all, asked, scale == null ? VariableTable::yesNo : scale::text);
    }

    private Variable add(String key, String name, TestSubject scale, ValueSet all, Object asked, LongFunction<String> words) {
        Variable thing = new Variable(met.size(), name, scale, all, asked, words);
        met.put(key, thing);
        return thing;
    }

    private static String yesNo(long value) {
        return value == 1 ? "yes" : "no";
    }

    /** Neither the order nor the wording of conditions matters. */
    private static String key(StretchConditions set) {
        return String.join(", ", set.tests().stream().map(one -> one.measure().written() + one.test().canonical()).sorted().toList());
    }

    private static String written(StretchConditions set) {
        return String.join(", ", set.tests().stream().map(one -> one.measure().written() + " " + one.written()).toList());
    }

    private static ValueSet open(long least, long most) {
        return ValueSet.of(least, most).orUnknown(true);
    }
}
