package courseworthy.analysis;

import courseworthy.call.Call;
import courseworthy.call.Firmness;
import courseworthy.claim.Task;
import courseworthy.decision.Decision;
import courseworthy.sheet.Sheet;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * What other sheets change of many calls: every rider of a roster on every course of a library.
 *
 * @param before  the sheets as they were
 * @param after   the sheets as they are
 * @param courses the library
 * @param riders  the roster
 * @param changed how many calls are changed at all
 * @param turned  every decision that turned out differently on a ride, course by course, rider by rider, in the order of topics
 * @param listed  every item of a checklist that comes, goes or is worded differently on a ride, in the same order
 */
public record Impact(List<Sheet> before, List<Sheet> after, List<ChangedRule> courses, List<ChangedRule> riders, int changed, List<DecisionChange> turned,
        List<ItemChange> listed) {

    public Impact {
        before = List.copyOf(before);
        after = List.copyOf(after);
        courses = List.copyOf(courses);
        riders = List.copyOf(riders);
        turned = List.copyOf(turned);
        listed = List.copyOf(listed);
    }

    /**
     * A course or a rider.
     *
     * @param kinds what it has in common with others
     */
    public record ChangedRule(String name, List<Kind> kinds) {
    }

    /** What some riders or courses have in common, as words that follow the noun: {@code with a}, {@code gravel}, {@code bike}. */
    public record Kind(String before, String word, String after) {
    }

    /** Whose call on which course. */
    public record ImpactRide(String course, String rider) {
    }

    /** What kind of change it is, in the order in which they are told. */
    public enum ChangeLevel {
        DOWN("down"), UP("up"),
        /** Another of the chosen values; or another reason that there is none. */
        INSTEAD("instead"), NEWLY("newly decided"), NO_LONGER("no longer decided"),
        /** The same value, more or less firmly. */
        FIRMNESS("firmness");

        private final String words;

        ChangeLevel(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        static ChangeLevel of(Decision was, Decision is) {
            if (was.text().equals(is.text())) {
                return FIRMNESS;
            }
            if (was.value() == null || is.value() == null) {
                return was.value() != null ? NO_LONGER : is.value() != null ? NEWLY : INSTEAD;
            }
            boolean measured = is.topic().kind() == Topic.Kind.QUANTITY && !was.value().equals(is.value());
            return !measured ? INSTEAD : is.value() > was.value() ? UP : DOWN;
        }
    }

    /**
     * One decision that turned out differently on one ride, or is only more or less firm.
     *
     * @param wasFirm how firm it was, in a word; empty where it had no value
     * @param isFirm  how firm it is, likewise
     * @param cause   what brought it
     */
    public record DecisionChange(ImpactRide ride, Decision was, Decision is, String wasFirm, String isFirm, ChangeLevel change, ChangeCause cause) {

        public Topic topic() {
            return is.topic();
        }

        /** By how many ticks a quantity changed, 0 where it is none or was not decided both times. */
        public long by() {
            return change == ChangeLevel.UP || change == ChangeLevel.DOWN ? Math.abs(is.value() - was.value()) : 0;
        }
    }

    /** What becomes of an item of a checklist. */
    public enum ListingChange {
        COMES("comes"), GOES("goes"), REWORDED("is worded differently");

        private final String words;

        ListingChange(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * An item of a checklist that comes, goes or is worded differently on one ride.
     *
     * @param was null where it comes
     * @param is  null where it goes
     */
    public record ItemChange(ImpactRide ride, ListingChange how, Task was, Task is) {

        /** The item as it is, or as it was where it goes. */
        public Task task() {
            return is == null ? was : is;
        }
    }

    /**
     * A call under some sheets.
     *
     * @param tasks what is on its checklist
     */
    public record Side(List<Sheet> sheets, Call call, List<Task> tasks) {
    }

    /** What is changed of one call. */
    public record ImpactDifference(List<DecisionChange> turned, List<ItemChange> listed) {

        boolean none() {
            return turned.isEmpty() && listed.isEmpty();
        }
    }

    /** How many calls were compared. */
    public int calls() {
        return courses.size() * riders.size();
    }

    /** The topics touched, in the order of the catalogue. */
    public List<Topic> topics() {
        Set<Topic> touched = new LinkedHashSet<>();
        turned.forEach(each -> touched.add(each.topic()));
        return Topics.all().stream().filter(touched::contains).toList();
    }

    /** Only what is changed on one topic, with all that was compared. */
    public Impact on(Topic topic) {
        List<DecisionChange> one = turned.stream().filter(each -> each.topic().equals(topic)).toList();
        Set<ImpactRide> rides = new LinkedHashSet<>();
        one.forEach(each -> rides.add(each.ride()));
        return new Impact(before, after, courses, riders, rides.size(), one, List.of());
    }

    /** Compares many calls. */
    public static Impact of(List<Sheet> before, List<Sheet> after, List<ChangedRule> courses, List<ChangedRule> riders, List<ImpactDifference> differences) {
        List<DecisionChange> turned = new ArrayList<>();
        List<ItemChange> listed = new ArrayList<>();
        int changed = 0;
        for (ImpactDifference one : differences) {
            changed += one.none() ? 0 : 1;
            turned.addAll(one.turned());
            listed.addAll(one.listed());
        }
        return new Impact(before, after, courses, riders, changed, turned, listed);
    }

    /** Compares two calls for one ride. */
    public static ImpactDifference between(ImpactRide ride, Side before, Side after) {
        Map<Topic, DecisionChange> turned = new LinkedHashMap<>();
        for (Topic topic : inLayers()) {
            Decision one = before.call().on(topic);
            Decision other = after.call().on(topic);
            String wasFirm = word(before.call().firmness(topic));
            String isFirm = word(after.call().firmness(topic));
            if (!one.text().equals(other.text()) || !wasFirm.equals(isFirm)) {
                ChangeCause cause = ChangeCause.of(one, other, before.sheets(), after.sheets(), turned);
                turned.put(topic, new DecisionChange(ride, one, other, wasFirm, isFirm, ChangeLevel.of(one, other), cause));
            }
        }
        List<DecisionChange> inOrder = Topics.all().stream().map(turned::get).filter(Objects::nonNull).toList();
        return new ImpactDifference(inOrder, listed(ride, before.tasks(), after.tasks()));
    }

    private static String word(Firmness firmness) {
        return firmness == null ? "" : firmness.word();
    }

    /** What is decided first comes first, so that what follows from it can be told so. */
    private static List<Topic> inLayers() {
        List<Topic> out = new ArrayList<>(Topics.all());
        out.sort(java.util.Comparator.comparingInt(Topic::layer));
        return out;
    }

    private static List<ItemChange> listed(ImpactRide ride, List<Task> before, List<Task> after) {
        List<Task> gone = without(before, after);
        List<ItemChange> out = new ArrayList<>();
        for (Task task : without(after, before)) {
            Task was = ofRule(task.origin().rule(), gone);
            gone.remove(was);
            out.add(new ItemChange(ride, was == null ? ListingChange.COMES : ListingChange.REWORDED, was, task));
        }
        gone.forEach(task -> out.add(new ItemChange(ride, ListingChange.GOES, task, null)));
        return out;
    }

    private static List<Task> without(List<Task> tasks, List<Task> others) {
        Set<String> known = new LinkedHashSet<>();
        others.forEach(task -> known.add(text(task)));
        List<Task> out = new ArrayList<>();
        for (Task task : tasks) {
            if (!known.contains(text(task))) {
                out.add(task);
            }
        }
        return out;
    }

    private static Task ofRule(String rule, List<Task> tasks) {
        for (Task task : tasks) {
            if (task.origin().rule().equals(rule)) {
                return task;
            }
        }
        return null;
    }

    private static String text(Task task) {
        return task.due().ordinal() + " " + task.what() + "\n" + task.find();
    }
}
