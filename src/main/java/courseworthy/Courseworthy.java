package courseworthy;

import courseworthy.brief.Brief;
import courseworthy.brief.BriefMarkdown;
import courseworthy.brief.BriefText;
import courseworthy.brief.Briefs;
import courseworthy.brief.Catalogue;
import courseworthy.brief.CheckText;
import courseworthy.brief.CompareMarkdown;
import courseworthy.brief.CompareText;
import courseworthy.brief.CourseLine;
import courseworthy.brief.CourseText;
import courseworthy.brief.GearsMarkdown;
import courseworthy.brief.GearsText;
import courseworthy.brief.ImpactText;
import courseworthy.brief.JsonBrief;
import courseworthy.brief.JsonCatalogue;
import courseworthy.brief.JsonCheck;
import courseworthy.brief.JsonCompare;
import courseworthy.brief.JsonGears;
import courseworthy.brief.JsonImpact;
import courseworthy.brief.JsonTried;
import courseworthy.brief.JsonSeason;
import courseworthy.brief.JsonWhy;
import courseworthy.brief.Reasoning;
import courseworthy.brief.SeasonCsv;
import courseworthy.brief.SeasonMarkdown;
import courseworthy.brief.SeasonText;
import courseworthy.brief.TopicText;
import courseworthy.brief.TriedText;
import courseworthy.brief.WhyMarkdown;
import courseworthy.brief.WhyText;
import courseworthy.build.Build;
import courseworthy.build.BuildCall;
import courseworthy.build.Builds;
import courseworthy.build.Season;
import courseworthy.call.Call;
import courseworthy.call.Calling;
import courseworthy.call.Flip;
import courseworthy.call.Impact;
import courseworthy.call.Margin;
import courseworthy.call.Margins;
import courseworthy.checklist.Checklists;
import courseworthy.course.Course;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.Ride;
import courseworthy.demand.Survey;
import courseworthy.demand.Value;
import courseworthy.event.Event;
import courseworthy.problem.BadInput;
import courseworthy.problem.Fault;
import courseworthy.problem.FaultList;
import courseworthy.problem.Faults;
import courseworthy.problem.Spelling;
import courseworthy.rider.Bike;
import courseworthy.rider.BikeReader;
import courseworthy.rider.Rider;
import courseworthy.rulebase.DroolsRules;
import courseworthy.rulebase.House;
import courseworthy.rulebase.FitRules;
import courseworthy.rulebase.Tried;
import courseworthy.schema.Schemas;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.worth.BikeAtHand;
import courseworthy.worth.DayPlan;
import courseworthy.worth.GearChoice;
import courseworthy.worth.GearShortfall;
import courseworthy.worth.Outlook;
import courseworthy.worth.PlanB;
import courseworthy.worth.Sensitivity;
import courseworthy.worth.SetUp;
import courseworthy.worth.SetUps;
import courseworthy.worth.Worths;
import courseworthy.workshop.Workshop;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * Wires the steps: what is asked for is read, surveyed, called and written. Every method throws {@link BadInput} with all faults
 * found where what the user gave cannot be used.
 */
public final class Courseworthy {

    /** How a result is written. */
    public enum Format {
        TEXT, JSON, MARKDOWN;

        @Override
        public String toString() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    private final Path home;
    private final Consumer<String> remarks;
    private final OverwriteGuard guard = new OverwriteGuard();

    /**
     * @param home    the folder of the checkout, where shipped courses lie; null where it is not known
     * @param remarks takes warnings on what was read
     */
    public Courseworthy(Path home, Consumer<String> remarks) {
        this.home = home;
        this.remarks = remarks;
    }

    /** The whole brief. */
    public String brief(Request request, Format format, boolean colours) {
        Brief brief = answer(request, true, true).brief();
        return switch (format) {
            case TEXT -> BriefText.of(brief, colours);
            case JSON -> JsonBrief.of(brief);
            case MARKDOWN -> BriefMarkdown.of(brief);
        };
    }

