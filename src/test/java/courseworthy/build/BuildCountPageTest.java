package courseworthy.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.call.Call;
import courseworthy.claim.Claim;
import courseworthy.claim.Evidence;
import courseworthy.claim.Force;
import courseworthy.claim.Rank;
import courseworthy.claim.RuleOrigin;
import courseworthy.claim.SourceLocation;
import courseworthy.claim.Verb;
import courseworthy.cli.GeneratedRegions;
import courseworthy.decision.Decision;
import courseworthy.decision.Settler;
import courseworthy.demand.Demands;
import courseworthy.fit.BuildLoad;
import courseworthy.problem.Faults;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartKind;
import courseworthy.workshop.Workshop;
import courseworthy.workshop.WorkshopReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The page on the count of a build: its tables are those of the code, and its example comes out as it says. */
class BuildCountPageTest {

    private static final Path PAGE = Path.of("docs/reference/build-count.md");

    @Test
    void tablesAreThoseOfTheCode() throws IOException {
        String page = Files.readString(PAGE);
        String expected = GeneratedRegions.fill(page, Map.of("notches", notches(), "minutes", minutes()));
        if (Boolean.getBoolean("courseworthy.approve")) {
            Files.writeString(PAGE, expected);
        } else {
            assertThat(page).as("run with -Dcourseworthy.approve=true where the change is meant").isEqualTo(expected);
        }
    }

    private static String notches() {
        StringBuilder out = new StringBuilder("| topic | realised by | a notch | no harm |\n| --- | --- | --- | --- |\n");
        for (Topic topic : Topics.all()) {
            for (TopicPlacement wanted : TopicPlacement.all(topic)) {
                out.append("| ").append(topic.name()).append(" | ").append(by(wanted)).append(" | ").append(notch(topic)).append(" | ")
                        .append(noHarm(topic)).append(" |\n");
            }
        }
        return out.toString();
    }

    private static String by(TopicPlacement wanted) {
        return switch (wanted.of()) {
            case BIKE -> "the bike";
            case GEARS -> "rings and cassette";
            case POWER -> "crank, pedals or meter";
            case PART -> wanted.place().words();
        };
    }

    private static String notch(Topic topic) {
        return switch (topic.kind()) {
            case QUANTITY -> topic.text(topic.notch());
            case ORDERED -> "a step of " + String.join(" < ", topic.options());
            case OPTIONS -> "2 for another";
        };
    }

    private static String noHarm(Topic topic) {
        Decision middle = Settler.settle(topic, List.of(claim(topic, Verb.PREFER, Force.MUST, topic.standard())));
        BuildObjective.Aim aim = new BuildObjective.Aim(middle, null, 1, TimeSavings.NONE);
        return aim.suffices(topic.most()) && !aim.suffices(topic.least()) ? "more" : aim.suffices(topic.least()) && !aim.suffices(topic.most()) ? "less" : "";
    }

    private static String minutes() throws IOException {
        MountingEffort effort = new MountingEffort(new Workshop("", "", List.of(), List.of(), Map.of()));
        StringBuilder out = new StringBuilder("| a swap of | min |\n| --- | --- |\n");
        for (PartKind kind : PartKind.values()) {
            if (PartKind.mountedWords().contains(kind.word())) {
                out.append("| ").append(kind.word()).append(" | ").append(Math.round(effort.minutes(kind))).append(" |\n");
            }
        }
        return out.toString();
    }

    private static Claim claim(Topic topic, Verb verb, Force force, long value) {
        RuleOrigin author = new RuleOrigin("shipped/x", Rank.SHIPPED, 0, force, Evidence.PRACTICE, "", "Because.", new SourceLocation("rules/x.yaml", 1));
        return Claim.of(author, topic, verb, value, topic.text(value), List.of());
    }

    // The example: its figures from the page, the arithmetic here, and the outcome from the search

    private static final Pattern ROW = Pattern.compile("(?m)^\\| ([a-z ]+) \\| ([^|]*) \\| ([^|]*) \\|$");
    private static final Pattern LAST = Pattern.compile("([0-9.]+)$");

