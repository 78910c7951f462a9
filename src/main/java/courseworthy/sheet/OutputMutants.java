package courseworthy.sheet;

import courseworthy.claim.Deadline;
import courseworthy.claim.Task;
import courseworthy.claim.Verb;
import courseworthy.sheet.Saying.Literal;
import courseworthy.sheet.Saying.Times;
import courseworthy.sheet.Saying.ValueSource;
import courseworthy.topic.Topic;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Rows with one thing wrong in what they give: a value moved by one step of its topic, a factor by a twentieth, the verb exchanged, a
 * saying lost, an item due at another time. Cases must notice each.
 */
public final class OutputMutants {

    private static final List<Verb> BOUNDS = List.of(Verb.AT_LEAST, Verb.AT_MOST);
    private static final List<Verb> DISLIKES = List.of(Verb.AVOID, Verb.RULE_OUT);
    private static final List<BigDecimal> FACTORS = List.of(new BigDecimal("0.95"), new BigDecimal("1.05"));
    private static final int HOUR = 3600;

    /**
     * One wrong row.
     *
     * @param what what is wrong with it
     * @param row  the wrong row
     */
    public record OutputMutant(String what, Row row) {
    }

    private final Row row;
    private final List<OutputMutant> out = new ArrayList<>();

    private OutputMutants(Row row) {
        this.row = row;
    }

    public static List<OutputMutant> of(Row row) {
        OutputMutants mutants = new OutputMutants(row);
        for (int i = 0; i < row.sayings().size(); i++) {
            mutants.saying(i);
        }
        if (row.task() != null) {
            mutants.task(row.task());
        }
        return mutants.out;
    }

    private void saying(int i) {
        Saying saying = row.sayings().get(i);
        String name = saying.topic().name() + ": " + saying.verb().word() + " " + saying.written();
        List<Saying> rest = new ArrayList<>(row.sayings());
        rest.remove(i);
        out.add(new OutputMutant("\"" + name + "\" dropped", new Row(row.origin(), row.condition(), rest, row.task())));
        worths(saying).forEach((to, worth) ->
                changed(i, "\"" + name + "\" moved to " + to, new Saying(saying.topic(), saying.verb(), worth, to)));
        for (Verb verb : verbs(saying.topic())) {
            if (verb != saying.verb()) {
                changed(i, "\"" + name + "\" changed to " + verb.word(), new Saying(saying.topic(), verb, saying.source(), saying.written()));
            }
        }
    }

    private void changed(int i, String what, Saying wrong) {
        List<Saying> sayings = new ArrayList<>(row.sayings());
        sayings.set(i, wrong);
        out.add(new OutputMutant(what, new Row(row.origin(), row.condition(), sayings, row.task())));
    }

    /** Wrong values as they would be written: the next ones, factors a twentieth off, or one option whatever the measure says. */
    private static Map<String, ValueSource> worths(Saying saying) {
        Map<String, ValueSource> out = new LinkedHashMap<>();
        Topic topic = saying.topic();
        if (saying.source() instanceof Literal literal) {
            for (long to : new long[] {literal.value() - topic.step(literal.value()), literal.value() + topic.step(literal.value())}) {
                if (to >= topic.least() && to <= topic.most()) {
                    out.put(topic.text(to), new Literal(to));
                }
            }
        } else if (topic.kind() == Topic.Kind.QUANTITY) {
            Times times = (Times) saying.source();
            for (BigDecimal by : FACTORS) {
                BigDecimal factor = times.factor().multiply(by).stripTrailingZeros();
                out.put(factor.toPlainString() + " x " + times.measure().written(), new Times(factor, times.measure()));
            }
        } else {
            for (long option = topic.least(); option <= topic.most(); option++) {
                out.put(topic.text(option), new Literal(option));
            }
        }
        return out;
    }

    private static List<Verb> verbs(Topic topic) {
        List<Verb> out = new ArrayList<>(List.of(Verb.PREFER));
        if (topic.kind() != Topic.Kind.OPTIONS) {
            out.addAll(BOUNDS);
        }
        if (topic.kind() != Topic.Kind.QUANTITY) {
            out.addAll(DISLIKES);
        }
        return out;
    }

    private void task(Task task) {
        for (int to : new int[] {task.due().ordinal() - 1, task.due().ordinal() + 1}) {
            if (to >= 0 && to < Deadline.values().length) {
                Deadline due = Deadline.values()[to];
                out.add(new OutputMutant("by " + task.due().words() + " moved to " + due.words(), with(task, due, task.needs(), task.critical(), task.after())));
            }
        }
        for (long needs : new long[] {task.needs() - HOUR, task.needs() + HOUR}) {
            if (needs >= 0) {
                out.add(new OutputMutant("needs " + RowOutput.time(task.needs()) + " moved to " + RowOutput.time(needs),
                        with(task, task.due(), needs, task.critical(), task.after())));
            }
        }
        out.add(new OutputMutant(task.critical() ? "critical dropped" : "critical added", with(task, task.due(), task.needs(), !task.critical(), task.after())));
        for (String id : task.after()) {
            out.add(new OutputMutant("after " + id + " dropped", with(task, task.due(), task.needs(), task.critical(),
                    task.after().stream().filter(other -> !other.equals(id)).toList())));
        }
    }

    private Row with(Task task, Deadline due, long needs, boolean critical, List<String> after) {
        return new Row(row.origin(), row.condition(), row.sayings(),
                new Task(task.origin(), task.what(), task.find(), due, needs, critical, task.part(), after, task.grounds()));
    }
}
