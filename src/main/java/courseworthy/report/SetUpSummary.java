package courseworthy.report;

import courseworthy.call.Call;
import courseworthy.call.Firmness;
import courseworthy.call.FirmnessGrader;
import courseworthy.decision.Decision;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.task.Brief;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.units.PressureSteps;
import courseworthy.worth.PressureSettings;
import courseworthy.worth.TyreSetting;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The call in a handful of lines, for a reader with ten seconds. */
final class SetUpSummary {

    /**
     * One line.
     *
     * @param about   what it is about
     * @param parts   the values, the leading ones first
     * @param leading how many of them lead
     */
    record Entry(String about, List<String> parts, int leading) {

        Entry(String about, String value) {
            this(about, List.of(value), 1);
        }

        /** All the values. */
        String values() {
            return String.join(", ", parts);
        }
    }

    static final String PRESSURE = "Pressure";
    static final String GEARS = "Gears";
    static final String BUILD = "Build";
    static final String TOO_HARD = "Too hard";
    /** Where the parts of the build stand. */
    private static final String SEE_BUILD = "see THE BUILD";

    private final List<Decision> decisions;
    /** Behind what is advised on thin grounds. */
    static final String UNSURE = " (unsure)";

    private final Set<Topic> thin = new HashSet<>();
    private final Demands demands;

    private SetUpSummary(List<Decision> decisions, List<Firmness> firmness, Demands demands) {
        this.decisions = decisions;
        firmness.stream().filter(each -> each.grade().level() == Firmness.FirmnessLevel.THIN).forEach(each -> thin.add(each.decision().topic()));
        this.demands = demands;
    }

    static List<Entry> of(Brief brief) {
        List<Entry> out = new SetUpSummary(brief.decisions(), brief.firmness(), brief.demands()).entries();
        if (brief.build() != null && brief.build().bike() != null) {
            out.add(out.size() - 1, new Entry(BUILD, List.of(brief.build().bike().toString(), SEE_BUILD + pressures(brief)), 1));
        }
        if (brief.outlook().shortfall() != null) {
            out.add(out.size() - 1, new Entry(TOO_HARD, GearShortfallPhrases.terse(brief.outlook().shortfall())));
        }
        return out;
    }

    /** What the tyres of the build are given, where it is another pressure than the call's; empty where it is not. */
    private static String pressures(Brief brief) {
        PressureSettings set = brief.outlook().pressures();
        List<String> out = new ArrayList<>();
        if (set != null) {
            pressure(out, Topics.FRONT_TYRE_PRESSURE, brief, set.front());
            pressure(out, Topics.REAR_TYRE_PRESSURE, brief, set.rear());
        }
        return out.isEmpty() ? "" : "; its tyres: " + String.join(", ", out);
    }

    private static void pressure(List<String> out, Topic pressure, Brief brief, TyreSetting tyre) {
        String text = tyre == null ? "" : PressureSteps.text(tyre.start(), tyre.ceiling());
        if (tyre != null && !text.equals(new SetUpSummary(brief.decisions(), brief.firmness(), brief.demands()).value(pressure))) {
            out.add(pressure.end().word() + " " + text);
        }
    }

    static List<Entry> of(Call call) {
        return new SetUpSummary(call.decisions(), FirmnessGrader.of(call), call.demands()).entries();
    }

    private Decision on(Topic topic) {
        for (Decision decision : decisions) {
            if (decision.topic().equals(topic)) {
                return decision;
            }
        }
        throw new IllegalArgumentException("no decision on " + topic);
    }

    private List<Entry> entries() {
        List<Entry> out = new ArrayList<>();
        add(out, "Bike", one(Topics.BIKE), after("fork ", Topics.FORK_TRAVEL), after("rear ", Topics.REAR_TRAVEL), seatpost());
        add(out, "Tyres", both(Topics.FRONT_TYRE_WIDTH, ""), both(Topics.FRONT_TYRE_TREAD, " tread"), both(Topics.FRONT_TYRE_CASING, " casing"), insert());
        lead(out, 2, PRESSURE, after("front ", Topics.FRONT_TYRE_PRESSURE), after("rear ", Topics.REAR_TYRE_PRESSURE));
        lead(out, 2, "Wheels", both(Topics.FRONT_RIM_MATERIAL, ""), both(Topics.FRONT_RIM_DEPTH, ""));
        add(out, GEARS, gears(), before(Topics.CHAINRINGS, value(Topics.CHAINRINGS).equals("two") ? " chainrings" : " chainring"));
        add(out, "Carry", water(), before(Topics.FOOD, " food"), count(Topics.PLUGS, "plug"), count(Topics.TUBES, "tube"), lights());
        return out;
    }

