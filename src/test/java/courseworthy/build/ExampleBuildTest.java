package courseworthy.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import courseworthy.ToolOutput;
import courseworthy.cli.Format;
import courseworthy.report.json.OutputSchema;
import courseworthy.task.Request;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The build of the shipped example, held against habits of the trade (common practice, no source). */
class ExampleBuildTest {

    private static final Request RACE = Request.builder("heather-ridge").event("docs/examples/events/heather-ridge.yaml")
            .rider("docs/examples/riders/ida-hardtail.yaml").workshop("docs/examples/workshops/cellar.yaml").build();
    private static final String JOSS = "docs/examples/riders/joss-steel.yaml";

    private static String brief(Format format) {
        return new ToolOutput().brief(RACE, format);
    }

    private static JsonNode build() throws IOException {
        return new ObjectMapper().readTree(brief(Format.JSON)).get("build");
    }

    private static String part(JsonNode build, String place) {
        return StreamSupport.stream(build.get("parts").spliterator(), false).filter(each -> each.get("place").asText().equals(place))
                .map(each -> each.get("part").asText()).collect(Collectors.joining());
    }

    /** Carbon wheels for racing, the dropper stays on, the shared pedals come over for their power meter, sidewalls keep their protection. */
    @Test
    void theBorrowedBikeIsBuiltForTheRace() throws IOException {
        JsonNode build = build();
        assertThat(build.get("bike").asText()).isEqualTo("borrowed bike");
        assertThat(part(build, "front wheel")).isEqualTo("light wheel front");
        assertThat(part(build, "rear wheel")).isEqualTo("light wheel rear");
        assertThat(part(build, "pedals")).isEqualTo("power pedals");
        assertThat(part(build, "seatpost")).contains("dropper");
        assertThat(part(build, "rear tyre")).isEqualTo("root tyre 58 B");
        assertThat(build.get("mass_kg").asDouble()).isLessThan(build.get("mass_now_kg").asDouble());
        assertThat(build.get("lacking").get(0).asText()).isEqualTo("steel bike: power pedals");
        assertThat(build.get("in_the_way")).isEmpty();
    }

    /** A tyre is on its wheel before the wheel goes in, and the steps take off as much as the whole bike loses. */
    @Test
    void theWorkIsInAnOrderForOneStand() throws IOException {
        JsonNode build = build();
        List<String> places = places(build.get("swaps"));
        assertThat(places).containsSubsequence("front tyre", "front wheel").containsSubsequence("rear tyre", "rear wheel");
        double change = 0;
        for (JsonNode each : build.get("swaps")) {
            change += each.get("mass_change_kg").asDouble();
        }
        assertThat(change).isCloseTo(build.get("mass_kg").asDouble() - build.get("mass_now_kg").asDouble(), within(0.0015));
        JsonNode wheel = build.get("swaps").get(places.indexOf("rear wheel"));
        assertThat(wheel.get("with")).extracting(JsonNode::asText).contains("light rotor 160", "close cassette 10-45");
    }

    /** Back again, every part is where it was: each goes on that came off, on the bike that lent it too. */
    @Test
    void theWayBackPutsEverythingWhereItWas() throws IOException {
        JsonNode build = build();
        double change = 0;
        for (JsonNode each : build.get("back")) {
            change += each.get("bike").asText().equals("borrowed bike") ? each.get("mass_change_kg").asDouble() : 0;
        }
        assertThat(change).isCloseTo(build.get("mass_now_kg").asDouble() - build.get("mass_kg").asDouble(), within(0.0015));
        assertThat(build.get("back")).extracting(each -> each.get("on").asText() + " on " + each.get("bike").asText())
                .contains("power pedals on steel bike", "borrowed pedals on borrowed bike", "borrowed wheel rear on borrowed bike",
                        "root tyre 58 A on hardtail", "quick tyre 56 A on light wheel front");
        String list = brief(Format.TEXT).replaceAll("\\s+", " ");
        assertThat(list.substring(list.toLowerCase(Locale.ROOT).lastIndexOf("after the race, 1"))).contains("Fit power pedals, on steel bike");
    }

    /** A training ride takes the shared pedals too: they have to be back before the steel bike is ridden, and the way back is told with its work. */
    @Test
    void afterTrainingWhatWasLentGoesBack() throws IOException {
        Request training = Request.builder("home-trails").event("docs/examples/events/home-trails.yaml").rider(RACE.rider())
                .workshop(RACE.workshop()).build();
        JsonNode build = new ObjectMapper().readTree(new ToolOutput().brief(training, Format.JSON)).get("build");
        assertThat(build.get("due_back")).extracting(each -> each.get("part").asText() + " to " + each.get("to").asText() + " on " + each.get("bike").asText())
                .contains("power pedals to lane crank on steel bike", "flat bar 720 to hardtail stem 70 on hardtail");
        assertThat(build.get("back")).extracting(each -> each.get("on").asText() + " on " + each.get("bike").asText())
                .contains("power pedals on steel bike", "borrowed pedals on borrowed bike");
        String list = new ToolOutput().brief(training, Format.TEXT).replaceAll("\\s+", " ");
        assertThat(list).contains("power pedals to lane crank on steel bike, before steel bike is ridden next", "Fit power pedals, on steel bike");
    }

