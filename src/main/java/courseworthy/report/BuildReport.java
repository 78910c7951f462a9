package courseworthy.report;

import courseworthy.build.Build;
import courseworthy.build.Build.FittedPart;
import courseworthy.build.Build.Swap;
import courseworthy.build.WearNote;
import courseworthy.build.WorkPlan;
import courseworthy.event.WorkHours;
import courseworthy.fit.FitFindings.FitFinding;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** The parts of a workshop that come closest to the recommendation, what to swap, and where they fall short. */
final class BuildReport {

    static final String ID = "build";

    private BuildReport() {
    }

    /** The whole build; empty where no workshop is given. */
    static Section section(Build build) {
        return section(build, null);
    }

    /** The same with a picture of its parts in place of their list; with the list where there is no picture. */
    static Section section(Build build, Figure parts) {
        Section.Builder out = Section.builder(ID, "The build");
        if (build == null) {
            return out.build();
        }
        if (build.bike() == null) {
            out.caution(title(build));
        } else {
            out.paragraph(RichText.EMPTY.append(RichText.ofQuoted(title(build)).in(Style.STRONG)));
        }
        out.figure(parts).definitions(parts == null ? list(build) : List.of());
        list(out, "blocked", "What stops each bike, as it is now", findings(build.inTheWay()));
        list(out, "pressures", "Pressures for these tyres", build.pressures());
        list(out, "swaps", "To change, in this order", swaps(build));
        if (build.leftOut() != null) {
            out.paragraph(RichText.EMPTY.append(RichText.ofQuoted("In the time you have: " + SeasonReport.choice(build.leftOut()) + ".").in(Style.ATTENTION)));
        }
        out.section(evenings(build.plan()));
        if (build.position() != null) {
            list(out, "position", RichText.of("Position, as on ").quoted(build.position().from().bike().name()), PositionReport.inBrief(build.position()));
        }
        WorthwhileReport.add(out, build);
        list(out, "lacking", lacking(build), build.lacking());
        list(out, "due-back", "What has to be back on another bike", returns(build));
        list(out, "put-back", afterwards(build.plan().backFrom()), back(build));
        list(out, "wear", "Worn or due", worn(build));
        list(out, "to-pack", "Spares of yours that go with this build", build.spares());
        list(out, "short-of", "Where your parts fall short of the recommendation", UnmetPhrases.lines(build.notMet()));
        list(out, "check", "Check before you build", findings(build.toMind()));
        return out.build();
    }

    /** Its parts by place. */
    static List<Definition> list(Build build) {
        return build.parts().stream().map(each -> Definition.of(each.place().words(), RichText.ofQuoted(part(build, each)))).toList();
    }

    /** The bike and how much work it takes, for a rider in a hurry; empty where no workshop is given. */
    static Section inShort(Build build) {
        return inShort(ID, "The build", build).build();
    }

    /** The same as a section of another report. */
    static Section.Builder inShort(String id, String heading, Build build) {
        Section.Builder out = Section.builder(id, heading);
        if (build == null) {
            return out;
        }
        if (build.bike() == null) {
            return out.caution(title(build)).bullets(quoted(findings(build.inTheWay())));
        }
        out.paragraph(RichText.ofQuoted(title(build)).in(Style.STRONG));
        out.bullets(quoted(build.swaps().stream().map(BuildReport::work).toList()));
        return out.paragraph(build.notMet().isEmpty() ? RichText.EMPTY : RichText.of("Falls short: ").quoted(UnmetPhrases.inARow(build.notMet()) + "."));
    }

    private static void list(Section.Builder out, String id, String heading, List<String> lines) {
        list(out, id, RichText.of(heading), lines);
    }

    private static void list(Section.Builder out, String id, RichText heading, List<String> lines) {
        out.section(Section.builder(ID + "-" + id, heading).bullets(quoted(lines)));
    }

    private static List<RichText> quoted(List<String> lines) {
        return lines.stream().map(RichText::ofQuoted).toList();
    }

    private static List<String> findings(List<FitFinding> findings) {
        return findings.stream().map(BuildReport::finding).toList();
    }

    private static List<String> swaps(Build build) {
        List<String> out = new ArrayList<>();
        build.swaps().forEach(each -> out.add(swap(each)));
        if (!out.isEmpty()) {
            out.add(total(build));
        }
        return out;
    }

    private static String afterwards(LocalDate from) {
        return "Afterwards" + (from == null ? "" : ", from the evening of " + Phrases.weekdayAndYear(from)) + ": put the bike back as it is now";
    }

    private static String evenings(WorkHours hours) {
        return "The work by evening, " + (hours.varies() ? "in the time you have" : "with " + Figures.time(hours.usual() * 60.0) + " free in each");
    }

    /** Each evening with its steps below it. */
    private static Section.Builder evenings(WorkPlan plan) {
        List<ItemList.Item> out = new ArrayList<>();
        if (!plan.fits()) {
            out.add(ItemList.Item.of(RichText.of("There is not enough time for it before the bike leaves, in the time for work that you have given."), List.of()));
        }
        for (WorkPlan.WorkEvening evening : plan.evenings()) {
            String day = evening.date() == null ? "" : ", " + Phrases.weekdayAndYear(evening.date()) + " at the latest";
            String free = plan.hours().varies() ? " of " + evening.free() : "";
            RichText line = RichText.of("Evening " + evening.number() + day + ", " + evening.minutes() + free + " min:");
            out.add(ItemList.Item.of(line, quoted(evening.steps().stream().map(BuildReport::step).toList())));
        }
        return Section.builder(ID + "-evenings", evenings(plan.hours())).items(out);
    }

