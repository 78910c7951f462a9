package courseworthy.workshop;

import courseworthy.problem.Faults;
import courseworthy.problem.Spelling;
import courseworthy.text.FieldReader;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import courseworthy.units.Amount;
import courseworthy.units.Dimension;
import courseworthy.workshop.RideLog.Conditions;
import courseworthy.workshop.RideLog.Puncture;
import courseworthy.workshop.RideLog.LoggedRide;
import courseworthy.workshop.RideLog.Service;
import courseworthy.workshop.RideLog.LogSource;
import courseworthy.workshop.RideLog.StockUse;
import courseworthy.workshop.RideLog.Weekly;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Reads the log of a workshop and says everything that is wrong with it at once. */
public final class RideLogReader {

    /** The keys of a log's file. */
    public static final List<String> KEYS = List.of("log", "rides", "service", "used", "each week");
    /** The words for the going. */
    public static final List<String> GOINGS = List.of("dry", "damp", "wet");
    /** What can be measured of a part. */
    public static final List<PartDetail> MEASURED = List.of(PartDetail.WEAR, PartDetail.LEFT, PartDetail.THICKNESS);

    /** What a puncture may be repaired with, and the kind of stock that it takes; none for one that was not repaired. */
    public static final Map<String, String> REPAIRS = Map.of("sealant", "sealant", "plugs", "plugs", "tubes", "tube", "not at all", "");
    /** The words for these, in their order. */
    public static final List<String> REPAIR_WORDS = List.of("sealant", "plugs", "tubes", "not at all");

    private static final int LONGEST = 200;
    private static final double HOUR = 3600;
    private static final double DAY_HOURS = 24;
    private static final double WEEK_HOURS = 7 * DAY_HOURS;
    private static final String INSIDE = "a path beside the log or below it";

    private final String shown;
    private final Path folder;
    private final Workshop workshop;
    private final Faults faults;
    private final List<Puncture> punctures = new ArrayList<>();
    /** Seconds on a bike in one day, or in each week. */
    private final Map<String, Double> together = new HashMap<>();

    private RideLogReader(Path folder, String shown, Workshop workshop, Faults faults) {
        this.folder = folder;
        this.shown = shown;
        this.workshop = workshop;
        this.faults = faults;
    }

    /**
     * Reads a file.
     *
     * @param shown    its path as the user typed it
     * @param workshop whose bikes, parts and stock it names; null to take any name
     * @return the log, or null where the file could not be read at all; with faults it is not to be used
     */
    public static RideLog read(Path path, String shown, Workshop workshop, Faults faults) {
        Node.Mapping tree = YamlReader.read(path, shown, faults);
        Path folder = path.toAbsolutePath().normalize().getParent();
        return tree == null ? null : new RideLogReader(folder, shown, workshop, faults).log(new FieldReader(shown, tree, faults));
    }

    private RideLog log(FieldReader from) {
        String name = from.line("log", LONGEST);
        List<LoggedRide> rides = new ArrayList<>();
        List<LogSource> sources = new ArrayList<>();
        for (FieldReader each : from.blocks("rides")) {
            ride(each, rides, sources);
        }
        List<Service> services = new ArrayList<>();
        for (FieldReader each : from.blocks("service")) {
            service(each, services);
        }
        List<StockUse> uses = new ArrayList<>();
        for (FieldReader each : from.blocks("used")) {
            use(each, uses);
        }
        List<Weekly> weekly = new ArrayList<>();
        for (FieldReader each : from.blocks("each week")) {
            weekly(each, weekly);
        }
        from.done();
        return new RideLog(name == null ? "" : name.strip(), shown, folder, rides, sources, services, uses, punctures, weekly);
    }

    // Rides

    private void ride(FieldReader from, List<LoggedRide> rides, List<LogSource> sources) {
        LocalDate date = from.day("date");
        LocalDate first = from.day("from");
        LocalDate last = from.day("to");
        Double hours = amount(from, "hours", Dimension.TIME, 60, 20_000 * HOUR, "a time from 1 min to 20000 h");
        Double length = amount(from, "length", Dimension.LENGTH, 0, 1e9, "a distance from 0 km to 1000000 km");
        Conditions on = conditions(from);
        String debrief = path(from, "debrief");
        String recordings = path(from, "recordings");
        List<String> repairs = repairs(from);
        from.done();
        if (!oneKind(from)) {
            return;
        }
        if (from.has("recordings")) {
            noDay(from);
            addSource(sources, "recordings", recordings, null, on, from);
        } else if (from.has("debrief")) {
            dated(from, "of the ride");
            addSource(sources, "debrief", debrief, date, on, from);
        } else {
            LocalDate day = date == null ? last : date;
            if (day != null && on != null) {
                repairs.stream().filter(each -> !each.isEmpty()).forEach(each -> punctures.add(new Puncture(day, on.bike(), each)));
            }
            written(from, date == null ? first : date, date == null ? last : date, hours, length, on, rides);
        }
    }

