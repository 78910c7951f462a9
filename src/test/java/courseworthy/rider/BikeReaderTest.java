package courseworthy.rider;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.text.YamlReader;
import courseworthy.topic.Topics;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BikeReaderTest {

    private final Faults faults = new Faults();

    private Bike read(String text) {
        return BikeReader.read("b.yaml", YamlReader.read(text.getBytes(StandardCharsets.UTF_8), "b.yaml", faults), faults);
    }

    private List<String> said() {
        return faults.faults().stream().map(Fault::text).toList();
    }

    /** 1 psi = 6894.757293168 Pa (NIST SP 811). */
    @Test
    void everythingWrittenIsReadInBaseUnits() {
        Bike bike = read("""
                kind: cross-country full suspension
                mass: 11.2 kg
                rim inner width: 30 mm
                hookless: yes
                marked tyre pressure: 40 psi
                marked rim pressure: 3.5 bar
                tyre clearance: 2.4 in
                tubeless: yes
                use category: EN 3
                mass limit: 120 kg
                most fork travel: 130 mm
                lights: 6:30 h
                most rotor: 180 mm
                power meter: no
                """);
        assertThat(said()).isEmpty();
        assertThat(bike).isEqualTo(Bike.builder("cross-country full suspension").mass(11.2).rimInnerWidth(0.03).hookless(true)
                .markedTyrePressure(40 * 6894.757293168).markedRimPressure(350_000.0).tyreClearance(0.06096).tubeless(true).ledgeLimit(0.6).useCategory("EN 3")
                .massLimit(120.0).forkTravel(0.13).lights(23_400.0).mostRotor(0.18).powerMeter(false).build());
    }

    @Test
    void dampersAreCounted() {
        Bike bike = read("kind: trail\nrebound clicks: 12\ncompression clicks: 15\nshock rebound clicks: 8\nshock compression clicks: 4\nshock stroke: 45 mm\n");
        assertThat(said()).isEmpty();
        assertThat(bike.damping()).isEqualTo(new Bike.DampingSettings(12, 15, 8, 4, 0.045));
        assertThat(new Bike.DampingSettings(null, 9, null, null, null).orElse(bike.damping())).isEqualTo(new Bike.DampingSettings(12, 9, 8, 4, 0.045));
    }

    @Test
    void aFrameThatTakesNoTyreOnItsRimIsRefused() {
        read("kind: gravel\nrim inner width: 25 mm\ntyre clearance: 25 mm\n");
        assertThat(said()).containsExactly("b.yaml:3: tyre clearance: found \"25 mm\" on a rim of \"25 mm\", expected room for more than the rim\n"
                + "    Check both.");
    }

    @Test
    void anEmptyBlockIsNotGuessedAt() {
        assertThat(read("kind: gravel\n")).isEqualTo(Bike.of("gravel"));
    }

    /** EN 17406 and ASTM F2043-13(2018) as cited beside the table; the lower of mark and own figure counts. */
    @ParameterizedTest
    @CsvSource({"EN 1, 0.15", "EN 2, 0.15", "EN 3, 0.60", "EN 4, 1.20", "EN 5,", "EN 6, 0.15", "ASTM 1, 0", "ASTM 2, 0.15", "ASTM 3, 0.61",
            "ASTM 4, 1.22", "ASTM 5,"})
    void theMarkedCategoryBoundsTheDrop(String category, Double drop) {
        assertThat(read("kind: trail\nuse category: " + category + "\n").ledgeLimit()).isEqualTo(drop);
        assertThat(read("kind: trail\nuse category: " + category + "\nledge limit: 10 cm\n").ledgeLimit()).isEqualTo(drop == null ? 0.1 : Math.min(drop, 0.1));
        assertThat(read("kind: trail\nuse category: " + category + "\nledge limit: 3 m\n").ledgeLimit()).isEqualTo(drop == null ? 3 : drop);
    }

    @Test
    void everySlipIsSaidAtOnce() {
        read("""
                kind: mountain
                mass: 400 g
                rim inner width: 3 mm
                hookless: maybe
                marked tyre pressure: 40 bar
                marked rim pressure: 3,5 bar
                tyre clearance: 2.4 m
                tubeless: 1
                use category: 3
                ledge limit: 60 m
                mass limit: 30 kg
                most fork travel: 1.3 m
                lights: 6 kg
                most rotor: 18 mm
                power meter: left
                colour: red
                """);
        assertThat(said()).containsExactly(
                "b.yaml:1: kind: found \"mountain\", expected one of: road, gravel, cross-country hardtail, cross-country full suspension, trail",
                "b.yaml:2: mass: found \"400 g\", expected a mass from 4 kg to 40 kg",
                "b.yaml:3: rim inner width: found \"3 mm\", expected a width from 12 mm to 60 mm",
                "b.yaml:4: hookless: found \"maybe\", expected yes or no",
                "b.yaml:5: marked tyre pressure: found \"40 bar\", expected a pressure from 0.5 bar to 15 bar",
                "b.yaml:6: marked rim pressure: found \"3,5 bar\", expected a pressure with its unit, such as 1.6 bar or 23 psi\n"
                        + "    Write the decimal with a point and no thousands separator.",
                "b.yaml:7: tyre clearance: found \"2.4 m\", expected a width from 18 mm to 130 mm",
                "b.yaml:8: tubeless: found \"1\", expected yes or no",
                "b.yaml:9: use category: found \"3\", expected one of: EN 1, EN 2, EN 3, EN 4, EN 5, EN 6, ASTM 1, ASTM 2, ASTM 3, ASTM 4, ASTM 5",
                "b.yaml:10: ledge limit: found \"60 m\", expected a height from 0 m to 5 m",
                "b.yaml:11: mass limit: found \"30 kg\", expected a mass from 60 kg to 300 kg",
                "b.yaml:12: most fork travel: found \"1.3 m\", expected a travel from 20 mm to 250 mm",
                "b.yaml:13: lights: found \"6 kg\", expected a time with its unit, such as 6:30 h, 4 h, 45 min or 40 s",
                "b.yaml:14: most rotor: found \"18 mm\", expected a diameter from 120 mm to 250 mm",
                "b.yaml:15: power meter: found \"left\", expected yes or no",
                "b.yaml:16: colour: found an unknown key, expected one of: kind, mass, rim inner width, hookless, "
                        + "marked tyre pressure, marked rim pressure, tyre clearance, tubeless, use category, ledge limit, mass limit, most fork travel, lights, most rotor, power meter, "
                        + "rebound clicks, compression clicks, shock rebound clicks, shock compression clicks, shock stroke");
    }

    /** A clearance or a marking of a bike of no kind would bind whichever is called. */
    @Test
    void figuresBelongToABikeOfAKind() {
        for (String key : BikeReader.KEYS) {
            if (!key.equals("kind") && !key.equals("lights")) {
                Faults own = new Faults();
                BikeReader.read("b.yaml", YamlReader.read(("lights: 2 h\n" + key + ": x\n").getBytes(StandardCharsets.UTF_8), "b.yaml", own), own);
                assertThat(own.faults().stream().map(Fault::text)).as(key).contains("b.yaml:2: kind: found \"" + key
                        + "\" of a bike of no kind, expected the kind of bike it belongs to: road, gravel, cross-country hardtail, "
                        + "cross-country full suspension, trail\n    Add a line such as \"kind: gravel\" to this bike block.");
            }
        }
        read("lights: 2 h\n");
        read("kind: gravel\ntyre clearance: 45 mm\n");
        assertThat(said()).isEmpty();
    }

    @Test
    void theKindsAreTheOptionsOfTheTopicAndTheKeysThoseThatAreRead() {
        assertThat(BikeReader.KINDS).isEqualTo(Topics.BIKE.options());
        StringBuilder all = new StringBuilder();
        for (String key : BikeReader.KEYS) {
            all.append(key).append(": x\n");
        }
        read(all.toString());
        assertThat(said()).hasSize(BikeReader.KEYS.size()).noneMatch(s -> s.contains("unknown key"));
    }
}