    /** The figures at the ends of a row's cells. */
    private static Map<String, double[]> example(String page) {
        Map<String, double[]> out = new LinkedHashMap<>();
        Matcher row = ROW.matcher(page.substring(page.indexOf("## A worked example")));
        while (row.find()) {
            out.put(row.group(1), new double[] {last(row.group(2)), last(row.group(3))});
        }
        return out;
    }

    private static double last(String cell) {
        Matcher number = LAST.matcher(cell);
        assertThat(number.find()).as(cell).isTrue();
        return Double.parseDouble(number.group(1));
    }

    @Test
    void theExampleAddsUp() throws IOException {
        Map<String, double[]> rows = example(Files.readString(PAGE));
        assertThat(rows).hasSize(7);
        double[] sum = new double[2];
        rows.forEach((name, cells) -> {
            for (int i = 0; i < 2; i++) {
                sum[i] += name.equals("count") ? 0 : cells[i];
            }
        });
        assertThat(sum).containsExactly(rows.get("count"), within(1e-9));
    }

    /** Each fork in turn, all else as it stands: the search's own cost, less that of the other parts, is what the page says. */
    @Test
    void theExampleIsWhatTheSearchCounts() throws IOException {
        Map<String, double[]> rows = example(Files.readString(PAGE));
        Faults faults = new Faults();
        Workshop workshop = WorkshopReader.read(Path.of("docs/examples/workshops/cellar.yaml"), "cellar.yaml", faults);
        faults.throwIfAny();
        List<Decision> decisions = new ArrayList<>();
        decisions.add(Settler.settle(Topics.FORK_CHASSIS, List.of(claim(Topics.FORK_CHASSIS, Verb.PREFER, Force.SHOULD, Topics.FORK_CHASSIS.option("light")))));
        decisions.add(Settler.settle(Topics.LOCKOUT, List.of(claim(Topics.LOCKOUT, Verb.PREFER, Force.MUST, Topics.LOCKOUT.option("remote")))));
        decisions.add(Settler.settle(Topics.FORK_TRAVEL, List.of(claim(Topics.FORK_TRAVEL, Verb.PREFER, Force.MAY, 110))));
        TimeSavings time = new TimeSavings() {
            @Override
            public long apart(Topic topic, long one, long other) {
                return 0;
            }

            @Override
            public long perKilogram() {
                return 100;
            }
        };
        BuildObjective aims = new BuildObjective(new Call(new Demands(Map.of(), List.of(), List.of()), decisions, List.of(), List.of()), time);
        BuildLoad load = new BuildLoad(70.0, 85.0, 0.1);
        Part bike = workshop.find("hardtail");
        BruteForce count = new BruteForce(workshop, bike, load, aims);
        Map<MountingPlace, Part> build = new BuildSearch(workshop, bike, load, aims).solve();
        assertThat(build.get(MountingPlace.FORK)).hasToString("slim fork 110");
        double[] total = rows.get("count");
        Map<MountingPlace, Part> stout = new HashMap<>(build);
        stout.put(MountingPlace.FORK, workshop.find("stout fork 120"));
        assertThat(count.costOf(stout) - count.costOf(build)).isCloseTo(Math.round((total[0] - total[1]) * BuildVariables.LOSS), within(10L));
        assertThat(aims.of(MountingPlace.FORK, workshop.find("stout fork 120"))).isEqualTo(Math.round(rows.get("fork chassis")[0] + rows.get("lockout")[0]
                + rows.get("fork travel")[0]));
        assertThat(BuildVariables.grams(workshop.find("slim fork 110")) * 100 / 10_000.0).isCloseTo(rows.get("mass")[1], within(1e-9));
        assertThat(new MountingEffort(workshop).cost(PartKind.FORK) / (double) BuildVariables.LOSS).isCloseTo(rows.get("work")[1], within(1e-5));
        assertThat(new MountingEffort(workshop).cost(PartKind.CROWN_RACE) / (double) BuildVariables.LOSS).isCloseTo(rows.get("crown race")[1], within(1e-5));
    }
}
