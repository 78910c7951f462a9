package courseworthy.course.ground;

import courseworthy.course.Ground;
import courseworthy.course.GroundOrigin;
import courseworthy.course.GroundPairs;
import courseworthy.course.Passage;
import courseworthy.course.Stretch;
import courseworthy.course.Surface;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A piece of a track on ground of one kind, as it is put together from what the map says. */
final class GroundPiece {

    /** So many ways are named; more are counted. */
    private static final int MOST_NAMES = 3;
    /** So many fords a profile takes on a stretch, and each so long, m. */
    private static final int MOST_CROSSINGS = 100;
    private static final double SHORTEST_FORD = 2;
    static final String CROSSINGS = "water crossings";

    /** m along the track. */
    final double from;
    final double to;
    /** Without water crossings, which are counted apart. */
    final TaggedGround tagged;
    final Ground ground;
    /** Names or numbers of its ways. */
    final Set<String> ways;
    final boolean matched;
    /** How it is passed; null where it is ridden. */
    final Passage passage;
    final int crossings;
    /** Steepest gradient by an incline tag, as a fraction; null where there is none. */
    final Double steepest;

    private GroundPiece(double from, double to, TaggedGround tagged, Set<String> ways, boolean matched, Passage passage, int crossings, Double steepest) {
        this.from = from;
        this.to = to;
        this.tagged = tagged;
        this.ground = GroundPairs.ground(tagged.likely());
        this.ways = ways;
        this.matched = matched;
        this.passage = passage;
        this.crossings = crossings;
        this.steepest = steepest;
    }

    /** A piece of which the map says nothing for sure. */
    static GroundPiece unmatched(double from, double to) {
        return new GroundPiece(from, to, TaggedGround.UNKNOWN, Set.of(), false, null, 0, null);
    }

    /** A piece on one of several ways. */
    static GroundPiece unsure(double from, double to, InferredGround mayBe) {
        return new GroundPiece(from, to, new TaggedGround(Map.of(), List.of(mayBe)), Set.of(), false, null, 0, null);
    }

    /** A piece on a way. */
    static GroundPiece on(double from, double to, String way, Map<String, String> tags, TaggedGround tagged) {
        Map<String, String> mapped = new LinkedHashMap<>(tagged.mapped());
        int crossings = mapped.remove(CROSSINGS) == null ? 0 : 1;
        return new GroundPiece(from, to, new TaggedGround(mapped, tagged.inferred()), Set.of(way), true, PassageTags.of(tags), crossings,
                InclineTag.steepest(tags.get("incline")));
    }

    GroundPiece crossed(int more) {
        return new GroundPiece(from, to, tagged, ways, matched, passage, crossings + more, steepest);
    }

    /** This ground from the start of the first to the end of the last of two neighbours, of which this is one. */
    GroundPiece with(GroundPiece neighbour) {
        Set<String> names = new LinkedHashSet<>(ways);
        if (neighbour.tagged.equals(tagged)) {
            names.addAll(neighbour.ways);
        }
        Double steep = steepest == null ? neighbour.steepest : neighbour.steepest == null ? steepest
                : Double.valueOf(Math.max(steepest, neighbour.steepest));
        TaggedGround joined = matched || neighbour.matched ? tagged : tagged.either(neighbour.tagged);
        return new GroundPiece(Math.min(from, neighbour.from), Math.max(to, neighbour.to), joined, names, matched, passage,
                crossings + neighbour.crossings, steep);
    }

    double length() {
        return to - from;
    }

    Surface.Family family() {
        return ground.surface() == null ? null : ground.surface().family();
    }

    /** A stretch without climbing. */
    Stretch stretch() {
        Map<String, String> mapped = new LinkedHashMap<>(tagged.mapped());
        Map<String, String> likely = tagged.likely();
        int fords = (int) Math.min(Math.min(crossings, MOST_CROSSINGS), length() / SHORTEST_FORD);
        if (fords > 0) {
            mapped.put(CROSSINGS, Integer.toString(fords));
            likely.put(CROSSINGS, Integer.toString(fords));
        }
        Map<String, Map<String, String>> inferred = new LinkedHashMap<>();
        List<Ground> alternatives = new ArrayList<>();
        for (InferredGround each : tagged.inferred()) {
            inferred.put(each.rule(), each.gives());
            for (Map<String, String> other : each.mayBe()) {
                Map<String, String> values = new LinkedHashMap<>(likely);
                values.putAll(other);
                alternatives.add(GroundPairs.ground(values));
            }
        }
        GroundOrigin origin = new GroundOrigin(names(), mapped, inferred);
        return new Stretch(length(), null, null, steepest, GroundPairs.ground(likely), alternatives, origin, 0).passed(passage);
    }

    private String names() {
        List<String> all = List.copyOf(ways);
        return all.size() <= MOST_NAMES ? String.join(", ", all)
                : String.join(", ", all.subList(0, MOST_NAMES)) + " and " + (all.size() - MOST_NAMES) + " more";
    }
}
