package courseworthy.report;

import courseworthy.decision.Decision;
import courseworthy.report.SetUpSummary.Entry;
import courseworthy.stage.StageDay;
import courseworthy.stage.StageSetUp.RaceTopic;
import courseworthy.task.StagesResult;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The set-up of a race of stages as a card: large, what stays the same every day; below it, what is set for each day; last, what is least sure. */
final class StagesCard {

    private final StagesResult result;
    private final List<StageDay> days;

    private StagesCard(StagesResult result) {
        this.result = result;
        days = result.setUp().days();
    }

    static Section.Builder section(StagesResult result) {
        return new StagesCard(result).section();
    }

    private Section.Builder section() {
        List<List<Entry>> byDay = days.stream().map(day -> SetUpSummary.of(day.settled())).toList();
        List<Definition> rows = new ArrayList<>();
        for (Entry entry : byDay.get(0)) {
            rows.add(entry.about().equals(SetUpSummary.GEARS) ? gears(entry) : row(entry, byDay.stream().map(day -> named(day, entry.about())).toList()));
        }
        if (result.builds().size() == 1 && result.build() != null) {
            rows.add(Definition.of(SetUpSummary.BUILD, RichText.ofQuoted(result.build().bike().name())));
        }
        return Section.builder("in-short", "In short").settings(rows).note(leastSure());
    }

    /** As teeth, where a stage alone would want the same gears and so has looked for them. */
    private Definition gears(Entry entry) {
        String easiest = teeth(Topics.EASIEST_GEAR);
        String hardest = teeth(Topics.HARDEST_GEAR);
        Definition out = Definition.of(entry.about(), RichText.of(easiest.isEmpty() || hardest.isEmpty() ? leading(entry) : easiest + " to " + hardest));
        String more = more(entry);
        return more.isEmpty() ? out : out.details(List.of(RichText.of(more)));
    }

    private String teeth(Topic topic) {
        Long value = days.get(0).settled().on(topic).value();
        return days.stream().flatMap(day -> Stream.of(day.settled().on(topic), day.alone().on(topic))).filter(each -> value != null && value.equals(each.value()))
                .map(Decision::label).filter(label -> !label.isEmpty()).findFirst().orElse("");
    }

    private static String more(Entry entry) {
        return String.join(", ", entry.parts().subList(entry.leading(), entry.parts().size()));
    }

    private static Entry named(List<Entry> entries, String about) {
        return entries.stream().filter(each -> each.about().equals(about)).findFirst().orElse(new Entry(about, List.of(), 0));
    }

    private static Definition row(Entry first, List<Entry> days) {
        Map<String, List<String>> stages = new LinkedHashMap<>();
        for (int i = 0; i < days.size(); i++) {
            stages.computeIfAbsent(leading(days.get(i)), text -> new ArrayList<>()).add(Integer.toString(i + 1));
        }
        List<String> lines = new ArrayList<>();
        if (stages.size() > 1) {
            stages.forEach((text, numbers) -> lines.add("stage " + String.join(", ", numbers) + (text.equals(leading(first)) ? "" : ": " + (text.isEmpty() ? "none" : text))));
        }
        String more = more(first);
        boolean always = days.stream().allMatch(day -> more(day).equals(more));
        String below = String.join("; ", lines) + (lines.isEmpty() || more.isEmpty() || !always ? "" : "; ") + (always ? more : "");
        Definition out = Definition.of(first.about(), RichText.ofQuoted(leading(first)));
        return below.isEmpty() ? out : out.details(List.of(RichText.ofQuoted(below)));
    }

    private static String leading(Entry entry) {
        return String.join(", ", entry.parts().subList(0, entry.leading())).replace(SetUpSummary.UNSURE, "").replace(SetUpCard.BOTH_ENDS, "");
    }

    /** The compromise that costs most time; empty where every day wants the same. */
    private RichText leastSure() {
        return result.setUp().compromises().stream().filter(each -> each.loss() != null).max(Comparator.comparingDouble((RaceTopic each) -> each.loss().mid()))
                .map(each -> RichText.of("Least sure: " + each.topic().name() + ". Not every day wants the same, and it costs " + Figures.time(each.loss()) + ". ")
                        .crossReference("Where days differ", StagesReport.SET_UP).text(".")).orElse(RichText.EMPTY);
    }
}
