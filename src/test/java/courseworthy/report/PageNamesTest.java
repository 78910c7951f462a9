package courseworthy.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class PageNamesTest {

    private final PageNames names = new PageNames();

    private String rider(String name) {
        return names.path("riders/", "rider", name);
    }

    @Test
    void aPathIsMadeOfTheWordsOfANameWithoutAccents() {
        assertThat(rider("Zo\u00eb \u0141ukasz-M\u00fcller")).isEqualTo("riders/zoe-lukasz-muller.html");
        assertThat(names.path("", "brief", "2026-06-20", "Ida", "Heather Ridge (day 2)")).isEqualTo("2026-06-20-ida-heather-ridge-day-2.html");
    }

    /** Where a file system takes upper and lower case for one, so must the names. */
    @Test
    void noTwoNamesLeadToOneFile() {
        assertThat(List.of(rider("Ida"), rider("IDA"), rider("ida!"), rider("\u0130da"), rider("Ida 2"))).doesNotHaveDuplicates()
                .startsWith("riders/ida.html", "riders/ida-2.html").allMatch(path -> path.equals(path.toLowerCase(Locale.ROOT)));
    }

    /** Windows, "Naming Files, Paths, and Namespaces": no file may have the name of a device, whatever it ends in. */
    @Test
    void noFileIsNamedLikeADevice() {
        assertThat(rider("Con")).isEqualTo("riders/con-2.html");
        assertThat(rider("CON")).isEqualTo("riders/con-3.html");
        assertThat(rider("nul")).isEqualTo("riders/nul-2.html");
        assertThat(rider("Connie")).isEqualTo("riders/connie.html");
    }

    @Test
    void ofAHostileNameOnlyHarmlessLettersAreLeft() {
        List<String> paths = new ArrayList<>();
        for (String name : List.of("../../etc/passwd", "<script>alert(1)</script>", "a\u202Eb", "\u0000", "", "   ", "\u5929\u5c71", "C:\\x", "x".repeat(10_000), "-rf",
                "\ud83d\udeb2", ".hidden", "a%2Fb?c#d")) {
            paths.add(rider(name));
        }
        assertThat(paths).doesNotHaveDuplicates().allMatch(path -> path.matches("riders/[a-z0-9]+(-[a-z0-9]+)*\\.html")).allMatch(path -> path.length() < 60)
                .contains("riders/etc-passwd.html", "riders/rider.html", "riders/rider-2.html");
    }
}
