package courseworthy.report;

import courseworthy.build.Build;
import courseworthy.build.PlaceChange;
import courseworthy.report.picture.BeforeAfter;
import courseworthy.task.Brief;
import courseworthy.workshop.Part;
import java.util.List;

/** The bike of a brief's build as it stands now and as it is built for the day. */
final class BeforeAfterFigure {

    private BeforeAfterFigure() {
    }

    /** Null where no workshop is given or no bike can be built. */
    static Figure of(Brief brief) {
        Build build = brief.build();
        if (build == null || build.bike() == null || build.places().isEmpty()) {
            return null;
        }
        List<PlaceChange> changed = build.places().stream().filter(PlaceChange::changes).toList();
        BeforeAfter picture = new BeforeAfter(build.bike().name(), build.places().stream().map(BeforeAfterFigure::row).toList());
        RichText title = RichText.EMPTY.quoted(build.bike().name()).text(changed.isEmpty() ? " stays as it is" : ": " + Phrases.count(changed.size(), "place") + " of "
                + build.places().size() + (changed.size() == 1 ? " changes" : " change"));
        return new Figure(title, picture, RichText.ofQuoted(sentence(build, changed)), data(build.places()));
    }

    private static BeforeAfter.PlaceComparison row(PlaceChange each) {
        return new BeforeAfter.PlaceComparison(each.place().words(), name(each.before()), name(each.after()), each.changes(), name(each.from()), name(each.to()));
    }

    private static String name(Part part) {
        return part == null ? "" : part.name();
    }

    private static String sentence(Build build, List<PlaceChange> changed) {
        if (changed.isEmpty()) {
            return "Nothing on " + build.bike() + " is swapped.";
        }
        return "On " + build.bike() + " swap " + String.join(", ", changed.stream().map(each -> each.place().words()).toList()) + ", about "
                + Math.round(build.minutes()) + " min of work.";
    }

    private static Table data(List<PlaceChange> places) {
        Table.Builder out = Table.builder().column("Place").column("Now").column("For the day").column("From").column("Goes to");
        for (PlaceChange each : places) {
            RichText after = RichText.ofQuoted(name(each.after()));
            out.row(RichText.of(each.place().words()), RichText.ofQuoted(name(each.before())), each.changes() ? after.in(Style.STRONG) : after,
                    RichText.ofQuoted(name(each.from())), RichText.ofQuoted(name(each.to())));
        }
        return out.build();
    }
}
