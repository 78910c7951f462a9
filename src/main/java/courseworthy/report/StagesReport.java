package courseworthy.report;

import courseworthy.decision.Decision;
import courseworthy.demand.Measure;
import courseworthy.event.StageRace;
import courseworthy.ride.Range;
import courseworthy.stage.BagItem;
import courseworthy.stage.StageDay;
import courseworthy.stage.StageSetUp;
import courseworthy.stage.StageSetUp.EveningChange;
import courseworthy.stage.StageSetUp.RaceTopic;
import courseworthy.stage.WeekBag;
import courseworthy.task.StagesResult;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.wear.Bounds;
import courseworthy.wear.WearCounter.Outlook;
import courseworthy.wear.WearCounter.Share;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A race over several days: one set-up and what it costs, the days, the evenings, what wears out, and the bag. */
public final class StagesReport {

    /** The parts, in order. */
    public static final List<String> PARTS = List.of("set-up", "days", "evenings", "wear", "bag");

    private static final List<Topic> OF_A_DAY = List.of(Topics.FRONT_TYRE_PRESSURE, Topics.REAR_TYRE_PRESSURE, Topics.WATER, Topics.CLOTHING, Topics.GLOVES, Topics.EYEWEAR,
            Topics.LUBRICANT, Topics.LIGHTS);
    private static final String METHOD = "Minutes are those of mass, rolling and drag against what the day alone would want; what a part gains in grip, comfort or safety is not in them, "
            + "and a part that is faster than a day wants counts as no gain.";

    private final StagesResult result;
    private final List<StageDay> days;

    private StagesReport(StagesResult result) {
        this.result = result;
        this.days = result.setUp().days();
    }

    public static Report of(StagesResult result) {
        return new StagesReport(result).report();
    }

    /** One part alone. */
    public static Report part(StagesResult result, String id) {
        Report whole = of(result);
        return whole.withOnly(whole.section(id).map(List::of).orElse(List.of()));
    }

    private Report report() {
        String name = result.event().name().isEmpty() ? "Stage race" : result.event().name();
        Report.Builder out = Report.builder(RichText.ofQuoted(name)).subtitle(Phrases.count(days.size(), "stage") + " on one set-up")
                .identity(name, result.rider(), result.event().date() == null ? "" : result.event().date().toString())
                .paragraph(RichText.ofQuoted(result.rider().isEmpty() ? "" : "For " + result.rider() + "."))
                .paragraphs(SheetNames.paragraphs(result.sheets())).paragraph(may());
        result.setUp().impossible().forEach(topic -> out.caution("No " + topic.name() + " keeps the limits of every day."));
        return out.section(setUp()).section(dayTable()).section(evenings()).section(wear()).section(bag()).build();
    }

    private String may() {
        StageRace race = result.event().plan().race();
        List<String> words = StageRace.CHANGES.stream().filter(word -> race.mayChange().stream().anyMatch(each -> each.word().equals(word))).toList();
        return words.isEmpty() ? race.stated() ? "The event lets nothing on the bike be changed between stages." : "The event does not say what may be changed between stages: nothing is taken to."
                : words.size() == StageRace.CHANGES.size() ? "The event lets everything be changed between stages." : "The event lets these be changed between stages: " + String.join(", ", words) + ".";
    }

    // The set-up

    private Section.Builder setUp() {
        Section.Builder out = Section.builder("set-up", "One set-up for all stages");
        List<RaceTopic> agreed = result.setUp().topics().stream().filter(each -> each.ground() == StageSetUp.Ground.AGREED).toList();
        List<RaceTopic> open = result.setUp().compromises();
        if (!open.isEmpty()) {
            Table.Builder table = Table.builder().column("Where days differ").column("For the race").column("Alone, a stage would want").column("Because").column("Costs");
            open.forEach(each -> table.row(row(each)));
            out.table(table.build());
            Range loss = result.setUp().loss();
            out.paragraph(loss == null ? "" : "In all, one set-up costs " + Figures.time(loss) + " over " + Phrases.count(days.size(), "day") + " against a bike made for each.");
            out.remark(METHOD);
        }
        if (result.build() != null && result.build().bike() != null) {
            out.paragraph(RichText.of("From the workshop: ").quoted(result.build().bike().name()).text("; the build was found for the longest day."));
        }
        return out.definitions(open.isEmpty() ? "Every day wants the same:" : "The same every day:", agreed.stream().map(each -> Definition.of(each.topic().name(), text(each.topic(), each.value()))).toList());
    }

    private String[] row(RaceTopic each) {
        Map<String, List<String>> wanted = new LinkedHashMap<>();
        for (int i = 0; i < days.size(); i++) {
            Long value = each.wanted().get(i);
            wanted.computeIfAbsent(value == null ? "nothing" : text(each.topic(), value), text -> new ArrayList<>()).add(Integer.toString(i + 1));
        }
        List<String> byStage = new ArrayList<>();
        wanted.forEach((text, stages) -> byStage.add(String.join(", ", stages) + ": " + text));
        Range loss = each.loss();
        return new String[] {each.topic().name(), text(each.topic(), each.value()), String.join("; ", byStage), each.ground().words(), loss == null ? "not computed" : Figures.time(loss)};
    }