    /** One topic of the brief in full, with what would change it. */
    public String topic(Request request, String topic, Format format, boolean colours, Progress progress) {
        mustBeTopic("--topic", topic);
        Answer answer = answer(request, true, false);
        List<Flip> flips = Reasons.flips(answer.rules(), answer.call(), Topics.of(topic), progress).any();
        return switch (format) {
            case TEXT -> TopicText.of(answer.brief(), topic, flips, colours);
            case JSON -> JsonBrief.of(answer.brief(), topic, flips);
            case MARKDOWN -> BriefMarkdown.of(answer.brief(), topic, flips);
        };
    }

    /**
     * Why a decision is as it is, or, with {@code checklist} for the topic, why a rule's task is on the checklist or not.
     *
     * @param not  a value that was not chosen, as typed; null for none
     * @param rule the id of a rule to hold against the day; null for none
     */
    public String why(Request request, String topic, String not, String rule, Format format, boolean colours, Progress progress) {
        boolean task = topic.equals(Reasoning.CHECKLIST) && rule != null && not == null;
        if (!task) {
            mustBeTopic("TOPIC", topic);
        }
        Long value = not == null ? null : Reasons.value(Topics.of(topic), not);
        Reasoning reasoning = reasoning(request, task ? null : Topics.of(topic), value, rule, progress);
        return switch (format) {
            case TEXT -> WhyText.of(reasoning, colours);
            case JSON -> JsonWhy.of(reasoning);
            case MARKDOWN -> WhyMarkdown.of(reasoning);
        };
    }

    private Reasoning reasoning(Request request, Topic topic, Long not, String rule, Progress progress) {
        Path situation = new Inputs(home, new Faults()).path(request.course());
        if (situation != null && SituationFile.isOne(situation)) {
            return SituationReasons.of(home, situation, request, topic, not, rule, progress, this::stopOrWarn);
        }
        Answer answer = answer(request);
        return topic == null ? Reasons.ofTask(answer.rules(), answer.call(), answer.brief(), rule)
                : new Reasons(answer.rules(), answer.call(), topic, progress).of(answer.brief(), not, rule);
    }

    /** The checklist alone. */
    public String checklist(Request request, Format format, boolean colours) {
        Brief brief = answer(request).brief();
        return switch (format) {
            case TEXT -> BriefText.checklist(brief, colours);
            case JSON -> JsonBrief.checklist(brief);
            case MARKDOWN -> BriefMarkdown.checklist(brief);
        };
    }

    /**
     * Set-ups beside the recommended one.
     *
     * @param written one text for each set-up, topics and values as sheets write them
     */
    public String compare(Request request, List<String> written, Format format, boolean colours) {
        List<Map<Topic, Long>> asked = setUps(written);
        Answer answer = answer(request);
        SetUps setUps = new SetUps(answer.rules(), answer.call(), answer.ride()::on);
        List<SetUp> all = new ArrayList<>(List.of(setUps.recommended()));
        Build build = answer.brief().build();
        if (build != null && build.bike() != null) {
            all.add(setUps.of("the build of your workshop, " + build.bike().name(), BuildCall.known(build, answer.mounted())));
        }
        for (int i = 0; i < asked.size(); i++) {
            all.add(setUps.of(written.get(i), asked.get(i)));
        }
        return switch (format) {
            case TEXT -> CompareText.of(answer.brief(), all, colours);
            case JSON -> JsonCompare.of(answer.brief(), all);
            case MARKDOWN -> CompareMarkdown.of(answer.brief(), all);
        };
    }

    private static List<Map<Topic, Long>> setUps(List<String> written) {
        Faults faults = new Faults();
        if (written.isEmpty()) {
            faults.add("--set", 0, "", "no set-up", "at least one, such as --set 'front tyre width=45 mm'", "");
        }
        List<Map<Topic, Long>> out = new ArrayList<>();
        for (String each : written) {
            out.add(new SetUpReader(faults).read(each));
        }
        faults.throwIfAny();
        return out;
    }

    /** What a course asks of the gears, and what those that are ridden together give. */
    public String gears(Request request, Format format, boolean colours) {
        Answer answer = answer(request);
        GearChoice choice = GearChoice.of(answer.mounted(), House.realPairs(), BuildCall.drivetrain(answer.brief().build()));
        GearShortfall shortfall = shortfall(answer.call(), answer.mounted(), answer.ride());
        return switch (format) {
            case TEXT -> GearsText.of(answer.brief(), choice, shortfall, colours);
            case JSON -> JsonGears.of(answer.brief(), choice, shortfall);
            case MARKDOWN -> GearsMarkdown.of(answer.brief(), choice, shortfall);
        };
    }

