package courseworthy.problem;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TextSanitiserTest {

    /** Escape, its one-byte form (ECMA-48, C1), bell, carriage return, delete, and Unicode's controls of direction (UAX #9). */
    @ParameterizedTest
    @ValueSource(ints = {0x1b, 0x9b, 0x07, 0x0d, 0x7f, 0x00, 0x202e, 0x2066, 0x200f, 0x061c})
    void whatATerminalWouldObeyIsSpelt(int obeyed) {
        assertThat(TextSanitiser.text("a" + (char) obeyed + "b")).isEqualTo(String.format(java.util.Locale.ROOT,
                "a\\u%04xb", obeyed));
    }

    @Test
    void writingOfAnyLanguageStays() {
        String text = "Höhenweg, 山道, مسار\n\tline two";
        assertThat(TextSanitiser.text(text)).isEqualTo(text);
    }
}
