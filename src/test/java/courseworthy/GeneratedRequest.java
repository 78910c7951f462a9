package courseworthy;

import courseworthy.course.Course;
import courseworthy.course.CourseReader;
import courseworthy.course.Smoothness;
import courseworthy.demand.Demands;
import courseworthy.demand.Survey;
import courseworthy.event.Event;
import courseworthy.event.EventReader;
import courseworthy.problem.Faults;
import courseworthy.rider.Bike;
import courseworthy.rider.BikeReader;
import courseworthy.rider.Rider;
import courseworthy.rider.RiderReader;
import courseworthy.task.Request;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * An invented course, rider and day, drawn by its number: the same number draws the same, in any run and on any machine. Its fields may be
 * changed one at a time before it is read; what is null is not written. It is written as files and read as a user's would be, so that what a
 * test finds can be shown by {@link #toString}.
 */
public final class GeneratedRequest {

    private static final List<String> SURFACES = List.of("asphalt", "sett", "compacted", "gravel", "dirt", "rock", "sand", "mud");
    private static final List<String> COMPASS = List.of("N", "E", "S", "W");

    /** One stretch, before it is written. */
    public static final class Stretch {
        public double km;
        /** m. */
        public double rise;
        /** m. */
        public double drop;
        public String surface;
        public int smoothness;
        /** {@code mtb:scale}; null where not written. */
        public Integer grade;
        public boolean sharp;
        public boolean roots;
        public boolean mudWhenWet;
        /** m; 0 for none. */
        public double highestDrop;

        private void write(StringBuilder out) {
            line(out, "  - length: %.3f km", km);
            line(out, "    ascent: %.1f m", rise);
            line(out, "    descent: %.1f m", drop);
            line(out, "    surface: %s", surface);
            line(out, "    smoothness: %s", Smoothness.tags().get(smoothness));
            if (grade != null) {
                line(out, "    mtb:scale: %d", grade);
                line(out, "    sharp stones: %s", sharp ? "yes" : "no");
                line(out, "    roots: %s", roots ? "yes" : "no");
                line(out, "    mud when wet: %s", mudWhenWet ? "yes" : "no");
            }
            if (highestDrop > 0) {
                line(out, "    ledge height: %.2f m", highestDrop);
            }
        }
    }

    /** A {@code bike:} block, before it is written. */
    public static final class BikeBlock {
        public String kind;
        /** Lines below the kind, as {@code rim inner width: 21 mm}. */
        public final List<String> figures = new ArrayList<>();

        private void write(StringBuilder out) {
            out.append("bike:\n");
            if (kind != null) {
                line(out, "  kind: %s", kind);
            }
            figures.forEach(each -> line(out, "  %s", each));
        }
    }

    /** What is ridden, as read; {@code bike} is the bike at hand, of rider and event together. */
    public record Read(Course course, Rider rider, Event event, Bike bike) {

        public Demands demands() {
            return Survey.of(course, rider, event, bike);
        }
    }

    public final long number;
    public final List<Stretch> stretches = new ArrayList<>();
    /** Where water is, km from the start over all laps; null where nothing is written of support. */
    public List<Double> water;
    /** kg. */
    public Double mass;
    /** Power held for an hour, W. */
    public Double watts;
    public Integer cadence;
    public String skill;
    public Integer racesAYear;
    /** L/h. */
    public Double sweat;
    /** Further lines of the rider's file, as {@code hand strength: weak}; none are drawn. */
    public final List<String> riderLines = new ArrayList<>();
    /** Further lines of the event's file; none are drawn. */
    public final List<String> eventLines = new ArrayList<>();
    public BikeBlock riderBike;
    public BikeBlock eventBike;
    public String role;
    public String aim;
    /** Hour of the start. */
    public int start;
    public int month;
    /** C. */
    public Integer low;
    /** C. */
    public Integer high;
    public String ground;
    /** m/s. */
    public Double wind;
    public String windFrom;
    public int laps;
    /** Percent. */
    public Integer group;
    /** deg north. */
    public double latitude;
    /** Height of the start, m. */
    public int height;

    private GeneratedRequest(long number) {
        this.number = number;
    }

    /** The request of a number. Of every six about two are roads, two tracks and two trails; one rider in four writes no bike. */
    public static GeneratedRequest nth(long number) {
        // Numbers in a row begin alike in this generator; a large odd factor spreads them (Knuth, TAOCP 2, 3.3.4).
        Random random = new Random(number * 0x9E3779B97F4A7C15L);
        GeneratedRequest out = new GeneratedRequest(number);
        out.drawCourse(random);
        out.drawRider(random);
        out.drawDay(random);
        out.riderBike = random.nextInt(4) == 0 ? null : bike(random, true);
        out.eventBike = random.nextInt(6) == 0 ? bike(random, random.nextInt(4) > 0) : null;
        return out;
    }

    private void drawCourse(Random random) {
        int kind = random.nextInt(3);
        double steep = 10 + random.nextInt(70);
        for (int i = 3 + random.nextInt(6); i > 0; i--) {
            stretches.add(stretch(random, kind, steep));
        }
        laps = random.nextInt(4) == 0 ? 2 + random.nextInt(3) : 1;
        latitude = random.nextInt(65);
        height = random.nextInt(18) * 100;
    }

    private static Stretch stretch(Random random, int kind, double steep) {
        Stretch out = new Stretch();
        out.km = 1 + random.nextInt(kind == 0 ? 20 : 8);
        double slope = (2 * random.nextDouble() - 1) * steep;
        out.rise = out.km * Math.max(2, slope);
        out.drop = out.km * Math.max(2, -slope);
        out.surface = SURFACES.get(switch (kind) {
            case 0 -> random.nextInt(4);
            case 1 -> 2 + random.nextInt(4);
            default -> 3 + random.nextInt(SURFACES.size() - 3);
        });
        boolean paved = SURFACES.indexOf(out.surface) < 2;
        out.smoothness = paved ? random.nextInt(4) : 1 + random.nextInt(5);
        if (!paved) {
            out.grade = kind == 2 ? random.nextInt(4) : random.nextInt(2);
            boolean soft = out.surface.equals("sand") || out.surface.equals("mud");
            // Neither steps and rocks nor deep ground are as even as a good surface.
            out.smoothness = out.grade >= 2 || soft ? Math.max(2, out.smoothness) : out.smoothness;
            out.sharp = random.nextInt(4) == 0;
            out.roots = random.nextInt(4) == 0;
            out.mudWhenWet = random.nextInt(4) == 0;
            boolean even = out.smoothness == 1;
            // Good for racing bikes is neither a grade 2 nor soft ground: readers refuse it.
            out.smoothness = even && (out.grade >= 2 || out.surface.equals("sand") || out.surface.equals("mud")) ? 2 : out.smoothness;
            out.highestDrop = out.grade >= 2 && random.nextInt(3) == 0 ? 0.3 + 0.1 * random.nextInt(8) : 0;
        }
        return out;
    }

    private void drawRider(Random random) {
        mass = random.nextInt(8) == 0 ? null : Double.valueOf(48 + random.nextInt(60));
        watts = random.nextInt(4) == 0 ? null : Double.valueOf(Math.round((mass == null ? 75 : mass) * (2.0 + 2.6 * random.nextDouble())));
        cadence = random.nextInt(3) == 0 ? null : Integer.valueOf(55 + random.nextInt(20));
        skill = random.nextInt(4) == 0 ? null : Rider.SKILLS.get(random.nextInt(4));
        racesAYear = random.nextInt(3) == 0 ? null : Integer.valueOf(random.nextInt(25));
        sweat = random.nextInt(3) == 0 ? Double.valueOf(0.4 + 0.1 * random.nextInt(15)) : null;
    }

    private void drawDay(Random random) {
        role = random.nextInt(3) == 0 ? "training" : "race";
        aim = random.nextInt(4) == 0 ? null : Event.AIMS.get(random.nextInt(3));
        start = 5 + random.nextInt(11);
        month = 1 + random.nextInt(12);
        low = random.nextInt(6) == 0 ? null : Integer.valueOf(-4 + random.nextInt(26));
        high = low == null ? null : Integer.valueOf(low + 2 + random.nextInt(14));
        ground = random.nextInt(6) == 0 ? null : Event.Forecast.GOINGS.get(random.nextInt(3));
        wind = random.nextInt(4) == 0 ? null : Double.valueOf(random.nextInt(10));
        windFrom = wind == null || random.nextInt(3) == 0 ? null : COMPASS.get(random.nextInt(4));
        group = random.nextInt(4) == 0 ? null : Integer.valueOf(5 * random.nextInt(12));
        water = random.nextInt(4) == 0 ? null : new ArrayList<>();
        double whole = stretches.stream().mapToDouble(each -> each.km).sum() * laps;
        double apart = 8 + random.nextInt(50);
        for (double at = apart; water != null && at < whole - 1; at += apart) {
            water.add(at);
        }
    }

    private static BikeBlock bike(Random random, boolean kindWritten) {
        BikeBlock out = new BikeBlock();
        int kind = random.nextInt(BikeReader.KINDS.size());
        if (!kindWritten) {
            return out;
        }
        out.kind = BikeReader.KINDS.get(kind);
        boolean narrow = kind == 0;
        perhaps(out, random, "mass: %.1f kg", 6.5 + 2 * kind + 0.1 * random.nextInt(30));
        perhaps(out, random, "rim inner width: %d mm", (narrow ? 17 : 21) + random.nextInt(narrow ? 6 : 12));
        perhaps(out, random, "hookless: %s", random.nextInt(3) == 0 ? "yes" : "no");
        perhaps(out, random, "marked tyre pressure: %.1f bar", (narrow ? 5.0 : 2.5) + 0.1 * random.nextInt(25));
        perhaps(out, random, "marked rim pressure: %.1f bar", (narrow ? 5.0 : 2.5) + 0.1 * random.nextInt(25));
        perhaps(out, random, "tyre clearance: %d mm", (narrow ? 26 : kind == 1 ? 38 : 55) + random.nextInt(12));
        perhaps(out, random, "tubeless: %s", random.nextInt(3) == 0 ? "no" : "yes");
        perhaps(out, random, "use category: EN %d", 1 + Math.min(4, kind + random.nextInt(2)));
        perhaps(out, random, "mass limit: %d kg", 90 + random.nextInt(60));
        perhaps(out, random, "most rotor: %d mm", 140 + 20 * random.nextInt(4));
        perhaps(out, random, "lights: %d min", 45 + 15 * random.nextInt(20));
        perhaps(out, random, "power meter: %s", random.nextBoolean() ? "yes" : "no");
        if (kind >= 2) {
            perhaps(out, random, "most fork travel: %d mm", 90 + 10 * random.nextInt(6));
            perhaps(out, random, "rebound clicks: %d", 8 + random.nextInt(14));
            perhaps(out, random, "compression clicks: %d", 8 + random.nextInt(14));
        }
        if (kind >= 3) {
            perhaps(out, random, "shock rebound clicks: %d", 8 + random.nextInt(14));
            perhaps(out, random, "shock stroke: %d mm", 35 + random.nextInt(25));
        }
        return out;
    }

    private static void perhaps(BikeBlock out, Random random, String format, Object value) {
        if (random.nextInt(3) > 0) {
            out.figures.add(String.format(Locale.ROOT, format, value));
        }
    }

    /** Reads it from files in a folder; those of another request are overwritten. */
    public Read read(Path folder) {
        Faults faults = new Faults();
        Course course = CourseReader.read(written(folder, "course.yaml", course()), "course.yaml", null, faults);
        Rider rider = RiderReader.read(written(folder, "rider.yaml", rider()), "rider.yaml", faults);
        Event event = EventReader.read(written(folder, "event.yaml", event()), "event.yaml", faults);
        faults.throwIfAny();
        Bike fromEvent = event.bike() == null ? Bike.UNKNOWN : BikeReader.read("event.yaml", event.bike(), faults);
        faults.throwIfAny();
        return new Read(course, rider, event, Survey.bike(rider.bike(), fromEvent));
    }

    /** Writes {@code course.yaml}, {@code rider.yaml} and {@code event.yaml} and returns what asks for them on a command line. */
    public Request request(Path folder) {
        return Request.builder(written(folder, "course.yaml", course()).toString()).event(written(folder, "event.yaml", event()).toString())
                .rider(written(folder, "rider.yaml", rider()).toString()).build();
    }

    private static Path written(Path folder, String name, String text) {
        try {
            return Files.writeString(folder.resolve(name), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The course's file. */
    public String course() {
        StringBuilder out = new StringBuilder();
        line(out, "name: Invented %d", number);
        line(out, "latitude: %.1f deg", latitude);
        line(out, "longitude: 10.0 deg");
        line(out, "start height: %d m", height);
        line(out, "stretches:");
        stretches.forEach(each -> each.write(out));
        return out.toString();
    }

    /** The rider's file. */
    public String rider() {
        StringBuilder out = new StringBuilder();
        line(out, "name: Drawn");
        line(out, "mass: %.1f kg", mass);
        line(out, "power: %.0f W", watts);
        line(out, watts == null ? null : "held for: 1:00 h");
        line(out, "climbing cadence: %d rpm", cadence);
        line(out, "skill: %s", skill);
        line(out, "races a year: %d", racesAYear);
        line(out, "sweat rate: %.1f L", sweat);
        riderLines.forEach(each -> line(out, "%s", each));
        if (riderBike != null) {
            riderBike.write(out);
        }
        return out.toString();
    }

    /** The event's file. */
    public String event() {
        StringBuilder out = new StringBuilder();
        line(out, "role: %s", role);
        line(out, "date: 2027-%02d-14", month);
        line(out, "start: %02d:00", start);
        line(out, "utc offset: +01:00");
        line(out, "laps: %d", laps);
        line(out, "aim: %s", aim);
        line(out, "group share: %d %%", group);
        out.append(low == null && ground == null && wind == null ? "" : "forecast:\n");
        line(out, "  low: %d C", low);
        line(out, "  high: %d C", high);
        line(out, "  going: %s", ground);
        line(out, "  wind: %.0f m/s", wind);
        line(out, "  wind from: %s", windFrom);
        if (water != null) {
            out.append(water.isEmpty() ? "support: none\n" : "support:\n");
            water.forEach(at -> line(out, "  - {at: %.1f km, water: yes}", at));
        }
        if (eventBike != null && eventBike.kind != null) {
            eventBike.write(out);
        }
        eventLines.forEach(each -> line(out, "%s", each));
        return out.toString();
    }

    /** A line of what is written; nothing where the value is null. */
    private static void line(StringBuilder out, String format, Object... values) {
        if (format != null && (values.length == 0 || values[0] != null)) {
            out.append(String.format(Locale.ROOT, format, values)).append('\n');
        }
    }

    @Override
    public String toString() {
        return "Request " + number + ":\n" + course() + "---\n" + rider() + "---\n" + event();
    }
}
