package courseworthy.build;

import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;

/** The gears of a build as a mechanic reads them: chainring and sprocket teeth with the ratio, a cassette by its smallest and largest sprocket. */
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
        String label = topic == Topics.LARGEST_STEP ? "" : label(topic, parts);
        return label.isEmpty() ? topic.text(value) : label + " (" + ratio(topic, parts) + ")";
    }

    /** How a gear decision is labelled for the parts of a build: {@code 28x10}, {@code 12-speed 10-45}; empty for other topics, or where teeth are not known. */
    static String label(Topic topic, Map<MountingPlace, Part> parts) {
        int[] rings = teeth(parts.get(MountingPlace.CHAINRING), PartDetail.TEETH);
        int[] sprockets = teeth(parts.get(MountingPlace.CASSETTE), PartDetail.SPROCKETS);
        if (sprockets == null) {
            return "";
        }
        if (topic == Topics.LARGEST_STEP) {
            return sprockets.length + "-speed " + sprockets[0] + "-" + sprockets[sprockets.length - 1];
        }
        if (rings == null) {
            return "";
        }
        return topic == Topics.EASIEST_GEAR ? rings[rings.length - 1] + "x" + sprockets[sprockets.length - 1]
                : topic == Topics.HARDEST_GEAR ? rings[0] + "x" + sprockets[0] : "";
    }

    private static String ratio(Topic topic, Map<MountingPlace, Part> parts) {
        Long gear = TopicPlacement.gear(topic, parts.get(MountingPlace.CHAINRING), parts.get(MountingPlace.CASSETTE));
        return BigDecimal.valueOf(topic.resolution().base(gear)).setScale(2, RoundingMode.HALF_UP).toPlainString();
    }

    private static int[] teeth(Part part, PartDetail detail) {
        return part == null ? null : part.teeth(detail);
    }
}
