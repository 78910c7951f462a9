package courseworthy.cli;

import courseworthy.problem.BadInput;
import courseworthy.problem.Fault;
import courseworthy.task.RecordedRides;

/** The options {@code --log} and {@code --log-bike}: recorded rides that are added to the log of a workshop. */
final class RideLogOptions {

    private final Command.SourceFunction<String> log;
    private final Command.SourceFunction<String> bike;

    RideLogOptions(Command command) {
        log = command.option("--log", "PATH", "A recorded ride (GPX with times) or a folder of them: its hours count for the parts, besides those in the workshop's log.");
        bike = command.option("--log-bike", "NAME", "With --log: the bike that was ridden, if the workshop has several.");
    }

    /** Null where none is named. */
    RecordedRides rides() {
        if (log.value() == null && bike.value() != null) {
            throw new BadInput(Fault.of("--log-bike", 0, "", "no --log", "--log beside it: the rides of that bike", ""));
        }
        return log.value() == null ? null : new RecordedRides(log.value(), bike.value());
    }

    /** The same where the workshop is named on the command line too. */
    RecordedRides ridesOf(boolean workshop) {
        if (log.value() != null && !workshop) {
            throw new BadInput(Fault.of("--log", 0, "", "no --workshop", "--workshop beside it: whose parts were ridden", ""));
        }
        return rides();
    }
}
