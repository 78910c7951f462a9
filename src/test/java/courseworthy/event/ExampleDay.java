package courseworthy.event;

import java.nio.file.Path;

/** An example event as the day on one course. */
public final class ExampleDay {

    private ExampleDay() {
    }

    /** The stage that names a course by its file's name, where an event has stages; else the event itself. */
    public static Event on(Event event, Path course) {
        if (!event.isStageRace()) {
            return event;
        }
        return event.plan().race().stages().stream().filter(stage -> course.getFileName().toString().equals(stage.course() + ".yaml"))
                .map(StageRace.RaceStage::day).findFirst().orElseThrow();
    }
}
