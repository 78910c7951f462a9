package courseworthy.engine;

import courseworthy.sheet.Stage;
import org.kie.api.definition.type.ClassReactive;

/** A stage as rules of the network see it. */
@ClassReactive
public record StageFact(Stage stage) {
}
