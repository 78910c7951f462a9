package courseworthy.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Figures with their units in text. */
class QuantityTest {

    private static List<Quantity> all(String line) {
        List<Quantity> out = new ArrayList<>();
        for (Quantity found = Quantity.next(line, 0); found != null; found = Quantity.next(line, found.end())) {
            out.add(found);
        }
        return out;
    }

    /** Factors of NIST Special Publication 811 (2008), appendix B.8, worked out by hand to the step that is shown. */
    @ParameterizedTest
    @CsvSource({
        "62.0 km, 38.5 mi", "5 km, 3 mi", "1900 m, 6230 ft", "7 m, 23 ft", "420 m, 1380 ft", "23.5 km/h, 14.6 mph", "0.6 L, 20 fl oz", "71 kg, 157 lb",
        "7.6 kg, 16.8 lb", "19 C, 66 F", "-3 C, 27 F", "0 C, 32 F", "1.20 bar (17 psi), 17 psi", "1.20 bar, 17.4 psi"})
    void aFigureInTheUnitsOfTheUnitedStates(String metric, String customary) {
        assertThat(all(metric)).singleElement().extracting(Quantity::customary).isEqualTo(customary.replace(' ', '\u202f').replace("fl\u202foz", "fl oz"));
    }

    @Test
    void aRangeIsConvertedWithItsFigure() {
        Quantity found = Quantity.next("about 23.5 km/h (21.0 to 25.5), then", 0);
        assertThat(found.metric()).isEqualTo("23.5\u202fkm/h");
        assertThat(found.spread()).isEqualTo("21.0 to 25.5");
        assertThat(found.customarySpread()).isEqualTo("13.0 to 15.8");
        assertThat(Quantity.next("10 to 19 C", 0).customary()).isEqualTo("50 to 66\u202fF");
    }

    @Test
    void aMinusIsAMinusAndAHyphenIsNot() {
        assertThat(Quantity.next("-4 C", 0).metric()).isEqualTo("\u22124\u202fC");
        assertThat(all("fox-4 km, v1.2 km, 3:40 h")).isEmpty();
    }

    /** Parts and torque are marked in metric units everywhere (common practice, no source). */
    @ParameterizedTest
    @ValueSource(strings = {"60 mm", "5 N m", "70 g/h", "240 W", "120 g", "18.0 %", "90 rpm"})
    void whatIsMetricEverywhereStaysSo(String text) {
        assertThat(Quantity.next(text, 0).customary()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "12", "m", "34x50", "12 months", "1 Cow", "mtb:scale 2.7", "km twelve", "skm 12", "km 12a", "2026-06-20", "4 plugs", "1.2.3 km"})
    void whatIsNoQuantityIsLeftAlone(String text) {
        assertThat(all(text)).isEmpty();
    }

    @Test
    void itSaysWhereItStands() {
        String line = "from 12 km on, 3 m wide";
        assertThat(all(line)).extracting(each -> line.substring(each.start(), each.end())).containsExactly("12 km", "3 m");
    }

    /** Kilometres as miles (1609.344 m, as above), a digit finer, since they are looked for on the ground. */
    @ParameterizedTest
    @CsvSource({"at km 12 turn left, at mile 7.5 turn left", "from km 3.4 to 10.0., from mile 2.1 to 6.2.", "12 km of 8 %, 7.5 mi of 8 %"})
    void aPlaceAlongTheCourseIsInMiles(String metric, String customary) {
        assertThat(Quantity.customary(metric)).isEqualTo(customary.replace("7.5 mi of", "7\u202fmi of"));
    }

    @Test
    void aColumnIsConvertedByItsHeading() {
        assertThat(List.of("km", "Speed, km/h", "Up, m", "Rough, 0 to 5", "h", "Gear")).extracting(Quantity::unitOfColumn)
                .containsExactly("km", "km/h", "m", "", "", "");
        assertThat(Quantity.customaryNumber("10.0", "km")).isEqualTo("6.2");
        assertThat(Quantity.customaryNumber("20 to 30.5", "km")).isEqualTo("12.4 to 19.0");
        assertThat(Quantity.customaryNumber("420", "m")).isEqualTo("1380");
        assertThat(Quantity.customaryNumber("12 x 3", "m")).isEmpty();
    }
}
