package courseworthy.brief;

import courseworthy.brief.Page.Weight;
import courseworthy.call.Flip;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** Writes what would change a decision, as a section of text, of Markdown or of JSON. */
final class FlipText {

    private FlipText() {
    }

    static void add(Page page, List<Flip> flips) {
        page.heading(FlipWords.TITLE.toUpperCase(Locale.ROOT));
        if (flips.isEmpty()) {
            page.text(2, 2, FlipWords.NONE, Weight.PLAIN);
        }
        page.texts("  - ", FlipWords.lines(flips));
        page.text(2, 2, FlipWords.HELD, Weight.FAINT);
    }

    static void add(Marked page, List<Flip> flips) {
        page.heading(2, FlipWords.TITLE);
        if (flips.isEmpty()) {
            page.paragraph(FlipWords.NONE);
        }
        for (String line : FlipWords.lines(flips)) {
            page.bullet(line);
        }
        page.gap();
        page.emphasised(FlipWords.HELD);
    }

    /** A list in the open object, smallest change first. */
    static void add(String field, Json json, List<Flip> flips) throws IOException {
        json.list(field);
        for (Flip flip : flips) {
            json.open();
            fields(json, flip);
            json.close();
        }
        json.endList();
    }

    private static void fields(Json json, Flip flip) throws IOException {
        json.string("measure", flip.measure().written());
        json.scaled("from", flip.measure().scale(), flip.from());
        json.scaled("to", flip.measure().scale(), flip.to());
        json.string("unit", Json.unit(flip.measure().scale()));
        json.string("way", flip.way().word());
        json.string("text", FlipWords.change(flip));
        json.yesNo("in_range", flip.inRange());
        json.object("decision");
        json.string("status", flip.decision().status().words());
        json.value("value", flip.decision().topic(), flip.decision().value());
        json.string("unit", Json.unit(flip.decision().topic()));
        json.string("text", flip.decision().text());
        json.close();
        if (!flip.tyre().isEmpty()) {
            json.string("tyre", Words.values(flip.tyre()));
        }
    }
}
