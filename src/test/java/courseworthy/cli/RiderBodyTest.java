package courseworthy.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a brief says of injuries and of a limit on gears by age. */
class RiderBodyTest {

    private static final String DOCTOR = "whether you may ride is for a doctor or physiotherapist to say, and your position for a bike fitter";
    private static final String LIMIT = "The event allows this rider at most 6.94 m a turn of the cranks, and 53x11 (4.82) goes further";

    @TempDir
    private Path folder;

    /** The whole brief, each run of white space as one space. */
    private String brief(String lines) throws IOException {
        Path rider = Files.writeString(folder.resolve("rider.yaml"), "name: Jo\nmass: 58 kg\npower: 190 W\nheld for: 1:00 h\n" + lines + "\n");
        Path event = Files.writeString(folder.resolve("event.yaml"), "name: A race\nrole: race\ndate: 2026-06-07\n"
                + "rules: {longest development: 6.94 m, longest development to age: 16}\n");
        CommandRun run = CommandRun.of("brief", "course-profiles/market-roads.yaml", "--event", event.toString(), "--rider", rider.toString(), "--full");
        assertThat(run.code()).as(run.err()).isZero();
        return run.out().replaceAll("\\s+", " ");
    }

    @Test
    void anInjuryIsLeftToThoseWhoCanJudgeIt() throws IOException {
        assertThat(brief("injuries: [back, knees]")).contains("injured or sore (back, knees)", DOCTOR, "Ask your doctor or physiotherapist whether and how long you may ride",
                "Leave cleats, saddle height and crank length as your physiotherapist or bike fitter has set them");
        assertThat(brief("injuries: []")).doesNotContain("physiotherapist");
    }

    /** 53 teeth over 6.94 m on a wheel of 2.13 m: 16.3 teeth, so 17. */
    @Test
    void aLimitOnGearsIsForThoseOfTheAge() throws IOException {
        assertThat(brief("year of birth: 2010")).contains(LIMIT, "With the 53 ring no sprocket may have fewer than 17 teeth", "roll the bike back over one full turn of the cranks");
        assertThat(brief("year of birth: 2009")).doesNotContain("The event allows this rider", "roll the bike back");
    }
}
