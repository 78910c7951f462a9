package courseworthy.task;

import courseworthy.build.Build;
import courseworthy.build.EventDay;
import courseworthy.build.Outing;
import courseworthy.build.Recommendation;
import courseworthy.build.SeasonPlan;
import courseworthy.build.SeasonPlanner;
import courseworthy.build.SeasonPlanner.PlannedSeason;
import courseworthy.build.SeasonPlanner.Terms;
import courseworthy.build.SeasonWork;
import courseworthy.call.Call;
import courseworthy.call.CallMaker;
import courseworthy.course.Course;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.demand.RideInput;
import courseworthy.demand.Survey;
import courseworthy.engine.DroolsRules;
import courseworthy.event.Event;
import courseworthy.event.SeasonFile;
import courseworthy.event.SeasonFile.Entry;
import courseworthy.event.SeasonFile.Start;
import courseworthy.event.SeasonFile.Starter;
import courseworthy.event.SeasonReader;
import courseworthy.event.StageRace;
import courseworthy.event.WorkHours;
import courseworthy.event.WorkHoursReader;
import courseworthy.fit.FitRules;
import courseworthy.problem.Faults;
import courseworthy.problem.Progress;
import courseworthy.problem.Spelling;
import courseworthy.rider.Bike;
import courseworthy.rider.BikeReader;
import courseworthy.rider.Rider;
import courseworthy.sheet.Sheet;
import courseworthy.stage.StageSetUp;
import courseworthy.stage.StageSettler;
import courseworthy.topic.Work;
import courseworthy.wear.UpkeepPlan;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartKind;
import courseworthy.workshop.Workshop;
import courseworthy.worth.Sensitivity;
import courseworthy.worth.WorthCalculator;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiConsumer;
import java.util.function.Function;

/**
 * Reads the folder of a season and works it out, workshop by workshop: each on a thread of its own, as many at a time as there are
 * processors. What several share is read and loaded once: courses, events, workshops, and rules where riders add none of their own.
 */
public final class SeasonTask {

    /** The file that says who rides what. */
    static final String FILE = "season.yaml";

    private final Path home;
    private final Path folder;
    private final String shown;
    private SeasonFile file;
    private final Faults faults = new Faults();
    private final Map<String, Bike> bikes = new LinkedHashMap<>();
    private final Map<String, Workshop> workshops = new LinkedHashMap<>();
    private final Map<String, DroolsRules> rules = new LinkedHashMap<>();
    private final Map<String, List<Sheet>> sheetsOf = new LinkedHashMap<>();
    private final Map<String, List<Sheet>> inForce = new LinkedHashMap<>();
    /** Events without a time of the start. */
    private final Map<Entry, Event> timeless = new LinkedHashMap<>();
    /** By the file of the workshop, in the order of riders. */
    private final Map<String, List<PlannedStart>> planned = new LinkedHashMap<>();

    /** A start as read. */
    private record PlannedStart(int order, Starter starter, Rider rider, Event event, Course course, Bike bike, Start start, DroolsRules rules) {

        RideInput ride() {
            return new RideInput(course, rider, event, bike);
        }

        /** The number of the stage; 0 where it is none. */
        int stage() {
            return event.plan().race() == null ? 0 : event.plan().race().number();
        }

        SeasonStart named() {
            return new SeasonStart(order, starter.name(), event.name().isEmpty() ? course.name() : event.name(), course.name(), event.date());
        }
    }

    private SeasonTask(Path home, Path folder, String shown) {
        this.home = home;
        this.folder = folder;
        this.shown = shown;
    }

    /** @param typed the folder @param recorded rides besides those of the log; null for none */
    public static SeasonPlan of(Workspace workspace, String typed, RecordedRides recorded, Progress progress) {
        return read(workspace, typed, recorded).work(progress, null);
    }

    /** A season of which every evening is asked for. @param typed the folder @param recorded rides besides those of the log; null for none */
    public static SeasonPlan byWeek(Workspace workspace, String typed, RecordedRides recorded, Progress progress) {
        SeasonTask season = read(workspace, typed, recorded);
        season.evenings();
        workspace.stopOrWarn(season.faults);
        return season.work(progress, null);
    }

