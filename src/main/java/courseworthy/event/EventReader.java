package courseworthy.event;

import courseworthy.problem.Faults;
import courseworthy.problem.Spelling;
import courseworthy.text.FieldReader;
import courseworthy.text.FileKey;
import courseworthy.text.FileKeys;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import courseworthy.topic.Work;
import courseworthy.units.Amount;
import courseworthy.units.Dimension;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/** Reads an event's file: a race, or the typical ride of a training bike. Bounds are wide (judgement, no source): they catch slips. */
public final class EventReader {

    /** What a bike can be set up for. */
    public static final List<String> ROLES = List.of("training", "race");
    private static final double HOUR = 3600;

    private static final FileKeys DECLARED = new FileKeys();
    private static final FileKey<String> NAME = DECLARED.line("name", "", FieldReader.LONGEST_NAME);
    private static final FileKey<String> ROLE = DECLARED.word("role", "What the bike is set up for", ROLES);
    private static final FileKey<String> AIM = DECLARED.others(StageReader.KEY, StageReader.CHANGES_KEY, "date", "start", "utc offset", "zone")
            .word("aim", "What the rider wants", Event.AIMS);
    private static final FileKey<Integer> LAPS = DECLARED.others("rules", "bike", "pumped at", "time to change", Travel.KEY, WorkHoursReader.KEY)
            .whole("laps", "", 1, 100);
    private static final FileKey<Double> TIME_LIMIT =
            DECLARED.amount("time limit", "Time allowed for the whole ride", Dimension.TIME, 600, 240 * HOUR, "a time from 10 min to 240 h");
    private static final FileKey<Double> GROUP_SHARE =
            DECLARED.amount("group share", "Share of the distance in a group", Dimension.SHARE, 0, 1, "a share from 0 % to 100 %");
    private static final FileKey<Double> START_HEIGHT = DECLARED.others("forecast", "support")
            .amount("start height", "Height of the start, where the course does not tell", Dimension.LENGTH, -450, 9000, "a height from -450 m to 9000 m");

    /** The keys of an event's file, with the forms of their values. */
    public static final List<FileKey<?>> KEY_FORMS = DECLARED.others("cut-offs", "pits").all();
    /** Their names. */
    public static final List<String> KEYS = DECLARED.names();
    /** The keys of {@code rules}, with the forms of their values. */
    public static final List<FileKey<?>> RULES_FORMS = EventRulesReader.KEY_FORMS;
    /** Their names. */
    public static final List<String> RULES_KEYS = RULES_FORMS.stream().<String>map(FileKey::name).toList();
    /** The keys of a support point. */
    public static final List<String> SUPPORT_KEYS = List.of("at", "water", "food", "bag");
    /** Nobody keeps up more from the start to a point on the way, m/s (60 km/h; judgement). */
    private static final double FASTEST = 60 / 3.6;
    private static final String CLOCK = "a time of day as HH:MM, such as 07:30";
    private static final String OFFSET = "local time's offset from UTC as +HH:MM or -HH:MM, such as +02:00";

    private static final String ZONE = "a zone by its IANA name, such as Africa/Nairobi";

    /** Keys whose value is held against the course once that is known. */
    private static final List<String> LOCATED = List.of("zone", "utc offset", "laps", "time limit", "start height");

    private final Path path;
    private final String shown;
    private final Faults faults;
    private final FieldReader fields;
    private Double timeLimit;

    /** @param path of the event's own file; null where it stands in another one */
    private EventReader(Path path, String shown, Node.Mapping tree, Faults faults) {
        this(path, shown, new FieldReader(shown, tree, faults), faults);
    }

    private EventReader(Path path, String shown, FieldReader fields, Faults faults) {
        this.path = path;
        this.shown = shown;
        this.faults = faults;
        this.fields = fields;
    }

    /**
     * Reads a file.
     *
     * @param shown its path as the user typed it
     * @return the event, or null where the file could not be read at all; what is at fault in it is null
     */
    public static Event read(Path path, String shown, Faults faults) {
        Node.Mapping tree = YamlReader.read(path, shown, faults);
        return tree == null ? null : new EventReader(path, shown, tree, faults).event();
    }

    /** Reads what would stand in an event's file from a block of another one. */
    public static Event read(Node.Mapping block, String shown, Faults faults) {
        return new EventReader(null, shown, block, faults).event();
    }

