package courseworthy.report;

import courseworthy.task.ScoutAnswerResult;
import java.util.List;

/** A profile with what was found on a course, and what to do with it. */
public final class ScoutAnswerReport {

    private ScoutAnswerReport() {
    }

    public static Report of(ScoutAnswerResult result) {
        RichText track = result.track().isEmpty() ? RichText.EMPTY
                : RichText.of(result.copied() ? "The track was put beside it, " : "Its track is ").quoted(result.track()).text(".");
        return Report.builder(RichText.ofQuoted(result.file())).subtitle("a profile with what you found")
                .paragraph(track)
                .paragraphs(GroundPhrases.paragraphs(result.course()))
                .section(Section.builder("found", "What you found").bullets(result.answers().stream().map(RichText::ofQuoted).toList()))
                .section(Section.builder("next", "Next").listing("sh", List.of("courseworthy scout " + result.file(), "courseworthy brief " + result.file())))
                .build();
    }
}
