package courseworthy.task;

import courseworthy.decision.Decision;
import courseworthy.ride.Range;
import courseworthy.rider.Rider;
import courseworthy.sheet.SheetInForce;
import courseworthy.topic.Topic;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The recommendations for the riders of a roster on one course and day, compared topic by topic.
 *
 * @param course  the ground of one lap
 * @param event   its name; may be empty
 * @param role    {@code training} or {@code race}
 * @param date    the day; null where it is not known
 * @param sheets  coaches' sheets in force, in the order given
 * @param folder  of the riders' files, as typed
 * @param entries the riders, in the order of their files
 * @param topics  all, in the order of the catalogue
 */
public record RosterResult(CourseSummary course, String event, String role, LocalDate date, List<SheetInForce> sheets, String folder,
        List<Entry> entries, List<Comparison> topics) {

    public RosterResult {
        sheets = List.copyOf(sheets);
        entries = List.copyOf(entries);
        topics = List.copyOf(topics);
    }

    /**
     * A rider with the recommendation.
     *
     * @param name      as it is shown
     * @param file      the path as typed
     * @param tags      what the rider belongs to
     * @param notes     on the rider, as written; may be empty
     * @param time      of the ride, s; null where it was not estimated
     * @param leastFirm the least firm decision; null where all are firm
     * @param decisions one for each topic, in the order of the catalogue
     */
    public record Entry(String name, String file, List<String> tags, String notes, Range time, LeastFirm leastFirm, List<Decision> decisions) {

        public Entry {
            tags = List.copyOf(tags);
            decisions = List.copyOf(decisions);
        }

        static Entry of(String name, Rider rider, Brief brief) {
            List<LeastFirm> open = brief.leastFirm();
            return new Entry(name, rider.file(), rider.tags(), rider.notes(), brief.demands().estimated() == null ? null : brief.demands().estimated().estimate().total(),
                    open.isEmpty() ? null : open.get(0), brief.decisions());
        }
    }

    /**
     * One topic over all riders.
     *
     * @param topic     the topic
     * @param decisions one for each rider, in the order of the roster
     * @param most      what more than half of the riders have; null where there is no such value
     */
    public record Comparison(Topic topic, List<Decision> decisions, String most) {

        public Comparison {
            decisions = List.copyOf(decisions);
        }

        static Comparison of(Topic topic, List<Decision> decisions) {
            Map<String, Integer> riders = new LinkedHashMap<>();
            decisions.forEach(each -> riders.merge(each.phrase(), 1, Integer::sum));
            String most = riders.keySet().stream().filter(each -> 2 * riders.get(each) > decisions.size()).findFirst().orElse(null);
            return new Comparison(topic, decisions, most);
        }

        /** Whether it comes out alike for all riders. */
        public boolean isAlike() {
            return decisions.stream().map(Decision::phrase).distinct().count() == 1;
        }

        /** Whether there is a value for any rider. */
        public boolean isAnswered() {
            return decisions.stream().anyMatch(each -> each.value() != null);
        }

        /** Whether a rider has another value than most have; false where there is no such value. */
        public boolean differs(int rider) {
            return most != null && !most.equals(decisions.get(rider).phrase());
        }

        /** Whether the topic is the front of that of another, and every rider has the same at both ends. */
        public boolean isPairedWith(Comparison rear) {
            return topic.isFrontOf(rear.topic) && decisions.stream().map(Decision::phrase).toList().equals(rear.decisions.stream().map(Decision::phrase).toList());
        }
    }

    static RosterResult of(Brief any, String folder, List<Entry> entries) {
        List<Comparison> topics = new ArrayList<>();
        for (int i = 0; i < any.decisions().size(); i++) {
            int at = i;
            topics.add(Comparison.of(any.decisions().get(i).topic(), entries.stream().map(each -> each.decisions().get(at)).toList()));
        }
        return new RosterResult(any.course(), any.event(), any.role(), any.date(), any.sheets(), folder, entries, topics);
    }

    /** The topics on which riders differ. */
    public List<Comparison> differing() {
        return topics.stream().filter(each -> !each.isAlike()).toList();
    }

    /** The topics with one value for all. */
    public List<Comparison> alike() {
        return topics.stream().filter(each -> each.isAlike() && each.isAnswered()).toList();
    }

    /** The topics on which a rider has another value than most have. */
    public List<Comparison> differing(int rider) {
        return topics.stream().filter(each -> each.differs(rider)).toList();
    }
}
