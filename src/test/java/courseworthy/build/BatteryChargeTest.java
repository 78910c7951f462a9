package courseworthy.build;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.call.Call;
import courseworthy.claim.Claim;
import courseworthy.claim.Evidence;
import courseworthy.claim.Force;
import courseworthy.claim.Rank;
import courseworthy.claim.RuleOrigin;
import courseworthy.claim.SourceLocation;
import courseworthy.claim.Verb;
import courseworthy.decision.Decision;
import courseworthy.decision.Settler;
import courseworthy.demand.Demands;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.topic.Topics;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.PartKind;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A ride of up to 5 h with 20 % in reserve asks for 6 h of battery. */
class BatteryChargeTest {

    private static Call call() {
        RuleOrigin author = new RuleOrigin("shipped/x", Rank.SHIPPED, 0, Force.MUST, Evidence.PRACTICE, "", "Because.", new SourceLocation("rules/x.yaml", 1));
        Decision reserve = Settler.settle(Topics.BATTERY_RESERVE, List.of(Claim.of(author, Topics.BATTERY_RESERVE, Verb.PREFER, 20, "20 %", List.of())));
        Map<Measure, MeasureValue> values = Map.of(Measure.SLOW_HOURS, MeasureValue.exact(Measure.SLOW_HOURS.scale().resolution().ticks(5 * 3600)));
        return new Call(new Demands(values, List.of(), List.of()),
                Topics.all().stream().map(each -> each == Topics.BATTERY_RESERVE ? reserve : Settler.notApplicable(each, List.of(), "Not asked.")).toList(), List.of(), List.of());
    }

    private static List<String> said(Double charge, Double hours) {
        Map<PartDetail, Object> details = new EnumMap<>(PartDetail.class);
        if (charge != null) {
            details.put(PartDetail.CHARGE, charge);
        }
        if (hours != null) {
            details.put(PartDetail.RUN_TIME, hours * 3600);
        }
        return BatteryCharge.of(new Part("cell", PartKind.BATTERY, 1, details), call()).stream().map(WearNote::text).toList();
    }

    @ParameterizedTest
    @CsvSource({"0.6, 10", "1, 6", ", 6", "1, ", ","})
    void aBatteryThatLastsIsNotSpokenOf(Double charge, Double hours) {
        assertThat(said(charge, hours)).isEmpty();
    }

    @Test
    void oneThatDoesNotLastIsCharged() {
        assertThat(said(0.59, 10.0)).containsExactly("cell: charged to 59 %, which lasts 5:54 h, and the ride and its reserve need 6:00 h; charge it");
        assertThat(said(0.9, null)).containsExactly("cell: charged to 90 %, and its run time from full is not given; charge it");
    }

    @Test
    void oneThatDoesNotLastFromFullNeedsASecond() {
        assertThat(said(1.0, 5.5)).containsExactly("cell: runs 5:30 h from full, and the ride and its reserve need 6:00 h; take a second one");
    }
}
