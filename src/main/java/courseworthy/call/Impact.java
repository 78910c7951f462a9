package courseworthy.call;

import courseworthy.claim.Claim;
import courseworthy.claim.Task;
import courseworthy.decision.Decision;
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
 * What other rules change of many calls, alike changes together.
 *
 * @param rides     how many calls were compared
 * @param riders    how many riders there are, each on every course
 * @param changed   how many of them are changed at all
 * @param decisions what is decided otherwise, in the order of topics, most rides first
 * @param sureness  what is decided alike, but more or less surely
 * @param items     what is added to checklists or gone from them, in order of time
 */
public record Impact(int rides, int riders, int changed, List<Turned> decisions, List<Turned> sureness, List<Item> items) {

    /** Whose call on which course. */
    public record Ride(String course, String rider) {
    }

    /**
     * One decision that turned out otherwise on some rides.
     *
     * @param from  what it was, in words
     * @param to    what it is, in words
     * @param rides where
     * @param now   a claim that speaks on the first of them and did not before; null where there is none
     * @param gone  a claim that spoke on the first of them and does not any more; null where there is none
     */
    public record Turned(Topic topic, String from, String to, List<Ride> rides, Claim now, Claim gone) {
    }

    /**
     * Something to do that is added, or gone.
     *
     * @param added false where it is gone
     * @param rides where
     */
    public record Item(boolean added, Task task, List<Ride> rides) {
    }

    /**
     * What is changed of one call.
     *
     * @param decisions those that turned out otherwise
     * @param sureness  those that are only more or less sure
     * @param items     what is added to the checklist or gone from it
     */
    public record Difference(List<Turned> decisions, List<Turned> sureness, List<Item> items) {

        boolean none() {
            return decisions.isEmpty() && sureness.isEmpty() && items.isEmpty();
        }
    }

    /** Compares two calls for one ride. */
    public static Difference between(Ride ride, Call before, Call after) {
        List<Turned> decisions = new ArrayList<>();
        List<Turned> sureness = new ArrayList<>();
        for (Topic topic : Topics.all()) {
            Decision was = before.on(topic);
            Decision is = after.on(topic);
            if (!was.text().equals(is.text())) {
                decisions.add(turned(ride, was, is, was.text(), is.text()));
            } else if (was.standing() != is.standing()) {
                sureness.add(turned(ride, was, is, was.text() + ", " + was.standing().word(), is.standing().word()));
            }
        }
        List<Item> items = new ArrayList<>();
        items(ride, after.tasks(), before.tasks(), true, items);
        items(ride, before.tasks(), after.tasks(), false, items);
        return new Difference(decisions, sureness, items);
    }

    private static Turned turned(Ride ride, Decision was, Decision is, String from, String to) {
        return new Turned(is.topic(), from, to, List.of(ride), first(is.taken(), was.taken()), first(was.taken(), is.taken()));
    }

    /** The first claim of some that others do not make. */
    private static Claim first(List<Claim> claims, List<Claim> others) {
        Set<String> said = new LinkedHashSet<>();
        others.forEach(claim -> said.add(key(claim)));
        for (Claim claim : claims) {
            if (!said.contains(key(claim))) {
                return claim;
            }
        }
        return null;
    }

    private static String key(Claim claim) {
        return claim.author().rule() + " " + claim.verb() + " " + claim.written() + " " + claim.author().force();
    }

    private static void items(Ride ride, List<Task> tasks, List<Task> others, boolean added, List<Item> out) {
        Set<String> known = new LinkedHashSet<>();
        others.forEach(task -> known.add(key(task)));
        for (Task task : tasks) {
            if (!known.contains(key(task))) {
                out.add(new Item(added, task, List.of(ride)));
            }
        }
    }

    private static String key(Task task) {
        return task.due().ordinal() + " " + task.what() + "\n" + task.find();
    }

    /**
     * Puts what is alike together.
     *
     * @param riders how many riders there are, each on every course
     */
    public static Impact of(List<Difference> rides, int riders) {
        Map<String, List<Turned>> decisions = new LinkedHashMap<>();
        Map<String, List<Turned>> sureness = new LinkedHashMap<>();
        Map<String, List<Item>> items = new LinkedHashMap<>();
        int changed = 0;
        for (Difference one : rides) {
            changed += one.none() ? 0 : 1;
            one.decisions().forEach(turned -> decisions.computeIfAbsent(key(turned), k -> new ArrayList<>()).add(turned));
            one.sureness().forEach(turned -> sureness.computeIfAbsent(key(turned), k -> new ArrayList<>()).add(turned));
            one.items().forEach(item -> items.computeIfAbsent(item.added() + key(item.task()), k -> new ArrayList<>()).add(item));
        }
        return new Impact(rides.size(), riders, changed, together(decisions), together(sureness), itemsTogether(items));
    }

    private static String key(Turned turned) {
        return turned.topic().name() + "\n" + turned.from() + "\n" + turned.to();
    }

    private static List<Turned> together(Map<String, List<Turned>> alike) {
        List<Turned> out = new ArrayList<>();
        for (List<Turned> group : alike.values()) {
            Turned first = group.get(0);
            List<Ride> rides = group.stream().map(turned -> turned.rides().get(0)).toList();
            out.add(new Turned(first.topic(), first.from(), first.to(), rides, first.now(), first.gone()));
        }
        out.sort(Comparator.comparingInt((Turned turned) -> Topics.all().indexOf(turned.topic()))
                .thenComparingInt(turned -> -turned.rides().size()).thenComparing(Turned::from).thenComparing(Turned::to));
        return out;
    }

    private static List<Item> itemsTogether(Map<String, List<Item>> alike) {
        List<Item> out = new ArrayList<>();
        for (List<Item> group : alike.values()) {
            out.add(new Item(group.get(0).added(), group.get(0).task(), group.stream().map(item -> item.rides().get(0)).toList()));
        }
        out.sort(Comparator.comparing((Item item) -> item.task().due()).thenComparing(item -> !item.added())
                .thenComparing(item -> item.task().what()).thenComparing(item -> item.task().find()));
        return out;
    }
}
