package courseworthy.worth;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.call.Call;
import courseworthy.demand.Measure;
import courseworthy.topic.Topics;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Light and what hangs on it, in whole calls: by grades, with limits only where it is really dark. */
class LightTest {

    /** 46 N, 7 E on 21 June 2026: civil dawn 5:02, sunrise 5:41, sunset 21:26, civil dusk 22:05 at UTC+2 (almanac's equations). */
    private static final String COURSE = """
            name: Open Lanes
            start height: 300 m
            latitude: 46 deg
            longitude: 7 deg
            stretches:
              - {length: 60 km, ascent: 300 m, descent: 300 m, surface: compacted, smoothness: good}
            """;
    private static final String RIDER = "name: Alex\nmass: 75 kg\npower: 250 W\nheld for: 1:00 h\nbike: {kind: gravel, mass: 9 kg}\n";

    @TempDir
    private Path folder;

    private Call call(int minutes) {
        return CallFixture.call(folder, COURSE, RIDER, "name: A Day\nrole: race\ndate: 2026-06-21\nstart: " + (minutes < 600 ? "0" : "") + minutes / 60
                + (minutes % 60 < 10 ? ":0" : ":") + minutes % 60 + "\nutc offset: +02:00\naim: time\ngroup share: 0 %\n"
                + "forecast: {low: 17 C, high: 27 C, going: dry}\nsupport: none\n");
    }

    private static long value(Call call, String topic) {
        return call.on(Topics.of(topic)).value();
    }

    private static double shown(Call call, Measure measure) {
        return measure.scale().resolution().shown(call.demands().get(measure).mid());
    }

    /** From before dawn to after dusk in steps of five minutes: nothing moves by more than a grade at a time. */
    @Test
    void fiveMinutesMoveNothingByMoreThanAGrade() {
        for (int from : new int[] {4 * 60 + 40, 17 * 60 + 30}) {
            Call before = null;
            for (int start = from; start <= from + 90; start += 5) {
                Call now = call(start);
                for (String topic : new String[] {"lights", "clothing", "eyewear", "emergency kit", "navigation"}) {
                    if (before != null) {
                        assertThat(Math.abs(value(now, topic) - value(before, topic))).as("%s at %d", topic, start).isLessThanOrEqualTo(1);
                    }
                }
                before = now;
            }
        }
    }

    /** Just before sunrise nothing is asked that just after is not. */
    @Test
    void aMinuteOfSunriseFlipsNothing() {
        Call before = call(5 * 60 + 39);
        Call after = call(5 * 60 + 43);
        for (String topic : new String[] {"lights", "clothing", "eyewear", "emergency kit", "navigation"}) {
            assertThat(value(before, topic)).as(topic).isEqualTo(value(after, topic));
        }
    }

    @Test
    void aFinishTwoHoursBeforeSunsetAsksForNoNightLayer() {
        Call call = call(17 * 60);
        assertThat(shown(call, Measure.DAYLIGHT_TO_SPARE)).isGreaterThan(90);
        Call noon = call(12 * 60);
        for (String topic : new String[] {"lights", "clothing", "eyewear"}) {
            assertThat(call.on(Topics.of(topic)).text()).as(topic).isEqualTo(noon.on(Topics.of(topic)).text());
        }
        assertThat(call.on(Topics.LIGHTS).text()).isEqualTo("none");
    }

    /** A limit binds only where some of the slow estimate lies beyond civil dusk; in twilight lights to be seen are advised. */
    @Test
    void limitsAreOfRealDark() {
        Call dawn = call(5 * 60 + 10);
        assertThat(shown(dawn, Measure.SUNLESS_HOURS)).isPositive();
        assertThat(shown(dawn, Measure.DARK_HOURS)).isZero();
        assertThat(dawn.on(Topics.LIGHTS).text()).isEqualTo("to be seen");
        Call night = call(21 * 60 + 20);
        assertThat(shown(night, Measure.DARK_HOURS)).isGreaterThan(60);
        assertThat(night.on(Topics.LIGHTS).text()).isEqualTo("to see by with a backup");
        assertThat(night.on(Topics.EYEWEAR).text()).isEqualTo("clear");
    }
}