    private static void add(List<Entry> out, String about, String... values) {
        lead(out, 1, about, values);
    }

    private static void lead(List<Entry> out, int leading, String about, String... values) {
        List<String> parts = new ArrayList<>(List.of(values));
        parts.removeIf(String::isEmpty);
        if (!parts.isEmpty()) {
            out.add(new Entry(about, List.copyOf(parts), Math.min(leading, parts.size())));
        }
    }

    /** The decision's text; empty where it does not apply. */
    private String value(Topic topic) {
        Decision decision = on(topic);
        return decision.status() == Decision.Status.NOT_APPLICABLE ? "" : decision.text();
    }

    /** The words where any of these is thin. */
    private String mark(Topic... topics) {
        for (Topic topic : topics) {
            if (thin.contains(topic)) {
                return UNSURE;
            }
        }
        return "";
    }

    private String one(Topic topic) {
        return value(topic) + mark(topic);
    }

    private String before(Topic topic, String noun) {
        String value = value(topic);
        return value.isEmpty() ? "" : value + noun + mark(topic);
    }

    private String after(String noun, Topic topic) {
        String value = value(topic);
        return value.isEmpty() ? "" : noun + value + mark(topic);
    }

    /** Front and rear: one value where they are equal. */
    private String both(Topic front, String noun) {
        Topic rear = front.otherEnd();
        String value = value(front);
        String same = front == Topics.FRONT_TYRE_WIDTH ? " front and rear" : noun;
        String values = value.equals(value(rear)) ? value + same : value + " front and " + value(rear) + " rear" + noun;
        return values + mark(front, rear);
    }

    /** Teeth of one real pair where there is one, else the ratios. */
    private String gears() {
        String[] easiest = alternatives(Topics.EASIEST_GEAR);
        String[] hardest = alternatives(Topics.HARDEST_GEAR);
        String gears = easiest[0] + " to " + hardest[0];
        for (String easy : easiest) {
            for (String hard : hardest) {
                if (ring(easy).equals(ring(hard))) {
                    return easy + " to " + hard + mark(Topics.EASIEST_GEAR, Topics.HARDEST_GEAR);
                }
            }
        }
        return gears + mark(Topics.EASIEST_GEAR, Topics.HARDEST_GEAR);
    }

    /** Pairs of ring and sprocket that have the decided ratio; the ratio itself where none is known. */
    private String[] alternatives(Topic topic) {
        String label = on(topic).label();
        return label.isEmpty() ? new String[] {value(topic)} : label.split(" or ");
    }

    private static String ring(String gear) {
        int by = gear.indexOf('x');
        return by < 0 ? gear : gear.substring(0, by);
    }

    private String insert() {
        boolean front = value(Topics.FRONT_INSERT).equals("fitted");
        boolean rear = value(Topics.REAR_INSERT).equals("fitted");
        return front && rear ? "inserts" : front ? "insert in front" : rear ? "insert at the rear" : "";
    }

    private String seatpost() {
        String stroke = value(Topics.DROPPER_TRAVEL);
        return stroke.isEmpty() ? before(Topics.SEATPOST, " seatpost") : "dropper " + stroke + mark(Topics.SEATPOST, Topics.DROPPER_TRAVEL);
    }

    /** What the start is left with, and the most from a tap on the way; for an unknown gap or in unknown heat a least amount. */
    private String water() {
        MeasureValue most = demands.get(Measure.WATER_OVER_THE_HOTTEST_GAP);
        boolean known = most != null && demands.known(Measure.HOTTEST_TEMPERATURE);
        Long start = on(Topics.WATER).value();
        String later = most == null || start == null || most.mid() <= start ? ""
                : " (up to " + Measure.WATER_OVER_THE_HOTTEST_GAP.scale().text(most.mid()) + " on the way)";
        return (known ? "" : "at least ") + before(Topics.WATER, " water") + later;
    }

    private String lights() {
        String lights = value(Topics.LIGHTS);
        return lights.equals("none") || lights.isEmpty() ? "" : "lights " + lights + mark(Topics.LIGHTS);
    }

    private String count(Topic topic, String noun) {
        String number = value(topic);
        return number.isEmpty() || number.equals("0") ? "" : number + " " + noun + (number.equals("1") ? "" : "s") + mark(topic);
    }
}
