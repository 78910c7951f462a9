package courseworthy.build;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is missing is named as one would ask for it in a shop. */
class MissingPartTest {

    @ParameterizedTest
    @CsvSource({
        "front tyre, front tyre width, 40 mm, a front tyre with 40 mm width",
        "rear wheel, rear rim depth, deep, a rear wheel with deep rim depth",
        "fork, fork travel, 120 mm, a fork with 120 mm travel",
        "seatpost, seatpost, dropper, a dropper seatpost",
        "pedals, pedals, light clipless, light clipless pedals",
        "front insert, front insert, fitted, a front insert",
        "aero extensions, aero extensions, fitted, aero extensions",
        "chainring, chainrings, one, a single chainring",
        "fork, lockout, at the fork/shock, a fork with lockout at the fork/shock",
        "bar, bar width, 440 mm, a bar with 440 mm width",
    })
    void itIsNamed(String piece, String topic, String value, String named) {
        assertEquals(named, MissingPart.named(piece, topic, value));
    }
}
