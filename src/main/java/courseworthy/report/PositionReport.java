package courseworthy.report;

import courseworthy.build.Position;
import courseworthy.build.PositionTransfer;
import courseworthy.build.PositionTransfer.StemChoice;
import courseworthy.build.PositionTransfer.Saddle;
import courseworthy.fit.FitResult;
import courseworthy.report.TableColumn.Alignment;
import courseworthy.task.PositionResult;
import courseworthy.topic.Topics;
import courseworthy.workshop.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Where bars and saddles are: on each bike of a workshop, or on one as it is to be set up to another's position. */
public final class PositionReport {

    private static final String SUBTITLE = "bar and saddle position";
    private static final String MEANS = "Forward and up are measured from the bottom bracket, level and upright, to the hoods of a drop bar or the grips of any "
            + "other; saddle height is along the seat tube.";
    public static final List<String> ASSUMPTIONS = List.of(
            "The bikes stand upright on level ground, unladen. Sag is not included; it lowers the front and changes the head angle, more so on bikes with more "
                    + "sag.",
            "A stem is taken to leave the steerer at the middle of its clamp. Figures are as good as what was measured: at best to a millimetre or two.");
    public static final List<String> CAUTIONS = List.of(
            "Try a new position in training, a step at a time; change nothing on race day. Where something hurts or goes numb, or after an injury, see a "
                    + "qualified fitter or a doctor: they decide, not a table.",
            "Tighten the bolts of stem, bar, post and saddle to the torque marked on the parts, and take the play out of the headset before you clamp the stem. "
                    + "Clamp the saddle within the marks on its rails and insert the post at least to its minimum-insertion mark. If you are not sure, ask a "
                    + "qualified mechanic.",
            "Afterwards turn the bar from stop to stop: no cable or hose may pull tight, and nothing may touch the frame.");

    private PositionReport() {
    }

    public static Report of(PositionResult result) {
        return result.transfer() == null ? positions(result.workshop(), result.all()) : transfer(result.workshop(), result.transfer());
    }

    /** The positions on several bikes. */
    private static Report positions(String workshop, List<Position> positions) {
        Report.Builder out = head(workshop);
        for (int i = 0; i < positions.size(); i++) {
            Position position = positions.get(i);
            List<Definition> rows = new ArrayList<>();
            for (PositionLine line : lines(position)) {
                if (shown(line)) {
                    rows.add(Definition.of(line.what(), text(line)));
                }
            }
            out.section(Section.builder("bike-" + (i + 1), RichText.ofQuoted(position.bike().name())).definitions(rows)
                    .section(list("to-measure-" + (i + 1), "To measure", position.toMeasure()))
                    .section(list("check-" + (i + 1), "Check", position.restsOn())));
        }
        return out.section(method()).build();
    }

    /** One bike, to be set up to the position of another. */
    private static Report transfer(String workshop, PositionTransfer carried) {
        return head(workshop)
                .paragraph(RichText.ofQuoted(carried.now().bike().name()).text(", set up to the position of ").quoted(carried.from().bike().name()).text("."))
                .table(figures(carried))
                .section(list("to-measure", "To measure", carried.toMeasure()))
                .section(Section.builder("stem", "The stem").paragraphs(quoted(closest(carried)))
                        .section(Section.builder("other-stems", "Other stems, each at its closest").bullets(quoted(others(carried)))))
                .section(Section.builder("saddle", "The saddle").paragraphs(quoted(saddle(carried))))
                .section(Section.builder("check", "Check").bullets(quoted(sentences(carried.toMind())))
                        .bullets(CAUTIONS.stream().map(RichText::of).toList()))
                .section(method()).build();
    }

    private static Report.Builder head(String workshop) {
        return Report.builder(workshop.isEmpty() ? RichText.of("The workshop") : RichText.ofQuoted(workshop)).subtitle(SUBTITLE);
    }

