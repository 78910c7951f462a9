package courseworthy.build;

import courseworthy.call.Call;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Status;
import courseworthy.topic.Topics;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.PartKind;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Finds parts of a build that are worn to their limits or grown too old on the day of a ride. */
final class WornParts {

    /** Who rides these worn falls or cannot stop (common practice, no source). */
    private static final Set<PartKind> SAFETY = EnumSet.of(PartKind.ROTOR, PartKind.PADS, PartKind.TYRE);

    private static final String NEW_PADS = "change them and bed the new ones in";

    private final Call call;
    private final LocalDate date;

    /** @param date of the ride; null where it is not known */
    WornParts(Call call, LocalDate date) {
        this.call = call;
        this.date = date;
    }

    /** What is worn past its mark, or older than the call allows, with what to do. @param parts what is in each place */
    List<WearNote> of(Map<MountingPlace, Part> parts) {
        return of(parts, EnumSet.allOf(PartKind.class));
    }

    /** How many parts are so worn that the rider may fall or cannot stop. */
    int unsafe(Map<MountingPlace, Part> parts) {
        return of(parts, SAFETY).size();
    }

    private List<WearNote> of(Map<MountingPlace, Part> parts, Set<PartKind> kinds) {
        List<WearNote> out = new ArrayList<>();
        for (Map.Entry<MountingPlace, Part> each : parts.entrySet()) {
            Part part = each.getValue();
            if (!kinds.contains(part.kind())) {
                continue;
            }
            switch (part.kind()) {
                case CHAIN -> over(out, part, "worn to its limit", "change it, and look at the cassette, which wears with it",
                        part.number(PartDetail.WEAR), part.number(PartDetail.WEAR_LIMIT));
                case ROTOR -> over(out, part, "worn to the thickness marked on it", "change it", part.number(PartDetail.LEAST_THICKNESS),
                        part.number(PartDetail.THICKNESS));
                case PADS -> pads(out, part);
                case TYRE -> {
                    Double cuts = part.number(PartDetail.CUTS);
                    if (cuts != null && cuts > 0) {
                        out.add(new WearNote(part.name(), "cuts show the casing", "look at them, and change the tyre if the casing itself is cut"));
                    }
                }
                case SEALANT -> {
                    if (!isNew(each.getKey(), parts)) {
                        sealant(out, part);
                    }
                }
                case BATTERY -> out.addAll(BatteryCharge.of(part, call));
                default -> {
                }
            }
        }
        return out;
    }

    private static void over(List<WearNote> out, Part part, String state, String action, Double value, Double limit) {
        if (value != null && limit != null && value >= limit - 1e-9) {
            out.add(new WearNote(part.name(), state, action));
        }
    }

    private void pads(List<WearNote> out, Part part) {
        Decision least = call.on(Topics.PAD_THICKNESS);
        Double left = part.number(PartDetail.LEFT);
        Double marked = part.number(PartDetail.LEAST_LEFT);
        if (left != null && marked != null && left <= marked + 1e-9) {
            out.add(new WearNote(part.name(), "down to the manufacturer's wear mark", NEW_PADS));
        } else if (left != null && least.status() == Status.SETTLED && left < least.topic().resolution().base(least.value()) - 1e-9) {
            out.add(new WearNote(part.name(), "less than " + least.topic().text(least.value()) + " left on each pad", NEW_PADS));
        }
    }

    /** Whether fresh sealant goes in, with another tyre than the one that is on its wheel. */
    private static boolean isNew(MountingPlace sealant, Map<MountingPlace, Part> parts) {
        Part wheel = parts.get(sealant.host());
        Part tyre = parts.get(sealant == MountingPlace.FRONT_SEALANT ? MountingPlace.FRONT_TYRE : MountingPlace.REAR_TYRE);
        return wheel != null && tyre != null && !MountingEffort.isOn(tyre, wheel);
    }

    private void sealant(List<WearNote> out, Part part) {
        Decision most = call.on(Topics.SEALANT_AGE);
        LocalDate added = part.day(PartDetail.ADDED);
        if (added != null && date != null && most.status() == Status.SETTLED) {
            long days = ChronoUnit.DAYS.between(added, date);
            if (days > most.value()) {
                out.add(new WearNote(part.name(), days + " days old on the day, at most " + most.topic().text(most.value()) + " recommended", "top it up"));
            }
        }
    }
}
