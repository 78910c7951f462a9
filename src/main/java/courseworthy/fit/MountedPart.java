package courseworthy.fit;

import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import java.util.Map;
import org.kie.api.definition.type.ClassReactive;

/** A part in its place on a bike, or the bike itself, as rules of fit see it. */
@ClassReactive
public final class MountedPart {

    private final Part part;
    private final String end;
    private final Map<MountingPlace, Part> mounted;

    private MountedPart(Part part, String end, Map<MountingPlace, Part> mounted) {
        this.part = part;
        this.end = end;
        this.mounted = mounted;
    }

    static MountedPart bike(Part bike) {
        return new MountedPart(bike, "", Map.of());
    }

    /** @param mounted all that is on the bike */
    static MountedPart of(MountingPlace place, Part part, Map<MountingPlace, Part> mounted) {
        return new MountedPart(part, place.end() == null ? "" : place.end(), mounted);
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

    /** The part of a kind at the same end of the bike, or the only one of its kind; null where none is listed. */
    public Part other(String kind) {
        for (Map.Entry<MountingPlace, Part> each : mounted.entrySet()) {
            String its = each.getKey().end();
            if (each.getKey().kind().word().equals(kind) && (its == null || its.equals(end))) {
                return each.getValue();
            }
        }
        return null;
    }
}
