package courseworthy.debrief;

import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Which outcome bears on which topic, and which way it points. All of it is common practice without a source. What may have several
 * causes is left out on purpose: cramps bear on nothing here, since what brings them on is not settled; a flat without a known cause
 * bears on no casing; faded power on no food.
 */
public final class Outcomes {

    /** What one answer to a question bears on. */
    private record Bearing(String topic, Way way, String why) {
    }

    /** The questions that are answered by one word, with their words. */
    private static final Map<String, Map<String, List<Bearing>>> ASKED = new LinkedHashMap<>();

    static {
        ask("spun out", "never", on("hardest gear", Way.RIGHT, "the hardest gear was never too small"));
        ask("spun out", "a little", on("hardest gear", Way.RIGHT, "to spin out a little on the fastest pieces costs next to nothing"));
        ask("spun out", "long", on("hardest gear", Way.MORE, "a harder gear would have been used"));
        ask("clothes", "cold", on("clothing", Way.MORE, "the rider was cold"));
        ask("clothes", "right", on("clothing", Way.RIGHT, "the rider was neither cold nor hot"));
        ask("clothes", "hot", on("clothing", Way.LESS, "the rider was too hot"));
        ask("fingers", "cold", on("gloves", Way.MORE, "the fingers were cold"));
        ask("fingers", "right", on("gloves", Way.RIGHT, "the fingers were neither cold nor hot"));
        ask("fingers", "hot", on("gloves", Way.LESS, "the fingers were too hot"));
        ask("feet", "cold", on("shoes", Way.ANOTHER, "the feet were cold"));
        ask("feet", "right", on("shoes", Way.RIGHT, "the feet were well"));
        ask("feet", "sore", on("shoes", Way.ANOTHER, "the feet were sore"));
        ask("hands", "fine", on("grips or tape", Way.RIGHT, "the hands stayed well"));
        ask("hands", "sore", on("grips or tape", Way.ANOTHER, "the hands were sore"));
        ask("hands", "numb", on("grips or tape", Way.ANOTHER, "the hands went numb"));
        ask("seat", "fine", on("saddle", Way.RIGHT, "the saddle was no trouble"));
        ask("seat", "sore", on("saddle", Way.ANOTHER, "the saddle hurt"));
        ask("stomach", "fine", on("food", Way.RIGHT, "the stomach took what was eaten"));
        ask("stomach", "upset", on("food", Way.LESS, "the stomach did not take what was eaten"));
        ask("cramps", "no");
        ask("cramps", "yes");
        ask("brakes", "fine", on("front rotor", Way.RIGHT, "the brakes held"), on("rear rotor", Way.RIGHT, "the brakes held"),
                on("pad compound", Way.RIGHT, "the brakes held"));
        ask("brakes", "faded", on("front rotor", Way.MORE, "a larger rotor carries off more heat"),
                on("rear rotor", Way.MORE, "a larger rotor carries off more heat"));
        ask("fork bottomed", "never", on("fork travel", Way.RIGHT, "the travel was enough"));
        ask("fork bottomed", "rarely", on("fork travel", Way.RIGHT, "the travel was enough and was used"),
                on("front sag", Way.RIGHT, "the travel was used and seldom used up"));
        ask("fork bottomed", "often", on("front sag", Way.LESS, "a firmer spring keeps the fork off its end"));
        ask("drivetrain", "fine", on("lubricant", Way.RIGHT, "the chain ran well to the end"), on("chain", Way.RIGHT, "the chain ran well to the end"),
                on("cassette", Way.RIGHT, "no gear skipped"));
        ask("drivetrain", "noisy", on("lubricant", Way.ANOTHER, "the lubricant did not last"));
        ask("drivetrain", "skipped", on("chain", Way.ANOTHER, "the chain skipped"), on("cassette", Way.ANOTHER, "the chain skipped on it"));
        ask("spray", "little", on("mudguard", Way.RIGHT, "spray was no trouble"));
        ask("spray", "much", on("mudguard", Way.MORE, "spray was a trouble"));
        ask("seen", "well", on("lights", Way.RIGHT, "the light was enough"));
        ask("seen", "too little", on("lights", Way.MORE, "the light was too little"));
        ask("lost the way", "no", on("navigation", Way.RIGHT, "the way was found"));
        ask("lost the way", "yes", on("navigation", Way.MORE, "the way was lost"));
    }

    /** What can run out, and the topic that says how much to take. */
    static final Map<String, String> RUNS_OUT = new LinkedHashMap<>();

    static {
        RUNS_OUT.put("water", "water");
        RUNS_OUT.put("food", "food");
        RUNS_OUT.put("plugs", "plugs");
        RUNS_OUT.put("tubes", "tube");
        RUNS_OUT.put("battery", "battery reserve");
        RUNS_OUT.put("light", "light run time");
    }

    /** What causes a flat. */
    public static final List<String> CAUSES = List.of("cut", "pinch", "hole", "burp", "not known");
    /** What mends it. */
    public static final List<String> MENDS = List.of("sealant", "plugs", "tube", "not at all");
    /** Why one walks. */
    public static final List<String> REASONS = List.of("gear", "ground", "legs", "traffic");
    public static final List<String> WHEELS = List.of("front", "rear");

