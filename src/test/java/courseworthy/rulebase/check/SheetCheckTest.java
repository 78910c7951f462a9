package courseworthy.rulebase.check;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.rulebase.House;
import courseworthy.rulebase.Row;
import courseworthy.rulebase.check.Remark.Kind;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SheetCheckTest {

    /** What would be a slip in any sheet is none in the shipped rules. */
    @Test
    void noShippedRowIsInVain() {
        List<Remark> remarks = SheetCheck.of(House.rules(), List.of()).list();
        Set<Kind> slips = Set.of(Kind.NEVER, Kind.SET_ASIDE, Kind.ALWAYS, Kind.IDENTICAL, Kind.EQUIVALENT, Kind.CONTRADICTS, Kind.UNREASONED);
        assertThat(remarks.stream().filter(remark -> slips.contains(remark.kind()) && !remark.mend().equals(SheetCheck.EXCEPTION))).isEmpty();
    }

    @Test
    void everyShippedRowIsKnownAgain() {
        List<Row> house = House.rules();
        for (Row row : house) {
            List<Remark> remarks = SheetCheck.of(List.of(row), house).list();
            assertThat(row.sayings().isEmpty() || remarks.stream().anyMatch(remark -> remark.kind() == Kind.REPEATS
                    && remark.rows().get(0).equals(row.author()) && remark.rows().get(1).equals(row.author()))).as(row.author().rule()).isTrue();
        }
    }
}