    private static Table figures(PositionTransfer carried) {
        List<PositionLine> wanted = lines(carried.from());
        List<PositionLine> now = lines(carried.now());
        Table.Builder out = Table.builder().column("").column(RichText.ofQuoted(carried.from().bike().name()), Alignment.RIGHT, false)
                .column(RichText.ofQuoted(carried.now().bike().name()).text(" now"), Alignment.RIGHT, false).figures("Difference");
        for (int i = 0; i < wanted.size(); i++) {
            if (shown(wanted.get(i), now.get(i))) {
                out.row(wanted.get(i).what(), text(wanted.get(i)), text(now.get(i)),
                        difference(now.get(i), wanted.get(i)));
            }
        }
        return out.build();
    }

    private static Section list(String id, String heading, List<String> words) {
        return Section.builder(id, heading).bullets(quoted(sentences(words))).build();
    }

    private static List<RichText> quoted(List<String> sentences) {
        return sentences.stream().map(RichText::ofQuoted).toList();
    }

    private static Section method() {
        return Section.builder("method", "How this is measured").paragraph(MEANS).paragraphs(ASSUMPTIONS.stream().map(RichText::of).toList()).build();
    }

    /** A line of figures: what, and a value on a bike. */
    record PositionLine(String what, Double metres) {
    }

    static List<PositionLine> lines(Position position) {
        boolean hands = position.hands() != null;
        List<PositionLine> out = new ArrayList<>();
        out.add(new PositionLine("hands forward", hands ? Double.valueOf(position.hands().forward()) : null));
        out.add(new PositionLine("hands up", hands ? Double.valueOf(position.hands().up()) : null));
        out.add(new PositionLine("drops up", position.drops()));
        out.add(new PositionLine(Topics.BAR_WIDTH.name(), position.barWidth()));
        out.add(new PositionLine("saddle height", position.saddleHeight()));
        out.add(new PositionLine("saddle tip behind", position.saddleSetback()));
        out.add(new PositionLine("saddle above hands", position.saddleAboveHands()));
        out.add(new PositionLine("saddle tip to hands", position.tipToHands()));
        out.add(new PositionLine("crank length", position.crankLength()));
        out.add(new PositionLine("trail", position.trail()));
        return out;
    }

    /** To a millimetre, cranks to half of one. */
    static String text(PositionLine line) {
        return line.metres() == null ? "not given" : line.what().equals("crank length") ? halves(line.metres()) : millimetres(line.metres());
    }

    private static String halves(double metres) {
        double halves = Math.round(metres * 2000) / 2.0;
        return Phrases.number(halves, halves == Math.rint(halves) ? 0 : 1) + " mm";
    }

    static String millimetres(double metres) {
        return Math.round(metres * 1000) + " mm";
    }

    /** {@code +7 mm} between what is shown of both, so that it can be checked; empty where either is not known. */
    static String difference(PositionLine now, PositionLine wanted) {
        if (now.metres() == null || wanted.metres() == null) {
            return "";
        }
        boolean cranks = now.what().equals("crank length");
        double parts = cranks ? 2000 : 1000;
        double change = (Math.round(now.metres() * parts) - Math.round(wanted.metres() * parts)) / parts;
        String text = cranks ? halves(change) : millimetres(change);
        return change > 0 && !text.equals("0 mm") ? "+" + text : text;
    }

    /** Drops of bars that have none are not worth a line, nor trail where it is not known. */
    static boolean shown(PositionLine... lines) {
        for (PositionLine line : lines) {
            if (line.metres() != null || !line.what().equals("drops up") && !line.what().equals("trail")) {
                return true;
            }
        }
        return false;
    }

    static String stem(PositionTransfer carried, StemChoice choice) {
        Part from = choice.stem().bike() == carried.now().bike() ? null : choice.stem().bike();
        return choice.stem() + (from == null ? "" : " from " + from) + (choice.turned() ? ", flipped" : "") + " (" + millimetres(choice.length()) + " at " + angle(choice.angle())
                + "), " + spacers(choice);
    }

    /** A stem of a common size says its size by its name. */
    static String wished(StemChoice choice) {
        return choice.stem() + ", " + spacers(choice) + ", would leave " + leaves(choice);
    }

