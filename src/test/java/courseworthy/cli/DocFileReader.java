package courseworthy.cli;

import courseworthy.course.CourseReader;
import courseworthy.debrief.DebriefReader;
import courseworthy.event.EventReader;
import courseworthy.event.SeasonReader;
import courseworthy.problem.FaultList;
import courseworthy.problem.Faults;
import courseworthy.rider.RiderReader;
import courseworthy.sheet.CaseReader;
import courseworthy.sheet.SheetReader;
import courseworthy.workshop.RideLogReader;
import courseworthy.workshop.WorkshopReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads YAML that the docs show by the reader of its kind: whole files, and parts of files once they are made whole. */
final class DocFileReader {

    private static final String HEAD = "sheet: Mine\nauthor: a coach\n";
    private static final String ROWS = HEAD + "advice:\n";
    private static final String ROW = ROWS + "  - id: x\n    because: It is so.\n";
    /** What makes a part of a file a whole one: what goes before it, and after it. */
    private static final Map<String, List<String>> PARTS = Map.of(
            "whole", List.of("", ""),
            "head of a sheet", List.of("", "advice:\n  - {id: x, say: {plugs: prefer 3}, because: It is so.}\n"),
            "keys of a sheet", List.of(HEAD, "advice:\n  - {id: x, say: {plugs: prefer 3}, because: It is so.}\n"),
            "values of a sheet", List.of(HEAD, "advice:\n  - {id: x, when: {hours: over the long day}, "
                    + "say: {easiest gear: at most the gear in hand x ratio needed on the last climb}, because: It is so.}\n"),
            "keys of an event", List.of("date: 2026-05-23\nstart: 08:00\nutc offset: +01:00\n", ""),
            "rows of a sheet", List.of(ROWS, ""),
            "conditions of a row", List.of(ROW + "    say: {plugs: prefer 3}\n    when:\n", ""),
            "what a row says", List.of(ROW + "    say: {plugs: prefer 3}\n", ""),
            "cases", List.of("cases for: Mine\ncases:\n", ""));
    private static final Pattern TITLE = Pattern.compile("(?m)^cases for: (.*)$");

    private DocFileReader() {
    }

    /** A part of a file made whole; null for a part that is not known. */
    static String whole(String part, List<String> lines) {
        List<String> around = PARTS.get(part);
        return around == null ? null : around.get(0) + String.join("\n", lines) + "\n" + around.get(1);
    }

    /** What the reader of its kind says against a file, warnings too; empty where nothing. */
    static String faults(Path file) throws IOException {
        Faults faults = new Faults();
        String name = file.getFileName().toString();
        read(file, name, Files.readString(file), faults);
        return FaultList.text(faults.faults()) + FaultList.text(faults.warnings());
    }

    private static void read(Path file, String name, String text, Faults faults) {
        Matcher title = TITLE.matcher(text);
        if (title.find()) {
            CaseReader.read(file, name, title.group(1), faults);
        } else if (has(text, "sheet")) {
            SheetReader.read(file, name, 0, faults);
        } else if (has(text, "season")) {
            SeasonReader.read(file, name, faults);
        } else if (has(text, "log") && has(text, "rides")) {
            RideLogReader.read(file, name, null, faults);
        } else if (has(text, "debrief")) {
            DebriefReader.read(file, name, faults);
        } else if (has(text, "workshop")) {
            WorkshopReader.read(file, name, faults);
        } else if (has(text, "stretches") || has(text, "track")) {
            CourseReader.read(file, name, null, faults);
        } else if (has(text, "mass") || has(text, "races a year")) {
            RiderReader.read(file, name, faults);
        } else {
            EventReader.read(file, name, faults);
        }
    }

    private static boolean has(String text, String key) {
        return Pattern.compile("(?m)^" + key + ":").matcher(text).find();
    }
}