    private Event event() {
        String name = NAME.read(fields);
        String role = ROLE.read(fields);
        StageReader stages = StageReader.of(fields, faults);
        LocalDate own = fields.day("date");
        LocalDate date = stages == null ? own : stages.first();
        LocalTime start = start();
        ZoneId zone = zone(offset(), date, start);
        String aim = AIM.read(fields);
        Event.Rules rules = EventRulesReader.read(fields.fields("rules"));
        Event event = ofTheDay(Event.builder().name(name).file(shown).role(role).date(date).start(start).zone(zone).aim(aim).rules(rules).bike(bike()),
                date, start, rules, new EventConditions(pumped(), changes(), travel(date), hours(date))).lines(lines()).build();
        Event whole = stages == null ? event : event.with(race(stages, event));
        fields.done();
        return whole;
    }

    /** What holds on every day of an event. */
    private record EventConditions(Event.InflationPlace pumped, Map<Work, Double> changes, Travel travel, WorkHours hours) {
    }

    /** Adds the keys of one day and its course. */
    private Event.Builder ofTheDay(Event.Builder to, LocalDate date, LocalTime start, Event.Rules rules, EventConditions shared) {
        Integer laps = LAPS.read(fields);
        timeLimit = TIME_LIMIT.read(fields);
        Double group = GROUP_SHARE.read(fields);
        Event.Forecast forecast = new ForecastReader(path, date, start, fields.has("start"), faults).read(fields);
        List<Event.Support> support = support();
        Double height = START_HEIGHT.read(fields);
        Event.Plan plan = new Event.Plan(cutoffs(start), shared.pumped(), shared.changes(), PitReader.read(fields, laps, rules, faults), shared.travel(), shared.hours(), null);
        return to.laps(laps).timeLimit(timeLimit).groupShare(group).forecast(forecast).support(support).supportKnown(fields.has("support")).startHeight(height).plan(plan);
    }

    private StageRace race(StageReader stages, Event whole) {
        List<StageRace.RaceStage> out = new ArrayList<>();
        for (StageReader.StageBlock each : stages.blocks()) {
            Event day = new EventReader(path, shown, each.fields(), faults).stage(each, out.size() + 1, whole);
            if (each.course() != null) {
                out.add(new StageRace.RaceStage(each.course(), day, each.fields().lineOf("course")));
            }
        }
        StageRace race = new StageRace(out, stages.changes(), fields.has(StageReader.CHANGES_KEY), 0);
        List<StageRace.RaceStage> placed = new ArrayList<>();
        for (int i = 0; i < out.size(); i++) {
            placed.add(new StageRace.RaceStage(out.get(i).course(), out.get(i).day().with(race.at(i + 1)), out.get(i).line()));
        }
        return new StageRace(placed, race.mayChange(), race.stated(), 0);
    }

    /** The event of one stage: its own keys, and those of the whole race that hold on every day. */
    private Event stage(StageReader.StageBlock block, int number, Event whole) {
        LocalTime own = start();
        LocalTime start = own == null ? whole.start() : own;
        EventConditions shared = new EventConditions(whole.plan().pumped(), whole.plan().changes(), number == 1 ? whole.plan().travel() : Travel.NONE, number == 1 ? whole.plan().hours() : null);
        Event.Builder to = Event.builder().name((whole.name().isEmpty() ? "" : whole.name() + ", ") + "stage " + number).file(shown).role(whole.role()).date(block.date())
                .start(start).zone(whole.zone()).aim(whole.aim()).rules(whole.rules()).bike(whole.bike());
        Event day = ofTheDay(to, block.date(), start, whole.rules(), shared).lines(new Event.Lines(located(fields, LOCATED))).build();
        fields.done();
        return day.groupShare() == null && whole.groupShare() != null ? day.inCompany(whole.groupShare()) : day;
    }

    private static Double value(FieldReader from, String key, Dimension dimension, double least, double most, String range) {
        Amount amount = from.amount(key, dimension, least, most, range);
        return amount == null ? null : Double.valueOf(amount.inBase());
    }

    /** Read later, with the rider's own block, by the reader of such blocks. */
    private Node.Mapping bike() {
        Node node = fields.node("bike");
        if (node instanceof Node.Mapping block) {
            return block;
        }
        fields.fields("bike");
        return null;
    }

