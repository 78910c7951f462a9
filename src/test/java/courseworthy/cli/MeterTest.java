package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

/** Progress on a terminal: shown when work is long, wiped away in the end. */
class MeterTest {

    private final StringWriter terminal = new StringWriter();

    @Test
    void longWorkIsShownAndWipedAway() throws InterruptedException {
        try (Meter meter = new Meter("looking", new PrintWriter(terminal), 1)) {
            meter.at(3, 7);
            for (int i = 0; i < 500 && !terminal.toString().contains("looking, 42 %"); i++) {
                Thread.sleep(10);
            }
        }
        assertThat(terminal.toString()).startsWith("\rlooking, ").contains("\rlooking, 42 %").endsWith("\r" + " ".repeat(13) + "\r");
    }

    @Test
    void shortWorkShowsNothing() {
        try (Meter meter = new Meter("looking", new PrintWriter(terminal))) {
            meter.at(1, 2);
        }
        assertThat(terminal.toString()).isEmpty();
    }

    @Test
    void whereNobodyWatchesNothingIsShown() {
        try (Meter meter = new Meter("looking", null, 1)) {
            meter.at(1, 2);
        }
        assertThat(terminal.toString()).isEmpty();
    }
}
