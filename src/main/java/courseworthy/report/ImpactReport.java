package courseworthy.report;

import courseworthy.analysis.ChangeGroup;
import courseworthy.analysis.Impact;
import courseworthy.analysis.Impact.ChangeLevel;
import courseworthy.analysis.Impact.ItemChange;
import courseworthy.analysis.Impact.ImpactRide;
import courseworthy.analysis.Impact.DecisionChange;
import courseworthy.claim.Task;
import courseworthy.topic.BothEnds;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What another sheet changes, for whom and on which courses. */
public final class ImpactReport {

    private final Impact impact;
    private final ImpactPhrases words;

    private ImpactReport(Impact impact, boolean whole) {
        this.impact = impact;
        this.words = new ImpactPhrases(impact, whole);
    }

    /** What changes, changes of one kind together; an empty report where nothing changes. */
    public static Report of(Impact impact) {
        if (impact.changed() == 0) {
            return Report.EMPTY;
        }
        ImpactReport report = new ImpactReport(impact, false);
        List<ChangeGroup> groups = ChangeGroup.of(impact);
        return report.head()
                .section(report.groups("other-decisions", "Different decisions", groups.stream().filter(each -> each.change() != ChangeLevel.FIRMNESS).toList()))
                .section(report.groups("other-firmness", "The same decisions, more or less firm",
                        groups.stream().filter(each -> each.change() == ChangeLevel.FIRMNESS).toList()))
                .section(report.checklist())
                .section(Section.builder("more", "More").paragraph(RichText.EMPTY.code("--topic NAME").text(" shows one topic in full, ")
                        .code("--format json").text(" all of them."))).build();
    }

    /** One topic in full: each change by itself, with everyone it concerns; an empty report where nothing changes. */
    public static Report ofTopic(Impact impact) {
        if (impact.changed() == 0) {
            return Report.EMPTY;
        }
        ImpactReport report = new ImpactReport(impact, true);
        Map<String, Set<ImpactRide>> rides = new LinkedHashMap<>();
        Map<String, DecisionChange> firsts = new LinkedHashMap<>();
        for (DecisionChange each : impact.turned()) {
            String what = step(each);
            rides.computeIfAbsent(what, key -> new LinkedHashSet<>()).add(each.ride());
            firsts.putIfAbsent(what, each);
        }
        List<ItemList.Item> items = new ArrayList<>();
        rides.entrySet().stream().sorted((a, b) -> b.getValue().size() - a.getValue().size())
                .forEach(each -> items.add(report.item(each.getKey(), each.getValue(), report.example(each.getKey(), firsts.get(each.getKey()), ""))));
        return report.head().section(Section.builder("topic", RichText.ofQuoted(impact.topics().get(0).name())).items(items)).build();
    }

    private Report.Builder head() {
        return Report.builder(RichText.of("What the new sheet changes")).paragraph(RichText.ofStrong(words.summary()))
                .paragraph(RichText.ofQuoted(words.sheets()));
    }

    private static String step(DecisionChange turned) {
        return turned.change() == ChangeLevel.FIRMNESS ? turned.is().phrase() + ", " + turned.wasFirm() + " becomes "
                + turned.isFirm() : turned.was().phrase() + " becomes " + turned.is().phrase();
    }

    private Section.Builder groups(String id, String heading, List<ChangeGroup> groups) {
        List<ItemList.Item> items = new ArrayList<>();
        for (ChangeGroup each : groups) {
            String what = ImpactPhrases.topics(each) + ": " + ImpactPhrases.what(each);
            items.add(item(what, each.rides(), example(what, each.example(), ImpactPhrases.others(each))));
        }
        return Section.builder(id, heading).items(items);
    }

    private ItemList.Item item(String what, Set<ImpactRide> rides, RichText example) {
        return new ItemList.Item(RichText.ofQuoted(what + "; " + words.howMany(rides)).in(Style.STRONG),
                List.of(new Paragraph(RichText.ofQuoted(words.whom(rides)), Paragraph.Role.BODY), new Paragraph(example, Paragraph.Role.REMARK)));
    }

    private RichText example(String what, DecisionChange example, String others) {
        String topic = impact.topics().size() > 1 && what.startsWith(BothEnds.WORDS) ? example.topic().name() + ", " : "";
        return RichText.of("Example: ").quoted(topic + ImpactPhrases.example(example) + ". " + ImpactPhrases.why(example) + others);
    }

    private Section.Builder checklist() {
        List<ItemList.Item> items = new ArrayList<>();
        for (ChangeGroup.Items each : ChangeGroup.items(impact)) {
            ItemChange first = each.first();
            items.add(item(first.how().words() + ": " + first.task().due().words() + ", " + first.task().what(), each.rides(),
                    RichText.of("Example: ").quoted(ImpactPhrases.named(first.ride()) + ", " + listed(first))));
        }
        return Section.builder("checklist", "On the checklist").items(items);
    }

    private static String listed(ItemChange listed) {
        Task task = listed.task();
        String row = task.origin().rule() + " (" + task.origin().where() + ")";
        return listed.was() == null || listed.is() == null ? "by " + row + ": " + task.origin().because()
                : "\"" + text(listed.was()) + "\" becomes \"" + text(task) + "\", by " + row + ".";
    }

    private static String text(Task task) {
        return task.what() + ". " + task.find();
    }
}
