package courseworthy.course.ground;

import courseworthy.course.Ground;
import courseworthy.course.Interval;
import courseworthy.course.Stretch;
import courseworthy.course.SurveyedGround;
import courseworthy.course.Track;
import courseworthy.course.TrackGround;
import courseworthy.course.extract.ExtractCache;
import courseworthy.course.extract.MapExtract;
import courseworthy.course.extract.MapWay;
import courseworthy.course.matching.MapMatcher;
import courseworthy.course.matching.MatchedPiece;
import courseworthy.course.matching.MatchedTrack;
import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.problem.ProgressWatch;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** The ground under a track by map extracts: what lies near it is read, the track matched to ways, and their tags made ground. */
public final class MapGround implements TrackGround {

    /** Who must be named in all that is made from OpenStreetMap data (Open Database Licence 1.0, section 4.3). */
    public static final String ATTRIBUTION = "(c) OpenStreetMap contributors, ODbL 1.0";

    /** Ways farther from the track are not looked at, m (judgement: many times what a track is off by). */
    private static final double CORRIDOR = 200;

    /** Stands as the rule where the track may be on one of several ways. */
    static final String WAYS_CLOSE_BY = "ways-close-by";
    /** Ground that may be more things than this is unknown (judgement). */
    private static final int MOST_POSSIBLE = 8;

    private final List<Path> extracts;
    private final ExtractCache cache;
    private final Function<String, ProgressWatch> watches;

    /**
     * @param extracts files of map data, as the user typed them
     * @param cached   whether what lies near a track is kept in the user's cache folder
     */
    public MapGround(List<Path> extracts, boolean cached) {
        this(extracts, cached, what -> ProgressWatch.unseen());
    }

    /**
     * As {@link #MapGround(List, boolean)}.
     *
     * @param watches starts to show how far the reading has come, by what is being done
     */
    public MapGround(List<Path> extracts, boolean cached, Function<String, ProgressWatch> watches) {
        this.watches = watches;
        this.extracts = List.copyOf(extracts);
        this.cache = cached ? ExtractCache.ofUser() : ExtractCache.none();
    }

    @Override
    public SurveyedGround under(Track track, String shown, Faults faults) {
        MapExtract extract;
        try (ProgressWatch watch = watches.apply("reading the map")) {
            extract = cache.read(extracts, track, CORRIDOR, faults, watch);
        }
        if (extract != null && !touches(track, extract)) {
            faults.add(Fault.warning(shown, 0, "", "a track outside the area of the map", "one in it", "Its ground is not taken from the map."));
        }
        return extract == null ? null : under(track, extract);
    }

    static SurveyedGround under(Track track, MapExtract extract) {
        if (!touches(track, extract)) {
            Stretch unknown = new Stretch(track.length(), null, null, null, Ground.UNKNOWN, 0);
            return new SurveyedGround(List.of(unknown), List.of(), List.of(), "");
        }
        MatchedTrack matched = MapMatcher.match(track, extract);
        List<GroundPiece> pieces = PieceMerger.merged(FordCounter.counted(track, extract, matched, pieces(matched)));
        List<Stretch> stretches = new ArrayList<>(pieces.size());
        pieces.forEach(each -> stretches.add(each.stretch()));
        return new SurveyedGround(stretches, bridged(matched), MapNotes.of(matched, track.length()), extract.attributionNeeded() ? ATTRIBUTION : "");
    }

    private static boolean touches(Track track, MapExtract extract) {
        for (Track.TrackPiece piece : track.pieces()) {
            for (int i = 0; i < piece.size(); i++) {
                if (extract.covers(piece.lat()[i], piece.lon()[i])) {
                    return true;
                }
            }
        }
        return false;
    }

    private static List<GroundPiece> pieces(MatchedTrack matched) {
        TagInterpreter tags = new TagInterpreter(GroundRules.shipped());
        List<GroundPiece> out = new ArrayList<>();
        for (MatchedPiece piece : matched.pieces()) {
            MapWay way = piece.way();
            out.add(piece.sure() ? GroundPiece.on(piece.from(), piece.to(), name(way), way.tags(), tags.of(way.tags())) : unsure(piece, tags));
        }
        return out;
    }

    /** A piece that may be on one of several ways: what is known of all of them is what its ground may be. */
    private static GroundPiece unsure(MatchedPiece piece, TagInterpreter tags) {
        Set<Map<String, String>> mayBe = new LinkedHashSet<>();
        boolean known = !piece.possible().isEmpty();
        for (MapWay way : piece.possible()) {
            List<Map<String, String>> ground = tags.of(way.tags()).possible();
            known &= !ground.isEmpty();
            mayBe.addAll(ground);
        }
        return known && mayBe.size() <= MOST_POSSIBLE ? GroundPiece.unsure(piece.from(), piece.to(), InferredGround.oneOf(WAYS_CLOSE_BY, mayBe))
                : GroundPiece.unmatched(piece.from(), piece.to());
    }

    /** A way's name, else its reference, else its number in the map. */
    static String name(MapWay way) {
        String name = way.tag("name").isEmpty() ? way.tag("ref") : way.tag("name");
        return name.isEmpty() ? "way " + way.id() : name;
    }

    private static List<Interval> bridged(MatchedTrack matched) {
        List<Interval> out = new ArrayList<>();
        for (MatchedPiece piece : matched.pieces()) {
            if (piece.way() != null && (is(piece.way(), "bridge") || is(piece.way(), "tunnel"))) {
                out.add(new Interval(piece.from(), piece.to()));
            }
        }
        return out;
    }

    private static boolean is(MapWay way, String key) {
        return !way.tag(key).isEmpty() && !way.tag(key).equals("no");
    }
}
