package courseworthy;

import courseworthy.cli.Tool;

/** Where the tool starts. */
public final class Main {

    private Main() {
    }

    /** Runs one command and ends the process with its exit code. */
    public static void main(String[] args) {
        System.exit(Tool.main(args));
    }
}
