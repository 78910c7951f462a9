package courseworthy.task;

import courseworthy.problem.BadInput;
import courseworthy.problem.Fault;
import courseworthy.problem.FaultList;
import courseworthy.problem.Faults;
import courseworthy.problem.ProgressWatch;
import courseworthy.problem.Spelling;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;

/** Where a command works: the folder of the checkout, where warnings go, and which files were read and so may not be written over. */
public final class Workspace {

    private final Path home;
    private final Consumer<String> warnings;
    private final Function<String, ProgressWatch> watches;
    private final OverwriteGuard guard = new OverwriteGuard();

    /**
     * @param home     the folder of the checkout, where shipped courses lie; null where it is not known
     * @param warnings takes warnings on what was read
     */
    public Workspace(Path home, Consumer<String> warnings) {
        this(home, warnings, what -> ProgressWatch.unseen());
    }

    /**
     * As {@link #Workspace(Path, Consumer)}.
     *
     * @param watches starts to show how far work has come that takes long, by what is being done
     */
    public Workspace(Path home, Consumer<String> warnings, Function<String, ProgressWatch> watches) {
        this.home = home;
        this.warnings = warnings;
        this.watches = watches;
    }

    /** The folder of the checkout; null where it is not known. */
    Path home() {
        return home;
    }

    /** A reader of what a request names, which adds what is wrong to {@code faults}. */
    RequestReader reader(Faults faults) {
        return new RequestReader(home, faults, watches);
    }

    /** The path that was typed. */
    Path path(String typed) {
        Faults faults = new Faults();
        Path path = reader(faults).path(typed);
        faults.throwIfAny();
        return path;
    }

    /** When the file that was changed last of those read so far was changed, to the second; null where none was read. */
    public Instant lastChange() {
        return guard.lastChange();
    }

    /** Keeps results from being written over or into {@code source}. */
    void protect(Path source) {
        guard.add(source);
    }

    /**
     * To be asked before a result is written to a file.
     *
     * @throws BadInput where the file was read for it, lies in a folder that was, or is of a kind that people write
     */
    public void mayWriteOver(Path target, String typed) {
        guard.check(target, typed);
    }

    /**
     * Passes warnings on.
     *
     * @throws BadInput where there are faults
     */
    void stopOrWarn(Faults faults) {
        guard.add(faults);
        List<Fault> found = faults.warnings();
        if (!found.isEmpty()) {
            warnings.accept(FaultList.text(found).stripTrailing());
        }
        faults.throwIfAny();
    }

    /**
     * The topic of a name.
     *
     * @param option where it was typed
     * @throws BadInput where there is none
     */
    static Topic topic(String option, String name) {
        Topic topic = Topics.find(name);
        if (topic == null) {
            String near = Spelling.didYouMean(name, Topics.names());
            throw new BadInput(Fault.of(option, 0, "", RequestReader.quoted(name), "a topic",
                    near.isEmpty() ? "'courseworthy topics' lists them." + courseFirst(option) : near));
        }
        return topic;
    }

    /** Where a topic is a parameter of its own it stands after the course. */
    private static String courseFirst(String option) {
        return option.startsWith("-") ? "" : " The course stands before it.";
    }
}
