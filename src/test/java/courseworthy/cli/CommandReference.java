package courseworthy.cli;

import java.util.List;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The commands as Markdown, from the same specifications that {@code --help} prints. */
final class CommandReference {

    private CommandReference() {
    }

    /** A section for each command: what it does, how it is typed, what it takes, examples. */
    static String commands() {
        StringBuilder out = new StringBuilder();
        for (CommandLine command : CommandRunner.withAllCommands().getSubcommands().values()) {
            section(command, out);
            for (CommandLine sub : command.getSubcommands().values()) {
                section(sub, out);
            }
        }
        return out.toString();
    }

    static String exitCodes() {
        StringBuilder out = new StringBuilder("| code | meaning |\n| --- | --- |\n");
        for (Map.Entry<String, String> code : ExitCode.list().entrySet()) {
            out.append("| ").append(code.getKey()).append(" | ").append(code.getValue()).append(" |\n");
        }
        return out.toString();
    }

    private static void section(CommandLine command, StringBuilder out) {
        CommandSpec spec = command.getCommandSpec();
        String name = spec.qualifiedName().substring(CommandRunner.NAME.length() + 1);
        out.append("## ").append(name).append("\n\n").append(spec.usageMessage().description()[0]).append("\n\n");
        out.append("```text\n").append(command.getHelp().synopsis(0).stripTrailing()).append("\n```\n\n");
        arguments(spec, out);
        List<String> footer = List.of(spec.usageMessage().footer());
        out.append(footer.get(1)).append("\n\n```text\n");
        footer.subList(2, footer.size()).forEach(example -> out.append(example.substring(2)).append('\n'));
        out.append("```\n\n");
    }

    private static void arguments(CommandSpec spec, StringBuilder out) {
        out.append("| argument | |\n| --- | --- |\n");
        for (PositionalParamSpec parameter : spec.positionalParameters()) {
            row(parameter.paramLabel(), parameter, out);
        }
        for (OptionSpec option : spec.options()) {
            String names = String.join("`, `", option.names());
            row(names + (option.arity().max() == 0 ? "" : " " + option.paramLabel()), option, out);
        }
        out.append('\n');
    }

    private static void row(String typed, ArgSpec argument, StringBuilder out) {
        String about = String.join(" ", argument.description()).replace("|", "\\|");
        out.append("| `").append(typed).append("` | ").append(about).append(" |\n");
    }
}
