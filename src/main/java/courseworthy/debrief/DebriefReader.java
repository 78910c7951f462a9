package courseworthy.debrief;

import courseworthy.debrief.Debrief.DebriefLine;
import courseworthy.debrief.Debrief.ReportedWeather;
import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.problem.Spelling;
import courseworthy.text.FieldReader;
import courseworthy.text.FileKey;
import courseworthy.text.FileKeys;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.units.Amount;
import courseworthy.units.Dimension;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads a debrief, and with it the brief that it names, and says everything that is wrong with either at once. */
public final class DebriefReader {

    /** The keys of a puncture. */
    public static final List<String> PUNCTURE_KEYS = List.of("wheel", "cause", "at", "repaired with");
    /** The keys of a piece that was walked. */
    public static final List<String> WALKED_KEYS = List.of("why", "at");
    /** The words for the going as it was. */
    public static final List<String> GOINGS = List.of("dry", "damp", "wet");
    private static final String NONE = "none";
    private static final String BRIEF = "the brief as it was saved with --format json, beside this file or below it";
    private static final int LONGEST_NAME = 200;
    private static final int LONGEST_NOTES = 4000;
    private static final double HOUR = 3600;
    /** From here, m, places are given in km. */
    private static final double KM = 1000;
    private static final String FAR = "a distance from 0 km to 2000 km";

    private static final FileKeys WEATHER = new FileKeys();
    private static final FileKey<String> GOING = WEATHER.word("going", "", GOINGS);
    private static final FileKey<Double> LOW = WEATHER.amount("low", "The coldest", Dimension.TEMPERATURE, -40, 55, "a temperature from -40 C to 55 C");
    private static final FileKey<Double> HIGH = WEATHER.amount("high", "The hottest", Dimension.TEMPERATURE, -40, 55, "a temperature from -40 C to 55 C");

    /** The keys of {@code weather}, with the forms of their values. */
    public static final List<FileKey<?>> WEATHER_FORMS = WEATHER.all();
    /** Their names. */
    public static final List<String> WEATHER_KEYS = WEATHER.names();

    private static final FileKeys DECLARED = new FileKeys();
    private static final FileKey<String> NAME = DECLARED.line("debrief", "Its name, such as the event's", LONGEST_NAME);
    private static final FileKey<Double> HOURS =
            DECLARED.others("brief").amount("hours", "From start to finish", Dimension.TIME, 600, 240 * HOUR, "a time from 10 min to 240 h");

    static {
        DECLARED.others("weather", "punctures", "rim strikes", "slid", "spun out at", "walked", "ran out of");
        OutcomeTable.questions().forEach(question -> DECLARED.word(question, "", OutcomeTable.answers(question)));
    }

    private static final FileKey<String> NOTES = DECLARED.others("changed on the day", "would change").line("notes", "", LONGEST_NOTES);

    /** The keys of a debrief's file, with the forms of their values. */
    public static final List<FileKey<?>> KEY_FORMS = DECLARED.all();
    /** Their names. */
    public static final List<String> KEYS = DECLARED.names();

    private final Path path;
    private final String shown;
    private final Faults faults;
    private final FieldReader fields;
    private final List<DebriefLine> day = new ArrayList<>();
    private final List<String> repairs = new ArrayList<>();
    private final List<ReportedValue> outcomes = new ArrayList<>();

    private DebriefReader(Path path, String shown, Node.Mapping tree, Faults faults) {
        this.path = path;
        this.shown = shown;
        this.faults = faults;
        this.fields = new FieldReader(shown, tree, faults);
    }

    /** A debrief, held against the brief it names. */
    public record DebriefPair(Debrief debrief, SavedBrief given) {
    }

    /**
     * Reads a file.
     *
     * @param shown its path as the user typed it
     * @return null where something cannot be used; the faults say what
     */
    public static DebriefPair read(Path path, String shown, Faults faults) {
        Faults own = new Faults();
        Node.Mapping tree = YamlReader.read(path, shown, own);
        DebriefPair pair = tree == null ? null : new DebriefReader(path, shown, tree, own).pair();
        faults.addAll(own);
        return own.stop() ? null : pair;
    }

    private DebriefPair pair() {
        fields.required("debrief", "its name, such as the event's");
        String name = NAME.read(fields);
        SavedBrief given = given();
        Double hours = HOURS.read(fields);
        ReportedWeather weather = weather();
        flats();
        wheels("rim strikes");
        wheels("slid");
        for (String question : OutcomeTable.questions()) {
            ask(question);
            if (question.equals("spun out")) {
                spunOutAt();
            }
        }
        walked();
        ranOut();
        Map<Topic, Long> changed = topics("changed on the day", given);
        Map<Topic, Long> would = topics("would change", given);
        String notes = NOTES.read(fields);
        fields.done();
        return new DebriefPair(new Debrief(name, shown, hours, weather, day, outcomes, changed, would, repairs, notes), given);
    }