    /**
     * Bar and saddle positions of a workshop's bikes, or one bike's carried over to another.
     *
     * @param from  the bike whose position is carried over; null, as {@code to}, to show all
     * @param rider the rider's file; null for none
     */
    public String position(String workshop, String from, String to, String rider, Format format, boolean colours) {
        return Positions.of(home, workshop, from, to, rider, format, colours, this::stopOrWarn);
    }

    /** A debrief held against the brief it names, or the record of each rule over all debriefs of a folder. */
    public String debrief(String file, Format format, boolean colours) {
        return Debriefing.of(home, file, format, colours, this::stopOrWarn);
    }

    /**
     * A season, from its folder.
     *
     * @param format {@code text}, {@code csv}, {@code json} or {@code markdown}
     */
    public String season(String folder, String format, boolean colours, Progress progress) {
        Season season = Seasons.of(home, folder, this::stopOrWarn, progress);
        return switch (format) {
            case "csv" -> SeasonCsv.of(season);
            case "json" -> JsonSeason.of(season);
            case "markdown" -> SeasonMarkdown.of(season);
            default -> SeasonText.of(season, colours);
        };
    }

    /** A course by itself. */
    public String course(String file, String ground, Format format, boolean colours) {
        Faults faults = new Faults();
        Inputs inputs = new Inputs(home, faults);
        Course course = inputs.course(file, ground);
        stopOrWarn(faults);
        Demands demands = Survey.of(course, Rider.UNKNOWN, Event.UNKNOWN, Bike.UNKNOWN);
        CourseLine line = CourseLine.of(course);
        return format == Format.JSON ? JsonBrief.course(line, ofTheCourse(demands)) : CourseText.of(line, demands, colours);
    }

    private static Map<Measure, Value> ofTheCourse(Demands demands) {
        Map<Measure, Value> out = new EnumMap<>(demands.values());
        out.keySet().retainAll(CourseText.measures());
        return out;
    }

    /**
     * The JSON Schema of a kind of file.
     *
     * @param kind one of {@link Schemas#KINDS}
     */
    public String schema(String kind) {
        if (!Schemas.KINDS.contains(kind)) {
            throw new BadInput(Fault.of("schema", 0, "", Inputs.quoted(kind), "one of: " + String.join(", ", Schemas.KINDS),
                    Spelling.didYouMean(kind, Schemas.KINDS)));
        }
        return JsonCatalogue.schema(Schemas.of(kind));
    }

    /**
     * Writes a folder of files to begin with.
     *
     * @return what to do next
     */
    public String startFolder(String typed) {
        Faults faults = new Faults();
        Path folder = new Inputs(home, faults).path(typed);
        faults.throwIfAny();
        StarterFolder.write(folder, typed);
        String in = typed.endsWith("/") ? typed : typed + "/";
        return "Wrote " + String.join(", ", StarterFolder.FILES) + " to " + in + "\nThey work as they are; change what is yours, then:\n\n"
                + "    courseworthy brief " + in + "course.yaml --rider " + in + "rider.yaml --event " + in + "event.yaml --sheet " + in
                + "sheet.yaml --workshop " + in + "workshop.yaml\n";
    }

    /**
     * Writes a sheet of advice to begin with, and its cases.
     *
     * @return what to do next
     */
    public String startSheet(String typed) {
        Faults faults = new Faults();
        Path sheet = new Inputs(home, faults).path(typed);
        faults.throwIfAny();
        StarterSheet.write(sheet, typed);
        return "Wrote " + typed + " and " + StarterSheet.casesOf(typed) + "\nThey work as they are; change what is yours, then:\n\n"
                + "    courseworthy sheet check " + typed + "\n    courseworthy sheet test " + typed + "\n    courseworthy brief COURSE --sheet "
                + typed + "\n";
    }

