package courseworthy.task;

import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.course.GpxTrackWriter;
import courseworthy.course.ProfileReader;
import courseworthy.course.Stretch;
import courseworthy.course.Track;
import courseworthy.course.ground.ProfileChange;
import courseworthy.course.ground.ProfileEdits;
import courseworthy.course.ground.ProfileWriter;
import courseworthy.problem.BadInput;
import courseworthy.problem.Faults;
import courseworthy.problem.OutputFailure;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Makes a profile of a track and a map, to be edited; keeps what was edited in an older one. Nothing is overwritten. */
public final class ImportTask {

    private static final String ENDING = ".yaml";
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
        if (typed == null || !typed.endsWith(ENDING)) {
            faults.add("--output", 0, "", typed == null ? "nothing" : RequestReader.quoted(typed), "the name of a profile to write, such as course.yaml", "");
        }
        RequestReader inputs = workspace.reader(faults);
        Path source = inputs.path(order.track());
        if (order.track().toLowerCase(Locale.ROOT).matches(".*[.]ya?ml")) {
            faults.add(order.track(), 0, "", "a profile", "a track (.gpx)", "Import the track it names; --from keeps what is in the profile.");
        }
        workspace.stopOrWarn(faults);
        NewFile.mustBeFree(workspace.path(typed), typed);
        Course course = inputs.course(order.track(), null, order.map());
        workspace.stopOrWarn(faults);
        ProfileEdits.Merged merged = order.from() == null ? new ProfileEdits.Merged(course.stretches(), List.of()) : null;
        ProfileReader.Profile old = order.from() == null ? null : older(order.from(), course, faults);
        workspace.stopOrWarn(faults);
        if (old != null) {
            merged = ProfileEdits.into(course.stretches(), scaled(old.stretches(), course.length()));
        }
        if (merged.stretches().size() > CourseReader.MOST_STRETCHES) {
            faults.add(order.track(), 0, "", merged.stretches().size() + " stretches", "at most " + CourseReader.MOST_STRETCHES, "Cut it into days.");
            workspace.stopOrWarn(faults);
        }
        return write(order, source, course, old, merged);
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

    private ImportResult write(Order order, Path source, Course course, ProfileReader.Profile old, ProfileEdits.Merged merged) {
        Path profile = workspace.path(typed);
        Course edited = named(course, old, merged.stretches());
        boolean raised = course.track().elevation() == Track.Elevation.FROM_TILES;
        String track = raised ? null : trackName(source, profile);
        Path copy = raised ? raisedTrack(profile) : track == null ? copyOf(source, profile) : null;
        String named = track == null ? copy.getFileName().toString() : track;
        boolean copies = copy != null && !Files.exists(copy);
        if (copies) {
            NewFile.write(copy, copy.toString(), raised ? GpxTrackWriter.text(course).getBytes(StandardCharsets.UTF_8) : bytes(source, order.track()));
        }
        try {
            NewFile.write(profile, typed, ProfileWriter.text(edited, header(order, edited.notes()), named, course.attribution(), false).getBytes(StandardCharsets.UTF_8));
        } catch (BadInput | OutputFailure failed) {
            if (copies) {
                NewFile.discard(copy);
            }
            throw failed;
        }
        return new ImportResult(typed, named, copies, CourseSummary.of(edited), edited.stretches().size(), order.from(), merged.changes());
    }

    private static Course named(Course course, ProfileReader.Profile old, List<Stretch> stretches) {
        String name = old == null || old.name().isEmpty() ? course.name() : old.name();
        return Course.builder(name, stretches).summary(old == null ? "" : old.summary()).file(course.file()).track(course.track())
                .line(course.line()).climbing(course.climbing()).start(course.start()).repairs(course.repairs())
                .attribution(course.attribution()).notes(course.notes()).build();
    }

    private static List<String> header(Order order, List<String> notes) {
        List<String> out = new ArrayList<>(List.of("Taken from " + names(List.of(order.track())) + " and the map " + names(order.map().extracts()) + ".",
                "Behind each value: mapped, inferred by a rule, or by hand. Correct what you know better, and remove its \"may be\".",
                "\"mapped\" and \"inferred\" keep what was taken from the map, so that a later import with --from tells your edits from it."));
        notes.forEach(note -> out.add("Note: " + note));
        return out;
    }

    /** Names of files without their folders, on one line. */
    private static String names(List<String> files) {
        List<String> out = new ArrayList<>();
        for (String file : files) {
            out.add(file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1).replaceAll("\\p{Cntrl}", " "));
        }
        return String.join(", ", out);
    }

    /** The track's path seen from the profile's folder, or null where it lies elsewhere. */
    private static String trackName(Path source, Path profile) {
        try {
            Path folder = profile.toAbsolutePath().normalize().getParent();
            Path track = source.toAbsolutePath().normalize();
            boolean below = track.startsWith(folder) && track.toRealPath().startsWith(folder.toRealPath());
            return below ? folder.relativize(track).toString().replace('\\', '/') : null;
        } catch (IOException unreadable) {
            return null;
        }
    }

    /** Where a track from elsewhere is put: under its own name, or the profile's where that is taken by another. */
    private Path copyOf(Path source, Path profile) {
        Path own = profile.resolveSibling(source.getFileName());
        if (!Files.exists(own) || isSame(own, source)) {
            return own;
        }
        String name = profile.getFileName().toString();
        Path other = profile.resolveSibling(name.substring(0, name.length() - ENDING.length()) + ".gpx");
        if (Files.exists(other) && !isSame(other, source)) {
            throw NewFile.refused(typed, "another track beside it, " + other.getFileName(), "a folder with the track itself, or none of its name");
        }
        return other;
    }

    /** Where a track with the heights of tiles is put: beside the profile, under its name. */
    private Path raisedTrack(Path profile) {
        String name = profile.getFileName().toString();
        Path out = profile.resolveSibling(name.substring(0, name.length() - ENDING.length()) + ".gpx");
        if (Files.exists(out)) {
            throw NewFile.refused(typed, "another track beside it, " + out.getFileName(), "a name that is free for the profile and for its track with heights");
        }
        return out;
    }

    private static boolean isSame(Path one, Path other) {
        try {
            return Files.isRegularFile(one) && Files.mismatch(one, other) < 0;
        } catch (IOException unreadable) {
            return false;
        }
    }

    private static byte[] bytes(Path source, String track) {
        try {
            return Files.readAllBytes(source);
        } catch (IOException failed) {
            throw new OutputFailure(track, failed);
        }
    }
}
