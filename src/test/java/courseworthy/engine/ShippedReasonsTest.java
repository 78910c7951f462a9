package courseworthy.engine;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.claim.Force;
import courseworthy.claim.Rank;
import courseworthy.claim.Verb;
import courseworthy.sheet.Row;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What the reason of a shipped row says must be what the row tests and what it asks for. */
class ShippedReasonsTest {

    /**
     * What a must may be for: safety, or what fits; or what is known of the rider's own things, which no shipped rule outvotes.
     * A row that is about speed, comfort or cost is no must. These are the rows with a must, apart from limits and checklist items.
     */
    private static final Set<String> MUSTS = Set.of(
            // cannot be ridden, breaks or falls
            "trail-bike-on-severe-ground", "no-road-bike-on-rough-ground",
            "no-drop-bar-on-rugged-trails", "trail-bike-fork", "cross-country-fork", "wide-enough-for-hookless", "wide-enough-for-its-pressure",
            "front-tyre-as-wide-as-the-rear-needs",
            "wide-gravel-tyres-in-sand", "wide-mountain-bike-tyres-in-sand", "narrow-tyres-for-deep-mud", "open-tread-for-mud",
            "mud-tyres-for-deep-mud", "much-less-pressure-in-sand", "shallow-front-in-a-gale", "gear-for-the-last-climb",
            "sintered-pads-in-the-wet", "sintered-pads-for-long-descents",
            // cold, dark, lost, dry or far from help
            "winter-gloves-in-the-cold", "long-sleeves-in-the-cold", "winter-layers-near-freezing", "clear-lenses-in-the-dark",
            "navigation-with-a-backup", "kit-without-support", "plugs-without-support", "two-bottles-hold-it",
            "more-than-bottles-hold",
            // what a stomach takes, and what works at all
            "food-for-the-podium", "food-for-modest-power", "food-for-little-power", "no-plugs-with-tubes",
            // the rider's own things
            "the-bike-at-hand", "the-rims-at-hand");

    /** Advice that gives way to any other: what is usual where nothing else is known of the rider or the course. */
    private static final Set<String> MAYS = Set.of("no-mudguard-in-the-dry", "cross-country-bar", "trail-bar", "road-bar",
            "narrow-low-bar-on-fast-gravel", "wider-higher-bar-on-chunky-gravel", "standard-grips-on-short-days", "standard-grips-on-smooth-days",
            "no-lights-by-day", "no-power-for-short-laps", "one-ring-on-gravel", "check-cables-for-a-short-race",
            "reference-pressure", "road-tyres-on-unknown-ground", "mountain-bike-tyres-on-unknown-ground");

    /** Words and turns that no mechanic uses to a rider. */
    private static final Pattern STILTED = Pattern.compile("^Who\\b|\\b(one's|oneself|anew|alike|mended|told|goes before|kept silent|the call)\\b"
            + "|\\bmakers?\\b|\\bcalliper|\\b[0-9a-z]+ (mm|km|kg|hours) and more\\b");

    private static List<String> withForce(Force force) {
        return ShippedRules.rules().stream().filter(row -> row.task() == null && row.origin().force() == force)
                .filter(row -> row.origin().rank() == Rank.SHIPPED).map(ShippedReasonsTest::id).toList();
    }

    @Test
    void aMustIsForSafetyOrFit() {
        assertThat(withForce(Force.MUST)).containsExactlyInAnyOrderElementsOf(MUSTS);
    }

    @Test
    void aMayIsWhatIsUsual() {
        assertThat(withForce(Force.MAY)).containsExactlyInAnyOrderElementsOf(MAYS);
    }

    @Test
    void reasonsAndItemsAreInAMechanicsWords() {
        assertThat(ShippedRules.rules()).allSatisfy(row -> {
            assertThat(row.origin().because()).doesNotContainPattern(STILTED);
            if (row.task() != null) {
                assertThat(row.task().what()).doesNotContainPattern(STILTED);
                assertThat(row.task().find()).doesNotContainPattern(STILTED);
            }
        });
    }

    @Test
    void aNoviceIsNeverAskedToLowerTheBar() {
        assertThat(row("bar-for-a-novice").sayings()).allMatch(saying -> saying.verb() == Verb.AT_LEAST);
    }

    private static Row row(String id) {
        return ShippedRules.rules().stream().filter(row -> id(row).equals(id)).findFirst().orElseThrow();
    }

    private static String id(Row row) {
        return row.origin().rule().substring("shipped/".length());
    }
}
