package courseworthy.build;

import courseworthy.claim.Rank;
import courseworthy.claim.Verb;
import courseworthy.decision.Decision;
import courseworthy.fit.BrakeFit;
import courseworthy.topic.Topics;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.PartKind;
import courseworthy.workshop.Workshop;
import java.util.List;
import java.util.Map;

/** What part would meet a decision that the workshop does not, with what it must fit. */
final class MissingPart {

    private MissingPart() {
    }

    /** Whether the hardest gear may be no harder by the event's rules. */
    static boolean isLimitedByEvent(Decision decision) {
        return decision.topic() == Topics.HARDEST_GEAR && decision.taken().stream()
                .anyMatch(claim -> claim.origin().rank() == Rank.LIMIT && claim.verb() == Verb.AT_MOST);
    }

    /** @param workshop what there is, adapters among it */
    static String part(TopicPlacement wanted, Decision decision, Part bike, Map<MountingPlace, Part> parts, Workshop workshop) {
        return switch (wanted.of()) {
            case BIKE -> decision.topic() == Topics.BIKE ? "a bike of that kind" : "another bike";
            case GEARS -> "rings and a cassette that have " + decision.text() + label(", for freehub ", parts.get(MountingPlace.REAR_WHEEL), PartDetail.FREEHUB)
                    + (isLimitedByEvent(decision) ? ", or the smaller sprockets blocked off, if the event allows that" : "");
            case POWER -> "a crank or pedals that measure power" + label(", for bottom bracket ", bike, PartDetail.BOTTOM_BRACKET);
            case PART -> named(wanted.place().words(), decision.topic().name(), decision.text()) + mustFit(wanted.place(), bike, parts)
                    + rotorFor(wanted.place(), decision.text(), parts) + adapterFor(wanted.place(), decision, bike, parts, workshop);
        };
    }

    /** {@code a front tyre with 40 mm width}, {@code a dropper seatpost}, {@code light clipless pedals}, {@code aero extensions}. */
    static String named(String piece, String topic, String value) {
        String article = piece.endsWith("s") ? "" : "a ";
        if (topic.equals(piece)) {
            return value.equals("fitted") ? article + piece : article + value + " " + piece;
        }
        String end = piece.indexOf(' ') < 0 ? piece : piece.substring(0, piece.indexOf(' '));
        String property = topic.startsWith(piece + " ") ? topic.substring(piece.length() + 1)
                : topic.startsWith(end + " ") ? topic.substring(end.length() + 1) : topic;
        if (topic.equals(Topics.CHAINRINGS.name())) {
            return value.equals("one") ? "a single chainring" : value + " chainrings";
        }
        return article + piece + " with " + (value.startsWith("at ") ? property + " " + value : value + " " + property);
    }

    private static String mustFit(MountingPlace place, Part bike, Map<MountingPlace, Part> parts) {
        return switch (place) {
            case FRONT_TYRE -> size(", for bead seat ", parts.get(MountingPlace.FRONT_WHEEL), PartDetail.BEAD_SEAT);
            case REAR_TYRE -> size(", for bead seat ", parts.get(MountingPlace.REAR_WHEEL), PartDetail.BEAD_SEAT);
            case FRONT_WHEEL -> label(", for axle ", parts.get(MountingPlace.FORK), PartDetail.AXLE);
            case REAR_WHEEL -> label(", for axle ", bike, PartDetail.AXLE);
            case FRONT_ROTOR -> label(", for rotor mount ", parts.get(MountingPlace.FRONT_WHEEL), PartDetail.ROTOR_MOUNT);
            case REAR_ROTOR -> label(", for rotor mount ", parts.get(MountingPlace.REAR_WHEEL), PartDetail.ROTOR_MOUNT);
            case FORK -> label(", for steerer ", bike, PartDetail.STEERER);
            case SEATPOST -> size(", for post diameter ", bike, PartDetail.POST_DIAMETER);
            case CASSETTE -> label(", for freehub ", parts.get(MountingPlace.REAR_WHEEL), PartDetail.FREEHUB);
            case CHAINRING -> label(", for ring mount ", parts.get(MountingPlace.CRANK), PartDetail.RING_MOUNT);
            case BAR -> size(", for bar clamp ", parts.get(MountingPlace.STEM), PartDetail.BAR_CLAMP);
            default -> "";
        };
    }

    /** Pads of a compound that the rotor there does not permit need another rotor too. */
    private static String rotorFor(MountingPlace place, String compound, Map<MountingPlace, Part> parts) {
        if (place != MountingPlace.FRONT_PADS && place != MountingPlace.REAR_PADS) {
            return "";
        }
        Part rotor = parts.get(place == MountingPlace.FRONT_PADS ? MountingPlace.FRONT_ROTOR : MountingPlace.REAR_ROTOR);
        List<String> permitted = rotor == null ? null : rotor.words(PartDetail.PADS_PERMITTED);
        return permitted == null || permitted.contains(compound) ? "" : ", and a rotor that permits them in place of " + rotor;
    }

    /** A rotor that the mount is not made for needs an adapter too, where the workshop has none that fits. */
    private static String adapterFor(MountingPlace place, Decision decision, Part bike, Map<MountingPlace, Part> parts, Workshop workshop) {
        Part holder = place == MountingPlace.FRONT_ROTOR ? parts.get(MountingPlace.FORK) : place == MountingPlace.REAR_ROTOR ? bike : null;
        Double mount = holder == null ? null : holder.number(PartDetail.MOUNT_ROTOR);
        if (mount == null) {
            return "";
        }
        Part wanted = new Part("rotor", PartKind.ROTOR, 0, Map.of(PartDetail.DIAMETER, decision.topic().resolution().base(decision.value())));
        boolean there = BrakeFit.adapterForRotor(wanted, null, holder).fits();
        for (Part each : workshop.parts()) {
            String end = each.kind() == PartKind.ADAPTER && each.owned() ? each.word(PartDetail.END) : null;
            there |= end != null && end.equals(place.end()) && BrakeFit.adapterForRotor(wanted, each, holder).fits() && BrakeFit.adapterMount(each, holder).fits();
        }
        return there ? "" : ", and an adapter for it on the mount of " + holder + ", which is made for " + Math.round(mount * 1000)
                + " mm: no adapter in the workshop fits";
    }

    private static String label(String before, Part part, PartDetail detail) {
        return part == null || !part.has(detail) ? "" : before + part.word(detail);
    }

    private static String size(String before, Part part, PartDetail detail) {
        if (part == null || !part.has(detail)) {
            return "";
        }
        long tenths = Math.round(part.number(detail) * 10_000);
        return before + tenths / 10 + (tenths % 10 == 0 ? "" : "." + tenths % 10) + " mm";
    }
}
