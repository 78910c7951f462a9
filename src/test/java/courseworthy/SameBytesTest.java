package courseworthy;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.cli.Format;
import courseworthy.task.Request;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The same input gives the same bytes, wherever and however often. */
class SameBytesTest {

    private static final Request REQUEST = Request.builder("course-profiles/grey-shoulder.yaml").event("docs/examples/events/grey-shoulder.yaml")
            .rider("docs/examples/riders/joss-steel.yaml").build();

    private final ToolOutput tool = new ToolOutput();

    @ParameterizedTest
    @EnumSource(value = Format.class, names = {"TEXT", "JSON", "MARKDOWN"})
    void placeAndLanguageDoNotMatter(Format format) {
        String first = written(format);
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            for (String tag : List.of("tr-TR", "ar-EG-u-nu-arab", "de-CH", "th-TH-u-ca-buddhist", "hi-IN-u-nu-deva")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
                assertThat(written(format)).as(tag).isEqualTo(first);
            }
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @ParameterizedTest
    @EnumSource(value = Format.class, names = {"TEXT", "JSON", "MARKDOWN"})
    void askedFromSeveralThreadsAtOnceNothingMixes(Format format) throws Exception {
        String first = written(format);
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            List<Future<String>> all = new ArrayList<>();
            for (int i = 0; i < 6; i++) {
                all.add(threads.submit(() -> written(format)));
            }
            for (Future<String> one : all) {
                assertThat(one.get()).isEqualTo(first);
            }
        } finally {
            threads.shutdownNow();
        }
    }

    private String written(Format format) {
        return tool.brief(REQUEST, format) + tool.checklist(REQUEST, format) + tool.topic(REQUEST, "easiest gear", format)
                + tool.why(REQUEST, "easiest gear", null, null, format);
    }
}
