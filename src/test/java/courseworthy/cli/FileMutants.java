package courseworthy.cli;

import courseworthy.course.extract.PbfFile;
import courseworthy.course.terrain.TileFiles;
import courseworthy.task.MapRequest;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Files of every kind that is read, spoilt by chance, and the commands that read them. A mutant is made from its kind and its number alone,
 * so that one that is found can be made again.
 */
final class FileMutants {

    /** A kind of file, with what it is made from and the commands that read it. */
    enum Kind {
        PROFILE("course.yaml", FileMutants::profiles, List.of("brief FILE", "course FILE", "gears FILE", "brief FILE --format json")),
        TRACK("track.gpx", FileMutants::tracks, List.of("brief FILE --ground surface=gravel", "course FILE", "brief track.yaml")),
        RIDER("rider.yaml", seeds("riders", "rider.yaml", "rider.yaml"), List.of("brief course.yaml --rider FILE",
                "brief course.yaml --rider FILE --workshop workshop.yaml --event event.yaml")),
        EVENT("event.yaml", FileMutants::events, List.of("brief course.yaml --event FILE", "brief course.yaml --event FILE --rider rider.yaml", "stages FILE --rider rider.yaml")),
        WORKSHOP("workshop.yaml", seeds("workshops", "workshop.yaml", ""), List.of("brief course.yaml --workshop FILE", "position FILE")),
        SEASON("season.yaml", FileMutants::seasons, List.of("season .", "season . --by-week")),
        SHEET("sheet.yaml", seeds("sheets", "sheet.yaml", "every-key.yaml"), List.of("sheet check FILE", "brief course.yaml --sheet FILE", "sheet test FILE",
                "sheet check FILE --gaps")),
        CASES("cases.yaml", FileMutants::cases, List.of("sheet test sheet.yaml FILE", "sheet test sheet.yaml FILE --cover")),
        DEBRIEF("debrief.yaml", FileMutants::debriefs, List.of("debrief FILE", "debrief FILE --format json")),
        BRIEF("saved.json", FileMutants::briefs, List.of("debrief debrief.yaml")),
        SITUATION("situation.yaml", FileMutants::situations, List.of("why FILE plugs", "why FILE 'front tyre width' --sheet sheet.yaml")),
        MAP("map.osm", FileMutants::maps, List.of("course wood.gpx --map FILE --no-cache", "course wood.gpx --map FILE --no-cache --format json")),
        BINARY_MAP("map.osm.pbf", FileMutants::binaryMaps, List.of("course wood.gpx --map FILE --no-cache"), StandardCharsets.ISO_8859_1),
        TILE("tiles/strip.tif", FileMutants::tiles, List.of("course strip.gpx --elevation FOLDER", "brief strip.gpx --elevation FOLDER"), StandardCharsets.ISO_8859_1),
        RECORDING("ride.gpx", FileMutants::recordings, List.of("course wood.gpx --map wood.osm --no-cache --recording FILE")),
        LOG("log.yaml", FileMutants::logs, List.of("season . --by-week", "season .")),
        FORECAST("hours.csv", FileMutants::forecasts, List.of("brief course.yaml --event by-hour.yaml"));

        private final String file;
        private final Function<Path, List<String>> seeds;
        private final List<String> commands;
        /** Of the seeds: a file that is no text has a character for each byte. */
        private final Charset charset;

        Kind(String file, Function<Path, List<String>> seeds, List<String> commands) {
            this(file, seeds, commands, StandardCharsets.UTF_8);
        }

        Kind(String file, Function<Path, List<String>> seeds, List<String> commands, Charset charset) {
            this.file = file;
            this.seeds = seeds;
            this.commands = commands;
            this.charset = charset;
        }
    }

