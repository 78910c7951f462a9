package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What waits in the pits as a rider reads it, against the JSON of the same brief. */
class PitWorthTest {

    @TempDir
    private Path folder;

    /** A lap of one steep climb and one twisting descent, which the wet slows. */
    @Test
    void minutesAndWorkAreSaidOfEachChoice() throws Exception {
        Path course = Files.writeString(folder.resolve("gorse.yaml"), "name: Gorse Loop\nstart height: 200 m\nstretches:\n"
                + "  - {length: 1.5 km, ascent: 180 m, descent: 0 m, surface: gravel, smoothness: bad}\n"
                + "  - {length: 3.5 km, ascent: 0 m, descent: 180 m, surface: ground, smoothness: bad, mtb:scale: 2, roots: yes, turns per km: 25}\n");
        Path event = Files.writeString(folder.resolve("day.yaml"), "role: race\ndate: 2026-07-12\nstart: 13:00\nutc offset: +02:00\nlaps: 6\n"
                + "forecast: {low: 12 C, high: 18 C, going: dry, or: {going: wet}}\npits: [{at: 0 km, helper: yes, bottles: yes, wheels: yes, bike: yes}]\n");
        String[] words = {"brief", course.toString(), "--event", event.toString(), "--rider", "docs/examples/riders/kim-cross-country.yaml", "--full"};
        String text = CommandRun.of(words).out().replaceAll("\\s+", " ");
        words[words.length - 1] = "--format=json";
        JsonNode choices = new ObjectMapper().readTree(CommandRun.of(words).out()).get("pits").get("choices");
        assertThat(choices).extracting(each -> each.get("what").asText()).containsExactly("spare wheels", "wet wheels", "second bike");
        assertThat(text).contains("of the pit on foot they are the quicker repair, at the pit itself by " + String.format(Locale.ROOT, "%.1f", choices.get(0).get("worth").get("saves_over_a_tube_s").asDouble() / 60) + " min");
        JsonNode wet = choices.get(1).get("worth");
        assertThat(text).contains("Wheels for the wet: they roll " + Math.round(-wet.get("wet_tyres_save_s_a_lap").get("value").asDouble()) + " s (",
                "the wet takes " + Math.round(wet.get("wet_takes_s_a_lap").get("value").asDouble()) + " s (",
                "To pay they must give back " + Math.round(100 * wet.get("share_to_give_back").asDouble()) + " % of what the wet takes, over 5 laps; changed after lap " + wet.get("last_lap_to_change").asInt() + " they cannot.");
        JsonNode bike = choices.get(2).get("worth");
        assertThat(text).contains("each kilogram of mud left behind saves " + String.format(Locale.ROOT, "%.1f", bike.get("mud_s_a_lap_a_kg").get("value").asDouble()) + " s",
                "With the tyres for the wet on it: to pay they must give back " + Math.round(100 * bike.get("share_to_give_back").asDouble()) + " % of what the wet takes, over 5 laps.");
        assertThat(bike.get("share_to_give_back").asDouble()).as("an exchange of bikes is quicker").isLessThan(wet.get("share_to_give_back").asDouble());
    }
}
