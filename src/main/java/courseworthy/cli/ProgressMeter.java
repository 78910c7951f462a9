package courseworthy.cli;

import courseworthy.problem.ProgressWatch;
import java.io.PrintWriter;

/**
 * Shows on a terminal how far work has come, once it takes longer than about a second, and wipes it away when it is done.
 * It changes no result.
 */
final class ProgressMeter implements ProgressWatch {

    private static final long PATIENCE_MS = 1000;
    private static final long EVERY_MS = 200;

    private final String what;
    private final PrintWriter terminal;
    private final long patience;
    private final Thread watcher;
    private int done;
    private int of = 1;
    private int shown;
    private boolean closed;

    /**
     * @param what     what is being done, {@code looking for what would change it}
     * @param terminal where to show it; null where nobody watches
     */
    ProgressMeter(String what, PrintWriter terminal) {
        this(what, terminal, PATIENCE_MS);
    }

    ProgressMeter(String what, PrintWriter terminal, long patience) {
        this.what = what;
        this.terminal = terminal;
        this.patience = patience;
        this.watcher = terminal == null ? null : new Thread(this::watch, "meter");
        if (watcher != null) {
            watcher.setDaemon(true);
            watcher.start();
        }
    }

    @Override
    public synchronized void at(int doneNow, int all) {
        done = doneNow;
        of = all;
    }

    private synchronized void watch() {
        try {
            wait(patience);
            while (!closed) {
                show();
                wait(EVERY_MS);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void show() {
        String line = what + ", " + 100L * done / of + " %";
        terminal.print("\r" + line);
        terminal.flush();
        shown = Math.max(shown, line.length());
    }

    /** Ends it; nothing stays on the terminal. */
    @Override
    public synchronized void close() {
        closed = true;
        notifyAll();
        if (shown > 0) {
            terminal.print("\r" + " ".repeat(shown) + "\r");
            terminal.flush();
        }
    }
}
