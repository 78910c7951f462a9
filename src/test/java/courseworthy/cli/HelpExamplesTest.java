package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

/** Examples in help can be copied: none is broken in the middle of a word, and what goes on in the next line says so. */
class HelpExamplesTest {

    private static void all(CommandLine command, List<String> problems) {
        String[] footer = command.getCommandSpec().usageMessage().footer();
        String help = command.getUsageMessage();
        for (int i = 2; i < footer.length; i++) {
            boolean goesOn = i + 1 < footer.length && footer[i + 1].startsWith("      ");
            if (!help.contains(footer[i] + System.lineSeparator()) || footer[i].length() > 80 || goesOn != footer[i].endsWith(" \\")) {
                problems.add(footer[i]);
            }
        }
        command.getSubcommands().values().forEach(each -> all(each, problems));
    }

    @Test
    void eachLineStandsWhole() {
        List<String> problems = new ArrayList<>();
        all(CommandRunner.withAllCommands(), problems);
        assertThat(problems).isEmpty();
        assertThat(CommandRun.of("brief", "--help").out()).contains("  courseworthy brief heather-ridge --event event.yaml \\\n      --workshop workshop.yaml --log recordings --log-bike 'steel bike'\n");
    }

    /** The words of the parser are not ours. */
    @Test
    void whatIsMissingIsSaidAsEverywhere() {
        CommandRun run = CommandRun.of("brief");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).isEqualTo("courseworthy brief: found no COURSE\n    'courseworthy brief --help' lists what there is.\n");
        assertThat(CommandRun.of("--help").out()).contains("Show this help and exit.", "Show the version and exit.", "1    one or more cases of a sheet failed");
    }
}
