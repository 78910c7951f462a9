package courseworthy.report;

import courseworthy.decision.Decision;
import courseworthy.report.TableColumn.Alignment;
import courseworthy.task.LeastFirm;
import courseworthy.task.RosterResult;
import courseworthy.task.RosterResult.Comparison;
import courseworthy.task.RosterResult.Entry;
import courseworthy.topic.BothEnds;
import java.util.ArrayList;
import java.util.List;

/** The riders of a roster on one course: who differs from most, and in what. */
public final class RosterReport {

    private static final String MOST = "Most riders";
    /** So many riders still stand side by side on a page; more stand below one another (judgement). */
    private static final int MOST_ACROSS = 5;
    private static final String MARKED = "Bold: a value that most riders do not have. Where no value is shared by more than half, nothing is bold.";

    private final RosterResult roster;

    private RosterReport(RosterResult roster) {
        this.roster = roster;
    }

    public static Report of(RosterResult roster) {
        return new RosterReport(roster).report();
    }

    private Report report() {
        RichText who = RichText.of(Phrases.count(roster.entries().size(), "rider") + " in ").quoted(roster.folder());
        return Report.builder(RichText.ofQuoted(roster.course().name())).subtitle("roster")
                .identity(roster.course().name(), roster.folder(), roster.date() == null ? roster.role() : roster.date().toString())
                .paragraph((roster.event().isEmpty() ? who : who.text(", ").quoted(roster.event())).text(roster.date() == null ? "" : ", " + Phrases.date(roster.date())))
                .paragraphs(SheetNames.paragraphs(roster.sheets())).paragraphs(GroundPhrases.paragraphs(roster.course()))
                .section(riders()).section(topics()).section(differences()).section(alike()).section(notes()).build();
    }

    private Section.Builder riders() {
        Table.Builder table = Table.builder().column("Rider").figures("Time").column("Least firm").column(RichText.of("Tags"), Alignment.LEFT, true);
        for (Entry each : roster.entries()) {
            LeastFirm open = each.leastFirm();
            table.row(RichText.ofQuoted(each.name()), RichText.of(each.time() == null ? "unknown" : Figures.time(each.time())),
                    RichText.of(open == null ? "none" : open.decision().topic().name() + " " + open.decision().phrase()),
                    RichText.ofQuoted(String.join(", ", each.tags())));
        }
        return Section.builder("riders", "Riders").table(table.build());
    }

    private Section.Builder topics() {
        List<RosterColumn> columns = columns(roster.differing());
        Section.Builder out = Section.builder("topics", "Where riders differ");
        if (columns.isEmpty()) {
            return out.paragraph("The recommendation is the same for all riders.");
        }
        return out.table(roster.entries().size() <= MOST_ACROSS ? topicsDown(roster, columns) : ridersDown(roster, columns)).remark(MARKED);
    }

    private static Table ridersDown(RosterResult roster, List<RosterColumn> columns) {
        Table.Builder table = Table.builder().column("Rider");
        columns.forEach(each -> table.column(each.name()));
        List<RichText> most = new ArrayList<>(List.of(RichText.of(MOST)));
        columns.forEach(each -> most.add(most(each)));
        table.row(most);
        for (int i = 0; i < roster.entries().size(); i++) {
            List<RichText> row = new ArrayList<>(List.of(RichText.ofQuoted(roster.entries().get(i).name())));
            for (RosterColumn each : columns) {
                row.add(value(each, i));
            }
            table.row(row);
        }
        return table.build();
    }

    private static Table topicsDown(RosterResult roster, List<RosterColumn> columns) {
        Table.Builder table = Table.builder().column("Topic").column(MOST);
        roster.entries().forEach(each -> table.column(RichText.ofQuoted(each.name()), Alignment.LEFT, false));
        for (RosterColumn each : columns) {
            List<RichText> row = new ArrayList<>(List.of(RichText.of(each.name()), most(each)));
            for (int i = 0; i < roster.entries().size(); i++) {
                row.add(value(each, i));
            }
            table.row(row);
        }
        return table.build();
    }

    private static RichText most(RosterColumn column) {
        return RichText.of(column.topic().most() == null ? "no majority" : column.topic().most());
    }

    private static RichText value(RosterColumn column, int rider) {
        String value = column.topic().decisions().get(rider).phrase();
        return column.topic().differs(rider) ? RichText.ofStrong(value) : RichText.of(value);
    }

    /** The same, rider by rider, which can be read where nothing is bold. */
    private Section.Builder differences() {
        List<Definition> out = new ArrayList<>();
        for (int i = 0; i < roster.entries().size(); i++) {
            int rider = i;
            List<Decision> decisions = roster.differing(i).stream().map(each -> each.decisions().get(rider)).toList();
            if (!decisions.isEmpty()) {
                out.add(new Definition(RichText.ofQuoted(roster.entries().get(i).name()), RichText.of(Phrases.values(decisions)), RichText.EMPTY, List.of()));
            }
        }
        return Section.builder("differences", "How each differs from most").definitions(out);
    }

    private Section.Builder alike() {
        return Section.builder("alike", "The same for all").paragraph(Phrases.values(roster.alike().stream().map(each -> each.decisions().get(0)).toList()));
    }

    private Section.Builder notes() {
        List<Definition> out = roster.entries().stream().filter(each -> !each.notes().isEmpty())
                .map(each -> new Definition(RichText.ofQuoted(each.name()), RichText.ofQuoted(each.notes()), RichText.EMPTY, List.of())).toList();
        return Section.builder("notes", "Notes on riders").definitions(out);
    }

    /** A column of the table: a topic, or one of both ends where every rider has the same front and rear. */
    private record RosterColumn(String name, Comparison topic) {
    }

    private static List<RosterColumn> columns(List<Comparison> topics) {
        List<RosterColumn> out = new ArrayList<>();
        for (int i = 0; i < topics.size(); i++) {
            boolean pair = i + 1 < topics.size() && topics.get(i).isPairedWith(topics.get(i + 1));
            out.add(new RosterColumn(pair ? BothEnds.name(topics.get(i).topic()) : topics.get(i).topic().name(), topics.get(i)));
            i += pair ? 1 : 0;
        }
        return out;
    }
}
