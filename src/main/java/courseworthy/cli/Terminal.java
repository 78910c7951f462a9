package courseworthy.cli;

import java.util.Map;
import java.util.Properties;

/**
 * What the surroundings of a run allow.
 *
 * @param colours standard output is a terminal and the user has not refused colours
 * @param trace   a fault of the tool itself is shown with its stack trace
 */
public record Terminal(boolean colours, boolean trace) {

    /** A pipe or a file: no colours, no traces. */
    public static final Terminal NONE = new Terminal(false, false);

    /**
     * Reads the system property {@code courseworthy.tty} (1 or 0, set by the launcher, which can ask cheaply) and the
     * environment: NO_COLOR by its published convention (present and not empty means no colours), TERM=dumb, and
     * COURSEWORTHY_TRACE=1.
     */
    static Terminal of(Properties properties, Map<String, String> environment) {
        String told = properties.getProperty("courseworthy.tty");
        boolean terminal = told == null ? System.console() != null : "1".equals(told);
        boolean refused = !environment.getOrDefault("NO_COLOR", "").isEmpty()
                || "dumb".equals(environment.get("TERM"));
        return new Terminal(terminal && !refused, "1".equals(environment.get("COURSEWORTHY_TRACE")));
    }
}
