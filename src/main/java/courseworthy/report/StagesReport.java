package courseworthy.report;

import courseworthy.build.RaceBuild;
import courseworthy.demand.Measure;
import courseworthy.event.StageRace;
import courseworthy.ride.Range;
import courseworthy.stage.BagItem;
import courseworthy.stage.StageDay;
import courseworthy.stage.StageSetUp;
import courseworthy.stage.StageSetUp.BikeSetUp;
import courseworthy.stage.StageSetUp.EveningChange;
import courseworthy.stage.StageSetUp.RaceTopic;
import courseworthy.stage.WeekBag;
import courseworthy.task.StagesResult;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.topic.Work;
import courseworthy.wear.ServiceWork;
import courseworthy.wear.IntervalBounds;
import courseworthy.wear.WearCounter.Outlook;
import courseworthy.wear.WearCounter.WearShare;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A race over several days: one set-up and what it costs, the days, the evenings, what wears out, and the bag. */
public final class StagesReport {

    static final String SET_UP = "set-up";

    /** A race without a name. */
    static final String UNNAMED = "Stage race";

    /** The parts, in order. */
    public static final List<String> PARTS = List.of(SET_UP, "build", "days", "evenings", "checklist", "wear", "bag");

    private static final List<Topic> OF_A_DAY = List.of(Topics.FRONT_TYRE_PRESSURE, Topics.REAR_TYRE_PRESSURE, Topics.WATER, Topics.CLOTHING, Topics.GLOVES, Topics.EYEWEAR,
            Topics.LUBRICANT, Topics.LIGHTS);
    private static final String METHOD = "Times count weight, rolling resistance and drag only, against what each day alone would want. Grip, comfort and safety are not counted, "
            + "and a part that is faster than a day wants counts as no gain.";

    private final StagesResult result;
    private final List<StageDay> days;

    private StagesReport(StagesResult result) {
        this.result = result;
        this.days = result.setUp().days();
    }

    public static Report of(StagesResult result) {
        return new StagesReport(result).report(ChecklistReport.section(result.checklist()));
    }

    /** As a page: the set-up in short first, which is what is looked for on a phone. */
    public static Report pageOf(StagesResult result) {
        StagesReport report = new StagesReport(result);
        RichText whose = RichText.ofQuoted(result.rider().isEmpty() ? "" : "for " + result.rider());
        Report.Builder out = report.titled().subtitle(RichText.join(", ", List.of(RichText.of(report.count()), whose))).section(StagesCard.section(result));
        return report.sections(out, report.setUp().paragraph(report.may()).paragraphs(SheetNames.paragraphs(result.sheets())), ChecklistReport.onPage(result.checklist())).build();
    }

    /** For paper, side by side: the set-up and the builds, then days, evenings and the bag, then the checklist; without what costs what, and without what lasts. */
    static List<List<Section>> printed(StagesResult result) {
        StagesReport report = new StagesReport(result);
        Section.Builder days = report.daysOnPaper();
        return List.of(List.of(report.setUpOnPaper(), report.build().build()), List.of(days.build(), report.evenings().build(), report.bag().build()),
                ChecklistReport.printed(result.checklist()));
    }

    /** For a terminal: the checklist is a part of its own. */
    public static Report inShort(StagesResult result) {
        return new StagesReport(result).report(Section.builder(ChecklistReport.ID, "Checklist")
                .paragraph(RichText.of("For what to do before the race, on each evening and morning, and afterwards, add ").code("--part checklist").text(" to this command.")).build());
    }

    /** One part alone. */
    public static Report part(StagesResult result, String id) {
        Report whole = of(result);
        return whole.withOnly(whole.section(id).map(List::of).orElse(List.of()));
    }

    private Report report(Section checklist) {
        Report.Builder out = titled().subtitle(count()).paragraph(RichText.ofQuoted(result.rider().isEmpty() ? "" : "For " + result.rider() + "."))
                .paragraphs(SheetNames.paragraphs(result.sheets())).paragraph(may());
        return sections(out, setUp(), checklist).build();
    }

    private Report.Builder titled() {
        String name = result.event().name().isEmpty() ? UNNAMED : result.event().name();
        return Report.builder(RichText.ofQuoted(name)).identity(name, result.rider(), result.event().date() == null ? "" : result.event().date().toString());
    }

    private String count() {
        return Phrases.count(days.size(), "stage") + (result.setUp().bikes().size() == 1 ? " on one set-up" : " on " + result.setUp().bikes().size() + " bikes");
    }

