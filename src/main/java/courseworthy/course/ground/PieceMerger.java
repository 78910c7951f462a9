package courseworthy.course.ground;

import courseworthy.course.Ground;
import courseworthy.course.Smoothness;
import courseworthy.course.Surface;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Joins pieces that are too short to be worth a stretch of their own to a neighbour. Pieces that a rider must know of are kept, however
 * short: sand and mud, what is passed on foot or by ferry, what is harder, much rougher or looser than both neighbours.
 */
final class PieceMerger {

    /** Shorter pieces are joined, m. */
    static final double SHORT = 100;
    /** So short a piece that was not matched for sure lies at a junction, m (judgement: about twice the width of a main road and its verges). */
    static final double JUNCTION = 30;
    /** A shorter piece is joined whatever it is, m: no profile takes a stretch under 1 m. */
    private static final double LEAST = 2;
    /** On foot for less is a matter of seconds, m (judgement). */
    private static final double PASSED = 5;
    /** A steeper piece is kept. */
    private static final double STEEP = 0.12;

    private final List<GroundPiece> pieces;

    private PieceMerger(List<GroundPiece> pieces) {
        this.pieces = new ArrayList<>(pieces);
    }

    /** The same track in fewer pieces. */
    static List<GroundPiece> merged(List<GroundPiece> pieces) {
        PieceMerger merger = new PieceMerger(pieces);
        merger.joinAlike();
        merger.joinShort();
        return List.copyOf(merger.pieces);
    }

    /** Joins neighbours on the same ground, and those that are both not sure. */
    private void joinAlike() {
        for (int i = pieces.size() - 1; i > 0; i--) {
            GroundPiece before = pieces.get(i - 1);
            GroundPiece after = pieces.get(i);
            boolean alike = before.tagged.equals(after.tagged) || !before.matched;
            if (alike && before.matched == after.matched && Objects.equals(before.passage, after.passage)) {
                pieces.set(i - 1, before.with(after));
                pieces.remove(i);
            }
        }
    }

    /** Joins the shortest first, so that what grows past the limit stays. */
    private void joinShort() {
        int at = shortest();
        while (at >= 0) {
            int into = neighbour(at);
            pieces.set(into, pieces.get(into).with(pieces.get(at)));
            pieces.remove(at);
            joinAlike();
            at = shortest();
        }
    }

    /** The shortest piece that can be joined to a neighbour; -1 where there is none. */
    private int shortest() {
        int out = -1;
        for (int i = 0; i < pieces.size(); i++) {
            double length = pieces.get(i).length();
            if (length < SHORT && (out < 0 || length < pieces.get(out).length()) && pieces.size() > 1 && mayGo(i)) {
                out = i;
            }
        }
        return out;
    }

    private GroundPiece at(int i) {
        return i >= 0 && i < pieces.size() ? pieces.get(i) : null;
    }

    private boolean mayGo(int i) {
        GroundPiece piece = pieces.get(i);
        GroundPiece before = at(i - 1);
        GroundPiece after = at(i + 1);
        if (piece.length() < LEAST) {
            return true;
        }
        if (!piece.matched) {
            boolean same = before != null && after != null && before.tagged.equals(after.tagged);
            return same || piece.length() < JUNCTION;
        }
        boolean known = before != null && before.matched || after != null && after.matched;
        return known && !standsOut(piece, before, after);
    }

    /** Whether a rider must know of a piece for what it is. */
    private static boolean standsOut(GroundPiece piece, GroundPiece before, GroundPiece after) {
        boolean passed = piece.passage != null && piece.length() >= PASSED;
        boolean soft = piece.family() == Surface.Family.SOFT || passed || piece.steepest != null && piece.steepest >= STEEP;
        return soft || beyond(piece, before) && beyond(piece, after);
    }

    /** Whether a piece is harder, much rougher or looser than a neighbour; there is none beyond the ends of the track. */
    private static boolean beyond(GroundPiece piece, GroundPiece neighbour) {
        if (neighbour == null || !neighbour.matched) {
            return true;
        }
        Ground one = piece.ground;
        Ground other = neighbour.ground;
        boolean harder = one.mtbScale() != null && one.mtbScale() >= 1 && (other.mtbScale() == null || one.mtbScale() > other.mtbScale());
        boolean rougher = rank(one.smoothness()) >= rank(other.smoothness()) + 2 && rank(one.smoothness()) > Smoothness.INTERMEDIATE.ordinal();
        boolean softer = one.trackGrade() != null && one.trackGrade() >= 4 && (other.trackGrade() == null || other.trackGrade() < one.trackGrade());
        return harder || rougher || softer || looseness(piece.family()) > looseness(neighbour.family());
    }

    private static int rank(Smoothness smoothness) {
        return smoothness == null ? Smoothness.GOOD.ordinal() : smoothness.ordinal();
    }

    /** Paved, bound and unbound, earth, rock. */
    private static int looseness(Surface.Family family) {
        return family == null ? 0 : switch (family) {
            case PAVED -> 0;
            case FIRM -> 1;
            case GRAVEL, EARTH -> 2;
            case ROCK -> 3;
            case SOFT -> 4;
        };
    }

    /** The neighbour a piece is joined to: a matched one, on alike ground, the longer one. */
    private int neighbour(int i) {
        GroundPiece before = at(i - 1);
        GroundPiece after = at(i + 1);
        if (before == null || after == null) {
            return before == null ? i + 1 : i - 1;
        }
        int one = likeness(pieces.get(i), before);
        int other = likeness(pieces.get(i), after);
        return one > other || one == other && before.length() >= after.length() ? i - 1 : i + 1;
    }

    private static int likeness(GroundPiece piece, GroundPiece neighbour) {
        if (!neighbour.matched) {
            return piece.matched ? -1 : 0;
        }
        if (!Objects.equals(piece.passage, neighbour.passage)) {
            return -2;
        }
        boolean surface = Objects.equals(piece.ground.surface(), neighbour.ground.surface());
        return surface ? 2 : piece.family() == neighbour.family() ? 1 : 0;
    }
}
