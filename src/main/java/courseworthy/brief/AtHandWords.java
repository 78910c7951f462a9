package courseworthy.brief;

import courseworthy.brief.Page.Weight;
import courseworthy.claim.Claim;
import courseworthy.decision.Decision;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.Scale;
import courseworthy.demand.Value;
import courseworthy.ride.Range;
import courseworthy.worth.BikeAtHand;
import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Writes the bike at hand beside the one that is called: how it would be set up, and what it costs. */
final class AtHandWords {

    private static final int ABOUT = 10;

    private AtHandWords() {
    }

    static void add(Page page, BikeAtHand bike) {
        if (bike == null) {
            return;
        }
        page.heading("IF YOU RIDE YOUR " + bike.kind().toUpperCase(Locale.ROOT) + " BIKE");
        for (String line : lines(bike)) {
            page.text(2, 4, line, bike.possible() ? Weight.PLAIN : Weight.ALERT);
        }
        for (Short.Entry entry : rows(bike)) {
            page.row(entry.about(), ABOUT, entry.values(), Weight.BOLD, "", 0, Weight.PLAIN);
        }
    }

    static void add(Marked page, BikeAtHand bike) {
        if (bike == null) {
            return;
        }
        page.heading(2, "If you ride your " + bike.kind() + " bike");
        for (String line : lines(bike)) {
            page.bullet(line);
        }
        for (Short.Entry entry : rows(bike)) {
            page.bullet(entry.about() + ":", entry.values());
        }
    }

    static void add(Json json, BikeAtHand bike) throws IOException {
        if (bike == null) {
            return;
        }
        json.object("bike_at_hand");
        json.string("kind", bike.kind());
        json.yesNo("possible", bike.possible());
        json.strings("text", lines(bike));
        json.strings("against", against(bike));
        if (bike.possible()) {
            json.range("time_s", bike.time(), 0);
            json.range("costs_s", bike.costs(), 0);
        }
        json.list("given");
        for (Map.Entry<Measure, Value> each : given(bike).entrySet()) {
            Scale scale = each.getKey().scale();
            json.open();
            json.string("name", each.getKey().written());
            json.scaled("value", scale, each.getValue().mid());
            json.string("unit", Json.unit(scale));
            json.string("text", scale.text(each.getValue().mid()));
            json.close();
        }
        json.endList();
        json.list("decisions");
        for (Decision decision : bike.possible() ? bike.call().decisions() : List.<Decision>of()) {
            json.open();
            json.string("topic", decision.topic().name());
            json.string("status", decision.status().words());
            json.value("value", decision.topic(), decision.value());
            json.string("unit", Json.unit(decision.topic()));
            json.string("text", decision.text());
            json.string("standing", decision.standing() == null ? null : decision.standing().word());
            json.close();
        }
        json.endList();
        json.close();
    }

    private static List<Short.Entry> rows(BikeAtHand bike) {
        return bike.possible() ? Short.of(bike.call().decisions(), bike.call().demands()) : List.of();
    }

    private static List<String> lines(BikeAtHand bike) {
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

    private static List<String> against(BikeAtHand bike) {
        Set<String> out = new LinkedHashSet<>();
        for (Claim claim : bike.against()) {
            out.add(Words.because(claim.author()));
        }
        return List.copyOf(out);
    }

    /** What is written of it, in the order of the catalogue. */
    private static Map<Measure, Value> given(BikeAtHand bike) {
        Map<Measure, Value> out = new EnumMap<>(Measure.class);
        Demands demands = bike.call().demands();
        demands.values().forEach((measure, value) -> {
            if (measure.ofTheBike()) {
                out.put(measure, value);
            }
        });
        return out;
    }
}
