package courseworthy.task;

import courseworthy.course.GeodesicDistance;
import courseworthy.course.RecordedRide;
import courseworthy.debrief.DebriefReader;
import courseworthy.problem.Faults;
import courseworthy.problem.Spelling;
import courseworthy.wear.ServiceJobCheck;
import courseworthy.workshop.Part;
import courseworthy.workshop.RideLog;
import courseworthy.workshop.RideLog.Puncture;
import courseworthy.workshop.RideLog.LoggedRide;
import courseworthy.workshop.RideLog.LogSource;
import courseworthy.workshop.RideLogReader;
import courseworthy.workshop.Workshop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Reads the files that a log names, debriefs and recordings, and takes the rides in them into the log. */
final class RideLogFiles {

    /** Slower than this, m/s, over a step of a recording, and the bike stands: a receiver at rest wanders (judgement, no source). */
    private static final double STANDING = 0.9;
    /** More files in one folder are not read (computing). */
    private static final int MOST_FILES = 2000;

    /** What faults call the command line's own recordings. */
    private static final String OPTION = "--log";

    private final RideLog log;
    private final Faults faults;
    private final List<LoggedRide> rides = new ArrayList<>();
    private final List<Puncture> punctures = new ArrayList<>();

    private RideLogFiles(RideLog log, Faults faults) {
        this.log = log;
        this.faults = faults;
    }

    /** A workshop with all the rides of its log; the same where it names none or something in it cannot be used. */
    static Workshop read(Workshop workshop, Faults faults) {
        if (workshop == null || workshop.log() == null || faults.stop()) {
            return workshop;
        }
        RideLogFiles files = new RideLogFiles(workshop.log(), faults);
        workshop.log().sources().forEach(files::source);
        Workshop out = workshop.with(workshop.log().with(files.rides, files.punctures));
        ServiceJobCheck.check(out, faults);
        return out;
    }

    /** A workshop with recorded rides besides those of its log; the same where they cannot be used. */
    static Workshop add(Workshop workshop, RecordedRides recorded, Path path, Faults faults) {
        RideLog before = workshop.log() == null ? new RideLog("", OPTION, path, List.of(), List.of(), List.of(), List.of(), List.of(), List.of()) : workshop.log();
        RideLogFiles files = new RideLogFiles(new RideLog("", OPTION, path, List.of(), List.of(), List.of(), List.of(), List.of(), List.of()), faults);
        String bike = bike(workshop, recorded, faults);
        LogSource source = new LogSource("recordings", recorded.typed(), null, new RideLog.Conditions(bike == null ? "" : bike, null, null, List.of()), 0);
        try {
            if (Files.exists(path)) {
                files.recordings(source, path);
            } else {
                files.refuse(source, ", which is not there", "Check the spelling of the path.");
            }
        } catch (IOException e) {
            files.refuse(source, ", which cannot be read", "Check its permissions.");
        }
        Workshop out = workshop.with(before.with(files.rides, List.of()));
        if (workshop.log() == null) {
            ServiceJobCheck.check(out, faults);
        }
        return out;
    }

    /** The bike that is named, or the only one; null with a fault where that is none of the workshop. */
    private static String bike(Workshop workshop, RecordedRides recorded, Faults faults) {
        List<String> names = workshop.bikes().stream().map(Part::name).toList();
        if (recorded.bike() == null && names.size() == 1) {
            return names.get(0);
        }
        if (recorded.bike() == null || !names.contains(recorded.bike())) {
            String near = recorded.bike() == null ? "" : Spelling.didYouMean(recorded.bike(), names);
            faults.add("--log-bike", 0, "", recorded.bike() == null ? "nothing" : "\"" + recorded.bike() + "\"",
                    "the bike of the recorded rides: " + String.join(", ", names), near);
            return null;
        }
        return recorded.bike();
    }

