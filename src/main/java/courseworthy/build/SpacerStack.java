package courseworthy.build;

import courseworthy.fit.FitResult;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.PartKind;
import courseworthy.workshop.Workshop;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Spacers under a stem.
 *
 * @param pieces what it is made of, those of the build first
 * @param known  false where it is not known that all of them go on the steerer
 */
record SpacerStack(List<SpacerPiece> pieces, boolean known) {

    /** Heights are compared in tenths of a millimetre (practice). */
    private static final double TICK = 0.0001;
    /** Higher stacks than any steerer is cut for, m, are left out (judgement, no source). */
    private static final double MOST = 0.15;
    /** Diameters closer than this are the same, m (judgement: standard sizes lie further apart). */
    private static final double SAME = 0.0005;

    SpacerStack {
        pieces = List.copyOf(pieces);
    }

    /**
     * One spacer, or several that cannot be parted.
     *
     * @param from   the part it belongs to
     * @param height m
     */
    record SpacerPiece(Part from, double height) {
    }

    double height() {
        double sum = 0;
        for (SpacerPiece piece : pieces) {
            sum += piece.height();
        }
        return sum;
    }

    /** The pieces of each part together: {@code 15 mm of race spacers}. */
    Map<Part, Double> byPart() {
        Map<Part, Double> out = new java.util.LinkedHashMap<>();
        for (SpacerPiece piece : pieces) {
            out.merge(piece.from(), piece.height(), Double::sum);
        }
        return out;
    }

    /**
     * Every height that can be put together, lowest first, from the spacers of a build, those that stand on the bike and those that lie
     * loose. Of several ways to one height the one that needs least from farther off: the build's, then what stands there, then loose ones
     * known to fit, then others.
     *
     * @param built the spacers of the build; null for none
     */
    static List<SpacerStack> all(Workshop workshop, Part bike, Part fork, Part built) {
        TreeMap<Long, SpacerStack> out = new TreeMap<>();
        out.put(0L, new SpacerStack(List.of(), true));
        for (Part part : inReach(workshop, bike, fork, built)) {
            boolean known = part.bike() == bike || fits(part, fork).fits();
            for (SpacerPiece piece : pieces(part)) {
                add(out, piece, known);
            }
        }
        return List.copyOf(out.values());
    }

    private static void add(TreeMap<Long, SpacerStack> to, SpacerPiece piece, boolean known) {
        List<SpacerStack> before = new ArrayList<>(to.values());
        for (SpacerStack each : before) {
            List<SpacerPiece> pieces = new ArrayList<>(each.pieces);
            pieces.add(piece);
            SpacerStack higher = new SpacerStack(pieces, each.known && known);
            if (higher.height() <= MOST) {
                to.putIfAbsent(Math.round(higher.height() / TICK), higher);
            }
        }
    }

    private static List<Part> inReach(Workshop workshop, Part bike, Part fork, Part built) {
        List<Part> mounted = new ArrayList<>();
        List<Part> known = new ArrayList<>();
        List<Part> others = new ArrayList<>();
        for (Part part : workshop.parts()) {
            if (part.kind() != PartKind.SPACERS || !part.owned() || !part.has(PartDetail.HEIGHT)) {
                continue;
            }
            if (part == built) {
                mounted.add(0, part);
            } else if (part.bike() == bike) {
                mounted.add(part);
            } else if (part.on() == null && fits(part, fork).result() != FitResult.FitVerdict.DOES_NOT_FIT) {
                (fits(part, fork).fits() ? known : others).add(part);
            }
        }
        mounted.addAll(known);
        mounted.addAll(others);
        return mounted;
    }

    private static FitResult fits(Part spacers, Part fork) {
        Double one = spacers.number(PartDetail.STEERER_CLAMP);
        Double other = fork == null ? null : fork.number(PartDetail.STEERER_CLAMP);
        if (one == null || other == null) {
            return new FitResult(FitResult.FitVerdict.UNKNOWN, "measure the steerer clamp of " + (one == null || fork == null ? spacers : fork));
        }
        return Math.abs(one - other) < SAME ? FitResult.FITS : new FitResult(FitResult.FitVerdict.DOES_NOT_FIT, "");
    }

    private static List<SpacerPiece> pieces(Part spacers) {
        List<SpacerPiece> out = new ArrayList<>();
        if (spacers.has(PartDetail.PIECES)) {
            for (double height : spacers.sizes(PartDetail.PIECES)) {
                out.add(new SpacerPiece(spacers, height));
            }
        } else if (spacers.number(PartDetail.HEIGHT) > 0) {
            out.add(new SpacerPiece(spacers, spacers.number(PartDetail.HEIGHT)));
        }
        return out;
    }

    /** What to measure so that it is known whether all pieces go on; empty where it is known. */
    String toMeasure(Part bike, Part fork) {
        for (SpacerPiece piece : pieces) {
            if (piece.from().bike() != bike && !fits(piece.from(), fork).fits()) {
                return fits(piece.from(), fork).words();
            }
        }
        return "";
    }
}