    private Report.Builder sections(Report.Builder out, Section.Builder setUp, Section checklist) {
        result.setUp().impossible().forEach(topic -> out.caution("No " + topic.name() + " keeps the limits of every day."));
        return out.section(setUp).section(build()).section(dayTable()).section(evenings()).section(checklist).section(wear()).section(bag());
    }

    private String may() {
        StageRace race = result.event().plan().race();
        List<String> words = StageRace.CHANGES.stream().filter(word -> race.mayChange().stream().anyMatch(each -> each.word().equals(word))).toList();
        return words.isEmpty() ? race.stated() ? "The event lets nothing on the bike be changed between stages." : "The event does not say what may be changed between stages: nothing is taken to."
                : words.size() == StageRace.CHANGES.size() ? "The event lets everything be changed between stages." : "The event lets these be changed between stages: " + String.join(", ", words) + ".";
    }

    // The set-up

    private Section.Builder setUp() {
        List<BikeSetUp> bikes = result.setUp().bikes();
        Section.Builder out = Section.builder(SET_UP, bikes.size() == 1 ? "One set-up for all stages" : "One set-up for each bike");
        for (int i = 0; i < bikes.size(); i++) {
            if (bikes.size() > 1) {
                out.section(setUp(Section.builder("set-up-" + (i + 1), Phrases.capital(bikes.get(i).kind()) + ", " + stages(bikes.get(i).stages())), bikes.get(i)));
            } else {
                setUp(out, bikes.get(i));
            }
        }
        Range loss = result.setUp().compromises().isEmpty() ? null : result.setUp().loss();
        out.paragraph(loss == null ? "" : "In all, " + (bikes.size() == 1 ? "one set-up costs " : "one set-up a bike costs ") + Figures.time(loss) + " over " + Phrases.count(days.size(), "day")
                + " against a bike made for each.");
        return out.remark(loss == null ? "" : METHOD);
    }

    private Section.Builder setUp(Section.Builder out, BikeSetUp bike) {
        List<RaceTopic> open = bike.compromises();
        if (!open.isEmpty()) {
            Table.Builder table = Table.builder().column("Where days differ").column("For the race").column("Alone, a stage would want").column("Because").column("Costs");
            open.forEach(each -> table.row(row(each, bike.stages())));
            out.table(table.build());
        }
        List<RaceTopic> agreed = bike.topics().stream().filter(each -> each.ground() == StageSetUp.ValueReason.AGREED).toList();
        return out.definitions(!open.isEmpty() ? "The same every day:" : bike.stages().size() == 1 ? "As the stage wants it:" : "Every day wants the same:", agreed.stream().map(each -> Definition.of(each.topic().name(), text(each.topic(), each.value()))).toList());
    }

    private Section setUpOnPaper() {
        Section.Builder out = Section.builder(SET_UP, "Set-up");
        for (int i = 0; i < result.setUp().bikes().size(); i++) {
            BikeSetUp bike = result.setUp().bikes().get(i);
            out.section(Section.builder("set-up-" + (i + 1), Phrases.capital(stages(bike.stages())))
                    .definitions(bike.topics().stream().map(each -> Definition.of(each.topic().name(), text(each.topic(), each.value()))).toList()));
        }
        return out.build();
    }

    private static String stages(List<Integer> stages) {
        return (stages.size() == 1 ? "stage " : "stages ") + String.join(", ", stages.stream().map(String::valueOf).toList());
    }

    private String[] row(RaceTopic each, List<Integer> numbers) {
        Map<String, List<String>> wanted = new LinkedHashMap<>();
        for (int i = 0; i < numbers.size(); i++) {
            Long value = each.wanted().get(i);
            wanted.computeIfAbsent(value == null ? "does not apply" : text(each.topic(), value), text -> new ArrayList<>()).add(numbers.get(i).toString());
        }
        List<String> byStage = new ArrayList<>();
        wanted.forEach((text, stages) -> byStage.add(String.join(", ", stages) + ": " + text));
        Range loss = each.loss();
        return new String[] {each.topic().name(), text(each.topic(), each.value()), String.join("; ", byStage), each.ground().words(), loss == null ? "not computed" : Figures.time(loss)};
    }

    private String text(Topic topic, long value) {
        return result.setUp().text(topic, value);
    }

    // The build

