package courseworthy.cli;

import courseworthy.problem.BadInput;
import courseworthy.problem.Fault;
import courseworthy.problem.Spelling;
import courseworthy.problem.TextSanitiser;
import courseworthy.render.Renderer;
import courseworthy.render.TerminalRenderer;
import courseworthy.report.Report;
import courseworthy.report.RuleLinks;
import courseworthy.task.MapRequest;
import courseworthy.task.PageSet;
import courseworthy.task.Workspace;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * One command of the tool: what help says of it, what it takes, and what it does.
 *
 * <p>Options are declared in code rather than by annotations: reading annotations by reflection would cost every run more
 * than the rest of the parsing (measured: about as long as an empty virtual machine takes to start).
 */
abstract class Command implements Runnable {

    private static final String RULE_PAGES = "--rule-pages";
    /** Columns of an example in help: the parser breaks longer lines anywhere. */
    private static final int WIDTH = 78;
    private static final String CONTINUED = "      ";

    private final CommandSpec spec = CommandSpec.wrapWithoutInspection(this);
    private final Terminal terminal;
    private Workspace workspace;

    /**
     * @param name     as typed
     * @param terminal what the output may use
     * @param purpose  one sentence, in the third person
     * @param examples whole command lines, at least one
     */
    Command(String name, Terminal terminal, String purpose, String... examples) {
        this.terminal = terminal;
        spec.name(name);
        spec.usageMessage().description(purpose, "").footer(footer(examples));
        spec.addOption(OptionSpec.builder("-h", "--help").usageHelp(true)
                .description("Show this help and exit.").build());
        spec.usageMessage().sortOptions(false);
        spec.usageMessage().exitCodeListHeading("%nExit codes:%n").exitCodeList(ExitCode.list());
    }

    final CommandSpec spec() {
        return spec;
    }

    /** True where the result may carry colours. */
    final boolean colours() {
        return terminal.colours();
    }

    /** A parameter that must be given, in the order of the calls. */
    final SourceFunction<String> parameter(String label, String description) {
        int index = spec.positionalParameters().size();
        PositionalParamSpec parameter = PositionalParamSpec.builder().index(Integer.toString(index)).arity("1").required(true)
                .type(String.class).paramLabel(label).description(description).build();
        spec.addPositional(parameter);
        return parameter::getValue;
    }

    /** A parameter that may be left out, after those that must be given; null where it is not given. */
    final SourceFunction<String> optionalParameter(String label, String description) {
        int index = spec.positionalParameters().size();
        PositionalParamSpec parameter = PositionalParamSpec.builder().index(Integer.toString(index)).arity("0..1").required(false)
                .type(String.class).paramLabel(label).description(description).build();
        spec.addPositional(parameter);
        return parameter::getValue;
    }

    /** Any number of further parameters, after those that must be given. */
    final SourceFunction<List<String>> others(String label, String description) {
        int index = spec.positionalParameters().size();
        PositionalParamSpec parameter = PositionalParamSpec.builder().index(index + "..*").arity("0..*").required(false)
                .type(List.class).auxiliaryTypes(String.class).paramLabel(label).description(description).build();
        spec.addPositional(parameter);
        return () -> {
            List<String> given = parameter.getValue();
            return given == null ? List.of() : List.copyOf(given);
        };
    }

    /** An option with one word; null where it is not given. */
    final SourceFunction<String> option(String name, String label, String description) {
        return option(String.class, label, description, name);
    }

    /** An option with one value of a type that picocli converts (an enum, for one); null where it is not given. */
    final <T> SourceFunction<T> option(Class<T> type, String label, String description, String... names) {
        OptionSpec option = OptionSpec.builder(names[0], rest(names)).type(type).paramLabel(label)
                .description(description).build();
        spec.addOption(option);
        return option::getValue;
    }

    /** An option with one of some words; null where it is not given. Other words are refused once it is asked for. */
    final SourceFunction<String> optionalChoice(String name, String label, String description, List<String> words) {
        OptionSpec option = OptionSpec.builder(name).type(String.class).paramLabel(label).description(description)
                .completionCandidates(words).build();
        spec.addOption(option);
        return () -> option.getValue() == null ? null : chosen(name, option.getValue(), words);
    }

    /** An option with one of some words; the first where it is not given. Other words are refused once it is asked for. */
    final SourceFunction<String> choice(String name, String label, String description, List<String> words) {
        OptionSpec option = OptionSpec.builder(name).type(String.class).paramLabel(label).description(description)
                .completionCandidates(words).build();
        spec.addOption(option);
        return () -> chosen(name, option.getValue(), words);
    }

    private static String chosen(String name, String given, List<String> words) {
        if (given != null && !words.contains(given)) {
            throw new BadInput(Fault.of(name, 0, "", "\"" + given + "\"", String.join(", ", words.subList(0, words.size() - 1)) + " or "
                    + words.get(words.size() - 1), Spelling.didYouMean(given, words)));
        }
        return given == null ? words.get(0) : given;
    }

    /** An option that may be given several times. */
    final SourceFunction<List<String>> repeated(String name, String label, String description) {
        OptionSpec option = OptionSpec.builder(name).type(List.class).auxiliaryTypes(String.class).arity("1")
                .paramLabel(label).description(description).build();
        spec.addOption(option);
        return () -> {
            List<String> given = option.getValue();
            return given == null ? List.of() : List.copyOf(given);
        };
    }

    /** An option without a value. */
    final SourceFunction<Boolean> flag(String description, String... names) {
        OptionSpec option = OptionSpec.builder(names[0], rest(names)).type(boolean.class).arity("0")
                .description(description).build();
        spec.addOption(option);
        return () -> Boolean.TRUE.equals(option.getValue());
    }