    private LocalTime start() {
        Node.Scalar value = fields.scalar("start", CLOCK);
        if (value == null) {
            return null;
        }
        LocalTime start = ClockTime.of(value.text());
        if (start == null) {
            fields.fault("start", value.describe(), CLOCK, "");
        }
        return start;
    }

    private ZoneOffset offset() {
        Node.Scalar value = fields.scalar("utc offset", OFFSET);
        if (value == null) {
            return null;
        }
        String text = value.text();
        int[] parts = text.startsWith("+") || text.startsWith("-") ? ClockTime.numbers(text.substring(1), "dd:dd") : null;
        int minutes = parts == null || parts[1] > 59 ? 9999 : (text.charAt(0) == '-' ? -1 : 1) * (parts[0] * 60 + parts[1]);
        if (minutes < -12 * 60 || minutes > 14 * 60) {
            fields.fault("utc offset", value.describe(), OFFSET, "");
            return null;
        }
        return ZoneOffset.ofTotalSeconds(minutes * 60);
    }

    /** The zone by its name where one is written, else the offset; beside an offset it must have that on the day. */
    private ZoneId zone(ZoneOffset offset, LocalDate date, LocalTime start) {
        Node.Scalar value = fields.scalar("zone", ZONE);
        if (value == null) {
            return offset;
        }
        ZoneId zone = TimeZones.of(value.text());
        if (zone == null) {
            fields.fault("zone", value.describe(), ZONE, Spelling.didYouMean(value.text(), TimeZones.names()));
            return offset;
        }
        if (offset != null && !TimeZones.has(zone, offset, date, start)) {
            fields.fault("utc offset", fields.node("utc offset").describe(), "the offset of " + zone.getId()
                    + (date == null ? "" : " on " + date + ", " + TimeZones.written(TimeZones.on(zone, date, start))),
                    "Leave one of the two lines out; by the zone, summer time is reckoned with.");
        }
        return zone;
    }

    private Event.Lines lines() {
        Map<String, Integer> out = located(fields, LOCATED);
        if (fields.node("time to change") instanceof Node.Mapping block) {
            lines(new FieldReader(shown, block, faults), "time to change/", Work.words(), out);
        }
        return new Event.Lines(out);
    }

    private static Map<String, Integer> located(FieldReader from, List<String> keys) {
        Map<String, Integer> out = new HashMap<>();
        lines(from, "", keys, out);
        return out;
    }

    private static void lines(FieldReader from, String path, List<String> keys, Map<String, Integer> to) {
        for (String key : keys) {
            if (from.has(key)) {
                to.put(path + key, from.lineOf(key));
            }
        }
    }

    private List<Event.Cutoff> cutoffs(LocalTime start) {
        List<Event.Cutoff> out = new ArrayList<>();
        Map<Event.Cutoff, FieldReader> written = new IdentityHashMap<>();
        for (FieldReader each : fields.blocks("cut-offs")) {
            each.required("at", "the distance from the start of the event, over all laps");
            Double at = value(each, "at", Dimension.LENGTH, 1, 3_000_000, "a distance from 1 m to 3000 km");
            Double within = value(each, "within", Dimension.TIME, 60, 240 * HOUR, "a time from the start, from 1 min to 240 h");
            Double by = by(each, start);
            if (each.has("within") == each.has("by")) {
                faults.add(shown, each.line(), "cut-offs", each.has("by") ? "both a time of day and a time from the start"
                        : "a point without a latest time", "by or within", "Write \"by: 12:30\", or \"within: 4:30 h\" from the start.");
            } else if (at != null && (within != null || by != null)) {
                Event.Cutoff cutoff = new Event.Cutoff(at, within != null ? within : by);
                out.add(cutoff);
                written.put(cutoff, each);
            }
            each.done();
        }
        out.sort(Comparator.comparingDouble(Event.Cutoff::at));
        for (int i = 0; i < out.size(); i++) {
            believable(out.get(i), i == 0 ? null : out.get(i - 1), written.get(out.get(i)));
        }
        return out;
    }

