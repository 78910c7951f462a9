package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The command that shows what a course asks of the gears. */
class GearsCommandTest {

    private static final String[] HEATHER = {"gears", "course-profiles/heather-ridge.yaml", "--event", "docs/examples/events/heather-ridge.yaml",
        "--rider", "docs/examples/riders/kim-cross-country.yaml"};

    private static String[] with(String... more) {
        String[] all = java.util.Arrays.copyOf(HEATHER, HEATHER.length + more.length);
        System.arraycopy(more, 0, all, HEATHER.length, more.length);
        return all;
    }

    @Test
    void textFitsATerminal() {
        CommandRun ran = CommandRun.of(HEATHER);
        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out().lines()).allMatch(line -> line.codePointCount(0, line.length()) <= 80);
        assertThat(ran.out()).startsWith("Heather Ridge Marathon                               the gears this course needs\nfor Kim\n")
                .contains("\nON THE CLIMBS                                in 34x50 (0.68, development 1.59 m)\n",
                        "\nAT SPEED                                     in 34x10 (3.40, development 7.93 m)\n",
                        "\nTIME IN EACH GEAR                                              largest step 20 %\n",
                        "\nOTHER COMMON GEARING                                 cadence in the easiest gear\n", "  34 with 10-50 ");
    }

    /** The same figures stand in all three. */
    @Test
    void outputsAgree() {
        String text = CommandRun.of(HEATHER).out().replaceAll("\\s+", " ");
        String markdown = CommandRun.of(with("--format", "markdown")).out();
        String json = CommandRun.of(with("--format", "json")).out();
        assertThat(markdown).startsWith("# Heather Ridge Marathon, the gears this course needs\n");
        for (String line : markdown.split("\n")) {
            if (line.startsWith("- ")) {
                assertThat(text).contains(line.substring(2));
            }
        }
        assertThat(json).startsWith("{\n  \"format\" : 2,\n  \"role\" : \"race\"").contains("\"teeth\" : \"34x50\"", "\"ratio\" : 0.68,");
        assertThat(text).contains("34x50 (0.68,");
    }

    @Test
    void helpHasAnExample() {
        assertThat(CommandRun.of("gears", "--help").out()).contains("courseworthy gears heather-ridge --rider me.yaml");
    }

    @Test
    void badInputIsRefused() {
        assertThat(CommandRun.of("gears", "course-profiles/heather-ridge.yaml", "--role", "rac")).isEqualTo(new CommandRun(2, "",
                "--role: found \"rac\", expected training or race\n    Did you mean \"race\"?\n"));
    }
}