    /** Says what a plan by evening cannot do without. */
    private void evenings() {
        if (file.hours() == null) {
            faults.add(file.file(), 0, WorkHoursReader.KEY, "nothing", "the time for work on each evening, from which a plan by week is made",
                    "Add a line \"time for work: 1:30 h\".");
        }
        timeless.forEach((entry, event) -> faults.add(file.file(), entry.line(), "start", "no time of the start of this event",
                "the time of every start, from which a plan by week counts",
                entry.event() == null ? "Name a file with \"event: ...\" and write \"start: 09:00\" in it." : "Write \"start: 09:00\" in " + entry.event().text() + "."));
    }

    /** Whether there is all that a plan by week needs. */
    public boolean hasEvenings() {
        return file.hours() != null && timeless.isEmpty();
    }

    /**
     * Reads a season and all that it names.
     *
     * @param typed    the folder
     * @param recorded rides besides those of the log; null for none
     */
    public static SeasonTask read(Workspace workspace, String typed, RecordedRides recorded) {
        Faults faults = new Faults();
        Path folder = workspace.reader(faults).path(typed);
        if (folder != null) {
            faults.reads(folder);
        }
        if (folder != null && !Files.isDirectory(folder)) {
            faults.add(typed, 0, "", Files.exists(folder) ? "a file" : "no such folder", "a folder with a " + FILE,
                    folder.endsWith(FILE) && Files.exists(folder) ? "Give the folder that it is in." : "");
        }
        workspace.stopOrWarn(faults);
        SeasonTask season = new SeasonTask(workspace.home(), folder, typed.endsWith("/") ? typed : typed + "/");
        season.file = SeasonReader.read(folder.resolve(FILE), season.shown + FILE, season.faults);
        if (season.file != null && !season.faults.stop()) {
            season.plan(recorded, recorded == null ? null : workspace.path(recorded.typed()));
        }
        workspace.stopOrWarn(season.faults);
        return season;
    }

    /** Who rides what, in the order written. */
    public List<SeasonStart> starts() {
        List<SeasonStart> out = new ArrayList<>();
        planned.values().forEach(starts -> starts.forEach(each -> out.add(each.named())));
        out.sort(Comparator.comparingInt(SeasonStart::order));
        return out;
    }

    // What is read

    private void plan(RecordedRides recorded, Path path) {
        SeasonFileReader files = new SeasonFileReader(home, folder, shown, file, faults);
        for (Starter starter : file.starters()) {
            workshops.put(starter.workshop().text(), files.workshop(starter));
            planned.computeIfAbsent(starter.workshop().text(), each -> new ArrayList<>());
            files.sheets(starter.sheets());
        }
        record(recorded, path);
        Set<String> days = new LinkedHashSet<>();
        for (Entry entry : file.events()) {
            Event event = event(files, file, entry);
            if (event != null && event.isStageRace() && entry.course() == null) {
                for (StageRace.RaceStage stage : stages(event, entry)) {
                    day(files, entry, stage.day().with(entry.role(), null), files.course(event, stage), days);
                }
            } else if (event != null && entry.course() == null) {
                faults.add(file.file(), entry.line(), "course", "no course of this event", "one here, or an event whose stages name theirs", "Add \"course: ...\".");
            } else {
                day(files, entry, event, files.course(entry.course(), entry.ground(), entry.map(), entry.elevation()), days);
            }
        }
    }

    /** The stages of a race, all of which are ridden; the first with the journey of the entry. */
    private List<StageRace.RaceStage> stages(Event race, Entry entry) {
        if (entry.date() != null || entry.ground() != null || !entry.map().isEmpty() || entry.elevation() != null) {
            faults.add(file.file(), entry.line(), entry.date() != null ? "date" : "ground", "this beside an event with stages", "the course of one stage beside it, or the event alone",
                    "Leave it out: the stages have their own days and courses.");
        }
        List<StageRace.RaceStage> out = new ArrayList<>(race.plan().race().stages());
        out.replaceAll(each -> each.day().plan().race().number() > 1 ? each : new StageRace.RaceStage(each.course(), each.day().with(entry.travel()), each.line()));
        return out;
    }

