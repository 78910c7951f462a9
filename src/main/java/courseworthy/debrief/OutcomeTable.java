package courseworthy.debrief;

import courseworthy.topic.End;
import courseworthy.topic.Topic;
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
public final class OutcomeTable {

    /** What one answer to a question bears on. */
    private record OutcomeEffect(Topic topic, Direction way, String why) {
    }

    /** The questions that are answered by one word, with their words. */
    private static final Map<String, Map<String, List<OutcomeEffect>>> ASKED = new LinkedHashMap<>();

    static {
        ask("spun out", "never", on(Topics.HARDEST_GEAR, Direction.RIGHT, "the hardest gear was never too small"));
        ask("spun out", "a little", on(Topics.HARDEST_GEAR, Direction.RIGHT, "to spin out a little on the fastest pieces costs next to nothing"));
        ask("spun out", "long", on(Topics.HARDEST_GEAR, Direction.MORE, "a harder gear would have been used"));
        ask("clothes", "cold", on(Topics.CLOTHING, Direction.MORE, "the rider was cold"));
        ask("clothes", "right", on(Topics.CLOTHING, Direction.RIGHT, "the rider was neither cold nor hot"));
        ask("clothes", "hot", on(Topics.CLOTHING, Direction.LESS, "the rider was too hot"));
        ask("fingers", "cold", on(Topics.GLOVES, Direction.MORE, "the fingers were cold"));
        ask("fingers", "right", on(Topics.GLOVES, Direction.RIGHT, "the fingers were neither cold nor hot"));
        ask("fingers", "hot", on(Topics.GLOVES, Direction.LESS, "the fingers were too hot"));
        ask("feet", "cold", on(Topics.SHOES, Direction.ANOTHER, "the feet were cold"));
        ask("feet", "right", on(Topics.SHOES, Direction.RIGHT, "the feet were well"));
        ask("feet", "sore", on(Topics.SHOES, Direction.ANOTHER, "the feet were sore"));
        ask("hands", "fine", on(Topics.GRIPS_OR_TAPE, Direction.RIGHT, "the hands stayed well"));
        ask("hands", "sore", on(Topics.GRIPS_OR_TAPE, Direction.ANOTHER, "the hands were sore"));
        ask("hands", "numb", on(Topics.GRIPS_OR_TAPE, Direction.ANOTHER, "the hands went numb"));
        ask("seat", "fine", on(Topics.SADDLE, Direction.RIGHT, "the saddle was no trouble"));
        ask("seat", "sore", on(Topics.SADDLE, Direction.ANOTHER, "the saddle hurt"));
        ask("stomach", "fine", on(Topics.FOOD, Direction.RIGHT, "the stomach took what was eaten"));
        ask("stomach", "upset", on(Topics.FOOD, Direction.LESS, "the stomach did not take what was eaten"));
        ask("cramps", "no");
        ask("cramps", "yes");
        ask("brakes", "fine", on(Topics.FRONT_ROTOR, Direction.RIGHT, "the brakes held"), on(Topics.REAR_ROTOR, Direction.RIGHT, "the brakes held"),
                on(Topics.PAD_COMPOUND, Direction.RIGHT, "the brakes held"));
        ask("brakes", "faded", on(Topics.FRONT_ROTOR, Direction.MORE, "a larger rotor carries off more heat"),
                on(Topics.REAR_ROTOR, Direction.MORE, "a larger rotor carries off more heat"));
        ask("fork bottomed", "never", on(Topics.FORK_TRAVEL, Direction.RIGHT, "the travel was enough"));
        ask("fork bottomed", "rarely", on(Topics.FORK_TRAVEL, Direction.RIGHT, "the travel was enough and was used"),
                on(Topics.FRONT_SAG, Direction.RIGHT, "the travel was used and seldom used up"));
        ask("fork bottomed", "often", on(Topics.FRONT_SAG, Direction.LESS, "a firmer spring keeps the fork off its end"));
        ask("drivetrain", "fine", on(Topics.LUBRICANT, Direction.RIGHT, "the chain ran well to the end"), on(Topics.CHAIN, Direction.RIGHT, "the chain ran well to the end"),
                on(Topics.CASSETTE, Direction.RIGHT, "no gear skipped"));
        ask("drivetrain", "noisy", on(Topics.LUBRICANT, Direction.ANOTHER, "the lubricant did not last"));
        ask("drivetrain", "skipped", on(Topics.CHAIN, Direction.ANOTHER, "the chain skipped"), on(Topics.CASSETTE, Direction.ANOTHER, "the chain skipped on it"));
        ask("spray", "little", on(Topics.MUDGUARD, Direction.RIGHT, "spray was no trouble"));
        ask("spray", "much", on(Topics.MUDGUARD, Direction.MORE, "spray was a trouble"));
        ask("seen", "well", on(Topics.LIGHTS, Direction.RIGHT, "the light was enough"));
        ask("seen", "too little", on(Topics.LIGHTS, Direction.MORE, "the light was too little"));
        ask("lost the way", "no", on(Topics.NAVIGATION, Direction.RIGHT, "the way was found"));
        ask("lost the way", "yes", on(Topics.NAVIGATION, Direction.MORE, "the way was lost"));
    }

    /** What can run out, and the topic that says how much to take. */
    static final Map<String, Topic> RUNS_OUT = new LinkedHashMap<>();

    static {
        RUNS_OUT.put("water", Topics.WATER);
        RUNS_OUT.put("food", Topics.FOOD);
        RUNS_OUT.put("plugs", Topics.PLUGS);
        RUNS_OUT.put("tubes", Topics.TUBES);
        RUNS_OUT.put("battery", Topics.BATTERY_RESERVE);
        RUNS_OUT.put("light", Topics.LIGHT_RUN_TIME);
    }

