package courseworthy.engine;

import courseworthy.claim.Claim;
import courseworthy.demand.MeasureValue;
import courseworthy.sheet.Row;
import courseworthy.sheet.Saying;
import courseworthy.sheet.Stage;
import courseworthy.sheet.Truth;
import java.util.ArrayList;
import java.util.List;

/** What rows say without the facts they rest on, for asking many times over. It settles just as what the rules themselves say. */
public final class ClaimsWithoutGrounds {

    private ClaimsWithoutGrounds() {
    }

    /** What a row says at a stage; empty where its condition does not hold, or a value it needs is unknown. */
    public static List<Claim> claims(Row row, Stage stage) {
        if (row.condition().on(stage) != Truth.TRUE) {
            return List.of();
        }
        List<Claim> out = new ArrayList<>();
        for (Saying saying : row.sayings()) {
            if (row.layer(saying) == stage.layer()) {
                claim(row, saying, stage, out);
            }
        }
        return out;
    }

    private static void claim(Row row, Saying saying, Stage stage, List<Claim> out) {
        if (saying.source() instanceof Saying.Literal literal) {
            out.add(of(row, saying, literal.value()));
        } else if (saying.source() instanceof Saying.Times times) {
            MeasureValue value = stage.demands().get(times.measure());
            if (value != null) {
                out.add(of(row, saying, times.on(saying.topic(), value.mid())));
            }
        }
    }

    private static Claim of(Row row, Saying saying, long value) {
        return Claim.of(row.origin(), saying.topic(), saying.verb(), value, saying.written(), List.of());
    }
}
