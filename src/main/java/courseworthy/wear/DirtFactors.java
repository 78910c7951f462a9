package courseworthy.wear;

import java.util.Map;

/**
 * How much faster dirt wears what it gets into.
 *
 * @param byGoing for dry, damp and wet
 * @param mud     where the whole way is mud
 */
public record DirtFactors(Map<String, IntervalBounds> byGoing, IntervalBounds mud) {

    private static final String DRY = "dry";
    private static final String DAMP = "damp";

    public DirtFactors {
        byGoing = Map.copyOf(byGoing);
    }

    /**
     * The factor on an hour.
     *
     * @param going null where it is not known: then it was dry or damp
     * @param share of the way in mud; null for none
     * @param felt  share of it that a part feels
     */
    IntervalBounds on(String going, Double share, double felt) {
        double low = byGoing.get(going == null ? DRY : going).low();
        double high = byGoing.get(going == null ? DAMP : going).high();
        double muddy = share == null ? 0 : share;
        return new IntervalBounds(felt(low * muddied(mud.low(), muddy), felt), felt(high * muddied(mud.high(), muddy), felt));
    }

    private static double muddied(double factor, double share) {
        return 1 + share * (factor - 1);
    }

    private static double felt(double factor, double share) {
        return 1 + share * (factor - 1);
    }
}
