package courseworthy.engine;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.kie.api.definition.type.ClassReactive;

/** The values that exist, ascending, each with a text that says where it comes from ({@code 34x50}). */
@ClassReactive
public final class AvailableValues {

    private final List<Long> values = new ArrayList<>();
    private final List<String> labels = new ArrayList<>();

    private AvailableValues(SortedMap<Long, Set<String>> labelled) {
        labelled.forEach((value, of) -> {
            values.add(value);
            labels.add(String.join(" or ", of));
        });
    }

    /** Collects values; those that are equal share their texts. */
    static final class ValueAccumulator {
        private final SortedMap<Long, Set<String>> labelled = new TreeMap<>();

        void add(long value, String label) {
            labelled.computeIfAbsent(value, v -> new LinkedHashSet<>()).add(label);
        }

        AvailableValues existing() {
            return new AvailableValues(labelled);
        }
    }

    public boolean isEmpty() {
        return values.isEmpty();
    }

    List<Long> values() {
        return values;
    }

    List<String> labels() {
        return labels;
    }
}
