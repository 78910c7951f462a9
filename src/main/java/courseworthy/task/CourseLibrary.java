package courseworthy.task;

import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.course.CourseSources;
import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.scout.LibraryCourse;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * The courses of a folder, profiles and tracks. A file that cannot be read is warned of once and left out; so is, without a word, a track that a
 * profile of the folder lies over, the course asked about, and whatever is no course.
 *
 * @param folder  where they lie
 * @param shown   the folder as shown to the user, with a slash at its end
 * @param courses in order of their files
 * @param leftOut courses that were not read, because there are more than are looked at
 */
record CourseLibrary(Path folder, String shown, List<LibraryCourse> courses, int leftOut) {

    /** Files of a folder that are looked at, the first in alphabetical order (judgement, no source): a ride is estimated on each. */
    static final int MOST_FILES = 200;

    private static final String WANTED = "a folder of course profiles (.yaml) and GPX tracks (.gpx)";
    private static final String SHIPPED = "course-profiles/";

    /**
     * Reads a folder.
     *
     * @param request whose course is left out, and whose ground and map count for all tracks
     * @param typed   null for the shipped courses
     * @return null where the faults stop the work
     */
    static CourseLibrary read(RequestReader reader, Request request, String typed, Faults faults) {
        Path folder = typed == null ? reader.shippedFolder() : reader.path(typed);
        String shown = typed == null ? SHIPPED : shown(typed);
        if (folder == null || !Files.isDirectory(folder)) {
            if (!faults.stop()) {
                faults.add(typed == null ? SHIPPED : typed, 0, "", folder != null && Files.exists(folder) ? "a file" : "no such folder", WANTED, "");
            }
            return null;
        }
        faults.reads(folder);
        List<String> files = files(folder);
        List<String> kept = files.subList(0, Math.min(MOST_FILES, files.size()));
        CourseSources sources = reader.sources(request.ground(), request.map());
        Set<Path> tracks = new LinkedHashSet<>();
        List<LibraryCourse> courses = new ArrayList<>();
        for (String name : kept) {
            Path file = folder.resolve(name);
            Faults own = new Faults();
            Course course = isSame(file, own(reader, request)) || isAny(file, tracks) ? null : CourseReader.with(file, shown + name, sources, own);
            if (course != null) {
                courses.add(new LibraryCourse(shown + name, course));
                tracks.addAll(own.read());
            } else if (own.stop()) {
                leaveOut(own, "The course is left out.", faults);
            }
        }
        if (courses.isEmpty()) {
            faults.add(shown, 0, "", "no course that can be read, besides the one asked about", WANTED, "");
        }
        return new CourseLibrary(folder, shown, courses, files.size() - kept.size());
    }

    /** The folder as it is written before the name of a file. */
    static String shown(String typed) {
        return typed.endsWith("/") ? typed : typed + "/";
    }

    /** The file of the course asked about; null where there is none. */
    private static Path own(RequestReader reader, Request request) {
        Path path = reader.path(request.course());
        return path != null && Files.exists(path) ? path : reader.shippedFile(request.course());
    }

    /** Files that may be courses: profiles first, so that their tracks are known, each kind in alphabetical order. */
    private static List<String> files(Path folder) {
        List<String> profiles = new ArrayList<>();
        List<String> tracks = new ArrayList<>();
        for (String name : names(folder)) {
            String lower = name.toLowerCase(Locale.ROOT);
            if (lower.endsWith(".gpx") || lower.endsWith(".gpx.gz")) {
                tracks.add(name);
            } else if ((lower.endsWith(".yaml") || lower.endsWith(".yml")) && mayBeCourse(folder.resolve(name))) {
                profiles.add(name);
            }
        }
        profiles.addAll(tracks);
        return profiles;
    }

    private static boolean mayBeCourse(Path file) {
        String kind = FileKind.ofFile(file);
        return kind == null || kind.equals(FileKind.COURSE.words());
    }

    /** Names of the files of a folder, sorted, so that the order of the disk says nothing. */
    static List<String> names(Path folder) {
        List<String> out = new ArrayList<>();
        File[] files = folder.toFile().listFiles();
        for (File file : files == null ? new File[0] : files) {
            if (!file.isDirectory()) {
                out.add(file.getName());
            }
        }
        out.sort(null);
        return out;
    }

    /** Warns of the first fault of a file that is left out. */
    static void leaveOut(Faults own, String consequence, Faults faults) {
        Fault first = own.faults().get(0);
        int others = own.faults().size() - 1;
        String more = others == 0 ? "" : others + (others == 1 ? " more fault" : " more faults") + " in it. ";
        faults.add(Fault.warning(first.file(), first.line(), first.field(), first.found(), first.expected(), more + consequence));
    }

    private static boolean isAny(Path file, Set<Path> others) {
        return others.stream().anyMatch(each -> isSame(file, each));
    }

    private static boolean isSame(Path one, Path other) {
        try {
            return other != null && Files.exists(other) && Files.isSameFile(one, other);
        } catch (IOException e) {
            return false;
        }
    }
}