    /** A bar, a pedal or a tyre put on badly throws the rider; worn pads are done before the ride that tries the build (common practice). */
    @Test
    void theChecklistMarksWhatARiderHangsOnAndNamesWhatIsWorn() {
        Request training = Request.builder("home-trails").event("docs/examples/events/home-trails.yaml").rider(RACE.rider())
                .workshop(RACE.workshop()).build();
        String text = new ToolOutput().brief(training, Format.TEXT);
        String list = text.substring(text.indexOf("CHECKLIST")).replaceAll("\\s+", " ");
        assertThat(list).contains("[ ] ! Fit flat bar 720", "[ ] ! Fit power pedals", "[ ] Fit bar light")
                .containsSubsequence("[ ] ! Set stem, spacers and saddle to your position on hardtail",
                        "[ ] ! borrowed pads rear: change them and bed the new ones in", "Less than 1.5 mm left", "[ ] ! Test-ride this exact build");
        Request gravel = Request.builder("flintmoor-100").event("docs/examples/events/flintmoor-100.yaml").rider(RACE.rider()).workshop(RACE.workshop()).build();
        assertThat(new ToolOutput().brief(gravel, Format.TEXT).replaceAll("\\s+", " ")).as("in short, where the tyres of the build want another pressure")
                .contains("Build steel bike, see THE BUILD; its tyres: front 1.85 bar (27 psi), rear 2.20 bar (32 psi)");
    }

    /** A fork takes the front caliper with it, and pedals ask for cleats that fit (common practice, no source). */
    @Test
    void swapsSayWhatTheyTakeAlong() throws IOException {
        Request race = Request.builder("grey-shoulder").event("docs/examples/events/grey-shoulder.yaml").rider(RACE.rider())
                .workshop(RACE.workshop()).build();
        String list = new ToolOutput().brief(race, Format.TEXT).replaceAll("\\s+", " ");
        assertThat(list).contains("Fit slim fork 110 in place of borrowed fork 120 Done when: Steering free and without play, stem and front caliper bolts as marked",
                "Fit power pedals in place of borrowed pedals, from steel bike Done when: Right and left not mixed up, tight as marked; your cleats fit them");
    }

    private static List<String> places(JsonNode swaps) {
        return StreamSupport.stream(swaps.spliterator(), false).map(each -> each.get("place").asText()).toList();
    }

    /** The borrowed bike takes over where the rider sits on the bike that is trained on. */
    @Test
    void thePositionComesAlong() throws IOException {
        assertThat(build().get("position")).extracting(JsonNode::asText).containsExactly(
                "Take spare stem 60, flipped (60 mm at 6 deg), with 10 mm of borrowed spacers and 3 mm of jar of spacers under it, in place of borrowed stem 45; it leaves "
                        + "the hands 1 mm too high and 3 mm too far forward.",
                "Saddle: height 689 mm, for cranks that are 5 mm longer: 16 mm lower than now. Tip 44 mm behind the bottom bracket: 14 mm farther "
                        + "back than now. Try it in training first; 'courseworthy position' has the details.",
                "Move Ida's saddle across from hardtail: you are used to it.");
    }

    /** The stem that the position asks for is the one that the build has, mounts and counts the work of. */
    @Test
    void positionAndBuildNameTheSameStem() throws IOException {
        JsonNode build = build();
        assertThat(part(build, "stem")).isEqualTo("spare stem 60");
        JsonNode swap = build.get("swaps").get(places(build.get("swaps")).indexOf("stem"));
        assertThat(swap.get("off").asText()).isEqualTo("borrowed stem 45");
        assertThat(swap.get("why")).extracting(JsonNode::asText).containsExactly("your position on hardtail");
        assertThat(build.get("position").get(0).asText()).startsWith("Take spare stem 60");
        assertThat(build.get("back")).extracting(each -> each.get("on").asText()).contains("borrowed stem 45");
    }

