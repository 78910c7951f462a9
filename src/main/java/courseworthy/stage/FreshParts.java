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

    /** @param of what follows each name; empty where there is one bike alone */
    public static List<Part> of(Call call, String of) {
        Map<PartDetail, String> compound = word(PartDetail.COMPOUND, call.on(Topics.PAD_COMPOUND));
        return List.of(new Part(PartKind.CHAIN.word() + of, PartKind.CHAIN, 0, Map.of()), new Part("front brake pads" + of, PartKind.PADS, 0, compound),
                new Part("rear brake pads" + of, PartKind.PADS, 0, compound), tyre("front", of, call.on(Topics.FRONT_TYRE_TREAD)),
                tyre("rear", of, call.on(Topics.REAR_TYRE_TREAD)), new Part("sealant" + of, PartKind.SEALANT, 0, Map.of()));
    }

    private static Part tyre(String end, String of, Decision tread) {
        return new Part(end + " tyre" + of, PartKind.TYRE, 0, tread.value() == null ? Map.of(PartDetail.END, end) : Map.of(PartDetail.END, end, PartDetail.TREAD, tread.text()));
    }

    private static Map<PartDetail, String> word(PartDetail detail, Decision decision) {
        return decision.value() == null ? Map.of() : Map.of(detail, decision.text());
    }
}