    private static String step(WorkPlan.Step step) {
        return step.what() + " (" + step.minutes() + " min)" + (step.pause() == 0 ? "" : ", " + Figures.time(step.pause() * 60.0) + " before " + step.before());
    }

    /** What is worn or due, each with what to do. */
    static List<String> worn(Build build) {
        return build.wear().stream().map(WearNote::text).toList();
    }

    private static String work(Swap swap) {
        return swap.what() + " (" + swap.place().words() + (swap.from() == null ? "" : ", from " + swap.from()) + "): about "
                + Math.round(swap.work().minutes()) + " min";
    }

    static String title(Build build) {
        return build.bike() == null ? "No bike can be built within all limits."
                : build.bike() + ", " + kilograms(build.mass()) + weighed(build) + " (as it is now " + kilograms(build.massNow()) + ")";
    }

    /** The heading over what is missing. */
    static String lacking(Build build) {
        return build.bike() == null ? "Missing" : "Missing from other bikes until put back";
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
    private static String part(Build build, FittedPart fitted) {
        for (Swap swap : build.swaps()) {
            if (swap.place() == fitted.place() && fitted.part().equals(swap.on())) {
                return fitted.part() + (swap.from() == null ? " (to fit)" : " (to fit, from " + swap.from() + ")");
            }
        }
        return fitted.part().name() + (build.renewed(fitted) ? " (new, with the tyre)" : movesAside(build, fitted) ? " (yours goes across: see Position)" : "");
    }

    /** Whether a saddle of the rider's own takes its place, which is a matter of the position. */
    private static boolean movesAside(Build build, FittedPart fitted) {
        return fitted.place() == MountingPlace.SADDLE && build.position() != null && build.position().ownSaddle() != null && build.position().ownSaddle() != fitted.part();
    }

    private static String swap(Swap swap) {
        return work(swap) + grams(swap.grams()) + why(swap) + along(swap) + after(swap);
    }

    /** The work back, each step in short: what it asks for afterwards is as before. */
    private static List<String> back(Build build) {
        List<String> out = new ArrayList<>();
        for (Swap swap : build.back()) {
            out.add(swap.what() + " (" + swap.place().words() + ", on " + swap.bike() + "): about " + Math.round(swap.work().minutes()) + " min"
                    + grams(swap.grams()) + along(swap) + ".");
        }
        if (!out.isEmpty()) {
            out.add(count(build.back().size()) + ", about " + Math.round(build.minutesBack()) + " min of work by estimate. What each needs "
                    + "afterwards is on the checklist.");
        }
        return out;
    }

    static List<String> returns(Build build) {
        List<String> out = new ArrayList<>();
        for (Build.Return each : build.returns()) {
            String to = each.to() == each.bike() ? " to " + each.bike() : " to " + each.to() + " on " + each.bike();
            out.add(each.part() + to + ", before " + each.bike() + " is ridden next" + (each.by() == null ? "" : ", on " + each.by()));
        }
        return out;
    }

    private static String count(int swaps) {
        return swaps + (swaps == 1 ? " swap" : " swaps");
    }

    private static String why(Swap swap) {
        return swap.why().isEmpty() ? "" : ". For " + reasons(swap.why());
    }

    /** Reasons in a row; a semicolon between them where one has a comma of its own. */
    static String reasons(List<String> why) {
        return String.join(why.stream().anyMatch(each -> each.contains(",")) ? "; " : ", ", why);
    }

    private static String along(Swap swap) {
        return swap.work().along().isEmpty() ? "" : ". " + String.join(". ", swap.work().along());
    }

    private static String grams(Long grams) {
        return grams == null ? ", mass change not known" : grams == 0 ? "" : ", " + (grams > 0 ? "+" : "") + grams + " g";
    }

    private static String after(Swap swap) {
        String mechanic = swap.work().mechanic() ? " If you are not sure how, leave it to a qualified mechanic." : "";
        return (swap.work().after().isEmpty() ? "." : ". Done when: " + String.join("; ", swap.work().after()) + ".") + mechanic;
    }

    static String total(Build build) {
        String needs = build.needs().isEmpty() ? "" : " You will need: " + String.join("; ", build.needs()) + ".";
        return count(build.swaps().size()) + ", about " + Math.round(build.minutes()) + " min of work by estimate." + needs
                + " Then test-ride this exact build for 30 to 60 min, and check every bolt and axle after it.";
    }

    private static String finding(FitFinding finding) {
        List<String> names = new ArrayList<>();
        for (Part part : finding.parts()) {
            names.add(part.name());
        }
        String result = switch (finding.fit().result()) {
            case FITS -> ": ";
            case UNKNOWN -> ": not known; ";
            case FLAGGED, DOES_NOT_FIT -> ", " + finding.fit().result().words() + ": ";
        };
        return Phrases.list(names) + result + finding.fit().words() + ". " + finding.origin().because();
    }
}