    // The brief

    private SavedBrief given() {
        fields.required("brief", BRIEF);
        Node.Scalar written = fields.scalar("brief", BRIEF);
        if (written == null) {
            return null;
        }
        Path file = beside(written);
        return file == null ? null : SavedBriefReader.read(file, shown.substring(0, shown.lastIndexOf('/') + 1) + written.text(), faults);
    }

    /** A file beside the debrief or below it, so that a debrief from elsewhere cannot name any other. */
    private Path beside(Node.Scalar written) {
        try {
            Path folder = path.toAbsolutePath().normalize().getParent();
            Path file = folder.resolve(written.text()).normalize();
            boolean inside = !Path.of(written.text()).isAbsolute() && file.startsWith(folder);
            if (inside && (!java.nio.file.Files.exists(file) || file.toRealPath().startsWith(folder.toRealPath()))) {
                return file;
            }
            fields.fault("brief", written.describe() + ", which lies outside the debrief's folder", BRIEF, "Put the brief beside the debrief.");
        } catch (InvalidPathException | java.io.IOException e) {
            fields.fault("brief", written.describe() + ", a path that cannot be", BRIEF, "");
        }
        return null;
    }

    // The day

    private static Double value(FieldReader from, String key, Dimension dimension, double least, double most, String range) {
        Amount amount = from.amount(key, dimension, least, most, range);
        return amount == null ? null : Double.valueOf(amount.inBase());
    }

    private ReportedWeather weather() {
        FieldReader block = fields.fields("weather");
        if (block == null) {
            return ReportedWeather.UNKNOWN;
        }
        String going = GOING.read(block);
        Double low = LOW.read(block);
        Double high = HIGH.read(block);
        if (low != null && high != null && low > high) {
            block.fault("low", block.node("low").describe(), "no more than high", "");
        }
        block.done();
        return new ReportedWeather(going, low, high);
    }

    private boolean none(String key) {
        return fields.node(key) instanceof Node.Scalar scalar && scalar.text().equals(NONE);
    }

    /** What is listed under a key; a word that is not "none" is no list. */
    private List<FieldReader> listed(String key, String example) {
        if (fields.node(key) instanceof Node.Scalar word && !word.text().isEmpty()) {
            fields.fault(key, word.describe(), NONE + ", or a list such as " + example, Spelling.didYouMean(word.text(), List.of(NONE)));
            return List.of();
        }
        return fields.blocks(key);
    }

    private void flats() {
        if (none("punctures")) {
            day.add(new DebriefLine("punctures", NONE));
            outcomes.addAll(OutcomeTable.noPunctures());
            return;
        }
        for (FieldReader each : listed("punctures", "[{wheel: rear, cause: cut, at: 33 km}]")) {
            each.required("wheel", "front or rear");
            String wheel = each.word("wheel", OutcomeTable.WHEELS);
            String cause = each.word("cause", OutcomeTable.CAUSES);
            Double at = value(each, "at", Dimension.LENGTH, 0, 2_000_000, FAR);
            String mend = each.word("repaired with", OutcomeTable.MENDS);
            each.done();
            if (wheel != null) {
                String known = cause == null ? "not known" : cause;
                String what = wheel + " puncture" + place(at) + ", " + (known.equals("not known") ? "cause not known" : known)
                        + (mend == null ? "" : mend.equals("not at all") ? ", not repaired" : ", repaired with " + mend);
                day.add(new DebriefLine("punctures", what));
                outcomes.addAll(OutcomeTable.flat(what, wheel, known, mend));
                repairs.addAll(mend == null ? List.of() : List.of(mend));
            }
        }
    }

    private static String place(Double at) {
        return at == null ? "" : " at " + decimal(at / KM) + " km";
    }

    private static String decimal(double value) {
        long tenths = Math.round(value * 10);
        return tenths / 10 + (tenths % 10 == 0 ? "" : "." + tenths % 10);
    }

    private void wheels(String key) {
        if (!fields.has(key)) {
            return;
        }
        List<String> out = none(key) ? List.of() : words(key, OutcomeTable.WHEELS);
        day.add(new DebriefLine(key, out.isEmpty() ? NONE : String.join(", ", out)));
        outcomes.addAll(key.equals("slid") ? OutcomeTable.slid(out) : OutcomeTable.rimStrikes(out));
    }

    private List<String> words(String key, List<String> accepted) {
        List<String> out = new ArrayList<>();
        List<String> or = new ArrayList<>(accepted);
        or.add(0, NONE);
        for (Node item : fields.items(key)) {
            if (!(item instanceof Node.Scalar scalar)) {
                faults.add(shown, item.line(), key, item.describe(), "one of: " + String.join(", ", or), "");
            } else if (scalar.text().equals(NONE)) {
                faults.add(shown, item.line(), key, "none beside others", "none alone, or what there was", "");
            } else {
                String word = fields.word(key, scalar, or);
                if (word != null && !out.contains(word)) {
                    out.add(word);
                }
            }
        }
        return out;
    }

