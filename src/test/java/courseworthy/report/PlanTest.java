package courseworthy.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import courseworthy.ToolOutput;
import courseworthy.cli.Format;
import courseworthy.render.TextWidth;
import courseworthy.report.json.OutputSchema;
import courseworthy.task.Request;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What to set, the day's plan and the second call, as they are told: terminal, page and JSON agree. */
class PlanTest {

    private static final String HEATHER = "course-profiles/heather-ridge.yaml";
    private static final String KIM = "docs/examples/riders/kim-cross-country.yaml";

    private static String told(String course, String event, String rider, Format format) {
        return new ToolOutput().brief(Request.builder(course).event(event).rider(rider).build(), format);
    }

    static Stream<String> courses() {
        return Stream.of("heather-ridge", "larch-common", "wide-fallow", "market-roads");
    }

    @ParameterizedTest
    @MethodSource("courses")
    void allThreeAgreeAndFit(String course) {
        String profile = "course-profiles/" + course + ".yaml";
        String event = "docs/examples/events/" + course + ".yaml";
        String text = told(profile, event, KIM, Format.TEXT);
        String page = told(profile, event, KIM, Format.MARKDOWN);
        String json = told(profile, event, KIM, Format.JSON);
        assertThat(text.lines()).allSatisfy(line -> assertThat(TextWidth.of(line)).isLessThanOrEqualTo(80));
        assertThat(OutputSchema.faults(json)).isEmpty();
        JsonNode plan = OutputSchema.tree(json).get("plan");
        assertThat(plan.get("splits").size()).isGreaterThan(1);
        JsonNode finish = plan.get("splits").get(plan.get("splits").size() - 1);
        assertThat(finish.get("what").asText()).isEqualTo("finish");
        double start = Integer.parseInt(plan.get("start").asText().substring(0, 2)) * 3600
                + Integer.parseInt(plan.get("start").asText().substring(3)) * 60;
        double after = start + finish.get("after_s").get("value").asDouble();
        // To the whole second in JSON, which may lie on the other side of half a minute.
        String[] at = {PlanReport.ofDay(after - 0.5) + " (", PlanReport.ofDay(after + 0.5) + " ("};
        assertThat(text).containsAnyOf(at).contains("finish");
        assertThat(page).containsAnyOf(at);
        String litres = Phrases.number(plan.get("gaps").get(0).get("carry_l").get("value").asDouble(), 1) + " L";
        String oneLine = text.replaceAll("\\s+", " ");
        assertThat(oneLine).contains("Carry " + litres + " water", " water " + litres + " ", "Leave the start with " + litres, litres + " in ");
        String psi = OutputSchema.tree(json).get("settings").get("front_tyre").get("gauge_psi").asText();
        assertThat(text).contains("(" + psi + " psi)");
        assertThat(page).contains("(" + psi + " psi)");
    }

    /** A shipped day can be ridden: between its taps nobody of the example riders has to carry more than bottles and a pack hold. */
    @ParameterizedTest
    @ValueSource(strings = {"beech-hollow", "fernbrake", "flintmoor-100", "grey-shoulder", "heather-ridge", "home-trails", "larch-common",
        "market-roads", "ochre-flats", "quern-hills", "three-becks", "wide-fallow"})
    void theWaterOfAShippedDayCanBeCarried(String course) {
        for (String rider : List.of("ida-hardtail", "joss-steel", "kim-cross-country", "sam-novice")) {
            String text = told("course-profiles/" + course + ".yaml", "docs/examples/events/" + course + ".yaml", "docs/examples/riders/" + rider + ".yaml",
                    Format.TEXT);
            assertThat(text.replaceAll("\\s+", " ")).as(rider).contains("Drink to thirst").doesNotContain("so you cannot carry this");
        }
    }

