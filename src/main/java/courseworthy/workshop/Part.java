package courseworthy.workshop;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** A part, or a bike's frame with its limits: what is written of it, and where it is mounted. Sizes are in base units. */
public final class Part {

    private final String name;
    private final PartKind kind;
    private final int line;
    private final Map<PartDetail, Object> details;
    private Part on;
    private String mountedEnd;
    private String home;
    private boolean anothers;

    /**
     * @param name    unique in its workshop
     * @param line    where it is written, 1-based
     * @param details Double, Integer, Boolean, String, {@code List<String>}, int[], LocalDate, {@code List<Clearance>}, {@code List<Interval>}, {@code List<ChartRow>} or {@code List<Double>} by the form
     */
    public Part(String name, PartKind kind, int line, Map<PartDetail, ?> details) {
        this.name = name;
        this.kind = kind;
        this.line = line;
        this.details = new EnumMap<>(PartDetail.class);
        this.details.putAll(details);
    }

    /**
     * The widest tyre for a wheel size.
     *
     * @param beadSeat m; null for every size
     * @param width    m
     */
    public record Clearance(Double beadSeat, double width) {
    }

    /**
     * How often something is done to a part, whichever comes first.
     *
     * @param job    what is done
     * @param hours  s; null where not stated
     * @param length m; null where not stated
     * @param days   null where not stated
     */
    public record StatedInterval(String job, Double hours, Double length, Integer days) {
    }

    /**
     * A row of a chart of air pressures.
     *
     * @param rider    kg
     * @param pressure Pa
     */
    public record ChartRow(double rider, double pressure) {
    }

    public String name() {
        return name;
    }

    public PartKind kind() {
        return kind;
    }

    public int line() {
        return line;
    }

    /** What it is mounted on, a part or a bike; null where it lies loose. */
    public Part on() {
        return on;
    }

    void mount(Part host) {
        on = host;
    }

    /** @param end of the bike, where the part could be mounted at either; null where it says so itself, or what it is on does */
    void mount(Part host, String end) {
        on = host;
        mountedEnd = end;
    }

    /** The same, lying loose; owned where it was on a wish list and is bought, and then ridden in. */
    Part copy(boolean bought) {
        Map<PartDetail, Object> copied = new EnumMap<>(PartDetail.class);
        copied.putAll(details);
        if (bought) {
            copied.put(PartDetail.OWNED, true);
            copied.remove(PartDetail.HOURS_USED);
        }
        Part out = new Part(name, kind, line, copied);
        out.home = home();
        out.mountedEnd = mountedEnd;
        out.anothers = anothers;
        return out;
    }

    /** The same, lying loose, added on another day: sealant that is new. */
    Part copyAdded(LocalDate day) {
        Part out = copy(false);
        out.details.put(PartDetail.ADDED, day);
        return out;
    }

    /** The bike it was on when the workshop was read, whatever has taken it off since; null where it lay loose. */
    private String home() {
        return home != null || bike() == null ? home : bike().name();
    }

    /** Whether it may go on a bike: what stays, stays with the bike it was on when the workshop was read. */
    public boolean mayServe(Part bike) {
        return !Boolean.TRUE.equals(yes(PartDetail.STAYS)) || home() == null || home().equals(bike.name());
    }

    /** The same, lying loose; not trained on where it is set up for somebody else. @param rider null where not named */
    Part copyFor(String rider) {
        Part out = copy(false);
        String whose = word(PartDetail.SET_UP_FOR);
        if (whose != null && !whose.equalsIgnoreCase(rider)) {
            out.details.remove(PartDetail.TRAINED_ON);
            out.anothers = rider != null;
        }
        return out;
    }

    /** Whether it is a bike that is set up for somebody else than the rider whose workshop this is. */
    public boolean isAnothers() {
        return anothers;
    }

    /** The bike it is mounted on, through whatever it is mounted on; null where it lies loose. */
    public Part bike() {
        Part at = this;
        while (at != null && at.kind != PartKind.BIKE) {
            at = at.on;
        }
        return at;
    }

    /** The place it has now, whether its wheel is on a bike or not; null where it lies loose or nothing says which end. */
    public MountingPlace place() {
        if (on == null || kind == PartKind.BIKE) {
            return null;
        }
        for (MountingPlace place : MountingPlace.of(kind)) {
            if (place.end() == null || place.end().equals(end())) {
                return place;
            }
        }
        return null;
    }

    private String end() {
        for (Part at = this; at != null; at = at.on) {
            if (at.word(PartDetail.END) != null) {
                return at.word(PartDetail.END);
            }
        }
        return mountedEnd;
    }

    public boolean has(PartDetail detail) {
        return details.containsKey(detail);
    }

    /** A size in the base unit, or a whole number; null where not written. */
    public Double number(PartDetail detail) {
        Object value = details.get(detail);
        return value == null ? null : Double.valueOf(((Number) value).doubleValue());
    }

    /** A word or a label; null where not written. */
    public String word(PartDetail detail) {
        return (String) details.get(detail);
    }

    /** Null where not written. */
    public Boolean yes(PartDetail detail) {
        return (Boolean) details.get(detail);
    }

    /** Teeth as written; null where not written. */
    public int[] teeth(PartDetail detail) {
        return (int[]) details.get(detail);
    }

    /** Words or labels; null where not written. */
    @SuppressWarnings("unchecked")
    public List<String> words(PartDetail detail) {
        return (List<String>) details.get(detail);
    }

    /** Sizes in m, as written; null where not written. */
    @SuppressWarnings("unchecked")
    public List<Double> sizes(PartDetail detail) {
        return (List<Double>) details.get(detail);
    }

    /** Service and renewal as the maker states them; empty where not written. */
    @SuppressWarnings("unchecked")
    public List<StatedInterval> intervals() {
        return (List<StatedInterval>) details.getOrDefault(PartDetail.INTERVALS, List.of());
    }

    /** Rows of a chart, from light to heavy; null where not written. */
    @SuppressWarnings("unchecked")
    public List<ChartRow> chart(PartDetail detail) {
        return (List<ChartRow>) details.get(detail);
    }

    /** Null where not written. */
    public LocalDate day(PartDetail detail) {
        return (LocalDate) details.get(detail);
    }

    /** The widest tyre for a wheel size, m; null where not written, 0 where other sizes are written and this is not. */
    @SuppressWarnings("unchecked")
    public Double clearance(double beadSeat) {
        List<Clearance> all = (List<Clearance>) details.get(PartDetail.TYRE_CLEARANCE);
        if (all == null) {
            return null;
        }
        for (Clearance each : all) {
            if (each.beadSeat() == null || Math.abs(each.beadSeat() - beadSeat) < 0.0005) {
                return each.width();
            }
        }
        return 0.0;
    }

    /** Whether the rider has it; false on a wish list. */
    public boolean owned() {
        return !Boolean.FALSE.equals(yes(PartDetail.OWNED));
    }

    @Override
    public String toString() {
        return name;
    }
}
