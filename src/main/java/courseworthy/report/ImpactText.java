package courseworthy.report;

import courseworthy.analysis.ChangeGroup;
import courseworthy.analysis.Impact;
import courseworthy.analysis.Impact.Change;
import courseworthy.analysis.Impact.Listed;
import courseworthy.analysis.Impact.Ride;
import courseworthy.analysis.Impact.Turned;
import courseworthy.claim.Task;
import courseworthy.report.Page.Weight;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Writes what another sheet changes, for the terminal; nothing where nothing changes. */
public final class ImpactText {

    private final Page page;
    private final Impact impact;
    private final ImpactWords words;

    private ImpactText(Impact impact, boolean whole, boolean colours) {
        this.impact = impact;
        this.words = new ImpactWords(impact, whole);
        this.page = new Page(colours);
    }

    /** What changes, alike changes together. */
    public static String of(Impact impact, boolean colours) {
        if (impact.changed() == 0) {
            return "";
        }
        ImpactText text = new ImpactText(impact, false, colours);
        text.head();
        List<ChangeGroup> all = ChangeGroup.of(impact);
        text.groups("DECIDED OTHERWISE", all.stream().filter(each -> each.change() != Change.STANDING).toList());
        text.groups("DECIDED ALIKE, MORE OR LESS SURELY", all.stream().filter(each -> each.change() == Change.STANDING).toList());
        text.items();
        text.page.gap();
        text.page.text(0, 0, "--topic NAME shows one topic in full; --format json all of it.", Weight.FAINT);
        return text.page.toString();
    }

    /** One topic in full: each change by itself, with everyone it concerns. */
    public static String ofTopic(Impact impact, boolean colours) {
        if (impact.changed() == 0) {
            return "";
        }
        ImpactText text = new ImpactText(impact, true, colours);
        text.head();
        text.page.heading(impact.topics().get(0).name());
        Map<String, Set<Ride>> rides = new LinkedHashMap<>();
        Map<String, Turned> firsts = new LinkedHashMap<>();
        for (Turned each : impact.turned()) {
            String what = step(each);
            rides.computeIfAbsent(what, key -> new LinkedHashSet<>()).add(each.ride());
            firsts.putIfAbsent(what, each);
        }
        rides.entrySet().stream().sorted((a, b) -> b.getValue().size() - a.getValue().size())
                .forEach(each -> text.group(each.getKey(), each.getValue(), firsts.get(each.getKey()), ""));
        return text.page.toString();
    }

    private static String step(Turned turned) {
        return turned.change() == Change.STANDING ? turned.is().text() + ", " + turned.was().standing().word() + " becomes "
                + turned.is().standing().word() : turned.was().text() + " becomes " + turned.is().text();
    }

    private void head() {
        page.text(0, 2, words.summary(), Weight.BOLD);
        page.text(0, 2, words.sheets(), Weight.PLAIN);
    }

    private void groups(String heading, List<ChangeGroup> groups) {
        if (!groups.isEmpty()) {
            page.heading(heading);
            groups.forEach(each -> group(ImpactWords.topics(each) + ": " + ImpactWords.what(each), each.rides(), each.example(),
                    ImpactWords.others(each)));
        }
    }

    private void group(String what, Set<Ride> rides, Turned example, String others) {
        page.text(2, 6, what + "; " + words.howMany(rides), Weight.BOLD);
        page.text(6, 6, words.whom(rides), Weight.PLAIN);
        String topic = impact.topics().size() > 1 && what.startsWith("front and rear") ? example.topic().name() + ", " : "";
        page.text(6, 6, "Example: " + topic + ImpactWords.example(example) + ". " + ImpactWords.why(example) + others, Weight.FAINT);
    }

    private void items() {
        List<ChangeGroup.Items> all = ChangeGroup.items(impact);
        if (all.isEmpty()) {
            return;
        }
        page.heading("ON THE CHECKLIST");
        for (ChangeGroup.Items each : all) {
            Listed first = each.first();
            Task task = first.task();
            page.text(2, 6, first.how().words() + ": " + task.due().words() + ", " + task.what() + "; " + words.howMany(each.rides()), Weight.BOLD);
            page.text(6, 6, words.whom(each.rides()), Weight.PLAIN);
            page.text(6, 6, "Example: " + ImpactWords.named(first.ride()) + ", " + example(first), Weight.FAINT);
        }
    }

    private static String example(Listed listed) {
        Task task = listed.task();
        String row = task.author().rule() + " (" + task.author().where() + ")";
        return listed.was() == null || listed.is() == null ? "by " + row + ": " + task.author().because()
                : "\"" + text(listed.was()) + "\" becomes \"" + text(task) + "\", by " + row + ".";
    }

    private static String text(Task task) {
        return task.what() + ". " + task.find();
    }
}