    private Section.Builder build() {
        Section.Builder out = Section.builder("build", result.builds().size() > 1 ? "The builds" : "The build");
        for (int i = 0; i < result.builds().size(); i++) {
            RaceBuild each = result.builds().get(i);
            List<Integer> stages = result.setUp().bikes().get(i).stages();
            Section.Builder of = BuildReport.inShort("build-" + (i + 1), "On " + stages(stages), each.build());
            out.section(each.build().bike() == null ? of : of.table(byStage(each, stages)).section(Section.builder("build-parts-" + (i + 1), "Its parts").definitions(BuildReport.list(each.build()))));
        }
        return out.remark(result.build() == null ? "" : "Parts are chosen for all stages together: what a part loses is added up over the days, and a limit of any day holds. "
                + "Times count weight, rolling resistance and drag only.");
    }

    private static Table byStage(RaceBuild build, List<Integer> stages) {
        Table.Builder out = Table.builder().column("Stage").column("Saves against the bike as it is now").column("Costs against a build for that stage alone");
        for (int i = 0; i < stages.size(); i++) {
            out.row(stages.get(i).toString(), signed(build.saves().get(i)), time(build.costs().get(i)));
        }
        return out.row("all", signed(build.saved()), time(build.cost())).build();
    }

    private static String signed(Range saved) {
        return saved == null ? "not computed" : saved.high() < 0 ? "costs " + Figures.time(Ranges.negative(saved)) : Figures.time(saved);
    }

    private static String time(Range range) {
        return range == null ? "not computed" : Figures.time(range);
    }

    // The days

    private Section.Builder dayTable() {
        Table.Builder table = Table.builder().column("Stage").column("Day").column("Course").column("Distance").column("Climb").column("Riding time").column("Carbohydrate");
        for (StageDay day : days) {
            table.row(RichText.of(day.number() + ""), RichText.of(date(day)), RichText.ofQuoted(day.ride().course().name()), RichText.of(distance(day)), RichText.of(climb(day)),
                    RichText.of(hours(day)), RichText.of(grams(day)));
        }
        return setThatDay(Section.builder("days", "Day by day").table(table.build()))
                .paragraph(RichText.of("For the brief of one day, add ").code("--stage 1").text(" to this command."));
    }

    /** Two narrow tables: a column of paper is no wider than a terminal. */
    private Section.Builder daysOnPaper() {
        Table.Builder where = Table.builder().column("Stage").column("Day").column("Course");
        Table.Builder what = Table.builder().column("Stage").column("Distance").column("Climb").column("Time").column("Food");
        for (StageDay day : days) {
            where.row(RichText.of(day.number() + ""), RichText.of(date(day)), RichText.ofQuoted(day.ride().course().name()));
            what.row(day.number() + "", distance(day), climb(day), hours(day), grams(day));
        }
        return setThatDay(Section.builder("days", "Day by day").table(where.build()).table(what.build()));
    }

    private static String distance(StageDay day) {
        return Figures.distance(day.ride().course().length() * (day.ride().event().laps() == null ? 1 : day.ride().event().laps()));
    }

    private static String climb(StageDay day) {
        return Phrases.range(day.settled().demands(), Measure.ASCENT);
    }

    private Section.Builder setThatDay(Section.Builder out) {
        Table.Builder set = Table.builder().column("Set that day");
        days.forEach(day -> set.column("Stage " + day.number()));
        for (Topic topic : OF_A_DAY) {
            if (days.stream().anyMatch(day -> day.settled().on(topic).value() != null)) {
                List<String> row = new ArrayList<>(List.of(topic.name()));
                days.forEach(day -> row.add(day.settled().on(topic).value() == null ? "" : day.settled().on(topic).phrase()));
                set.row(row.toArray(String[]::new));
            }
        }
        return out.table(set.build());
    }

    private static String date(StageDay day) {
        LocalDate date = day.ride().event().date();
        return Phrases.weekday(date);
    }

    private static String hours(StageDay day) {
        Range hours = day.hours();
        return hours == null ? "not known" : Figures.time(hours);
    }

    private static String grams(StageDay day) {
        Range grams = WeekBag.carbohydrate(day);
        return grams == null ? "" : tens(grams.low()) + " to " + tens(grams.high()) + " g";
    }

    private static long tens(double value) {
        return Math.round(value / 10) * 10;
    }

    // The evenings

