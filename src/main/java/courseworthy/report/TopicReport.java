package courseworthy.report;

import courseworthy.decision.Decision;
import courseworthy.report.ItemList.Item;
import courseworthy.task.Brief;
import courseworthy.task.TopicResult;
import courseworthy.topic.Topic;
import courseworthy.worth.Alternative;
import courseworthy.worth.Worth;
import java.util.ArrayList;
import java.util.List;

/** One topic of a brief in full: its settings, what it gains or costs, every claim for and against, and what would change it. */
public final class TopicReport {

    private TopicReport() {
    }

    public static Report of(TopicResult result) {
        return of(result, RuleLinks.NONE);
    }

    /** @param links from reasons to the pages of rules */
    public static Report of(TopicResult result, RuleLinks links) {
        Brief brief = result.brief();
        Decision decision = brief.on(result.topic());
        Report.Builder out = ClaimItems.head(brief, decision).paragraph(decision.topic().about() + ".").caution(RichText.ofQuoted(Phrases.sentence(decision.why())))
                .paragraph(RichText.ofQuoted(brief.course().name()).text(", " + ReportHead.purpose(brief)))
                .paragraphs(SheetNames.paragraphs(brief.sheets()))
                .paragraphs(GroundPhrases.paragraphs(brief.course())).caution(GroundPhrases.rests(brief, decision))
                .section(settings(brief, result.topic())).section(gains(WorthReport.worth(brief, decision.topic())));
        out.section(FirmnessReport.section(brief, decision));
        addClaims(out, decision, links);
        return out.section(FlipReport.section(result.flips())).section(unchecked(brief, result.topic())).build();
    }

    private static Section.Builder settings(Brief brief, Topic topic) {
        return Section.builder("settings", "To set").bullets(SettingReport.details(brief.outlook(), topic).stream().map(RichText::ofQuoted).toList());
    }

    private static Section.Builder gains(Worth worth) {
        Section.Builder out = Section.builder("gains", "Time gained or lost on this course");
        if (worth != null && worth.gears() != null) {
            GearsReport.addRecommended(out, worth.gears());
        }
        addGains(out, worth);
        return out;
    }

    /** What other values would save or cost; nothing where it is null. */
    static void addGains(ContentBuilder<?> out, Worth worth) {
        if (worth == null) {
            return;
        }
        if (worth.extensions() != null) {
            out.paragraph(RichText.ofStrong(Phrases.capital(WorthReport.extensions(worth.extensions())) + "."))
                    .paragraph("This includes carrying their " + Figures.mass(worth.extensions().mass()) + " throughout.");
        }
        List<Item> alternatives = new ArrayList<>();
        for (Alternative each : worth.alternatives()) {
            alternatives.add(Item.of(RichText.ofStrong(Phrases.capital(WorthReport.alternative(each)) + "."),
                    WorthReport.lines(each).stream().map(RichText::of).toList()));
        }
        out.items(alternatives);
        worth.notes().forEach(out::remark);
    }

    private static void addClaims(Report.Builder out, Decision decision, RuleLinks links) {
        List<Item> taken = decision.taken().stream().map(claim -> ClaimItems.full(claim, links)).toList();
        List<Item> lost = decision.lost().stream().map(each -> ClaimItems.full(each, links)).toList();
        boolean decided = decision.value() != null;
        out.section(Section.builder("for", decided ? "For" : "Limits")
                .paragraph(decided && taken.isEmpty() ? "No rule recommends it; it is the default." : "").items(taken));
        out.section(Section.builder("against", decided ? "Against" : "Set aside")
                .paragraph(decided && lost.isEmpty() ? "No rule recommends anything else." : "").items(lost));
    }

    private static Section.Builder unchecked(Brief brief, Topic topic) {
        return Section.builder("unchecked", "Rules not checked: missing information").bullets(uncheckedRules(brief, topic));
    }

    /** Rules on a topic that could not be checked, with what they need. */
    static List<RichText> uncheckedRules(Brief brief, Topic topic) {
        return brief.undetermined().stream().filter(rule -> rule.topics().contains(topic.name()))
                .map(rule -> RichText.ofQuoted(rule.origin().rule() + ": needs " + String.join(", ", rule.wanting()) + " (" + rule.origin().where() + ")"))
                .toList();
    }
}
