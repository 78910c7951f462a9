package courseworthy.render.pdf;

import java.util.ArrayList;
import java.util.List;

/** An element of the logical structure of a document (ISO 32000-1, 14.8.4): what a reader aloud goes by. */
final class Tag {

    private final String role;
    private final List<Tag> kids = new ArrayList<>();
    private String spoken = "";
    private String scope = "";

    private Tag(String role) {
        this.role = role;
    }

    static Tag document() {
        return new Tag("Document");
    }

    /** A new last element within this one. */
    Tag add(String kid) {
        Tag out = new Tag(kid);
        kids.add(out);
        return out;
    }

    /** Words to be read in place of what is drawn. */
    Tag spoken(String words) {
        spoken = words;
        return this;
    }

    /** What a heading of a table heads: {@code Row} or {@code Column}. */
    Tag scope(String of) {
        scope = of;
        return this;
    }

    String role() {
        return role;
    }

    List<Tag> kids() {
        return kids;
    }

    String spoken() {
        return spoken;
    }

    String scope() {
        return scope;
    }
}