    /**
     * Looks over a coach's sheet; what cannot be used is thrown, what is to be looked at is returned.
     *
     * @param gaps     whether to look for situations and shipped courses on which nobody speaks
     * @param all      whether to list all remarks, however many of a kind
     * @param examples a folder to write an example of each remark into; null for none
     */
    public String sheetCheck(String file, List<String> beside, boolean gaps, boolean all, String examples, Format format, boolean colours) {
        SheetLook look = SheetLook.at(home, file, beside, gaps, all, this::stopOrWarn);
        if (examples != null) {
            Path folder = new Inputs(home, new Faults()).path(examples);
            if (folder != null) {
                guard.check(folder, examples);
            }
            List<String> sheets = new ArrayList<>(beside);
            sheets.add(file);
            look = look.withExamples(folder, examples, sheets);
        }
        return format == Format.JSON ? JsonCheck.of(file, look.rows(), look.remarks(), look.files())
                : CheckText.of(file, look.rows(), look.remarks(), look.files(), colours);
    }

    /** A sheet held against its cases. */
    public record Tests(String text, boolean asExpected) {
    }

    /**
     * Holds a sheet against its cases.
     *
     * @param cases files of cases; where there are none, the one beside the sheet
     * @param cover whether to show what no case touches
     */
    public Tests sheetTest(String file, List<String> beside, List<String> cases, boolean cover, Format format, boolean colours, Progress progress) {
        Tried tried = SheetTrial.of(home, file, beside, cases, cover, this::stopOrWarn, progress);
        String text = format == Format.JSON ? JsonTried.of(file, tried) : TriedText.of(file, tried, colours);
        return new Tests(text, tried.failed().isEmpty());
    }

    /**
     * What another sheet changes, over courses and riders; empty as text where it changes nothing.
     *
     * @param before  the sheet as it was, or none
     * @param courses a folder; null for the shipped courses
     * @param riders  a folder; null for a rider of whom nothing is known
     * @param events  a folder; null for the shipped events where the courses are
     * @param topic   the one topic to show, in full; null for all
     */
    public String sheetImpact(String before, String after, String courses, String riders, String events, String topic, Format format,
            boolean colours, Progress progress) {
        if (topic != null) {
            mustBeTopic("--topic", topic);
        }
        Impact all = SheetImpact.of(home, before, after, courses, riders, events, this::stopOrWarn, progress);
        Impact impact = topic == null ? all : all.on(Topics.of(topic));
        if (format == Format.JSON) {
            return JsonImpact.of(impact);
        }
        return topic == null ? ImpactText.of(impact, colours) : ImpactText.ofTopic(impact, colours);
    }

    /**
     * Writes a page for each topic and each measure into a folder, which must be new or empty.
     *
     * @return what to read first
     */
    public String pages(String typed) {
        Faults faults = new Faults();
        Path folder = new Inputs(home, faults).path(typed);
        faults.throwIfAny();
        if (home != null) {
            guard.add(home.resolve("rules"));
            guard.check(folder, typed);
        }
        int count = CataloguePages.write(home, folder, typed);
        return "Wrote " + count + " pages; begin with " + (typed.endsWith("/") ? typed : typed + "/") + "README.md\n";
    }

    public String topics(Format format, boolean colours) {
        return format == Format.JSON ? JsonCatalogue.topics() : Catalogue.topics(colours);
    }

    public String measures(Format format, boolean colours) {
        return format == Format.JSON ? JsonCatalogue.measures() : Catalogue.measures(colours);
    }

    /**
     * The shipped rules, limits and joins included, sorted by id.
     *
     * @param topic a topic they must speak on; null for all
     */
    public String rules(String topic, Format format, boolean colours) {
        if (topic != null) {
            mustBeTopic("--topic", topic);
        }
        List<Catalogue.Rule> rules = RuleList.of(topic);
        return format == Format.JSON ? JsonCatalogue.rules(rules) : Catalogue.rules(rules, colours);
    }

    /** A brief, the call it was made of, the same for the parts of a build where there is one, and the rules that made them. */
    private record Answer(DroolsRules rules, Call call, Call mounted, Brief brief, Ride ride) {
    }

    /** Without what to set, the day's plan and second calls. */
    private Answer answer(Request request) {
        return answer(request, false, false);
    }