    private void ask(String question) {
        String answer = fields.word(question, OutcomeTable.answers(question));
        if (answer != null) {
            day.add(new DebriefLine(question, answer));
            outcomes.addAll(OutcomeTable.of(question, answer));
        }
    }

    private void spunOutAt() {
        List<String> places = new ArrayList<>();
        for (Node item : fields.items("spun out at")) {
            Amount at = item instanceof Node.Scalar scalar ? fields.amount("spun out at", scalar, Dimension.LENGTH) : null;
            if (at != null && (at.inBase() < 0 || at.inBase() > 2_000_000)) {
                faults.add(shown, item.line(), "spun out at", item.describe(), FAR, "");
            } else if (at != null) {
                places.add(decimal(at.inBase() / KM) + " km");
            } else if (!(item instanceof Node.Scalar)) {
                faults.add(shown, item.line(), "spun out at", item.describe(), "a list of distances, such as [12 km, 40.5 km]", "");
            }
        }
        if (!places.isEmpty()) {
            day.add(new DebriefLine("spun out at", String.join(", ", places)));
        }
    }

    private void walked() {
        if (none("walked")) {
            day.add(new DebriefLine("walked", NONE));
            outcomes.addAll(OutcomeTable.neverWalked());
            return;
        }
        for (FieldReader each : listed("walked", "[{why: gear, at: 9 km}]")) {
            each.required("why", "gear, ground, legs or traffic");
            String why = each.word("why", OutcomeTable.REASONS);
            Double at = value(each, "at", Dimension.LENGTH, 0, 2_000_000, FAR);
            each.done();
            if (why != null) {
                String where = place(at).strip() + (at == null ? "" : ", ") + "because of the " + why;
                day.add(new DebriefLine("walked", where));
                outcomes.addAll(OutcomeTable.walked("walked " + where, why));
            }
        }
    }

    private void ranOut() {
        if (!fields.has("ran out of")) {
            return;
        }
        List<String> out = none("ran out of") ? List.of() : words("ran out of", OutcomeTable.runsOut());
        day.add(new DebriefLine("ran out of", out.isEmpty() ? NONE : String.join(", ", out)));
        outcomes.addAll(OutcomeTable.ranOut(out));
    }

    // Topics and values

    /** Topics on which the brief decided nothing are warned of: there is nothing to hold them against. */
    private Map<Topic, Long> topics(String key, SavedBrief given) {
        Map<Topic, Long> out = new LinkedHashMap<>();
        if (none(key)) {
            return out;
        }
        FieldReader block = fields.fields(key);
        if (block == null) {
            return out;
        }
        for (Node.Entry entry : block.block().entries()) {
            String name = entry.key().text();
            Topic topic = Topics.find(name);
            if (topic == null) {
                String near = Spelling.didYouMean(name, Topics.names());
                faults.add(shown, entry.key().line(), key, "\"" + name + "\"", "a topic and its value, such as {rear tyre casing: heavy}",
                        near.isEmpty() ? "'courseworthy topics' lists them." : near);
            } else {
                Long value = value(topic, entry.value());
                if (value != null) {
                    out.put(topic, value);
                }
                if (given != null && given.advice().stream().noneMatch(each -> each.topic().equals(topic))) {
                    faults.add(Fault.warning(shown, entry.key().line(), key, name, "a topic on which the brief advises something", "It is not used."));
                }
            }
        }
        return out;
    }

    private Long value(Topic topic, Node node) {
        if (!(node instanceof Node.Scalar scalar)) {
            faults.add(shown, node.line(), topic.name(), node.describe(), "a value", "");
            return null;
        }
        if (topic.kind() != Topic.Kind.QUANTITY) {
            int option = topic.option(scalar.text());
            if (option < 0) {
                faults.add(shown, scalar.line(), topic.name(), scalar.describe(), "one of: " + String.join(", ", topic.options()),
                        Spelling.didYouMean(scalar.text(), topic.options()));
            }
            return option < 0 ? null : Long.valueOf(option);
        }
        Amount amount = fields.amount(topic.name(), scalar, topic.resolution().unit().dimension());
        if (amount == null) {
            return null;
        }
        double base = amount.inBase();
        if (base < topic.resolution().base(topic.least()) - 1e-9 || base > topic.resolution().base(topic.most()) + 1e-9) {
            faults.add(shown, scalar.line(), topic.name(), scalar.describe(),
                    "a value from " + topic.text(topic.least()) + " to " + topic.text(topic.most()), "");
            return null;
        }
        return topic.resolution().ticks(amount);
    }
}