    /** The options that take ground from a map or a recorded ride, and heights from tiles. */
    final SourceFunction<MapRequest> map() {
        SourceFunction<List<String>> extracts = repeated("--map", "EXTRACT",
                "Take the ground under a track from map data (.osm.pbf, .osm, .osm.gz); may be given several times.");
        SourceFunction<Boolean> uncached = flag("Read the map itself, not what the cache has of it, and keep nothing in the cache.", "--no-cache");
        SourceFunction<String> elevation = option("--elevation", "DIR",
                "Take heights from elevation tiles in DIR (.hgt, GeoTIFF) where the track has none, or worse ones.");
        SourceFunction<String> ride = option("--recording", "RIDE",
                "A ride recorded on the course (GPX with times): its speed hints at how rough unknown ground may be.");
        return () -> new MapRequest(extracts.value(), !uncached.value(), elevation.value(), ride.value());
    }

    /** The option {@code -o FILE} and where the result goes. */
    final Output output() {
        return output("Write to FILE instead of standard output.");
    }

    /** As {@link #output()}, described in other words. */
    final Output output(String description) {
        SourceFunction<String> file = option(String.class, "FILE", description, "-o", "--output");
        return new Output(file, this::print, this::print, path -> workspace().mayWriteOver(path, path.toString()));
    }

    /** The option {@code --format}; text where it is not given. The formats of every report, and some of this command alone. */
    final SourceFunction<Format> format(Format... besides) {
        List<Format> formats = Format.offered(besides);
        List<String> words = formats.stream().map(Format::toString).toList();
        int last = words.size() - 1;
        SourceFunction<String> word = choice("--format", "FORMAT",
                "text (the default), " + String.join(", ", words.subList(1, last)) + " or " + words.get(last) + ".", words);
        return () -> formats.get(words.indexOf(word.value()));
    }

    /** The option {@code --rule-pages DIR}: the folder of the catalogue to which reasons on pages of HTML lead; null where it is not given. */
    final SourceFunction<String> rulePages() {
        return option(RULE_PAGES, "DIR", "With --format html: the folder that 'courseworthy pages --format html' wrote; each reason links to the page of its rule there.");
    }

    /**
     * Ways to the pages of rules.
     *
     * @param from the folder from which they lead
     */
    final RuleLinks ruleLinks(SourceFunction<String> rulePages, Format format, Path from) {
        if (rulePages.value() == null) {
            return RuleLinks.NONE;
        }
        if (format != Format.HTML) {
            throw new BadInput(Fault.of(RULE_PAGES, 0, "", "--format " + format + " beside it", "--format html", ""));
        }
        Path to = PageSet.catalogue(workspace(), RULE_PAGES, rulePages.value()).toAbsolutePath().normalize();
        try {
            return RuleLinks.to(from.toAbsolutePath().normalize().relativize(to).toString().replace(to.getFileSystem().getSeparator(), "/"));
        } catch (IllegalArgumentException otherDrive) {
            throw new BadInput(Fault.of(RULE_PAGES, 0, "", "a folder on another drive", "one on that of the page", ""));
        }
    }

    /** Where the command works; warnings go to standard error. */
    final Workspace workspace() {
        if (workspace == null) {
            String home = System.getProperty("courseworthy.home");
            workspace = new Workspace(home == null ? null : Path.of(home), this::remark, this::meter);
        }
        return workspace;
    }

    /** Shows on standard error, where that is a terminal, how far long work has come. To be closed when it is done. */
    final ProgressMeter meter(String what) {
        return new ProgressMeter(what, "1".equals(System.getProperty("courseworthy.watched")) ? spec.commandLine().getErr() : null);
    }

    /**
     * A result in one format.
     *
     * @param output where it goes: a file takes no colour, and is as wide as a page is usually
     * @param json   the result as JSON
     */
    final String render(Format format, Output output, Supplier<Report> report, Supplier<String> json) {
        if (format == Format.JSON) {
            return json.get();
        }
        Renderer renderer = output.toFile() ? format.renderer(TerminalRenderer.STANDARD_WIDTH, false)
                : format.renderer(terminal.width(), terminal.colours());
        return renderer.render(report.get());
    }

    /** A report as text for standard output. */
    final String text(Report report) {
        return new TerminalRenderer(terminal.width(), terminal.colours()).render(report);
    }

    /** Prints a result to standard output, as it is. */
    final void print(String text) {
        spec.commandLine().getOut().print(text);
    }

    /** Prints a result that is no text to standard output. */
    private void print(byte[] bytes) {
        ((ResultWriter) spec.commandLine().getOut()).write(bytes);
    }

    /** Prints a remark to standard error, on a line of its own. */
    final void remark(String text) {
        spec.commandLine().getErr().print(TextSanitiser.text(text) + "\n");
    }

    private static String[] rest(String... names) {
        return Arrays.copyOfRange(names, 1, names.length);
    }

    private static String[] footer(String... examples) {
        List<String> lines = new ArrayList<>(List.of("", examples.length == 1 ? "Example:" : "Examples:"));
        for (String example : examples) {
            lines.addAll(folded("  " + example));
        }
        return lines.toArray(String[]::new);
    }

    /** A command line as it may be copied: a long one goes on after a backslash, each line from an option on. */
    private static List<String> folded(String example) {
        int end = example.length() <= WIDTH ? -1 : example.lastIndexOf(" -", WIDTH - " \\".length());
        if (end <= CONTINUED.length()) {
            return List.of(example);
        }
        List<String> out = new ArrayList<>(List.of(example.substring(0, end) + " \\"));
        out.addAll(folded(CONTINUED + example.substring(end + 1)));
        return out;
    }

    /** What a user gave for an option or a parameter, known once the command runs. */
    @FunctionalInterface
    interface SourceFunction<T> {
        T value();
    }
}