    private String text(Topic topic, long value) {
        for (StageDay day : days) {
            for (Decision decision : List.of(day.settled().on(topic), day.alone().on(topic))) {
                if (decision.value() != null && decision.value() == value && !decision.label().isEmpty()) {
                    return decision.phrase();
                }
            }
        }
        return topic.limit() + topic.phrase(value);
    }

    // The days

    private Section.Builder dayTable() {
        Table.Builder table = Table.builder().column("Stage").column("Day").column("Course").column("Distance").column("Climb").column("Time").column("Carbohydrate");
        for (StageDay day : days) {
            double laps = day.ride().event().laps() == null ? 1 : day.ride().event().laps();
            table.row(RichText.of(day.number() + ""), RichText.of(date(day)), RichText.ofQuoted(day.ride().course().name()), RichText.of(Figures.distance(day.ride().course().length() * laps)),
                    RichText.of(Phrases.range(day.settled().demands(), Measure.ASCENT)), RichText.of(hours(day)), RichText.of(grams(day)));
        }
        Section.Builder out = Section.builder("days", "Day by day").table(table.build());
        Table.Builder set = Table.builder().column("Set that day");
        days.forEach(day -> set.column("Stage " + day.number()));
        for (Topic topic : OF_A_DAY) {
            if (days.stream().anyMatch(day -> day.settled().on(topic).value() != null)) {
                List<String> row = new ArrayList<>(List.of(topic.name()));
                days.forEach(day -> row.add(day.settled().on(topic).value() == null ? "" : day.settled().on(topic).phrase()));
                set.row(row.toArray(String[]::new));
            }
        }
        return out.table(set.build()).paragraph(RichText.of("The brief of a day: ").code("courseworthy stages " + result.event().file() + " --stage 1"));
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
                + (result.charge().isEmpty() ? "." : "; charge " + String.join(", ", result.charge()) + ".");
        out.paragraph(days.size() > 1 ? every : "");
        for (StageDay day : days) {
            List<RichText> lines = new ArrayList<>();
            result.setUp().changes().stream().filter(each -> each.before() == day.number()).forEach(each -> lines.add(change(each)));
            result.due(day.number()).forEach(each -> lines.add(due(each, day)));
            String before = day.number() == 1 ? "Before the first stage:" : "Evening before stage " + day.number() + ", " + Phrases.date(day.ride().event().date().minusDays(1)) + ":";
            out.bullets(before, lines);
        }
        boolean permits = !result.event().plan().race().mayChange().isEmpty() && !result.setUp().compromises().isEmpty() && result.setUp().changes().isEmpty();
        return out.paragraph(permits ? "No change between stages that the event allows saves as much on the road as it takes in the evening: 1 s a minute of work." : "");
    }

    private RichText change(EveningChange change) {
        List<String> what = new ArrayList<>();
        for (Map.Entry<Topic, Long> each : change.to().entrySet()) {
            what.add(each.getKey().name() + " " + text(each.getKey(), change.from().get(each.getKey())) + " to " + text(each.getKey(), each.getValue()));
        }
        return RichText.ofStrong("Change " + change.work().word()).text(": " + String.join(", ", what) + ". Saves " + Figures.time(change.returns()) + " on the road for "
                + change.minutes() + " min of work" + (change.stated() ? "." : " (common practice, no source)."));
    }

    private static RichText due(Outlook each, StageDay day) {
        boolean before = day.number() == 1 && each.before().high() >= 1;
        String when = before ? "may be due already, " + Math.round(100 * each.before().high()) + " % of its least life used up" : "may fall due on stage " + day.number() + ", at the least that it lasts";
        String lasts = lasts(each).isEmpty() ? "" : " (" + lasts(each) + ")";
        return RichText.ofStrong(Phrases.capital(each.interval().job()) + ": ").quoted(each.part().name()).text(" " + when + lasts + (each.known() ? "." : "; counted as fresh, since nothing is written of its use."));
    }

    // Wear

    private Section.Builder wear() {
        Table.Builder table = Table.builder().column("Part").column("Job").column("Lasts").column("Used up after the last stage").column("Due before");
        for (Outlook each : result.wear()) {
            if (each.used().high() > 0 || !each.due().isEmpty()) {
                table.row(RichText.ofQuoted(each.part().name()), RichText.of(each.interval().job()), RichText.of(lasts(each)), RichText.of(used(each.used())), RichText.of(due(each)));
            }
        }
        return Section.builder("wear", "What wears").detail().table(table.build())
                .remark(result.wear().isEmpty() ? "" : "How long parts last is common practice, no source, unless the manufacturer states it; wet and mud wear faster. Each is called on the evening before the least that it lasts is used up. "
                        + "What is measured goes first: look at the pads and the chain.");
    }

    private static String lasts(Outlook each) {
        Bounds hours = each.interval().every().hours();
        Bounds days = each.interval().every().days();
        return hours != null ? Math.round(hours.low() / 3600) + " to " + Math.round(hours.high() / 3600) + " h" : days == null ? "" : Math.round(days.low()) + " to " + Math.round(days.high()) + " days";
    }

    private static String used(Share share) {
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
