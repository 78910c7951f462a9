package courseworthy.render.svg;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BinaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class BandPieceTest {

    private static final BinaryOperator<Integer> GREATER = Math::max;

    private static BandPiece<Integer> piece(double from, double to, int value) {
        return new BandPiece<>(from, to, value, false);
    }

    @Test
    void neighboursOfOneValueAreOnePiece() {
        assertThat(BandPiece.joined(List.of(piece(0, 2, 1), piece(2, 5, 1), piece(5, 6, 2)))).containsExactly(piece(0, 5, 1), piece(5, 6, 2));
    }

    @Test
    void aShortPieceTakesWhatItLacksFromTheLongerNeighbour() {
        assertThat(BandPiece.atLeast(3, List.of(piece(0, 10, 1), piece(10, 11, 5), piece(11, 30, 2)), GREATER))
                .containsExactly(piece(0, 10, 1), new BandPiece<>(10, 13, 5, true), piece(13, 30, 2));
    }

    @Test
    void whereNoneCanSpareItShortPiecesBecomeOneOfTheChosenValue() {
        assertThat(BandPiece.atLeast(3, List.of(piece(0, 2, 1), piece(2, 4, 3)), GREATER)).containsExactly(new BandPiece<>(0, 4, 3, true));
    }

    @Test
    void withoutAChoiceTheLongerStandsForBoth() {
        assertThat(BandPiece.atLeast(3, List.of(piece(0, 10, 1), piece(10, 11, 5), piece(11, 30, 2)), null))
                .containsExactly(new BandPiece<>(0, 11, 1, true), piece(11, 30, 2));
    }

    @Property(seed = "20261129")
    void piecesCoverTheCourseAndAreLongEnough(@ForAll @Size(min = 1, max = 40) List<@DoubleRange(min = 0.1, max = 9) Double> lengths,
            @ForAll @IntRange(min = 1, max = 20) int least, @ForAll boolean choice) {
        List<BandPiece<Integer>> pieces = new ArrayList<>();
        double at = 0;
        for (int i = 0; i < lengths.size(); i++) {
            pieces.add(piece(at, at + lengths.get(i), i % 5));
            at += lengths.get(i);
        }
        List<BandPiece<Integer>> out = BandPiece.atLeast(least, pieces, choice ? GREATER : null);
        assertThat(out.get(0).from()).isZero();
        assertThat(out.get(out.size() - 1).to()).isEqualTo(at);
        for (int i = 1; i < out.size(); i++) {
            assertThat(out.get(i).from()).isEqualTo(out.get(i - 1).to());
            assertThat(out.get(i).value()).isNotEqualTo(out.get(i - 1).value());
        }
        assertThat(out.size() == 1 || out.stream().allMatch(each -> each.length() > least * 0.999999)).isTrue();
    }
}
