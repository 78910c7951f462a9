package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.problem.BadInput;
import courseworthy.problem.Fault;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CommandRunnerTest {

    static List<String> commands() {
        return Commands.NAMES;
    }

    @Test
    void aPathThatNoMachineHasIsRefused() {
        CommandRun ran = CommandRun.of("brief", "course-profiles/fernbrake.yaml", "--rider", "a\u0000b");
        assertThat(ran).isEqualTo(new CommandRun(2, "", "a\\u0000b: found a path that cannot be, expected the path of a file\n    Check the spelling of the path.\n"));
    }

    @Test
    void withoutArgumentsItPrintsHelp() {
        assertThat(CommandRun.of()).isEqualTo(CommandRun.of("--help"));
    }

    @Test
    void helpListsEveryExitCodeWithItsMeaning() {
        CommandRun ran = CommandRun.of("--help");
        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        String oneLine = ran.out().replaceAll("\\s+", " ");
        for (ExitCode code : ExitCode.values()) {
            assertThat(oneLine).contains(" " + code.number() + " " + code.meaning());
        }
    }

    @Test
    void helpListsEveryCommand() {
        assertThat(CommandRun.of("--help").out().lines().map(line -> line.trim().split(" ")[0])).containsAll(Commands.NAMES);
    }

    @ParameterizedTest
    @MethodSource("commands")
    void helpOfACommandHasAnExampleOfThatCommandAndFitsEightyColumns(String name) {
        CommandRun ran = CommandRun.of(name, "--help");
        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).startsWith("Usage: courseworthy " + name);
        assertThat(ran.out().substring(ran.out().indexOf("Example"))).contains("courseworthy " + name);
        assertThat(ran.out().lines()).allMatch(line -> line.length() <= 80);
        assertThat(ran.out()).doesNotContain("\u001b", "\r").endsWith("\n");
    }

    @Test
    void anUnknownOptionIsRefusedWithTheNearestSpelling() {
        assertThat(CommandRun.of("--hlep")).isEqualTo(new CommandRun(2, "", """
                courseworthy: no option '--hlep'
                    Did you mean "--help"?
                    'courseworthy --help' lists what there is.
                """));
    }

    @Test
    void anUnknownCommandIsRefusedWithTheNearestSpelling() {
        assertThat(CommandRun.of("competion")).isEqualTo(new CommandRun(2, "", """
                courseworthy: no command 'competion'
                    Did you mean "completion"?
                    'courseworthy --help' lists what there is.
                """));
    }

    @Test
    void whatACommandDoesNotTakeIsRefused() {
        assertThat(CommandRun.of("completion", "fish")).isEqualTo(new CommandRun(2, "", """
                courseworthy completion: does not take 'fish'
                    'courseworthy completion --help' lists what there is.
                """));
    }

    @Test
    void argumentsCannotReachTheTerminal() {
        assertThat(CommandRun.of("\u001b[2J").err()).contains("'\\u001b[2J'").doesNotContain("\u001b");
    }

    @Test
    void aFileOfArgumentsIsNotRead() {
        assertThat(CommandRun.of("@pom.xml").err()).contains("'@pom.xml'");
    }

    @Test
    void everyFaultOfBadInputIsShownAndNoTrace() {
        BadInput bad = new BadInput(List.of(
                Fault.of("ride.yaml", 3, "length", "\"12\"", "a length with its unit", "Write \"12 km\"."),
                Fault.of("ride.yaml", 9, "surface", "\"tarmc\"", "a surface", "")));
        assertThat(explained(bad, new Terminal(false, true, false, 80))).isEqualTo("2 " + """
                ride.yaml:3: length: found "12", expected a length with its unit
                    Write "12 km".
                ride.yaml:9: surface: found "tarmc", expected a surface
                """);
    }

    @Test
    void aFaultOfTheToolIsOneLineAndSaysHowToSeeMore() {
        assertThat(explained(new IllegalStateException("why"), Terminal.NONE)).isEqualTo(ExitCode.FAULT.number() + " " + """
                courseworthy: a fault of the tool itself: java.lang.IllegalStateException: why
                    Set COURSEWORTHY_TRACE=1 and run it again to see where.
                """);
    }

    @Test
    void aFaultOfTheToolShowsItsTraceWhenAsked() {
        assertThat(explained(new IllegalStateException("why"), new Terminal(false, true, false, 80)))
                .startsWith("70 courseworthy: a fault of the tool itself: ")
                .contains("\tat " + CommandRunnerTest.class.getName())
                .doesNotContain("COURSEWORTHY_TRACE");
    }

    /** 70, 69 and 74 are EX_SOFTWARE, EX_UNAVAILABLE and EX_IOERR of sysexits.h; 1 and 2 are what tests and command-line parsers commonly end with. */
    @Test
    void whatFailsInsideIsToldFromWhatTheToolAnswers() {
        assertThat(ExitCode.list().keySet()).containsExactly("0", "1", "2", "69", "70", "74");
        assertThat(ExitCode.FAULT.number()).isEqualTo(70);
        assertThat(ExitCode.NOT_STARTED.number()).isEqualTo(69);
        assertThat(ExitCode.NOT_WRITTEN.number()).isEqualTo(74);
        assertThat(explained(new NoClassDefFoundError("picocli/CommandLine"), Terminal.NONE))
                .startsWith("69 courseworthy: what was built is damaged or not all there: ");
        assertThat(explained(new StackOverflowError(), Terminal.NONE)).startsWith("70 ");
    }

    private static String explained(Throwable fault, Terminal terminal) {
        StringWriter err = new StringWriter();
        int code = CommandRunner.explain(fault, new PrintWriter(err), terminal);
        return code + " " + err.toString().replace(System.lineSeparator(), "\n");
    }
}