    private static String spacers(StemChoice choice) {
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
    static String leaves(StemChoice choice) {
        List<String> out = new ArrayList<>();
        long up = Math.round(choice.up() * 1000);
        long forward = Math.round(choice.forward() * 1000);
        if (up != 0) {
            out.add(Math.abs(up) + " mm too " + (up > 0 ? "high" : "low"));
        }
        if (forward != 0) {
            out.add(Math.abs(forward) + " mm too far " + (forward > 0 ? "forward" : "back"));
        }
        return out.isEmpty() ? "the hands in the same place, within a millimetre" : "the hands " + String.join(" and ", out);
    }

    /** The closest at hand, in sentences. */
    static List<String> closest(PositionTransfer carried) {
        List<String> out = new ArrayList<>();
        StemChoice closest = carried.closest();
        if (closest == null) {
            out.add(carried.from().hands() == null || carried.now().hands() == null ? "Not known until you measure what is missing."
                    : "No stem in the workshop is known to fit.");
        } else {
            StemChoice advised = carried.advised();
            out.add(sentence((advised.asNow() ? "keep " : "take ") + stem(carried, advised)));
            out.add(sentence("it leaves " + leaves(advised)));
            if (advised.above() != null && advised.above() >= 0.003) {
                out.add("About " + millimetres(advised.above()) + " of spacers go above it, because the steerer is cut long.");
            }
            if (advised != closest) {
                out.add("Closer, but by too little for the work of the swap: " + stem(carried, closest) + ", leaving " + leaves(closest) + ".");
            }
        }
        if (carried.unknown() != null) {
            out.add(sentence("closer, if it fits: " + stem(carried, carried.unknown()) + ", leaving " + leaves(carried.unknown()) + ". Check: "
                    + carried.unknown().fit().words()));
        }
        if (carried.wished() != null) {
            out.add(sentence("a common size you do not have: " + wished(carried.wished())));
        }
        return out;
    }

    /** Other stems, closest first, then those that do not fit. */
    static List<String> others(PositionTransfer carried) {
        List<String> out = new ArrayList<>();
        for (StemChoice choice : carried.choices()) {
            if (choice != carried.closest() && choice != carried.advised()) {
                out.add(stem(carried, choice) + ": " + leaves(choice));
            }
        }
        for (StemChoice choice : carried.refused()) {
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
        return own == null ? List.of() : List.of("Move " + own + " across from " + carried.from().bike() + ": you are used to it.");
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
        return Math.abs(change) < 0.0005 ? ", as it is now." : ": " + halves(Math.abs(change)) + " " + (change > 0 ? more : less) + " than now.";
    }

    private static String post(Saddle saddle) {
        if (saddle.fit().fits()) {
            return "The post, " + saddle.post() + ", goes in deep enough.";
        }
        String why = saddle.fit().result() == FitResult.FitVerdict.UNKNOWN ? ", is not known to go in deep enough: " : ", does not fit: ";
        List<String> names = new ArrayList<>();
        for (Part other : saddle.others()) {
            names.add(other.name());
        }
        return "The post, " + saddle.post() + why + saddle.fit().words() + "." + (names.isEmpty() ? "" : " These would fit: " + String.join(", ", names) + ".");
    }

    /** In a line or two; empty where there is nothing to carry over. */
    public static List<String> inBrief(PositionTransfer carried) {
        List<String> out = new ArrayList<>();
        if (carried == null) {
            return out;
        }
        out.add(bar(carried));
        out.add("Saddle: " + lowered(height(carried, carried.saddle())) + " " + setback(carried, carried.saddle())
                + " Try it in training first; 'courseworthy position' has the details.");
        out.addAll(ownSaddle(carried));
        return out;
    }

    private static String bar(PositionTransfer carried) {
        StemChoice closest = carried.advised();
        if (carried.otherBar()) {
            return "Bar: " + carried.now().barShape() + " and " + carried.from().barShape() + " bars put the hands in different places, so bar position is "
                    + "not copied.";
        }
        return closest == null ? closest(carried).get(0)
                : sentence((closest.asNow() ? "keep " : "take ") + stem(carried, closest) + inPlaceOf(carried, closest) + "; it leaves " + leaves(closest));
    }

    private static String inPlaceOf(PositionTransfer carried, StemChoice choice) {
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
