package courseworthy;

import courseworthy.cli.CommandRunner;
import courseworthy.task.DamagedBuild;

/** Where the tool starts. */
public final class Main {

    private Main() {
    }

    /** Runs one command and ends the process with its exit code. */
    public static void main(String[] args) {
        try {
            System.exit(CommandRunner.main(args));
        } catch (LinkageError broken) {
            // A part that the command line itself is made of is missing; 1 would read as cases that failed.
            System.err.print(DamagedBuild.message(broken));
            System.exit(DamagedBuild.CODE);
        }
    }
}
