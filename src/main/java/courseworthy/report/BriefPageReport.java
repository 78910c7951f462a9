package courseworthy.report;

import courseworthy.call.CloseThreshold;
import courseworthy.call.Flip;
import courseworthy.claim.Claim;
import courseworthy.claim.TestedFact;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Status;
import courseworthy.demand.Demands.AssumedInput;
import courseworthy.demand.Measure;
import courseworthy.report.ItemList.Item;
import courseworthy.task.Brief;
import courseworthy.topic.Topic;
import courseworthy.topic.TopicGroup;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A brief in the order in which a page of it is read: what to set and to pack first, then what is least firm, the plan, what is not usual and
 * what to watch; then each topic with its reasons, to be opened, and what was assumed.
 */
public final class BriefPageReport {

    private static final String TOPICS = "topics";
    private static final String TRIED = "What would change a decision: each known figure was changed alone, to half and to double of what it is or over half of its scale,"
            + " on this kind of bike; the nearest changes are shown. What is unknown was not tried.";
    private static final String CHANGES = "What would change it:";
    private static final String NONE = "No such change of a single figure would change it.";

    private final Brief brief;
    private final BriefReport parts;
    private final Map<String, AssumedInput> assumed = new LinkedHashMap<>();

    private final RuleLinks links;

    private BriefPageReport(Brief brief, RuleLinks links) {
        this.brief = brief;
        this.links = links;
        parts = new BriefReport(brief);
        brief.demands().assumed().forEach(each -> assumed.put(each.what(), each));
    }

    public static Report of(Brief brief) {
        return of(brief, RuleLinks.NONE);
    }

    /** @param links from reasons to the pages of rules */
    public static Report of(Brief brief, RuleLinks links) {
        return new BriefPageReport(brief, links).report();
    }

    private Report report() {
        Report.Builder out = Report.builder(RichText.ofQuoted(brief.course().name())).subtitle(subtitle()).identity(ReportHead.identity(brief)).paragraph(ReportHead.notes(brief))
                .paragraph(ReportHead.shared(brief));
        plan(out);
        out.section(unusual()).section(BriefReport.cautions("Cautions", Phrases.cautions(brief)))
                .section(WorthReport.onPage(brief).figure(PictureReport.worth(brief))).section(BuildReport.section(brief.build(), PictureReport.beforeAfter(brief)))
                .section(parts.leaveAlone())
                .section(Section.builder("back-plan", "The work before the start").figure(PictureReport.backPlan(brief))).section(ChecklistReport.onPage(brief.checklist()));
        return out.section(topics()).section(assumed()).section(parts.missing()).section(course()).build();
    }

    /** What to set, and the day. */
    private void plan(Report.Builder out) {
        out.section(SetUpCard.section(brief)).section(SettingReport.section(brief).figure(PictureReport.pressures(brief)))
                .section(Section.builder("long-section", "The course from start to finish").figure(PictureReport.longSection(brief)))
                .section(Section.builder("gear-ladder", "The gears on its climbs").figure(PictureReport.gearLadder(brief)))
                .section(PlanReport.section(brief)).section(Section.builder("day", "Hour by hour").figure(PictureReport.day(brief)))
                .section(ForecastReport.section(brief)).section(BikeAtHandReport.section(brief.outlook().bikeAtHand()));
    }

    /** {@code Race, 20 June 2026, for Kim}: short, since the set-up is to follow on the first screen of a phone. */
    private RichText subtitle() {
        RichText date = RichText.of(brief.date() == null ? "" : Phrases.date(brief.date()));
        return RichText.join(", ", List.of(RichText.of(Phrases.capital(brief.role())), date, RichText.ofQuoted(Phrases.whose(brief))));
    }

    private Section.Builder unusual() {
        return Section.builder(SetUpCard.CHECK_FIRST, "Not your usual, or not firm").bullets(parts.unusual())
                .bullets(SetUpCard.LEAST_FIRM, brief.leastFirm().stream().map(SetUpCard::leastFirm).toList()).section(parts.close());
    }

    private Section.Builder topics() {
        Section.Builder out = Section.builder(TOPICS, "Every decision with its reasons").remark(BriefReport.FIRMNESS_MEANS).remark(brief.detail() == null ? "" : TRIED);
        for (TopicGroup group : TopicGroup.values()) {
            Section.Builder ofGroup = Section.builder(TOPICS + "-" + slug(group.title()), group.title());
            brief.decisions().stream().filter(each -> each.topic().group() == group).filter(each -> each.status() != Status.NOT_APPLICABLE)
                    .forEach(each -> ofGroup.section(topic(each)));
            out.section(ofGroup);
        }
        List<String> without = Phrases.without(brief.decisions());
        return out.remark(without.isEmpty() ? "" : "Does not apply to this bike: " + String.join(", ", without) + ".");
    }

