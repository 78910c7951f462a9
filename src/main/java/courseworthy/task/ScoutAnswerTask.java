package courseworthy.task;

import courseworthy.course.Course;
import courseworthy.course.ProfileReader;
import courseworthy.problem.Faults;
import courseworthy.scout.GroundAnswer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Writes a profile of a course with what was found on it. Nothing is overwritten. */
public final class ScoutAnswerTask {

    private ScoutAnswerTask() {
    }

    /**
     * Writes the profile.
     *
     * @param answers as typed, at least one
     * @param to      the profile to write, as typed; null where none was named
     */
    public static ScoutAnswerResult of(Workspace workspace, Request request, List<String> answers, String to) {
        Faults faults = new Faults();
        NewProfile.checkName(to, faults);
        if (request.event() != null || request.rider() != null || request.role() != null || request.date() != null || request.workshop() != null
                || !request.sheets().isEmpty()) {
            faults.add("--answer", 0, "", "a rider, an event or the like beside it", "a course, with --ground, --map, --elevation, --recording and -o alone",
                    "Write the answer first, then run scout again on the new profile.");
        }
        workspace.stopOrWarn(faults);
        NewProfile profile = NewProfile.at(workspace, to);
        Course course = workspace.reader(faults).course(request.course(), request.ground(), request.map());
        workspace.stopOrWarn(faults);
        List<GroundAnswer> found = new ArrayList<>();
        for (String answer : answers) {
            GroundAnswer read = GroundAnswer.read(answer, course.length(), faults);
            if (read != null) {
                found.add(read);
            }
        }
        workspace.stopOrWarn(faults);
        Course answered = course;
        for (GroundAnswer answer : found) {
            answered = answer.on(answered);
        }
        NewProfile.ProfileFile written = profile.write(answered, track(workspace, request.course(), course), request.course(),
                List.of("Taken from " + ProfileNames.of(List.of(request.course())) + ", with what was found on the course."));
        return new ScoutAnswerResult(to, written.track(), written.copied(), answers, CourseSummary.of(answered));
    }

    /** The file of the course's track; null where it has none. */
    private static Path track(Workspace workspace, String typed, Course course) {
        if (course.track() == null) {
            return null;
        }
        Path file = workspace.reader(new Faults()).fileOf(typed);
        String name = file.getFileName().toString();
        if (!name.endsWith(".yaml") && !name.endsWith(".yml")) {
            return file;
        }
        ProfileReader.Profile profile = ProfileReader.read(file, typed, new Faults());
        Path folder = file.toAbsolutePath().getParent();
        return profile == null || profile.track() == null || !Files.exists(folder.resolve(profile.track())) ? null : folder.resolve(profile.track());
    }
}
