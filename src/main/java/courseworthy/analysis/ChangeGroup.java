package courseworthy.analysis;

import courseworthy.analysis.Impact.ChangeLevel;
import courseworthy.analysis.Impact.ItemChange;
import courseworthy.analysis.Impact.ImpactRide;
import courseworthy.analysis.Impact.DecisionChange;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Changes of one kind on one topic, told together: a quantity that goes down, whatever its figures; a value that is chosen now, whatever was
 * before; a standing.
 *
 * @param topics  one; or the front's and the rear's, where both change alike on the same rides
 * @param change  of what kind
 * @param members each change, in the order of rides; of all its topics
 */
public record ChangeGroup(List<Topic> topics, ChangeLevel change, List<DecisionChange> members) {

    public ChangeGroup {
        topics = List.copyOf(topics);
        members = List.copyOf(members);
    }

    /** Items that one rule puts on checklists, takes off them, or words otherwise. */
    public record Items(List<ItemChange> members) {

        public ItemChange first() {
            return members.get(0);
        }

        public Set<ImpactRide> rides() {
            Set<ImpactRide> out = new LinkedHashSet<>();
            members.forEach(each -> out.add(each.ride()));
            return out;
        }
    }

    public Set<ImpactRide> rides() {
        Set<ImpactRide> out = new LinkedHashSet<>();
        members.forEach(each -> out.add(each.ride()));
        return out;
    }

    /** The change that shows it best: one that a row of the sheets brought, and the largest of these; of equals the first. */
    public DecisionChange example() {
        DecisionChange best = members.get(0);
        for (DecisionChange each : members) {
            boolean ofRow = each.cause().through() == null;
            boolean bestOfRow = best.cause().through() == null;
            if (ofRow && !bestOfRow || ofRow == bestOfRow && each.topic().equals(best.topic()) && each.by() > best.by()) {
                best = each;
            }
        }
        return best;
    }

    /** All groups, in the order of topics, then of kinds of change, those of most rides first. */
    public static List<ChangeGroup> of(Impact impact) {
        Map<String, List<DecisionChange>> together = new LinkedHashMap<>();
        for (DecisionChange each : impact.turned()) {
            together.computeIfAbsent(key(each), key -> new ArrayList<>()).add(each);
        }
        List<ChangeGroup> out = new ArrayList<>();
        together.values().forEach(members -> out.add(new ChangeGroup(List.of(members.get(0).topic()), members.get(0).change(), members)));
        out.sort(Comparator.comparingInt((ChangeGroup alike) -> Topics.all().indexOf(alike.topics().get(0))).thenComparing(ChangeGroup::change)
                .thenComparingInt(alike -> -alike.members().size()));
        return withPairs(out);
    }

    private static String key(DecisionChange turned) {
        String to = switch (turned.change()) {
            case UP, DOWN, NEWLY -> "";
            case INSTEAD, NO_LONGER -> turned.is().text();
            case FIRMNESS -> turned.isFirm();
        };
        return turned.topic().name() + "\n" + turned.change() + "\n" + to;
    }

    private static List<ChangeGroup> withPairs(List<ChangeGroup> all) {
        List<ChangeGroup> out = new ArrayList<>();
        for (ChangeGroup each : all) {
            int twin = twin(each, out);
            if (twin < 0) {
                out.add(each);
            } else {
                out.set(twin, both(out.get(twin), each));
            }
        }
        return out;
    }

    private static int twin(ChangeGroup rear, List<ChangeGroup> before) {
        for (int i = 0; i < before.size(); i++) {
            ChangeGroup front = before.get(i);
            boolean pair = front.topics().size() == 1 && front.topics().get(0).isFrontOf(rear.topics().get(0));
            if (pair && steps(front).equals(steps(rear))) {
                return i;
            }
        }
        return -1;
    }

    /** What happens on each ride, without the topic's name. */
    private static List<String> steps(ChangeGroup alike) {
        List<String> out = new ArrayList<>();
        for (DecisionChange each : alike.members()) {
            String what = each.by() != 0 ? Long.toString(each.by()) : each.was().text() + "\n" + each.is().text() + "\n" + each.wasFirm();
            out.add(each.ride().course() + "\n" + each.ride().rider() + "\n" + each.change() + "\n" + what);
        }
        return out;
    }

    private static ChangeGroup both(ChangeGroup front, ChangeGroup rear) {
        List<DecisionChange> members = new ArrayList<>();
        for (int i = 0; i < front.members().size(); i++) {
            members.add(front.members().get(i));
            members.add(rear.members().get(i));
        }
        return new ChangeGroup(List.of(front.topics().get(0), rear.topics().get(0)), front.change(), members);
    }

    /** Items of checklists, in order of time, those that come first. */
    public static List<Items> items(Impact impact) {
        Map<String, List<ItemChange>> together = new LinkedHashMap<>();
        for (ItemChange each : impact.listed()) {
            String key = each.how() + "\n" + each.task().origin().rule() + "\n" + each.task().due();
            together.computeIfAbsent(key, k -> new ArrayList<>()).add(each);
        }
        List<Items> out = new ArrayList<>();
        together.values().forEach(members -> out.add(new Items(members)));
        out.sort(Comparator.comparing((Items items) -> items.first().task().due()).thenComparing(items -> items.first().how())
                .thenComparing(items -> items.first().task().origin().rule()));
        return out;
    }
}
