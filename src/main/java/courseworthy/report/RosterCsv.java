package courseworthy.report;

import courseworthy.ride.Range;
import courseworthy.task.RosterResult;
import courseworthy.task.RosterResult.Comparison;
import courseworthy.task.RosterResult.Entry;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes a roster as comma-separated values: a row for each rider, a column for each topic that applies to any, one with the topics that differ,
 * and one that names who made the map.
 */
public final class RosterCsv {

    private static final List<String> HEAD = List.of("rider", "file", "tags", "notes", "time_s_low", "time_s", "time_s_high", "least_firm", "differs_in",
            "map_data");

    private RosterCsv() {
    }

    public static String of(RosterResult roster) {
        List<Comparison> topics = roster.topics().stream().filter(Comparison::isAnswered).toList();
        List<String> head = new ArrayList<>(HEAD);
        topics.forEach(each -> head.add(each.topic().name()));
        CsvWriter out = new CsvWriter(head);
        for (int i = 0; i < roster.entries().size(); i++) {
            out.row(row(roster, i, topics));
        }
        return out.text();
    }

    private static List<String> row(RosterResult roster, int rider, List<Comparison> topics) {
        Entry entry = roster.entries().get(rider);
        Range time = entry.time();
        List<String> out = new ArrayList<>(List.of(entry.name(), entry.file(), String.join("; ", entry.tags()), entry.notes()));
        out.addAll(time == null ? List.of("", "", "") : List.of(seconds(time.low()), seconds(time.mid()), seconds(time.high())));
        out.add(entry.leastFirm() == null ? "" : entry.leastFirm().decision().topic().name());
        out.add(String.join("; ", roster.differing(rider).stream().map(each -> each.topic().name()).toList()));
        out.add(roster.course().attribution());
        topics.forEach(each -> out.add(each.decisions().get(rider).text()));
        return out;
    }

    private static String seconds(double time) {
        return Phrases.number(time, 0);
    }
}