    /** The kinds of stock that punctures took. */
    private static List<String> repairs(FieldReader from) {
        List<String> out = new ArrayList<>();
        for (String each : from.texts("punctures")) {
            if (REPAIRS.containsKey(each)) {
                out.add(REPAIRS.get(each));
            } else {
                from.fault("punctures", "\"" + each + "\"", "what each was repaired with: " + String.join(", ", REPAIR_WORDS), Spelling.didYouMean(each, REPAIR_WORDS));
            }
        }
        if (from.has("punctures") && !from.has("hours") && (from.has("debrief") || from.has("recordings"))) {
            from.fault("punctures", "punctures of rides in a file", "punctures of a ride with its hours", "Write them in the debrief, or what they took under used.");
        }
        return out;
    }

    private static void addSource(List<LogSource> to, String key, String path, LocalDate date, Conditions on, FieldReader from) {
        if (path != null && on != null) {
            to.add(new LogSource(key, path, date, on, from.lineOf(key)));
        }
    }

    private static boolean oneKind(FieldReader from) {
        int kinds = (from.has("hours") ? 1 : 0) + (from.has("debrief") ? 1 : 0) + (from.has("recordings") ? 1 : 0);
        if (kinds != 1) {
            from.fault(from.has("hours") ? "hours" : "debrief", kinds == 0 ? "no hours" : "more than one of hours, debrief and recordings",
                    "one of: hours, debrief, recordings", "Write the hours ridden, or name the file or folder that has them.");
        }
        return kinds == 1;
    }

    private static void noDay(FieldReader from) {
        for (String key : List.of("date", "from", "to", "length")) {
            if (from.has(key)) {
                from.fault(key, key + " beside recordings", "no " + key, "Recordings have their own days and distances.");
            }
        }
    }

    private static boolean dated(FieldReader from, String what) {
        if (!from.has("date")) {
            from.fault("date", "no date", "the day " + what, "Add \"date: 2026-05-09\".");
        }
        return from.has("date");
    }

    private void written(FieldReader from, LocalDate first, LocalDate last, Double hours, Double length, Conditions on, List<LoggedRide> rides) {
        boolean span = from.has("from") && from.has("to") && !from.has("date");
        boolean day = from.has("date") && !from.has("from") && !from.has("to");
        if (!span && !day) {
            from.fault(from.has("from") ? "from" : "date", "no single day and no first and last day", "date alone, or from and to",
                    "Write \"date: 2026-05-09\", or \"from: 2026-01-05\" and \"to: 2026-03-01\".");
        } else if (first != null && last != null && last.isBefore(first)) {
            from.fault("to", from.node("to").describe(), "a day not before from", "");
        } else if (first != null && last != null && hours != null && on != null) {
            long days = ChronoUnit.DAYS.between(first, last) + 1;
            if (hours > days * DAY_HOURS * HOUR) {
                from.fault("hours", from.node("hours").describe() + " in " + (days == 1 ? "one day" : days + " days"), "at most 24 h a day", "");
                return;
            }
            if (days > 1 || fits(from, on.bike() + " on " + first, hours, DAY_HOURS, "24 h a day")) {
                rides.add(new LoggedRide(first, last, hours, length, on));
            }
        }
    }

    /** Null where the bike cannot be used. */
    private Conditions conditions(FieldReader from) {
        from.required("bike", "the name of a bike of the workshop");
        String bike = from.line("bike", LONGEST);
        String going = from.word("going", GOINGS);
        Double mud = amount(from, "mud", Dimension.SHARE, 0, 1, "a share of the way from 0 % to 100 %");
        List<String> with = from.texts("with");
        for (String each : with) {
            known(from, "with", each, names(workshop == null ? List.of() : workshop.parts()), "a part of the workshop");
        }
        boolean there = bike != null && known(from, "bike", bike, names(workshop == null ? List.of() : workshop.bikes()), "a bike of the workshop");
        return there ? new Conditions(bike, going, mud, with) : null;
    }

    // Service, stock and usual weeks

