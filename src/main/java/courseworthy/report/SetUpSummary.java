package courseworthy.report;

import courseworthy.decision.Decision;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.task.Brief;
import courseworthy.units.PressureSteps;
import courseworthy.worth.PressureSettings;
import courseworthy.worth.TyreSetting;
import java.util.ArrayList;
import java.util.List;

/** The call in a handful of lines, for a reader with ten seconds. */
final class SetUpSummary {

    /** One line: what it is about, and the values. */
    record Entry(String about, String values) {
    }

    private final List<Decision> decisions;
    private final Demands demands;

    private SetUpSummary(List<Decision> decisions, Demands demands) {
        this.decisions = decisions;
        this.demands = demands;
    }

    static List<Entry> of(Brief brief) {
        List<Entry> out = of(brief.decisions(), brief.demands());
        if (brief.build() != null && brief.build().bike() != null) {
            out.add(out.size() - 1, new Entry("Build", brief.build().bike() + pressures(brief)));
        }
        if (brief.outlook().shortfall() != null) {
            out.add(out.size() - 1, new Entry("Too hard", GearShortfallPhrases.terse(brief.outlook().shortfall())));
        }
        return out;
    }

    /** What the tyres of the build are given, where it is another pressure than the call's; empty where it is not. */
    private static String pressures(Brief brief) {
        PressureSettings set = brief.outlook().pressures();
        List<String> out = new ArrayList<>();
        if (set != null) {
            pressure(out, "front ", brief, set.front());
            pressure(out, "rear ", brief, set.rear());
        }
        return out.isEmpty() ? ", see THE BUILD" : ", see THE BUILD; its tyres: " + String.join(", ", out);
    }

    private static void pressure(List<String> out, String end, Brief brief, TyreSetting tyre) {
        String text = tyre == null ? "" : PressureSteps.text(tyre.start(), tyre.ceiling());
        if (tyre != null && !text.equals(new SetUpSummary(brief.decisions(), brief.demands()).value(end + "tyre pressure"))) {
            out.add(end + text);
        }
    }

    static List<Entry> of(List<Decision> decisions, Demands demands) {
        return new SetUpSummary(decisions, demands).entries();
    }

    private Decision on(String topic) {
        for (Decision decision : decisions) {
            if (decision.topic().name().equals(topic)) {
                return decision;
            }
        }
        throw new IllegalArgumentException("no decision on " + topic);
    }

    private List<Entry> entries() {
        List<Entry> out = new ArrayList<>();
        add(out, "Bike", one("bike"), after("fork ", "fork travel"), after("rear ", "rear travel"), seatpost());
        add(out, "Tyres", both("tyre width", ""), both("tyre tread", " tread"), both("tyre casing", " casing"), insert());
        add(out, "Pressure", after("front ", "front tyre pressure"), after("rear ", "rear tyre pressure"));
        add(out, "Wheels", both("rim material", ""), both("rim depth", ""));
        add(out, "Gears", gears(), before("chainrings", value("chainrings").equals("two") ? " chainrings" : " chainring"));
        add(out, "Carry", water(), before("food", " food"), count("plugs", "plug"), count("tube", "tube"), lights());
        return out;
    }

    private static void add(List<Entry> out, String about, String... values) {
        StringBuilder line = new StringBuilder();
        for (String value : values) {
            if (!value.isEmpty()) {
                line.append(line.length() == 0 ? "" : ", ").append(value);
            }
        }
        if (line.length() > 0) {
            out.add(new Entry(about, line.toString()));
        }
    }

    /** The decision's text; empty where it does not apply. */
    private String value(String topic) {
        Decision decision = on(topic);
        return decision.status() == Decision.Status.NOT_APPLICABLE ? "" : decision.text();
    }

    /** A mark where advice on any of these was divided. */
    private String mark(String... topics) {
        for (String topic : topics) {
            if (on(topic).standing() == Decision.Standing.SPLIT) {
                return " (split)";
            }
        }
        return "";
    }

    private String one(String topic) {
        return value(topic) + mark(topic);
    }

    private String before(String topic, String noun) {
        String value = value(topic);
        return value.isEmpty() ? "" : value + noun + mark(topic);
    }

    private String after(String noun, String topic) {
        String value = value(topic);
        return value.isEmpty() ? "" : noun + value + mark(topic);
    }

    /** Front and rear: one value where they are equal. */
    private String both(String topic, String noun) {
        String front = "front " + topic;
        String rear = "rear " + topic;
        String value = value(front);
        String same = noun.isEmpty() && topic.endsWith("width") ? " front and rear" : noun;
        String values = value.equals(value(rear)) ? value + same : value + " front and " + value(rear) + " rear" + noun;
        return values + mark(front, rear);
    }

    /** Teeth of one real pair where there is one, else the ratios. */
    private String gears() {
        String[] easiest = alternatives("easiest gear");
        String[] hardest = alternatives("hardest gear");
        String gears = easiest[0] + " to " + hardest[0];
        for (String easy : easiest) {
            for (String hard : hardest) {
                if (ring(easy).equals(ring(hard))) {
                    return easy + " to " + hard + mark("easiest gear", "hardest gear");
                }
            }
        }
        return gears + mark("easiest gear", "hardest gear");
    }

    /** Pairs of ring and sprocket that have the decided ratio; the ratio itself where none is known. */
    private String[] alternatives(String topic) {
        String label = on(topic).label();
        return label.isEmpty() ? new String[] {value(topic)} : label.split(" or ");
    }

    private static String ring(String gear) {
        int by = gear.indexOf('x');
        return by < 0 ? gear : gear.substring(0, by);
    }

    private String insert() {
        boolean front = value("front insert").equals("fitted");
        boolean rear = value("rear insert").equals("fitted");
        return front && rear ? "inserts" : front ? "insert in front" : rear ? "insert at the rear" : "";
    }

    private String seatpost() {
        String stroke = value("dropper stroke");
        return stroke.isEmpty() ? before("seatpost", " seatpost") : "dropper " + stroke + mark("seatpost", "dropper stroke");
    }

    /** What the start is left with, and the most from a tap on the way; for an unknown gap or in unknown heat a least amount. */
    private String water() {
        MeasureValue most = demands.get(Measure.WATER_OVER_THE_HOTTEST_GAP);
        boolean known = most != null && demands.known(Measure.HOTTEST_TEMPERATURE);
        Long start = on("water").value();
        String later = most == null || start == null || most.mid() <= start ? ""
                : " (up to " + Measure.WATER_OVER_THE_HOTTEST_GAP.scale().text(most.mid()) + " on the way)";
        return (known ? "" : "at least ") + before("water", " water") + later;
    }

    private String lights() {
        String lights = value("lights");
        return lights.equals("none") || lights.isEmpty() ? "" : "lights " + lights + mark("lights");
    }

    private String count(String topic, String noun) {
        String number = value(topic);
        return number.isEmpty() || number.equals("0") ? "" : number + " " + noun + (number.equals("1") ? "" : "s") + mark(topic);
    }
}
