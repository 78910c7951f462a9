package courseworthy.render.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.BinaryOperator;

/**
 * A piece of a band along a course.
 *
 * @param from   from the start, m
 * @param to     from the start, m
 * @param value  what is shown for it
 * @param merged whether it is not drawn to scale: longer than it is, or for several, since it would be too short to be seen
 */
record BandPiece<V>(double from, double to, V value, boolean merged) {

    double length() {
        return to - from;
    }

    /** Neighbours of the same value as one piece. */
    static <V> List<BandPiece<V>> joined(List<BandPiece<V>> pieces) {
        List<BandPiece<V>> out = new ArrayList<>();
        for (BandPiece<V> each : pieces) {
            BandPiece<V> last = out.isEmpty() ? null : out.get(out.size() - 1);
            if (last != null && Objects.equals(last.value, each.value)) {
                out.set(out.size() - 1, new BandPiece<>(last.from, each.to, each.value, last.merged || each.merged));
            } else {
                out.add(each);
            }
        }
        return out;
    }

    /**
     * Pieces of at least a length. The shortest one takes what it lacks from a neighbour that can spare it, since it would not be seen otherwise;
     * where none can, it becomes one with its shorter neighbour. Where the course itself is shorter, one piece is left.
     *
     * @param choice which of two values stands for both; null for that of the longer piece, and then nothing is taken from neighbours
     */
    static <V> List<BandPiece<V>> atLeast(double length, List<BandPiece<V>> pieces, BinaryOperator<V> choice) {
        List<BandPiece<V>> out = joined(pieces);
        while (out.size() > 1) {
            int shortest = shortest(out);
            if (out.get(shortest).length() >= length * (1 - 1e-9)) {
                break;
            }
            if (choice == null || !lengthened(out, shortest, length)) {
                out = merged(out, shortest, choice);
            }
        }
        return out;
    }

    private static <V> int shortest(List<BandPiece<V>> pieces) {
        int shortest = 0;
        for (int i = 1; i < pieces.size(); i++) {
            if (pieces.get(i).length() < pieces.get(shortest).length()) {
                shortest = i;
            }
        }
        return shortest;
    }

    /** Gives a piece what it lacks, from the longer of its neighbours. @return whether that one has it to spare */
    private static <V> boolean lengthened(List<BandPiece<V>> pieces, int piece, double length) {
        double before = piece > 0 ? pieces.get(piece - 1).length() : 0;
        double after = piece < pieces.size() - 1 ? pieces.get(piece + 1).length() : 0;
        BandPiece<V> own = pieces.get(piece);
        double lack = length - own.length();
        if (Math.max(before, after) - lack < length) {
            return false;
        }
        if (before > after) {
            BandPiece<V> giver = pieces.get(piece - 1);
            pieces.set(piece - 1, new BandPiece<>(giver.from, giver.to - lack, giver.value, giver.merged));
            pieces.set(piece, new BandPiece<>(giver.to - lack, own.to, own.value, true));
        } else {
            BandPiece<V> giver = pieces.get(piece + 1);
            pieces.set(piece + 1, new BandPiece<>(giver.from + lack, giver.to, giver.value, giver.merged));
            pieces.set(piece, new BandPiece<>(own.from, giver.from + lack, own.value, true));
        }
        return true;
    }

    private static <V> List<BandPiece<V>> merged(List<BandPiece<V>> pieces, int piece, BinaryOperator<V> choice) {
        boolean before = piece == pieces.size() - 1 || piece > 0 && pieces.get(piece - 1).length() <= pieces.get(piece + 1).length();
        int first = before ? piece - 1 : piece;
        BandPiece<V> a = pieces.get(first);
        BandPiece<V> b = pieces.get(first + 1);
        V longer = a.length() >= b.length() ? a.value : b.value;
        pieces.set(first, new BandPiece<>(a.from, b.to, choice == null ? longer : choice.apply(a.value, b.value), true));
        pieces.remove(first + 1);
        return joined(pieces);
    }
}
