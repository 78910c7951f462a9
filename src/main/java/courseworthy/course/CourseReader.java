package courseworthy.course;

import courseworthy.course.terrain.ElevationFolder;
import courseworthy.course.terrain.ElevationTiles;
import courseworthy.problem.Faults;
import courseworthy.text.FileKey;
import courseworthy.text.RelativeFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Reads a course: a profile of stretches in YAML, alone or laid over a GPX track, or a GPX file by itself. Everything wrong is
 * collected, each with its file and line.
 */
public final class CourseReader {

    /** The keys of a profile. */
    public static final List<String> PROFILE_KEYS =
            List.of("name", "summary", "track", "attribution", "start height", "latitude", "longitude", "stretches");
    /** The keys of a stretch; those of the ground follow ({@link GroundReader#KEYS}). */
    public static final List<String> STRETCH_KEYS = ProfileReader.STRETCH_KEYS;
    /** The same with the forms of their values. */
    public static final List<FileKey<?>> STRETCH_FORMS = ProfileReader.STRETCH_FORMS;

    /** Most stretches of a profile. */
    public static final int MOST_STRETCHES = 5000;
    /** Longest course, m. */
    public static final double LONGEST = TrackCleaner.LONGEST;

    private static final RelativeFile TRACK = new RelativeFile("profile", "track", "a GPX file");
    /** How far the stretches' total may miss the track's length. */
    private static final double MOST_MISSED = 0.02;
    /** A total that misses by less than this share needs no word. */
    private static final double MISSED_UNSAID = 0.002;

    private final String shown;
    /** Where the ground under a track comes from; null for nowhere but the file. */
    private final TrackGround source;
    /** Where heights of the ground lie; null for nowhere. */
    private final ElevationFolder tiles;
    private final Faults faults;
    /** Who must be named in what is made from the course. */
    private String attribution = "";

    private CourseReader(String shown, CourseSources sources, Faults faults) {
        this.shown = shown;
        this.source = sources.ground();
        this.tiles = sources.elevation();
        this.faults = faults;
    }

    /**
     * Reads a course.
     *
     * @param path   a profile or a GPX file
     * @param shown  its path as the user typed it
     * @param ground what {@code --ground} says of ground that is not written, such as {@code surface=gravel, smoothness=bad}; may be null
     * @return the course, or null where the faults stop the work
     */
    public static Course read(Path path, String shown, String ground, Faults faults) {
        return onGround(path, shown, AssumedGround.option(ground), faults);
    }

    /**
     * Reads a course as {@link #read} does.
     *
     * @param ground what is taken where ground is not written, and where that is said; may be null
     */
    public static Course onGround(Path path, String shown, AssumedGround ground, Faults faults) {
        return with(path, shown, CourseSources.of(ground), faults);
    }

    /**
     * Reads a course as {@link #read(Path, String, String, Faults)} does.
     *
     * @param sources what it is read with besides its own file
     */
    public static Course with(Path path, String shown, CourseSources sources, Faults faults) {
        AssumedGround ground = sources.assumed();
        Ground assumed = ground == null ? Ground.UNKNOWN : GroundReader.pairs(ground, faults);
        Course course = new CourseReader(shown, sources, faults).course(path);
        return course == null || faults.stop() ? null : AssumedGroundFiller.ground(course, assumed, ground == null ? "" : ground.key());
    }

    private Course course(Path path) {
        String name = path.getFileName() == null ? "" : path.getFileName().toString().toLowerCase(Locale.ROOT);
        boolean yaml = name.endsWith(".yaml") || name.endsWith(".yml");
        byte[] start = yaml || name.endsWith(".gpx") ? new byte[0] : start(path);
        if (GzipFile.is(start)) {
            start = GzipFile.start(start);
            if (!name.endsWith(".gpx.gz") && !startsLikeXml(start)) {
                faults.add(shown, 0, "", "a compressed file (gzip) with no XML in it", "a course profile (.yaml) or a GPX track (.gpx, .gpx.gz)",
                        "Unpack it first: gunzip, or what opens archives on your machine.");
                return null;
            }
            return track(path);
        }
        if (name.endsWith(".gpx") || startsLikeXml(start)) {
            return track(path);
        }
        if (isBinary(start)) {
            faults.add(shown, 0, "", "a file that is no text", "a course profile (.yaml) or a GPX track (.gpx)",
                    "Export the course as GPX.");
            return null;
        }
        ProfileReader.Profile profile = ProfileReader.read(path, shown, faults);
        if (profile == null) {
            return null;
        }
        return profile.track() == null ? alone(profile) : overTrack(path, profile);
    }

    private static byte[] start(Path path) {
        try (InputStream in = Files.newInputStream(path)) {
            return in.readNBytes(512);
        } catch (IOException e) {
            return new byte[0];
        }
    }

    private static boolean isBinary(byte[] start) {
        for (byte b : start) {
            if (b == 0) {
                return true;
            }
        }
        return false;
    }

