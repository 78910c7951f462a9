package courseworthy.cli;

import courseworthy.report.CourseReport;
import courseworthy.report.json.JsonBrief;
import courseworthy.task.CourseResult;
import courseworthy.task.CourseTask;
import courseworthy.task.MapRequest;
import courseworthy.task.Request;

/** Prints what is to be known of a course by itself. */
final class CourseCommand extends Command {

    private final SourceFunction<String> file = parameter("FILE", "A course profile (.yaml), a GPX track (.gpx), or the name of a shipped course.");
    private final SourceFunction<String> ground = option("--ground", "GROUND",
            "Ground to assume where none is given, such as 'surface=gravel, smoothness=bad, mtb:scale=1'.");
    private final SourceFunction<MapRequest> map = map();
    private final SourceFunction<Format> format = format();
    private final Output output = output();

    CourseCommand(Terminal terminal) {
        super("course", terminal, "Shows a course: its profile, its measures, and what was repaired in the file.",
                "courseworthy course track.gpx --ground 'surface=gravel'", "courseworthy course track.gpx --map region.osm.pbf");
    }

    @Override
    public void run() {
        CourseResult result = CourseTask.of(workspace(), Request.builder(file.value()).ground(ground.value()).map(map.value()).build());
        output.write(render(format.value(), output, () -> CourseReport.of(result), () -> JsonBrief.course(result)));
    }
}
