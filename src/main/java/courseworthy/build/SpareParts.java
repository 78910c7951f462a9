package courseworthy.build;

import courseworthy.fit.BrakeFit;
import courseworthy.fit.DrivetrainFit;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.PartKind;
import courseworthy.workshop.Workshop;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What lies loose in a workshop and goes with a build: spokes of its wheels, pads of its brakes, a battery of its derailleur. For the packing list. */
final class SpareParts {

    /** Spokes that differ by less are of one length, m: they are sold by the millimetre (common practice, no source). */
    private static final double SAME_SPOKE = 0.0005;

    private final Workshop workshop;
    private final Part bike;
    private final Map<MountingPlace, Part> parts;

    private SpareParts(Workshop workshop, Part bike, Map<MountingPlace, Part> parts) {
        this.workshop = workshop;
        this.bike = bike;
        this.parts = parts;
    }

    /** In sentences without a full stop, what lacks among them; empty where nothing is known of spares. @param parts the build */
    static List<String> of(Workshop workshop, Part bike, Map<MountingPlace, Part> parts) {
        SpareParts spares = new SpareParts(workshop, bike, parts);
        List<String> out = new ArrayList<>();
        for (MountingPlace place : List.of(MountingPlace.FRONT_WHEEL, MountingPlace.REAR_WHEEL)) {
            spares.spokes(out, parts.get(place));
        }
        spares.pads(out, MountingPlace.FRONT_PADS, MountingPlace.FRONT_ROTOR, MountingPlace.FRONT_CALIPER);
        spares.pads(out, MountingPlace.REAR_PADS, MountingPlace.REAR_ROTOR, MountingPlace.REAR_CALIPER);
        spares.battery(out);
        return out;
    }

    private void spokes(List<String> out, Part wheel) {
        List<Double> lengths = wheel == null ? null : wheel.sizes(PartDetail.SPOKE_LENGTHS);
        if (lengths == null) {
            return;
        }
        List<String> found = new ArrayList<>();
        for (Double length : lengths) {
            List<String> boxes = new ArrayList<>();
            for (Part box : workshop.parts()) {
                Double its = box.kind() == PartKind.SPOKES ? box.number(PartDetail.SPOKE_LENGTH) : null;
                Double quantity = its == null || Math.abs(its - length) >= SAME_SPOKE ? null : box.number(PartDetail.QUANTITY);
                if (quantity != null && quantity > 0) {
                    boxes.add(quantity.intValue() + " in " + box);
                }
            }
            found.add(Math.round(length * 1000) + " mm (" + (boxes.isEmpty() ? "none in the workshop" : String.join(", ", boxes)) + ")");
        }
        out.add("Spokes for " + wheel + ": " + String.join(", ", found));
    }

    private void pads(List<String> out, MountingPlace place, MountingPlace at, MountingPlace over) {
        Part rotor = parts.get(at);
        List<String> names = new ArrayList<>();
        for (Part spare : loose(PartKind.PADS)) {
            boolean fits = MountingPlace.of(spare).contains(place) && BrakeFit.padShape(spare, parts.get(over), bike).fits();
            if (fits && rotor != null && BrakeFit.padsPermitted(spare, rotor).fits()) {
                names.add(spare.name());
            }
        }
        if (!names.isEmpty()) {
            out.add("Pads for the " + place.end() + ": " + String.join(", ", names));
        }
    }

    private void battery(List<String> out) {
        Part derailleur = parts.get(MountingPlace.DERAILLEUR);
        for (Part spare : loose(PartKind.BATTERY)) {
            if (derailleur != null && "electronic".equals(derailleur.word(PartDetail.ACTUATION)) && DrivetrainFit.battery(spare, derailleur).fits()) {
                out.add("A second battery: " + spare);
            }
        }
    }

    /** Owned, in no place of any bike, and not part of the build. */
    private List<Part> loose(PartKind kind) {
        List<Part> out = new ArrayList<>();
        for (Part part : workshop.parts()) {
            if (part.kind() == kind && part.owned() && part.on() == null && !parts.containsValue(part)) {
                out.add(part);
            }
        }
        return out;
    }
}