    private Outcomes() {
    }

    private static Bearing on(String topic, Way way, String why) {
        return new Bearing(topic, way, why);
    }

    private static void ask(String question, String answer, Bearing... bearings) {
        ASKED.computeIfAbsent(question, each -> new LinkedHashMap<>()).put(answer, List.of(bearings));
    }

    /** The questions answered by one word, in order. */
    public static List<String> questions() {
        return List.copyOf(ASKED.keySet());
    }

    /** The words that answer a question. */
    public static List<String> answers(String question) {
        return List.copyOf(ASKED.get(question).keySet());
    }

    /** What can run out. */
    public static List<String> runsOut() {
        return List.copyOf(RUNS_OUT.keySet());
    }

    /** What an answer says. */
    static List<Told> of(String question, String answer) {
        List<Told> out = new ArrayList<>();
        for (Bearing bearing : ASKED.get(question).get(answer)) {
            out.add(told(question + ": " + answer, bearing.topic(), bearing.way(), bearing.why()));
        }
        return out;
    }

    /** No flat in the whole event. */
    static List<Told> noFlats() {
        List<Told> out = new ArrayList<>();
        for (String wheel : WHEELS) {
            out.add(told("flats: none", wheel + " tyre casing", Way.RIGHT, "it came through without a flat"));
            out.add(told("flats: none", wheel + " sealant", Way.RIGHT, "it came through without a flat"));
        }
        return out;
    }

    /**
     * A flat.
     *
     * @param what    it in words
     * @param wheel   front or rear
     * @param cause   one of {@link #CAUSES}
     * @param mend    one of {@link #MENDS}; null where not told
     */
    static List<Told> flat(String what, String wheel, String cause, String mend) {
        List<Told> out = new ArrayList<>();
        switch (cause) {
            case "cut" -> out.add(told(what, wheel + " tyre casing", Way.MORE, "a stouter casing is cut less easily"));
            case "pinch" -> out.add(told(what, wheel + " tyre pressure", Way.MORE, "the tyre was pinched against the rim"));
            case "burp" -> out.add(told(what, wheel + " tyre pressure", Way.MORE, "the tyre let air out at the rim"));
            default -> {
                // A thorn goes through any casing, and what is not known bears on nothing.
            }
        }
        if ("sealant".equals(mend)) {
            out.add(told(what, wheel + " sealant", Way.RIGHT, "sealant closed the hole"));
        } else if ("plugs".equals(mend)) {
            out.add(told(what, "plugs", Way.RIGHT, "they were needed and were there"));
        } else if ("tube".equals(mend)) {
            out.add(told(what, "tube", Way.RIGHT, "it was needed and was there"));
        }
        return out;
    }

    /** Whether the rims struck the ground: none, or which. */
    static List<Told> rimStrikes(List<String> wheels) {
        List<Told> out = new ArrayList<>();
        for (String wheel : WHEELS) {
            boolean struck = wheels.contains(wheel);
            out.add(told("rim strikes: " + (struck ? wheel : "none at the " + wheel), wheel + " tyre pressure", struck ? Way.MORE : Way.RIGHT,
                    struck ? "the rim struck the ground" : "the rim never struck the ground"));
        }
        return out;
    }

    /** Whether a wheel slid where it should have held: none, or which. */
    static List<Told> slid(List<String> wheels) {
        List<Told> out = new ArrayList<>();
        for (String wheel : WHEELS) {
            boolean slid = wheels.contains(wheel);
            out.add(told("slid: " + (slid ? wheel : "not the " + wheel), wheel + " tyre tread", slid ? Way.MORE : Way.RIGHT,
                    slid ? "the wheel slid where it should have held" : "the wheel held"));
        }
        return out;
    }

    static List<Told> neverWalked() {
        return List.of(told("walked: none", "easiest gear", Way.RIGHT, "every climb was ridden"));
    }

    /** Walking a piece; only for want of a gear does it bear on the gears. */
    static List<Told> walked(String what, String reason) {
        return reason.equals("gear") ? List.of(told(what, "easiest gear", Way.LESS, "an easier gear would have been ridden")) : List.of();
    }

    /** What ran out did not suffice; what else there was did, but for what is carried for mishaps. */
    static List<Told> ranOut(List<String> out) {
        List<Told> all = new ArrayList<>();
        for (Map.Entry<String, String> each : RUNS_OUT.entrySet()) {
            boolean gone = out.contains(each.getKey());
            boolean forMishaps = each.getKey().equals("plugs") || each.getKey().equals("tubes");
            if (gone) {
                all.add(told("ran out of: " + each.getKey(), each.getValue(), Way.MORE, "it ran out"));
            } else if (!forMishaps) {
                all.add(told(each.getKey() + " did not run out", each.getValue(), Way.RIGHT, "it lasted"));
            }
        }
        return all;
    }

    private static Told told(String what, String topic, Way way, String why) {
        return new Told(what, Topics.of(topic), way, why);
    }
}
