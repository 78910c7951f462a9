package courseworthy.brief;

import courseworthy.decision.Decision;
import java.util.ArrayList;
import java.util.List;

/** The call in a handful of lines, for a reader with ten seconds. */
final class Short {

    /** One line: what it is about, and the values. */
    record Entry(String about, String values) {
    }

    private final Brief brief;

    private Short(Brief brief) {
        this.brief = brief;
    }

    static List<Entry> of(Brief brief) {
        return new Short(brief).entries();
    }

    private List<Entry> entries() {
        List<Entry> out = new ArrayList<>();
        add(out, "Bike", value("bike"), after("fork ", value("fork travel")), after("rear ", value("rear travel")), seatpost());
        add(out, "Tyres", both("tyre width"), both("tyre tread"), both("tyre casing"), insert());
        add(out, "Pressure", pressure());
        add(out, "Wheels", both("rim material"), both("rim depth"));
        add(out, "Gears", gears(), before(value("chainrings"), " chainring" + (value("chainrings").startsWith("two") ? "s" : "")));
        add(out, "Carry", before(value("water"), " water"), before(value("food"), " food"), count("plugs", "plug"), count("tube", "tube"),
                lights());
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

    /** The decision's text; marked where advice was divided or nothing is possible; empty where it does not apply. */
    private String value(String topic) {
        Decision decision = brief.on(topic);
        return switch (decision.status()) {
            case NOT_APPLICABLE -> "";
            case NONE_POSSIBLE -> "none possible";
            case SETTLED -> decision.text() + (decision.standing() == Decision.Standing.SPLIT ? " (split)" : "");
        };
    }

    /** Front and rear: one value where they are equal. */
    private String both(String topic) {
        String front = value("front " + topic);
        String rear = value("rear " + topic);
        if (front.equals(rear)) {
            return topic.endsWith("width") ? front + " front and rear" : before(front, nounOf(topic));
        }
        return front + " front and " + rear + " rear" + nounOf(topic);
    }

    private static String nounOf(String topic) {
        return topic.endsWith("casing") ? " casing" : topic.endsWith("tread") ? " tread" : "";
    }

    private String pressure() {
        return "front " + value("front tyre pressure") + ", rear " + value("rear tyre pressure");
    }

    private String gears() {
        return value("easiest gear") + " to " + value("hardest gear");
    }

    private String insert() {
        boolean front = value("front insert").startsWith("yes");
        boolean rear = value("rear insert").startsWith("yes");
        return front && rear ? "inserts" : front ? "insert in front" : rear ? "insert at the rear" : "";
    }

    private String seatpost() {
        String stroke = value("dropper stroke");
        return value("seatpost").startsWith("dropper") && !stroke.isEmpty() ? "dropper " + stroke : before(value("seatpost"), " seatpost");
    }

    private String lights() {
        String lights = value("lights");
        return lights.equals("none") || lights.isEmpty() ? "" : "lights " + lights;
    }

    private String count(String topic, String noun) {
        String number = value(topic);
        return number.isEmpty() || number.equals("0") ? "" : number + " " + noun + (number.startsWith("1") ? "" : "s");
    }

    private static String before(String text, String noun) {
        return text.isEmpty() ? "" : text + noun;
    }

    private static String after(String noun, String text) {
        return text.isEmpty() ? "" : noun + text;
    }
}
