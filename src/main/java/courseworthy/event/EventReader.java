package courseworthy.event;

import courseworthy.problem.Faults;
import courseworthy.problem.Spelling;
import courseworthy.text.Fields;
import courseworthy.text.Node;
import courseworthy.text.Yaml;
import courseworthy.units.Amount;
import courseworthy.units.Dimension;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Reads an event's file: a race, or the typical ride of a training bike. Bounds are wide (judgement, no source): they catch slips. */
public final class EventReader {

    /** The keys of an event's file. */
    public static final List<String> KEYS = List.of("name", "role", "date", "start", "utc offset", "laps", "aim", "cut-off",
            "group share", "forecast", "support", "rules", "start height", "bike");
    /** The keys of {@code forecast}. */
    public static final List<String> FORECAST_KEYS = List.of("low", "high", "ground", "wind", "wind from");
    /** The keys of a support point. */
    public static final List<String> SUPPORT_KEYS = List.of("at", "water", "food", "bag");
    /** The keys of {@code rules}. */
    public static final List<String> RULES_KEYS =
            List.of("aero extensions", "tyre width", "lights", "mudguards", "outside help", "kit", "edition");
    /** What a bike can be set up for. */
    public static final List<String> ROLES = List.of("training", "race");
    /** Words for a rule that allows or forbids. */
    public static final List<String> ALLOWED = List.of("forbidden", "allowed");
    /** Words for a rule that requires. */
    public static final List<String> REQUIRED = List.of("not required", "required");
    /** The compass, clockwise from north in steps of 22.5 degrees. */
    public static final List<String> COMPASS = List.of("N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE", "S", "SSW", "SW", "WSW", "W",
            "WNW", "NW", "NNW");

    private static final int LONGEST_NAME = 200;
    private static final double HOUR = 3600;
    private static final String AT_MOST = "at most ";
    private static final String DATE = "a day as YYYY-MM-DD, such as 2026-05-09";
    private static final String CLOCK = "a time of day as HH:MM, such as 07:30";
    private static final String OFFSET = "local time's offset from UTC as +HH:MM or -HH:MM, such as +02:00";

    private final String shown;
    private final Faults faults;
    private final Fields fields;

    private EventReader(String shown, Node.Mapping tree, Faults faults) {
        this.shown = shown;
        this.faults = faults;
        this.fields = new Fields(shown, tree, faults);
    }

    /**
     * Reads a file.
     *
     * @param shown its path as the user typed it
     * @return the event, or null where the file could not be read at all; what is at fault in it is null
     */
    public static Event read(Path path, String shown, Faults faults) {
        Node.Mapping tree = Yaml.read(path, shown, faults);
        return tree == null ? null : new EventReader(shown, tree, faults).event();
    }

    private Event event() {
        String name = name();
        String role = fields.word("role", ROLES);
        LocalDate date = date();
        LocalTime start = start();
        ZoneOffset offset = offset();
        Integer laps = fields.whole("laps", 1, 100);
        String aim = fields.word("aim", Event.AIMS);
        Double cutoff = value(fields, "cut-off", Dimension.TIME, 600, 240 * HOUR, "a time from 10 min to 240 h");
        Double group = value(fields, "group share", Dimension.SHARE, 0, 1, "a share from 0 % to 100 %");
        Event.Forecast forecast = forecast();
        List<Event.Support> support = support();
        Event.Rules rules = rules();
        Double height = value(fields, "start height", Dimension.LENGTH, -450, 9000, "a height from -450 m to 9000 m");
        Event event = new Event(name, shown, role, date, start, offset, laps, aim, cutoff, group, forecast, support, fields.has("support"),
                rules, height, bike());
        fields.done();
        return event;
    }

    private static Double value(Fields from, String key, Dimension dimension, double least, double most, String range) {
        Amount amount = from.amount(key, dimension, least, most, range);
        return amount == null ? null : Double.valueOf(amount.inBase());
    }