    /** What is put in the place of values, keys and lines; words of the file itself besides. */
    private static final String[] JUNK = {"", "yes", "-1", "0", "84", "84 km", "1e9 km", "0.0000001 m", "-5 m", "99999999999999999999 km", "100 %",
        "9223372036854775807", "-9223372036854775808 mm", "between 5 h and 3 h", "over 200 %", "under 0 km", "at least", "prefer", "one of []",
        "1000000000000 x ratio needed on the last climb", "0 x hours", "NaN", "Infinity", "1e999", "[]", "{}", "[a, {b: c}]", "{a: b}", "\"\"", "'x'",
        "&a b", "*a", "!!int 3", "|", ">", "? x", "# gone", "x: y", "2026-13-45", "0000-00-00", "9999-12-31", "24:61", "+99:99", "grade9", "9-", "\t",
        "\u0000", "\ud83d\udeb2", "\ud83d", "../../../etc/passwd", "/dev/zero", ".", "none", "{{{{{{{{{{{{{{{{{{{{{{{{{{", "[[[[[[[[[[[[[[[[[[[[[[[[[[",
        "none of: [{none of: [{none of: [{hours: over 3 h}]}]}]", "<<: x", "%YAML 1.1", "---", "...", "date: between 02-29 and 02-28", "999999999 h",
        "0.00000000000000000001 kg", "1/99", "99/1", "0 mm", "0 kg", "0 W", "<!DOCTYPE x>", "&#0;", "<trkpt/>", "]]>", "null", "1.500 m"};
    private static final String[] NUMBERS = {"0", "1", "2", "7", "99", "100", "1000", "99999", "999999999", "1234567890123456789", "0.0001", "0.1",
        "1.5", "00", "-3", "1e5", "1e-5", "0.000000000000000000001"};

    private final Path folder;
    private final Kind kind;
    private final List<String> seeds;
    private final Path file;

    /** @param folder an empty one, where every file that is needed is put */
    FileMutants(Path folder, Kind kind) throws IOException {
        this.folder = folder;
        this.kind = kind;
        for (String each : List.of("course", "rider", "event", "workshop", "sheet", "sheet.cases")) {
            Files.writeString(folder.resolve(each + ".yaml"), starter(each + ".yaml"));
        }
        for (String each : List.of("second", "third")) {
            Files.writeString(folder.resolve(each + ".yaml"), starter("course.yaml").replace("name: My course", "name: My " + each));
        }
        Files.writeString(folder.resolve("track.yaml"), "name: Over a track\ntrack: track.gpx\nstretches:\n  - {length: 1 km, surface: gravel}\n"
                + "  - {length: 300 m, surface: asphalt}\n");
        Files.writeString(folder.resolve("wood.gpx"), wood());
        Files.writeString(folder.resolve("wood.osm"), maps(folder).get(0));
        Files.writeString(folder.resolve("strip.gpx"), strip());
        Files.writeString(folder.resolve("season.yaml"), seasons(folder).get(0));
        Files.writeString(folder.resolve("log.yaml"), logs(folder).get(0));
        Files.writeString(folder.resolve("hours.csv"), forecasts(folder).get(0));
        Files.writeString(folder.resolve("by-hour.yaml"), "name: By the hour\nrole: race\ndate: 2026-05-23\nstart: 09:00\nutc offset: +01:00\n"
                + "forecast: {going: dry, hours: hours.csv}\n");
        Files.writeString(folder.resolve("debrief.yaml"), debriefs(folder).get(0));
        Files.writeString(folder.resolve("saved.json"), briefs(folder).get(0));
        this.seeds = kind.seeds.apply(folder);
        this.file = folder.resolve(kind.file);
    }

    /** The files that mutants are made from, as they are, and what the first command says of them. */
    List<CommandRun> unspoilt() throws IOException {
        List<CommandRun> out = new ArrayList<>();
        for (String seed : seeds) {
            Files.writeString(file, seed, kind.charset);
            out.add(CommandRun.of(command(0)));
        }
        return out;
    }

    /** The bytes of a mutant. */
    byte[] bytes(int number) {
        SplittableRandom chance = new SplittableRandom(number * 1_000_003L + kind.ordinal());
        return kind.charset.equals(StandardCharsets.UTF_8) ? new Mutation(chance, seeds).spoilt() : new Mutation(chance, seeds).spoiltBinary();
    }

