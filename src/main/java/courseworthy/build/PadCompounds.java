package courseworthy.build;

import courseworthy.build.Build.UnmetDecision;
import courseworthy.topic.Topics;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import java.util.List;
import java.util.Map;

/** Why pads of two compounds stay on a bike: the ends then bite and fade differently (common practice, no source). */
final class PadCompounds {

    private PadCompounds() {
    }

    /** What is short of one compound at both ends, with what would mend it. @param parts the build */
    static UnmetDecision apart(Part front, Part rear, Map<MountingPlace, Part> parts) {
        String one = front.word(PartDetail.COMPOUND);
        String other = rear.word(PartDetail.COMPOUND);
        String rearPads = permits(parts.get(MountingPlace.REAR_ROTOR), one);
        String frontPads = permits(parts.get(MountingPlace.FRONT_ROTOR), other);
        String part = rearPads.isEmpty() ? "rear brake pads with " + one + " pad compound"
                : frontPads.isEmpty() ? "front brake pads with " + other + " pad compound" : "rear brake pads with " + one + " pad compound" + rearPads;
        return new UnmetDecision(Topics.PAD_COMPOUND.name(), "one compound at both ends", one + " in front and " + other + " at the rear", part);
    }

    /** The rotor that would have to go as well; empty where it permits the compound or does not say. */
    private static String permits(Part rotor, String compound) {
        List<String> permitted = rotor == null ? null : rotor.words(PartDetail.PADS_PERMITTED);
        return permitted == null || permitted.contains(compound) ? "" : ", and a rotor that permits them in place of " + rotor;
    }
}
