package courseworthy.report;

import courseworthy.report.picture.WorthChart;
import courseworthy.task.Brief;
import courseworthy.worth.Alternative;
import courseworthy.worth.BreakEven;
import courseworthy.worth.DecisionWorth;
import java.util.ArrayList;
import java.util.List;

/** What the decisions of a brief are worth in time, side by side. */
final class WorthFigure {

    private WorthFigure() {
    }

    /** Null where the time of no decision is known. */
    static Figure of(Brief brief) {
        List<DecisionWorth> all = brief.worthOfDecisions();
        List<DecisionWorth> known = all.stream().filter(each -> each.best() != null).toList();
        if (known.isEmpty()) {
            return null;
        }
        WorthChart chart = new WorthChart(known.stream().map(WorthFigure::row).toList());
        DecisionWorth largest = DecisionWorth.largest(all);
        return new Figure(RichText.of(largest == null ? "No other choice is surely faster or slower" : Phrases.capital(name(largest)) + " makes the most difference"), chart,
                RichText.of(sentence(known.get(0), largest)), data(all));
    }

    private static WorthChart.WorthBar row(DecisionWorth worth) {
        return new WorthChart.WorthBar(name(worth), worth.decision().phrase(), value(worth), Ranges.of(worth.saved()), worth.tooClose(), odds(worth.best()));
    }

    /** {@code tyre width, front and rear}; the topic's name where it stands for one end. */
    private static String name(DecisionWorth worth) {
        return worth.both() ? worth.decision().topic().plain() + ", front and rear" : worth.decision().topic().name();
    }

    private static String value(DecisionWorth worth) {
        return worth.best().value().replaceFirst(" front and rear$", "");
    }

    /** In a few words for a row's end; empty where there is no break-even. */
    private static String odds(Alternative alternative) {
        BreakEven even = alternative.leading();
        if (even == null) {
            return "";
        }
        return even.rides().mid() < 1 ? "equal at " + Phrases.number(1 / even.rides().mid(), 1) + " " + even.stop() + "s a ride"
                : "equal at one " + even.stop() + " in " + WorthReport.count(even.rides().mid()) + " rides";
    }

    private static String sentence(DecisionWorth first, DecisionWorth largest) {
        DecisionWorth shown = largest == null ? first : largest;
        return Phrases.capital(name(shown)) + ": " + value(shown) + " in place of the recommended " + shown.decision().phrase() + " "
                + WorthReport.returns(shown.saved()) + ".";
    }

    private static Table data(List<DecisionWorth> worths) {
        Table.Builder out = Table.builder().column("Decision").column("Recommended").column("Alternative").column("Which").column("Break-even");
        for (DecisionWorth each : worths) {
            if (each.best() != null) {
                out.row(name(each), each.decision().phrase(), value(each), WorthReport.returns(each.saved()), odds(each.best()));
            } else if (each.unknownReason() != DecisionWorth.UnknownReason.DOES_NOT_APPLY) {
                out.row(name(each), each.decision().phrase(), "", each.unknownReason().words(), "");
            }
        }
        return out.build();
    }
}
