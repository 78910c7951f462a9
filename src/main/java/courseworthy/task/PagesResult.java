package courseworthy.task;

import courseworthy.demand.Measure;
import java.util.List;
import java.util.Map;

/**
 * The catalogue from which its pages are written.
 *
 * @param rules      every shipped rule, sorted by id
 * @param thresholds for each measure the values at which some rule turns, least first
 */
public record PagesResult(List<RulePage> rules, Map<Measure, List<Long>> thresholds) {

    public PagesResult {
        rules = List.copyOf(rules);
        thresholds = Map.copyOf(thresholds);
    }
}
