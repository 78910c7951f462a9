package courseworthy.task;

import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.course.CourseSources;
import courseworthy.event.Event;
import courseworthy.event.StageRace.RaceStage;
import courseworthy.problem.Faults;
import courseworthy.problem.Spelling;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/** Finds the courses that the stages of a race name: files beside the event's, or shipped courses. */
final class StageFiles {

    private final RequestReader inputs;
    private final Faults faults;

    StageFiles(RequestReader inputs, Faults faults) {
        this.inputs = inputs;
        this.faults = faults;
    }

    /** The course of a stage; null with a fault where there is none. */
    Course course(Event race, RaceStage stage, CourseSources sources) {
        Path file = file(race, stage);
        if (file == null) {
            String near = Spelling.didYouMean(stage.course(), inputs.names());
            faults.add(race.file(), stage.line(), "course", "\"" + stage.course() + "\", which is no file here and no shipped course",
                    "a file beside this one, or the name of a shipped course", near.isEmpty() ? "Check the spelling of the path." : near);
            return null;
        }
        return CourseReader.with(file, shown(race, stage, file), sources, faults);
    }

    private String shown(Event race, RaceStage stage, Path file) {
        Path beside = beside(race, stage);
        return beside != null && Files.isRegularFile(beside) ? beside.toString() : RequestReader.shippedName(file);
    }

    private Path file(Event race, RaceStage stage) {
        Path beside = beside(race, stage);
        return beside != null && Files.isRegularFile(beside) ? beside : stage.course().contains("/") ? null : inputs.shippedFile(stage.course());
    }

    private static Path beside(Event race, RaceStage stage) {
        try {
            return Path.of(race.file()).resolveSibling(stage.course()).normalize();
        } catch (InvalidPathException e) {
            return null;
        }
    }

    /**
     * The stage that is ridden on a course, as the event of that day alone; the whole race with a fault where there is none, or more than one.
     *
     * @param typed the course as typed
     * @param date  of the stage, which tells stages on one course apart, and replaces the day of one alone; null where it is not asked for
     */
    Event stageOn(Event race, String typed, LocalDate date) {
        return stageOn(race, inputs.path(typed) == null ? null : inputs.fileOf(typed), typed, date, new KeyLocation("--event", 0, ""), new KeyLocation("--date", 0, ""));
    }

    /** Where faults are said. */
    record KeyLocation(String file, int line, String key) {
    }

    /**
     * The same where a file names course and event.
     *
     * @param asked the course's file; null where there is none
     * @param event where the event is named
     * @param day   where its day is, or should be
     */
    Event stageOn(Event race, Path asked, String typed, LocalDate date, KeyLocation event, KeyLocation day) {
        List<RaceStage> on = race.plan().race().stages().stream().filter(each -> isSame(file(race, each), asked) || isNamed(each, asked)).toList();
        List<RaceStage> stages = on.stream().filter(each -> date == null || date.equals(each.day().date())).toList();
        if (stages.size() == 1) {
            return stages.get(0).day();
        }
        if (on.size() == 1) {
            return on.get(0).day().with(null, date);
        }
        if (on.isEmpty()) {
            faults.add(event.file(), event.line(), event.key(), "a race whose stages are on other courses than " + typed,
                    "the course of one of its stages: " + String.join(", ", race.plan().race().stages().stream().map(RaceStage::course).distinct().toList()),
                    "The whole race: \"courseworthy stages " + race.file() + "\".");
        } else {
            faults.add(day.file(), day.line(), day.key(), date == null ? "nothing, and " + on.size() + " stages on this course" : "no stage on this course on " + date,
                    "the day of a stage on it: " + String.join(", ", on.stream().map(each -> each.day().date().toString()).toList()), "");
        }
        return race;
    }

    /** A shipped course by its name, wherever the file that bears it lies. */
    private static boolean isNamed(RaceStage stage, Path asked) {
        return asked != null && asked.getFileName().toString().equals(stage.course() + ".yaml");
    }

    /** A copy of a course elsewhere, under the same name, counts as the same. */
    private static boolean isSame(Path one, Path other) {
        if (one == null || other == null) {
            return false;
        }
        try {
            return Files.isSameFile(one, other) || one.getFileName().equals(other.getFileName());
        } catch (IOException e) {
            return one.getFileName().equals(other.getFileName());
        }
    }
}
