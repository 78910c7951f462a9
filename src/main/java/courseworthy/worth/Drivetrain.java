package courseworthy.worth;

import courseworthy.engine.GearPairs;
import java.util.ArrayList;
import java.util.List;

/**
 * Chainrings and a cassette.
 *
 * @param rings     teeth, the larger first
 * @param sprockets teeth, the smallest first
 */
public record Drivetrain(List<Integer> rings, List<Integer> sprockets) {

    /** Sprockets left out at the far end of each ring, where the chain runs crossed (common practice, no source). */
    private static final int CROSSED = 2;

    public Drivetrain {
        rings = List.copyOf(rings);
        sprockets = List.copyOf(sprockets);
    }

    static Drivetrain of(GearPairs.Teeth teeth) {
        return new Drivetrain(teeth.rings(), teeth.sprockets());
    }

    /**
     * The gears as they are ridden, the easiest first: with two rings the larger on all but its two largest sprockets, and the smaller where
     * that is easier still (practice).
     */
    public List<Gear> used() {
        List<Gear> out = new ArrayList<>();
        int onLarge = rings.size() == 1 ? sprockets.size() : sprockets.size() - CROSSED;
        for (int i = 0; i < onLarge; i++) {
            out.add(0, new Gear(rings.get(0), sprockets.get(i)));
        }
        double easiestOnLarge = out.get(0).ratio();
        for (int i = 0; rings.size() > 1 && i < sprockets.size(); i++) {
            Gear gear = new Gear(rings.get(1), sprockets.get(i));
            if (gear.ratio() < easiestOnLarge) {
                out.add(0, gear);
            }
        }
        return out;
    }

    public Gear easiest() {
        return new Gear(rings.get(rings.size() - 1), sprockets.get(sprockets.size() - 1));
    }

    public Gear hardest() {
        return new Gear(rings.get(0), sprockets.get(0));
    }

    /** Largest step between neighbouring sprockets, 0.2 for 20 %. */
    public double largestStep() {
        double largest = 0;
        for (int i = 1; i < sprockets.size(); i++) {
            largest = Math.max(largest, (double) sprockets.get(i) / sprockets.get(i - 1) - 1);
        }
        return largest;
    }

    /** Whether another is at least as good in easiest gear, hardest gear and largest step, and better in one of them. */
    boolean beatenBy(Drivetrain other) {
        double easier = easiest().ratio() - other.easiest().ratio();
        double harder = other.hardest().ratio() - hardest().ratio();
        double closer = largestStep() - other.largestStep();
        return easier >= 0 && harder >= 0 && closer >= 0 && easier + harder + closer > 0;
    }

    /** {@code 34 with 10-50}, {@code 46/30 with 11-34}. */
    public String teeth() {
        String large = rings.size() > 1 ? rings.get(0) + "/" + rings.get(1) : String.valueOf(rings.get(0));
        return large + " with " + sprockets.get(0) + "-" + sprockets.get(sprockets.size() - 1);
    }
}