    /** Nobody is set up as somebody else: the hardtail is trained on by a lighter rider, and the heavier one has a bike of his own. */
    @Test
    void thePositionIsTheRidersOwn() throws IOException {
        ToolOutput tool = new ToolOutput();
        Request own = Request.builder("flintmoor-100").event("docs/examples/events/flintmoor-100.yaml").rider(JOSS).workshop(RACE.workshop())
                .build();
        JsonNode steel = new ObjectMapper().readTree(tool.brief(own, Format.JSON)).get("build");
        assertThat(steel.get("bike").asText()).isEqualTo("steel bike");
        assertThat(steel.get("position")).isEmpty();
        Request other = Request.builder(RACE.course()).event(RACE.event()).rider(JOSS).workshop(RACE.workshop()).build();
        assertThat(tool.brief(other, Format.TEXT)).contains("Position, as on steel bike").doesNotContain("Position, as on hardtail");
        assertThat(brief(Format.TEXT)).contains("Position, as on hardtail");
    }

    /** Masses add up to what the whole bike loses; what only mass changes returns mass for mass; work is that of all swaps. */
    @Test
    void theChangesAddUp() throws IOException {
        JsonNode build = build();
        double grams = 0;
        double work = 0;
        double returns = 0;
        for (JsonNode each : build.get("changes")) {
            grams += each.get("mass_change_kg").asDouble() * 1000;
            work += each.get("work_s").asDouble();
            returns += each.get("returns_s").get("value").asDouble();
        }
        assertThat(Math.round(grams)).isEqualTo(Math.round((build.get("mass_kg").asDouble() - build.get("mass_now_kg").asDouble()) * 1000));
        double swaps = 0;
        for (JsonNode each : build.get("swaps")) {
            swaps += each.get("work_s").asDouble();
            assertThat(each.get("why")).as(each.toString()).isNotEmpty();
        }
        JsonNode all = build.get("changes_together");
        assertThat(work).isEqualTo(swaps).isEqualTo(all.get("work_s").asDouble());
        assertThat(returns).isCloseTo(all.get("returns_s").get("value").asDouble(), within(0.5));
        assertThat(OutputSchema.faults(brief(Format.JSON))).isEmpty();
    }

    /** Practice: nothing new on race day, the proven saddle stays and no other is called proven, casings, treads and pedals that the ground asks for stay, the bike trained on too. */
    @Test
    void whatStaysIsSaidWithItsReason() throws IOException {
        JsonNode stays = build().get("leave_alone");
        String text = brief(Format.TEXT).replaceAll("\\s+", " ");
        assertThat(because(stays, "borrowed saddle")).isEmpty();
        assertThat(because(stays, "new tyre 53")).contains("nothing new on race day");
        assertThat(because(stays, "feather tyre 54 A")).contains("rear tyre casing reinforced is recommended");
        assertThat(because(stays, "quick tyre 56 A")).contains("rear tyre tread all-round is recommended");
        assertThat(because(stays, "light pedals")).contains("pedals solid clipless is recommended");
        assertThat(because(stays, "hardtail")).contains("your training bike");
        stays.forEach(each -> assertThat(text).contains("- " + each.get("what").asText()));
        for (JsonNode each : stays) {
            assertThat(each.get("returns_s").isNull() || each.get("returns_s").get("value").asDouble() >= 10).isTrue();
        }
    }

    private static String because(JsonNode stays, String what) {
        return StreamSupport.stream(stays.spliterator(), false).filter(each -> each.get("what").asText().equals(what))
                .map(each -> each.get("because").toString()).collect(Collectors.joining());
    }

    /** A part that is not weighed is named, and what it changes is not known, in every format. */
    @Test
    void whatIsNotWeighedIsNotGuessed(@TempDir Path folder) throws IOException {
        String text = Files.readString(Path.of(RACE.workshop())).replace("on: lane crank, mass: 420 g, pedal kind", "on: lane crank, pedal kind");
        Path file = Files.writeString(folder.resolve("w.yaml"), text);
        Request request = Request.builder(RACE.course()).event(RACE.event()).rider(RACE.rider()).workshop(file.toString()).build();
        ToolOutput tool = new ToolOutput();
        JsonNode build = new ObjectMapper().readTree(tool.brief(request, Format.JSON)).get("build");
        assertThat(build.get("unweighed").toString()).isEqualTo("[\"power pedals\"]");
        JsonNode pedals = StreamSupport.stream(build.get("changes").spliterator(), false).filter(each -> each.get("place").asText().equals("pedals"))
                .findFirst().orElseThrow();
        assertThat(pedals.get("mass_change_kg").isNull()).isTrue();
        assertThat(pedals.get("returns_s").isNull()).isTrue();
        assertThat(tool.brief(request, Format.TEXT).replaceAll("\\s+", " "))
                .contains("pedals, power pedals for borrowed pedals: mass change not known, time saved cannot be worked out");
    }

