package courseworthy.report.json;

import courseworthy.build.BuildCount;
import courseworthy.build.BuildCount.Departure;
import courseworthy.build.BuildCount.WorkCount;
import courseworthy.workshop.Part;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;

/** Writes the count of a build as JSON, in notches to the last of its six decimals, so that whoever reads it can add it up. */
final class JsonBuildCount {

    /** Costs are in millionths of a notch. */
    private static final int DECIMALS = 6;

    private final Json json;

    JsonBuildCount(Json json) {
        this.json = json;
    }

    /** The fields of the open object. */
    void of(BuildCount count) throws IOException {
        json.number("saved_per_kg_s", count.perKilogram());
        json.objects("decisions", count.departures(), this::departure);
        json.objects("empty_places", count.empty(), each -> {
            json.string("place", each.words());
            notches("cost_notches", BuildCount.costOfEmpty());
        });
        json.objects("masses", count.masses(), each -> {
            json.string("place", each.place().words());
            json.string("part", each.part().name());
            json.number("counted_kg", BigDecimal.valueOf(each.grams(), 3));
            notches("cost_notches", each.cost());
        });
        json.objects("swaps", count.works(), this::work);
        json.objects("pairs", count.pairs(), each -> {
            json.string("what", each.what());
            json.strings("parts", names(each.parts()));
            notches("cost_notches", each.cost());
        });
        notches("decisions_notches", count.ofDepartures());
        notches("empty_places_notches", count.ofEmpty());
        notches("masses_notches", count.ofMasses());
        notches("swaps_notches", count.ofWorks());
        notches("pairs_notches", count.ofPairs());
        notches("total_notches", count.total());
    }

    private void departure(Departure departure) throws IOException {
        json.string("topic", departure.topic().name());
        json.strings("parts", names(departure.parts()));
        json.value("wanted", departure.topic(), departure.wanted());
        json.value("got", departure.topic(), departure.got());
        json.string("unit", Json.unit(departure.topic()));
        json.number("weight", departure.shortfall().weight());
        json.number("apart_notches", departure.shortfall().apart());
        json.number("apart_s", departure.shortfall().seconds());
        json.number("beyond_bounds_notches", departure.shortfall().bounds());
        notches("cost_notches", departure.cost());
    }

    private void work(WorkCount work) throws IOException {
        json.string("place", work.place().words());
        json.string("part", work.part().name());
        json.string("what", work.step().words());
        json.number("work_s", Math.round(work.minutes() * 60));
        json.number("times", work.times());
        json.yesNo("changes_ends", work.otherEnd());
        notches("cost_notches", work.cost());
    }

    private void notches(String field, long millionths) throws IOException {
        json.number(field, BigDecimal.valueOf(millionths, DECIMALS));
    }

    private static List<String> names(List<Part> parts) {
        return parts.stream().map(Part::name).toList();
    }
}
