package courseworthy.engine;

import courseworthy.sheet.Row;
import courseworthy.sheet.Stage;
import courseworthy.sheet.Truth;
import java.util.List;
import java.util.Map;

/** Rows asked in a plain loop over their conditions: what the rule network must agree with. */
public final class PlainRules implements RuleSet {

    private final Map<Integer, List<Row>> byLayer;

    public PlainRules(List<Row> rows) {
        this.byLayer = ClaimEmitter.byLayer(rows);
    }

    @Override
    public Firing open() {
        ClaimEmitter speaker = new ClaimEmitter();
        return new Firing() {
            @Override
            public FiringResult fire(Stage stage) {
                for (Row row : byLayer.getOrDefault(stage.layer(), List.of())) {
                    if (row.condition().on(stage) == Truth.TRUE) {
                        speaker.emit(row, stage);
                    } else {
                        speaker.noteIfUnknown(row, stage);
                    }
                }
                return speaker.drain();
            }

            @Override
            public List<UndeterminedRule> undetermined() {
                return speaker.undetermined();
            }

            @Override
            public void close() {
                // Nothing is held open.
            }
        };
    }
}
