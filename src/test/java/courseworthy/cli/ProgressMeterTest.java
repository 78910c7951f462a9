package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** Progress on a terminal: shown when work is long, wiped away in the end. */
class ProgressMeterTest {

    private static final long A_DAY_MS = 86_400_000;

    private final CountDownLatch shown = new CountDownLatch(1);
    private final StringWriter terminal = new StringWriter() {
        @Override
        public void write(String text, int from, int length) {
            super.write(text, from, length);
            if (text.contains("looking, 42 %")) {
                shown.countDown();
            }
        }
    };

    @Test
    void longWorkIsShownAndWipedAway() throws InterruptedException {
        try (ProgressMeter meter = new ProgressMeter("looking", new PrintWriter(terminal), 1)) {
            meter.at(3, 7);
            // Only so that a test that fails does not hang.
            assertThat(shown.await(10, TimeUnit.MINUTES)).isTrue();
        }
        assertThat(terminal.toString()).startsWith("\rlooking, ").contains("\rlooking, 42 %").endsWith("\r" + " ".repeat(13) + "\r");
    }

    @Test
    void shortWorkShowsNothing() {
        try (ProgressMeter meter = new ProgressMeter("looking", new PrintWriter(terminal), A_DAY_MS)) {
            meter.at(1, 2);
        }
        assertThat(terminal.toString()).isEmpty();
    }

    @Test
    void whereNobodyWatchesNothingIsShown() {
        try (ProgressMeter meter = new ProgressMeter("looking", null, 1)) {
            meter.at(1, 2);
        }
        assertThat(terminal.toString()).isEmpty();
    }
}
