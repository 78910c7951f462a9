package courseworthy.course.matching;

import courseworthy.course.extract.MapWay;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** How much of the length of routes was matched with the right ground. */
final class MatchScore {

    static final List<String> KEYS = List.of("surface", "smoothness", "tracktype", "mtb:scale");

    private double length;
    private double rightWay;
    private double right;
    private final double[] rightValue = new double[KEYS.size()];
    private double tagged;
    private double taggedRight;
    private double sure;
    private double sureWrong;
    private double gone;
    private double goneSureWrong;
    private double noise;
    private int matches;
    /** Length and length on the right way, by kind of way. */
    private final Map<String, double[]> kinds = new TreeMap<>();
    private final Map<String, double[]> surfaces = new TreeMap<>();

    /**
     * Compares a match with the truth.
     *
     * @param at      m along the matched track of each point of the route
     * @param removed ids of ways that were not on the map
     */
    void add(KnownRoute truth, double[] at, MatchedTrack matched, Set<Long> removed) {
        noise += matched.noise();
        matches++;
        List<MatchedPiece> pieces = matched.pieces();
        int piece = 0;
        for (int i = 0; i < truth.way().length; i++) {
            while (piece + 1 < pieces.size() && pieces.get(piece).to() <= (at[i] + at[i + 1]) / 2) {
                piece++;
            }
            add(truth.way()[i], truth.step(i), pieces.get(piece), removed.contains(truth.way()[i].id()));
        }
    }

    private void add(MapWay way, double step, MatchedPiece piece, boolean removed) {
        MapWay found = piece.way();
        boolean same = found != null && KEYS.stream().allMatch(key -> way.tag(key).equals(found.tag(key)));
        boolean sameWay = found != null && found.id() == way.id();
        length += step;
        right += same ? step : 0;
        rightWay += sameWay ? step : 0;
        sure += piece.sure() ? step : 0;
        sureWrong += piece.sure() && !same ? step : 0;
        if (!way.tag("surface").isEmpty()) {
            tagged += step;
            taggedRight += same ? step : 0;
        }
        for (int k = 0; k < KEYS.size(); k++) {
            rightValue[k] += found != null && way.tag(KEYS.get(k)).equals(found.tag(KEYS.get(k))) ? step : 0;
        }
        gone += removed ? step : 0;
        goneSureWrong += removed && piece.sure() && !same ? step : 0;
        for (String kind : kinds(way)) {
            double[] sums = kinds.computeIfAbsent(kind, key -> new double[2]);
            sums[0] += step;
            sums[1] += sameWay ? step : 0;
        }
        surfaces.computeIfAbsent(way.tag("surface"), key -> new double[2])[0] += step;
        surfaces.computeIfAbsent(found == null ? "" : found.tag("surface"), key -> new double[2])[1] += step;
    }

    private static List<String> kinds(MapWay way) {
        String bridge = way.tag("bridge").isEmpty() ? "" : "bridge";
        String tunnel = way.tag("tunnel").isEmpty() ? "" : "tunnel";
        String round = way.tag("junction").equals("roundabout") ? "roundabout" : "";
        String oneway = way.tag("oneway").equals("yes") ? "one-way" : "";
        return Arrays.asList(way.tag("highway"), bridge, tunnel, round, oneway).stream().filter(kind -> !kind.isEmpty()).toList();
    }

    void add(MatchScore other) {
        length += other.length;
        rightWay += other.rightWay;
        right += other.right;
        tagged += other.tagged;
        taggedRight += other.taggedRight;
        sure += other.sure;
        sureWrong += other.sureWrong;
        gone += other.gone;
        goneSureWrong += other.goneSureWrong;
        noise += other.noise;
        matches += other.matches;
        Arrays.setAll(rightValue, k -> rightValue[k] + other.rightValue[k]);
        other.kinds.forEach((kind, sums) -> Arrays.setAll(kinds.computeIfAbsent(kind, key -> new double[2]), i -> kinds.get(kind)[i] + sums[i]));
        other.surfaces.forEach((kind, sums) -> Arrays.setAll(surfaces.computeIfAbsent(kind, key -> new double[2]), i -> surfaces.get(kind)[i] + sums[i]));
    }

    double kilometres() {
        return length / 1000;
    }

    /** Share of the length with all four tags right. */
    double right() {
        return right / length;
    }

    /** The same where a surface is mapped. */
    double rightWhereTagged() {
        return taggedRight / tagged;
    }

    /** The same where none is; NaN where there is no such length. */
    double rightWhereUntagged() {
        return (right - taggedRight) / (length - tagged);
    }

    double sure() {
        return sure / length;
    }

    /** Share of what is sure that has another tag than it should. */
    double wrongOfSure() {
        return sure > 0 ? sureWrong / sure : 0;
    }

    /** Share of the length whose way was removed from the map that is sure and wrong. */
    double goneButSure() {
        return goneSureWrong / gone;
    }

    double noise() {
        return noise / matches;
    }

    /** Largest difference of the share of a surface between truth and match. */
    double surfaceError() {
        return surfaces.values().stream().mapToDouble(sums -> Math.abs(sums[0] - sums[1]) / length).max().orElse(0);
    }

    /** Share of the length on the right way by kind of way. */
    String byKind() {
        StringBuilder out = new StringBuilder();
        kinds.forEach((kind, sums) -> out.append(String.format(Locale.ROOT, "%s %.3f (%.1f km)  ", kind, sums[1] / sums[0], sums[0] / 1000)));
        return out.toString().strip();
    }

    @Override
    public String toString() {
        String all = String.format(Locale.ROOT, "all four %.4f (tagged %.4f, untagged %.4f)", right(), rightWhereTagged(), rightWhereUntagged());
        String each = "";
        for (int k = 0; k < KEYS.size(); k++) {
            each += String.format(Locale.ROOT, " %s %.4f", KEYS.get(k), rightValue[k] / length);
        }
        return all + String.format(Locale.ROOT, "%s way %.3f | sure %.3f, wrong %.4f | noise %.1f m%s", each, rightWay / length, sure(), wrongOfSure(), noise(),
                gone > 0 ? String.format(Locale.ROOT, " | removed: sure and wrong %.3f", goneButSure()) : "");
    }
}
