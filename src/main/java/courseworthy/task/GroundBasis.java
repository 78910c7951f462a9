package courseworthy.task;

import courseworthy.course.GroundCertainty;
import courseworthy.course.Ground;
import courseworthy.course.GroundOrigin;
import courseworthy.course.GroundPairs;
import courseworthy.course.Stretch;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Where the ground of a course comes from, of which a map gave some.
 *
 * @param mapped    m whose ground stands on the map
 * @param inferred  m of which something was inferred from the map, or that may be one of several
 * @param written   m whose ground a person wrote
 * @param unknown   m of which nothing is known
 * @param rules     that inferred something, in the order of the course
 * @param stretches each with its place
 */
public record GroundBasis(double mapped, double inferred, double written, double unknown, List<String> rules, List<GroundBasisPiece> stretches) {

    public GroundBasis {
        rules = List.copyOf(rules);
        stretches = List.copyOf(stretches);
    }

    /**
     * A stretch of a course.
     *
     * @param from   m from the start
     * @param to     m from the start
     * @param way    name or number of the way; empty where there is none for sure
     * @param kind   where its ground comes from
     * @param ground by key, as a profile writes it
     * @param mayBe  what else it may be, each by key, without what it has in common with {@code ground}
     */
    public record GroundBasisPiece(double from, double to, String way, Kind kind, Map<String, String> ground, List<Map<String, String>> mayBe) {

        public GroundBasisPiece {
            mayBe = List.copyOf(mayBe);
        }

        static GroundBasisPiece of(Stretch stretch, double from, Kind kind) {
            Map<String, String> ground = GroundPairs.of(stretch.ground());
            List<Map<String, String>> mayBe = new ArrayList<>();
            for (Ground other : stretch.alternatives()) {
                Map<String, String> differs = new LinkedHashMap<>(GroundPairs.of(other));
                differs.entrySet().removeIf(each -> each.getValue().equals(ground.get(each.getKey())));
                mayBe.add(differs);
            }
            return new GroundBasisPiece(from, from + stretch.length(), stretch.origin() == null ? "" : stretch.origin().way(), kind, ground, mayBe);
        }
    }

    /** Where the ground of a stretch comes from. */
    public enum Kind {
        MAPPED, INFERRED, WRITTEN, UNKNOWN;

        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /** Null where no stretch comes from a map. */
    static GroundBasis of(List<Stretch> stretches) {
        double[] lengths = new double[Kind.values().length];
        Set<String> rules = new LinkedHashSet<>();
        List<GroundBasisPiece> pieces = new ArrayList<>();
        boolean any = false;
        double from = 0;
        for (Stretch stretch : stretches) {
            Kind kind = kind(stretch);
            GroundOrigin origin = stretch.origin();
            any |= origin != null;
            lengths[kind.ordinal()] += stretch.length();
            if (kind == Kind.INFERRED && origin != null) {
                rules.addAll(origin.inferred().keySet());
            }
            pieces.add(GroundBasisPiece.of(stretch, from, kind));
            from += stretch.length();
        }
        return !any ? null : new GroundBasis(lengths[Kind.MAPPED.ordinal()], lengths[Kind.INFERRED.ordinal()], lengths[Kind.WRITTEN.ordinal()],
                lengths[Kind.UNKNOWN.ordinal()], List.copyOf(rules), pieces);
    }

    private static Kind kind(Stretch stretch) {
        return switch (GroundCertainty.ofWhatIsKnown(stretch)) {
            case MAPPED -> Kind.MAPPED;
            case INFERRED -> Kind.INFERRED;
            case WRITTEN, ASSUMED -> Kind.WRITTEN;
            case UNKNOWN -> Kind.UNKNOWN;
        };
    }
}
