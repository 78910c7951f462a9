package courseworthy.task;

import courseworthy.course.Course;
import courseworthy.course.GpxTrackWriter;
import courseworthy.course.Track;
import courseworthy.course.ground.ProfileWriter;
import courseworthy.problem.BadInput;
import courseworthy.problem.Faults;
import courseworthy.problem.OutputFailure;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A profile that is written for a person to edit, with its track beside it. Nothing is overwritten. */
final class NewProfile {

    private static final String ENDING = ".yaml";

    private final Path file;
    private final String typed;

    private NewProfile(Path file, String typed) {
        this.file = file;
        this.typed = typed;
    }

    /**
     * What was written.
     *
     * @param track  the track, seen from the profile's folder; empty where there is none
     * @param copied whether the track was put there
     */
    record ProfileFile(String track, boolean copied) {
    }

    /** @param typed null where it was not given */
    static void checkName(String typed, Faults faults) {
        if (typed == null || !typed.endsWith(ENDING)) {
            faults.add("--output", 0, "", typed == null ? "nothing" : RequestReader.quoted(typed), "the name of a profile to write, such as course.yaml", "");
        }
    }

    /** @throws BadInput where there is something of that name */
    static NewProfile at(Workspace workspace, String typed) {
        Path file = workspace.path(typed);
        NewFile.mustBeFree(file, typed);
        return new NewProfile(file, typed);
    }

    /**
     * Writes the profile, and its track where that does not lie beside it or has heights of tiles.
     *
     * @param source the track; null where the course has none
     * @param shown  the track as the user typed it
     * @param header lines of comment
     */
    ProfileFile write(Course course, Path source, String shown, List<String> header) {
        boolean raised = source != null && course.track().elevation() == Track.Elevation.FROM_TILES;
        String track = source == null ? "" : raised ? null : trackName(source);
        Path copy = raised ? raisedTrack() : track == null ? copyOf(source) : null;
        String named = track == null ? copy.getFileName().toString() : track;
        boolean copies = copy != null && !Files.exists(copy);
        if (copies) {
            NewFile.write(copy, copy.toString(), raised ? GpxTrackWriter.text(course).getBytes(StandardCharsets.UTF_8) : bytes(source, shown));
        }
        try {
            NewFile.write(file, typed, ProfileWriter.text(course, header, named).getBytes(StandardCharsets.UTF_8));
        } catch (BadInput | OutputFailure failed) {
            if (copies) {
                NewFile.discard(copy);
            }
            throw failed;
        }
        return new ProfileFile(named, copies);
    }

    /** The track's path seen from the profile's folder, or null where it lies elsewhere. */
    private String trackName(Path source) {
        try {
            Path folder = file.toAbsolutePath().normalize().getParent();
            Path track = source.toAbsolutePath().normalize();
            boolean below = track.startsWith(folder) && track.toRealPath().startsWith(folder.toRealPath());
            return below ? folder.relativize(track).toString().replace('\\', '/') : null;
        } catch (IOException unreadable) {
            return null;
        }
    }

    private Path underOwnName() {
        String name = file.getFileName().toString();
        return file.resolveSibling(name.substring(0, name.length() - ENDING.length()) + ".gpx");
    }

    /** Where a track from elsewhere is put: under its own name, or the profile's where that is taken by another. */
    private Path copyOf(Path source) {
        Path own = file.resolveSibling(source.getFileName());
        if (!Files.exists(own) || isSame(own, source)) {
            return own;
        }
        Path other = underOwnName();
        if (Files.exists(other) && !isSame(other, source)) {
            throw NewFile.refused(typed, "another track beside it, " + other.getFileName(), "a folder with the track itself, or none of its name");
        }
        return other;
    }

    /** Where a track with the heights of tiles is put: beside the profile, under its name. */
    private Path raisedTrack() {
        Path out = underOwnName();
        if (Files.exists(out)) {
            throw NewFile.refused(typed, "another track beside it, " + out.getFileName(), "a name that is free for the profile and for its track with heights");
        }
        return out;
    }

    private static boolean isSame(Path one, Path other) {
        try {
            return Files.isRegularFile(one) && Files.mismatch(one, other) < 0;
        } catch (IOException unreadable) {
            return false;
        }
    }

    private static byte[] bytes(Path source, String track) {
        try {
            return Files.readAllBytes(source);
        } catch (IOException failed) {
            throw new OutputFailure(track, failed);
        }
    }
}
