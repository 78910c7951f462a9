package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a brief says of injuries and of a limit on gears by age. */
class RiderBodyTest {

    private static final String DOCTOR = "whether you may ride is for a doctor or physiotherapist to say, and your position for a bike fitter";
    private static final String LIMIT = "The event allows this rider at most 6.94 m a turn of the cranks, and no common cassette ends there: 53x18 (2.94) keeps to it with the smaller sprockets blocked off";

    @TempDir
    private Path folder;

    /** The whole brief, each run of white space as one space. */
    private String brief(String lines) throws IOException {
        return brief("market-roads", lines);
    }

    private String brief(String course, String lines, String... more) throws IOException {
        Path rider = Files.writeString(folder.resolve("rider.yaml"), "name: Jo\nmass: 58 kg\npower: 190 W\nheld for: 1:00 h\n" + lines + "\n");
        Path event = Files.writeString(folder.resolve("event.yaml"), "name: A race\nrole: race\ndate: 2026-06-07\n"
                + "rules: {longest development: 6.94 m, longest development to age: 16}\n");
        List<String> words = new ArrayList<>(List.of("brief", "course-profiles/" + course + ".yaml", "--event", event.toString(), "--rider", rider.toString(), "--full"));
        words.addAll(List.of(more));
        CommandRun run = CommandRun.of(words.toArray(String[]::new));
        assertThat(run.code()).as(run.err()).isZero();
        return run.out().replaceAll("\\s+", " ");
    }

    @Test
    void anInjuryIsLeftToThoseWhoCanJudgeIt() throws IOException {
        assertThat(brief("injuries: [back, knees]")).contains("injured or sore (back, knees)", DOCTOR, "Ask your doctor or physiotherapist whether and how long you may ride",
                "Leave cleats, saddle height and crank length as your physiotherapist or bike fitter has set them");
        assertThat(brief("injuries: []")).doesNotContain("physiotherapist");
    }

    /** 6.94 m on a wheel of 2.13 m are 3.26 turns: 53 over 16 teeth is 3.31, and the next sprocket of an 11-32 cassette has 18. */
    @Test
    void aLimitOnGearsIsForThoseOfTheAge() throws IOException {
        assertThat(brief("year of birth: 2010")).contains(LIMIT, "Gears 39x32 to 53x18", "roll the bike back until that crank is down again, and measure",
                "No farther from mark to mark than the event allows");
        assertThat(brief("year of birth: 2009")).contains("to 53x11").doesNotContain("The event allows this rider", "roll the bike back");
    }

    /** The smallest sprocket of the cellar's road cassettes has 11 teeth: on 46 teeth 4.18, on the 3.10 that 6.94 m are with wide tyres too much. */
    @Test
    void aBuildWhoseGearsGoPastALimitSaysSo() throws IOException {
        assertThat(brief("flintmoor-100", "year of birth: 2010", "--workshop", "docs/examples/workshops/cellar.yaml")).contains(
                "hardest gear: 46x11 (4.18), which is harder than the event allows this rider, recommended 44x15 (2.93)",
                "or the smaller sprockets blocked off, if the event allows that");
    }
}