    private static boolean startsLikeXml(byte[] start) {
        int at = start.length >= 3 && (start[0] & 0xFF) == 0xEF && (start[1] & 0xFF) == 0xBB && (start[2] & 0xFF) == 0xBF ? 3 : 0;
        while (at < start.length && start[at] <= ' ' && start[at] > 0) {
            at++;
        }
        return at < start.length && start[at] == '<';
    }

    private Course track(Path path) {
        GpxFile gpx = GpxReader.read(path, shown, faults);
        TrackCleaner.CleanedTrack cleaned = gpx == null ? null : TrackCleaner.of(gpx, shown, faults);
        if (cleaned == null) {
            return null;
        }
        SurveyedGround surveyed = source == null ? null : source.under(cleaned.track(), shown, faults);
        if (source != null && surveyed == null) {
            return null;
        }
        TrackCleaner.CleanedTrack raised = raised(cleaned, surveyed);
        if (raised == null) {
            return null;
        }
        List<Stretch> whole = List.of(new Stretch(cleaned.track().length(), null, null, null, Ground.UNKNOWN, 0));
        return surveyed == null ? laid(gpx.name(), "", whole, raised, raised.notes())
                : laid(gpx.name(), "", surveyed.stretches(), raised, noted(raised.notes(), surveyed));
    }

    /** A track with heights from tiles, where those are named and better than its own; null with a fault where they cannot be read. */
    private TrackCleaner.CleanedTrack raised(TrackCleaner.CleanedTrack cleaned, SurveyedGround surveyed) {
        if (tiles == null) {
            return cleaned;
        }
        ElevationTiles opened = ElevationTiles.open(tiles.path(), tiles.shown(), faults);
        return opened == null ? null : TrackElevation.choose(cleaned, opened, surveyed == null ? List.of() : surveyed.bridged(), faults);
    }

    /** A profile that has no track. */
    private Course alone(ProfileReader.Profile profile) {
        if (faults.stop()) {
            return null;
        }
        List<String> notes = new ArrayList<>();
        if (source != null) {
            notes.add("A profile without a track has no place on the map: its ground is as it is written.");
        }
        if (tiles != null) {
            notes.add("A profile without a track has no place on elevation tiles: its climbing is as it is written.");
        }
        List<Stretch> stretches = profile.stretches();
        Climbing climbing = written(stretches, notes);
        ElevationLine line = climbing == null ? null : DrawnElevation.line(stretches, profile.startHeight());
        return Course.builder(named(profile.name()), stretches).summary(profile.summary()).file(shown).line(line).climbing(climbing)
                .start(profile.start()).attribution(profile.attribution()).notes(notes).build();
    }

    /** Ascent and descent of all stretches as written; null where none says any. */
    private static Climbing written(List<Stretch> stretches, List<String> notes) {
        double up = 0;
        double down = 0;
        double silent = 0;
        boolean any = false;
        for (Stretch stretch : stretches) {
            boolean says = stretch.ascent() != null || stretch.descent() != null;
            any |= says;
            silent += says ? 0 : stretch.length();
            up += stretch.ascent() == null ? 0 : stretch.ascent();
            down += stretch.descent() == null ? 0 : stretch.descent();
        }
        if (!any) {
            notes.add("No stretch says its ascent or descent: climbing is not known.");
            return null;
        }
        if (silent > 0) {
            notes.add("Ascent and descent are not given on " + LengthPhrases.length(silent) + ": drawn level, and not in the climbing.");
        }
        return Climbing.written(up, down);
    }

    private String named(String name) {
        if (!name.isEmpty()) {
            return name;
        }
        String file = shown.substring(Math.max(shown.lastIndexOf('/'), shown.lastIndexOf('\\')) + 1);
        file = file.endsWith(".gz") ? file.substring(0, file.length() - ".gz".length()) : file;
        int dot = file.lastIndexOf('.');
        return dot > 0 ? file.substring(0, dot) : file;
    }

    private Course overTrack(Path path, ProfileReader.Profile profile) {
        Path track = TRACK.find(path, shown, "track", profile.trackLine(), profile.track(), faults);
        if (track == null) {
            return null;
        }
        String trackShown = RelativeFile.shown(shown, profile.track());
        GpxFile gpx = GpxReader.read(track, trackShown, faults);
        TrackCleaner.CleanedTrack cleaned = gpx == null ? null : TrackCleaner.of(gpx, trackShown, faults);
        if (cleaned == null) {
            return null;
        }
        List<String> remarks = new ArrayList<>();
        if (profile.start() != null) {
            remarks.add("The track's place is used in place of the profile's latitude and longitude.");
        }
        List<Stretch> stretches = scaled(profile, cleaned.track().length(), remarks);
        SurveyedGround surveyed = source == null ? null : source.under(cleaned.track(), trackShown, faults);
        TrackCleaner.CleanedTrack raised = stretches == null || faults.stop() ? null : raised(cleaned, surveyed);
        return raised == null || faults.stop() ? null : overTrack(profile, stretches, raised, surveyed, remarks);
    }

