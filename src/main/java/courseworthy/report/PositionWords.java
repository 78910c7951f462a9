package courseworthy.report;

import courseworthy.build.Position;
import courseworthy.build.PositionTransfer;
import courseworthy.build.PositionTransfer.Choice;
import courseworthy.build.PositionTransfer.Saddle;
import courseworthy.fit.FitResult;
import courseworthy.workshop.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Positions in words, for text and Markdown alike. */
public final class PositionWords {

    static final String MEANS = "Forward and up are from the bottom bracket, level and upright; hands are on the hoods of a drop bar, on the "
            + "grips of another; the saddle's height is along the seat tube.";

    public static final List<String> RESTS_ON = List.of(
            "The bikes stand upright on level ground, unladen: sag lowers the front and changes the head angle, on a bike with more "
                    + "of it more, and is not counted.",
            "A stem is taken to leave the steerer at the middle of its clamp. Figures are as good as what was measured, at best to a millimetre "
                    + "or two.");

    public static final List<String> CAUTIONS = List.of(
            "A position is carried over to be tried in training, a step at a time; nothing new on race day. Where something hurts or goes "
                    + "numb, or after an injury, a qualified fitter or a doctor decides, not a table.",
            "Bolts of stem, bar, post and saddle at the torque marked on the parts, the headset without play before the stem is clamped; saddle "
                    + "clamped within the marks on its rails, post at least to its minimum-insertion mark. Where not sure: a qualified mechanic.",
            "Afterwards turn the bar from stop to stop: no cable or hose pulls tight, and nothing touches the frame.");

    private PositionWords() {
    }

    /** A line of figures: what, and a value on a bike. */
    record Line(String what, Double metres) {
    }

    static List<Line> lines(Position position) {
        boolean hands = position.hands() != null;
        List<Line> out = new ArrayList<>();
        out.add(new Line("hands forward", hands ? Double.valueOf(position.hands().forward()) : null));
        out.add(new Line("hands up", hands ? Double.valueOf(position.hands().up()) : null));
        out.add(new Line("drops up", position.drops()));
        out.add(new Line("bar width", position.barWidth()));
        out.add(new Line("saddle height", position.saddleHeight()));
        out.add(new Line("saddle tip behind", position.saddleSetback()));
        out.add(new Line("saddle above hands", position.saddleAboveHands()));
        out.add(new Line("saddle tip to hands", position.tipToHands()));
        out.add(new Line("crank length", position.crankLength()));
        return out;
    }

    /** To a millimetre, cranks to half of one. */
    static String text(Line line) {
        return line.metres() == null ? "not known" : line.what().equals("crank length") ? halves(line.metres()) : millimetres(line.metres());
    }

    private static String halves(double metres) {
        double halves = Math.round(metres * 2000) / 2.0;
        return Phrases.number(halves, halves == Math.rint(halves) ? 0 : 1) + " mm";
    }

    static String millimetres(double metres) {
        return Math.round(metres * 1000) + " mm";
    }

    /** {@code +7 mm}; empty where either is not known. */
    static String difference(Line now, Line wanted) {
        if (now.metres() == null || wanted.metres() == null) {
            return "";
        }
        double change = now.metres() - wanted.metres();
        String text = now.what().equals("crank length") ? halves(change) : millimetres(change);
        return change > 0 && !text.equals("0 mm") ? "+" + text : text;
    }

    /** Drops of bars that have none are not worth a line. */
    static boolean shown(Line... lines) {
        for (Line line : lines) {
            if (line.metres() != null || !line.what().equals("drops up")) {
                return true;
            }
        }
        return false;
    }

    static String stem(PositionTransfer carried, Choice choice) {
        Part from = choice.stem().bike() == carried.now().bike() ? null : choice.stem().bike();
        return choice.stem() + (from == null ? "" : " from " + from) + (choice.turned() ? ", the other way up" : "") + " (" + millimetres(choice.length()) + " at " + angle(choice.angle())
                + "), " + spacers(choice);
    }

    /** A stem of a common size says its size by its name. */
    static String wished(Choice choice) {
        return choice.stem() + ", " + spacers(choice) + ", would leave " + leaves(choice);
    }

    private static String spacers(Choice choice) {
        if (choice.spacers().isEmpty()) {
            return "without spacers under it";
        }
        List<String> out = new ArrayList<>();
        for (Map.Entry<Part, Double> each : choice.spacers().entrySet()) {
            out.add(tenths(each.getValue()) + " of " + each.getKey());
        }
        return "with " + String.join(" and ", out) + " under it";
    }

    private static String tenths(double metres) {
        double tenths = Math.round(metres * 10_000) / 10.0;
        return Phrases.number(tenths, tenths == Math.rint(tenths) ? 0 : 1) + " mm";
    }

    private static String angle(double degrees) {
        return Phrases.number(degrees, degrees == Math.rint(degrees) ? 0 : 1) + " deg";
    }

    /** {@code the hands 3 mm too high and 4 mm too far forward}. */
    static String leaves(Choice choice) {
        List<String> out = new ArrayList<>();
        long up = Math.round(choice.up() * 1000);
        long forward = Math.round(choice.forward() * 1000);
        if (up != 0) {
            out.add(Math.abs(up) + " mm too " + (up > 0 ? "high" : "low"));
        }
        if (forward != 0) {
            out.add(Math.abs(forward) + " mm too far " + (forward > 0 ? "forward" : "back"));
        }
        return out.isEmpty() ? "the hands where they were, within a millimetre" : "the hands " + String.join(" and ", out);
    }

