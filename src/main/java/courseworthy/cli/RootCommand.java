package courseworthy.cli;

import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.OptionSpec;

/** The tool without a command: help and version. */
final class RootCommand extends Command {

    RootCommand(Terminal terminal) {
        super(CommandRunner.NAME, terminal,
                "Takes a course and a rider, and says how the bike should be set up, with reasons.",
                "courseworthy brief heather-ridge");
        spec().addOption(OptionSpec.builder("-V", "--version").versionHelp(true)
                .description("Show the version and exit.").build());
        spec().versionProvider(new Version());
        spec().usageMessage().synopsisSubcommandLabel("COMMAND");
    }

    @Override
    public void run() {
        spec().commandLine().usage(spec().commandLine().getOut());
    }

    /** The version that the build wrote into the jar. */
    private static final class Version implements IVersionProvider {

        @Override
        public String[] getVersion() {
            String built = RootCommand.class.getPackage().getImplementationVersion();
            return new String[] {CommandRunner.NAME + " " + (built == null ? "(not built as a jar)" : built)};
        }
    }
}
