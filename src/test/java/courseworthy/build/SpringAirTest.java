package courseworthy.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import courseworthy.ToolOutput;
import courseworthy.cli.Format;
import courseworthy.report.json.OutputSchema;
import courseworthy.task.Request;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Air of the fork and the shock of a build, from the charts in the workshop's file. Ida, who rides, has 58 kg. */
class SpringAirTest {

    @TempDir
    private Path folder;

    private Request with(String fork, String shock, String rider) throws IOException {
        String text = Files.readString(Path.of("docs/examples/workshops/cellar.yaml"));
        text = text.replace("name: borrowed fork 120, kind: fork,", "name: borrowed fork 120, kind: fork, " + fork)
                .replace("name: borrowed shock, kind: shock,", "name: borrowed shock, kind: shock, " + shock);
        String file = Files.writeString(folder.resolve("w.yaml"), text).toString();
        return Request.builder("heather-ridge").event("docs/examples/events/heather-ridge.yaml").rider(rider).workshop(file).build();
    }

    private static final String IDA = "docs/examples/riders/ida-hardtail.yaml";

    private String rider(String mass) throws IOException {
        String text = Files.readString(Path.of(IDA)).replaceFirst("(?m)^mass: .*\n", mass.isEmpty() ? "" : "mass: " + mass + "\n");
        return Files.writeString(folder.resolve("r.yaml"), text).toString();
    }

    /** 62 kg is a fifth of the way from 60 to 70 kg: 5.0 + 0.2 x 1.0 = 5.2 bar. At a row, the row; beyond the chart, nothing. */
    @ParameterizedTest
    @CsvSource({"60 kg, 500", "62 kg, 520", "70 kg, 600", "79 kg, 690", "80 kg, 700", "59 kg,", "81 kg,"})
    void betweenTwoRowsInProportion(String mass, Double kilopascal) throws IOException {
        String chart = "air chart: [{rider: 60 kg, pressure: 5 bar}, {rider: 70 kg, pressure: 6 bar}, {rider: 80 kg, pressure: 7 bar}],";
        JsonNode air = OutputSchema.tree(new ToolOutput().brief(with(chart, "", rider(mass)), Format.JSON)).get("settings").get("air");
        assertThat(air).hasSize(1);
        assertThat(air.get(0).get("part").asText()).isEqualTo("borrowed fork 120");
        if (kilopascal == null) {
            assertThat(air.get(0).get("start_kpa").isNull()).isTrue();
        } else {
            assertThat(air.get(0).get("start_kpa").asDouble()).isCloseTo(kilopascal, within(0.05));
        }
    }

    /** A rider who may be lighter or heavier has what the chart has for both, and its end where the chart goes no further; never more than is on it. */
    @Test
    void aMassThatIsNotKnownCloselyGivesARange() throws IOException {
        String chart = "air chart: [{rider: 50 kg, pressure: 4 bar}, {rider: 78 kg, pressure: 6.8 bar}],";
        JsonNode brief = OutputSchema.tree(new ToolOutput().brief(with(chart, "", rider("")), Format.JSON));
        JsonNode air = brief.get("settings").get("air").get(0);
        double mass = air.get("rider_kg").asDouble();
        assertThat(air.get("start_kpa").asDouble()).isCloseTo(400 + (mass - 50) * 10, within(0.1));
        assertThat(air.get("most_kpa").asDouble()).as("the heaviest that is assumed is beyond the chart").isCloseTo(680, within(0.05));
        assertThat(air.get("least_kpa").asDouble()).isLessThan(air.get("start_kpa").asDouble()).isGreaterThanOrEqualTo(400);
        assertThat(new ToolOutput().brief(with(chart, "", rider("")), Format.TEXT).replaceAll("\\s+", " ")).contains("6.8 bar, since your mass is not known closely)");
        JsonNode known = OutputSchema.tree(new ToolOutput().brief(with(chart, "", rider("60 kg")), Format.JSON)).get("settings").get("air").get(0);
        assertThat(known.get("most_kpa").asDouble() - known.get("least_kpa").asDouble()).as("a mass to a kilogram").isCloseTo(10, within(0.5));
        String single = "air chart: [{rider: 90 kg, pressure: 7 bar}],";
        assertThat(new ToolOutput().brief(with(single, "", rider("60 kg")), Format.TEXT).replaceAll("\\s+", " ")).contains("the chart of borrowed fork 120 is for 90 kg, and you are 60 kg");
    }

    @Test
    void bothEndsAreSaidWhereThereIsAChart() throws IOException {
        String fork = "air chart: [{rider: 60 kg, pressure: 5 bar}, {rider: 70 kg, pressure: 6 bar}],";
        String shock = "air chart: [{rider: 70 kg, pressure: 10 bar}, {rider: 90 kg, pressure: 13 bar}],";
        String text = new ToolOutput().brief(with(fork, shock, rider("65 kg")), Format.TEXT).replaceAll("\\s+", " ");
        assertThat(text).contains("Air, fork start from 5.5 bar (80 psi), from the chart of borrowed fork 120 for 65 kg; then set the sag",
                "Air, shock not known: the chart of borrowed shock is for 70 to 90 kg, and you are 65 kg");
        assertThat(new ToolOutput().brief(with("", "", IDA), Format.TEXT)).doesNotContain("Air, ");
    }
}
