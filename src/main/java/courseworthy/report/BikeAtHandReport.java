package courseworthy.report;

import courseworthy.claim.Claim;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.ride.Range;
import courseworthy.worth.BikeAtHand;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The rider's own bike where another kind is recommended: how it would be set up, and what it costs. */
public final class BikeAtHandReport {

    static final String ID = "own-bike";

    private BikeAtHandReport() {
    }

    /** The rider's own bike; empty where it is the recommended one. */
    static Section section(BikeAtHand bike) {
        if (bike == null) {
            return Section.builder(ID, "If you ride your own bike").build();
        }
        List<Definition> rows = new ArrayList<>();
        rows(bike).forEach(each -> rows.add(Definition.of(each.about(), RichText.ofStrong(each.values()))));
        return Section.builder(ID, "If you ride your " + bike.kind() + " bike").paragraphs(lines(bike).stream().map(RichText::ofQuoted).toList())
                .definitions(rows).build();
    }

    private static List<SetUpSummary.Entry> rows(BikeAtHand bike) {
        return bike.possible() ? SetUpSummary.of(bike.call()) : List.of();
    }

    public static List<String> lines(BikeAtHand bike) {
        List<String> out = new ArrayList<>();
        if (bike.possible()) {
            out.add("It takes " + Figures.time(bike.time()) + ", " + apart(bike.costs()) + " the " + bike.called() + " bike recommended above.");
        } else {
            out.add("A limit rules it out here, so no set-up is given for it.");
        }
        against(bike).forEach(line -> out.add("Against it: " + line));
        if (bike.possible() && !bike.against().isEmpty()) {
            out.add("The time counts rolling, mass and position, not grip, punctures, walking or how much deeper a"
                    + " narrow tyre sinks" + (bike.costs().mid() < 0 ? ": do not take it for the faster bike here." : "."));
        }
        List<String> given = new ArrayList<>();
        given(bike).forEach((measure, value) -> given.add(measure.written() + " " + measure.scale().text(value.mid())));
        if (bike.possible() && !given.isEmpty()) {
            out.add("Your files say of it: " + String.join(", ", given) + ".");
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
            out.add(Phrases.because(claim.origin()));
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
