package courseworthy.cli;

import courseworthy.analysis.Impact;
import courseworthy.report.ImpactReport;
import courseworthy.report.json.JsonImpact;
import courseworthy.task.ImpactTask;

/** Shows what another sheet changes, over courses and riders. */
final class SheetImpactCommand extends Command {

    private final SourceFunction<String> before = parameter("OLD", "The sheet as it was (.yaml); none for no sheet at all.");
    private final SourceFunction<String> after = parameter("NEW", "The sheet as it is (.yaml); none for no sheet at all.");
    private final SourceFunction<String> courses = option("--courses", "DIR", "A folder of course profiles; the shipped ones where it is not given.");
    private final SourceFunction<String> riders = option("--riders", "DIR", "A folder of riders' files; a rider of whom nothing is known where it is not given.");
    private final SourceFunction<String> events = option("--events", "DIR", "A folder of events' files, each for the course whose file has the same name.");
    private final SourceFunction<String> topic = option("--topic", "NAME", "One topic in full: each change by itself, with everyone it concerns.");
    private final SourceFunction<Format> format = format();
    private final Output output = output();

    SheetImpactCommand(Terminal terminal) {
        super("impact", terminal, "Shows which decisions another sheet changes, for whom and on which courses; prints nothing where it changes none.",
                "courseworthy sheet impact old.yaml new.yaml --riders roster", "courseworthy sheet impact none mine.yaml",
                "courseworthy sheet impact old.yaml new.yaml --riders roster --topic 'front tyre pressure'");
    }

    @Override
    public void run() {
        try (ProgressMeter meter = meter("comparing rides")) {
            Impact impact = ImpactTask.of(workspace(), before.value(), after.value(), courses.value(), riders.value(), events.value(), topic.value(), meter);
            output.write(render(format.value(), output, () -> topic.value() == null ? ImpactReport.of(impact) : ImpactReport.ofTopic(impact),
                    () -> JsonImpact.of(impact)));
        }
    }
}