    private Course overTrack(ProfileReader.Profile profile, List<Stretch> written, TrackCleaner.CleanedTrack cleaned, SurveyedGround surveyed,
            List<String> remarks) {
        List<String> notes = new ArrayList<>(cleaned.notes());
        notes.addAll(remarks);
        List<Stretch> stretches = written;
        attribution = profile.attribution();
        if (surveyed != null) {
            notes = noted(notes, surveyed);
            stretches = GroundOverlay.of(stretches, surveyed.stretches());
        }
        return cleaned.line() != null ? measured(profile, stretches, cleaned, notes) : flatTrack(profile, stretches, cleaned, notes);
    }

    /** What a map adds to what is known of a course besides its ground. */
    private List<String> noted(List<String> notes, SurveyedGround surveyed) {
        List<String> out = new ArrayList<>(notes);
        out.addAll(surveyed.notes());
        if (!attribution.contains(surveyed.attribution())) {
            attribution = attribution.isEmpty() ? surveyed.attribution() : attribution + "; " + surveyed.attribution();
        }
        return out;
    }

    /** The stretches with their lengths made to add up to the track's; null with a fault where they miss it by too much. */
    private List<Stretch> scaled(ProfileReader.Profile profile, double length, List<String> notes) {
        if (profile.stretches().isEmpty()) {
            return List.of(new Stretch(length, null, null, null, Ground.UNKNOWN, 0));
        }
        double total = 0;
        for (Stretch stretch : profile.stretches()) {
            total += stretch.length();
        }
        double missed = Math.abs(total - length) / length;
        if (missed > MOST_MISSED) {
            faults.add(shown, profile.stretchesLine(), "stretches", "a total of " + LengthPhrases.exactly(total),
                    LengthPhrases.exactly(length) + ", the track's length, within 2 %", "Correct the lengths, or add the stretches that are missing.");
            return null;
        }
        if (missed > MISSED_UNSAID) {
            notes.add("The stretches add up to " + LengthPhrases.exactly(total) + ", the track to " + LengthPhrases.exactly(length)
                    + ": their lengths were scaled to the track.");
        }
        List<Stretch> out = new ArrayList<>();
        for (Stretch s : profile.stretches()) {
            out.add(s.over(s.length() * length / total, s.ascent(), s.descent()));
        }
        return out;
    }

    /** The track gives the climbing. */
    private Course measured(ProfileReader.Profile profile, List<Stretch> stretches, TrackCleaner.CleanedTrack cleaned, List<String> notes) {
        Climbing written = written(stretches, new ArrayList<>());
        if (written != null) {
            notes.add("The track's climbing is used, " + LengthPhrases.metres(cleaned.climbing().ascent()) + " up and "
                    + LengthPhrases.metres(cleaned.climbing().descent()) + " down; the profile says "
                    + LengthPhrases.metres(written.ascent()) + " up and " + LengthPhrases.metres(written.descent()) + " down.");
        }
        if (profile.startHeight() != null) {
            notes.add("The track's height is used in place of the profile's start height.");
        }
        return laid(profile.name(), profile.summary(), stretches, cleaned, notes);
    }

    /** The track gives the way, the stretches the climbing. */
    private Course flatTrack(ProfileReader.Profile profile, List<Stretch> stretches, TrackCleaner.CleanedTrack cleaned, List<String> notes) {
        Climbing climbing = written(stretches, notes);
        ElevationLine line = climbing == null ? null : DrawnElevation.line(stretches, profile.startHeight());
        return course(profile.name(), profile.summary(), stretches, cleaned, line, climbing, notes);
    }

    /** Gives each stretch the track's ascent and descent, where the track has any. */
    private Course laid(String name, String summary, List<Stretch> stretches, TrackCleaner.CleanedTrack cleaned, List<String> notes) {
        AscentCounter counter = cleaned.counter();
        if (counter == null) {
            return course(name, summary, stretches, cleaned, null, null, notes);
        }
        List<Stretch> out = new ArrayList<>();
        double from = 0;
        for (int i = 0; i < stretches.size(); i++) {
            Stretch s = stretches.get(i);
            double to = i == stretches.size() - 1 ? cleaned.track().length() : from + s.length();
            out.add(s.over(s.length(), counter.up(from, to), counter.down(from, to)));
            from = to;
        }
        return course(name, summary, out, cleaned, cleaned.line(), cleaned.climbing(), notes);
    }

    private Course course(String name, String summary, List<Stretch> stretches, TrackCleaner.CleanedTrack cleaned, ElevationLine line, Climbing climbing,
            List<String> notes) {
        Track.TrackPiece first = cleaned.track().pieces().get(0);
        return Course.builder(named(name), stretches).summary(summary).file(shown).track(cleaned.track()).line(line).climbing(climbing)
                .start(new GeoPoint(first.lat()[0], first.lon()[0])).repairs(cleaned.repairs())
                .attribution(attribution).notes(notes).build();
    }
}
