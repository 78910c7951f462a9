package courseworthy.rulebase;

import courseworthy.workshop.Part;
import courseworthy.workshop.Place;
import org.kie.api.definition.type.ClassReactive;

/** A part in its place on a bike, or the bike itself, as rules of fit see it. */
@ClassReactive
public final class Fitted {

    private final Part part;
    private final String end;
    private final Part under;

    private Fitted(Part part, String end, Part under) {
        this.part = part;
        this.end = end;
        this.under = under;
    }

    static Fitted bike(Part bike) {
        return new Fitted(bike, "", null);
    }

    /** @param under what lies under it: the spacers under a stem, else null */
    static Fitted of(Place place, Part part, Part under) {
        return new Fitted(part, place.end() == null ? "" : place.end(), under);
    }

    /** {@code bike}, {@code tyre} ... */
    public String getKind() {
        return part.kind().word();
    }

    /** {@code front}, {@code rear}, or empty where there is only one. */
    public String getEnd() {
        return end;
    }

    public Part getPart() {
        return part;
    }

    /** What lies under it, or null. */
    public Part getUnder() {
        return under;
    }
}
