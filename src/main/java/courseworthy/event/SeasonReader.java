package courseworthy.event;

import courseworthy.event.SeasonFile.Entry;
import courseworthy.event.SeasonFile.FileValue;
import courseworthy.event.SeasonFile.Start;
import courseworthy.event.SeasonFile.Starter;
import courseworthy.problem.Faults;
import courseworthy.problem.Spelling;
import courseworthy.text.FieldReader;
import courseworthy.text.FileKey;
import courseworthy.text.FileKeys;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import courseworthy.units.Amount;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads a season's file and says everything that is wrong with it at once. */
public final class SeasonReader {

    /** The keys of a start. */
    public static final List<String> START_KEYS = List.of("rider", "bike", "may change");
    /** What happens to the parts after each event. */
    public static final List<String> AFTERWARDS = List.of("stay", "back");

    /** The last place that a rider can have. */
    public static final int LAST = 100;

    private static final int LONGEST = 200;

    private static final FileKeys SEASON = new FileKeys();
    private static final FileKey<String> NAME = SEASON.line("season", "Its name", LONGEST);
    private static final FileKey<String> CURRENCY = SEASON.line("currency", "In which prices are written", LONGEST);
    private static final FileKey<String> AFTER = SEASON.others("a minute is worth", WorkHoursReader.KEY)
            .word("after each event", "Whether parts stay where they are or go back", AFTERWARDS);
    private static final FileKeys RIDER = new FileKeys();
    private static final FileKey<Integer> PRIORITY = RIDER.others("name", "rider", "workshop", "log", "sheets")
            .whole("priority", "Turn of the rider where parts or time are short: 1 before 2", 1, LAST);
    private static final FileKeys EVENT = new FileKeys();
    private static final FileKey<String> ROLE = EVENT.others("event", "course", "ground", "map", "elevation", "date", Travel.KEY)
            .word("role", "What the bike is set up for", EventReader.ROLES);

    /** The keys of a season's file, with the forms of their values. */
    public static final List<FileKey<?>> KEY_FORMS = SEASON.others("riders", "events").all();
    /** Their names. */
    public static final List<String> KEYS = SEASON.names();
    /** The keys of a rider of a season, with the forms of their values. */
    public static final List<FileKey<?>> RIDER_FORMS = RIDER.all();
    /** Their names. */
    public static final List<String> RIDER_KEYS = RIDER.names();
    /** The keys of an event of a season, with the forms of their values. */
    public static final List<FileKey<?>> EVENT_FORMS = EVENT.others("starts").all();
    /** Their names. */
    public static final List<String> EVENT_KEYS = EVENT.names();
    private static final String INSIDE = "a path inside the season's folder";

    private final String shown;
    private final Faults faults;

    private SeasonReader(String shown, Faults faults) {
        this.shown = shown;
        this.faults = faults;
    }

    /** @return the season, or null where the file could not be read at all; with faults it is not to be used */
    public static SeasonFile read(Path path, String shown, Faults faults) {
        Node.Mapping tree = YamlReader.read(path, shown, faults);
        return tree == null ? null : new SeasonReader(shown, faults).season(new FieldReader(shown, tree, faults));
    }

    private SeasonFile season(FieldReader from) {
        String name = NAME.read(from);
        String currency = CURRENCY.read(from);
        Amount worth = from.sum("a minute is worth", 0.01, 1e6, "a bare number from 0.01 to 1000000");
        WorkHours work = WorkHoursReader.read(from);
        String after = AFTER.read(from);
        List<Starter> starters = starters(from);
        List<Entry> events = events(from, starters);
        notEmpty(from, "riders");
        notEmpty(from, "events");
        from.done();
        return new SeasonFile(name, shown, currency, worth == null ? null : Double.valueOf(worth.inBase()),
                work, "back".equals(after),
                starters, events);
    }

    private static void notEmpty(FieldReader from, String key) {
        if (from.node(key) instanceof Node.Sequence list && list.items().isEmpty()) {
            from.fault(key, "an empty list", "at least one", "");
        }
    }

