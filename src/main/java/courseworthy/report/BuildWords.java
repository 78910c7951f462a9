package courseworthy.report;

import courseworthy.build.Build;
import courseworthy.build.Build.Fitted;
import courseworthy.build.Build.NotMet;
import courseworthy.build.Build.Swap;
import courseworthy.fit.FitFindings.Finding;
import courseworthy.workshop.Part;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** A build in words, for text and Markdown alike. */
final class BuildWords {

    private BuildWords() {
    }

    static String title(Build build) {
        return build.bike() == null ? "No bike can be built within all limits."
                : build.bike() + ", " + kilograms(build.mass()) + weighed(build) + " (as it stands now " + kilograms(build.massNow()) + ")";
    }

    /** What stands over the lines of what is missing. */
    static String lacking(Build build) {
        return build.bike() == null ? "Missing" : "Missing elsewhere";
    }

    private static String weighed(Build build) {
        if (build.unweighed().isEmpty()) {
            return "";
        }
        List<String> names = new ArrayList<>();
        for (Part part : build.unweighed()) {
            names.add(part.name());
        }
        return " without " + String.join(", ", names) + ", whose mass is not known";
    }

    static String kilograms(double mass) {
        return BigDecimal.valueOf(mass).setScale(2, RoundingMode.HALF_UP).toPlainString() + " kg";
    }

    /** The part, and where it comes from where it has to move. */
    static String part(Build build, Fitted fitted) {
        for (Swap swap : build.swaps()) {
            if (swap.place() == fitted.place() && fitted.part().equals(swap.on())) {
                return fitted.part() + (swap.from() == null ? " (goes on)" : " (goes on, from " + swap.from() + ")");
            }
        }
        return fitted.part().name();
    }

    static String swap(Swap swap) {
        return swap.what() + " (" + swap.place().words() + (swap.from() == null ? "" : ", from " + swap.from()) + "): about "
                + Math.round(swap.minutes()) + " min" + grams(swap.grams()) + why(swap) + after(swap);
    }

    /** The work back, each step in short: what it asks for afterwards is as before. */
    static List<String> back(Build build) {
        List<String> out = new ArrayList<>();
        for (Swap swap : build.back()) {
            out.add(swap.what() + " (" + swap.place().words() + ", on " + swap.bike() + "): about " + Math.round(swap.minutes()) + " min"
                    + grams(swap.grams()) + ".");
        }
        if (!out.isEmpty()) {
            out.add(count(build.back().size()) + ", about " + Math.round(build.minutesBack()) + " min of work by estimate. What each asks for "
                    + "afterwards is on the checklist.");
        }
        return out;
    }

    private static String count(int swaps) {
        return swaps + (swaps == 1 ? " swap" : " swaps");
    }

    private static String why(Swap swap) {
        return swap.why().isEmpty() ? "" : ". For " + String.join(", ", swap.why());
    }

    private static String grams(Long grams) {
        return grams == null ? ", mass change not known" : grams == 0 ? "" : ", " + (grams > 0 ? "+" : "") + grams + " g";
    }

    private static String after(Swap swap) {
        String mechanic = swap.mechanic() ? " Work for a qualified mechanic where you are not sure of it." : "";
        return (swap.after().isEmpty() ? "." : ". " + String.join(". ", swap.after()) + ".") + mechanic;
    }

    static String total(Build build) {
        String needs = build.needs().isEmpty() ? "" : " To have at hand: " + String.join("; ", build.needs()) + ".";
        return count(build.swaps().size()) + ", about " + Math.round(build.minutes()) + " min of work by estimate." + needs + " Then a ride of 30 to 60 min on this very build, and every bolt and axle checked after it.";
    }

    static String notMet(NotMet each) {
        return each.topic() + ": " + each.got() + " where the call is " + each.wanted() + (each.part().isEmpty() ? "" : ". Would meet it: " + each.part());
    }

    static String finding(Finding finding) {
        List<String> names = new ArrayList<>();
        for (Part part : finding.parts()) {
            names.add(part.name());
        }
        return String.join(" and ", names) + ", " + finding.fit().result().words() + ": " + finding.fit().words() + ". " + finding.author().because();
    }
}