    /** Writes a mutant where its command finds it, and runs that. */
    CommandRun run(int number) throws IOException {
        Files.write(file, bytes(number));
        return CommandRun.of(command(number));
    }

    /** The command line for a mutant, by its number. */
    String[] command(int number) {
        List<String> out = new ArrayList<>();
        for (String word : kind.commands.get(number % kind.commands.size()).split(" (?=(?:[^']*'[^']*')*[^']*$)")) {
            boolean path = word.equals(".") || word.endsWith(".yaml") || word.endsWith(".gpx") || word.endsWith(".osm");
            out.add(word.equals("FILE") ? file.toString() : word.equals("FOLDER") ? file.getParent().toString() : path ? folder.resolve(word).normalize().toString() : word.replace("'", ""));
        }
        return out.toArray(new String[0]);
    }

    private static final class Mutation {

        private final SplittableRandom chance;
        private final List<String> seeds;
        private final List<String> lines;

        Mutation(SplittableRandom chance, List<String> seeds) {
            this.chance = chance;
            this.seeds = seeds;
            this.lines = lines(seeds.get(chance.nextInt(seeds.size())));
        }

        private static List<String> lines(String text) {
            return new ArrayList<>(List.of(text.split("\n", -1)));
        }

        byte[] spoiltBinary() {
            return bytewise(seeds.get(chance.nextInt(seeds.size())).getBytes(StandardCharsets.ISO_8859_1));
        }

        byte[] spoilt() {
            int slips = 1 + chance.nextInt(4);
            boolean numbersAlone = chance.nextInt(3) == 0;
            for (int n = 0; n < slips; n++) {
                slip(numbersAlone ? 0 : chance.nextInt(16));
            }
            byte[] bytes = String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
            return chance.nextInt(6) == 0 ? bytewise(bytes) : bytes;
        }

        private void slip(int how) {
            if (lines.isEmpty()) {
                lines.add("");
            }
            int at = chance.nextInt(lines.size());
            String line = lines.get(at);
            switch (how) {
                case 0, 1 -> lines.set(at, otherNumber(line));
                case 2 -> lines.remove(at);
                case 3 -> lines.add(at, line);
                case 4 -> lines.set(at, " ".repeat(chance.nextInt(5)) + line);
                case 5 -> lines.set(at, line.substring(0, chance.nextInt(line.length() + 1)));
                case 6 -> lines.add(at, junk());
                case 7 -> swap(at, chance.nextInt(lines.size()));
                case 8 -> repeat(at);
                case 9 -> splice(at);
                case 10 -> lines.set(at, line.replace(junkOf(line), junk()));
                case 11 -> lines.set(at, line.strip());
                default -> lines.set(at, otherValue(line));
            }
        }

        private void swap(int one, int other) {
            String kept = lines.get(one);
            lines.set(one, lines.get(other));
            lines.set(other, kept);
        }

        /** A block again and again, or a value made long. */
        private void repeat(int at) {
            int times = 1 << chance.nextInt(chance.nextInt(8) == 0 ? 14 : 6);
            if (chance.nextBoolean()) {
                List<String> block = List.copyOf(lines.subList(at, Math.min(lines.size(), at + 1 + chance.nextInt(6))));
                for (int i = 0; i < times && lines.size() < 20_000; i++) {
                    lines.addAll(at, block);
                }
            } else {
                String line = lines.get(at);
                int from = chance.nextInt(line.length() + 1);
                int to = from + chance.nextInt(line.length() - from + 1);
                lines.set(at, line.substring(0, from) + line.substring(from, to).repeat(times * (to - from) > 300_000 ? 1 : times) + line.substring(from));
            }
        }

        /** Some lines of another file of the kind. */
        private void splice(int at) {
            List<String> other = lines(seeds.get(chance.nextInt(seeds.size())));
            int from = chance.nextInt(other.size());
            lines.addAll(at, other.subList(from, Math.min(other.size(), from + 1 + chance.nextInt(8))));
        }

        private String junk() {
            if (chance.nextInt(3) > 0) {
                return JUNK[chance.nextInt(JUNK.length)];
            }
            String line = lines.get(chance.nextInt(lines.size()));
            return junkOf(line);
        }