    /** What causes a puncture. */
    public static final List<String> CAUSES = List.of("cut", "pinch", "hole", "burp", "not known");
    /** What mends it. */
    public static final List<String> MENDS = List.of("sealant", "plugs", "tubes", "not at all");
    /** Why one walks. */
    public static final List<String> REASONS = List.of("gear", "ground", "legs", "traffic");
    public static final List<String> WHEELS = List.of("front", "rear");

    private OutcomeTable() {
    }

    private static OutcomeEffect on(Topic topic, Direction way, String why) {
        return new OutcomeEffect(topic, way, why);
    }

    private static void ask(String question, String answer, OutcomeEffect... bearings) {
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
    static List<ReportedValue> of(String question, String answer) {
        List<ReportedValue> out = new ArrayList<>();
        for (OutcomeEffect bearing : ASKED.get(question).get(answer)) {
            out.add(reported(question + ": " + answer, bearing.topic(), bearing.way(), bearing.why()));
        }
        return out;
    }

    /** No puncture in the whole event. */
    static List<ReportedValue> noPunctures() {
        List<ReportedValue> out = new ArrayList<>();
        for (String wheel : WHEELS) {
            out.add(reported("punctures: none", Topics.FRONT_TYRE_CASING.at(End.of(wheel)), Direction.RIGHT, "it came through without a puncture"));
            out.add(reported("punctures: none", Topics.FRONT_SEALANT.at(End.of(wheel)), Direction.RIGHT, "it came through without a puncture"));
        }
        return out;
    }

    /**
     * A puncture.
     *
     * @param what    it in words
     * @param wheel   front or rear
     * @param cause   one of {@link #CAUSES}
     * @param mend    one of {@link #MENDS}; null where not told
     */
    static List<ReportedValue> flat(String what, String wheel, String cause, String mend) {
        List<ReportedValue> out = new ArrayList<>();
        switch (cause) {
            case "cut" -> out.add(reported(what, Topics.FRONT_TYRE_CASING.at(End.of(wheel)), Direction.MORE, "a stouter casing is cut less easily"));
            case "pinch" -> out.add(reported(what, Topics.FRONT_TYRE_PRESSURE.at(End.of(wheel)), Direction.MORE, "the tyre was pinched against the rim"));
            case "burp" -> out.add(reported(what, Topics.FRONT_TYRE_PRESSURE.at(End.of(wheel)), Direction.MORE, "the tyre let air out at the rim"));
            default -> {
                // A thorn goes through any casing, and what is not known bears on nothing.
            }
        }
        if ("sealant".equals(mend)) {
            out.add(reported(what, Topics.FRONT_SEALANT.at(End.of(wheel)), Direction.RIGHT, "sealant closed the hole"));
        } else if ("plugs".equals(mend)) {
            out.add(reported(what, Topics.PLUGS, Direction.RIGHT, "they were needed and were there"));
        } else if ("tubes".equals(mend)) {
            out.add(reported(what, Topics.TUBES, Direction.RIGHT, "it was needed and was there"));
        }
        return out;
    }

    /** Whether the rims struck the ground: none, or which. */
    static List<ReportedValue> rimStrikes(List<String> wheels) {
        List<ReportedValue> out = new ArrayList<>();
        for (String wheel : WHEELS) {
            boolean struck = wheels.contains(wheel);
            out.add(reported("rim strikes: " + (struck ? wheel : "none at the " + wheel), Topics.FRONT_TYRE_PRESSURE.at(End.of(wheel)), struck ? Direction.MORE : Direction.RIGHT,
                    struck ? "the rim struck the ground" : "the rim never struck the ground"));
        }
        return out;
    }

    /** Whether a wheel slid where it should have held: none, or which. */
    static List<ReportedValue> slid(List<String> wheels) {
        List<ReportedValue> out = new ArrayList<>();
        for (String wheel : WHEELS) {
            boolean slid = wheels.contains(wheel);
            out.add(reported("slid: " + (slid ? wheel : "not the " + wheel), Topics.FRONT_TYRE_TREAD.at(End.of(wheel)), slid ? Direction.MORE : Direction.RIGHT,
                    slid ? "the wheel slid where it should have held" : "the wheel held"));
        }
        return out;
    }

    static List<ReportedValue> neverWalked() {
        return List.of(reported("walked: none", Topics.EASIEST_GEAR, Direction.RIGHT, "every climb was ridden"));
    }

    /** Walking a piece; only for want of a gear does it bear on the gears. */
    static List<ReportedValue> walked(String what, String reason) {
        return reason.equals("gear") ? List.of(reported(what, Topics.EASIEST_GEAR, Direction.LESS, "an easier gear would have been ridden")) : List.of();
    }

    /** What ran out did not suffice; what else there was did, but for what is carried for mishaps. */
    static List<ReportedValue> ranOut(List<String> out) {
        List<ReportedValue> all = new ArrayList<>();
        for (Map.Entry<String, Topic> each : RUNS_OUT.entrySet()) {
            boolean gone = out.contains(each.getKey());
            boolean forMishaps = each.getKey().equals("plugs") || each.getKey().equals("tubes");
            if (gone) {
                all.add(reported("ran out of: " + each.getKey(), each.getValue(), Direction.MORE, "it ran out"));
            } else if (!forMishaps) {
                all.add(reported(each.getKey() + " did not run out", each.getValue(), Direction.RIGHT, "it lasted"));
            }
        }
        return all;
    }

    private static ReportedValue reported(String what, Topic topic, Direction way, String why) {
        return new ReportedValue(what, topic, way, why);
    }
}
