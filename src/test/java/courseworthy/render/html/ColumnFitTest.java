package courseworthy.render.html;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.report.RichText;
import courseworthy.report.Table;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Which tables stand side by side; that none of them scrolls on a phone, and no word is broken, is seen in a browser. */
class ColumnFitTest {

    private static Table table(int columns, String cell) {
        Table.Builder out = Table.builder();
        IntStream.range(0, columns).forEach(i -> out.column("c" + i));
        return out.row(IntStream.range(0, columns).mapToObj(i -> RichText.of(cell)).toArray(RichText[]::new)).build();
    }

    @Test
    void aFewFiguresFit() {
        assertThat(ColumnFit.PHONE.fits(table(4, "12 km"))).isTrue();
        assertThat(ColumnFit.PHONE.fits(table(2, "a sentence that takes two lines"))).isTrue();
    }

    @Test
    void manyColumnsDoNot() {
        assertThat(ColumnFit.PHONE.fits(table(9, "12 km"))).isFalse();
    }

    @Test
    void paperHasRoomForMore() {
        assertThat(ColumnFit.PAPER.fits(table(9, "12 km"))).isTrue();
        assertThat(ColumnFit.PAPER.fits(table(4, "so many short words one by one below one another in a cell"))).isTrue();
        assertThat(ColumnFit.PAPER.fits(table(14, "reinforced"))).isFalse();
    }

    @Test
    void wordsThatAreWiderThanThePhoneDoNot() {
        assertThat(ColumnFit.PHONE.fits(table(3, "carbohydrates"))).isFalse();
        assertThat(ColumnFit.PHONE.fits(table(2, "m".repeat(30)))).isFalse();
    }

    @Test
    void towersOfShortLinesDoNot() {
        assertThat(ColumnFit.PHONE.fits(table(4, "so many short words one by one below one another in a cell"))).isFalse();
    }

    /** A figure is not parted from its unit: 36 px each as two words, 80 px and more as one. */
    @Test
    void aFigureWithItsUnitIsOneWord() {
        assertThat(ColumnFit.PHONE.fits(table(5, "1000 km/h"))).isFalse();
        assertThat(ColumnFit.PHONE.fits(table(5, "1000 x"))).isTrue();
    }
}
