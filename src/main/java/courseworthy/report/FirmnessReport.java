package courseworthy.report;

import courseworthy.call.CloseThreshold;
import courseworthy.call.Firmness;
import courseworthy.call.FirmnessTable;
import courseworthy.call.TopicNote;
import courseworthy.claim.Claim;
import courseworthy.decision.Decision;
import courseworthy.task.Brief;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** How firm a decision is, in full: the word, why, the best evidence, how far advice agrees, what was assumed or not checked, and to what it is close. */
final class FirmnessReport {

    static final String ID = "firmness";
    private static final String TITLE = "How firm it is";
    /** So many of what was assumed or could not be checked are named. */
    private static final int NAMED = 4;

    private FirmnessReport() {
    }

    /** A section of a report on one decision; empty where it has no value. */
    static Section.Builder section(Brief brief, Decision decision) {
        Section.Builder out = Section.builder(ID, TITLE);
        Firmness firmness = decision == null ? null : brief.firmness(decision);
        return firmness == null ? out : out.paragraph(RichText.ofStrong(Phrases.capital(firmness.word()) + ".").text(" " + because(firmness)))
                .bullets(lines(firmness, brief.close(decision))).bullets("What is published on it:", published(TopicNote.on(decision.topic())));
    }

    /** The same among other things that are said about a decision. */
    static void addTo(Section.Builder out, Brief brief, Decision decision) {
        Firmness firmness = brief.firmness(decision);
        if (firmness != null) {
            out.paragraph(RichText.ofStrong(TITLE + ": " + firmness.word() + ".").text(" " + because(firmness))).bullets(lines(firmness, null));
        }
    }

    private static List<RichText> lines(Firmness firmness, CloseThreshold close) {
        List<RichText> out = new ArrayList<>();
        out.add(RichText.of("Best evidence: ").quoted(evidence(firmness)));
        out.add(RichText.of("Advice: " + agreement(firmness)));
        if (!firmness.assumed().isEmpty()) {
            out.add(RichText.of("Assumed under it: " + some(firmness.assumed())));
        }
        if (!firmness.unknown().isEmpty()) {
            Set<String> wanting = new LinkedHashSet<>();
            firmness.unknown().forEach(rule -> wanting.addAll(rule.wanting()));
            out.add(RichText.of("Not known, and could change it: ").quoted(some(List.copyOf(wanting))));
        }
        if (firmness.restsOn() != null) {
            Decision beneath = firmness.restsOn().decision();
            out.add(RichText.of("By itself it would be " + firmness.grade().level().word() + ". It rests on " + beneath.topic().name() + ", ").quoted(beneath.phrase())
                    .text(", which is " + firmness.restsOn().word() + "."));
        }
        if (close != null) {
            out.add(RichText.of("Close: ").quoted(Phrases.close(List.of(close)).get(0)));
        }
        return out;
    }

    private static String because(Firmness firmness) {
        return firmness.restsOn() == null ? firmness.grade().because()
                : FirmnessTable.shipped().foundation(firmness.grade().level(), firmness.restsOn().level()).because();
    }

    /** What is published on a topic, where that disagrees, what was not found, and why it hardly varies; none for no note. */
    static List<RichText> published(TopicNote note) {
        List<RichText> out = new ArrayList<>();
        if (note != null) {
            add(out, "Published: ", note.published());
            add(out, "Sources disagree: ", note.disagreement());
            add(out, "Not found: ", note.notFound());
            add(out, "From course to course: ", note.stays());
        }
        return out;
    }

    private static void add(List<RichText> out, String label, String text) {
        if (!text.isEmpty()) {
            out.add(RichText.ofStrong(label).text(text));
        }
    }

    private static String evidence(Firmness firmness) {
        Set<String> rules = new LinkedHashSet<>();
        for (Claim claim : firmness.carriers()) {
            rules.add(claim.origin().rule());
        }
        String by = rules.isEmpty() ? "" : ", " + some(List.copyOf(rules));
        return switch (firmness.evidence()) {
            case LIMIT -> "a limit, or what the rider has fixed" + by;
            case SOURCE -> "a published source" + by;
            case PRACTICES -> "several habits of the trade that rest on different facts" + by;
            case PRACTICE -> "one habit of the trade" + by;
            case OPINION -> "one person's view" + by;
            case NONE -> "none; it is the default";
        };
    }

    private static String agreement(Firmness firmness) {
        return switch (firmness.agreement()) {
            case ALL -> firmness.decision().taken().isEmpty() ? "none" : "agrees";
            case MOST -> "most of it agrees";
            case DIVIDED -> "is divided";
        };
    }

    private static String some(List<String> all) {
        String named = String.join(", ", all.subList(0, Math.min(NAMED, all.size())));
        return all.size() <= NAMED ? named : named + " and " + (all.size() - NAMED) + " more";
    }
}
