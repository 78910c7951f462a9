package courseworthy.build;

import courseworthy.build.SeasonPlan.SettledValue;
import courseworthy.build.SeasonPlan.PlannedRide;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What one rider is advised from ride to ride of a season, topic by topic, and where that changes.
 *
 * @param rides by date
 * @param lines a line for each topic that is decided for some ride, in the order of the catalogue
 */
public record SetUpHistory(String rider, List<PlannedRide> rides, List<HistoryLine> lines) {

    public SetUpHistory {
        rides = List.copyOf(rides);
        lines = List.copyOf(lines);
    }

    /**
     * One topic.
     *
     * @param entries one for each ride
     */
    public record HistoryLine(Topic topic, List<Entry> entries) {

        public HistoryLine {
            entries = List.copyOf(entries);
        }

        /** Whether it is the same at every ride. */
        public boolean constant() {
            return entries.stream().map(Entry::value).distinct().count() == 1;
        }
    }

    /**
     * The value of a topic at a ride.
     *
     * @param value  as text; empty where nothing is decided
     * @param before what it was at the ride before for which it was decided, where that is another; else empty
     */
    public record Entry(String value, String before) {

        public boolean changed() {
            return !before.isEmpty();
        }
    }

    /** The histories of all riders of a season, in the order in which they first ride. */
    public static List<SetUpHistory> of(SeasonPlan season) {
        Map<String, List<PlannedRide>> byRider = new LinkedHashMap<>();
        season.rides().forEach(ride -> byRider.computeIfAbsent(ride.rider(), name -> new ArrayList<>()).add(ride));
        List<SetUpHistory> out = new ArrayList<>();
        byRider.forEach((rider, rides) -> out.add(new SetUpHistory(rider, rides, lines(rides))));
        return out;
    }

    private static List<HistoryLine> lines(List<PlannedRide> rides) {
        List<Map<String, String>> values = new ArrayList<>();
        Set<String> decided = new LinkedHashSet<>();
        for (PlannedRide ride : rides) {
            Map<String, String> of = new LinkedHashMap<>();
            for (SettledValue each : ride.call()) {
                of.put(each.topic(), each.value());
            }
            values.add(of);
            decided.addAll(of.keySet());
        }
        List<HistoryLine> out = new ArrayList<>();
        for (Topic topic : Topics.all()) {
            if (decided.contains(topic.name())) {
                out.add(new HistoryLine(topic, entries(topic.name(), values)));
            }
        }
        return out;
    }

    private static List<Entry> entries(String topic, List<Map<String, String>> values) {
        List<Entry> out = new ArrayList<>();
        String last = "";
        for (Map<String, String> of : values) {
            String value = of.getOrDefault(topic, "");
            boolean changed = !value.isEmpty() && !last.isEmpty() && !value.equals(last);
            out.add(new Entry(value, changed ? last : ""));
            last = value.isEmpty() ? last : value;
        }
        return out;
    }
}