    /** The closest at hand, in sentences. */
    static List<String> closest(PositionTransfer carried) {
        List<String> out = new ArrayList<>();
        Choice closest = carried.closest();
        if (closest == null) {
            out.add(carried.from().hands() == null || carried.now().hands() == null ? "Not known before what is missing is measured."
                    : "No stem of the workshop is known to fit.");
        } else {
            out.add(sentence((closest.asNow() ? "keep " : "take ") + stem(carried, closest)));
            out.add(sentence("it leaves " + leaves(closest)));
            if (closest.above() != null && closest.above() >= 0.003) {
                out.add("About " + millimetres(closest.above()) + " of spacers go on top of it, since the steerer is cut for them.");
            }
        }
        if (carried.unknown() != null) {
            out.add(sentence("closer would come " + stem(carried, carried.unknown()) + ", leaving " + leaves(carried.unknown()) + ", were it known to fit: "
                    + carried.unknown().fit().words()));
        }
        if (carried.wished() != null) {
            out.add(sentence("not in the workshop, but common: " + wished(carried.wished())));
        }
        return out;
    }

    /** Other stems, closest first, then those that do not fit. */
    static List<String> others(PositionTransfer carried) {
        List<String> out = new ArrayList<>();
        for (Choice choice : carried.choices().subList(Math.min(1, carried.choices().size()), carried.choices().size())) {
            out.add(stem(carried, choice) + ": " + leaves(choice));
        }
        for (Choice choice : carried.refused()) {
            out.add(choice.stem() + ", does not fit: " + choice.fit().words());
        }
        return out;
    }

    static List<String> saddle(PositionTransfer carried) {
        Saddle saddle = carried.saddle();
        List<String> out = new ArrayList<>();
        out.add(height(carried, saddle));
        out.add(setback(carried, saddle));
        if (saddle.onRails() != null && Math.round(saddle.onRails() * 1000) != 0) {
            long forward = Math.round(saddle.onRails() * 1000);
            out.add("The same saddle sits " + Math.abs(forward) + " mm farther " + (forward > 0 ? "forward" : "back") + " on its rails than on "
                    + carried.from().bike() + ". Another saddle is set by its widest usable part, not by its tip.");
        }
        if (saddle.fit() != null) {
            out.add(post(saddle));
        }
        out.addAll(ownSaddle(carried));
        return out;
    }

    private static List<String> ownSaddle(PositionTransfer carried) {
        Part own = carried.ownSaddle();
        return own == null ? List.of() : List.of("Take " + own + " over from " + carried.from().bike() + ": the body knows it.");
    }

    private static String height(PositionTransfer carried, Saddle saddle) {
        if (saddle.height() == null) {
            return "Height: not known.";
        }
        Double longer = saddle.longer();
        String cranks = longer == null || Math.abs(longer) < 0.0005 ? "" : ", for cranks that are " + halves(Math.abs(longer))
                + (longer > 0 ? " longer" : " shorter");
        return "Height " + halves(saddle.height()) + cranks + move(saddle.height(), carried.now().saddleHeight(), "higher", "lower");
    }

    private static String setback(PositionTransfer carried, Saddle saddle) {
        return saddle.setback() == null ? "Tip behind the bottom bracket: not known."
                : "Tip " + behind(saddle.setback()) + move(saddle.setback(), carried.now().saddleSetback(), "farther back", "farther forward");
    }

    private static String behind(double setback) {
        return millimetres(Math.abs(setback)) + (setback < 0 ? " in front of" : " behind") + " the bottom bracket";
    }

    private static String move(double wanted, Double now, String more, String less) {
        if (now == null) {
            return ".";
        }
        double change = wanted - now;
        return Math.abs(change) < 0.0005 ? ", as it is." : ": " + halves(Math.abs(change)) + " " + (change > 0 ? more : less) + " than now.";
    }

    private static String post(Saddle saddle) {
        if (saddle.fit().fits()) {
            return "The post, " + saddle.post() + ", goes in deep enough.";
        }
        String why = saddle.fit().result() == FitResult.Result.UNKNOWN ? ", is not known to go in deep enough: " : ", does not do: ";
        List<String> names = new ArrayList<>();
        for (Part other : saddle.others()) {
            names.add(other.name());
        }
        return "The post, " + saddle.post() + why + saddle.fit().words() + "." + (names.isEmpty() ? "" : " Would do: " + String.join(", ", names) + ".");
    }

    /** In a line or two; empty where there is nothing to carry over. */
    public static List<String> inBrief(PositionTransfer carried) {
        List<String> out = new ArrayList<>();
        if (carried == null) {
            return out;
        }
        out.add(bar(carried));
        out.add("Saddle: " + lowered(height(carried, carried.saddle())) + " " + setback(carried, carried.saddle())
                + " To be tried in training first; the position command tells the rest.");
        out.addAll(ownSaddle(carried));
        return out;
    }

    private static String bar(PositionTransfer carried) {
        Choice closest = carried.closest();
        if (carried.otherBar()) {
            return "Bar: a " + carried.now().barShape() + " one is held elsewhere than a " + carried.from().barShape()
                    + " one, so its place is not carried over.";
        }
        return closest == null ? closest(carried).get(0)
                : sentence((closest.asNow() ? "keep " : "take ") + stem(carried, closest) + inPlaceOf(carried, closest) + "; it leaves " + leaves(closest));
    }

    private static String inPlaceOf(PositionTransfer carried, Choice choice) {
        Part stem = carried.now().stem();
        return stem == null || stem == choice.stem() ? "" : ", in place of " + stem;
    }

    private static String lowered(String sentence) {
        return sentence.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + sentence.substring(1);
    }

    static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1) + ".";
    }

    static List<String> sentences(List<String> words) {
        List<String> out = new ArrayList<>();
        for (String each : words) {
            out.add(sentence(each));
        }
        return out;
    }
}
