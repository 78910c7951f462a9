package courseworthy.debrief;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.problem.Faults;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SavedBriefReaderTest {

    @TempDir
    private Path folder;

    /** A brief is kept for as long as the season, so one saved in the options' former words is still read. */
    @ParameterizedTest
    @CsvSource({"rear sealant, yes, tubeless", "rear sealant, no, tube", "front insert, yes, fitted", "front insert, no, none", "power meter, on, fitted",
        "power meter, off, none", "aero extensions, on, fitted", "helmet, on, worn", "rear sealant, tubeless, tubeless", "fork legs, slim, light", "fork legs, stout, stiff", "fork chassis, stiff, stiff",
        "saddle, the proven one, your usual saddle", "lockout, by hand, at the fork/shock"})
    void formerOptionsAreRead(String topic, String saved, String now) throws IOException {
        Path file = Files.writeString(folder.resolve("b.json"), "{\"format\" : 1,\n \"decisions\" : [{\"topic\" : \"" + topic + "\", \"value\" : \"" + saved
                + "\", \"unit\" : \"\", \"text\" : \"" + saved + "\", \"for\" : [], \"against\" : []}]}");
        Faults faults = new Faults();
        SavedBrief.Advice advice = SavedBriefReader.read(file, "b.json", faults).advice().get(0);
        faults.throwIfAny();
        assertThat(advice.topic().text(advice.value())).isEqualTo(now);
    }

    @ParameterizedTest
    @CsvSource({"rear sealant, tubles", "lights, on"})
    void wordsThatAreNoOptionsAreNot(String topic, String saved) throws IOException {
        Path file = Files.writeString(folder.resolve("b.json"), "{\"format\" : 1,\n \"decisions\" : [{\"topic\" : \"" + topic + "\", \"value\" : \"" + saved
                + "\", \"unit\" : \"\", \"text\" : \"" + saved + "\", \"for\" : [], \"against\" : []}]}");
        assertThat(SavedBriefReader.read(file, "b.json", new Faults()).advice()).isEmpty();
    }

    /** A rule that was renamed is found again under its id of today, which is one of the shipped rules. */
    @ParameterizedTest
    @CsvSource({"house/burn-the-light, shipped/time-the-main-light", "house/food-for-who-seldom-races, shipped/food-with-few-races-a-year",
        "house/known-pedals-for-who-seldom-races, shipped/usual-pedals-with-few-races-a-year", "house/mechanic-of-ones-own, shipped/kit-without-support",
        "house/plugs-for-a-mechanic-of-ones-own, shipped/plugs-without-support", "house/mend-a-flat-at-home, shipped/practise-a-puncture-at-home",
        "house/told-where-and-when, shipped/tell-someone-the-loop", "house/food-with-few-races-a-year, shipped/food-with-few-races-a-year",
        "limit/drop-over-15-cm, limit/ledge-over-15-cm", "limit/drop-over-60-cm, limit/ledge-over-60-cm",
        "limit/drop-over-120-cm, limit/ledge-over-120-cm"})
    void formerIdsOfRulesAreRead(String saved, String now) throws IOException {
        Path file = Files.writeString(folder.resolve("b.json"), "{\"format\" : 1,\n \"decisions\" : [{\"topic\" : \"food\", \"value\" : 60, \"unit\" : \"g/h\","
                + " \"text\" : \"60 g/h\", \"for\" : [{\"rule\" : \"" + saved + "\", \"says\" : {\"verb\" : \"prefer\", \"value\" : 60, \"unit\" : \"g/h\","
                + " \"text\" : \"60 g/h\"}}], \"against\" : []}]}");
        SavedBrief.Advice advice = SavedBriefReader.read(file, "b.json", new Faults()).advice().get(0);
        assertThat(advice.claims()).extracting(SavedBrief.SavedClaim::rule).containsExactly(now);
        assertThat(courseworthy.engine.ShippedRules.load().sheets().stream().flatMap(sheet -> sheet.rows().stream()).map(row -> row.origin().rule())).contains(now);
    }
}
