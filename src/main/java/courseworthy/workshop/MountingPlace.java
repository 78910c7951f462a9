package courseworthy.workshop;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** A place on a bike that one part can take, in the order in which a bike is built up from the frame. */
public enum MountingPlace {

    HEADSET(PartKind.HEADSET, null, true), FORK(PartKind.FORK, null, true), CROWN_RACE(PartKind.CROWN_RACE, null, true),
    SHOCK(PartKind.SHOCK, null, true), FRONT_WHEEL(PartKind.WHEEL, "front", true), REAR_WHEEL(PartKind.WHEEL, "rear", true),
    FRONT_TYRE(PartKind.TYRE, "front", true), REAR_TYRE(PartKind.TYRE, "rear", true), FRONT_INSERT(PartKind.INSERT, "front", false),
    REAR_INSERT(PartKind.INSERT, "rear", false), FRONT_SEALANT(PartKind.SEALANT, "front", false), REAR_SEALANT(PartKind.SEALANT, "rear", false),
    FRONT_ROTOR(PartKind.ROTOR, "front", true), REAR_ROTOR(PartKind.ROTOR, "rear", true),
    FRONT_ADAPTER(PartKind.ADAPTER, "front", false), REAR_ADAPTER(PartKind.ADAPTER, "rear", false), FRONT_CALIPER(PartKind.CALIPER, "front", true),
    REAR_CALIPER(PartKind.CALIPER, "rear", true), FRONT_PADS(PartKind.PADS, "front", true),
    REAR_PADS(PartKind.PADS, "rear", true), CASSETTE(PartKind.CASSETTE, null, true), BOTTOM_BRACKET(PartKind.BOTTOM_BRACKET, null, true),
    CRANK(PartKind.CRANK, null, true), CHAINRING(PartKind.CHAINRING, null, true), CHAIN(PartKind.CHAIN, null, true),
    DERAILLEUR(PartKind.DERAILLEUR, null, true), BATTERY(PartKind.BATTERY, null, true), SHIFTER(PartKind.SHIFTER, null, true), SPACERS(PartKind.SPACERS, null, false), STEM(PartKind.STEM, null, true), BAR(PartKind.BAR, null, true),
    EXTENSIONS(PartKind.EXTENSIONS, null, false), LOCKOUT_REMOTE(PartKind.LOCKOUT_REMOTE, null, false),
    DROPPER_REMOTE(PartKind.DROPPER_REMOTE, null, false), SEATPOST(PartKind.SEATPOST, null, true), SADDLE(PartKind.SADDLE, null, true),
    PEDALS(PartKind.PEDALS, null, true), METER(PartKind.METER, null, false), LIGHTS(PartKind.LIGHTS, null, false), BAG(PartKind.BAG, null, false);

    private static final Map<PartKind, List<MountingPlace>> OF_KIND = new EnumMap<>(PartKind.class);

    static {
        for (MountingPlace place : values()) {
            List<MountingPlace> of = OF_KIND.computeIfAbsent(place.kind, kind -> new ArrayList<>(2));
            of.add(place);
        }
    }

    private final PartKind kind;
    private final String end;
    private final boolean needed;

    MountingPlace(PartKind kind, String end, boolean needed) {
        this.kind = kind;
        this.end = end;
        this.needed = needed;
    }

    /** The places that a kind of part can take, the front one first; none for a bike. */
    static List<MountingPlace> of(PartKind kind) {
        return OF_KIND.getOrDefault(kind, List.of());
    }

    public PartKind kind() {
        return kind;
    }

    /** {@code front} or {@code rear}, null where there is only one. */
    public String end() {
        return end;
    }

    /** The place of the same kind at the other end; null where there is only one. */
    public MountingPlace otherEnd() {
        for (MountingPlace place : values()) {
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

    /**
     * Whether every bike has one and few owners list it: a bike without one in its file is taken to have its own, and is not given another;
     * one that is listed at one end says nothing of the other.
     */
    public boolean seldomListed() {
        return switch (kind) {
            case HEADSET, CROWN_RACE, BOTTOM_BRACKET, CALIPER, BATTERY -> true;
            default -> false;
        };
    }

    /** {@code rear tyre}, {@code fork}. */
    public String words() {
        return end == null ? kind.word() : end + " " + kind.word();
    }

    /** The place on which a part of this place is mounted; null for the frame itself. */
    public MountingPlace host() {
        return switch (this) {
            case FRONT_TYRE, FRONT_INSERT, FRONT_SEALANT, FRONT_ROTOR -> FRONT_WHEEL;
            case REAR_TYRE, REAR_INSERT, REAR_SEALANT, REAR_ROTOR, CASSETTE -> REAR_WHEEL;
            case CHAINRING, METER -> CRANK;
            case CROWN_RACE -> FORK;
            default -> null;
        };
    }

    /** The places that a part could take. */
    public static List<MountingPlace> of(Part part) {
        String end = part.word(PartDetail.END);
        List<MountingPlace> out = new ArrayList<>();
        for (MountingPlace place : values()) {
            if (place.kind == part.kind() && (end == null || place.end == null || place.end.equals(end))) {
                out.add(place);
            }
        }
        return out;
    }
}
