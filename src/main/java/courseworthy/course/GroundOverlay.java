package courseworthy.course;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Lays what a profile says over what a map says of the same track: what the profile gives counts, and the map fills in what is not. */
final class GroundOverlay {

    /** Shorter pieces are left over from rounding, m. */
    private static final double SLIVER = 0.5;

    private GroundOverlay() {
    }

    /**
     * The stretches of both, cut where either ends.
     *
     * @param written  of a profile, as long together as {@code surveyed}
     * @param surveyed of a map
     */
    static List<Stretch> of(List<Stretch> written, List<Stretch> surveyed) {
        List<Stretch> out = new ArrayList<>();
        int at = 0;
        double start = 0;
        double end = surveyed.get(0).length();
        double from = 0;
        for (Stretch own : written) {
            double to = from + own.length();
            double done = from;
            while (at < surveyed.size() - 1 && end < to - SLIVER) {
                if (end > done + SLIVER) {
                    out.add(part(own, surveyed.get(at), end - done));
                    done = end;
                }
                start = end;
                end = start + surveyed.get(++at).length();
            }
            out.add(part(own, surveyed.get(at), to - done));
            from = to;
        }
        return out;
    }

    private static Stretch part(Stretch own, Stretch map, double length) {
        double share = length / own.length();
        Double up = own.ascent() == null ? null : Double.valueOf(own.ascent() * share);
        Double down = own.descent() == null ? null : Double.valueOf(own.descent() * share);
        if (own.origin() != null) {
            return own.over(length, up, down);
        }
        Map<String, String> written = GroundPairs.of(own.ground());
        Map<String, String> both = new LinkedHashMap<>(GroundPairs.of(map.ground()));
        both.remove("water crossings");
        both.putAll(written);
        boolean agree = GroundPairs.agree(both);
        List<Ground> alternatives = new ArrayList<>(own.alternatives());
        for (Ground other : map.alternatives()) {
            Map<String, String> values = new LinkedHashMap<>(GroundPairs.of(other));
            values.putAll(written);
            Ground filled = agree && GroundPairs.agree(values) ? GroundPairs.ground(values) : own.ground();
            if (agree && !GroundPairs.of(filled).equals(both) && !alternatives.contains(filled)) {
                alternatives.add(filled);
            }
        }
        return new Stretch(length, up, down, own.steepest() == null ? map.steepest() : own.steepest(),
                agree ? GroundPairs.ground(both) : own.ground(), alternatives, map.origin(), own.line())
                .passed(own.passage() == null ? map.passage() : own.passage());
    }
}
