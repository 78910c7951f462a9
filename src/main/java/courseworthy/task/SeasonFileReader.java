package courseworthy.task;

import courseworthy.course.AssumedGround;
import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.course.CourseSources;
import courseworthy.course.ground.MapGround;
import courseworthy.course.terrain.ElevationFolder;
import courseworthy.event.Event;
import courseworthy.event.EventReader;
import courseworthy.event.SeasonFile;
import courseworthy.event.StageRace;
import courseworthy.event.SeasonFile.FileValue;
import courseworthy.event.SeasonFile.Starter;
import courseworthy.problem.Faults;
import courseworthy.problem.Spelling;
import courseworthy.rider.Rider;
import courseworthy.rider.SharedRider;
import courseworthy.text.MissingFile;
import courseworthy.workshop.RideLog;
import courseworthy.workshop.RideLogReader;
import courseworthy.workshop.Workshop;
import courseworthy.workshop.WorkshopReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Reads the files that a season names, each once. What is wrong inside a file is said with that file and its line; what is wrong with
 * naming it (no such file, a file of another kind, one outside the folder) with the season's file and the line that names it.
 */
final class SeasonFileReader {

    private static final String INSIDE = "a file in the season's folder";

    private final Path home;
    private final Path folder;
    private final String shown;
    private final SeasonFile season;
    private final Faults faults;
    private final Map<String, Object> known = new LinkedHashMap<>();

    /** @param shown the folder as typed, with its slash */
    SeasonFileReader(Path home, Path folder, String shown, SeasonFile season, Faults faults) {
        this.home = home;
        this.folder = folder;
        this.shown = shown;
        this.season = season;
        this.faults = faults;
    }

    /** A reader of one kind of file. */
    private interface SourceReader<T> {
        T read(Path path, String shown, Faults faults);
    }

    /** With its log, that of its own file or the one that a rider names; null where it cannot be used. */
    Workshop workshop(Starter starter) {
        Workshop workshop = read("workshop", starter.workshop(), FileKind.WORKSHOP, (path, typed, own) -> RideLogFiles.read(WorkshopReader.read(path, typed, own), own));
        FileValue named = logOf(starter);
        if (workshop == null || named == null) {
            return workshop;
        }
        if (workshop.log() != null) {
            refuse("log", named, " beside the log that " + workshop.file() + " names", "one log for a workshop", "Leave one of them out.");
            return workshop;
        }
        RideLog log = read("log", named, named.text() + "\n" + starter.workshop().text(), FileKind.LOG, (path, typed, own) -> RideLogReader.read(path, typed, workshop, own));
        return log == null ? workshop : once("logged", starter.workshop().text(), () -> RideLogFiles.read(workshop.with(log), faults));
    }

    /** The log that any rider names for the same workshop; null where none does. */
    private FileValue logOf(Starter starter) {
        FileValue out = null;
        for (Starter each : season.starters()) {
            boolean same = each.log() != null && each.workshop().text().equals(starter.workshop().text());
            if (same && out != null && !out.text().equals(each.log().text())) {
                refuse("log", each.log(), " beside \"" + out.text() + "\"", "one log for a workshop", "Leave one of them out.");
            }
            out = same && out == null ? each.log() : out;
        }
        return out;
    }

    /** Null where it cannot be used. */
    Rider rider(FileValue named) {
        return named == null ? Rider.UNKNOWN : read("rider", named, FileKind.RIDER, SharedRider::readWithFolder);
    }

    /** Null where it cannot be used. */
    Event event(FileValue named) {
        return named == null ? Event.UNKNOWN : read("event", named, FileKind.EVENT, EventReader::read);
    }

