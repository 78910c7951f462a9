package courseworthy.workshop;

import java.util.ArrayList;
import java.util.List;

/** A place on a bike that one part can take, in the order in which a bike is built up from the frame. */
public enum Place {

    FORK(Kind.FORK, null, true), SHOCK(Kind.SHOCK, null, true), FRONT_WHEEL(Kind.WHEEL, "front", true), REAR_WHEEL(Kind.WHEEL, "rear", true),
    FRONT_TYRE(Kind.TYRE, "front", true), REAR_TYRE(Kind.TYRE, "rear", true), FRONT_INSERT(Kind.INSERT, "front", false),
    REAR_INSERT(Kind.INSERT, "rear", false), FRONT_SEALANT(Kind.SEALANT, "front", false), REAR_SEALANT(Kind.SEALANT, "rear", false),
    FRONT_ROTOR(Kind.ROTOR, "front", true), REAR_ROTOR(Kind.ROTOR, "rear", true), FRONT_PADS(Kind.PADS, "front", true),
    REAR_PADS(Kind.PADS, "rear", true), CASSETTE(Kind.CASSETTE, null, true), CRANK(Kind.CRANK, null, true),
    CHAINRING(Kind.CHAINRING, null, true), CHAIN(Kind.CHAIN, null, true), DERAILLEUR(Kind.DERAILLEUR, null, true),
    SHIFTER(Kind.SHIFTER, null, true), SPACERS(Kind.SPACERS, null, false), STEM(Kind.STEM, null, true), BAR(Kind.BAR, null, true),
    EXTENSIONS(Kind.EXTENSIONS, null, false), SEATPOST(Kind.SEATPOST, null, true), SADDLE(Kind.SADDLE, null, true),
    PEDALS(Kind.PEDALS, null, true), METER(Kind.METER, null, false), LIGHTS(Kind.LIGHTS, null, false), BAG(Kind.BAG, null, false);

    private final Kind kind;
    private final String end;
    private final boolean needed;

    Place(Kind kind, String end, boolean needed) {
        this.kind = kind;
        this.end = end;
        this.needed = needed;
    }

    public Kind kind() {
        return kind;
    }

    /** {@code front} or {@code rear}, null where there is only one. */
    public String end() {
        return end;
    }

    /** The place of the same kind at the other end; null where there is only one. */
    public Place otherEnd() {
        for (Place place : values()) {
            if (place != this && end != null && place.kind == kind) {
                return place;
            }
        }
        return null;
    }

    /** Whether a bike cannot be ridden, or not as it was, without a part there. */
    public boolean needed() {
        return needed;
    }

    /** {@code rear tyre}, {@code fork}. */
    public String words() {
        return end == null ? kind.word() : end + " " + kind.word();
    }

    /** The place on which a part of this place is mounted; null for the frame itself. */
    public Place host() {
        return switch (this) {
            case FRONT_TYRE, FRONT_INSERT, FRONT_SEALANT, FRONT_ROTOR -> FRONT_WHEEL;
            case REAR_TYRE, REAR_INSERT, REAR_SEALANT, REAR_ROTOR, CASSETTE -> REAR_WHEEL;
            case CHAINRING, METER -> CRANK;
            default -> null;
        };
    }

    /** The places that a part could take. */
    public static List<Place> of(Part part) {
        String end = part.word(Detail.END);
        List<Place> out = new ArrayList<>();
        for (Place place : values()) {
            if (place.kind == part.kind() && (end == null || place.end == null || place.end.equals(end))) {
                out.add(place);
            }
        }
        return out;
    }
}