    /** Who may be later at the next point cannot have to be earlier, and nobody has to ride faster than anybody can. */
    private void believable(Event.Cutoff cutoff, Event.Cutoff before, FieldReader from) {
        String key = from.has("by") ? "by" : "within";
        String found = from.node(key).describe() + " at " + from.node("at").describe();
        String mend = key.equals("by") ? "For a time on another day write \"within: 26:30 h\", from the start." : "";
        if (before != null && cutoff.at() == before.at()) {
            from.fault("at", from.node("at").describe() + " a second time", "each point once", "");
        } else if (before != null && cutoff.within() <= before.within()) {
            from.fault(key, found, "a later time than at the point before", mend);
        } else if (cutoff.at() / cutoff.within() > FASTEST) {
            from.fault(key, found, "a time that can be ridden, at most 60 km/h from the start", mend);
        } else if (timeLimit != null && cutoff.within() > timeLimit) {
            from.fault(key, found, "no later than the time limit of the whole", mend);
        }
    }

    /** A time of day as seconds from the start: on the next day where it is not after the start's. */
    private Double by(FieldReader from, LocalTime start) {
        Node.Scalar value = from.scalar("by", CLOCK);
        LocalTime by = value == null ? null : ClockTime.of(value.text());
        if (value != null && by == null) {
            from.fault("by", value.describe(), CLOCK, "");
        } else if (by != null && start == null) {
            from.fault("by", value.describe(), "a time of day only where the start is known",
                    "Add a line \"start: 08:00\", or write \"within: 4:30 h\" from the start.");
        }
        if (by == null || start == null) {
            return null;
        }
        int seconds = by.toSecondOfDay() - start.toSecondOfDay();
        return seconds > 0 ? seconds : 24 * HOUR + seconds;
    }

    private Event.InflationPlace pumped() {
        FieldReader from = fields.fields("pumped at");
        if (from == null) {
            return null;
        }
        Event.InflationPlace pumped = new Event.InflationPlace(value(from, "temperature", Dimension.TEMPERATURE, -40, 55, "a temperature from -40 C to 55 C"),
                value(from, "height", Dimension.LENGTH, -450, 9000, "a height from -450 m to 9000 m"));
        from.done();
        return pumped;
    }

    private Map<Work, Double> changes() {
        FieldReader from = fields.fields("time to change");
        Map<Work, Double> out = new EnumMap<>(Work.class);
        if (from == null) {
            return out;
        }
        for (Work what : Work.values()) {
            Double seconds = value(from, what.word(), Dimension.TIME, 0, 240 * HOUR, "a time from 0 min to 240 h");
            if (seconds != null) {
                out.put(what, seconds);
            }
        }
        from.done();
        return out;
    }

    private Travel travel(LocalDate date) {
        Travel travel = Travel.read(fields);
        if (travel != null) {
            travel.check(fields, date);
        }
        return travel == null ? Travel.NONE : travel;
    }

    private WorkHours hours(LocalDate date) {
        WorkHours hours = WorkHoursReader.read(fields);
        if (hours != null && date == null && !fields.has("date") && (hours.varies() || hours.from() != null)) {
            fields.fault(WorkHoursReader.KEY, "evenings by their day, and no date of the event", "the date from which a plan by evening counts back",
                    "Add a line \"date: 2026-05-09\", or write one time for every evening.");
        }
        return hours;
    }

    private List<Event.Support> support() {
        Node node = fields.node("support");
        if (node instanceof Node.Scalar word && word.text().equals("none")) {
            return List.of();
        }
        if (node instanceof Node.Scalar) {
            fields.fault("support", node.describe(), "a list of points, or none", "Start each point with a dash: \"- {at: 42 km, water: yes}\".");
            return List.of();
        }
        List<Event.Support> out = new ArrayList<>();
        for (FieldReader each : fields.blocks("support")) {
            Event.Support point = point(each);
            if (point != null) {
                out.add(point);
            }
        }
        out.sort(Comparator.comparingDouble(Event.Support::at));
        return out;
    }

    private Event.Support point(FieldReader from) {
        from.required("at", "the distance from the start of the event, over all laps");
        Double at = value(from, "at", Dimension.LENGTH, 0, 3_000_000, "a distance from 0 km to 3000 km");
        Boolean water = from.yesNo("water");
        Boolean food = from.yesNo("food");
        Boolean bag = from.yesNo("bag");
        if (!from.has("water") && !from.has("food") && !from.has("bag")) {
            faults.add(shown, from.line(), "support", "a point that offers nothing", "water, food or bag",
                    "Add what there is, such as \"water: yes\".");
        }
        from.done();
        return at == null ? null : new Event.Support(at, yes(water), yes(food), yes(bag), from.line());
    }

    private static boolean yes(Boolean answer) {
        return answer != null && answer;
    }
}
