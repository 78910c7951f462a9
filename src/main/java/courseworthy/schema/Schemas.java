package courseworthy.schema;

import java.util.List;
import java.util.Map;

/** The JSON Schema (draft 2020-12) of each kind of file, as a tree of maps, lists, texts, whole numbers and truths. */
public final class Schemas {

    /** The kinds of files people write. */
    public static final List<String> KINDS = List.of("course", "rider", "event", "workshop", "sheet", "cases", "debrief", "season", "log");

    private Schemas() {
    }

    /** @throws IllegalArgumentException for what is not one of {@link #KINDS} */
    public static Map<String, Object> of(String kind) {
        return switch (kind) {
            case "course" -> CourseSchema.of();
            case "rider" -> RiderSchema.of();
            case "event" -> EventSchema.of();
            case "workshop" -> WorkshopSchema.of();
            case "sheet" -> SheetSchema.of();
            case "cases" -> CasesSchema.of();
            case "debrief" -> DebriefSchema.of();
            case "season" -> SeasonSchema.of();
            case "log" -> RideLogSchema.of();
            default -> throw new IllegalArgumentException(kind);
        };
    }
}
