package courseworthy.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Profiles alone and over tracks, the faults in them, and what is assumed of the ground. */
class CourseReaderTest {

    private static final String LENGTH = "a length with its unit, such as 84 km, 52 mi, 1900 m, 6200 ft, 57 mm or 2.25 in";
    private static final String ORIGIN_KEYS = ", " + String.join(", ", GroundOriginReader.KEYS);
    private static final String GROUND_KEYS = String.join(", ", GroundReader.KEYS);

    @TempDir
    Path folder;

    private final Faults faults = new Faults();

    private Path write(String name, String text) {
        try {
            return Files.writeString(folder.resolve(name), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Course read(String text) {
        return read(text, null);
    }

    private Course read(String text, String ground) {
        return CourseReader.read(write("p.yaml", text), "p.yaml", ground, faults);
    }

    private List<String> said() {
        return faults.faults().stream().map(Fault::text).toList();
    }

    /** 1 mi = 1609.344 m, 1 ft = 0.3048 m (agreement of 1959). */
    @Test
    void everythingWrittenIsReadInBaseUnits() {
        Course course = read("""
                name: "Dales: the long way"
                summary: Up, along, down.
                start height: 1000 ft
                latitude: 47.1 deg
                longitude: -9.5 deg
                stretches:
                  - length: 2 mi
                    ascent: 90 m
                    descent: 10 m
                    surface: fine_gravel
                    smoothness: intermediate
                    tracktype: grade2
                    mtb:scale: 1+
                    steepest: 9 %
                    sharp stones: yes
                    ruts: no
                    roots: yes
                    sand: no
                    mud when wet: true
                    water crossings: 2
                    ledge height: 30 cm
                    turns per km: 4.5
                  - to: 10 km
                    descent: 80 m
                """);
        assertThat(said()).isEmpty();
        assertThat(course.name()).isEqualTo("Dales: the long way");
        assertThat(course.summary()).isEqualTo("Up, along, down.");
        assertThat(course.file()).isEqualTo("p.yaml");
        assertThat(course.length()).isCloseTo(10_000, within(1e-9));
        assertThat(course.climbing().ascent()).isEqualTo(90);
        assertThat(course.climbing().descent()).isEqualTo(90);
        assertThat(course.start().latitude()).isEqualTo(47.1);
        assertThat(course.start().longitude()).isEqualTo(-9.5);
        assertThat(course.track()).isNull();
        assertThat(course.repairs()).isEmpty();
        assertThat(course.notes()).isEmpty();
        assertThat(course.stretches().get(0)).isEqualTo(new Stretch(3218.688, 90.0, 10.0, 0.09, Ground.builder().surface(Surface.FINE_GRAVEL)
                .smoothness(Smoothness.INTERMEDIATE).trackGrade(2).mtbScale(1 + 1.0 / 3).sharpStones(true).ruts(false).roots(true).sand(false)
                .mudWhenWet(true).waterCrossings(2).ledgeHeight(0.3).turnsPerKm(4.5).build(), 7));
        assertThat(course.stretches().get(1)).isEqualTo(new Stretch(10_000 - 3218.688, null, 80.0, null, Ground.UNKNOWN, 23));
        assertThat(course.line().absolute()).isTrue();
        assertThat(course.line().measured()).isFalse();
        assertThat(course.line().elevation()[0]).isCloseTo(304.8, within(1e-9));
    }

    /** Every slip of a careless profile is told in one go, with its line. */
    @Test
    void allSlipsAreToldAtOnce() {
        assertThat(read("""
                nmae: Slips
                summary: One: two
                start height: 9900 m
                latitude: 47.1 deg
                stretches:
                  - length: 5
                    ascent: 20m
                  - lenght: 5 km
                  - length: 3 km
                    to: 8 km
                  - length: 0.5 m
                  - length: 2 km
                    ascent: 2100 m
                  - length: 1 km
                    ascent: 120 m
                    steepest: 8 %
                  - length: 1 km
                    surface: gravle
                    smoothness: rough
                    tracktype: 2
                    mtb:scale: 7
                    sharp stones: perhaps
                    water crossings: -1
                    ledge height: 40 m
                    turns per km: 5 /km
                    steepest: 120 %
                    mud: yes
                  - 4 km
                  - length: 1 km
                    length: 2 km
                    descent: 1,200 m
                  - length: 3000 km
                """)).isNull();
        assertThat(said()).containsExactly(
                "p.yaml:1: nmae: found an unknown key, expected one of: name, summary, track, attribution, start height, latitude, longitude, stretches"
                        + "\n    Did you mean \"name\"?",
                "p.yaml:2: found \": \" inside a text, expected text with \": \" in quotes"
                        + "\n    Put the whole text in double quotes; or, if this line is a key of its own, indent it like its neighbours.",
                "p.yaml:3: start height: found \"9900 m\", expected a height from -450 m to 9000 m",
                "p.yaml:4: longitude: found nothing, expected both latitude and longitude, or neither"
                        + "\n    Add a line \"longitude: 47.1 deg\".",
                "p.yaml:6: length: found \"5\", expected " + LENGTH + "\n    Add the unit, one of: km, mi, m, ft, cm, mm, in.",
                "p.yaml:7: ascent: found \"20m\", expected " + LENGTH + "\n    Put one space between the number and its unit.",
                "p.yaml:8: stretches: found neither length nor to, expected one of them: the stretch's length, or the distance from the start"
                        + " where it ends\n    Add a line \"length: 3 km\".",
                "p.yaml:8: lenght: found an unknown key, expected one of: length, to, ascent, descent, steepest, on foot, ferry, " + GROUND_KEYS + ORIGIN_KEYS
                        + "\n    Did you mean \"length\"?",
                "p.yaml:9: stretches: found both length and to, expected one of them: the stretch's length, or the distance from the start"
                        + " where it ends\n    Remove one of them.",
                "p.yaml:11: length: found \"0.5 m\", expected a length from 1 m to 2000 km",
                "p.yaml:13: ascent: found 2100 m up and 0 m down in 2 km, expected less climbing and descending than the stretch is long"
                        + "\n    Check the units of length, ascent and descent.",
                "p.yaml:16: steepest: found \"8 %\", expected at least the stretch's mean gradient, 12 %"
                        + "\n    Correct steepest, or length, ascent and descent.",
                "p.yaml:18: surface: found \"gravle\", expected one of: " + String.join(", ", Surface.tags()) + "\n    Did you mean \"gravel\"?",
                "p.yaml:19: smoothness: found \"rough\", expected one of: excellent, good, intermediate, bad, very_bad, horrible, very_horrible,"
                        + " impassable",
                "p.yaml:20: tracktype: found \"2\", expected one of: grade1, grade2, grade3, grade4, grade5",
                "p.yaml:21: mtb:scale: found \"7\", expected a grade from 0 to 6, with + or - after it where needed",
                "p.yaml:22: sharp stones: found \"perhaps\", expected yes or no",
                "p.yaml:23: water crossings: found \"-1\", expected a whole number from 0 to 100",
                "p.yaml:24: ledge height: found \"40 m\", expected a height from 0 m to 5 m",
                "p.yaml:25: turns per km: found \"5 /km\", expected a bare number, such as 3",
                "p.yaml:26: steepest: found \"120 %\", expected a gradient from 0 % to 100 %",
                "p.yaml:27: mud: found an unknown key, expected one of: length, to, ascent, descent, steepest, on foot, ferry, " + GROUND_KEYS + ORIGIN_KEYS,
                "p.yaml:28: stretches: found \"4 km\", expected a block of keys",
                "p.yaml:30: length: found the key a second time, expected each key once\n    It first stands in line 29.",
                "p.yaml:31: descent: found \"1,200 m\", expected " + LENGTH + "\n    Write the decimal with a point and no thousands separator.",
                "p.yaml:32: length: found \"3000 km\", expected a length from 1 m to 2000 km");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "name: x|p.yaml:1: stretches: found nothing, expected a list of stretches, each with a length;Add a line \"stretches: ...\".",
            "stretches: []|p.yaml:1: stretches: found an empty list, expected a list of stretches, each with a length;Start each stretch with a dash: \"- length: 3 km\".",
            "stretches: 5 km|p.yaml:1: stretches: found \"5 km\", expected a list of stretches, each with a length;Start each stretch with a dash: \"- length: 3 km\".",
            "stretches: [{to: 5 km}, {to: 4 km}]|p.yaml:1: to: found \"4 km\", expected a distance from the start that leaves the stretch 1 m to 2000 km; the stretch before ends at 5 km",
            "stretches: [{to: 0 km}]|p.yaml:1: to: found \"0 km\", expected a distance from the start that leaves the stretch 1 m to 2000 km; the stretch before ends at 0 m",
            "stretches: [{length: 1000 km}, {length: 1000 km}, {length: 1001 km}]|p.yaml:1: stretches: found a total of 3001 km, expected at most 3000 km;A profile is one lap."})
    void aStructureThatCannotBeIsTold(String text, String message) {
        assertThat(read(text + "\n")).isNull();
        assertThat(said()).containsExactly(message.replaceFirst(";(?! the)", "\n    "));
    }

    @Test
    void stretchesAreBounded() {
        String stretch = "  - {length: 10 m}\n";
        assertThat(read("stretches:\n" + stretch.repeat(5000)).stretches()).hasSize(5000);
        assertThat(read("stretches:\n" + stretch.repeat(5001))).isNull();
        assertThat(said()).containsExactly("p.yaml:2: stretches: found 5001 stretches, expected at most 5000\n    Join stretches that ride alike.");
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "1, 1", "2+, 2.3333333", "2-, 1.6666667", "6, 6", "6+, 6", "0-, 0"})
    void gradesMoveByAThird(String written, double grade) {
        Course course = read("stretches: [{length: 1 km, mtb:scale: " + written + "}]\n");
        assertThat(course.stretches().get(0).ground().mtbScale()).isCloseTo(grade, within(1e-6));
    }

    @Test
    void withoutRiseOrDropClimbingIsUnknownNotZero() {
        Course course = read("stretches: [{length: 5 km}, {length: 3 km}]\n");
        assertThat(course.climbing()).isNull();
        assertThat(course.line()).isNull();
        assertThat(course.notes()).containsExactly("No stretch says its ascent or descent: climbing is not known.");
        assertThat(course.stretches()).allSatisfy(s -> assertThat(s.ground()).isEqualTo(Ground.UNKNOWN));
        assertThat(course.start()).isNull();
        assertThat(course.name()).isEqualTo("p");
    }

    @Test
    void whereSomeStretchesSayNothingItIsSaid() {
        Course course = read("stretches: [{length: 5 km, ascent: 100 m}, {length: 3.25 km}]\n");
        assertThat(course.climbing().ascent()).isEqualTo(100);
        assertThat(course.notes()).containsExactly("Ascent and descent are not given on 3.3 km: drawn level, and not in the climbing.");
    }

    @Test
    void aStretchWithRiseAndDropRollsInWavesAtOneGradient() {
        Course course = read("stretches: [{length: 12 km, ascent: 240 m, descent: 120 m}]\n");
        ElevationLine line = course.line();
        assertThat(line.absolute()).isFalse();
        assertThat(line.size()).isEqualTo(1201);
        double[] e = line.elevation();
        assertThat(e[e.length - 1]).isCloseTo(120, within(1e-6));
        // Three waves of 4 km: the drop is shared out so that none gives back more than 40 m.
        assertThat(AscentCounter.along(line, 2).up()).isCloseTo(240, within(1.0));
        assertThat(AscentCounter.along(line, 2).down()).isCloseTo(120, within(1.0));
        assertThat(AscentCounter.along(line, 39).down()).isCloseTo(120, within(1.0));
        assertThat(AscentCounter.along(line, 41).down()).as("the last leg alone, which counts whatever its size").isCloseTo(40, within(1.0));
        for (int i = 1; i < e.length; i++) {
            assertThat(Math.abs(e[i] - e[i - 1]) / 10).isLessThanOrEqualTo(0.03 + 1e-9);
        }
    }

    @Test
    void oneRampIsStraightAndShortStretchesAreDrawnTo() {
        Course course = read("stretches: [{length: 1 km, ascent: 50 m}, {length: 3 m}, {length: 997 m, descent: 50 m}]\n");
        assertThat(course.line().elevation()[50]).isCloseTo(25, within(1e-9));
        assertThat(course.line().elevation()[100]).isCloseTo(50, within(1e-9));
        assertThat(course.line().elevation()[200]).isCloseTo(0, within(1e-6));
    }

    // --- over a track ---

    private static String hill() {
        double[] e = new double[401];
        for (int i = 0; i < e.length; i++) {
            e[i] = 500 + (i <= 200 ? i : 400 - i) * 0.5;
        }
        return Points.north(10, e);
    }

    @Test
    void stretchesAreLaidOverTheTrackByDistance() {
        write("hill.gpx", hill());
        Course course = read("""
                name: Hill
                track: hill.gpx
                stretches:
                  - {length: 1 km, surface: asphalt}
                  - {to: 4 km, surface: gravel}
                """);
        assertThat(said()).isEmpty();
        assertThat(course.name()).isEqualTo("Hill");
        assertThat(course.length()).isCloseTo(course.track().length(), within(1e-6)).isCloseTo(4000, within(1.0));
        assertThat(course.stretches().get(0).ascent()).isCloseTo(50, within(0.5));
        assertThat(course.stretches().get(0).descent()).isZero();
        assertThat(course.stretches().get(1).ascent()).isCloseTo(50, within(1.0));
        assertThat(course.stretches().get(1).descent()).isCloseTo(100, within(1.0));
        assertThat(course.climbing().ascent()).isCloseTo(100, within(1.0));
        assertThat(course.line().measured()).isTrue();
        assertThat(course.start().latitude()).isZero();
        assertThat(course.start().longitude()).isEqualTo(9.5);
        assertThat(course.notes()).isEmpty();
    }

    @Test
    void whereBothGiveRiseTheTracksWinsAndItIsSaid() {
        write("hill.gpx", hill());
        Course course = read("track: hill.gpx\nstart height: 20 m\nstretches: [{length: 4.02 km, ascent: 180 m, descent: 170 m}]\n");
        assertThat(course.climbing().ascent()).isCloseTo(100, within(1.0));
        assertThat(course.notes()).containsExactly(
                "The stretches add up to 4.02 km, the track to 4 km: their lengths were scaled to the track.",
                "The track's climbing is used, 100 m up and 100 m down; the profile says 180 m up and 170 m down.",
                "The track's height is used in place of the profile's start height.");
    }

    @ParameterizedTest
    @CsvSource({"3.93 km, true", "3.91 km, false", "4.07 km, true", "4.09 km, false"})
    void lengthsMayMissTheTrackByTwoPercent(String total, boolean accepted) {
        write("hill.gpx", hill());
        Course course = read("name: x\ntrack: hill.gpx\nstretches:\n  - length: " + total + "\n");
        assertThat(course != null).isEqualTo(accepted);
        if (!accepted) {
            assertThat(said()).containsExactly("p.yaml:3: stretches: found a total of " + total
                    + ", expected 4 km, the track's length, within 2 %\n    Correct the lengths, or add the stretches that are missing.");
        }
    }

    @Test
    void aTrackWithoutStretchesIsOneStretchOfUnknownGround() {
        write("hill.gpx", hill());
        Course alone = read("track: hill.gpx\n");
        Course direct = CourseReader.read(folder.resolve("hill.gpx"), "x/hill.gpx", null, faults);
        assertThat(alone.stretches()).hasSize(1).isEqualTo(direct.stretches());
        assertThat(direct.stretches().get(0).ground()).isEqualTo(Ground.UNKNOWN);
        assertThat(direct.name()).isEqualTo("hill");
        assertThat(said()).isEmpty();
    }

    @Test
    void aTrackWithoutElevationTakesTheProfilesClimbing() {
        write("flat.gpx", Points.north(10, new double[401]).replaceAll("<ele>[^<]*</ele>", ""));
        Course course = read("track: flat.gpx\nstart height: 300 m\nstretches: [{length: 4 km, ascent: 60 m, descent: 20 m}]\n");
        assertThat(course.climbing().ascent()).isEqualTo(60);
        assertThat(course.line().measured()).isFalse();
        assertThat(course.line().elevation()[0]).isEqualTo(300);
        assertThat(course.track().elevation()).isEqualTo(Track.Elevation.MISSING);
        assertThat(course.notes()).containsExactly("The track has no elevation.");
    }

    @Test
    void aTrackMayNotLieOutsideTheProfilesFolder() throws IOException {
        write("hill.gpx", hill());
        Path inner = Files.createDirectories(folder.resolve("inner"));
        Files.createSymbolicLink(inner.resolve("link.gpx"), folder.resolve("hill.gpx"));
        Files.copy(folder.resolve("hill.gpx"), inner.resolve("own.gpx"));
        Files.createSymbolicLink(inner.resolve("near.gpx"), inner.resolve("own.gpx"));
        for (String track : List.of("../hill.gpx", folder.resolve("hill.gpx").toString(), "link.gpx", "none.gpx", ".", "../inner", "own.gpx",
                "near.gpx", "./own.gpx")) {
            Path profile = Files.writeString(inner.resolve("p.yaml"), "name: x\ntrack: " + track + "\n");
            CourseReader.read(profile, "inner/p.yaml", null, faults);
        }
        String expected = ", expected a GPX file in the profile's folder or below it\n    ";
        assertThat(said()).containsExactly(
                "inner/p.yaml:2: track: found \"../hill.gpx\", which lies outside the profile's folder" + expected + "Put the track beside the profile.",
                "inner/p.yaml:2: track: found \"" + folder.resolve("hill.gpx") + "\", which lies outside the profile's folder" + expected
                        + "Put the track beside the profile.",
                "inner/p.yaml:2: track: found \"link.gpx\", a link that leads out of the profile's folder" + expected
                        + "Put the track itself beside the profile.",
                "inner/p.yaml:2: track: found \"none.gpx\", which is no file" + expected
                        + "Check the spelling; the path starts at the profile's folder.",
                "inner/p.yaml:2: track: found \".\", which is no file" + expected + "Check the spelling; the path starts at the profile's folder.",
                "inner/p.yaml:2: track: found \"../inner\", which is no file" + expected
                        + "Check the spelling; the path starts at the profile's folder.");
    }

    @Test
    void aFaultInTheTrackIsToldUnderItsOwnPath() {
        write("bad.gpx", "<gpx>");
        CourseReader.read(write("p.yaml", "track: bad.gpx\nstretches: [{length: 1 kg}]\n"), "some/where/p.yaml", null, faults);
        assertThat(faults.faults()).extracting(Fault::file).containsExactly("some/where/bad.gpx", "some/where/p.yaml");
    }

    @Test
    void aCourseIsRecognisedByItsContentWhereItsNameDoesNotTell() throws IOException {
        assertThat(CourseReader.read(write("course", "\uFEFF \n" + hill().substring(39)), "course", null, faults).track()).isNotNull();
        assertThat(CourseReader.read(write("profile.txt", "stretches: [{length: 1 km}]"), "profile.txt", null, faults).track()).isNull();
        assertThat(said()).isEmpty();
        CourseReader.read(Files.write(folder.resolve("ride.bin"), new byte[] {14, 16, 0, 8}), "ride.bin", null, faults);
        CourseReader.read(write("map.kml", "<kml/>"), "map.kml", null, faults);
        CourseReader.read(folder.resolve("none"), "none", null, faults);
        CourseReader.read(folder, "folder", null, faults);
        assertThat(said()).extracting(s -> s.substring(0, s.indexOf(", expected"))).containsExactly("folder: found a folder",
                "map.kml:1: found an XML file that starts with <kml>", "none: found no such file", "ride.bin: found a file that is no text");
        assertThat(said()).endsWith("ride.bin: found a file that is no text, expected a course profile (.yaml) or a GPX track (.gpx)\n    Export the course as GPX.");
    }

    // --- assumed ground ---

    @Test
    void assumedGroundFillsOnlyWhatIsUnknownAndIsKeptAccountOf() {
        Course course = read("stretches: [{length: 1.5 km, surface: asphalt}, {length: 0.5 km, smoothness: good}, {length: 8 km}]\n",
                "surface=gravel, smoothness=bad,mtb:scale=1-, sharp stones=yes, ledge height=0.45 m, turns per km=2.5");
        assertThat(said()).isEmpty();
        assertThat(course.stretches()).extracting(s -> s.ground().surface()).containsExactly(Surface.ASPHALT, Surface.GRAVEL, Surface.GRAVEL);
        assertThat(course.stretches()).extracting(s -> s.ground().smoothness())
                .containsExactly(Smoothness.BAD, Smoothness.GOOD, Smoothness.BAD);
        assertThat(course.assumed()).containsExactly("surface gravel on 8.5 km", "smoothness bad on 9.5 km", "mtb:scale 1- on 10 km",
                "sharp stones yes on 10 km", "ledge height 0.45 m on 10 km", "turns per km 2.5 on 10 km");
    }

    @Test
    void anAssumptionThatChangesNothingIsSaidSo() {
        Course course = read("stretches: [{length: 1 km, surface: asphalt, ascent: 0 m}]\n", "surface=gravel");
        assertThat(course.assumed()).isEmpty();
        assertThat(course.notes()).containsExactly("--ground surface=gravel changes nothing: every stretch says its own.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "gravel|--ground: found \"gravel\", expected key=value pairs with commas between, such as surface=gravel, smoothness=bad;Write \"surface=gravel\".",
            "bad|--ground: found \"bad\", expected key=value pairs with commas between, such as surface=gravel, smoothness=bad;Write \"smoothness=bad\".",
            "''|--ground: found nothing, expected key=value pairs with commas between, such as surface=gravel, smoothness=bad",
            "surface=|--ground: found \"surface=\", expected key=value pairs with commas between, such as surface=gravel, smoothness=bad",
            "surface=gravel,|--ground: found nothing, expected key=value pairs with commas between, such as surface=gravel, smoothness=bad",
            "surface=sand,surface=mud|--ground: surface: found the key a second time, expected each key once",
            "smothness=bad|--ground: smothness: found an unknown key, expected one of: KEYS;Did you mean \"smoothness\"?",
            "length=5 km|--ground: length: found an unknown key, expected one of: KEYS",
            "mtb:scale=9|--ground: mtb:scale: found \"9\", expected a grade from 0 to 6, with + or - after it where needed",
            "roots=often|--ground: roots: found \"often\", expected yes or no"})
    void aSlipInTheAssumptionIsTold(String ground, String message) {
        assertThat(read("stretches: [{length: 1 km}]\n", ground)).isNull();
        assertThat(said()).containsExactly(message.replace("KEYS", GROUND_KEYS).replace(";", "\n    "));
    }

    /** By the definitions of the OpenStreetMap wiki: mtb:scale 2 and more has rocks, steps and hairpins, tracktype 4 and 5 is soft. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"surface: asphalt, mtb:scale: 6 | mtb:scale: found \"6\" with surface asphalt",
        "surface: sett, mtb:scale: 2- | mtb:scale: found \"2-\" with surface sett", "surface: ground, smoothness: good, mtb:scale: 3 | mtb:scale: found \"3\" with smoothness good",
        "smoothness: excellent, mtb:scale: 4 | mtb:scale: found \"4\" with smoothness excellent", "surface: concrete, tracktype: grade5 | tracktype: found \"grade5\" with surface concrete",
        "surface: asphalt, mud when wet: yes | mud when wet: found \"yes\" with surface asphalt", "surface: mud, smoothness: excellent | smoothness: found \"excellent\" with surface mud"})
    void groundThatCannotBeIsRefused(String ground, String start) {
        read("stretches: [{length: 1 km, " + ground + "}]\n");
        assertThat(said()).containsExactly("p.yaml:1: " + start + ", expected ground there can be\n    Correct one of them, or write the piece as a stretch of its own.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"surface: asphalt, mtb:scale: 0", "surface: asphalt, mtb:scale: 1+", "surface: asphalt, smoothness: horrible, roots: yes", "surface: rock, mtb:scale: 5",
        "surface: snow, smoothness: good", "surface: asphalt, tracktype: grade1", "surface: wood, ledge height: 0.2 m"})
    void groundThereIsIsTaken(String ground) {
        assertThat(read("stretches: [{length: 1 km, " + ground + "}]\n")).isNotNull();
        assertThat(said()).isEmpty();
    }

    @Test
    void aStretchSaysHowItIsPassed() {
        Course course = read("stretches: [{length: 1 km, on foot: yes}, {length: 1 km, ferry: 12 min}, {length: 1 km, on foot: no}, {length: 1 km}]\n");
        assertThat(said()).isEmpty();
        assertThat(course.stretches()).extracting(Stretch::passage).containsExactly(Passage.ON_FOOT, Passage.ferry(720), Passage.RIDDEN, null);
    }

    @Test
    void anAssumptionIsNotTakenWhereItCannotBe() {
        Course course = read("stretches: [{length: 1 km, surface: asphalt, ascent: 0 m}, {length: 2 km, surface: ground, ascent: 0 m}]\n", "mtb:scale=3");
        assertThat(course.stretches()).extracting(each -> each.ground().mtbScale()).containsExactly(null, 3.0);
        assertThat(course.notes()).containsExactly("--ground is not taken on 1 km: it cannot be with what is written there.");
        assertThat(course.assumed()).containsExactly("mtb:scale 3 on 2 km");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "length: 1 m, ascent: 3000 m | ascent: found 3000 m up and 0 m down in 1 m, expected less climbing and descending than the stretch is long;"
                + "Check the units of length, ascent and descent.",
        "length: 1 km, ascent: 700 m | ascent: found 700 m up and 0 m down in 1 km, expected at most 60 % on average;Check the units of length, ascent and descent.",
        "length: 1 km, ascent: 400 m, descent: 300 m | ascent: found 400 m up and 300 m down in 1 km, expected at most 60 % on average;"
                + "Check the units of length, ascent and descent.",
        "length: 10 m, water crossings: 50 | water crossings: found \"50\" in 10 m, expected no more than fit into it",
        "length: 1 km, on foot: yes, ferry: 10 min | ferry: found a ferry on a stretch that is passed on foot, expected one of them;Write the ferry as a stretch of its own.",
        "length: 1 km, ferry: 10 s | ferry: found \"10 s\", expected a time from 1 min to 24 h",
        "length: 2 m, ledge height: 4 m | ledge height: found \"4 m\" in 2 m, expected less than the stretch is long"})
    void aStretchThatCannotBeIsRefused(String stretch, String message) {
        read("stretches: [{" + stretch + "}]\n");
        assertThat(said()).containsExactly("p.yaml:1: " + message.replace(";", "\n    "));
    }

    @Test
    void aPlaceThatTheTrackTellsIsSaid() {
        write("hill.gpx", hill());
        assertThat(read("track: hill.gpx\nlatitude: 1 deg\nlongitude: 2 deg\n").notes())
                .contains("The track's place is used in place of the profile's latitude and longitude.");
    }

    @Test
    void theKeysAreThoseThatAreRead() {
        read("zzz: 1\nstretches: [{length: 1 km, zzz: 1}]\n");
        assertThat(said().get(0)).contains("one of: " + String.join(", ", CourseReader.PROFILE_KEYS) );
        assertThat(said().get(1)).contains("one of: " + String.join(", ", CourseReader.STRETCH_KEYS) + ", " + GROUND_KEYS + ORIGIN_KEYS);
    }

    @Test
    void whatIsSaidOfGroundReadsBackAsTheSameGround() {
        String written = "surface=rock, smoothness=horrible, tracktype=grade4, mtb:scale=3+, sharp stones=yes, ruts=no, roots=yes, sand=no, "
                + "mud when wet=yes, water crossings=3, ledge height=0.6 m, turns per km=12";
        Ground ground = GroundReader.pairs(AssumedGround.option(written), faults);
        String[] said = GroundReader.said(ground);
        StringBuilder again = new StringBuilder();
        for (int i = 0; i < said.length; i++) {
            again.append(i == 0 ? "" : ", ").append(GroundReader.KEYS.get(i)).append('=').append(said[i]);
        }
        assertThat(again).hasToString(written);
        assertThat(said()).isEmpty();
    }
}
