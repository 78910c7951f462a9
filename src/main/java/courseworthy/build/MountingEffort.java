package courseworthy.build;

import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartKind;
import courseworthy.workshop.Workshop;

/**
 * What it takes to put a part in its place: nothing where it is there already, on the very wheel or crank. Minutes are estimates of
 * a practised hand (common practice, no source) unless the workshop's file says otherwise.
 */
final class MountingEffort {

    /** So that a swap that gains what its work costs is made, whatever else is equal (computing). */
    private static final long JUST_WORTH = 10;

    private final Workshop workshop;

    MountingEffort(Workshop workshop) {
        this.workshop = workshop;
    }

    /** Minutes for a swap of a kind of part. */
    double minutes(PartKind kind) {
        Double written = workshop.minutes().get(kind);
        return written == null ? estimate(kind) : written / 60;
    }

    private static int estimate(PartKind kind) {
        return switch (kind) {
            case BIKE, SPOKES -> 0;
            case WHEEL, LIGHTS, BAG, BATTERY -> 3;
            case SPACERS, PEDALS -> 5;
            case CASSETTE, SADDLE, PADS -> 8;
            case INSERT, SEALANT, ROTOR, CHAINRING, CHAIN, EXTENSIONS, CROWN_RACE, ADAPTER -> 10;
            case CRANK, STEM, SEATPOST, METER -> 15;
            case SHOCK, TYRE, SHIFTER, DROPPER_REMOTE, LOCKOUT_REMOTE, CALIPER -> 20;
            case DERAILLEUR -> 25;
            case BAR, BOTTOM_BRACKET -> 30;
            case HEADSET -> 40;
            case FORK -> 60;
        };
    }

    /**
     * What a swap of a kind of part must be worth, in the ticks of a cost: a notch for each quarter of an hour, and never less than one. What
     * gains just that is made.
     */
    long cost(PartKind kind) {
        long worth = Math.round(minutes(kind) * BuildVariables.LOSS / BuildVariables.NOTCH_MINUTES);
        return Math.max(BuildVariables.LOSS, worth) - JUST_WORTH;
    }

    /** Whether a part is in a place of a bike now, whatever it stands on. */
    static boolean isThere(Part part, MountingPlace place, Part bike) {
        return part.bike() == bike && part.place() == place;
    }

    /** Whether a part stays on its host: on the wheel or the crank that is chosen for that place. */
    static boolean isOn(Part part, Part host) {
        for (Part at = part.on(); at != null; at = at.on()) {
            if (at == host) {
                return true;
            }
        }
        return false;
    }

    /** Whether putting the part there is work. @param host what is chosen for the place that carries it; null where the frame does */
    static boolean isWork(Part part, MountingPlace place, Part host, Part bike) {
        return place.host() == null || host == null ? !isThere(part, place, bike) : !isOn(part, host);
    }

    /** Whether a part that is in its place has to be moved over to what carries it then. @param carrier null where none is chosen */
    static boolean movesOver(Part part, MountingPlace place, Part carrier, Part bike) {
        return part != null && carrier != null && isThere(part, place, bike) && part.on() != bike && !isOn(part, carrier);
    }

    /** What stands in a place now: on the chosen wheel or crank, or on the frame; null for nothing. */
    static Part stands(Workshop workshop, MountingPlace place, Part host, Part bike) {
        for (Part part : workshop.parts()) {
            if (part.kind() == place.kind() && part.place() == place && (place.host() == null || host == null ? part.bike() == bike : isOn(part, host))) {
                return part;
            }
        }
        return null;
    }
}
