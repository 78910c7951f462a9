package courseworthy.course.ground;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.course.Passage;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How ways are passed by their tags (OpenStreetMap wiki, "Key:duration", "Key:bicycle", "Tag:highway=steps"). */
class PassageTagsTest {

    private static Passage of(String pairs) {
        Map<String, String> tags = new HashMap<>();
        for (String pair : pairs.split(" ")) {
            tags.put(pair.split("=")[0], pair.split("=")[1]);
        }
        return PassageTags.of(tags);
    }

    @ParameterizedTest
    @CsvSource({"20, 1200", "00:20, 1200", "1:05, 3900", "1:05:30, 3930", "PT20M, 1200", "PT1H5M, 3900", "90, 5400", "0, NaN", "25:00, NaN", "soon, NaN", "'', NaN", "PT, NaN"})
    void durationsAreReadInEveryForm(String text, double seconds) {
        assertThat(Double.compare(PassageTags.duration(text), seconds)).as(text + " " + PassageTags.duration(text)).isZero();
    }

    @Test
    void waysArePassedAsTheirTagsSay() {
        assertThat(of("highway=steps")).isEqualTo(Passage.ON_FOOT);
        assertThat(of("highway=path bicycle=dismount")).isEqualTo(Passage.ON_FOOT);
        assertThat(of("highway=footway foot=designated")).isEqualTo(Passage.ON_FOOT);
        assertThat(of("highway=footway foot=designated bicycle=yes")).isNull();
        assertThat(of("highway=track")).isNull();
        assertThat(of("route=ferry duration=00:12")).isEqualTo(Passage.ferry(720));
        assertThat(of("route=ferry")).isNull();
    }
}