    /** Adds the starts of all who ride on a day. */
    private void day(SeasonFileReader files, Entry entry, Event event, Course course, Set<String> days) {
        if (event != null && event.start() == null) {
            timeless.put(entry, event);
        }
        for (Start start : starts(file, entry)) {
            Starter starter = starter(file, start.rider());
            if (event != null && event.date() != null && !days.add(starter.name() + "\n" + event.date())) {
                faults.add(file.file(), entry.line(), "date", "a second event of \"" + starter.name() + "\" on " + event.date(),
                        "one event for each rider and day", "Give one of them another date, or name under starts who rides it.");
            }
            ConsistencyCheck.check(course, event, faults);
            add(files.rider(starter.rider()), file, starter, start, event, course);
        }
    }

    private void record(RecordedRides recorded, Path path) {
        if (recorded != null && workshops.size() > 1) {
            faults.add("--log", 0, "", "a season of " + workshops.size() + " workshops", "a season of one workshop", "Name a log at a rider of each workshop instead.");
        } else if (recorded != null) {
            faults.reads(path);
            workshops.replaceAll((name, each) -> each == null ? null : RideLogFiles.add(each, recorded, path, faults));
        }
    }

    private static <T> T read(Map<String, T> known, String key, Function<String, T> reader) {
        if (!known.containsKey(key)) {
            known.put(key, reader.apply(key));
        }
        return known.get(key);
    }

    private static List<Start> starts(SeasonFile file, Entry entry) {
        if (!entry.starts().isEmpty()) {
            return entry.starts();
        }
        List<Start> out = new ArrayList<>();
        file.starters().forEach(each -> out.add(new Start(each.name(), null, null, entry.line())));
        return out;
    }

    private static Starter starter(SeasonFile file, String name) {
        for (Starter each : file.starters()) {
            if (each.name().equals(name)) {
                return each;
            }
        }
        throw new IllegalArgumentException(name);
    }

    private Event event(SeasonFileReader files, SeasonFile file, Entry entry) {
        Event event = files.event(entry.event());
        if (event != null && event.isStageRace()) {
            return entry.course() == null || faults.stop() ? event : files.stage(event, entry).with(entry.role(), null).with(entry.travel());
        }
        if (event != null) {
            event = event.with(entry.role(), entry.date()).with(entry.travel());
        }
        if (event != null && event.date() == null && !faults.stop()) {
            faults.add(file.file(), entry.line(), "date", "no date of this event", "one here or in the event's file", "Add \"date: 2026-05-09\".");
        }
        return event;
    }

    private void add(Rider rider, SeasonFile file, Starter starter, Start start, Event event, Course course) {
        Workshop workshop = workshops.get(starter.workshop().text());
        hasBike(file, workshop, start);
        areKinds(file, start);
        Bike fromEvent = event == null || event.bike() == null ? Bike.UNKNOWN
                : read(bikes, event.file(), path -> BikeReader.read(path, event.bike(), faults));
        if (rider == null || workshop == null || event == null || course == null || fromEvent == null || faults.stop()) {
            return;
        }
        DroolsRules own = rules(starter, rider);
        List<PlannedStart> to = planned.get(starter.workshop().text());
        to.add(new PlannedStart(order(), starter, rider.named(starter.name()), event, course, Survey.bike(rider.bike(), fromEvent), start, own));
    }

    private int order() {
        int sum = 0;
        for (List<PlannedStart> each : planned.values()) {
            sum += each.size();
        }
        return sum;
    }

    private void hasBike(SeasonFile file, Workshop workshop, Start start) {
        if (workshop == null || start.bike() == null) {
            return;
        }
        List<String> names = new ArrayList<>();
        for (Part bike : workshop.bikes()) {
            names.add(bike.name());
        }
        if (!names.contains(start.bike())) {
            faults.add(file.file(), start.line(), "bike", "\"" + start.bike() + "\"", "a bike of the workshop: " + String.join(", ", names),
                    Spelling.didYouMean(start.bike(), names));
        }
    }

    private static Set<PartKind> kinds(Start start) {
        if (start.mayChange() == null) {
            return null;
        }
        Set<PartKind> out = EnumSet.noneOf(PartKind.class);
        start.mayChange().forEach(word -> out.add(PartKind.of(word)));
        return out;
    }

    private void areKinds(SeasonFile file, Start start) {
        for (String word : start.mayChange() == null ? List.<String>of() : start.mayChange()) {
            if (!PartKind.mountedWords().contains(word)) {
                faults.add(file.file(), start.line(), "may change", "\"" + word + "\"", "kinds of parts: " + String.join(", ", PartKind.mountedWords()),
                        Spelling.didYouMean(word, PartKind.mountedWords()));
            }
        }
    }

