package courseworthy.sheet;

import courseworthy.claim.RuleOrigin;
import courseworthy.claim.Task;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * One row of a sheet.
 *
 * @param origin    the rule as it signs what it says
 * @param condition what must hold for it to speak; without parts where it always does
 * @param sayings   what it says on topics
 * @param task      what is to be done, its grounds still empty; null where nothing
 */
public record Row(RuleOrigin origin, Condition.AllOf condition, List<Saying> sayings, Task task) {

    public Row {
        sayings = List.copyOf(sayings);
    }

    /** The layers after which it has something to say: where its condition can be told, and later where a value becomes known. */
    public SortedSet<Integer> layers() {
        SortedSet<Integer> out = new TreeSet<>();
        for (Saying saying : sayings) {
            out.add(layer(saying));
        }
        if (task != null) {
            out.add(condition.layer());
        }
        return out;
    }

    /** The layer after which it says this. */
    public int layer(Saying saying) {
        return Math.max(condition.layer(), saying.layer());
    }

    /** What it says after a layer. */
    public List<Saying> after(int layer) {
        List<Saying> out = new ArrayList<>();
        for (Saying saying : sayings) {
            if (layer(saying) == layer) {
                out.add(saying);
            }
        }
        return out;
    }

    /** The names of the topics it speaks on, each once, in the order written. */
    public List<String> topics() {
        if (sayings.size() == 1) {
            return List.of(sayings.get(0).topic().name());
        }
        Set<String> out = new LinkedHashSet<>();
        for (Saying saying : sayings) {
            out.add(saying.topic().name());
        }
        return List.copyOf(out);
    }
}
