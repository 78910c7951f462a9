package courseworthy.build;

import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;

/** The easiest and the hardest gear of a build as a mechanic reads them: chainring and sprocket teeth, then the ratio. */
final class GearTeeth {

    private GearTeeth() {
    }

    /**
     * What a build has on a topic, as text: a gear as {@code 28x10 (2.80)}, anything else as its topic writes it.
     *
     * @param value in the topic's ticks
     * @param parts of the build; where their teeth are not known, the ratio stands alone
     */
    static String text(Topic topic, long value, Map<MountingPlace, Part> parts) {
        boolean easiest = topic == Topics.EASIEST_GEAR;
        int[] rings = easiest || topic == Topics.HARDEST_GEAR ? teeth(parts.get(MountingPlace.CHAINRING), PartDetail.TEETH) : null;
        int[] sprockets = rings == null ? null : teeth(parts.get(MountingPlace.CASSETTE), PartDetail.SPROCKETS);
        if (sprockets == null) {
            return topic.text(value);
        }
        int ring = easiest ? rings[rings.length - 1] : rings[0];
        int sprocket = easiest ? sprockets[sprockets.length - 1] : sprockets[0];
        return ring + "x" + sprocket + " (" + BigDecimal.valueOf((double) ring / sprocket).setScale(2, RoundingMode.HALF_UP).toPlainString() + ")";
    }

    private static int[] teeth(Part part, PartDetail detail) {
        return part == null ? null : part.teeth(detail);
    }
}