    /**
     * @param outlook whether to work out what to set, the day's plan and second calls
     * @param ahead   whether to work out what a plain brief shows of worth while the call is made
     */
    private Answer answer(Request request, boolean outlook, boolean ahead) {
        Faults faults = new Faults();
        Inputs inputs = new Inputs(home, faults);
        Rider rider = inputs.rider(request.rider());
        RuleLoading loading = RuleLoading.start(home, rider, request.sheets());
        Course course = inputs.course(request.course(), request.ground());
        Event event = inputs.event(request);
        Workshop workshop = inputs.workshop(request.workshop());
        Bike bike = rider == null || event == null ? null : bike(rider, event, faults);
        Together.check(course, event, faults);
        Ride ride = new Ride(course, rider, event, bike);
        Demands demands = faults.stop() ? null : ride.atHand();
        Sensitivity sensitivity = demands == null ? null : Sensitivity.of(demands);
        if (ahead && sensitivity != null) {
            sensitivity.ahead(Worths.mayUseExtensions(demands), Worths.inCompany(demands));
            DayPlan.ahead(demands);
        }
        DroolsRules rules = loading.finish(faults);
        stopOrWarn(faults);
        Call call = Calling.call(rules, demands, ride::on);
        Worths worths = new Worths(call, call.demands().choosing() == null ? sensitivity : Sensitivity.of(call.demands()));
        FitRules fit = workshop == null ? null : FitRules.load();
        Workshop own = workshop == null ? null : workshop.as(rider.name());
        Build build = workshop == null ? null : Builds.of(call, own, event.date(), worths, fit);
        Call mounted = BuildCall.of(rules, call, build, ride::on);
        Refit refit = Refit.of(rules, fit, call, build, mounted, own, event.date());
        Outlook day = outlook ? Outlook.of(call, mounted, others(rules, ride, call, refit), BikeAtHand.of(rules, call)).with(shortfall(call, mounted, ride))
                : Outlook.NONE;
        List<Margin> close = outlook ? Margins.of(rules, call) : List.of();
        return new Answer(rules, call, mounted, Briefs.of(course, rider, event, call, mounted, close, Checklists.of(mounted, event, build), day,
                worths, build, loading.given()), ride);
    }

    private List<PlanB> others(DroolsRules rules, Ride ride, Call call, Refit refit) {
        List<PlanB> out = Otherwise.of(rules, ride, call, refit);
        Faults faults = new Faults();
        Together.changes(ride.event(), out, faults);
        stopOrWarn(faults);
        return out;
    }

    /** Of the build's gears; where those are not known, or there is no build, of the call's. */
    private static GearShortfall shortfall(Call call, Call mounted, Ride ride) {
        boolean build = mounted != call && mounted.on(Topics.of("easiest gear")).value() != null;
        GearShortfall out = GearShortfall.of(build ? mounted : call, House.realPairs(), ride::on);
        return out == null || !build ? out : out.ofABuild();
    }

    private static Bike bike(Rider rider, Event event, Faults faults) {
        Bike fromEvent = event.bike() == null ? Bike.UNKNOWN : BikeReader.read(event.file(), event.bike(), faults);
        return fromEvent == null ? null : Survey.bike(rider.bike(), fromEvent);
    }

    /**
     * To be asked before a result is written to a file.
     *
     * @throws BadInput where the file was read for it, lies in a folder that was, or is of a kind that people write
     */
    public void mayWriteOver(Path target, String typed) {
        guard.check(target, typed);
    }

    private void stopOrWarn(Faults faults) {
        guard.add(faults);
        List<Fault> warnings = faults.warnings();
        if (!warnings.isEmpty()) {
            remarks.accept(FaultList.text(warnings).stripTrailing());
        }
        faults.throwIfAny();
    }

    private static void mustBeTopic(String option, String name) {
        if (Topics.find(name) == null) {
            String near = Spelling.didYouMean(name, Topics.names());
            throw new BadInput(Fault.of(option, 0, "", Inputs.quoted(name), "a topic",
                    near.isEmpty() ? "'courseworthy topics' lists them." : near));
        }
    }
}
