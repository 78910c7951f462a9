package courseworthy.sheet;

import courseworthy.problem.Faults;
import courseworthy.text.Dates;
import courseworthy.text.FieldReader;
import courseworthy.text.Node;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what a condition asks of whose day it is, and which; null with a fault. */
final class OccasionReader {

    /** The keys of conditions that it reads. */
    static final List<String> KEYS = List.of(OccasionCondition.Riders.KEY, OccasionCondition.Tags.KEY, OccasionCondition.Days.KEY);

    private static final Pattern ONE_OF = Pattern.compile("one of \\[(.*)]");
    private static final Pattern BETWEEN = Pattern.compile("between (\\S+) and (\\S+)");
    private static final Pattern DAY_OF_A_YEAR = Pattern.compile("([0-9]{4})-([0-9]{2})-([0-9]{2})");
    private static final Pattern DAY = Pattern.compile("([0-9]{2})-([0-9]{2})");
    private static final String DATES = "a day such as 2026-05-09, between 2026-11-01 and 2027-02-28, or (for every year) between 11-01 and 02-28";
    private static final int LEAP = 2024;

    private final String file;
    private final Faults faults;

    OccasionReader(String file, Faults faults) {
        this.file = file;
        this.faults = faults;
    }

    OccasionCondition test(String key, Node value) {
        if (key.equals(OccasionCondition.Days.KEY)) {
            return dates(value);
        }
        List<String> words = words(key, value);
        if (words == null) {
            return null;
        }
        return key.equals(OccasionCondition.Riders.KEY) ? new OccasionCondition.Riders(words) : new OccasionCondition.Tags(words);
    }

    /** One word, a list of words, or {@code one of [a, b]}; each once. */
    List<String> words(String key, Node value) {
        List<String> out = new ArrayList<>();
        if (value instanceof Node.Sequence list) {
            for (Node item : list.items()) {
                if (!(item instanceof Node.Scalar scalar)) {
                    faults.add(file, item.line(), key, item.describe(), "a name", "");
                    return null;
                }
                if (!scalar.quoted() && scalar.text().indexOf(',') >= 0) {
                    return severalInOne(key, scalar);
                }
                out.add(scalar.text().strip());
            }
        } else if (value instanceof Node.Scalar scalar) {
            Matcher oneOf = ONE_OF.matcher(scalar.text());
            if (!oneOf.matches() && scalar.text().indexOf(',') >= 0) {
                return severalInOne(key, scalar);
            }
            for (String word : oneOf.matches() ? oneOf.group(1).split(",", -1) : new String[] {scalar.text()}) {
                out.add(word.strip());
            }
        } else {
            faults.add(file, value.line(), key, value.describe(), "a name or one of [a, b]", "");
            return null;
        }
        return distinct(key, value, out) ? out : null;
    }

    private List<String> severalInOne(String key, Node.Scalar scalar) {
        faults.add(file, scalar.line(), key, scalar.describe() + ", which is one name", "a name or one of [a, b]", FieldReader.asList(scalar.text()));
        return null;
    }

    private boolean distinct(String key, Node value, List<String> words) {
        for (int i = 0; i < words.size(); i++) {
            if (words.get(i).isEmpty()) {
                faults.add(file, value.line(), key, "an empty name", "a name or one of [a, b]", "");
                return false;
            }
            for (int j = 0; j < i; j++) {
                if (words.get(j).equalsIgnoreCase(words.get(i))) {
                    faults.add(file, value.line(), key, "\"" + words.get(i) + "\" a second time", "each name once", "");
                    return false;
                }
            }
        }
        return true;
    }

    private OccasionCondition dates(Node value) {
        String text = value instanceof Node.Scalar scalar ? scalar.text() : "";
        Matcher between = BETWEEN.matcher(text);
        String from = between.matches() ? between.group(1) : text;
        String to = between.matches() ? between.group(2) : text;
        LocalDate first = day(from);
        LocalDate last = day(to);
        boolean everyYear = DAY.matcher(from).matches() && DAY.matcher(to).matches() && between.matches();
        if (first == null || last == null || !everyYear && !(DAY_OF_A_YEAR.matcher(from).matches() && DAY_OF_A_YEAR.matcher(to).matches())) {
            faults.add(file, value.line(), OccasionCondition.Days.KEY, value.describe(), DATES, Dates.mend(Dates.of(from) == null ? from : to));
            return null;
        }
        if (everyYear) {
            return new OccasionCondition.Season(OccasionCondition.Season.number(first), OccasionCondition.Season.number(last));
        }
        if (first.isAfter(last)) {
            faults.add(file, value.line(), OccasionCondition.Days.KEY, value.describe(), "the earlier day first", "");
            return null;
        }
        return new OccasionCondition.Days(first, last);
    }

    /** A day of a year, or of every year; null where there is none such. */
    static LocalDate day(String text) {
        Matcher full = DAY_OF_A_YEAR.matcher(text);
        Matcher ofEveryYear = DAY.matcher(text);
        try {
            if (full.matches()) {
                return Dates.of(text);
            }
            return ofEveryYear.matches() ? LocalDate.of(LEAP, Integer.parseInt(ofEveryYear.group(1)), Integer.parseInt(ofEveryYear.group(2))) : null;
        } catch (DateTimeException none) {
            return null;
        }
    }
}
