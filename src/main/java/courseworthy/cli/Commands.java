package courseworthy.cli;

import java.util.List;

/**
 * All commands, in the order help lists them. To add one, write its class and name it in both places here.
 *
 * <p>Only the command that was asked for is made, so that a run does not pay for the others.
 */
final class Commands {

    static final List<String> NAMES = List.of("brief", "course", "checklist", "why", "compare", "gears", "scout", "similar", "position", "roster", "stages", "season", "debrief", "import",
            "topics", "measures", "rules", "schema", "pages", "new", "sheet", "completion");

    private Commands() {
    }

    /**
     * Makes one command.
     *
     * @param terminal what its output may use
     * @throws IllegalArgumentException for a name that is not in {@link #NAMES}
     */
    static Command make(String name, Terminal terminal) {
        return switch (name) {
            case "brief" -> new BriefCommand(terminal);
            case "course" -> new CourseCommand(terminal);
            case "checklist" -> new ChecklistCommand(terminal);
            case "why" -> new WhyCommand(terminal);
            case "compare" -> new CompareCommand(terminal);
            case "gears" -> new GearsCommand(terminal);
            case "scout" -> new ScoutCommand(terminal);
            case "similar" -> new SimilarCommand(terminal);
            case "position" -> new PositionCommand(terminal);
            case "debrief" -> new DebriefCommand(terminal);
            case "roster" -> new RosterCommand(terminal);
            case "stages" -> new StagesCommand(terminal);
            case "season" -> new SeasonCommand(terminal);
            case "import" -> new ImportCommand(terminal);
            case "topics" -> new TopicsCommand(terminal);
            case "measures" -> new MeasuresCommand(terminal);
            case "rules" -> new RulesCommand(terminal);
            case "schema" -> new SchemaCommand(terminal);
            case "pages" -> new PagesCommand(terminal);
            case "new" -> new NewCommand(terminal);
            case "sheet" -> new SheetCommand(terminal);
            case "completion" -> new CompletionCommand(terminal);
            default -> throw new IllegalArgumentException(name);
        };
    }
}
