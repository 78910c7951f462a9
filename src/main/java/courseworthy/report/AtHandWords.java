package courseworthy.report;

import courseworthy.claim.Claim;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.report.Page.Weight;
import courseworthy.ride.Range;
import courseworthy.worth.BikeAtHand;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Writes the bike at hand beside the one that is called: how it would be set up, and what it costs. */
public final class AtHandWords {

    private static final int ABOUT = 10;

    private AtHandWords() {
    }

    public static void add(Page page, BikeAtHand bike) {
        if (bike == null) {
            return;
        }
        page.heading("IF YOU RIDE YOUR " + bike.kind().toUpperCase(Locale.ROOT) + " BIKE");
        for (String line : lines(bike)) {
            page.text(2, 4, line, bike.possible() ? Weight.PLAIN : Weight.ALERT);
        }
        for (SetUpSummary.Entry entry : rows(bike)) {
            page.row(entry.about(), ABOUT, entry.values(), Weight.BOLD, "", 0, Weight.PLAIN);
        }
    }

    public static void add(Marked page, BikeAtHand bike) {
        if (bike == null) {
            return;
        }
        page.heading(2, "If you ride your " + bike.kind() + " bike");
        for (String line : lines(bike)) {
            page.bullet(line);
        }
        for (SetUpSummary.Entry entry : rows(bike)) {
            page.bullet(entry.about() + ":", entry.values());
        }
    }

    private static List<SetUpSummary.Entry> rows(BikeAtHand bike) {
        return bike.possible() ? SetUpSummary.of(bike.call().decisions(), bike.call().demands()) : List.of();
    }

    public static List<String> lines(BikeAtHand bike) {
        List<String> out = new ArrayList<>();
        if (bike.possible()) {
            out.add("It takes " + Figures.time(bike.time()) + ", " + apart(bike.costs()) + " the " + bike.called() + " bike recommended above.");
        } else {
            out.add("A limit rules it out here, so no set-up of it is given.");
        }
        against(bike).forEach(line -> out.add("Against it: " + line));
        if (bike.possible() && !bike.against().isEmpty()) {
            out.add("The time counts rolling, mass and position, not grip, punctures or what you have to walk, nor how much deeper a"
                    + " narrow tyre sinks" + (bike.costs().mid() < 0 ? ": do not take it for the faster bike here." : "."));
        }
        List<String> given = new ArrayList<>();
        given(bike).forEach((measure, value) -> given.add(measure.written() + " " + measure.scale().text(value.mid())));
        if (bike.possible() && !given.isEmpty()) {
            out.add("What your files give of it: " + String.join(", ", given) + ".");
        }
        return out;
    }

    private static String apart(Range costs) {
        if (costs.low() < 0 && costs.high() > 0) {
            return "about as long as (" + Figures.time(-costs.low()) + " less to " + Figures.time(costs.high()) + " longer than)";
        }
        boolean longer = costs.mid() >= 0;
        return Figures.time(longer ? costs : new Range(-costs.high(), -costs.mid(), -costs.low())) + (longer ? " longer than" : " less than");
    }

    public static List<String> against(BikeAtHand bike) {
        Set<String> out = new LinkedHashSet<>();
        for (Claim claim : bike.against()) {
            out.add(Phrases.because(claim.author()));
        }
        return List.copyOf(out);
    }

    /** What is written of it, in the order of the catalogue. */
    public static Map<Measure, MeasureValue> given(BikeAtHand bike) {
        Map<Measure, MeasureValue> out = new EnumMap<>(Measure.class);
        Demands demands = bike.call().demands();
        demands.values().forEach((measure, value) -> {
            if (measure.ofTheBike()) {
                out.put(measure, value);
            }
        });
        return out;
    }
}
