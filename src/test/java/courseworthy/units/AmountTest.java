package courseworthy.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** In much of the world a point stands between thousands; the SI brochure (9th edition, 5.4.4) takes point or comma for the decimal and neither for these. */
class AmountTest {

    @ParameterizedTest
    @CsvSource({"LENGTH, 1.500 m, Do you mean 1500 m or 1.5 m?", "LENGTH, 6.234 ft, Do you mean 6234 ft or 6.23 ft?", "LENGTH, -1.250 mm, Do you mean -1250 mm or -1.25 mm?",
        "LENGTH, 12.000 cm, Do you mean 12000 cm or 12 cm?", "MASS, 1.350 g, Do you mean 1350 g or 1.35 g?", "POWER, 1.100 W, Do you mean 1100 W or 1.1 W?",
        "TIME, 3.600 s, Do you mean 3600 s or 3.6 s?", "TIME, 1.440 min, Do you mean 1440 min or 1.44 min?", "VOLUME, 1.500 ml, Do you mean 1500 ml or 1.5 ml?",
        "PRESSURE, 1.013 hPa, Do you mean 1013 hPa or 1.01 hPa?"})
    void threeDecimalsThatMayBeThousandsAreAsked(Dimension dimension, String written, String question) {
        assertThatThrownBy(() -> Amount.parse(written, dimension)).isInstanceOf(Amount.NotAnAmount.class);
        assertThat(Amount.question(written)).isEqualTo(question);
        assertThat(Pattern.matches(Amount.pattern(dimension), written)).isFalse();
    }

    /** A thousandth of these is something: metres of a stretch, grams of a part, millilitres, arc of a degree, eighths of an inch. */
    @ParameterizedTest
    @CsvSource({"LENGTH, 1.500 km", "LENGTH, 26.219 mi", "LENGTH, 1.125 in", "MASS, 1.250 kg", "MASS, 2.205 lb", "VOLUME, 1.500 L", "TIME, 1.500 h", "ANGLE, 47.123 deg",
        "RATIO, 1.001", "PRESSURE, 1.450 bar", "LENGTH, 0.500 m", "LENGTH, 1.50 m", "LENGTH, 1.5000 m", "LENGTH, 1500.125 m", "LENGTH, 1.5 m", "POWER, 0.100 W"})
    void threeDecimalsThatLeaveNoDoubtAreTaken(Dimension dimension, String written) throws Amount.NotAnAmount {
        assertThat(Amount.parse(written, dimension)).isNotNull();
        assertThat(Pattern.matches(Amount.pattern(dimension), written)).isTrue();
    }

    @Test
    void theQuestionIsAskedOfNothingElse() {
        assertThat(Amount.question("1500 m")).isEmpty();
        assertThat(Amount.question("1.500 km")).isEmpty();
        assertThat(Amount.question("steep")).isEmpty();
        assertThat(Amount.question("1.500")).isEqualTo("Do you mean 1500 or 1.5?");
    }

    /** The trade writes a gear as ring by sprocket; with a slash it would be two chainrings. */
    @Test
    void aGearIsRingBySprocket() throws Amount.NotAnAmount {
        assertThat(Amount.parse("34x50", Dimension.RATIO).inBase()).isEqualTo(0.68);
        assertThat(Pattern.matches(Amount.pattern(Dimension.RATIO), "34x50")).isTrue();
        for (String other : new String[] {"34/50", "34 x 50", "34X50", "34 / 50", "34\u00d750"}) {
            assertThatThrownBy(() -> Amount.parse(other, Dimension.RATIO)).isInstanceOf(Amount.NotAnAmount.class);
            assertThat(Amount.teethQuestion(other)).isEqualTo("Did you mean \"34x50\"?");
            assertThat(Pattern.matches(Amount.pattern(Dimension.RATIO), other)).isFalse();
        }
        assertThat(Amount.teethQuestion("34x50")).isEmpty();
        assertThat(Amount.teethQuestion("11-34")).isEmpty();
    }

    @Test
    void cadenceIsInTurnsOfTheCrankAMinute() throws Amount.NotAnAmount {
        assertThat(Amount.parse("80 rpm", Dimension.CADENCE)).isEqualTo(new Amount(java.math.BigDecimal.valueOf(80), Unit.RPM));
        assertThat(Amount.parse("80 /min", Dimension.CADENCE).inBase()).isEqualTo(80);
    }
}
