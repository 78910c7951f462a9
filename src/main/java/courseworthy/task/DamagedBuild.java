package courseworthy.task;

import java.io.File;

/** A class that is missing or broken: no fault of what was typed nor of the tool, but of what was built. */
public final class DamagedBuild {

    /** EX_UNAVAILABLE of sysexits.h, as the launcher has it; {@code cli.ExitCode} may be what is missing. */
    public static final int CODE = 69;

    private DamagedBuild() {
    }

    /** What to say; makes the launcher check the build next time, and rebuild it where it is damaged. */
    public static String message(Throwable fault) {
        String home = System.getProperty("courseworthy.home");
        File parts = new File(home == null ? "" : home, "target/launcher/parts");
        boolean again = home != null && (parts.delete() || !parts.exists());
        return "courseworthy: what was built is damaged or not all there: " + fault + "\n    "
                + (again ? "Run it once more and it will be rebuilt." : "Remove the folder target and run it again.") + "\n";
    }
}
