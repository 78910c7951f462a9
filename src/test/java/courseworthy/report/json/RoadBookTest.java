package courseworthy.report.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import courseworthy.ToolOutput;
import courseworthy.cli.Format;
import courseworthy.task.Request;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The road book in a brief's JSON: against the rest of the brief, and against a count by hand of the course's file. */
class RoadBookTest {

    private static final Map<String, JsonNode> BRIEFS = new HashMap<>();

    static Stream<String> courses() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("course-profiles"))) {
            return files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".yaml")).sorted().toList().stream();
        }
    }

    private static JsonNode brief(String file) {
        return BRIEFS.computeIfAbsent(file, name -> OutputSchema.tree(new ToolOutput().brief(Request.builder("course-profiles/" + name)
                .event("docs/examples/events/" + name).rider("docs/examples/riders/kim-cross-country.yaml").build(), Format.JSON)));
    }

    private static double mid(JsonNode range) {
        return range.get("value").asDouble();
    }

    @ParameterizedTest
    @MethodSource("courses")
    void theClockEndsWithTheTimeOfTheBrief(String file) {
        JsonNode book = brief(file).get("road_book");
        JsonNode clock = book.get("clock");
        JsonNode last = clock.get(clock.size() - 1);
        JsonNode total = brief(file).get("ride").get("total_s");
        for (String end : List.of("low", "value", "high")) {
            assertThat(last.get("after_s").get(end).asDouble()).as(end).isEqualTo(Math.round(total.get(end).asDouble()), within(1.0));
        }
        assertThat(mid(last.get("after_s"))).isEqualTo(Math.floor(mid(total) + 0.5));
        assertThat(last.get("at_m").asDouble()).isEqualTo(book.get("lap_m").asDouble() * book.get("laps").asInt(), within(1.0));
        assertThat(last.get("lap").asInt()).isEqualTo(book.get("laps").asInt());
    }

    @ParameterizedTest
    @MethodSource("courses")
    void theClockNeverRunsBackwards(String file) {
        JsonNode before = null;
        for (JsonNode passage : brief(file).get("road_book").get("clock")) {
            JsonNode after = passage.get("after_s");
            assertThat(after.get("low").asDouble()).isLessThanOrEqualTo(mid(after));
            assertThat(mid(after)).isLessThanOrEqualTo(after.get("high").asDouble());
            for (String end : before == null ? List.<String>of() : List.of("low", "value", "high")) {
                assertThat(after.get(end).asDouble()).as(end + " at " + passage.get("at_m")).isGreaterThanOrEqualTo(before.get(end).asDouble());
            }
            before = after;
        }
    }

    /** A place that the plan of the day has too is reached at the same time in both. */
    @ParameterizedTest
    @MethodSource("courses")
    void theClockIsThatOfThePlan(String file) {
        Map<Long, Double> planned = new TreeMap<>();
        brief(file).get("plan").get("splits").forEach(split -> planned.put(split.get("at_m").asLong(), mid(split.get("after_s"))));
        int both = 0;
        for (JsonNode passage : brief(file).get("road_book").get("clock")) {
            Double split = planned.get(Math.round(passage.get("at_m").asDouble()));
            if (split != null) {
                assertThat(mid(passage.get("after_s"))).isEqualTo(split, within(1.0));
                both++;
            }
        }
        assertThat(both).isPositive();
    }

    /**
     * Every place of the clock, stops left out, is reached when the ride worked out again from the JSON alone reaches it, within 2 % of the whole:
     * the whole agrees to 1 %, and steps are joined over up to a kilometre in the JSON.
     */
    @ParameterizedTest
    @MethodSource("courses")
    void theClockCanBeWorkedOutAgain(String file) {
        JsonNode ride = brief(file).get("ride");
        RideAgain again = new RideAgain(ride);
        double whole = again.seconds();
        double elsewhere = mid(ride.get("stops_elsewhere_s")) / mid(ride.get("riding_s"));
        for (JsonNode passage : brief(file).get("road_book").get("clock")) {
            double at = passage.get("at_m").asDouble();
            double stopped = 0;
            for (JsonNode stop : ride.get("stops")) {
                stopped += stop.get("at_m").asDouble() < at ? mid(stop.get("stop_s")) : 0;
            }
            double riding = (mid(passage.get("after_s")) - stopped) / (1 + elsewhere);
            assertThat(riding).as("at %.0f m", at).isEqualTo(again.secondsTo(at), within(0.02 * whole));
        }
    }

    @ParameterizedTest
    @MethodSource("courses")
    void groundAndGearsCoverTheLapWithoutAGap(String file) {
        JsonNode book = brief(file).get("road_book");
        for (String bands : List.of("ground", "gears")) {
            double at = 0;
            for (JsonNode band : book.get(bands)) {
                assertThat(band.get("from_m").asDouble()).as(bands).isEqualTo(at);
                at = band.get("to_m").asDouble();
                assertThat(at).isGreaterThan(band.get("from_m").asDouble());
                assertThat(band.get("gear").isNull()).as("a gear where it is pedalled").isEqualTo(!band.get("effort").asText().equals("pedalled"));
            }
            assertThat(at).as(bands).isEqualTo(book.get("lap_m").asDouble());
        }
    }

    /** Lengths by surface, ascent and descent as they are added up from the lines of the profile's file. */
    @ParameterizedTest
    @MethodSource("courses")
    void theGroundIsThatOfTheFile(String file) throws IOException {
        Map<String, Double> written = new TreeMap<>();
        double ascent = 0;
        boolean track = false;
        for (String line : Files.readAllLines(Path.of("course-profiles", file))) {
            track |= line.startsWith("track:");
            String length = key(line, "length: ([0-9.]+) km");
            if (length != null) {
                String surface = key(line, "surface: ([a-z_:]+)");
                written.merge(surface == null ? "null" : surface, 1000 * Double.parseDouble(length), Double::sum);
                String up = key(line, "ascent: ([0-9.]+) m");
                ascent += up == null ? 0 : Double.parseDouble(up);
            }
        }
        Map<String, Double> told = new TreeMap<>();
        double climbed = 0;
        for (JsonNode piece : brief(file).get("road_book").get("ground")) {
            told.merge(piece.get("surface").asText(), piece.get("to_m").asDouble() - piece.get("from_m").asDouble(), Double::sum);
            climbed += piece.get("ascent_m").asDouble();
            assertThat(piece.get("known_by").asText()).isEqualTo(piece.get("surface").isNull() ? "unknown" : "written");
        }
        // Over a track lengths are the track's, which the profile's miss by 2 % at most, and so is the climbing.
        double lap = brief(file).get("road_book").get("lap_m").asDouble();
        assertThat(told.keySet()).isEqualTo(written.keySet());
        for (String surface : written.keySet()) {
            assertThat(told.get(surface)).as(surface).isEqualTo(written.get(surface), within(track ? 0.02 * lap : 1.0));
        }
        assertThat(track ? ascent : climbed).isEqualTo(ascent, within(1.0));
    }

    private static String key(String line, String pattern) {
        Matcher found = Pattern.compile(pattern).matcher(line);
        return found.find() ? found.group(1) : null;
    }

    /** Foot and top of each climb lie on the height line, to its tolerance. */
    @ParameterizedTest
    @MethodSource("courses")
    void climbsLieOnTheHeightLine(String file) {
        JsonNode book = brief(file).get("road_book");
        double tolerance = book.get("heights").get("tolerance_m").asDouble();
        int number = 0;
        for (JsonNode climb : book.get("climbs")) {
            double rise = height(book, climb.get("top_m").asDouble()) - height(book, climb.get("foot_m").asDouble());
            assertThat(rise).isEqualTo(climb.get("rise_m").asDouble(), within(2 * tolerance + 0.2));
            double length = climb.get("top_m").asDouble() - climb.get("foot_m").asDouble();
            assertThat(climb.get("gradient").asDouble()).isEqualTo(climb.get("rise_m").asDouble() / length, within(0.0005));
            assertThat(climb.get("number").asInt()).isEqualTo(++number);
        }
    }

    private static double height(JsonNode book, double at) {
        JsonNode places = book.get("heights").get("at_m");
        JsonNode heights = book.get("heights").get("height_m");
        int i = 1;
        while (i < places.size() - 1 && places.get(i).asDouble() < at) {
            i++;
        }
        double from = places.get(i - 1).asDouble();
        double part = (at - from) / (places.get(i).asDouble() - from);
        return heights.get(i - 1).asDouble() + part * (heights.get(i).asDouble() - heights.get(i - 1).asDouble());
    }

    /** No climb is much steeper on the whole than the one that is named, though a short ramp may be. */
    @ParameterizedTest
    @MethodSource("courses")
    void theClimbThatDecidesTheGearIsSteep(String file) {
        JsonNode book = brief(file).get("road_book");
        JsonNode deciding = book.get("climb_that_decides_the_easiest_gear");
        if (!deciding.isNull()) {
            JsonNode climb = book.get("climbs").get(deciding.asInt() - 1);
            for (JsonNode other : book.get("climbs")) {
                assertThat(climb.get("gradient").asDouble()).as("against %s", other.get("number")).isGreaterThan(0.6 * other.get("gradient").asDouble());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("courses")
    void marksAreTheSupportAndTheCutOffsOfTheEvent(String file) {
        Set<Long> planned = new TreeSet<>();
        brief(file).get("plan").get("splits").forEach(split -> {
            if (List.of("support", "cut off").contains(split.get("what").asText()) || !split.get("latest_s").isNull()) {
                planned.add(split.get("at_m").asLong());
            }
        });
        List<Long> marked = new ArrayList<>();
        brief(file).get("road_book").get("marks").forEach(mark -> marked.add(Math.round(mark.get("at_m").asDouble())));
        assertThat(marked).containsExactlyInAnyOrderElementsOf(planned);
    }
}
