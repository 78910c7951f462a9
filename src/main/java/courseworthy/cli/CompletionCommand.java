package courseworthy.cli;

import picocli.AutoComplete;

/** Prints a script that lets a shell complete commands and options. */
final class CompletionCommand extends Command {

    CompletionCommand(Terminal terminal) {
        super("completion", terminal, "Prints a completion script for bash and zsh.",
                "source <(courseworthy completion)");
    }

    @Override
    public void run() {
        print(AutoComplete.bash(CommandRunner.NAME, CommandRunner.withAllCommands()) + "\n");
    }
}
