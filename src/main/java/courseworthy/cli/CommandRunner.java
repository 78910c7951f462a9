package courseworthy.cli;

import courseworthy.problem.BadInput;
import courseworthy.problem.FaultList;
import courseworthy.problem.OutputFailure;
import courseworthy.problem.Spelling;
import courseworthy.problem.TextSanitiser;
import courseworthy.task.DamagedBuild;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** Runs one command line: finds the command, gives it its streams, and turns what goes wrong into a message and a code. */
public final class CommandRunner {

    static final String NAME = "courseworthy";

    private CommandRunner() {
    }

    /** Runs on the process's own streams; returns the exit code. */
    public static int main(String[] args) {
        Terminal terminal = Terminal.of(System.getProperties(), System.getenv());
        return run(args, new FileOutputStream(FileDescriptor.out), new FileOutputStream(FileDescriptor.err), terminal);
    }

    /** Runs on the given streams, written as UTF-8; returns the exit code. Never throws. */
    public static int run(String[] args, OutputStream out, OutputStream err, Terminal terminal) {
        ResultStream result = new ResultStream(out);
        PrintWriter printed = new ResultWriter(result);
        PrintWriter said = writer(err);
        int code;
        try {
            CommandLine line = commandsFor(args, terminal).setOut(printed).setErr(said);
            line.setExecutionExceptionHandler(new Explanation(said, terminal));
            code = line.execute(args);
        } catch (RuntimeException | Error fault) {
            code = explain(fault, said, terminal);
        }
        printed.flush();
        if (result.failure() != null && !terminal.isReaderGone(result.failure())) {
            code = explain(new OutputFailure("standard output", result.failure()), said, terminal);
        }
        said.flush();
        return code;
    }

    /** The command line with every command, for help and completion. */
    static CommandLine withAllCommands() {
        return with(Commands.NAMES, Terminal.NONE);
    }

    /** With only the command that is asked for where one is, else with all, so that help and suggestions know them. */
    private static CommandLine commandsFor(String[] args, Terminal terminal) {
        String first = args.length == 0 ? "" : args[0];
        return with(Commands.NAMES.contains(first) ? List.of(first) : Commands.NAMES, terminal);
    }

    private static CommandLine with(List<String> names, Terminal terminal) {
        // The parser's converters for times and databases would load their classes in every run; none is used.
        System.setProperty("picocli.converters.excludes", "java\\..*");
        CommandLine line = new CommandLine(new RootCommand(terminal).spec());
        for (String name : names) {
            line.addSubcommand(name, Commands.make(name, terminal).spec());
        }
        return line.setColorScheme(Help.defaultColorScheme(terminal.colours() ? Ansi.ON : Ansi.OFF))
                .setExpandAtFiles(false)
                .setInterpolateVariables(false)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setParameterExceptionHandler(new UsageErrorHandler());
    }

    /** What is wrong with a command line, in one message, instead of the parser's whole help. */
    private static final class UsageErrorHandler implements IParameterExceptionHandler {

        @Override
        public int handleParseException(ParameterException fault, String[] args) {
            CommandLine at = fault.getCommandLine();
            String command = at.getCommandSpec().qualifiedName();
            PrintWriter err = at.getErr();
            if (fault instanceof UnmatchedArgumentException unmatched) {
                String found = unmatched.getUnmatched().get(0);
                err.print(TextSanitiser.text(command + ": " + unmatched(found, at)) + "\n" + suggestion(found, at));
            } else {
                err.print(TextSanitiser.text(command + ": " + words(fault)) + "\n");
            }
            err.print("    '" + command + " --help' lists what there is.\n");
            return ExitCode.BAD_INPUT.number();
        }
    }

    /** The parser's own words, but for what is missing: {@code found no COURSE}. */
    private static String words(ParameterException fault) {
        return fault instanceof MissingParameterException missing && missing.getMissing().stream().allMatch(ArgSpec::isPositional)
                ? "found no " + String.join(", no ", missing.getMissing().stream().map(ArgSpec::paramLabel).toList()) : fault.getMessage();
    }

    /** What a command could not do, as a message and an exit code. */
    private record Explanation(PrintWriter err, Terminal terminal) implements IExecutionExceptionHandler {

        @Override
        public int handleExecutionException(Exception fault, CommandLine at, ParseResult parsed) {
            return explain(fault, err, terminal);
        }
    }

    private static String unmatched(String found, CommandLine at) {
        if (found.startsWith("-")) {
            return "no option '" + found + "'";
        }
        return (at.getSubcommands().isEmpty() ? "does not take '" : "no command '") + found + "'";
    }

    private static String suggestion(String found, CommandLine at) {
        Collection<String> known = found.startsWith("-")
                ? at.getCommandSpec().optionsMap().keySet() : at.getSubcommands().keySet();
        String mend = Spelling.didYouMean(found, known);
        return mend.isEmpty() ? "" : "    " + mend + "\n";
    }

    static int explain(Throwable fault, PrintWriter err, Terminal terminal) {
        if (fault instanceof BadInput bad) {
            err.print(FaultList.text(bad.faults()));
            return ExitCode.BAD_INPUT.number();
        }
        if (fault instanceof OutputFailure lost) {
            if (lost.getCause() instanceof IOException cause && terminal.isReaderGone(cause)) {
                return ExitCode.OK.number();
            }
            err.print(TextSanitiser.text(NAME + ": " + lost.getMessage()) + "\n");
            return ExitCode.NOT_WRITTEN.number();
        }
        if (fault instanceof LinkageError || fault.getCause() instanceof LinkageError) {
            err.print(TextSanitiser.text(DamagedBuild.message(fault)));
            return ExitCode.NOT_STARTED.number();
        }
        err.print(TextSanitiser.text(NAME + ": a fault of the tool itself: " + fault) + "\n");
        if (terminal.trace()) {
            fault.printStackTrace(err);
        } else {
            err.print("    Set COURSEWORTHY_TRACE=1 and run it again to see where.\n");
        }
        return ExitCode.FAULT.number();
    }

    private static PrintWriter writer(OutputStream stream) {
        return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), false);
    }
}