        /** A key or a value of a line. */
        private String junkOf(String line) {
            String[] words = line.strip().split("[:,{}\\[\\]\"<>]+ ?");
            return words.length == 0 ? "" : words[chance.nextInt(words.length)];
        }

        private String otherNumber(String line) {
            List<int[]> numbers = new ArrayList<>();
            for (int i = 0; i < line.length(); i++) {
                int from = i;
                while (i < line.length() && (Character.isDigit(line.charAt(i)) || i > from && line.charAt(i) == '.')) {
                    i++;
                }
                if (i > from) {
                    numbers.add(new int[] {from, i});
                }
            }
            if (numbers.isEmpty()) {
                return line;
            }
            int[] one = numbers.get(chance.nextInt(numbers.size()));
            String number = switch (chance.nextInt(7)) {
                case 0 -> NUMBERS[chance.nextInt(NUMBERS.length)];
                case 1 -> Long.toString(chance.nextLong(-1, 60));
                case 2 -> line.substring(one[0], one[1]) + "0".repeat(1 + chance.nextInt(3));
                case 3, 4, 5 -> alike(line.substring(one[0], one[1]));
                default -> chance.nextInt(200) == 0 ? "7".repeat(200_000) : Double.toString(Math.round(chance.nextDouble() * 10_000) / 100.0);
            };
            return line.substring(0, one[0]) + number + line.substring(one[1]);
        }

        /** Up to a hundred times as much or as little, which is often what may still be written. */
        private String alike(String number) {
            double value = number.length() > 9 || number.indexOf('.') != number.lastIndexOf('.') || number.endsWith(".") ? 1 : Double.parseDouble(number);
            double other = value * Math.pow(10, chance.nextDouble() * 4 - 2);
            return other >= 10 ? Long.toString(Math.round(other)) : Double.toString(Math.round(other * 10) / 10.0);
        }

        private String otherValue(String line) {
            List<Integer> colons = new ArrayList<>();
            for (int at = line.indexOf(": "); at >= 0; at = line.indexOf(": ", at + 1)) {
                colons.add(at);
            }
            if (colons.isEmpty()) {
                return line.isEmpty() ? junk() : line.replace(junkOf(line), junk());
            }
            int colon = colons.get(chance.nextInt(colons.size()));
            if (chance.nextInt(3) == 0) {
                int from = Math.max(Math.max(line.lastIndexOf("{", colon), line.lastIndexOf(", ", colon)) + 1, line.indexOf(line.strip()));
                return line.substring(0, from) + junk() + line.substring(colon);
            }
            int end = line.indexOf(',', colon);
            return line.substring(0, colon + 2) + junk() + (end < 0 ? "" : line.substring(end));
        }

        private byte[] bytewise(byte[] bytes) {
            byte[] out = bytes.clone();
            for (int n = chance.nextInt(4); n >= 0 && out.length > 0; n--) {
                int at = chance.nextInt(out.length);
                switch (chance.nextInt(4)) {
                    case 0 -> out[at] = (byte) chance.nextInt(256);
                    case 1 -> out[at] ^= (byte) (1 << chance.nextInt(8));
                    case 2 -> out = java.util.Arrays.copyOf(out, at);
                    default -> {
                        int to = Math.min(out.length, at + 1 + chance.nextInt(40));
                        byte[] shorter = java.util.Arrays.copyOf(out, out.length - (to - at));
                        System.arraycopy(out, to, shorter, at, out.length - to);
                        out = shorter;
                    }
                }
            }
            return out;
        }
    }

    // What mutants are made from

    private static String starter(String name) {
        return text(Path.of("src", "main", "resources", "courseworthy", "new", name));
    }

