package courseworthy.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.analysis.Finding.Kind;
import courseworthy.engine.ShippedRules;
import courseworthy.sheet.Row;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SheetCheckTest {

    /** What would be a slip in any sheet is none in the shipped rules. */
    @Test
    void noShippedRowIsInVain() {
        List<Finding> remarks = SheetCheck.of(ShippedRules.rules(), List.of()).list();
        Set<Kind> slips = Set.of(Kind.NEVER, Kind.SET_ASIDE, Kind.ALWAYS, Kind.IDENTICAL, Kind.EQUIVALENT, Kind.CONTRADICTS, Kind.UNREASONED);
        assertThat(remarks.stream().filter(remark -> slips.contains(remark.kind()) && !remark.mend().equals(SheetCheck.EXCEPTION))).isEmpty();
    }

    @Test
    void everyShippedRowIsKnownAgain() {
        List<Row> shipped = ShippedRules.rules();
        for (Row row : shipped) {
            List<Finding> remarks = SheetCheck.of(List.of(row), shipped).list();
            assertThat(row.sayings().isEmpty() || remarks.stream().anyMatch(remark -> remark.kind() == Kind.REPEATS
                    && remark.rows().get(0).equals(row.origin()) && remark.rows().get(1).equals(row.origin()))).as(row.origin().rule()).isTrue();
        }
    }
}
