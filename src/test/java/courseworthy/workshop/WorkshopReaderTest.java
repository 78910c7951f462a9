package courseworthy.workshop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.text.YamlReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WorkshopReaderTest {

    private static final Path EXAMPLE = Path.of("docs", "examples", "workshops", "cellar.yaml");
    private static final String TWO = """
            bikes:
              - {name: old bike, mass: 2 kg}
              - {name: new bike, mass: 2 kg}
            parts:
              - {name: front hoop, kind: wheel, on: old bike, end: front, mass: 800 g}
              - {name: wide tyre, kind: tyre, on: front hoop, mass: 700 g}
              - {name: thin tyre, kind: tyre, mass: 400 g}
            """;

    private Faults faults = new Faults();

    private Workshop read(String text) {
        return WorkshopReader.decode(YamlReader.read(text.getBytes(StandardCharsets.UTF_8), "w.yaml", faults), "w.yaml", faults);
    }

    private List<String> said() {
        return faults.faults().stream().map(Fault::text).toList();
    }

    private List<String> warned() {
        return faults.warnings().stream().map(Fault::text).toList();
    }

    @Test
    void whatIsWrittenIsReadInBaseUnits() {
        Workshop workshop = read("""
                workshop: A shed
                minutes: {tyre: 25 min}
                bikes:
                  - name: commuter
                    kind: gravel
                    mass: 2 kg
                    tyre clearance: [{bead seat: 622 mm, width: 45 mm}, {bead seat: 584 mm, width: 2 in}]
                parts:
                  - {name: hoop, kind: wheel, on: commuter, end: rear, mass: 900 g, bead seat: 622 mm, hookless: no, marked pressure: 72.5 psi, axle: thin}
                  - {name: tread, kind: tyre, on: hoop, mass: 1 lb, width: 40 mm, casing: heavy, hours used: 30 h}
                  - {name: cogs, kind: cassette, on: hoop, mass: 300 g, sprockets: [11, 13, 15], published with: [north, south]}
                  - {name: milk, kind: sealant, on: tread, mass: 60 g, added: 2026-03-01}
                  - {name: discs, kind: rotor, mass: 100 g, pads permitted: organic, owned: no, price: 40}
                """);
        assertThat(said()).isEmpty();
        assertThat(warned()).isEmpty();
        Part bike = workshop.bikes().get(0);
        assertThat(workshop.minutes()).containsExactly(Map.entry(PartKind.TYRE, 1500.0));
        assertThat(bike.clearance(0.622)).isEqualTo(0.045);
        assertThat(bike.clearance(0.584)).isEqualTo(0.0508);
        assertThat(bike.clearance(0.559)).as("no such wheel").isZero();
        assertThat(workshop.mounted(bike)).containsExactly(Map.entry(MountingPlace.REAR_WHEEL, workshop.find("hoop")),
                Map.entry(MountingPlace.REAR_TYRE, workshop.find("tread")), Map.entry(MountingPlace.REAR_SEALANT, workshop.find("milk")),
                Map.entry(MountingPlace.CASSETTE, workshop.find("cogs")));
        assertThat(workshop.find("hoop").number(PartDetail.MARKED_PRESSURE)).isCloseTo(72.5 * 6894.757293168, within(1e-6));
        assertThat(workshop.find("hoop").yes(PartDetail.HOOKLESS)).isFalse();
        assertThat(workshop.find("tread").number(PartDetail.MASS)).isEqualTo(0.45359237);
        assertThat(workshop.find("tread").number(PartDetail.HOURS_USED)).isEqualTo(108_000);
        assertThat(workshop.find("tread").word(PartDetail.CASING)).isEqualTo("heavy");
        assertThat(workshop.find("tread").bike()).isEqualTo(bike);
        assertThat(workshop.find("cogs").teeth(PartDetail.SPROCKETS)).containsExactly(11, 13, 15);
        assertThat(workshop.find("cogs").words(PartDetail.PUBLISHED_WITH)).containsExactly("north", "south");
        assertThat(workshop.find("milk").day(PartDetail.ADDED)).isEqualTo(LocalDate.of(2026, 3, 1));
        assertThat(workshop.find("discs").words(PartDetail.PADS_PERMITTED)).containsExactly("organic");
        assertThat(workshop.find("discs").owned()).isFalse();
        assertThat(workshop.find("discs").bike()).isNull();
        assertThat(workshop.find("hoop").has(PartDetail.RIM_DEPTH)).isFalse();
    }

    /** Masses of complete bikes, added up by hand from what is written in the example, kg. */
    @Test
    void theExampleIsRead() {
        Workshop workshop = WorkshopReader.read(EXAMPLE, "cellar.yaml", faults);
        assertThat(said()).isEmpty();
        assertThat(warned()).isEmpty();
        assertThat(workshop.bikes()).hasSize(3);
        assertThat(workshop.parts()).hasSizeGreaterThanOrEqualTo(60);
        assertThat(workshop.unweighed()).isEmpty();
        assertThat(List.of("steel bike", "hardtail", "borrowed bike")).extracting(name -> kilograms(workshop, name))
                .satisfiesExactly(steel -> assertThat(steel).isCloseTo(11.91, within(1e-9)),
                        hardtail -> assertThat(hardtail).isCloseTo(11.519, within(1e-9)),
                        borrowed -> assertThat(borrowed).isCloseTo(14.364, within(1e-9)));
    }

    private static double kilograms(Workshop workshop, String name) {
        Part bike = workshop.find(name);
        return bike.number(PartDetail.MASS) + bike.number(PartDetail.OTHER_MASS)
                + workshop.mounted(bike).values().stream().mapToDouble(part -> part.number(PartDetail.MASS)).sum();
    }

    @Test
    void aPartMountedTwice() {
        read(TWO.replace("on: front hoop", "on: [front hoop, new bike]"));
        assertThat(said()).containsExactly("w.yaml:6: on: found \"wide tyre\" mounted in 2 places, expected one bike or part\n"
                + "    Name where it is now; what serves several bikes is moved when it is its turn.");
    }

    @Test
    void twoPartsInOnePlace() {
        read(TWO.replace("name: thin tyre, kind: tyre", "name: thin tyre, kind: tyre, on: front hoop"));
        assertThat(said()).containsExactly("w.yaml:7: on: found \"thin tyre\" as a second front tyre on \"front hoop\" (there is \"wide tyre\"),"
                + " expected one");
    }

    @Test
    void aCircle() {
        read(TWO.replace("on: old bike", "on: wide tyre"));
        assertThat(said()).containsExactly("w.yaml:5: on: found a circle: \"front hoop\" is on \"wide tyre\", which is on \"front hoop\", expected what"
                + " carries it\n    One of them is on a bike, or lies loose: then leave its key out.");
        read("parts:\n  - {name: a, kind: bar, on: a}\n");
        assertThat(said()).contains("w.yaml:2: on: found a circle: \"a\" is on \"a\", expected what carries it\n    One of them is on a bike, or"
                + " lies loose: then leave its key out.");
    }

    @Test
    void aPlaceNobodyKnows() {
        read(TWO.replace("on: front hoop", "on: front hop"));
        assertThat(said()).containsExactly("w.yaml:6: on: found \"front hop\", which is neither a bike nor a part, expected the name of a bike"
                + " or a part\n    Did you mean \"front hoop\"?");
    }

    @Test
    void aTyreIsOnAWheel() {
        read(TWO.replace("on: front hoop", "on: old bike"));
        assertThat(said()).containsExactly("w.yaml:6: on: found a tyre on a bike, expected a wheel");
    }

    @Test
    void twoOfOneName() {
        read(TWO.replace("thin tyre", "wide tyre"));
        assertThat(said()).containsExactly("w.yaml:7: name: found a second \"wide tyre\" (the first is on line 6), expected a name of its own for"
                + " every bike and part\n    Tell them apart: \"wide tyre 2\".");
        read(TWO.replace("thin tyre", "old bike"));
        assertThat(said()).anyMatch(text -> text.contains("a second \"old bike\" (the first is on line 2)"));
    }

    @Test
    void aRotorThatDoesNotGoOnItsWheel() {
        String spline = "  - {name: disc, kind: rotor, on: front hoop, mass: 120 g, rotor mount: spline}\n";
        read(TWO.replace("end: front, mass", "end: front, rotor mount: six bolts, mass") + spline);
        assertThat(said()).containsExactly("w.yaml:8: on: found \"disc\" with rotor mount spline on \"front hoop\" with six bolts, expected the same rotor"
                + " mount on both\n    If an adapter joins them, write the wheel's mount for the rotor too.");
    }

    /** What is mounted is held by one interface: each that could be written otherwise on the two of them is named, once. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "cassette, on: hind hoop, freehub: short body | with freehub short body on \"hind hoop\" with long body, expected the same freehub on both",
        "tyre, on: hind hoop, bead seat: 584 mm | with bead seat 584 mm on \"hind hoop\" with 622 mm, expected the same bead seat on both",
        "insert, on: hind hoop, bead seat: 584 mm | with bead seat 584 mm on \"hind hoop\" with 622 mm, expected the same bead seat on both",
        "chainring, on: arms, ring mount: four lugs | with ring mount four lugs on \"arms\" with five lugs, expected the same ring mount on both",
        "power meter, on: arms, meter mount: lugs | with meter mount lugs on \"arms\" with hat, expected the same meter mount on both",
        "pedals, on: arms, pedal thread: thin | with pedal thread thin on \"arms\" with usual, expected the same pedal thread on both",
        "crown race, on: legs, race seat: 33 mm | with race seat 33 mm on \"legs\" with 39.8 mm, expected the same race seat on both",
        "bar, on: quill, bar clamp: 35 mm | with bar clamp 35 mm on \"quill\" with 31.8 mm, expected the same bar clamp on both",
        "saddle, on: tube, rails: oval | with rails oval on \"tube\" with round, expected the same rails on both"})
    void aPartThatIsNotHeldByWhatItIsOn(String part, String expected) {
        String whole = """
                bikes:
                  - {name: old bike, kind: road, mass: 3 kg}
                parts:
                  - {name: hind hoop, kind: wheel, end: rear, on: old bike, mass: 1 kg, freehub: long body, bead seat: 622 mm}
                  - {name: arms, kind: crank, on: old bike, mass: 600 g, ring mount: five lugs, meter mount: hat, pedal thread: usual}
                  - {name: legs, kind: fork, on: old bike, mass: 500 g, race seat: 39.8 mm}
                  - {name: quill, kind: stem, on: old bike, mass: 100 g, bar clamp: 31.8 mm}
                  - {name: tube, kind: seatpost, on: old bike, mass: 200 g, rails: round}
                """;
        read(whole + "  - {name: odd one, mass: 100 g, kind: " + part + "}\n");
        assertThat(said()).filteredOn(each -> !each.contains("warning")).containsExactly("w.yaml:9: on: found \"odd one\" " + expected
                + "\n    Read both on the parts, or leave out \"on\" where it lies loose.");
        faults = new Faults();
        read(whole + "  - {name: odd one, mass: 100 g, kind: " + part.replaceFirst(", [a-z ]+: [a-z0-9 ]+$", "") + "}\n");
        assertThat(said()).as("where it is not written").noneMatch(each -> each.contains("expected the same"));
    }

    @Test
    void aCassetteOnAFrontWheel() {
        read(TWO + "  - {name: cogs, kind: cassette, on: front hoop, mass: 300 g}\n");
        assertThat(said()).containsExactly("w.yaml:8: on: found a cassette on the front wheel \"front hoop\", expected a rear wheel");
    }

    /** A figure that is wrong is reported once, and not as missing too. */
    @Test
    void aWrongMassOrPriceIsNotCalledMissing() {
        read(TWO.replace("mass: 700 g", "mass: 70 kg") + "  - {name: wish, kind: tyre, owned: no, price: dear, mass: 600 g}\n");
        assertThat(said()).hasSize(2).noneMatch(each -> each.contains("found no "));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"11-34", "[11-34]", "[11 - 34]"})
    void sprocketsAsARange(String written) {
        read(TWO + "  - {name: cogs, kind: cassette, mass: 300 g, sprockets: " + written + "}\n");
        assertThat(said()).singleElement().asString().contains("expected every sprocket in a list, smallest first").endsWith("Write those between as well: [11, ..., 34].");
    }

    @Test
    void aTyreTenTimesTooHeavy() {
        read(TWO.replace("mass: 700 g", "mass: 7.6 kg"));
        assertThat(said()).containsExactly("w.yaml:6: mass: found \"7.6 kg\", expected the mass of a tyre, at most 3 kg\n    Is it 760 g?");
    }

    @Test
    void aWishWithoutAPrice() {
        read(TWO + "  - {name: dream hoop, kind: wheel, owned: no, end: rear, mass: 600 g}\n");
        assertThat(said()).isEmpty();
        assertThat(warned()).containsExactly("w.yaml:8: warning: price: found no price of \"dream hoop\", which is on the wish list, expected one\n"
                + "    Without it the wish list cannot say what it saves for its price.");
    }

    @Test
    void aRangeOfSprocketsIsNoList() {
        read(TWO + "  - {name: cogs, kind: cassette, mass: 300 g, sprockets: 11-34}\n  - {name: rings, kind: chainring, mass: 100 g, teeth: 46/30}\n");
        assertThat(said()).containsExactly("w.yaml:8: sprockets: found \"11-34\", expected every sprocket in a list, smallest first\n"
                + "    Write those between as well: [11, ..., 34].", "w.yaml:9: teeth: found \"46/30\", expected the rings in a list, large first\n    Write [46, 30].");
    }

    /** A chart of air pressures goes from light to heavy; each row has both figures, and both are believable. */
    @Test
    void aChartOfAirIsInOrder() {
        assertThat(chart("{rider: 60 kg, pressure: 5 bar}, {rider: 75 kg, pressure: 95 psi}")).isEmpty();
        assertThat(chart("{rider: 70 kg, pressure: 6 bar}, {rider: 70 kg, pressure: 5 bar}")).containsExactly("w.yaml:8: rider: found \"70 kg\" after a heavier or the same, expected riders from light to heavy, each once");
        assertThat(chart("{rider: 60 kg, pressure: 6 bar}, {rider: 70 kg, pressure: 5 bar}")).containsExactly("w.yaml:8: pressure: found \"5 bar\" below that of a lighter rider, expected pressures that rise with the rider's mass");
        assertThat(chart("")).containsExactly("w.yaml:8: air chart: found an empty list, expected a row for each mass on the chart");
        assertThat(chart("{rider: 7 kg, pressure: 60 bar}")).containsExactly("w.yaml:8: rider: found \"7 kg\", expected a mass from 20 kg to 250 kg",
                "w.yaml:8: pressure: found \"60 bar\", expected a pressure from 0.5 bar to 30 bar");
        assertThat(chart("{rider: 70 kg}, {pressure: 6 bar}")).hasSize(2).anyMatch(line -> line.contains("the pressure to start from")).anyMatch(line -> line.contains("the rider's mass it holds for"));
    }

    private static List<String> chart(String rows) {
        Faults found = new Faults();
        String text = TWO + "  - {name: legs, kind: fork, mass: 2 kg, air chart: [" + rows + "]}\n";
        WorkshopReader.decode(YamlReader.read(text.getBytes(StandardCharsets.UTF_8), "w.yaml", found), "w.yaml", found);
        return found.faults().stream().map(Fault::text).toList();
    }

    /** A family that a part is published to work with need not be in the workshop, however near its name is to one that is. */
    @Test
    void aFamilyNamedByPublishedWithIsNoSlip() {
        read(TWO + "  - {name: cogs, kind: cassette, mass: 300 g, drivetrain: hill group, published with: [hills group]}\n"
                + "  - {name: mech, kind: derailleur, mass: 300 g, drivetrain: hill group}\n");
        assertThat(said()).isEmpty();
        assertThat(warned()).isEmpty();
    }

    @Test
    void aMassThatIsMissingStopsNothing() {
        Workshop workshop = read(TWO.replace(", mass: 400 g", ""));
        assertThat(said()).isEmpty();
        assertThat(warned()).containsExactly("w.yaml:7: warning: mass: found no mass of \"thin tyre\", expected one\n"
                + "    Totals leave it out and say so; weigh it.");
        assertThat(workshop.unweighed()).containsExactly(workshop.find("thin tyre"));
    }

    @Test
    void aLabelThatIsNearlyAnother() {
        String text = """
                bikes: [{name: b, mass: 2 kg, axle: coarse thread}]
                parts:
                  - {name: w, kind: wheel, end: rear, mass: 1 kg, axle: coarse tread}
                """;
        read(text);
        assertThat(warned()).contains("w.yaml:3: warning: axle: found \"coarse tread\", which nothing else carries, expected a label that the other"
                + " side carries too\n    Did you mean \"coarse thread\"?");
        Faults fine = new Faults();
        String sizes = text.replace("coarse thread", "thread 12 mm").replace("coarse tread", "thread 15 mm");
        WorkshopReader.decode(YamlReader.read(sizes.getBytes(StandardCharsets.UTF_8), "w.yaml", fine), "w.yaml", fine);
        assertThat(fine.warnings()).as("other sizes are other labels, not slips").isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "kind: tyre, mass: 400 g | kind: tyr, mass: 400 g | kind: found \"tyr\"",
        "kind: tyre, mass: 400 g | mass: 400 g | kind: found nothing",
        "mass: 400 g | mass: 400 | mass: found \"400\"",
        "mass: 400 g | mass: 400 kg | mass: found \"400 kg\", expected a mass from 1 g to 30 kg",
        "mass: 400 g | mass: 400 g, travel: 100 mm | travel: found an unknown key",
        "mass: 400 g | mass: 400 g, casing: lite | casing: found \"lite\"",
        "mass: 400 g | mass: 400 g, width: 400 mm | width: found \"400 mm\"",
        "mass: 400 g | mass: 400 g, least rim: 30 mm, most rim: 20 mm | least rim: found \"30 mm\", expected no more than the most rim",
        "name: thin tyre, | '' | name: found nothing",
        "end: front | rim depth: 20 mm | end: found no end of \"front hoop\"",
        "kind: tyre, mass: 400 g | 'kind: cassette, sprockets: [11, 10], mass: 400 g' | sprockets: found a list out of order at 10",
        "kind: tyre, mass: 400 g | 'kind: cassette, sprockets: [11, 12], speeds: 11, mass: 400 g' | speeds: found 11 with 2 sprockets",
        "kind: tyre, mass: 400 g | 'kind: chainring, teeth: [50, 39, 30], mass: 400 g' | teeth: found 3 rings",
        "kind: tyre, mass: 400 g | 'kind: sealant, added: 2026-02-30, mass: 400 g' | added: found \"2026-02-30\"",
        "name: new bike, | 'name: new bike, tyre clearance: [{bead seat: 622 mm}],' | width: found nothing",
        "name: new bike, | 'name: new bike, tyre clearance: [{bead seat: 622 mm, width: 40 mm}, {bead seat: 622 mm, width: 45 mm}],' "
                + "| bead seat: found a second clearance for \"622 mm\"",
    })
    void otherSlips(String right, String wrong, String fault) {
        assertThat(TWO).contains(right);
        read(TWO.replace(right, wrong));
        assertThat(said()).anyMatch(text -> text.contains(fault));
        assertThat(said()).allMatch(text -> text.matches("(?s)w\\.yaml:\\d+: .*"));
    }

    /** Each slip alone, and all that is said of it. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "mass: 400 g | mass: 400 g, width: 150 mm | w.yaml:7: width: found \"150 mm\", expected a tyre's width from 18 mm to 130 mm",
        "mass: 400 g | mass: 400 g, width: 40 mm, measured width: 54 mm | w.yaml:7: measured width: found \"54 mm\" of a tyre of \"40 mm\","
                + " expected within a third of the width marked",
        "kind: tyre, mass: 400 g | 'kind: chainring, teeth: 5O, mass: 400 g' | w.yaml:7: teeth: found \"5O\", expected teeth as whole numbers from 16 to 70",
        "kind: tyre, mass: 400 g | 'kind: cassette, sprockets: [], mass: 400 g' | w.yaml:7: sprockets: found an empty list, expected teeth",
        "kind: tyre, mass: 400 g | 'kind: chainring, teeth: [50, 39, 30], mass: 400 g' | w.yaml:7: teeth: found 3 rings, expected one or two",
        "kind: tyre, mass: 400 g | 'kind: cassette, sprockets: [11, 10], mass: 400 g' | w.yaml:7: sprockets: found a list out of order at 10,"
                + " expected the smallest first",
        "kind: tyre, mass: 400 g | 'kind: chainring, teeth: [34, 50], mass: 400 g' | w.yaml:7: teeth: found a list out of order at 50, expected the larger first",
        "kind: tyre, mass: 400 g | 'kind: cassette, sprockets: [11, 12], speeds: 11, mass: 400 g' | w.yaml:7: speeds: found 11 with 2 sprockets,"
                + " expected one number",
        "name: new bike, | 'name: new bike, tyre clearance: [{bead seat: 622 mm, width: 40 mm}, {bead seat: 622 mm, width: 45 mm}],' "
                + "| w.yaml:3: bead seat: found a second clearance for \"622 mm\", expected one for each wheel size",
        "kind: tyre, mass: 400 g | 'kind: seatpost, length: 200 mm, least insertion: 220 mm, mass: 400 g' | w.yaml:7: least insertion: found \"220 mm\","
                + " expected no more than the length",
        "name: new bike, | 'name: new bike, least post insertion: 120 mm, most post insertion: 110 mm,' | w.yaml:3: least post insertion:"
                + " found \"120 mm\", expected no more than the most post insertion",
        "end: front, | '' | w.yaml:5: end: found no end of \"front hoop\", expected front or rear;Add \"end: front\" or \"end: rear\".",
        "kind: tyre, mass: 400 g | 'kind: brake pads, on: new bike, mass: 20 g' | w.yaml:7: end: found no end of \"thin tyre\", expected front or rear;"
                + "Add \"end: front\" or \"end: rear\".",
        "kind: tyre, mass: 400 g | 'kind: stem, on: shelf, mass: 150 g' | w.yaml:7: on: found \"shelf\", which is neither a bike nor a part,"
                + " expected the name of a bike or a part;Leave the key out where the part lies loose."})
    void aSlipIsSaidInFull(String right, String wrong, String message) {
        assertThat(TWO).contains(right);
        read(TWO.replace(right, wrong));
        assertThat(said()).containsExactly(message.replace(";", "\n    "));
    }

    @Test
    void whatIsPrintedOnAPartAndNotUsedIsSaid() {
        read(TWO.replace("kind: tyre, mass: 400 g", "kind: chainring, speeds: 11, mass: 40 g"));
        assertThat(warned()).containsExactly("w.yaml:7: warning: speeds: found \"11\", expected what a figure or a decision rests on\n"
                + "    It is not used. Leave it out.");
    }

    @Test
    void allFaultsAtOnce() {
        read(TWO.replace("mass: 400 g", "mass: 400").replace("on: front hoop", "on: nowhere").replace("end: front", "end: left"));
        assertThat(said()).hasSize(4);
    }

    /** One bike trained on for each rider; beside one that is anybody's there is no second. */
    @Test
    void oneIsTrainedOnForEachRider() {
        String two = "bikes:\n  - {name: a, mass: 2 kg, trained on: yes, set up for: Ann}\n  - {name: b, mass: 2 kg, trained on: yes, set up for: Bea}\n";
        Workshop workshop = read(two);
        assertThat(said()).isEmpty();
        assertThat(workshop.as("ann").find("a").yes(PartDetail.TRAINED_ON)).isTrue();
        assertThat(workshop.as("ann").find("b").yes(PartDetail.TRAINED_ON)).isNull();
        assertThat(workshop.as("Cat").bikes()).allMatch(bike -> bike.yes(PartDetail.TRAINED_ON) == null);
        assertThat(workshop.as(null).bikes()).allMatch(bike -> bike.yes(PartDetail.TRAINED_ON) == null);
        assertThat(read(two.replace(", set up for: Ann", "").replace(", trained on: yes, set up for: Bea", "")).as("Cat").find("a").yes(PartDetail.TRAINED_ON)).isTrue();
        assertThat(said()).isEmpty();
        for (String wrong : List.of(two.replace("Bea", "ANN"), two.replace(", set up for: Bea", ""), two.replace(", set up for: Ann", ""))) {
            Faults wrongs = new Faults();
            WorkshopReader.decode(YamlReader.read(wrong.getBytes(StandardCharsets.UTF_8), "w.yaml", wrongs), "w.yaml", wrongs);
            assertThat(wrongs.faults()).extracting(Fault::text).hasSize(1).allMatch(text -> text.startsWith("w.yaml:3: trained on: found \"b\" beside \"a\""));
        }
    }

    /** Spacers by the piece make up their height; a bar may reach back, a frame cannot; one bike lends its position. */
    @Test
    void whatAPositionRestsOn() {
        Workshop workshop = read("""
                parts:
                  - {name: rings, kind: spacers, mass: 9 g, pieces: [10 mm, 5 mm, 2.5 mm]}
                  - {name: swept, kind: bar, mass: 200 g, reach: -45 mm}
                """);
        assertThat(workshop.find("rings").number(PartDetail.HEIGHT)).isCloseTo(0.0175, within(1e-12));
        assertThat(workshop.find("rings").sizes(PartDetail.PIECES)).containsExactly(0.01, 0.005, 0.0025);
        assertThat(workshop.find("swept").number(PartDetail.REACH)).isEqualTo(-0.045);
        assertThat(said()).isEmpty();
        read("""
                bikes:
                  - {name: a, mass: 2 kg, trained on: yes, reach: -5 mm}
                  - {name: b, mass: 2 kg, trained on: yes, least stem: 90 mm, most stem: 80 mm}
                parts:
                  - {name: rings, kind: spacers, mass: 9 g, height: 20 mm, pieces: [10 mm, 5 mm]}
                  - {name: more rings, kind: spacers, mass: 9 g, pieces: [10 mm, 5]}
                  - {name: towers, kind: spacers, mass: 9 g, pieces: [200 mm]}
                """);
        assertThat(said()).containsExactly("w.yaml:2: reach: found \"-5 mm\", expected a frame's reach from 0 mm to 600 mm",
                "w.yaml:3: least stem: found \"90 mm\", expected no more than the most stem",
                "w.yaml:3: trained on: found \"b\" beside \"a\", expected one bike whose position the others take over\n"
                        + "    Where each rider has one, say whose each is: set up for: Ann",
                "w.yaml:5: pieces: found pieces that do not add up to the height of \"rings\", expected pieces that do",
                "w.yaml:6: pieces: found \"5\", expected a length with its unit, such as 84 km, 52 mi, 1900 m, 6200 ft, 57 mm or 2.25 in\n"
                        + "    Add the unit, one of: km, mi, m, ft, cm, mm, in.",
                "w.yaml:7: pieces: found \"200 mm\", expected heights from 0.5 mm to 100 mm");
    }
}
