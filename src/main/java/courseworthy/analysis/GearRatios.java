package courseworthy.analysis;

import courseworthy.engine.GearPairs.Drive;
import courseworthy.engine.ShippedRules;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Gears are asked for as ranges, and only some exist: those of chainrings and cassettes that are ridden together on a kind of bike. */
final class GearRatios {

    private static final List<Topic> OF_PAIRS = List.of(Topics.EASIEST_GEAR, Topics.HARDEST_GEAR, Topics.LARGEST_STEP);

    private final VariableTable things;
    private List<Drive> drives;

    GearRatios(VariableTable things) {
        this.things = things;
    }

    /** Parts of a box, each with gears that exist together, the first few of them; the box alone where it asks for no gears. */
    List<Box> existing(Box box, int most) {
        if (!asked(box)) {
            return List.of(box);
        }
        if (drives == null) {
            drives = ShippedRules.realPairs().drives();
        }
        List<Box> out = new ArrayList<>();
        for (Drive drive : drives) {
            Box with = out.size() < most ? with(box, drive) : null;
            if (with != null) {
                out.add(with);
            }
        }
        return out;
    }

    private static boolean asked(Box box) {
        for (int i = 0; i < box.size(); i++) {
            if (box.thing(i).asked() instanceof Topic topic && OF_PAIRS.contains(topic)) {
                return true;
            }
        }
        return false;
    }

    /** Null where the box asks for other gears. */
    private Box with(Box box, Drive drive) {
        Topic bike = Topics.BIKE;
        Topic rings = Topics.CHAINRINGS;
        Map<Topic, Long> gears = Map.of(bike, (long) bike.option(drive.bike()), rings, (long) rings.option(drive.chainrings()),
                Topics.EASIEST_GEAR, drive.easiest(), Topics.HARDEST_GEAR, drive.hardest(), Topics.LARGEST_STEP, drive.step());
        Box out = box;
        for (Topic topic : Topics.all()) {
            Long value = gears.get(topic);
            out = value == null || out == null ? out : out.and(Box.of(things.of(topic), ValueSet.of(value, value)));
        }
        return out;
    }
}
