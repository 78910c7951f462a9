package courseworthy.engine;

import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.List;
import org.kie.api.definition.type.ClassReactive;

/** The gears that exist: chainrings and cassettes that are ridden together. */
@ClassReactive
public final class GearPairs {

    /**
     * Chainrings and a cassette on a kind of bike.
     *
     * @param bike         the kind
     * @param chainrings   one or two
     * @param easiest      smallest ring over largest sprocket, in ticks of the topic
     * @param easiestTeeth the same as teeth
     * @param hardest      largest ring over smallest sprocket, in ticks of the topic
     * @param hardestTeeth the same as teeth
     * @param step         largest step between neighbouring sprockets, in ticks of the topic
     * @param cassette     the cassette in words
     * @param teeth        all of them
     */
    record GearPair(String bike, String chainrings, long easiest, String easiestTeeth, long hardest, String hardestTeeth, long step,
            String cassette, Teeth teeth) {

        boolean isOn(String kind, String rings) {
            return bike.equals(kind) && chainrings.equals(rings);
        }
    }

    /**
     * Rings and sprockets that are ridden together.
     *
     * @param rings     teeth, the larger ring first
     * @param sprockets teeth, the smallest first
     */
    public record Teeth(List<Integer> rings, List<Integer> sprockets) {

        public Teeth {
            rings = List.copyOf(rings);
            sprockets = List.copyOf(sprockets);
        }
    }

    /**
     * Gears that exist together on a kind of bike, in ticks of their topics.
     *
     * @param chainrings one or two
     */
    public record Drive(String bike, String chainrings, long easiest, long hardest, long step) {
    }

    /** What is left of the pairs within a limit. */
    private record Limited(long most, GearPairs left) {
    }

    private final List<GearPair> pairs;
    /** The limit asked for last: rules are asked many times over for a day of one event. */
    private volatile Limited last;

    public GearPairs(List<GearPair> pairs) {
        this.pairs = List.copyOf(pairs);
    }

    List<GearPair> pairs() {
        return pairs;
    }

    /** All there are, in the order of the table. */
    public List<Drive> drives() {
        List<Drive> out = new ArrayList<>();
        for (GearPair pair : pairs) {
            out.add(new Drive(pair.bike(), pair.chainrings(), pair.easiest(), pair.hardest(), pair.step()));
        }
        return out;
    }

    /**
     * The same with the smallest sprockets left out that make a gear harder than allowed: blocked off, or of a cassette made for a limit. Pairs of
     * which no two sprockets are left, or no hardest gear within the bounds of its topic, are left out.
     *
     * @param most the hardest gear allowed, in ticks of the topic; null where there is no limit
     */
    public GearPairs within(Long most) {
        if (most == null) {
            return this;
        }
        Limited known = last;
        if (known == null || known.most() != most) {
            known = new Limited(most, limited(most));
            last = known;
        }
        return known.left();
    }

    private GearPairs limited(long most) {
        if (pairs.stream().allMatch(pair -> pair.hardest() <= most)) {
            return this;
        }
        List<GearPair> out = new ArrayList<>();
        for (GearPair pair : pairs) {
            GearPair within = pair.hardest() <= most ? pair : shortened(pair, most);
            if (within != null) {
                out.add(within);
            }
        }
        return new GearPairs(out);
    }

    /** The hardest gear that an event allows, in ticks of the topic; null where it names none. */
    public static Long allowed(Demands demands) {
        MeasureValue most = demands.get(Measure.HARDEST_GEAR_ALLOWED);
        return most == null ? null : Long.valueOf(most.low());
    }

    private static GearPair shortened(GearPair pair, long most) {
        int large = pair.teeth().rings().get(0);
        List<Integer> left = pair.teeth().sprockets().stream().filter(sprocket -> GearPairsReader.hardest(large, sprocket) <= most).toList();
        if (left.size() < 2 || GearPairsReader.hardest(large, left.get(0)) < Topics.HARDEST_GEAR.least()) {
            return null;
        }
        int first = left.get(0);
        return new GearPair(pair.bike(), pair.chainrings(), pair.easiest(), pair.easiestTeeth(), GearPairsReader.hardest(large, first), large + "x" + first,
                GearPairsReader.largestStep(left), pair.cassette() + " from " + first, new Teeth(pair.teeth().rings(), left));
    }

    /** All that are ridden on a kind of bike, in the order of the table. */
    public List<Teeth> on(String bike) {
        List<Teeth> out = new ArrayList<>();
        for (GearPair pair : pairs) {
            if (pair.bike().equals(bike)) {
                out.add(pair.teeth());
            }
        }
        return out;
    }

    /** Those with an easiest and a hardest gear and a largest step, in ticks of the topics; the order is the table's. */
    public List<Teeth> with(String bike, long easiest, long hardest, long step) {
        List<Teeth> out = new ArrayList<>();
        for (GearPair pair : pairs) {
            if (pair.bike().equals(bike) && pair.easiest() == easiest && pair.hardest() == hardest && pair.step() == step) {
                out.add(pair.teeth());
            }
        }
        return out;
    }

    /** The easiest gears there are on a kind of bike with one or two chainrings. */
    public AvailableValues easiest(String bike, String chainrings) {
        AvailableValues.ValueAccumulator out = new AvailableValues.ValueAccumulator();
        for (GearPair pair : pairs) {
            if (pair.isOn(bike, chainrings)) {
                out.add(pair.easiest(), pair.easiestTeeth());
            }
        }
        return out.existing();
    }

    /** The hardest gears that come with an easiest gear. */
    public AvailableValues hardest(String bike, String chainrings, long easiest) {
        AvailableValues.ValueAccumulator out = new AvailableValues.ValueAccumulator();
        for (GearPair pair : pairs) {
            if (pair.isOn(bike, chainrings) && pair.easiest() == easiest) {
                out.add(pair.hardest(), pair.hardestTeeth());
            }
        }
        return out.existing();
    }

    /** The largest steps of the cassettes that give both end gears. */
    public AvailableValues steps(String bike, String chainrings, long easiest, long hardest) {
        AvailableValues.ValueAccumulator out = new AvailableValues.ValueAccumulator();
        for (GearPair pair : pairs) {
            if (pair.isOn(bike, chainrings) && pair.easiest() == easiest && pair.hardest() == hardest) {
                out.add(pair.step(), pair.cassette());
            }
        }
        return out.existing();
    }
}