    private void service(FieldReader from, List<Service> out) {
        boolean dated = dated(from, "on which it was done");
        LocalDate date = from.day("date");
        from.required("part", "the name of a part or a bike");
        String part = from.line("part", LONGEST);
        String job = from.line("job", LONGEST);
        Map<PartDetail, Double> measured = new EnumMap<>(PartDetail.class);
        for (PartDetail each : MEASURED) {
            Double value = amount(from, each.written(), each.dimension(), each.least(), each.most(), each.range());
            if (value != null) {
                measured.put(each, value);
            }
        }
        from.done();
        if (!from.has("job") && MEASURED.stream().noneMatch(each -> from.has(each.written()))) {
            from.fault("job", "neither a job nor a measurement", "job, wear, left or thickness", "Write what was done: \"job: renew\".");
        }
        if (dated && date != null && part != null && known(from, "part", part, partNames(), "a part or a bike of the workshop") && measurable(from, part, measured)) {
            out.add(new Service(date, part, job, measured, from.line()));
        }
    }

    private boolean measurable(FieldReader from, String part, Map<PartDetail, Double> measured) {
        Part of = workshop == null ? null : workshop.find(part);
        for (PartDetail each : measured.keySet()) {
            if (of != null && !of.kind().details().contains(each)) {
                from.fault(each.written(), each.written() + " of a " + of.kind().word(), "wear of a chain, left of brake pads, thickness of a rotor", "");
                return false;
            }
        }
        return true;
    }

    private void use(FieldReader from, List<StockUse> out) {
        boolean dated = dated(from, "on which it was used");
        LocalDate date = from.day("date");
        from.required("stock", "the name of a stock of the workshop");
        String stock = from.line("stock", LONGEST);
        StockItem item = workshop == null || stock == null ? null
                : workshop.stock().stream().filter(each -> each.name().equals(stock)).findFirst().orElse(null);
        boolean volume = workshop == null && from.node("quantity") instanceof Node.Scalar written && written.text().contains(" ");
        Double quantity = StockReader.quantity(from, "quantity", volume || item != null && item.liquid());
        from.done();
        List<String> names = workshop == null ? List.of() : workshop.stock().stream().map(StockItem::name).toList();
        if (item != null && item.liquid() && quantity == null && !from.has("quantity")) {
            from.fault("quantity", "no quantity of a liquid", "a volume", "Add \"quantity: 60 ml\".");
        } else if (dated && date != null && stock != null && known(from, "stock", stock, names, "a stock of the workshop")) {
            out.add(new StockUse(date, stock, quantity == null ? 1 : quantity));
        }
    }

    private void weekly(FieldReader from, List<Weekly> out) {
        from.required("hours", "the hours of a usual week");
        Double hours = amount(from, "hours", Dimension.TIME, 0, 100 * HOUR, "a time from 0 h to 100 h");
        Double length = amount(from, "length", Dimension.LENGTH, 0, 3e6, "a distance from 0 km to 3000 km");
        Conditions on = conditions(from);
        from.done();
        if (hours != null && on != null && fits(from, on.bike() + " each week", hours, WEEK_HOURS, "168 h a week")) {
            out.add(new Weekly(hours, length, on));
        }
    }

    /** Whether hours fit into a day or a week with those written before of the same bike. */
    private boolean fits(FieldReader from, String of, double hours, double most, String expected) {
        double all = together.merge(of, hours, Double::sum);
        boolean fits = all <= most * HOUR * (1 + 1e-9);
        if (!fits) {
            from.fault("hours", String.format(Locale.ROOT, "%.0f h on %s in all", Math.ceil(all / HOUR), of), "at most " + expected, "");
        }
        return fits;
    }

    // Names

    private List<String> partNames() {
        List<String> out = new ArrayList<>();
        if (workshop != null) {
            out.addAll(names(workshop.bikes()));
            out.addAll(names(workshop.parts()));
        }
        return out;
    }

    private static List<String> names(Collection<Part> parts) {
        Set<String> out = new LinkedHashSet<>();
        parts.forEach(each -> out.add(each.name()));
        return List.copyOf(out);
    }

    private boolean known(FieldReader from, String key, String name, List<String> names, String expected) {
        if (workshop == null || names.contains(name)) {
            return true;
        }
        String near = Spelling.didYouMean(name, names);
        from.fault(key, "\"" + name + "\", which is not in the workshop", expected, near.isEmpty() ? "Write the name as in the workshop's file." : near);
        return false;
    }

    private String path(FieldReader from, String key) {
        String path = from.line(key, LONGEST);
        if (path != null && !StockReader.inside(path)) {
            from.fault(key, "\"" + path + "\"", INSIDE, "Copy it into the log's folder.");
            return null;
        }
        return path;
    }

    private static Double amount(FieldReader from, String key, Dimension dimension, double least, double most, String range) {
        Amount amount = from.amount(key, dimension, least, most, range);
        return amount == null ? null : Double.valueOf(amount.inBase());
    }
}
