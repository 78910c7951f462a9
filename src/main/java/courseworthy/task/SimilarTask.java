package courseworthy.task;

import courseworthy.debrief.DebriefReader;
import courseworthy.debrief.DebriefReader.DebriefPair;
import courseworthy.debrief.DebriefResult;
import courseworthy.problem.Faults;
import courseworthy.problem.Progress;
import courseworthy.scout.SimilarCourseFinder;
import courseworthy.scout.SimilarCourses;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Finds the courses of a folder that ask for the most similar set-ups, and the debriefs of rides there. */
public final class SimilarTask {

    /** Where debriefs are looked for below the folder of courses. */
    private static final String DEBRIEFS = "debriefs";

    private SimilarTask() {
    }

    /**
     * Compares a course with those of a folder.
     *
     * @param folder   as typed; null for the shipped courses
     * @param debriefs further folders of debriefs, as typed
     */
    public static SimilarResult of(Workspace workspace, Request request, String folder, List<String> debriefs, Progress progress) {
        BriefResult answer = BriefTask.withoutOutlook(workspace, request);
        Faults faults = new Faults();
        CourseLibrary library = CourseLibrary.read(workspace.reader(faults), request, folder, faults);
        workspace.stopOrWarn(faults);
        Faults ofDebriefs = new Faults();
        List<DebriefResult> learned = debriefs(workspace.reader(ofDebriefs), library, debriefs, ofDebriefs);
        workspace.stopOrWarn(ofDebriefs);
        SimilarCourses courses = SimilarCourseFinder.find(answer.ride(), answer.rules(), answer.call(), library.courses(), progress);
        return new SimilarResult(answer.brief(), library.shown(), library.leftOut(), courses, learned);
    }

    private static List<DebriefResult> debriefs(RequestReader reader, CourseLibrary library, List<String> typed, Faults faults) {
        List<DebriefResult> out = new ArrayList<>();
        add(out, library.folder(), library.shown(), faults);
        add(out, library.folder().resolve(DEBRIEFS), library.shown() + DEBRIEFS + "/", faults);
        for (String each : typed) {
            Path folder = reader.path(each);
            if (folder != null && !Files.isDirectory(folder)) {
                faults.add(each, 0, "", Files.exists(folder) ? "a file" : "no such folder", "a folder of debriefs", "");
            } else if (folder != null) {
                faults.reads(folder);
                add(out, folder, CourseLibrary.shown(each), faults);
            }
        }
        return out;
    }

    private static void add(List<DebriefResult> to, Path folder, String shown, Faults faults) {
        for (String name : CourseLibrary.names(folder)) {
            Path file = folder.resolve(name);
            if (name.endsWith(".yaml") && FileKind.DEBRIEF.words().equals(FileKind.ofFile(file))) {
                Faults own = new Faults();
                DebriefPair pair = DebriefReader.read(file, shown + name, own);
                if (pair == null) {
                    CourseLibrary.leaveOut(own, "The debrief is left out.", faults);
                } else {
                    to.add(DebriefResult.of(pair));
                }
            }
        }
    }
}
