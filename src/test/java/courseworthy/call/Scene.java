package courseworthy.call;

import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.course.Smoothness;
import courseworthy.demand.Demands;
import courseworthy.demand.Survey;
import courseworthy.event.Event;
import courseworthy.event.EventReader;
import courseworthy.problem.Faults;
import courseworthy.rider.Bike;
import courseworthy.rider.Rider;
import courseworthy.rider.RiderReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** An invented course, rider and day, written as files and read as a user's would be; to be varied one thing at a time. */
final class Scene {

    private static final List<String> SURFACES = List.of("asphalt", "compacted", "gravel", "dirt", "rock", "sand");

    /** One stretch, before it is written. */
    static final class Part {
        double km;
        double rise;
        double drop;
        String surface;
        int smoothness;
        int grade;
        boolean sharp;
        boolean roots;
        boolean mud;

        private String text() {
            StringBuilder out = new StringBuilder();
            line(out, "  - length: %.3f km", km);
            line(out, "    ascent: %.1f m", rise);
            line(out, "    descent: %.1f m", drop);
            line(out, "    surface: %s", surface);
            // No deep sand is as even as a good surface.
            line(out, "    smoothness: %s", Smoothness.tags().get(Math.max(surface.equals("sand") ? 2 : 0, Math.min(6, smoothness))));
            if (!surface.equals("asphalt")) {
                line(out, "    mtb:scale: %d", Math.min(4, grade));
                line(out, "    sharp stones: %s", sharp ? "yes" : "no");
                line(out, "    roots: %s", roots ? "yes" : "no");
                line(out, "    mud when wet: %s", mud ? "yes" : "no");
            }
            return out.toString();
        }
    }

    final List<Part> parts = new ArrayList<>();
    final List<Double> water = new ArrayList<>();
    double mass;
    double watts;
    int cadence;
    String skill;
    String role;
    String aim;
    int start;
    int low;
    int high;
    String ground;
    int laps;
    int group;

    /** A scene drawn at random. */
    static Scene of(long seed) {
        Random random = new Random(seed);
        Scene scene = new Scene();
        int kind = random.nextInt(3);
        int stretches = 4 + random.nextInt(6);
        for (int i = 0; i < stretches; i++) {
            scene.parts.add(part(random, kind));
        }
        scene.mass = 50 + random.nextInt(45);
        scene.watts = scene.mass * (2.2 + 2.3 * random.nextDouble());
        scene.cadence = 55 + random.nextInt(20);
        scene.skill = Rider.SKILLS.get(random.nextInt(4));
        scene.role = random.nextBoolean() ? "race" : "training";
        scene.aim = Event.AIMS.get(random.nextInt(3));
        scene.start = 7 + random.nextInt(3);
        scene.low = 2 + random.nextInt(18);
        scene.high = scene.low + 3 + random.nextInt(12);
        scene.ground = Event.Forecast.GOINGS.get(random.nextInt(3));
        scene.laps = random.nextInt(3) == 0 ? 3 : 1;
        scene.group = random.nextInt(50);
        double whole = scene.parts.stream().mapToDouble(part -> part.km).sum() * scene.laps;
        for (double at = 20; at < whole - 5; at += 25) {
            scene.water.add(at);
        }
        return scene;
    }

    private static Part part(Random random, int kind) {
        Part part = new Part();
        part.km = 1 + random.nextInt(kind == 1 ? 18 : 7);
        int slope = random.nextInt(100) - 50;
        part.rise = part.km * Math.max(2, slope);
        part.drop = part.km * Math.max(2, -slope);
        part.surface = SURFACES.get(switch (kind) {
            case 0 -> 2 + random.nextInt(3);
            case 1 -> random.nextInt(4);
            default -> random.nextInt(SURFACES.size());
        });
        part.smoothness = part.surface.equals("asphalt") ? random.nextInt(3) : 1 + random.nextInt(5);
        part.grade = part.smoothness < 4 ? 0 : random.nextInt(3);
        part.sharp = random.nextInt(4) == 0;
        part.roots = random.nextInt(4) == 0;
        part.mud = random.nextInt(4) == 0;
        return part;
    }

    /** What it asks for, read from files in a folder. */
    Demands demands(Path folder) {
        Faults faults = new Faults();
        Course course = CourseReader.read(written(folder, "course.yaml", course()), "course.yaml", null, faults);
        Rider rider = RiderReader.read(written(folder, "rider.yaml", rider()), "rider.yaml", faults);
        Event event = EventReader.read(written(folder, "event.yaml", event()), "event.yaml", faults);
        faults.throwIfAny();
        return Survey.of(course, rider, event, Bike.UNKNOWN);
    }

    private static Path written(Path folder, String name, String text) {
        try {
            return Files.writeString(folder.resolve(name), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String course() {
        StringBuilder out = new StringBuilder("name: Invented\nsummary: Drawn at random\nlatitude: 47.0 deg\nlongitude: 10.0 deg\n"
                + "start height: 600 m\nstretches:\n");
        parts.forEach(part -> out.append(part.text()));
        return out.toString();
    }

    private String rider() {
        StringBuilder out = new StringBuilder();
        line(out, "mass: %.1f kg", mass);
        line(out, "power: %.0f W", watts);
        line(out, "held for: 1:00 h");
        line(out, "skill: %s", skill);
        line(out, "climbing cadence: %d rpm", cadence);
        return out.toString();
    }

    private String event() {
        StringBuilder out = new StringBuilder();
        line(out, "role: %s", role);
        line(out, "date: 2027-06-12");
        line(out, "start: %02d:00", start);
        line(out, "utc offset: +02:00");
        line(out, "laps: %d", laps);
        line(out, "aim: %s", aim);
        line(out, "group share: %d %%", group);
        line(out, "forecast: {low: %d C, high: %d C, going: %s, wind: 3 m/s}", low, high, ground);
        if (water.isEmpty()) {
            line(out, "support: none");
        } else {
            line(out, "support:");
            water.forEach(at -> line(out, "  - {at: %.1f km, water: yes}", at));
        }
        return out.toString();
    }

    private static void line(StringBuilder out, String format, Object... values) {
        out.append(String.format(Locale.ROOT, format, values)).append('\n');
    }

    @Override
    public String toString() {
        return course() + rider() + event();
    }
}
