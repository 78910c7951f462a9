package courseworthy.fit;

import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import org.kie.api.definition.type.ClassReactive;

/** A part in its place on a bike, or the bike itself, as rules of fit see it. */
@ClassReactive
public final class MountedPart {

    private final Part part;
    private final String end;
    private final Part under;

    private MountedPart(Part part, String end, Part under) {
        this.part = part;
        this.end = end;
        this.under = under;
    }

    static MountedPart bike(Part bike) {
        return new MountedPart(bike, "", null);
    }

    /** @param under what lies under it: the spacers under a stem, else null */
    static MountedPart of(MountingPlace place, Part part, Part under) {
        return new MountedPart(part, place.end() == null ? "" : place.end(), under);
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
