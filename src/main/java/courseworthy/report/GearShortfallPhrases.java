package courseworthy.report;

import courseworthy.worth.GearShortfall;
import courseworthy.worth.GearShortfall.Other;
import java.util.ArrayList;
import java.util.List;

/** Sentences on an easiest gear that is not easy enough. */
public final class GearShortfallPhrases {

    /** Less time than this is not worth a word, s (judgement). */
    private static final double WORTH_SAYING_S = 30;

    private GearShortfallPhrases() {
    }

    /** For the first lines of a brief. */
    static String terse(GearShortfall shortfall) {
        return where(shortfall) + " needs " + ratio(shortfall.needed()) + ", the easiest " + (shortfall.mounted() ? "of the build " : "") + "is "
                + shortfall.gear() + cadence(shortfall)
                + cost(shortfall);
    }

    /** What it comes to, for a card: the time on foot, else the time lost, else the gear that is needed. */
    static String shortest(GearShortfall shortfall) {
        return shortfall.cost().onFoot() >= WORTH_SAYING_S ? Figures.time(shortfall.cost().onFoot()) + " on foot"
                : shortfall.cost().slower() >= WORTH_SAYING_S ? Figures.time(shortfall.cost().slower()) + " lost" : "needs " + ratio(shortfall.needed());
    }

    /** {@code needs 0.54, not 30x52 (0.58)}: short, since a card has two lines for it. */
    static String needed(GearShortfall shortfall) {
        return "needs " + ratio(shortfall.needed()) + ", not " + shortfall.gear();
    }

    /** What it costs, and where the gear that is needed is to be had. */
    public static String full(GearShortfall shortfall) {
        String why = shortfall.made() && shortfall.mounted() ? "A " + shortfall.bike() + " bike can be geared as low as " + ratio(shortfall.easiest())
                + ", but this build is not." : shortfall.made() ? "A " + shortfall.bike() + " bike can be geared as low as "
                + ratio(shortfall.easiest()) + ", but other advice outweighs it." : "No common chainring and cassette combination on a " + shortfall.bike()
                + " bike goes lower than " + ratio(shortfall.easiest()) + ".";
        return "The gears are too hard for your legs: " + lower(where(shortfall)) + " needs " + ratio(shortfall.needed())
                + ", and the easiest gear " + (shortfall.mounted() ? "of the build " : "") + "is " + shortfall.gear() + cadence(shortfall) + cost(shortfall) + ". " + why + " " + others(shortfall);
    }

    private static String where(GearShortfall shortfall) {
        return shortfall.sustained() ? "The hardest kilometre" : "The steepest 100 m";
    }

    private static String lower(String text) {
        return Character.toLowerCase(text.charAt(0)) + text.substring(1);
    }

    private static String cadence(GearShortfall shortfall) {
        return shortfall.cost().cadence() == null ? "" : ": about " + Phrases.number(shortfall.cost().cadence().mid(), 0) + " rpm there" + (shortfall.sustained() ? " on steady power" : "") + ", where you want "
                + Phrases.number(shortfall.cost().lowest(), 0) + " rpm";
    }

    private static String cost(GearShortfall shortfall) {
        List<String> out = new ArrayList<>();
        if (shortfall.cost().onFoot() >= WORTH_SAYING_S) {
            out.add("about " + Figures.time(shortfall.cost().onFoot()) + " on foot");
        }
        if (shortfall.cost().slower() >= WORTH_SAYING_S) {
            out.add("about " + Figures.time(shortfall.cost().slower()) + " lost over the day");
        }
        return out.isEmpty() ? "" : ", " + String.join(", ", out);
    }

    private static String others(GearShortfall shortfall) {
        if (shortfall.others().isEmpty()) {
            return "No other kind of bike here has easier gears: walk there.";
        }
        List<String> out = new ArrayList<>();
        for (Other other : shortfall.others()) {
            out.add("a " + other.bike() + " bike (down to " + ratio(other.easiest()) + " where it needs " + ratio(other.needed()) + ", about "
                    + PlanReport.clock(other.total().mid()) + " h)");
        }
        return shortfall.others().get(0).reaches() ? "Easy enough: " + String.join(", ", out) + "."
                : "No kind of bike has gears easy enough here; the closest is " + out.get(0) + ".";
    }

    private static String ratio(double ratio) {
        return Phrases.number(ratio, 2);
    }
}