    /** What a stomach cannot pass (Ryan and others 1989: 1.05 L/h) is carried for cooling, and that is said beside it. */
    @Test
    void whatIsCarriedBeyondALitreAnHourIsNotToDrink() {
        String note = "Of this, do not drink more than 1 L an hour";
        String hot = told("course-profiles/ochre-flats.yaml", "docs/examples/events/ochre-flats.yaml", KIM, Format.TEXT);
        assertThat(hot.replaceAll("\\s+", " ")).contains(note);
        assertThat(told("course-profiles/ochre-flats.yaml", "docs/examples/events/ochre-flats.yaml", KIM, Format.MARKDOWN)).contains(note);
        assertThat(told(HEATHER, "docs/examples/events/heather-ridge.yaml", KIM, Format.TEXT).replaceAll("\\s+", " ")).doesNotContain(note);
    }

    @Test
    void theSecondCallIsToldOnlyWhereTheForecastMayTurn() {
        String event = "docs/examples/events/heather-ridge.yaml";
        assertThat(told(HEATHER, event, KIM, Format.TEXT)).contains("IF THE FORECAST TURNS", "If it turns wet, 6 to 13 C", "Start work by");
        assertThat(told(HEATHER, event, null, Format.TEXT)).as("nobody changes a cassette overnight for one tooth").contains("If it turns wet");
        String turned = told(HEATHER, event, null, Format.TEXT);
        assertThat(turned.substring(turned.indexOf("If it turns wet"), turned.indexOf("TIME GAINED"))).doesNotContain("0.640", "20 %");
        assertThat(told(HEATHER, event, KIM, Format.MARKDOWN)).contains("### If it turns wet, 6 to 13 C");
        JsonNode json = OutputSchema.tree(told(HEATHER, event, KIM, Format.JSON));
        assertThat(json.get("plan_b")).hasSize(1);
        assertThat(json.get("plan_b").get(0).get("lines").size()).isPositive();
        assertThat(told(HEATHER, null, KIM, Format.TEXT)).doesNotContain("IF THE FORECAST", "If it turns");
        assertThat(OutputSchema.tree(told(HEATHER, null, KIM, Format.JSON)).get("plan_b")).isEmpty();
    }

    /** A stated uncertainty gives a colder and a warmer day, and widens what is told of the temperatures. */
    @Test
    void statedUncertaintyIsTwoMoreDays(@TempDir Path folder) throws IOException {
        Path event = Files.writeString(folder.resolve("e.yaml"), Files.readString(Path.of("docs/examples/events/market-roads.yaml"))
                .replace("going: dry", "going: dry, good to: 9 C"));
        String text = told("course-profiles/market-roads.yaml", event.toString(), KIM, Format.TEXT);
        assertThat(text).contains("If it turns 9 C colder", "If it turns 9 C warmer");
        JsonNode json = OutputSchema.tree(told("course-profiles/market-roads.yaml", event.toString(), KIM, Format.JSON));
        assertThat(json.get("plan_b")).hasSize(2);
        for (JsonNode demand : json.get("demands")) {
            if (demand.get("name").asText().equals("start temperature")) {
                assertThat(demand.get("high").asDouble() - demand.get("low").asDouble()).isEqualTo(18);
            }
        }
    }

    @Test
    void aTopicSaysWhatToSet() {
        String text = new ToolOutput().topic(
                Request.builder(HEATHER).event("docs/examples/events/heather-ridge.yaml").rider(KIM).build(), "front tyre pressure",
                Format.TEXT);
        assertThat(text).contains("TO SET", "worth trying", "Wheel load at the start line", "Never over 3.0 bar");
        assertThat(text.replaceAll("\\s+", " ")).contains("this is the range used in practice");
        assertThat(text.lines()).allSatisfy(line -> assertThat(TextWidth.of(line)).isLessThanOrEqualTo(80));
    }

    @Test
    void timesOfDayGoOnToTheNextAndBack() {
        assertThat(PlanReport.ofDay(7 * 3600 + 300)).isEqualTo("7:05");
        assertThat(PlanReport.ofDay(25.5 * 3600)).isEqualTo("1:30 next day");
        assertThat(PlanReport.ofDay(-1800)).isEqualTo("23:30 the day before");
        assertThat(PlanReport.ofDay(-50 * 3600)).isEqualTo("22:00, 3 days before");
        assertThat(PlanReport.ofDay(49 * 3600)).isEqualTo("1:00, day 3");
        assertThat(PlanReport.clock(59.9 * 60)).isEqualTo("1:00");
    }
}
