package courseworthy.course.ground;

import courseworthy.course.extract.MapWay;
import courseworthy.course.matching.MatchedPiece;
import courseworthy.course.matching.MatchedTrack;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;

/** What a map says of a course that has no place among the ground of its stretches: where the bike is carried, pushed or shipped, what is closed. */
final class MapNotes {

    /** Less of a thing is not worth a word, m: a crossing or a kerb. */
    private static final double LEAST = 5;
    /** So many places are named; more are counted. */
    private static final int MOST_PLACES = 4;
    private static final Set<String> CLOSED = Set.of("no", "private");
    private static final Set<String> HARDLY_VISIBLE = Set.of("bad", "horrible", "no");

    private final MatchedTrack matched;
    private final List<String> notes = new ArrayList<>();

    private MapNotes(MatchedTrack matched) {
        this.matched = matched;
    }

    static List<String> of(MatchedTrack matched, double length) {
        MapNotes out = new MapNotes(matched);
        if (matched.outside() > LEAST) {
            out.notes.add(metres(matched.outside()) + " of the track lie outside the area of the map.");
        }
        out.note("Steps, where you carry the bike, counted as walked", way -> PassageTags.isSteps(way.tags()));
        out.note("A ferry, counted with the time on the map, without waiting", way -> PassageTags.isFerry(way.tags()) && PassageTags.of(way.tags()) != null);
        out.note("A ferry; the map does not say how long it takes, so it is counted as if ridden", way -> PassageTags.isFerry(way.tags()) && PassageTags.of(way.tags()) == null);
        out.note("The map says that bicycles must be pushed here, counted as walked", way -> PassageTags.isPushed(way.tags()));
        out.note("Closed to bicycles on the map", MapNotes::closed);
        out.note("Hard to find, the map says (trail_visibility)", way -> HARDLY_VISIBLE.contains(way.tag("trail_visibility")));
        if (!Double.isNaN(matched.noise()) && matched.noise() > NOISY) {
            out.notes.add("The track is off by about " + Math.round(matched.noise()) + " m: little of its ground can be taken from the map for sure.");
        }
        return List.copyOf(out.notes);
    }

    /** Where a track is off by more, nothing is taken for sure, m. */
    private static final double NOISY = 20;

    private static boolean closed(MapWay way) {
        String bicycle = way.tag("bicycle");
        String vehicle = way.tag("vehicle").isEmpty() ? way.tag("access") : way.tag("vehicle");
        return CLOSED.contains(bicycle) || bicycle.isEmpty() && CLOSED.contains(vehicle);
    }

    private void note(String what, Predicate<MapWay> holds) {
        List<double[]> places = new ArrayList<>();
        for (MatchedPiece piece : matched.pieces()) {
            if (!piece.sure() || !holds.test(piece.way())) {
                continue;
            }
            double[] last = places.isEmpty() ? null : places.get(places.size() - 1);
            if (last != null && piece.from() - last[1] < 1) {
                last[1] = piece.to();
            } else {
                places.add(new double[] {piece.from(), piece.to()});
            }
        }
        places.removeIf(each -> each[1] - each[0] < LEAST);
        if (places.isEmpty()) {
            return;
        }
        List<String> named = new ArrayList<>();
        for (double[] place : places.subList(0, Math.min(MOST_PLACES, places.size()))) {
            named.add("km " + kilometres(place[0]) + " (" + metres(place[1] - place[0]) + ")");
        }
        String more = places.size() > MOST_PLACES ? " and " + (places.size() - MOST_PLACES) + " more" : "";
        notes.add(what + ": " + String.join(", ", named) + more + ".");
    }

    private static String kilometres(double metres) {
        return String.format(Locale.ROOT, "%.1f", metres / 1000);
    }

    private static String metres(double metres) {
        return metres < 1000 ? Math.round(metres) + " m" : kilometres(metres) + " km";
    }
}