    private static String text(Path path) {
        try {
            return Files.readString(path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Path> examples(Path in, String ending) {
        try (Stream<Path> all = Files.list(in)) {
            return all.filter(path -> path.toString().endsWith(ending)).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** @param everyKey the files of this name in which every key stands; empty for none */
    private static Function<Path, List<String>> seeds(String of, String starter, String everyKey) {
        return folder -> {
            List<String> out = new ArrayList<>(List.of(starter(starter)));
            for (Path each : examples(Path.of("docs", "examples", of), ".yaml")) {
                if (!each.toString().endsWith(".cases.yaml")) {
                    out.add(text(each));
                }
            }
            out.addAll(withEveryKey(everyKey));
            return out;
        };
    }

    private static List<String> withEveryKey(String name) {
        Path keys = Path.of("src", "test", "resources", "courseworthy", "keys");
        return Stream.of("", "ridge", "plain").map(each -> keys.resolve(each).resolve(name)).filter(Files::isRegularFile).map(FileMutants::text).toList();
    }

    /** Stages are on the courses that are here. */
    private static List<String> events(Path folder) {
        return seeds("events", "event.yaml", "event.yaml").apply(folder).stream().map(each -> each
                .replaceAll("(?m)(- course: ).*-one.*$", "$1course.yaml").replaceAll("(?m)(- course: )three-becks$", "$1second.yaml")
                .replaceAll("(?m)(- course: ).*three-becks-three.*$", "$1third.yaml")).toList();
    }

    /** Shipped profiles that need no track. */
    private static List<String> profiles(Path folder) {
        List<String> out = new ArrayList<>(List.of(starter("course.yaml")));
        for (Path each : examples(Path.of("course-profiles"), ".yaml")) {
            String text = text(each);
            if (!text.contains("track:")) {
                out.add(text);
            }
        }
        out.addAll(withEveryKey("course.yaml"));
        return out;
    }

    /** The beginning of each shipped track, and a short route. */
    private static List<String> tracks(Path folder) {
        List<String> out = new ArrayList<>();
        for (Path each : examples(Path.of("course-profiles", "tracks"), ".gpx")) {
            String text = text(each);
            int end = text.indexOf("<trkpt");
            for (int i = 0; i < 60; i++) {
                end = text.indexOf("</trkpt>", end) + "</trkpt>".length();
            }
            out.add(text.substring(0, end).replace("><", ">\n<") + "\n</trkseg>\n</trk>\n</gpx>\n");
        }
        StringBuilder route = new StringBuilder("<gpx xmlns=\"http://www.topografix.com/GPX/1/1\" version=\"1.1\" creator=\"x\">\n<rte>\n");
        for (int i = 0; i < 40; i++) {
            route.append("<rtept lat=\"").append(46 + i * 0.001).append("\" lon=\"9.5\"><ele>").append(400 + i * i % 37).append("</ele></rtept>\n");
        }
        out.add(route + "</rte>\n</gpx>\n");
        return out;
    }

    /** The first two kilometres of the track on the shipped map. */
    private static String wood() {
        String text = text(Path.of("docs", "examples", "maps", "sorrel-wood.gpx"));
        int end = 0;
        for (int i = 0; i < 200; i++) {
            end = text.indexOf("/>", end) + 2;
        }
        return text.substring(0, end) + "\n</trkseg></trk>\n</gpx>\n";
    }

    /** The shipped map, as a {@link MapRequest} names it. */
    private static List<String> maps(Path folder) {
        return List.of(text(Path.of("docs", "examples", "maps", "sorrel-wood.osm")));
    }

    private static List<String> binaryMaps(Path folder) {
        return List.of(new String(PbfFile.exampleMap(true), StandardCharsets.ISO_8859_1), new String(PbfFile.exampleMap(false), StandardCharsets.ISO_8859_1));
    }

    /** A small tile, by {@link TileFiles}; the track {@link #strip} lies on it. */
    private static List<String> tiles(Path folder) {
        Path tile = TileFiles.fineStrip(folder.resolve("tiles"), (lat, lon) -> 400 + 50 * Math.sin(lon * 300));
        try {
            return List.of(Files.readString(tile, StandardCharsets.ISO_8859_1));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String strip() {
        StringBuilder out = new StringBuilder("<gpx xmlns=\"http://www.topografix.com/GPX/1/1\" version=\"1.1\" creator=\"x\">\n<trk><trkseg>\n");
        for (int i = 0; i < 80; i++) {
            out.append("<trkpt lat=\"46.5\" lon=\"").append(9.39 + i * 0.001).append("\"/>\n");
        }
        return out + "</trkseg></trk>\n</gpx>\n";
    }

    /** The whole track on the shipped map, a point every ten of its own, with times. */
    private static List<String> recordings(Path folder) {
        String text = text(Path.of("docs", "examples", "maps", "sorrel-wood.gpx"));
        StringBuilder out = new StringBuilder();
        int second = 0;
        for (String line : text.split("\n")) {
            boolean point = line.contains("<trkpt");
            second += point ? 2 : 0;
            if (!point || second % 20 == 0) {
                out.append(line.replace("/>", "><time>" + Instant.ofEpochSecond(1_714_557_600L + second) + "</time></trkpt>")).append('\n');
            }
        }
        return List.of(out.toString());
    }

    private static List<String> seasons(Path folder) {
        return List.of("""
                season: A short one
                currency: EUR
                a minute is worth: 12
                time for work: 90 min
                after each event: back
                riders:
                  - {name: Me, rider: rider.yaml, workshop: workshop.yaml, sheets: [sheet.yaml], log: log.yaml}
                events:
                  - course: course.yaml
                    event: event.yaml
                    date: 2026-05-09
                  - {course: course.yaml, event: by-hour.yaml, ground: surface=gravel, date: 2026-06-14, role: race}
                """, """
                season: One with two riders
                currency: EUR
                time for work: {from: 2026-05-01, each evening: 0:30 h, monday: 10 min, saturday: 1:00 h, days: [{date: 2026-05-13, time: 2:00 h}]}
                after each event: back
                riders:
                  - {name: Me, rider: rider.yaml, workshop: workshop.yaml, priority: 1, log: log.yaml}
                  - {name: You, workshop: workshop.yaml, priority: 2}
                events:
                  - {course: course.yaml, event: event.yaml, date: 2026-05-16, travel: {out: 2026-05-15, home: 2026-05-17}}
                  - {course: course.yaml, event: by-hour.yaml, date: 2026-05-18, role: race, starts: [{rider: You, bike: gravel bike, may change: [tyre, pedals]}, {rider: Me}]}
                """);
    }

    private static List<String> logs(Path folder) {
        return List.of("""
                log: Spring
                rides:
                  - {from: 2026-01-05, to: 2026-03-01, bike: gravel bike, hours: 34 h, length: 690 km, going: wet, mud: 5 %}
                  - {date: 2026-03-08, bike: gravel bike, hours: 3:10 h, length: 66 km, going: damp}
                  - {date: 2026-04-19, bike: gravel bike, hours: 1:45 h, length: 27 km, going: dry, with: [45 mm tyre A, 45 mm tyre B]}
                service:
                  - {date: 2026-03-02, part: my rear wheel, job: hub bearings}
                each week:
                  - {bike: gravel bike, hours: 4 h, length: 85 km, going: dry}
                """);
    }

    private static List<String> forecasts(Path folder) {
        return List.of(text(Path.of("docs", "examples", "by-the-hour", "flintmoor-100.csv")));
    }

    private static List<String> cases(Path folder) {
        return List.of(starter("sheet.cases.yaml"), starter("sheet.cases.yaml") + """
                  - call: A wet day
                    course: course.yaml
                    rider: {mass: 70 kg}
                    event: event.yaml
                    expect:
                      plugs: at least 1
                """);
    }

    private static List<String> debriefs(Path folder) {
        List<String> out = new ArrayList<>();
        for (Path each : examples(Path.of("docs", "examples", "debriefs"), ".yaml")) {
            out.add(text(each).replaceAll("(?m)^brief: .*$", "brief: saved.json"));
        }
        return out;
    }

    private static List<String> briefs(Path folder) {
        return examples(Path.of("docs", "examples", "debriefs"), ".json").stream().map(FileMutants::text).toList();
    }

    private static List<String> situations(Path folder) {
        return List.of("situation: A rough day\nhours: 5:00 h\nroughness: 2.5\nrider mass: 80 kg\ndecided: {bike: trail}\n");
    }
}
