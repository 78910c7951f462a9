package courseworthy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.concurrent.Callable;

/** Holds work to two seconds of processor time, so that a busy machine fails no test; and to a minute in all, so that none hangs. */
public final class Soon {

    private static final double MOST_SECONDS = 2;

    private Soon() {
    }

    /** The result of work that ends soon. */
    public static <T> T ends(Callable<T> work) {
        return assertTimeoutPreemptively(Duration.ofMinutes(1), () -> {
            long from = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            T result = work.call();
            long used = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - from;
            assertThat(used / 1e9).as("seconds of processor time").isLessThan(MOST_SECONDS);
            return result;
        });
    }
}
