package courseworthy.build;

import courseworthy.call.Call;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Status;
import courseworthy.demand.DerivedMeasures;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.topic.End;
import courseworthy.topic.SettledTopic;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.units.PressureSteps;
import courseworthy.units.RuleValue;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Pressures to start from with the tyres of the build, whose width and casing may be others than the call's: the same relation, with
 * what is mounted, never above the lower of the two markings, nor above the hookless limit on a rim without hooks.
 */
final class BuildPressures {

    /** After this layer the call derives pressures: the last that a pressure depends on (computing). */
    private static final int LAYER = 5;

    /** Stands on the checklist where a marking is not known: nobody should guess a number there. */
    private static final String READ_FIRST = "only as tyre and rim are marked";

    private final Call call;
    private final Map<MountingPlace, Part> parts;
    private final List<String> lines = new ArrayList<>();
    private final Map<String, String> set = new LinkedHashMap<>();

    private BuildPressures(Call call, Map<MountingPlace, Part> parts) {
        this.call = call;
        this.parts = parts;
    }

    static BuildPressures of(Call call, Map<MountingPlace, Part> parts) {
        BuildPressures pressures = new BuildPressures(call, parts);
        Map<Measure, MeasureValue> derived = DerivedMeasures.after(LAYER, call.demands(), pressures.settled());
        pressures.addTyre(End.FRONT, MountingPlace.FRONT_TYRE, MountingPlace.FRONT_WHEEL, derived.get(Measure.FRONT_REFERENCE_PRESSURE),
                derived.get(Measure.FRONT_PRESSURE_FLOOR));
        pressures.addTyre(End.REAR, MountingPlace.REAR_TYRE, MountingPlace.REAR_WHEEL, derived.get(Measure.REAR_REFERENCE_PRESSURE),
                derived.get(Measure.REAR_PRESSURE_FLOOR));
        return pressures;
    }

    /** A line for each tyre whose width is known. */
    List<String> lines() {
        return lines;
    }

    /** What to set, by topic, for each tyre that has a line. */
    Map<String, String> set() {
        return set;
    }

    private Map<Topic, SettledTopic> settled() {
        Map<Topic, SettledTopic> out = new HashMap<>();
        for (Decision decision : call.decisions()) {
            boolean known = decision.status() == Status.SETTLED;
            out.put(decision.topic(), new SettledTopic(decision.topic(), known, known ? decision.value() : 0));
        }
        for (Topic pressure : List.of(Topics.FRONT_TYRE_PRESSURE, Topics.REAR_TYRE_PRESSURE)) {
            Topics.ofTyre(pressure).forEach(topic -> put(out, topic));
        }
        return out;
    }

    private void put(Map<Topic, SettledTopic> to, Topic topic) {
        TopicPlacement wanted = TopicPlacement.of(topic);
        Part part = parts.get(wanted.place());
        Long got = part == null && wanted.place().needed() ? null : wanted.got(part);
        to.put(topic, new SettledTopic(topic, got != null, got == null ? 0 : got));
    }

    private void addTyre(End end, MountingPlace tyre, MountingPlace wheel, MeasureValue reference, MeasureValue floor) {
        Part on = parts.get(tyre);
        if (on == null || reference == null) {
            return;
        }
        Topic topic = Topics.FRONT_TYRE_PRESSURE.at(end);
        Double most = most(on, parts.get(wheel));
        if (most == null) {
            set.put(topic.name(), READ_FIRST);
            lines.add(end.word() + ", " + on + ": read the highest pressure marked on tyre and rim before inflating it");
            return;
        }
        double ceiling = PressureSteps.down(most);
        double wanted = PressureSteps.nearest(topic.resolution().base(asDecided(topic, end, reference.mid())));
        double least = floor == null ? 0 : PressureSteps.up(topic.resolution().base(floor.mid()));
        String start = PressureSteps.text(Math.min(Math.max(wanted, least), ceiling), most);
        set.put(topic.name(), start);
        String text = end.word() + ", " + on + ": start from " + start;
        if (least > ceiling) {
            text += "; a floor against rim strikes of " + PressureSteps.text(least, null)
                    + " is above what is marked: these tyres are too narrow for the course";
        } else if (floor != null) {
            text += ", at least " + PressureSteps.text(least, most) + " against rim strikes";
        }
        if (wanted > ceiling) {
            text += "; the load needs " + PressureSteps.text(wanted, null) + ", more than is marked: mount a wider tyre";
        }
        lines.add(text + ", at most " + PressureSteps.text(ceiling, most) + " as marked");
    }

    /** The reference of these tyres, as far above or below as the call's pressure is to the reference of its own: wet, sand and aim count. */
    private long asDecided(Topic topic, End end, long reference) {
        MeasureValue own = call.demands().get(end == End.FRONT ? Measure.FRONT_REFERENCE_PRESSURE : Measure.REAR_REFERENCE_PRESSURE);
        Long decided = call.on(topic).value();
        return own == null || decided == null ? reference : Math.round((double) reference * decided / own.mid());
    }

    /** The lower marked pressure, Pa; null where either is not known. */
    static Double most(Part tyre, Part wheel) {
        Double one = tyre.number(PartDetail.MARKED_PRESSURE);
        Double other = wheel == null ? null : wheel.number(PartDetail.MARKED_PRESSURE);
        if (one == null || other == null) {
            return null;
        }
        double lower = Math.min(one, other);
        return Boolean.FALSE.equals(wheel.yes(PartDetail.HOOKLESS)) ? lower : Math.min(lower, RuleValue.HOOKLESS_PRESSURE.inBase());
    }
}
