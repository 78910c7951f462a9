package courseworthy.report;

import courseworthy.task.Brief;
import java.util.ArrayList;
import java.util.List;

/** A brief on two sides of paper: on the first what to set and to change, on the second the plan of the day and the card for the top tube. */
public final class PrintedBrief {

    private final Brief brief;
    private final BriefReport parts;

    private PrintedBrief(Brief brief) {
        this.brief = brief;
        parts = new BriefReport(brief);
    }

    public static PrintedReport of(Brief brief) {
        return new PrintedBrief(brief).report();
    }

    private PrintedReport report() {
        RichText whose = RichText.ofQuoted(Phrases.whose(brief));
        RichText subtitle = RichText.join(", ", List.of(RichText.of(Phrases.capital(ReportHead.purpose(brief))), whose));
        return new PrintedReport(RichText.ofQuoted(brief.course().name()), subtitle, List.of(jobCard(), plan()), ReportHead.foot(brief), TopTubeCard.of(brief));
    }

    private List<Section> jobCard() {
        return filled(SetUpCard.section(brief).build(), SettingReport.section(brief).build(), unusual(),
                BriefReport.cautions("Cautions of this day", Phrases.cautionsOfTheDay(brief)).build(), BuildReport.inShort(brief.build()), parts.leaveAlone().build());
    }

    private Section unusual() {
        RichText close = brief.close().isEmpty() ? RichText.EMPTY
                : RichText.of("A small change in these figures would change what is in brackets: ").quoted(Phrases.closeMeasures(brief.close())).text(".");
        return Section.builder("check-first", "Not your usual, or not firm").bullets(parts.unusual())
                .bullets(SetUpCard.LEAST_FIRM, brief.leastFirm().stream().map(SetUpCard::leastFirm).toList()).paragraph(close).build();
    }

    private List<Section> plan() {
        Section.Builder course = Section.builder("course", "The course, and what this rests on");
        Phrases.course(brief).forEach(course::paragraph);
        course.paragraph(ReportHead.notes(brief)).paragraph(ReportHead.shared(brief));
        course.paragraphs(SheetNames.paragraphs(brief.sheets()))
                .paragraphs(GroundPhrases.paragraphs(brief.course()));
        return filled(PlanReport.section(brief), ForecastReport.section(brief), course.build());
    }

    private static List<Section> filled(Section... sections) {
        List<Section> out = new ArrayList<>();
        for (Section each : sections) {
            if (!each.isEmpty()) {
                out.add(each);
            }
        }
        return out;
    }
}
