package courseworthy.stage;

import courseworthy.call.Call;
import courseworthy.decision.Decision;
import courseworthy.topic.Topics;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.PartKind;
import java.util.List;
import java.util.Map;

/** The parts that wear on a bike of which no parts are known: fresh ones, as they are decided. */
public final class FreshParts {

    private FreshParts() {
    }

    public static List<Part> of(Call call) {
        Map<PartDetail, String> compound = word(PartDetail.COMPOUND, call.on(Topics.PAD_COMPOUND));
        return List.of(new Part(PartKind.CHAIN.word(), PartKind.CHAIN, 0, Map.of()), new Part("front brake pads", PartKind.PADS, 0, compound),
                new Part("rear brake pads", PartKind.PADS, 0, compound), tyre("front", call.on(Topics.FRONT_TYRE_TREAD)),
                tyre("rear", call.on(Topics.REAR_TYRE_TREAD)), new Part("sealant", PartKind.SEALANT, 0, Map.of()));
    }

    private static Part tyre(String end, Decision tread) {
        return new Part(end + " tyre", PartKind.TYRE, 0, tread.value() == null ? Map.of(PartDetail.END, end) : Map.of(PartDetail.END, end, PartDetail.TREAD, tread.text()));
    }

    private static Map<PartDetail, String> word(PartDetail detail, Decision decision) {
        return decision.value() == null ? Map.of() : Map.of(detail, decision.text());
    }
}
