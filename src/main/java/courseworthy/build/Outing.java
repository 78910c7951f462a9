package courseworthy.build;

import courseworthy.call.Call;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartKind;
import courseworthy.workshop.Workshop;
import courseworthy.worth.WorthCalculator;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A start of one rider in a season, before its bike is built.
 *
 * @param order       by which rides of one date are sorted
 * @param priority    1 goes first where parts or time are short
 * @param day         what is ridden, and when
 * @param recommended what is recommended for it
 * @param bike        the bike it must be; null for any
 * @param mayChange   kinds of parts that may be changed on that bike; null for all
 */
public record Outing(int order, String rider, int priority, EventDay day, Recommendation recommended, String bike, Set<PartKind> mayChange) {

    Call call() {
        return recommended.call();
    }

    WorthCalculator worths() {
        return recommended.worths();
    }

    LocalDate date() {
        return day.date();
    }

    String event() {
        return day.name();
    }

    /** The workshop as far as it may be used. */
    Workshop open(Workshop all) {
        Set<String> closed = new LinkedHashSet<>();
        for (Part part : mayChange == null ? List.<Part>of() : all.parts()) {
            if (!mayChange.contains(part.kind()) && (part.bike() == null || !part.bike().name().equals(bike))) {
                closed.add(part.name());
            }
        }
        return (closed.isEmpty() ? all : all.without(closed)).as(rider);
    }
}
