package courseworthy.report.json;

import courseworthy.analysis.ChangeCause;
import courseworthy.analysis.ChangeGroup;
import courseworthy.analysis.Impact;
import courseworthy.analysis.Impact.ItemChange;
import courseworthy.analysis.Impact.ChangedRule;
import courseworthy.analysis.Impact.ImpactRide;
import courseworthy.analysis.Impact.DecisionChange;
import courseworthy.analysis.RideCover;
import courseworthy.claim.Claim;
import courseworthy.claim.Task;
import courseworthy.decision.Decision;
import courseworthy.report.ImpactPhrases;
import courseworthy.report.Phrases;
import courseworthy.sheet.SheetInForce;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Writes what another sheet changes, as JSON, format 2: alike changes together as text shows them, and then each change with every ride it
 * concerns. Where nothing changes its lists are empty.
 */
public final class JsonImpact {

    private final Json json;
    private final Impact impact;
    private final ImpactPhrases words;

    private JsonImpact(Json json, Impact impact) {
        this.json = json;
        this.impact = impact;
        this.words = new ImpactPhrases(impact, true);
    }

    public static String of(Impact impact) {
        return Json.written(json -> new JsonImpact(json, impact).all());
    }

    private void all() throws IOException {
        JsonSheets.write("sheets_before", SheetInForce.of(impact.before()), json);
        JsonSheets.write("sheets_after", SheetInForce.of(impact.after()), json);
        json.strings("courses", names(impact.courses()));
        json.strings("riders", names(impact.riders()));
        json.number("calls", impact.calls());
        json.number("changed", impact.changed());
        json.strings("topics", impact.topics().stream().map(topic -> topic.name()).toList());
        groups();
        items();
        decisions();
        checklist();
    }

    private static List<String> names(List<ChangedRule> all) {
        return all.stream().map(ChangedRule::name).toList();
    }

    // Alike changes together

    private void groups() throws IOException {
        json.objects("groups", ChangeGroup.of(impact), alike -> {
            DecisionChange example = alike.example();
            json.strings("topics", alike.topics().stream().map(topic -> topic.name()).toList());
            json.string("change", alike.change().words());
            json.string("words", ImpactPhrases.what(alike));
            json.number("calls", alike.rides().size());
            blocks(RideCover.of(alike.rides(), impact.riders(), impact.courses()));
            json.object("example");
            ride(example.ride());
            json.string("topic", example.topic().name());
            json.string("words", ImpactPhrases.example(example));
            json.string("why", ImpactPhrases.why(example));
            json.close();
        });
    }

    private void blocks(RideCover whom) throws IOException {
        json.strings("whom", whom.blocks().stream().map(words::block).toList());
    }

    private void items() throws IOException {
        json.objects("checklist_groups", ChangeGroup.items(impact), each -> {
            Task task = each.first().task();
            json.string("change", each.first().how().words());
            json.string("rule", task.origin().rule());
            json.string("by", task.due().words());
            json.string("what", task.what());
            json.number("calls", each.rides().size());
            blocks(RideCover.of(each.rides(), impact.riders(), impact.courses()));
        });
    }

    // Each change

    private void decisions() throws IOException {
        json.objects("decisions", together(), alike -> {
            DecisionChange first = alike.get(0);
            json.string("topic", first.topic().name());
            json.string("unit", Json.unit(first.topic()));
            json.string("change", first.change().words());
            decision("from", first.was(), first.wasFirm());
            decision("to", first.is(), first.isFirm());
            rides(alike.stream().map(DecisionChange::ride).toList());
            cause(first.cause());
        });
    }

    /** Those that go from one decision to one other for one cause, by topic. */
    private Collection<List<DecisionChange>> together() {
        Map<String, List<DecisionChange>> out = new LinkedHashMap<>();
        impact.topics().forEach(topic -> impact.turned().stream().filter(each -> each.topic().equals(topic)).forEach(each -> {
            String key = topic.name() + "\n" + text(each.was(), each.wasFirm()) + "\n" + text(each.is(), each.isFirm()) + "\n" + ImpactPhrases.why(each);
            out.computeIfAbsent(key, k -> new ArrayList<>()).add(each);
        }));
        return out.values();
    }

    private static String text(Decision decision, String firmness) {
        return decision.text() + "\n" + firmness;
    }

    private void decision(String field, Decision decision, String firmness) throws IOException {
        json.object(field);
        json.string("status", decision.status().words());
        json.value("value", decision.topic(), decision.value());
        json.string("text", decision.text());
        json.string("firmness", firmness.isEmpty() ? null : firmness);
        json.close();
    }

    private void rides(List<ImpactRide> rides) throws IOException {
        json.objects("rides", rides, ride -> {
            ride(ride);
        });
    }

    private void ride(ImpactRide ride) throws IOException {
        json.string("course", ride.course());
        json.string("rider", ride.rider());
    }

    private void cause(ChangeCause cause) throws IOException {
        json.object("now_said", cause.now(), this::claim);
        json.object("no_longer_said", cause.gone(), this::claim);
        json.string("left_out", cause.left() == null || cause.back() ? null : cause.left().rule());
        json.string("no_longer_left_out", cause.left() == null || !cause.back() ? null : cause.left().rule());
        json.string("follows_from", cause.through() == null ? null : cause.through().topic().name());
    }

    private void claim(Claim claim) throws IOException {
        json.string("rule", claim.origin().rule());
        json.string("says", Phrases.says(claim));
        json.string("force", claim.origin().force().word());
        json.string("because", claim.origin().because());
        json.string("where", claim.origin().where().toString());
    }

    private void checklist() throws IOException {
        Map<String, List<ItemChange>> together = new LinkedHashMap<>();
        for (ItemChange each : impact.listed()) {
            String key = each.how() + "\n" + each.task().origin().rule() + "\n" + text(each.was()) + "\n" + text(each.is());
            together.computeIfAbsent(key, k -> new ArrayList<>()).add(each);
        }
        json.objects("checklist", together.values(), alike -> {
            ItemChange first = alike.get(0);
            json.string("change", first.how().words());
            json.string("rule", first.task().origin().rule());
            json.string("where", first.task().origin().where().toString());
            json.object("from", first.was(), this::task);
            json.object("to", first.is(), this::task);
            rides(alike.stream().map(ItemChange::ride).toList());
        });
    }

    private static String text(Task task) {
        return task == null ? "" : task.due() + task.what() + "\n" + task.find();
    }

    private void task(Task task) throws IOException {
        json.string("by", task.due().words());
        json.string("what", task.what());
        json.string("find", task.find());
    }
}
