package courseworthy.engine;

import courseworthy.claim.Claim;
import courseworthy.claim.RuleOrigin;
import courseworthy.claim.Task;
import courseworthy.claim.TestedFact;
import courseworthy.demand.MeasureValue;
import courseworthy.sheet.Row;
import courseworthy.sheet.Saying;
import courseworthy.sheet.Stage;
import courseworthy.sheet.TestedFacts;
import courseworthy.sheet.Truth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Turns rows that may speak into claims and things to do, and keeps those that could not tell. One for each asking. */
final class ClaimEmitter {

    private List<Claim> claims = new ArrayList<>();
    private List<Task> tasks = new ArrayList<>();
    private final Map<String, UndeterminedNote> undetermined = new HashMap<>();

    /** A rule that could not tell. What it is on and what it wants is kept as it came, and joined only where it comes again. */
    private static final class UndeterminedNote {
        private final RuleOrigin origin;
        private Collection<String> topics;
        private Collection<String> wanting;
        private final List<Saying> sayings;

        UndeterminedNote(Row row, Collection<String> topics, Collection<String> wanting) {
            this.origin = row.origin();
            this.sayings = row.sayings();
            this.topics = topics;
            this.wanting = wanting;
        }

        void join(Collection<String> otherTopics, Collection<String> more) {
            topics = joined(topics, otherTopics);
            wanting = joined(wanting, more);
        }

        private static Set<String> joined(Collection<String> one, Collection<String> other) {
            Set<String> out = new LinkedHashSet<>(one);
            out.addAll(other);
            return out;
        }
    }

    /** Says what a row whose condition holds has to say after the stage's layer. */
    void emit(Row row, Stage stage) {
        List<TestedFact> grounds = new ArrayList<>();
        row.condition().grounds(stage, true, row.condition(), grounds);
        for (Saying saying : row.after(stage.layer())) {
            add(row, saying, stage, grounds);
        }
        if (row.task() != null && row.condition().layer() == stage.layer()) {
            Task task = row.task();
            tasks.add(new Task(task.origin(), task.what(), task.find(), task.due(), task.needs(), task.critical(), task.part(),
                    task.after(), List.copyOf(grounds)));
        }
    }

    private void add(Row row, Saying saying, Stage stage, List<TestedFact> grounds) {
        if (saying.source() instanceof Saying.Literal literal) {
            claims.add(Claim.of(row.origin(), saying.topic(), saying.verb(), literal.value(), saying.written(), grounds));
            return;
        }
        Saying.Times times = (Saying.Times) saying.source();
        MeasureValue value = stage.demands().get(times.measure());
        if (value == null) {
            addUndetermined(row, List.of(saying.topic().name()), Set.of(times.measure().written()));
            return;
        }
        List<TestedFact> with = new ArrayList<>(grounds);
        with.add(TestedFacts.of(times.measure(), value.mid(), "", true, false));
        claims.add(Claim.of(row.origin(), saying.topic(), saying.verb(), times.on(saying.topic(), value.mid()), saying.written(), with));
    }

    /** Notes a row whose condition does not hold, where that is for want of knowledge. */
    void noteIfUnknown(Row row, Stage stage) {
        if (row.condition().on(stage) == Truth.UNKNOWN) {
            noteUnknown(row, stage);
        }
    }

    /** Notes a row whose condition is unknown, unless it would not hold whatever became known. */
    void noteUnknown(Row row, Stage stage) {
        if (row.condition().could(stage, true)) {
            Set<String> wanting = new LinkedHashSet<>();
            row.condition().wanting(stage, wanting);
            addUndetermined(row, row.topics(), wanting);
        }
    }

    private void addUndetermined(Row row, List<String> topics, Set<String> wanting) {
        UndeterminedNote about = undetermined.get(row.origin().rule());
        if (about == null) {
            undetermined.put(row.origin().rule(), new UndeterminedNote(row, topics, wanting));
        } else {
            about.join(topics, wanting);
        }
    }

    void add(Claim claim) {
        claims.add(claim);
    }

    /** What was said since the last time. */
    FiringResult drain() {
        FiringResult said = new FiringResult(claims, tasks);
        claims = new ArrayList<>();
        tasks = new ArrayList<>();
        return said;
    }

    /** Those that could not tell, by id. */
    List<UndeterminedRule> undetermined() {
        String[] ids = undetermined.keySet().toArray(new String[0]);
        Arrays.sort(ids);
        List<UndeterminedRule> out = new ArrayList<>(ids.length);
        for (String id : ids) {
            UndeterminedNote about = undetermined.get(id);
            out.add(new UndeterminedRule(about.origin, List.copyOf(about.topics), List.copyOf(about.wanting), about.sayings));
        }
        return out;
    }

    /** Rows by the layer after which they have something to say. */
    static Map<Integer, List<Row>> byLayer(List<Row> rows) {
        Map<Integer, List<Row>> out = new LinkedHashMap<>();
        for (Row row : rows) {
            for (int layer : row.layers()) {
                out.computeIfAbsent(layer, l -> new ArrayList<>()).add(row);
            }
        }
        return out;
    }
}
