package courseworthy.task;

import courseworthy.build.Build;
import courseworthy.build.BuildCall;
import courseworthy.problem.Faults;
import courseworthy.topic.Topic;
import courseworthy.worth.SetUp;
import courseworthy.worth.SetUpComparison;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Puts set-ups beside the recommended one. */
public final class CompareTask {

    private CompareTask() {
    }

    /** @param written one text for each set-up, topics and values as sheets write them */
    public static CompareResult of(Workspace workspace, Request request, List<String> written) {
        List<Map<Topic, Long>> asked = setUps(written, request.workshop() == null);
        BriefResult answer = BriefTask.withoutOutlook(workspace, request);
        SetUpComparison comparison = new SetUpComparison(answer.rules(), answer.call(), answer.ride()::on);
        List<SetUp> all = new ArrayList<>(List.of(comparison.recommended()));
        Build build = answer.brief().build();
        boolean built = build != null && build.bike() != null;
        if (built) {
            all.add(comparison.mounted("the build of your workshop, " + build.bike().name(), answer.mounted(),
                    BuildCall.known(build, answer.mounted()).keySet()));
        }
        for (int i = 0; i < asked.size(); i++) {
            all.add(comparison.of(written.get(i), asked.get(i)));
        }
        return new CompareResult(answer.brief(), all, built);
    }

    /** @param needed whether there is nothing else to compare: of a workshop its build is */
    private static List<Map<Topic, Long>> setUps(List<String> written, boolean needed) {
        Faults faults = new Faults();
        if (needed && written.isEmpty()) {
            faults.add("--set", 0, "", "no set-up", "at least one, such as --set 'front tyre width=45 mm', or the build of a --workshop", "");
        }
        List<Map<Topic, Long>> out = new ArrayList<>();
        for (String each : written) {
            out.add(new SetUpReader(faults).read(each));
        }
        faults.throwIfAny();
        return out;
    }
}
