package courseworthy.brief;

import courseworthy.brief.Page.Weight;
import courseworthy.call.Impact;
import courseworthy.call.Impact.Ride;
import courseworthy.claim.Author;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes what another sheet changes, for the terminal; nothing where nothing changes. */
public final class ImpactText {

    private final Page page;
    private final Impact impact;

    private ImpactText(Impact impact, boolean colours) {
        this.impact = impact;
        this.page = new Page(colours);
    }

    public static String of(Impact impact, boolean colours) {
        if (impact.changed() == 0) {
            return "";
        }
        ImpactText text = new ImpactText(impact, colours);
        text.turned("DECIDED OTHERWISE", impact.decisions());
        text.turned("MORE OR LESS SURE", impact.sureness());
        text.items();
        text.page.gap();
        text.page.text(0, 0, impact.changed() + " of " + rides(impact.rides()) + " changed.", Weight.PLAIN);
        return text.page.toString();
    }

    private void turned(String heading, List<Impact.Turned> all) {
        if (all.isEmpty()) {
            return;
        }
        page.heading(heading);
        for (Impact.Turned turned : all) {
            page.text(2, 6, turned.topic().name() + ": " + turned.from() + " becomes " + turned.to() + ", " + rides(turned.rides().size()), Weight.BOLD);
            page.text(6, 6, where(turned.rides()), Weight.PLAIN);
            String why = why(turned);
            if (!why.isEmpty()) {
                page.text(6, 6, "Such as " + named(turned.rides().get(0)) + ": " + why, Weight.FAINT);
            }
        }
    }

    private static String why(Impact.Turned turned) {
        List<String> out = new ArrayList<>();
        if (turned.now() != null) {
            out.add(said(turned.now().author(), turned.now().verb().word() + " " + turned.now().written()) + " " + turned.now().author().because());
        }
        if (turned.gone() != null) {
            out.add("No longer " + said(turned.gone().author(), turned.gone().verb().word() + " " + turned.gone().written()));
        }
        return String.join(" ", out);
    }

    private static String said(Author author, String what) {
        return author.rule() + ", " + what + ".";
    }

    private void items() {
        if (impact.items().isEmpty()) {
            return;
        }
        page.heading("ON THE CHECKLIST");
        for (Impact.Item item : impact.items()) {
            page.text(2, 6, (item.added() ? "added: " : "gone: ") + item.task().due().words() + ", " + item.task().what() + ", "
                    + rides(item.rides().size()), Weight.BOLD);
            page.text(6, 6, where(item.rides()), Weight.PLAIN);
        }
    }

    /** Courses with their riders. */
    private String where(List<Ride> rides) {
        if (rides.size() == impact.rides() && rides.size() > 1) {
            return "All of them.";
        }
        Map<String, List<String>> by = new LinkedHashMap<>();
        for (Ride ride : rides) {
            by.computeIfAbsent(ride.course(), course -> new ArrayList<>()).add(ride.rider());
        }
        List<String> out = new ArrayList<>();
        by.forEach((course, riders) -> out.add(riders.get(0).isEmpty() ? course : course + ": " + whom(riders)));
        return String.join("; ", out) + ".";
    }

    private String whom(List<String> riders) {
        return riders.size() == impact.riders() && riders.size() > 1 ? "all" : String.join(", ", riders);
    }

    private static String named(Ride ride) {
        return ride.course() + (ride.rider().isEmpty() ? "" : " with " + ride.rider());
    }

    private static String rides(int number) {
        return number + (number == 1 ? " ride" : " rides");
    }
}