    private String name() {
        String name = fields.prose("name");
        if (name == null) {
            return "";
        }
        if (name.length() > LONGEST_NAME) {
            fields.fault("name", name.length() + " characters", "at most " + LONGEST_NAME, "");
        }
        return name.strip().replace('\n', ' ');
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

    private LocalDate date() {
        Node.Scalar value = fields.scalar("date", DATE);
        if (value == null) {
            return null;
        }
        int[] parts = numbers(value.text(), "dddd-dd-dd");
        try {
            if (parts != null) {
                return LocalDate.of(parts[0], parts[1], parts[2]);
            }
        } catch (DateTimeException e) {
            // There is no such day.
        }
        fields.fault("date", value.describe(), DATE, parts == null ? "" : "The calendar has no such day.");
        return null;
    }

    private LocalTime start() {
        Node.Scalar value = fields.scalar("start", CLOCK);
        if (value == null) {
            return null;
        }
        int[] parts = numbers(value.text(), "dd:dd");
        if (parts == null || parts[0] > 23 || parts[1] > 59) {
            fields.fault("start", value.describe(), CLOCK, "");
            return null;
        }
        return LocalTime.of(parts[0], parts[1]);
    }

    private ZoneOffset offset() {
        Node.Scalar value = fields.scalar("utc offset", OFFSET);
        if (value == null) {
            return null;
        }
        String text = value.text();
        int[] parts = text.startsWith("+") || text.startsWith("-") ? numbers(text.substring(1), "dd:dd") : null;
        int minutes = parts == null || parts[1] > 59 ? 9999 : (text.charAt(0) == '-' ? -1 : 1) * (parts[0] * 60 + parts[1]);
        if (minutes < -12 * 60 || minutes > 14 * 60) {
            fields.fault("utc offset", value.describe(), OFFSET, "");
            return null;
        }
        return ZoneOffset.ofTotalSeconds(minutes * 60);
    }

    /** The numbers in a text of a form in which {@code d} stands for a digit; null where it has another form. */
    private static int[] numbers(String text, String form) {
        if (text.length() != form.length()) {
            return null;
        }
        int[] out = new int[3];
        int part = 0;
        for (int i = 0; i < form.length(); i++) {
            char c = text.charAt(i);
            if (form.charAt(i) != 'd') {
                if (c != form.charAt(i)) {
                    return null;
                }
                part++;
            } else if (c < '0' || c > '9') {
                return null;
            } else {
                out[part] = out[part] * 10 + c - '0';
            }
        }
        return out;
    }

    private Event.Forecast forecast() {
        Fields from = fields.fields("forecast");
        if (from == null) {
            return Event.Forecast.UNKNOWN;
        }
        String range = "a temperature from -40 C to 55 C";
        Double low = value(from, "low", Dimension.TEMPERATURE, -40, 55, range);
        Double high = value(from, "high", Dimension.TEMPERATURE, -40, 55, range);
        if (low != null && high != null && low > high) {
            from.fault("low", from.node("low").describe(), "no more than the high", "");
        }
        Event.Forecast forecast = new Event.Forecast(low, high, from.word("ground", Event.Forecast.GROUNDS),
                value(from, "wind", Dimension.SPEED, 0, 50, "a mean wind from 0 m/s to 50 m/s"), windFrom(from));
        from.done();
        return forecast;
    }

    private Double windFrom(Fields from) {
        String expected = "a direction the wind comes from, such as SW or 225 deg";
        Node.Scalar value = from.scalar("wind from", expected);
        if (value == null) {
            return null;
        }
        int point = COMPASS.indexOf(value.text());
        if (point >= 0) {
            return point * 22.5;
        }
        try {
            double degrees = Amount.parse(value.text(), Dimension.ANGLE).inBase();
            if (degrees >= 0 && degrees <= 360) {
                return degrees % 360;
            }
        } catch (Amount.NotAnAmount e) {
            // Neither a point of the compass nor an angle.
        }
        from.fault("wind from", value.describe(), expected, Spelling.didYouMean(value.text(), COMPASS));
        return null;
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
        for (Fields each : fields.blocks("support")) {
            Event.Support point = point(each);
            if (point != null) {
                out.add(point);
            }
        }
        out.sort(Comparator.comparingDouble(Event.Support::at));
        return out;
    }

    private Event.Support point(Fields from) {
        from.required("at", "the distance from the start of the event, over all laps");
        Double at = value(from, "at", Dimension.LENGTH, 0, 5_000_000, "a distance from 0 km to 5000 km");
        Boolean water = from.yesNo("water");
        Boolean food = from.yesNo("food");
        Boolean bag = from.yesNo("bag");
        if (!from.has("water") && !from.has("food") && !from.has("bag")) {
            faults.add(shown, from.line(), "support", "a point that offers nothing", "water, food or bag",
                    "Add what there is, such as \"water: yes\".");
        }
        from.done();
        return at == null ? null : new Event.Support(at, yes(water), yes(food), yes(bag));
    }

    private static boolean yes(Boolean answer) {
        return answer != null && answer;
    }

    private Event.Rules rules() {
        Fields from = fields.fields("rules");
        if (from == null) {
            return Event.Rules.NONE;
        }
        String edition = from.prose("edition");
        Event.Rules rules = new Event.Rules(second(from, "aero extensions", ALLOWED), tyreWidth(from), second(from, "lights", REQUIRED),
                second(from, "mudguards", REQUIRED), second(from, "outside help", ALLOWED), List.copyOf(from.texts("kit")),
                edition == null ? "" : edition);
        from.done();
        return rules;
    }

    /** Whether the second of two words is written; null where neither is. */
    private static Boolean second(Fields from, String key, List<String> words) {
        String word = from.word(key, words);
        return word == null ? null : Boolean.valueOf(word.equals(words.get(1)));
    }

    private static Double tyreWidth(Fields from) {
        String expected = "the widest tyre allowed, such as at most 45 mm";
        Node.Scalar value = from.scalar("tyre width", expected);
        if (value == null) {
            return null;
        }
        try {
            if (value.text().startsWith(AT_MOST)) {
                double width = Amount.parse(value.text().substring(AT_MOST.length()), Dimension.LENGTH).inBase();
                if (width >= 0.018 && width <= 0.130) {
                    return width;
                }
            }
        } catch (Amount.NotAnAmount e) {
            // Said below.
        }
        from.fault("tyre width", value.describe(), expected, "Widths run from 18 mm to 130 mm.");
        return null;
    }
}
