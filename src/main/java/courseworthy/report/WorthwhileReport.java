package courseworthy.report;

import courseworthy.build.Build;
import courseworthy.build.WorthwhileChanges;
import courseworthy.build.WorthwhileChanges.WorthwhileChange;
import courseworthy.build.WorthwhileChanges.Stay;
import courseworthy.ride.Range;
import courseworthy.workshop.Part;
import java.util.ArrayList;
import java.util.List;

/** What is worth changing on the bike and what to leave alone. */
final class WorthwhileReport {

    private WorthwhileReport() {
    }

    /** Adds both lists to the section on the build. */
    static void add(Section.Builder out, Build build) {
        out.section(Section.builder("build-changes", "Worth changing or not, compared with the bike as it is now").bullets(quoted(changes(build))));
        out.section(Section.builder("build-leave-alone", "Leave alone in the workshop").bullets(quoted(leaveAlone(build))));
    }

    private static List<RichText> quoted(List<String> lines) {
        return lines.stream().map(RichText::ofQuoted).toList();
    }

    private static List<String> changes(Build build) {
        List<String> out = new ArrayList<>();
        if (build.worthwhile() == null || build.worthwhile().all() == null) {
            return out;
        }
        for (WorthwhileChange each : build.worthwhile().changes()) {
            out.add(change(each));
        }
        if (out.size() > 1) {
            out.add("All together: " + figures(build.worthwhile().all()) + ".");
        }
        out.add("Times count weight, rolling resistance and drag only; gears, travel, droppers and power meters get no time.");
        return out;
    }

    private static String change(WorthwhileChange change) {
        String off = change.off().isEmpty() ? "" : " for " + names(change.off());
        String on = change.on().isEmpty() ? "off: " + names(change.off()) : names(change.on()) + off;
        return change.place() + ", " + on + ": " + figures(change) + "." + purpose(change) + fresh(change.fresh());
    }

    private static String figures(WorthwhileChange change) {
        String grams = change.grams() == null ? "mass change not known" : change.grams() == 0 ? "no change in mass"
                : Math.abs(change.grams()) + (change.grams() < 0 ? " g less" : " g more");
        return grams + ", " + returns(change.returns()) + "; about " + Math.round(change.minutes()) + " min of work";
    }

    private static String returns(Range returns) {
        return returns == null ? "time saved cannot be worked out" : WorthReport.returns(returns);
    }

    /** A word only where the time says one: what serves the call serves it for its own reasons. */
    private static String purpose(WorthwhileChange change) {
        if (change.serves().isEmpty()) {
            return "";
        }
        boolean slower = change.returns() != null && change.returns().mid() < 0;
        return (slower ? " No time gain; done for " : " Serves ") + BuildReport.reasons(change.serves()) + ".";
    }

    private static String fresh(List<Part> parts) {
        return parts.isEmpty() ? "" : " Hardly ridden yet: " + names(parts) + ". Ride it before the day, or leave it off.";
    }

    private static List<String> leaveAlone(Build build) {
        List<String> out = new ArrayList<>();
        if (build.worthwhile() != null) {
            for (Stay each : build.worthwhile().leaveAlone()) {
                out.add(stay(each, build.worthwhile()));
            }
        }
        return out;
    }

    private static String stay(Stay stay, WorthwhileChanges all) {
        String hours = stay.hours() == null ? "" : " (" + Math.round(stay.hours() / 3600) + " h ridden)";
        String where = stay.place() == null ? "" : " as " + stay.place();
        String returns = stay.returns() == null ? "" : " would save " + Figures.time(stay.returns()) + (WorthReport.close(stay.returns()).isEmpty() ? season(stay, all) : WorthReport.close(stay.returns())) + ", but";
        String because = String.join("; ", stay.because());
        return stay.part() + hours + where + (returns.isEmpty() ? ": " : returns + " ") + because + ".";
    }

    private static String season(Stay stay, WorthwhileChanges all) {
        return all.races() == null ? "" : all.races() == 1 ? ", once a year"
                : ", " + Figures.time(stay.returns().mid() * all.races()) + " over " + all.races() + " such races a year";
    }

    private static String names(List<Part> parts) {
        List<String> names = new ArrayList<>();
        for (Part part : parts) {
            names.add(part.name());
        }
        return String.join(", ", names);
    }
}