    private List<Starter> starters(FieldReader from) {
        from.required("riders", "who rides, at least one");
        Map<String, Starter> out = new LinkedHashMap<>();
        for (FieldReader each : from.blocks("riders")) {
            each.required("name", "a name of its own");
            each.required("workshop", "the workshop's file");
            String name = each.line("name", LONGEST);
            FileValue rider = inside(each, "rider");
            FileValue workshop = inside(each, "workshop");
            FileValue log = inside(each, "log");
            List<FileValue> sheets = files(each, "sheets");
            Integer priority = PRIORITY.read(each);
            each.done();
            Starter starter = new Starter(name, rider, workshop, log, sheets, priority == null ? LAST + 1 : priority, each.line());
            if (name != null && out.putIfAbsent(name, starter) != null) {
                faults.add(shown, each.lineOf("name"), "name", "a second \"" + name + "\"", "a name of its own for every rider", "");
            }
        }
        return List.copyOf(out.values());
    }

    private List<FileValue> files(FieldReader from, String key) {
        List<String> texts = from.texts(key);
        List<Node> items = from.items(key);
        List<FileValue> out = new ArrayList<>();
        for (int i = 0; i < texts.size(); i++) {
            isInside(from, key, texts.get(i));
            out.add(new FileValue(texts.get(i), items.get(Math.min(i, items.size() - 1)).line()));
        }
        return out;
    }

    private List<Entry> events(FieldReader from, List<Starter> starters) {
        from.required("events", "what is ridden, at least one event");
        List<Entry> out = new ArrayList<>();
        for (FieldReader each : from.blocks("events")) {
            if (!each.has("event")) {
                each.required("course", "a file in the season's folder, or the name of a shipped course");
            }
            FileValue event = inside(each, "event");
            FileValue course = inside(each, "course");
            String text = each.prose("ground");
            FileValue ground = text == null ? null : new FileValue(text, each.lineOf("ground"));
            List<FileValue> map = files(each, "map");
            FileValue elevation = inside(each, "elevation");
            LocalDate date = each.day("date");
            Travel travel = Travel.read(each);
            if (travel != null) {
                travel.check(each, date);
            }
            String role = ROLE.read(each);
            List<Start> starts = starts(each, starters);
            each.done();
            out.add(new Entry(event, course, ground, map, elevation, date, travel, role, starts, each.line()));
        }
        return out;
    }

    private List<Start> starts(FieldReader from, List<Starter> starters) {
        List<String> names = new ArrayList<>();
        starters.forEach(each -> names.add(each.name()));
        Map<String, Start> out = new LinkedHashMap<>();
        for (FieldReader each : from.blocks("starts")) {
            each.required("rider", "the name of a rider of this season");
            String rider = each.line("rider", LONGEST);
            String bike = each.line("bike", LONGEST);
            List<String> mayChange = each.has("may change") ? each.texts("may change") : null;
            if (mayChange != null && bike == null) {
                each.fault("may change", "no bike", "the bike on which only these may be changed", "Add \"bike: ...\".");
            }
            each.done();
            if (rider != null && !names.contains(rider)) {
                each.fault("rider", "\"" + rider + "\"", "a rider of this season: " + String.join(", ", names), Spelling.didYouMean(rider, names));
            } else if (rider != null && out.putIfAbsent(rider, new Start(rider, bike, mayChange, each.line())) != null) {
                each.fault("rider", "\"" + rider + "\" a second time", "each rider once", "");
            }
        }
        return List.copyOf(out.values());
    }

    private FileValue inside(FieldReader from, String key) {
        String path = from.line(key, LONGEST);
        return path == null || !isInside(from, key, path) ? null : new FileValue(path, from.lineOf(key));
    }

    /** No file reads another outside its folder. */
    private static boolean isInside(FieldReader from, String key, String path) {
        boolean inside = !path.startsWith("/") && !path.startsWith("\\") && !path.contains(":");
        for (String step : path.split("[/\\\\]")) {
            inside &= !step.equals("..");
        }
        if (!inside) {
            from.fault(key, "\"" + path + "\"", INSIDE, "Copy the file into it.");
        }
        return inside;
    }
}
