package courseworthy.task;

import courseworthy.problem.BadInput;
import courseworthy.problem.Fault;
import courseworthy.problem.Spelling;
import courseworthy.schema.Schemas;
import java.util.Map;

/** Finds the JSON Schema of a kind of file. */
public final class SchemaTask {

    private SchemaTask() {
    }

    /**
     * @param kind one of {@link Schemas#KINDS}
     * @throws BadInput for another
     */
    public static Map<String, Object> of(String kind) {
        if (!Schemas.KINDS.contains(kind)) {
            throw new BadInput(Fault.of("schema", 0, "", RequestReader.quoted(kind), "one of: " + String.join(", ", Schemas.KINDS),
                    Spelling.didYouMean(kind, Schemas.KINDS)));
        }
        return Schemas.of(kind);
    }
}