    private Section.Builder evenings() {
        Section.Builder out = Section.builder("evenings", "Evening by evening");
        String every = "Every evening: wash and look over the bike, clean and lubricate the chain, check pads and tyres for cuts"
                + (result.charge().isEmpty() ? "." : "; charge " + Phrases.list(result.charge()) + ".");
        out.paragraph(days.size() > 1 ? every : "");
        for (StageDay day : days) {
            List<RichText> lines = new ArrayList<>();
            result.setUp().changes().stream().filter(each -> each.before() == day.number()).forEach(each -> lines.add(change(each)));
            result.due(day.number()).forEach(each -> lines.add(due(each, day)));
            String before = day.number() == 1 ? "Before the first stage:" : "Evening before stage " + day.number() + ", " + Phrases.weekdayAndYear(day.ride().event().date().minusDays(1)) + ":";
            out.bullets(before, lines);
        }
        boolean permits = !result.event().plan().race().mayChange().isEmpty() && !result.setUp().compromises().isEmpty() && result.setUp().changes().isEmpty();
        return out.paragraph(permits ? "No change between stages that the event allows saves enough time on the course to be worth its work (1 s for each minute)." : "");
    }

    private RichText change(EveningChange change) {
        List<String> what = new ArrayList<>();
        for (Map.Entry<Topic, Long> each : change.to().entrySet()) {
            what.add((each.getKey() == Topics.BIKE ? "from " : each.getKey().name() + " ") + text(each.getKey(), change.from().get(each.getKey())) + " to " + text(each.getKey(), each.getValue()));
        }
        String saves = change.returns().high() > 0 ? ". Saves " + Figures.time(change.returns()) + " on the road for " : ", as before: ";
        return RichText.ofStrong("Change " + change.work().word()).text(": " + String.join(", ", what) + saves + change.minutes() + " min of work"
                + (change.stated() ? "." : " (common practice, no source).") + (change.work() == Work.BIKE && change.returns().high() > 0 ? " Both bikes have to be there." : ""));
    }

    private static RichText due(Outlook each, StageDay day) {
        boolean before = day.number() == 1 && each.before().high() >= 1;
        String lasts = lasts(each).isEmpty() ? "" : ", " + lasts(each);
        String when = before ? "may be due already (" + Math.round(100 * each.before().high()) + " % of the shortest usual life used up" + lasts + ")"
                : "may fall due on stage " + day.number() + " (if it lasts no longer than the shortest usual life" + lasts + ")";
        return RichText.ofStrong(Phrases.capital(ServiceWork.task(each.interval().job())) + ": ").quoted(each.part().name()).text(", " + when + (each.known() ? "." : "; counted as fresh, because its use so far is not given."));
    }

    // Wear

    private Section.Builder wear() {
        Table.Builder table = Table.builder().column("Part and job").column("Lasts").column("Used up by the end").column("Due before");
        for (Outlook each : result.wear()) {
            if (each.used().high() > 0 || !each.due().isEmpty()) {
                table.row(RichText.ofQuoted(each.part().name()).text(": " + ServiceWork.task(each.interval().job())), RichText.of(lasts(each)), RichText.of(used(each.used())), RichText.of(due(each)));
            }
        }
        return Section.builder("wear", "What wears").detail().table(table.build())
                .remark(result.wear().isEmpty() ? "" : "How long parts last is common practice, no source, unless the manufacturer states it; wet and mud wear faster. Each job is planned for the evening before the shortest usual life "
                        + "is used up. What you measure counts for more: look at the pads and the chain.");
    }

    private static String lasts(Outlook each) {
        IntervalBounds hours = each.interval().every().hours();
        IntervalBounds days = each.interval().every().days();
        return hours != null ? between(hours.low() / 3600, hours.high() / 3600) + " h" : days == null ? "" : between(days.low(), days.high()) + " days";
    }

    private static String between(double low, double high) {
        return Math.round(low) == Math.round(high) ? Long.toString(Math.round(low)) : Math.round(low) + " to " + Math.round(high);
    }

    private static String used(WearShare share) {
        long low = Math.round(100 * share.low());
        long high = Math.round(100 * share.high());
        return (low == high ? "" : low + " to ") + high + " %";
    }

    private static String due(Outlook each) {
        return each.due().isEmpty() ? "" : "stage " + String.join(", ", each.due().stream().map(day -> Integer.toString(day + 1)).toList());
    }

    // The bag

    private Section.Builder bag() {
        List<Definition> rows = new ArrayList<>();
        for (BagItem each : result.bag()) {
            String count = each.least() == each.most() ? "" + each.most() : each.least() + " to " + each.most();
            rows.add(Definition.of(each.item(), count + (each.unit().isEmpty() ? "" : " " + each.unit())).details(List.of(RichText.of(each.because()))));
        }
        return Section.builder("bag", "Bag for the race").definitions(rows);
    }
}
