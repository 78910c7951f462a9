package courseworthy.task;

import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.course.ProfileReader;
import courseworthy.course.Stretch;
import courseworthy.course.ground.ProfileChange;
import courseworthy.course.ground.ProfileEdits;
import courseworthy.problem.Faults;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Makes a profile of a track and a map, to be edited; keeps what was edited in an older one. Nothing is overwritten. */
public final class ImportTask {

    /** How far the older profile's length may miss the track's. */
    private static final double MOST_MISSED = 0.02;

    private final Workspace workspace;
    private final String typed;

    private ImportTask(Workspace workspace, String typed) {
        this.workspace = workspace;
        this.typed = typed;
    }

    /**
     * What is to be imported.
     *
     * @param track as typed
     * @param map   with at least one extract
     * @param from  the older profile, as typed; null for none
     * @param to    the profile to write, as typed
     */
    public record Order(String track, MapRequest map, String from, String to) {
    }

    /** Writes the profile, and the track beside it where it does not lie there. */
    public static ImportResult of(Workspace workspace, Order order) {
        return new ImportTask(workspace, order.to()).write(order);
    }

    private ImportResult write(Order order) {
        Faults faults = new Faults();
        if (order.map().extracts().isEmpty()) {
            faults.add("--map", 0, "", "nothing", "a file of map data (.osm.pbf, .osm or .osm.gz)", "Add --map region.osm.pbf.");
        }
        NewProfile.checkName(typed, faults);
        RequestReader inputs = workspace.reader(faults);
        Path source = inputs.path(order.track());
        if (order.track().toLowerCase(Locale.ROOT).matches(".*[.]ya?ml")) {
            faults.add(order.track(), 0, "", "a profile", "a track (.gpx)", "Import the track it names; --from keeps what is in the profile.");
        }
        workspace.stopOrWarn(faults);
        NewProfile profile = NewProfile.at(workspace, typed);
        Course course = inputs.course(order.track(), null, order.map());
        workspace.stopOrWarn(faults);
        ProfileEdits.MergedProfile merged = order.from() == null ? new ProfileEdits.MergedProfile(course.stretches(), List.of()) : null;
        ProfileReader.Profile old = order.from() == null ? null : older(order.from(), course, faults);
        workspace.stopOrWarn(faults);
        if (old != null) {
            merged = ProfileEdits.into(course.stretches(), scaled(old.stretches(), course.length()));
        }
        if (merged.stretches().size() > CourseReader.MOST_STRETCHES) {
            faults.add(order.track(), 0, "", merged.stretches().size() + " stretches", "at most " + CourseReader.MOST_STRETCHES, "Cut it into days.");
            workspace.stopOrWarn(faults);
        }
        return write(order, source, course, old, merged, profile);
    }

    private static ProfileReader.Profile older(String from, Course course, Faults faults) {
        ProfileReader.Profile old = ProfileReader.read(Path.of(from), from, faults);
        if (old != null && !faults.stop() && !old.stretches().isEmpty()) {
            double length = old.stretches().stream().mapToDouble(Stretch::length).sum();
            if (Math.abs(length - course.length()) > MOST_MISSED * course.length()) {
                faults.add(from, old.stretchesLine(), "stretches", "a total of " + kilometres(length) + " km", kilometres(course.length())
                        + " km, the track's length, within 2 %", "Take the profile that was imported from this track.");
            }
        }
        return old;
    }

    private static String kilometres(double metres) {
        return String.format(Locale.ROOT, "%.1f", metres / 1000);
    }

    private static List<Stretch> scaled(List<Stretch> stretches, double length) {
        double total = stretches.stream().mapToDouble(Stretch::length).sum();
        return stretches.stream().map(each -> each.over(each.length() * length / total, each.ascent(), each.descent())).toList();
    }

    private ImportResult write(Order order, Path source, Course course, ProfileReader.Profile old, ProfileEdits.MergedProfile merged,
            NewProfile profile) {
        Course edited = named(course, old, merged.stretches());
        NewProfile.ProfileFile written = profile.write(edited, source, order.track(), header(order, edited.notes()));
        return new ImportResult(typed, written.track(), written.copied(), CourseSummary.of(edited), edited.stretches().size(), order.from(), merged.changes());
    }

    private static Course named(Course course, ProfileReader.Profile old, List<Stretch> stretches) {
        String name = old == null || old.name().isEmpty() ? course.name() : old.name();
        return Course.builder(name, stretches).summary(old == null ? "" : old.summary()).file(course.file()).track(course.track())
                .line(course.line()).climbing(course.climbing()).start(course.start()).repairs(course.repairs())
                .attribution(course.attribution()).notes(course.notes()).build();
    }

    private static List<String> header(Order order, List<String> notes) {
        List<String> out = new ArrayList<>(List.of("Taken from " + ProfileNames.of(List.of(order.track())) + " and the map " + ProfileNames.of(order.map().extracts())
                + (order.map().ride() == null ? "" : ", with hints from the recorded ride " + ProfileNames.of(List.of(order.map().ride()))) + ".",
                "Behind each value: mapped, inferred by a rule, or by hand. Correct what you know better, and remove its \"may be\".",
                "\"mapped\" and \"inferred\" keep what was taken from the map, so that a later import with --from tells your edits from it."));
        notes.forEach(note -> out.add("Note: " + note));
        return out;
    }
}