    /** The same network for all who add no rules of their own. */
    private DroolsRules rules(Starter starter, Rider rider) {
        boolean own = rider.constraints() != null;
        String key = (own ? starter.rider().text() : "") + "\n" + paths(starter);
        DroolsRules out = read(rules, key, each -> load(key, starter, rider));
        inForce.put(starter.name(), sheetsOf.get(key));
        return out;
    }

    private DroolsRules load(String key, Starter starter, Rider rider) {
        RuleLoader loading = RuleLoader.start(home, rider, paths(starter));
        DroolsRules out = loading.finish(faults);
        sheetsOf.put(key, loading.given());
        return out;
    }

    private List<String> paths(Starter starter) {
        List<String> out = new ArrayList<>();
        starter.sheets().forEach(each -> out.add(shown + each.text()));
        return out;
    }

    // What is worked out

    /**
     * Works it out.
     *
     * @param briefs takes a brief of each ride as soon as it is made, several at a time and in any order, and need not keep it; null where none is wanted
     */
    public SeasonPlan work(Progress progress, BiConsumer<SeasonPlan.PlannedRide, Brief> briefs) {
        Terms terms = new Terms(file.hours(), file.back(), file.minuteWorth());
        FitRules fit = FitRules.load();
        int all = Math.max(1, order() * (briefs == null ? 1 : 2));
        AtomicInteger done = new AtomicInteger();
        Runnable eachDone = () -> progress.at(done.incrementAndGet(), all);
        List<Outcome> results = new ArrayList<>();
        ExecutorService workers = Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors(), SeasonTask::worker);
        try {
            List<Future<Outcome>> futures = new ArrayList<>();
            planned.forEach((path, starts) -> futures.add(workers.submit(() -> plan(workshops.get(path), starts, terms, fit, briefs, eachDone))));
            for (Future<Outcome> each : futures) {
                results.add(each.get());
            }
        } catch (ExecutionException e) {
            throw RuleLoader.unchecked(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        } finally {
            workers.shutdownNow();
        }
        return joined(results);
    }

    /** What came of the starts of one workshop. */
    private record Outcome(PlannedSeason result, UpkeepPlan upkeep) {
    }

    private Outcome plan(Workshop workshop, List<PlannedStart> starts, Terms terms, FitRules fit, BiConsumer<SeasonPlan.PlannedRide, Brief> briefs,
            Runnable eachDone) {
        List<Outing> outings = outings(starts);
        PlannedSeason result = SeasonPlanner.of(workshop, outings, terms, fit, eachDone);
        for (SeasonPlan.PlannedRide ride : briefs == null ? List.<SeasonPlan.PlannedRide>of() : result.rides()) {
            PlannedStart start = starts.stream().filter(each -> each.order() == ride.order()).findFirst().orElseThrow();
            Outing outing = outings.stream().filter(each -> each.order() == ride.order()).findFirst().orElseThrow();
            briefs.accept(ride, brief(start, outing, result.open().get(ride.order()), fit, ride.build()));
            eachDone.run();
        }
        return new Outcome(result, SeasonUpkeep.of(workshop, outings, result, terms.hours() == null ? WorkHours.ASSUMED : terms.hours()));
    }

    /** What a forecast that turns would change is in it; warnings on that are those of a brief made alone. */
    private Brief brief(PlannedStart start, Outing outing, Workshop open, FitRules fit, Build build) {
        BriefTask.CallContext called = new BriefTask.CallContext(start.rules(), outing.recommended().call(), start.ride(), outing.recommended().worths(), open);
        return BriefTask.of(new Workspace(home, warning -> { }), called, fit, build, inForce.get(start.starter().name()));
    }

    private static Thread worker(Runnable work) {
        Thread thread = new Thread(work, "season");
        thread.setDaemon(true);
        return thread;
    }

