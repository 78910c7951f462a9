package courseworthy;

import courseworthy.cli.Tool;

/** Where the tool starts. */
public final class Main {

    /** As {@code cli.ExitCode} has it, which may be what is missing. */
    private static final int NOT_STARTED = 69;

    private Main() {
    }

    /** Runs one command and ends the process with its exit code. */
    public static void main(String[] args) {
        try {
            System.exit(Tool.main(args));
        } catch (LinkageError broken) {
            // A part that the command line itself is made of is missing; 1 would read as cases that failed.
            System.err.println("courseworthy: what was built is damaged or not all there: " + broken);
            System.err.println("    Remove the folder target and run it again.");
            System.exit(NOT_STARTED);
        }
    }
}
