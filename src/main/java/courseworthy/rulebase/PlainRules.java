package courseworthy.rulebase;

import java.util.List;
import java.util.Map;

/** Rows asked in a plain loop over their conditions: what the rule network must agree with. */
public final class PlainRules implements Rules {

    private final Map<Integer, List<Row>> byLayer;

    public PlainRules(List<Row> rows) {
        this.byLayer = Speaker.byLayer(rows);
    }

    @Override
    public Firing open() {
        Speaker speaker = new Speaker();
        return new Firing() {
            @Override
            public Said fire(Stage stage) {
                for (Row row : byLayer.getOrDefault(stage.layer(), List.of())) {
                    if (row.condition().on(stage) == Truth.TRUE) {
                        speaker.speak(row, stage);
                    } else {
                        speaker.hear(row, stage);
                    }
                }
                return speaker.said();
            }

            @Override
            public List<Untold> couldNotTell() {
                return speaker.untold();
            }

            @Override
            public void close() {
                // Nothing is held open.
            }
        };
    }
}
