package courseworthy.build;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is missing is named as one would ask for it in a shop. */
class MissingPartTest {

    @ParameterizedTest
    @CsvSource({
        "front tyre, front tyre width, 40 mm, a front tyre of width 40 mm",
        "rear wheel, rear rim depth, deep, a rear wheel of rim depth deep",
        "fork, fork travel, 120 mm, a fork of travel 120 mm",
        "seatpost, seatpost, dropper, a dropper seatpost",
        "pedals, pedals, light clipless, light clipless pedals",
        "front insert, front insert, fitted, a front insert",
        "aero extensions, aero extensions, fitted, aero extensions",
        "bar, bar width, 440 mm, a bar of width 440 mm",
    })
    void itIsNamed(String piece, String topic, String value, String named) {
        assertEquals(named, MissingPart.named(piece, topic, value));
    }
}
