package courseworthy.report;

import courseworthy.call.Firmness;
import courseworthy.claim.RuleOrigin;
import courseworthy.course.ElevationLine;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.LosingClaim;
import courseworthy.decision.Decision.Status;
import courseworthy.report.picture.ElevationProfile;
import courseworthy.task.Brief;
import courseworthy.task.Brief.LeaveAlone;
import courseworthy.task.LeadingReason;
import courseworthy.task.MissingInputs;
import courseworthy.task.UsualDifference;
import courseworthy.topic.TopicGroup;
import java.util.ArrayList;
import java.util.List;

/** How the bike should be set up for one rider and one day, why, and what to do: the whole of it, or its main points. */
public final class BriefReport {

    private static final String IN_SHORT = "in-short";
    private static final String SET_UP = "set-up";
    static final String CLOSE = "close";
    private static final String LEAVE_ALONE = "leave-alone";
    private static final String REASONS = "reasons";
    private static final String AGAINST = "against";
    static final String ASSUMED = "assumed";
    private static final String MISSING = "missing";
    private static final String COURSE_FILE = "course-file";
    static final String CAUTIONS = "cautions";

    /** The parts of a brief, as they are asked for, in the order in which they stand. */
    public static final List<String> PARTS = List.of(IN_SHORT, SET_UP, CLOSE, SettingReport.ID, PlanReport.ID, ForecastReport.ID, BikeAtHandReport.ID,
            WorthReport.ID, BuildReport.ID, LEAVE_ALONE, REASONS, AGAINST, ASSUMED, MISSING, COURSE_FILE, CAUTIONS, ChecklistReport.ID);

    static final RichText FIRMNESS_MEANS = Phrases.standing(Firmness.FirmnessLevel.FIRM)
            .text(": a limit decides, or a published source or several habits of the trade agree, on what is known. ")
            .append(Phrases.standing(Firmness.FirmnessLevel.FAIR)).text(": one habit, some advice against it, or something assumed. ")
            .append(Phrases.standing(Firmness.FirmnessLevel.THIN)).text(" (in short: unsure): divided advice, one opinion, gaps, or no advice. " + Phrases.CLOSE_MARK
                    + ": close; a small change in one figure would change it.");

    /** The parts that give reasons, and so name rules. */
    public static final List<String> PARTS_WITH_RULES = List.of(REASONS, AGAINST);

    private final Brief brief;
    /** From a rule's name to its page; null where reasons stand without the names of their rules. */
    private final RuleLinks rules;

    BriefReport(Brief brief) {
        this(brief, null);
    }

    private BriefReport(Brief brief, RuleLinks rules) {
        this.brief = brief;
        this.rules = rules;
    }

    /** The whole brief. */
    public static Report of(Brief brief) {
        return new BriefReport(brief).whole();
    }

    private Report whole() {
        return head().section(inShort()).section(setUp()).section(close()).section(SettingReport.section(brief)).section(PlanReport.section(brief))
                .section(ForecastReport.section(brief)).section(BikeAtHandReport.section(brief.outlook().bikeAtHand())).section(WorthReport.section(brief))
                .section(BuildReport.section(brief.build())).section(leaveAlone()).section(reasons()).section(against()).section(assumed()).section(missing())
                .section(courseFile()).section(cautions("Cautions", Phrases.cautions(brief))).section(ChecklistReport.section(brief.checklist())).build();
    }

    /** What a rider needs to know first, with how to get the rest. */
    public static Report inShort(Brief brief) {
        return new BriefReport(brief).mainPoints();
    }

    private Report mainPoints() {
        return head().section(inShort()).section(SettingReport.inShort(brief)).section(PlanReport.inShort(brief)).section(BuildReport.inShort(brief.build()))
                .section(differences()).section(cautions("Cautions of this day", Phrases.cautionsOfTheDay(brief))).section(rest()).build();
    }

    /** One part of a brief; a report that says so where this brief has no such part. */
    public static Report part(Brief brief, String name) {
        return new BriefReport(brief).part(name);
    }

    /**
     * One part of a brief as a page, where each reason names its rule.
     *
     * @param rules from rules to their pages
     */
    public static Report partOnPage(Brief brief, String name, RuleLinks rules) {
        return new BriefReport(brief, rules).part(name);
    }

    private Report part(String name) {
        Report.Builder out = ReportHead.of(brief, ReportHead.purpose(brief));
        return whole().section(name).map(out::section)
                .orElseGet(() -> out.paragraph("There is nothing under \"" + name + "\" in this brief.")).build();
    }

    /** What is not as the rider is used to, and what may turn out differently. */
    private Section.Builder differences() {
        RichText close = brief.close().isEmpty() ? RichText.EMPTY : RichText.of("Close, so that a small change in one figure would change them: "
                + Phrases.count(brief.close().size(), "decision") + ", with ").code("--part " + CLOSE).text(".");
        return Section.builder("check-first", "Not your usual, or not firm").bullets(unusual())
                .bullets(SetUpCard.LEAST_FIRM, brief.leastFirm().stream().map(SetUpCard::leastFirm).toList()).paragraph(close);
    }

    /** What is not as the rider is used to, a line each. */
    List<RichText> unusual() {
        List<RichText> lines = new ArrayList<>();
        for (UsualDifference each : brief.differences()) {
            lines.add(RichText.of(each.decision().topic().name() + ": ").quoted(each.decision().phrase()).text(", your usual is ").quoted(each.usual()));
        }
        return lines;
    }