    /** A file of the folder, or a shipped course; null where it cannot be used. */
    Course course(FileValue named, FileValue ground, List<FileValue> map, FileValue elevation) {
        if (named == null) {
            return null;
        }
        AssumedGround assumed = ground == null ? null : new AssumedGround("ground", ground.text(), season.file(), ground.line());
        List<Path> extracts = new ArrayList<>();
        for (FileValue each : map) {
            Path file = file("map", each);
            if (file == null) {
                return null;
            }
            extracts.add(file);
        }
        Path tiles = elevation == null ? null : folder(elevation);
        if (elevation != null && tiles == null) {
            return null;
        }
        CourseSources sources = new CourseSources(assumed, extracts.isEmpty() ? null : new MapGround(extracts, true),
                tiles == null ? null : new ElevationFolder(tiles, shown + elevation.text()));
        String asked = named.text() + "\n" + assumed + "\n" + extracts + "\n" + tiles;
        RequestReader inputs = new RequestReader(home, faults);
        boolean name = !named.text().contains("/") && !named.text().contains("\\");
        boolean here = Files.isRegularFile(path(named.text()));
        if (name && !here) {
            Path shipped = inputs.shippedFile(named.text());
            if (shipped == null) {
                refuse("course", named, ", which is no file here and no shipped course", "a file in the season's folder, or the name of a shipped course",
                        Spelling.didYouMean(named.text(), inputs.names()));
                return null;
            }
            return once("course", asked, () -> CourseReader.with(shipped, RequestReader.shippedName(shipped), sources, faults));
        }
        return read("course", named, asked, FileKind.COURSE, (path, typed, own) -> CourseReader.with(path, typed, sources, own));
    }

    /** The stage of a race that is ridden on the course of an entry, as the event of that day. */
    Event stage(Event race, SeasonFile.Entry entry) {
        RequestReader inputs = new RequestReader(home, faults);
        Path here = path(entry.course().text());
        Path asked = Files.isRegularFile(here) ? here : inputs.shippedFile(entry.course().text());
        return new StageFiles(inputs, faults).stageOn(race, asked, entry.course().text(), entry.date(), new StageFiles.KeyLocation(season.file(), entry.course().line(), "course"),
                new StageFiles.KeyLocation(season.file(), entry.line(), "date"));
    }

    /** The course of a stage of a race. */
    Course course(Event race, StageRace.RaceStage stage) {
        return once("stage", race.file() + "\n" + stage.course(), () -> new StageFiles(new RequestReader(home, faults), faults).course(race, stage, new CourseSources(null, null, null)));
    }

    /** Says which sheets are no files of the folder. */
    void sheets(List<FileValue> named) {
        named.forEach(each -> once("sheets", each.text(), () -> file("sheets", each)));
    }

    private <T> T read(String key, FileValue named, FileKind kind, SourceReader<T> reader) {
        return named == null ? null : read(key, named, named.text(), kind, reader);
    }

    private <T> T read(String key, FileValue named, String asked, FileKind kind, SourceReader<T> reader) {
        return once(key, asked, () -> {
            Path path = file(key, named);
            Faults own = new Faults();
            T out = path == null ? null : reader.read(path, shown + named.text(), own);
            FileKind taken = own.stop() ? FileKind.taken(own.faults(), kind) : null;
            if (taken == null) {
                faults.addAll(own);
            } else {
                refuse(key, named, ", which is " + taken.words(), kind.words(), "");
            }
            return out;
        });
    }

    @SuppressWarnings("unchecked")
    private <T> T once(String key, String asked, Supplier<T> reader) {
        String at = key + "\n" + asked;
        if (!known.containsKey(at)) {
            known.put(at, reader.get());
        }
        return (T) known.get(at);
    }

    /** A file of the folder; null with a fault where there is none, or a link leads out of it. */
    private Path file(String key, FileValue named) {
        Path path = path(named.text());
        try {
            if (!Files.isRegularFile(path)) {
                refuse(key, named, ", which is no file", INSIDE, MissingFile.fault(path, named.text(), "").mend());
            } else if (!path.toRealPath().startsWith(folder.toRealPath())) {
                refuse(key, named, ", a link that leads out of the folder", INSIDE, "Copy the file into it.");
            } else {
                return path;
            }
        } catch (IOException e) {
            refuse(key, named, ", which cannot be read", INSIDE, "Check its permissions.");
        }
        return null;
    }

    /** A folder below this one; null with a fault where there is none, or a link leads out of it. */
    private Path folder(FileValue named) {
        Path path = path(named.text());
        try {
            if (Files.isDirectory(path) && path.toRealPath().startsWith(folder.toRealPath())) {
                return path;
            }
        } catch (IOException e) {
            // As one that is not there.
        }
        refuse("elevation", named, ", which is no folder here", "a folder with elevation tiles in the season's folder", "Copy the tiles into it.");
        return null;
    }

    /** A path that no machine can have is one of no file. */
    private Path path(String text) {
        try {
            return folder.resolve(text);
        } catch (InvalidPathException e) {
            return folder.resolve("-");
        }
    }

    private void refuse(String key, FileValue named, String why, String expected, String mend) {
        faults.add(season.file(), named.line(), key, "\"" + named.text() + "\"" + why, expected, mend);
    }
}
