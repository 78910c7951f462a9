package courseworthy.cli;

import courseworthy.render.calendar.CalendarRenderer;
import courseworthy.report.ChecklistCalendar;
import courseworthy.report.Report;
import courseworthy.task.BriefResult;
import courseworthy.task.CalendarTask;
import courseworthy.task.MapRequest;
import courseworthy.task.RecordedRides;
import courseworthy.task.Request;
import courseworthy.task.Workspace;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;

/** A command that answers for a course, a rider and a day. */
abstract class RequestCommand extends Command {

    private final SourceFunction<String> course = parameter("COURSE", "A course profile (.yaml), a GPX track (.gpx), or the name of a shipped course.");
    private final SourceFunction<String> ground = option("--ground", "GROUND",
            "Ground to assume where none is given, such as 'surface=gravel, smoothness=bad, mtb:scale=1'.");
    private final SourceFunction<MapRequest> map = map();
    private final SourceFunction<String> event = option("--event", "FILE", "The event or the typical ride: date, laps, forecast, support, rules.");
    private final SourceFunction<String> rider = option("--rider", "FILE", "The rider: mass, power, skill, bike at hand.");
    private final SourceFunction<List<String>> sheets = repeated("--sheet", "FILE",
            "A coach's sheet of advice; may be given several times, on a tie, the later sheet wins.");
    private final SourceFunction<String> role = option("--role", "ROLE", "training or race; overrides the event's.");
    private final SourceFunction<String> date = option("--date", "DATE", "The day, such as 2025-06-14; overrides the event's.");
    private final SourceFunction<String> workshop = option("--workshop", "FILE",
            "The workshop: what the rider owns. The build is made from it, and what to swap is listed.");
    private final SourceFunction<Format> format;
    private final Output output;

    RequestCommand(String name, Terminal terminal, String purpose, String... examples) {
        this(name, terminal, List.of(), purpose, examples);
    }

    /** @param besides formats that this command has and others have not */
    RequestCommand(String name, Terminal terminal, List<Format> besides, String purpose, String... examples) {
        super(name, terminal, purpose, examples);
        format = format(besides.toArray(Format[]::new));
        output = output();
    }

    @Override
    public final void run() {
        Request request = Request.builder(course.value()).ground(ground.value()).event(event.value()).rider(rider.value())
                .sheets(sheets.value()).role(role.value()).date(date.value()).workshop(workshop.value())
                .map(map.value()).recorded(recorded()).build();
        if (isTaken(workspace(), request, format.value(), output)) {
            return;
        }
        output.write(answer(workspace(), request, format.value(), colours() && !output.toFile()));
    }

    /** Rides that are added to the log of the workshop; null for none. */
    RecordedRides recorded() {
        return null;
    }

    /** Whether a workshop is named. */
    final boolean hasWorkshop() {
        return workshop.value() != null;
    }

    /** The folder in which the result is to stand. */
    final Path outputFolder() {
        return output.folder();
    }

    final String render(Format format, Supplier<Report> report, Supplier<String> json) {
        return render(format, output, report, json);
    }

    /** The checklist of a brief as entries of a calendar. */
    static String calendar(Workspace workspace, BriefResult made) {
        return CalendarRenderer.render(ChecklistCalendar.of(CalendarTask.of(made), workspace.lastChange()));
    }

    /** Does something else than answering, where options ask for that; says whether it did. */
    boolean isTaken(Workspace workspace, Request request, Format asked, Output to) {
        return false;
    }

    /** The result, whole. */
    abstract String answer(Workspace workspace, Request request, Format format, boolean colours);
}