    private Section.Builder rest() {
        List<String> names = whole().sections().stream().map(Section::id).toList();
        return Section.builder("rest", "The rest").paragraph(RichText.of("Everything: ").code("--full").text(". One decision with its reasons: ").code("--topic NAME")
                .text(". One part: ").code("--part NAME").text(", which is one of " + String.join(", ", names) + "."));
    }

    private Report.Builder head() {
        Report.Builder out = ReportHead.of(brief, ReportHead.purpose(brief));
        Phrases.course(brief).forEach(out::paragraph);
        out.paragraph(ReportHead.notes(brief)).paragraph(ReportHead.shared(brief));
        ElevationLine line = brief.course().line();
        if (line != null) {
            out.figure(new Figure(RichText.EMPTY, new ElevationProfile(line.distance(), line.elevation(), true), CourseReport.elevation(brief.course())));
        }
        return out.caution(Phrases.missingGround(brief)).caution(GroundPhrases.mayChange(brief));
    }

    private Section.Builder inShort() {
        List<Definition> rows = new ArrayList<>();
        for (SetUpSummary.Entry entry : SetUpSummary.of(brief)) {
            rows.add(Definition.of(entry.about(), RichText.ofQuoted(entry.values()).in(Style.STRONG)));
        }
        return Section.builder(IN_SHORT, "In short").definitions(rows);
    }

    private Section.Builder setUp() {
        Section.Builder out = Section.builder(SET_UP, "Recommended set-up").aside("how firm");
        for (TopicGroup group : TopicGroup.values()) {
            out.definitions(group.title(), brief.decisions().stream().filter(each -> each.topic().group() == group)
                    .filter(each -> each.status() != Status.NOT_APPLICABLE).map(this::row).toList());
        }
        List<String> without = Phrases.without(brief.decisions());
        return out.remark(without.isEmpty() ? "" : "Does not apply to this bike: " + String.join(", ", without) + ".").remark(FIRMNESS_MEANS);
    }

    private Definition row(Decision decision) {
        String name = decision.topic().name();
        return decision.status() == Status.NONE_POSSIBLE
                ? Definition.of(name, RichText.EMPTY.styled("none possible: ", Style.ATTENTION).quoted(decision.why()))
                : Definition.of(name, RichText.ofQuoted(decision.phrase()).in(Style.STRONG)).remark(Phrases.standing(brief, decision));
    }

    Section.Builder close() {
        List<String> lines = Phrases.close(brief.close());
        return Section.builder(CLOSE, "Close calls").remark(lines.isEmpty() ? "" : Phrases.CLOSE_MEANS).bullets(quoted(lines));
    }

    Section.Builder leaveAlone() {
        List<RichText> lines = new ArrayList<>();
        for (LeaveAlone thing : brief.leaveAlone()) {
            lines.add(RichText.EMPTY.append(RichText.ofQuoted(thing.what()).in(Style.STRONG)).quoted(thing.because().isEmpty() ? "" : ". " + thing.because()));
        }
        return Section.builder(LEAVE_ALONE, "Leave alone").bullets(lines);
    }

    private Section.Builder reasons() {
        List<RichText> lines = new ArrayList<>();
        for (LeadingReason reason : brief.reasons()) {
            lines.add(RichText.ofQuoted(Phrases.values(reason.decisions())).in(Style.STRONG).text(": ").quoted(Phrases.because(reason.claim().origin()))
                    .append(rule(reason.claim().origin())));
        }
        return Section.builder(REASONS, "Reasons").remark(Phrases.ELSE_PRACTICE).paragraph(lines.isEmpty() ? "No rule applied; every value is a default." : "")
                .bullets(lines);
    }

    private Section.Builder against() {
        List<RichText> lines = new ArrayList<>();
        for (Decision decision : brief.decisions()) {
            for (LosingClaim lost : Phrases.against(decision)) {
                lines.add(RichText.of(decision.topic().name() + ": ").quoted(Phrases.says(lost.claim()) + Phrases.computed(lost.claim()) + ", " + Phrases.lost(lost) + ". "
                        + Phrases.because(lost.claim().origin())).append(rule(lost.claim().origin())));
            }
        }
        return Section.builder(AGAINST, "Advice that was not followed").bullets(lines);
    }

    private RichText rule(RuleOrigin author) {
        return rules == null ? RichText.EMPTY : RichText.of(" Rule: ").append(rules.of(author)).text(".");
    }

    Section.Builder assumed() {
        List<Definition> rows = new ArrayList<>();
        brief.demands().assumed().forEach(each -> rows.add(Definition.of(each.what(), RichText.ofQuoted(each.value()))));
        return Section.builder(ASSUMED, "Assumed (not given in your files)").bullets(quoted(brief.course().assumed())).definitions(rows);
    }

    Section.Builder missing() {
        List<Definition> rows = new ArrayList<>();
        for (MissingInputs wanted : brief.wanted()) {
            rows.add(Definition.of(wanted.place().word(), Phrases.wanted(wanted)));
        }
        return Section.builder(MISSING, "Rules not checked: missing information").definitions(rows);
    }

    Section.Builder courseFile() {
        return Section.builder(COURSE_FILE, "Notes on the course file").bullets(quoted(Phrases.mended(brief.course())));
    }

    static Section.Builder cautions(String heading, List<String> sentences) {
        Section.Builder out = Section.builder(CAUTIONS, heading);
        sentences.forEach(line -> out.caution(RichText.ofQuoted(line)));
        return out;
    }

    private static List<RichText> quoted(List<String> lines) {
        return lines.stream().map(RichText::ofQuoted).toList();
    }
}
