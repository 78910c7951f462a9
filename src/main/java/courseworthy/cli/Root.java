package courseworthy.cli;

import courseworthy.Main;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.OptionSpec;

/** The tool without a command: help and version. */
final class Root extends Command {

    Root(Terminal terminal) {
        super(Tool.NAME, terminal,
                "Takes a course and a rider, and says how the bike should stand on the start line, with reasons.",
                "courseworthy --version");
        spec().addOption(OptionSpec.builder("-V", "--version").versionHelp(true)
                .description("Print the version and stop.").build());
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
            String built = Main.class.getPackage().getImplementationVersion();
            return new String[] {Tool.NAME + " " + (built == null ? "(not built as a jar)" : built)};
        }
    }
}
