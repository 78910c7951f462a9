package courseworthy.cli;

import courseworthy.render.TerminalRenderer;
import java.io.IOException;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;

/**
 * What the surroundings of a run allow.
 *
 * @param colours standard output is a terminal and the user has not refused colours
 * @param trace   a fault of the tool itself is shown with its stack trace
 * @param pipe    standard output is known to be a pipe
 * @param width   columns of the terminal; the usual width of a page where it is not known
 */
public record Terminal(boolean colours, boolean trace, boolean pipe, int width) {

    /** A pipe or a file: no colours, no traces. */
    public static final Terminal NONE = new Terminal(false, false, false, TerminalRenderer.STANDARD_WIDTH);

    /**
     * Reads the system properties {@code courseworthy.tty} and {@code courseworthy.pipe} (1 or 0) and {@code courseworthy.columns} (empty
     * or 0 where standard output is no terminal), all set by the launcher, which can ask cheaply, and the environment: NO_COLOR by its published convention (present and not empty means no colours), TERM=dumb, and
     * COURSEWORTHY_TRACE=1.
     */
    static Terminal of(Properties properties, Map<String, String> environment) {
        String set = properties.getProperty("courseworthy.tty");
        boolean terminal = set == null ? System.console() != null : "1".equals(set);
        boolean refused = !environment.getOrDefault("NO_COLOR", "").isEmpty()
                || "dumb".equals(environment.get("TERM"));
        return new Terminal(terminal && !refused, "1".equals(environment.get("COURSEWORTHY_TRACE")),
                "1".equals(properties.getProperty("courseworthy.pipe")), width(properties.getProperty("courseworthy.columns", "")));
    }

    private static int width(String columns) {
        boolean known = columns.matches("[1-9][0-9]{0,4}");
        return known ? Integer.parseInt(columns) : TerminalRenderer.STANDARD_WIDTH;
    }

    /** Whether a result was lost only because whoever read it wanted no more, as {@code head} does. */
    boolean isReaderGone(IOException failure) {
        String said = String.valueOf(failure.getMessage()).toLowerCase(Locale.ROOT);
        // Only a pipe whose reader is gone refuses what is written to it; without the launcher, the system's message must tell.
        return pipe || said.contains("broken pipe");
    }
}
