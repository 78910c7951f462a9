package courseworthy.render.pdf;

import java.util.ArrayList;
import java.util.List;

/** An element of the logical structure of a document (ISO 32000-1, 14.8.4): what a reader aloud goes by. */
final class StructureTag {

    private final String role;
    private final List<StructureTag> kids = new ArrayList<>();
    private String spoken = "";
    private String scope = "";

    private StructureTag(String role) {
        this.role = role;
    }

    static StructureTag document() {
        return new StructureTag("Document");
    }

    /** A new last element within this one. */
    StructureTag add(String kid) {
        StructureTag out = new StructureTag(kid);
        kids.add(out);
        return out;
    }

    /** Words to be read in place of what is drawn. */
    StructureTag spoken(String words) {
        spoken = words;
        return this;
    }

    /** What a heading of a table heads: {@code Row} or {@code Column}. */
    StructureTag scope(String of) {
        scope = of;
        return this;
    }

    String role() {
        return role;
    }

    List<StructureTag> kids() {
        return kids;
    }

    String spoken() {
        return spoken;
    }

    String scope() {
        return scope;
    }
}