    private void source(LogSource source) {
        Path path = log.folder().resolve(source.path());
        try {
            if (!Files.exists(path)) {
                refuse(source, ", which is not there", "Check the spelling of the path.");
            } else if (!path.toRealPath().startsWith(log.folder().toRealPath())) {
                refuse(source, ", a link that leads out of the log's folder", "Copy it into the folder.");
            } else if (source.key().equals("debrief")) {
                debrief(source, path);
            } else {
                recordings(source, path);
            }
        } catch (IOException e) {
            refuse(source, ", which cannot be read", "Check its permissions.");
        }
    }

    private void refuse(LogSource source, String why, String mend) {
        String expected = source.key().equals("debrief") ? "a debrief beside the log or below it" : "a folder of recordings (GPX), or one, beside the log or below it";
        if (log.file().equals(OPTION)) {
            faults.add(OPTION, 0, "", "\"" + source.path() + "\"" + why, "a recorded ride (GPX), or a folder of them", mend);
            return;
        }
        faults.add(log.file(), source.line(), source.key(), "\"" + source.path() + "\"" + why, expected, mend);
    }

    private String typed(String name) {
        return log.file().substring(0, log.file().lastIndexOf('/') + 1) + name;
    }

    private void debrief(LogSource source, Path path) {
        DebriefReader.DebriefPair pair = DebriefReader.read(path, typed(source.path()), faults);
        if (pair != null && pair.debrief().hours() == null) {
            refuse(source, ", which gives no hours", "Add \"hours: 4:12 h\" to the debrief.");
        } else if (pair != null) {
            rides.add(new LoggedRide(source.date(), source.date(), pair.debrief().hours(), null, source.on().goingOr(pair.debrief().weather().going())));
            for (String each : pair.debrief().repairs()) {
                String kind = RideLogReader.REPAIRS.get(each);
                punctures.addAll(kind.isEmpty() ? List.of() : List.of(new Puncture(source.date(), source.on().bike(), kind)));
            }
        }
    }

    private void recordings(LogSource source, Path path) throws IOException {
        List<Path> files = new ArrayList<>(List.of(path));
        if (Files.isDirectory(path)) {
            try (Stream<Path> all = Files.list(path)) {
                files = all.filter(each -> each.toString().toLowerCase(Locale.ROOT).endsWith(".gpx")).sorted().limit(MOST_FILES + 1L).toList();
            }
        }
        if (Files.isRegularFile(path) && path.toString().toLowerCase(Locale.ROOT).matches(".*\\.ya?ml")) {
            refuse(source, ", a file that is written by hand", "A written log is named in the workshop's file: \"log: log.yaml\".");
        } else if (files.isEmpty()) {
            refuse(source, ", a folder without recordings", "Copy the recorded rides there as GPX files.");
        } else if (files.size() > MOST_FILES) {
            refuse(source, ", a folder of more than " + MOST_FILES + " recordings", "Name folders with fewer: one for each year.");
        } else {
            for (Path file : files) {
                recording(source, file, typed(source.path()) + (file.equals(path) ? "" : "/" + file.getFileName()));
            }
        }
    }

    private void recording(LogSource source, Path file, String shown) {
        RecordedRide recorded = RecordedRide.read(file, shown, faults);
        if (recorded == null) {
            return;
        }
        double hours = 0;
        double length = 0;
        for (RecordedRide.RecordedRun run : recorded.runs()) {
            for (int i = 1; i < run.size(); i++) {
                double metres = GeodesicDistance.metres(run.lat()[i - 1], run.lon()[i - 1], run.lat()[i], run.lon()[i]);
                double seconds = run.seconds()[i] - run.seconds()[i - 1];
                if (metres >= STANDING * seconds) {
                    hours += seconds;
                    length += metres;
                }
            }
        }
        LocalDate day = Instant.ofEpochSecond((long) recorded.runs().get(0).seconds()[0]).atZone(ZoneOffset.UTC).toLocalDate();
        rides.add(new LoggedRide(day, day, hours, length, source.on()));
    }
}
