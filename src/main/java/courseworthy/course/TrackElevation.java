package courseworthy.course;

import courseworthy.course.terrain.ElevationTiles;
import courseworthy.course.terrain.TerrainProfile;
import courseworthy.problem.Faults;
import java.util.ArrayList;
import java.util.List;

/** Chooses between a track's own heights and those of elevation tiles, and says which. */
final class TrackElevation {

    /**
     * A track whose own heights stray further than this from the ground's, m (90 % of its points, a constant difference aside), is worse than
     * a tile: so far off an older tile may be by its specification (SRTM, 16 m at 90 %; Mukul et al. 2017, Sci. Rep. 7:41672).
     */
    static final double TILE_ERROR = 16;
    /** Share of a track that tiles have to cover before they replace its own heights (judgement). */
    private static final double ENOUGH = 0.95;

    private TrackElevation() {
    }

    /**
     * Lays a track over tiles.
     *
     * @param bridged stretches of bridges and tunnels, m along the track
     * @return the track as it is or with the tiles' heights, with a note that says which; null with a fault where a tile cannot be read
     */
    static TrackCleaner.CleanedTrack choose(TrackCleaner.CleanedTrack cleaned, ElevationTiles tiles, List<Interval> bridged, Faults faults) {
        TerrainProfile ground = TerrainProfile.along(cleaned.track(), tiles, bridged, faults);
        if (ground == null) {
            return null;
        }
        boolean own = cleaned.track().elevation() == Track.Elevation.KNOWN;
        if (ground.covered() < (own ? ENOUGH : 0.5)) {
            return noted(cleaned, "The elevation tiles cover " + percent(ground.covered()) + " of the track: "
                    + (own ? "its own heights are used." : "too little to use them."));
        }
        double strays = own ? ground.strays(cleaned.track()) : Double.NaN;
        if (own && strays <= TILE_ERROR) {
            return noted(cleaned, "The track's own heights are used: 90 % lie within " + Math.max(1, Math.round(strays))
                    + " m of the elevation tiles, once a constant difference is taken off.");
        }
        String why = own ? "the track's own stray by " + Math.round(strays) + " m (90 %), more than the " + Math.round(TILE_ERROR) + " m a tile may be off"
                : cleaned.track().elevation() == Track.Elevation.MISSING ? "the track has none" : "the track's own are not believable";
        return replaced(cleaned, ground, "Heights come from elevation tiles (" + named(tiles.used()) + "; a height every " + Math.round(tiles.spacing())
                + " m), since " + why + ". Tiles often show tree tops, and no ramp shorter than 100 m.");
    }

    private static String percent(double share) {
        return (int) Math.floor(100 * share) + " %";
    }

    private static String named(List<String> files) {
        return files.size() <= 3 ? String.join(", ", files) : files.get(0) + " and " + (files.size() - 1) + " more";
    }

    private static TrackCleaner.CleanedTrack noted(TrackCleaner.CleanedTrack cleaned, String note) {
        List<String> notes = new ArrayList<>(cleaned.notes());
        notes.add(note);
        return new TrackCleaner.CleanedTrack(cleaned.track(), cleaned.line(), cleaned.counter(), cleaned.climbing(), cleaned.repairs(), notes);
    }

    /** The same points with the ground's heights; what was said of the track's own heights no longer holds. */
    private static TrackCleaner.CleanedTrack replaced(TrackCleaner.CleanedTrack cleaned, TerrainProfile ground, String note) {
        List<String> notes = new ArrayList<>(cleaned.notes());
        notes.removeIf(said -> said.startsWith(ElevationCleaner.NO_ELEVATION) || said.startsWith(ElevationCleaner.NOT_BELIEVABLE));
        notes.add(note);
        List<TrackRepair> repairs = new ArrayList<>(cleaned.repairs());
        repairs.removeIf(repair -> ElevationCleaner.REPAIRS.contains(repair.what()));
        TrackCleaner.CleanedTrack over = new ElevationCleaner(ground.pieces(), repairs, notes).cleaned();
        if (over.line() == null) {
            return noted(cleaned, "The elevation tiles show no height that can be used.");
        }
        List<Track.TrackPiece> pieces = new ArrayList<>();
        for (int i = 0; i < ground.pieces().size(); i++) {
            Track.TrackPiece own = cleaned.track().pieces().get(i);
            pieces.add(new Track.TrackPiece(own.lat(), own.lon(), own.distance(), at(own.distance(), over.track().pieces().get(i))));
        }
        return new TrackCleaner.CleanedTrack(new Track(List.copyOf(pieces), Track.Elevation.FROM_TILES), over.line(), over.counter(), over.climbing(),
                repairs, notes);
    }

    /** Heights at distances that are all among those of a piece with more points. */
    private static double[] at(double[] distance, Track.TrackPiece dense) {
        double[] out = new double[distance.length];
        int k = 0;
        for (int i = 0; i < out.length; i++) {
            while (dense.distance()[k] < distance[i]) {
                k++;
            }
            out[i] = dense.elevation()[k];
        }
        return out;
    }
}