    private static List<Outing> outings(List<PlannedStart> starts) {
        List<Outing> out = new ArrayList<>();
        Map<PlannedStart, StageSetUp> settled = settled(starts);
        for (PlannedStart each : starts) {
            RideInput ride = each.ride();
            Call call = settled.containsKey(each) ? settled.get(each).days().get(each.stage() - 1).settled() : CallMaker.call(each.rules(), ride);
            WorthCalculator worths = new WorthCalculator(call, Sensitivity.of(call.demands()));
            String role = each.event().role() == null ? "training" : each.event().role();
            SeasonStart named = each.named();
            EventDay day = new EventDay(named.event(), named.course(), named.date(), each.event().start(), longest(call), each.event().plan().travel(), role);
            out.add(new Outing(each.order(), named.rider(), each.starter().priority(), day, Recommendation.of(each.rules(), call, worths, ride::on),
                    each.start().bike(), settled.containsKey(each) && each.stage() > 1 ? mayChange(settled.get(each), each.stage()) : kinds(each.start())));
        }
        out.sort(Comparator.comparing(each -> each.day().date()));
        return out;
    }

    /** The set-up of a race of those who ride all its stages. */
    private static Map<PlannedStart, StageSetUp> settled(List<PlannedStart> starts) {
        Map<String, List<PlannedStart>> races = new LinkedHashMap<>();
        for (PlannedStart each : starts) {
            if (each.event().plan().race() != null) {
                races.computeIfAbsent(each.starter().name() + "\n" + each.event().file(), race -> new ArrayList<>()).add(each);
            }
        }
        Map<PlannedStart, StageSetUp> out = new LinkedHashMap<>();
        for (List<PlannedStart> each : races.values()) {
            StageRace race = each.get(0).event().plan().race();
            if (each.size() == race.stages().size()) {
                StageSetUp setUp = StageSettler.of(each.get(0).rules(), race, each.stream().map(PlannedStart::ride).toList());
                each.forEach(start -> out.put(start, setUp));
            }
        }
        return out;
    }

    /** Kinds of parts that are changed before a stage of a race. */
    private static Set<PartKind> mayChange(StageSetUp setUp, int stage) {
        Set<PartKind> out = EnumSet.noneOf(PartKind.class);
        for (StageSetUp.EveningChange each : setUp.changes()) {
            if (each.before() == stage && each.work() == Work.TYRES) {
                out.addAll(Set.of(PartKind.TYRE, PartKind.INSERT, PartKind.SEALANT));
            } else if (each.before() == stage && each.work() == Work.WHEELS) {
                out.addAll(Set.of(PartKind.WHEEL, PartKind.ROTOR, PartKind.CASSETTE));
            }
        }
        return out;
    }

    private static Double longest(Call call) {
        MeasureValue hours = call.demands().get(Measure.HOURS);
        return hours == null ? null : Double.valueOf(Measure.HOURS.scale().resolution().base(hours.high()));
    }

    private SeasonPlan joined(List<Outcome> outcomes) {
        List<PlannedSeason> results = outcomes.stream().map(Outcome::result).toList();
        UpkeepPlan upkeep = UpkeepPlan.of(outcomes.stream().map(Outcome::upkeep).toList());
        List<SeasonPlan.PlannedRide> rides = new ArrayList<>();
        List<SeasonPlan.PartClash> clashes = new ArrayList<>();
        List<SeasonPlan.Wish> wishes = new ArrayList<>();
        List<SeasonWork.SeasonJob> jobs = new ArrayList<>();
        for (PlannedSeason each : results) {
            rides.addAll(each.rides());
            clashes.addAll(each.clashes());
            wishes.addAll(each.wishes());
            jobs.addAll(each.jobs());
        }
        rides.sort(Comparator.comparing(SeasonPlan.PlannedRide::date).thenComparing(SeasonPlan.PlannedRide::order));
        clashes.sort(Comparator.comparing(SeasonPlan.PartClash::date));
        jobs.sort(Comparator.comparing(SeasonWork.SeasonJob::date));
        SeasonWork work = new SeasonWork(file.hours() == null ? WorkHours.ASSUMED : file.hours(), file.hours() != null, jobs, upkeep);
        wishes.sort(SeasonPlan.Wish.byWorth());
        return new SeasonPlan(file.name(), file.currency(), file.minuteWorth(), file.back(), inForce, attribution(), rides, clashes, wishes, work);
    }

    /** Who must be named for the courses of the season, each once. */
    private String attribution() {
        Set<String> out = new LinkedHashSet<>();
        planned.values().forEach(starts -> starts.forEach(each -> out.add(each.course().attribution())));
        out.remove("");
        return String.join("; ", out);
    }
}