    /** Some of the slow estimate is dark: the one light to see by goes on with the one for the rear, and what is missing is said. */
    @Test
    void aLongDayIntoTheNight() throws IOException {
        Request night = Request.builder("wide-fallow").event("docs/examples/events/wide-fallow.yaml").rider(JOSS).workshop(RACE.workshop())
                .build();
        JsonNode build = new ObjectMapper().readTree(new ToolOutput().brief(night, Format.JSON)).get("build");
        assertThat(StreamSupport.stream(build.get("parts").spliterator(), false).filter(each -> each.get("place").asText().equals("lights"))
                .map(each -> each.get("part").asText())).containsExactly("bar light", "tail light");
        assertThat(StreamSupport.stream(build.get("not_met").spliterator(), false).map(each -> each.get("got").asText()))
                .contains("no backup apart from the main light");
        String text = new ToolOutput().brief(night, Format.TEXT).replaceAll("\\s+", " ");
        assertThat(text).as("the one is mounted, the other is not").contains("lights bar light (to fit)", "lights tail light").doesNotContain("tail light (to fit)");
        double squares = 0;
        for (JsonNode each : build.get("changes")) {
            squares += Math.pow(each.get("returns_s").get("high").asDouble() - each.get("returns_s").get("value").asDouble(), 2);
        }
        JsonNode all = build.get("changes_together").get("returns_s");
        assertThat(all.get("high").asDouble() - all.get("value").asDouble()).as("front and rear are off alike").isGreaterThan(1.05 * Math.sqrt(squares));
        assertThat(part(build, "front tyre")).isEqualTo("flint tyre 42 A");
        assertThat(part(build, "rear tyre")).isEqualTo("flint tyre 42 B");
    }

    /**
     * A narrower tyre takes more pressure (15 % drop relation, Heine with Berto): the morning's list asks for that of the tyres mounted, not of
     * those that were called for.
     */
    @Test
    void whatIsMountedIsWhatIsPumped() throws IOException {
        Request gravel = Request.builder("flintmoor-100").event("docs/examples/events/flintmoor-100.yaml").rider(JOSS).workshop(RACE.workshop())
                .build();
        ToolOutput tool = new ToolOutput();
        JsonNode build = new ObjectMapper().readTree(tool.brief(gravel, Format.JSON)).get("build");
        String text = tool.brief(gravel, Format.TEXT).replaceAll("\\s+", " ");
        double called = bar(text, "Pressure front ([0-9.]+) bar");
        double mounted = bar(build.get("pressures").get(0).asText(), "start from ([0-9.]+) bar");
        assertThat(part(build, "front tyre")).startsWith("flint tyre 42");
        assertThat(mounted).isGreaterThan(called);
        assertThat(bar(text.substring(text.indexOf("Race morning")), "Done when: Front ([0-9.]+) bar")).isEqualTo(mounted);
        assertThat(text).contains("These are for the parts of the build.");
    }

    /** Sintered pads are never asked for without a rotor that permits them. */
    @Test
    void padsComeWithARotorThatPermitsThem() {
        Request hills = Request.builder("quern-hills").event("docs/examples/events/quern-hills.yaml").rider(JOSS).workshop(RACE.workshop())
                .build();
        assertThat(new ToolOutput().brief(hills, Format.TEXT).replaceAll("\\s+", " "))
                .contains("rear brake pads with sintered pad compound, and a rotor that permits them in place of lane rotor rear");
    }

    private static double bar(String text, String pattern) {
        Matcher found = Pattern.compile(pattern).matcher(text);
        assertThat(found.find()).as(pattern).isTrue();
        return Double.parseDouble(found.group(1));
    }

    /** What the JSON says stands in the text and in the Markdown too. */
    @Test
    void theThreeAgree() throws IOException {
        JsonNode build = build();
        String text = brief(Format.TEXT).replaceAll("\\s+", " ");
        String markdown = brief(Format.MARKDOWN).replaceAll("\\s+", " ");
        build.get("parts").forEach(each -> {
            assertThat(text).contains(each.get("place").asText() + " " + each.get("part").asText());
            assertThat(markdown).contains("- **" + each.get("place").asText() + ":** " + each.get("part").asText());
        });
        build.get("swaps").forEach(each -> assertThat(text).contains("Fit " + each.get("on").asText()));
        String list = text.substring(text.indexOf("CHECKLIST"));
        build.get("swaps").forEach(each -> assertThat(list).contains("Fit " + each.get("on").asText()));
        assertThat(list).contains("Test-ride this exact build for 30 to 60 min");
        build.get("pressures").forEach(each -> assertThat(text).contains(each.asText()));
        build.get("leave_alone").forEach(each -> assertThat(markdown).contains("- " + each.get("what").asText()));
        build.get("changes").forEach(each -> assertThat(markdown).contains("- " + each.get("place").asText() + ", "));
        assertThat(brief(Format.TEXT).lines()).allMatch(line -> line.length() <= 80);
    }
}
