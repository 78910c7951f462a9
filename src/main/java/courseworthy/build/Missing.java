package courseworthy.build;

import courseworthy.decision.Decision;
import courseworthy.workshop.Detail;
import courseworthy.workshop.Part;
import courseworthy.workshop.Place;
import java.util.List;
import java.util.Map;

/** What part would meet a decision that the workshop does not, with what it must fit. */
final class Missing {

    private Missing() {
    }

    static String part(Wanted wanted, Decision decision, Part bike, Map<Place, Part> parts) {
        return switch (wanted.of()) {
            case BIKE -> decision.topic().name().equals("bike") ? "a bike of that kind" : "another bike";
            case GEARS -> "rings and a cassette that have " + decision.text() + label(", for freehub ", parts.get(Place.REAR_WHEEL), Detail.FREEHUB);
            case POWER -> "a crank or pedals that measure power" + label(", for bottom bracket ", bike, Detail.BOTTOM_BRACKET);
            case PART -> named(wanted.place().words(), decision.topic().name(), decision.text()) + mustFit(wanted.place(), bike, parts)
                    + rotorFor(wanted.place(), decision.text(), parts);
        };
    }

    /** {@code a front tyre of width 40 mm}, {@code a dropper seatpost}, {@code light clipless pedals}, {@code aero extensions}. */
    static String named(String piece, String topic, String value) {
        String article = piece.endsWith("s") ? "" : "a ";
        if (topic.equals(piece)) {
            return value.equals("yes") || value.equals("on") ? article + piece : article + value + " " + piece;
        }
        String end = piece.indexOf(' ') < 0 ? piece : piece.substring(0, piece.indexOf(' '));
        String property = topic.startsWith(piece + " ") ? topic.substring(piece.length() + 1)
                : topic.startsWith(end + " ") ? topic.substring(end.length() + 1) : topic;
        return article + piece + " of " + property + " " + value;
    }

    private static String mustFit(Place place, Part bike, Map<Place, Part> parts) {
        return switch (place) {
            case FRONT_TYRE -> size(", for bead seat ", parts.get(Place.FRONT_WHEEL), Detail.BEAD_SEAT);
            case REAR_TYRE -> size(", for bead seat ", parts.get(Place.REAR_WHEEL), Detail.BEAD_SEAT);
            case FRONT_WHEEL -> label(", for axle ", parts.get(Place.FORK), Detail.AXLE);
            case REAR_WHEEL -> label(", for axle ", bike, Detail.AXLE);
            case FRONT_ROTOR -> label(", for rotor mount ", parts.get(Place.FRONT_WHEEL), Detail.ROTOR_MOUNT);
            case REAR_ROTOR -> label(", for rotor mount ", parts.get(Place.REAR_WHEEL), Detail.ROTOR_MOUNT);
            case FORK -> label(", for steerer ", bike, Detail.STEERER);
            case SEATPOST -> size(", for post diameter ", bike, Detail.POST_DIAMETER);
            case CASSETTE -> label(", for freehub ", parts.get(Place.REAR_WHEEL), Detail.FREEHUB);
            case CHAINRING -> label(", for ring mount ", parts.get(Place.CRANK), Detail.RING_MOUNT);
            case BAR -> size(", for bar clamp ", parts.get(Place.STEM), Detail.BAR_CLAMP);
            default -> "";
        };
    }

    /** Pads of a compound that the rotor there does not permit need another rotor too. */
    private static String rotorFor(Place place, String compound, Map<Place, Part> parts) {
        if (place != Place.FRONT_PADS && place != Place.REAR_PADS) {
            return "";
        }
        Part rotor = parts.get(place == Place.FRONT_PADS ? Place.FRONT_ROTOR : Place.REAR_ROTOR);
        List<String> permitted = rotor == null ? null : rotor.words(Detail.PADS_PERMITTED);
        return permitted == null || permitted.contains(compound) ? "" : ", and a rotor that permits them in place of " + rotor;
    }

    private static String label(String before, Part part, Detail detail) {
        return part == null || !part.has(detail) ? "" : before + part.word(detail);
    }

    private static String size(String before, Part part, Detail detail) {
        if (part == null || !part.has(detail)) {
            return "";
        }
        long tenths = Math.round(part.number(detail) * 10_000);
        return before + tenths / 10 + (tenths % 10 == 0 ? "" : "." + tenths % 10) + " mm";
    }
}
