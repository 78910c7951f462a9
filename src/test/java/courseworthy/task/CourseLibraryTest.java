package courseworthy.task;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.problem.Faults;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CourseLibraryTest {

    @TempDir
    private Path folder;

    private CourseLibrary read(Faults faults) {
        return CourseLibrary.read(new RequestReader(null, faults), Request.builder("course-profiles/heather-ridge.yaml").build(), folder.toString(), faults);
    }

    private void course(String name) throws IOException {
        Files.writeString(folder.resolve(name + ".yaml"), "name: " + name + "\nstretches:\n  - {length: 5 km, surface: gravel}\n");
    }

    @Test
    void ofALargeFolderTheFirstFilesAreRead() throws IOException {
        for (int i = 0; i < CourseLibrary.MOST_FILES + 3; i++) {
            course("c" + (1000 + i));
        }
        Faults faults = new Faults();

        CourseLibrary library = read(faults);

        assertThat(library.courses()).hasSize(CourseLibrary.MOST_FILES);
        assertThat(library.courses().get(0).course().name()).isEqualTo("c1000");
        assertThat(library.leftOut()).isEqualTo(3);
        assertThat(faults.warnings()).isEmpty();
    }

    /** So that a result is not written into the folder and taken for a course the next time. */
    @Test
    void theFolderCountsAsRead() throws IOException {
        course("a");
        Faults faults = new Faults();

        read(faults);

        assertThat(faults.read()).contains(folder);
    }

    @Test
    void shippedCoursesHaveToBeThere() {
        Faults faults = new Faults();

        CourseLibrary library = CourseLibrary.read(new RequestReader(folder, faults), Request.builder("a.yaml").build(), null, faults);

        assertThat(library).isNull();
        assertThat(faults.faults()).singleElement().satisfies(fault -> assertThat(fault.text())
                .isEqualTo("course-profiles/: found no such folder, expected a folder of course profiles (.yaml) and GPX tracks (.gpx)"));
    }
}