    private Section.Builder topic(Decision decision) {
        Topic topic = decision.topic();
        Section.Builder out = Section.builder(anchor(topic), RichText.of(topic.name() + ": ").quoted(decision.phrase())).detail()
                .aside(Phrases.standing(brief, decision))
                .paragraph(Phrases.sentence(topic.about())).caution(RichText.ofQuoted(Phrases.sentence(decision.why())))
                .caution(GroundPhrases.rests(brief, decision))
                .bullets("To set:", SettingReport.details(brief.outlook(), topic).stream().map(RichText::ofQuoted).toList());
        boolean decided = decision.value() != null;
        listed(out, decided ? "For:" : "Limits:", decision.taken().stream().map(claim -> ClaimItems.full(claim, links)).toList(),
                decided ? "No rule recommends it; it is the default." : "");
        listed(out, decided ? "Against:" : "Set aside:", decision.lost().stream().map(lost -> ClaimItems.full(lost, links)).toList(),
                decided ? "No rule recommends anything else." : "");
        FirmnessReport.addTo(out, brief, decision);
        out.paragraph(assumedUnder(decision));
        TopicReport.addGains(out, WorthReport.worth(brief, topic));
        change(out, decision);
        return out.bullets("Rules not checked, since something is missing:", TopicReport.uncheckedRules(brief, topic));
    }

    private static void listed(Section.Builder out, String heading, List<Item> items, String none) {
        out.paragraph(items.isEmpty() ? RichText.of(none) : RichText.ofStrong(heading)).items(items);
    }

    private void change(Section.Builder out, Decision decision) {
        CloseThreshold close = brief.close(decision);
        List<Flip> changes = brief.changes(decision);
        List<RichText> lines = new ArrayList<>();
        if (close != null && (changes == null || changes.stream().noneMatch(each -> each.measure() == close.measure()))) {
            Phrases.close(List.of(close)).forEach(line -> lines.add(RichText.ofQuoted(line)));
        }
        if (changes != null) {
            changes.forEach(each -> lines.add(RichText.ofQuoted(FlipReport.line(each))));
        }
        out.bullets(CHANGES, lines).paragraph(lines.isEmpty() && changes != null ? RichText.ofStrong(CHANGES).text(" " + NONE) : RichText.EMPTY);
    }

    /** What was assumed of the facts that rules for and against rest on, each with a way to where it is made known. */
    private RichText assumedUnder(Decision decision) {
        Map<String, RichText> found = new LinkedHashMap<>();
        List<Claim> claims = new ArrayList<>(decision.taken());
        decision.lost().forEach(lost -> claims.add(lost.claim()));
        for (Claim claim : claims) {
            for (TestedFact fact : claim.grounds()) {
                AssumedInput each = assumed.get(fact.measure());
                if (each != null) {
                    found.put(each.what(), RichText.EMPTY.styled(each.what() + " " + each.value(), Style.ASSUMED).text(" (")
                            .crossReference("how to make it known", BriefReport.ASSUMED).text(")"));
                }
            }
        }
        return found.isEmpty() ? RichText.EMPTY : RichText.of("Assumed under it: ").append(RichText.join("; ", found.values())).text(".");
    }

    private Section.Builder assumed() {
        List<Definition> rows = new ArrayList<>();
        for (AssumedInput each : assumed.values()) {
            Definition row = Definition.of(each.what(), RichText.EMPTY.styled(each.value(), Style.ASSUMED));
            Measure measure = Measure.find(each.what());
            rows.add(measure == null || measure.input().place() == null ? row : row.remark(Phrases.keys(measure.input())));
        }
        return Section.builder(BriefReport.ASSUMED, "Assumed (not given in your files)")
                .bullets(brief.course().assumed().stream().map(RichText::ofQuoted).toList()).definitions(rows);
    }

    /** The course, and what was noted when it was read; the sheets in force. */
    private Section.Builder course() {
        Section.Builder out = Section.builder("course", "The course, and what this rests on");
        Phrases.course(brief).forEach(out::paragraph);
        return out.figure(PictureReport.track(brief)).paragraphs(SheetNames.paragraphs(brief.sheets()))
                .paragraphs(GroundPhrases.paragraphs(brief.course())).section(parts.courseFile());
    }

    /** The id of a topic's section. */
    static String anchor(Topic topic) {
        return "topic-" + slug(topic.name());
    }

    private static String slug(String words) {
        return words.toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    }
}
