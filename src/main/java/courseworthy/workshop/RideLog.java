package courseworthy.workshop;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * What was ridden on the bikes of a workshop, and what was done to their parts.
 *
 * @param name     may be empty
 * @param file     the path as typed
 * @param folder   where the files that it names lie
 * @param rides    in the order written
 * @param sources  rides that are to be read from other files
 * @param services in the order written
 * @param uses     what was taken from the stock
 * @param punctures those for which the log says what they were repaired with
 * @param weekly   what is ridden in a usual week
 */
public record RideLog(String name, String file, Path folder, List<LoggedRide> rides, List<LogSource> sources, List<Service> services, List<StockUse> uses,
        List<Puncture> punctures, List<Weekly> weekly) {

    public RideLog {
        rides = List.copyOf(rides);
        sources = List.copyOf(sources);
        services = List.copyOf(services);
        uses = List.copyOf(uses);
        punctures = List.copyOf(punctures);
        weekly = List.copyOf(weekly);
    }

    /**
     * Where and on what was ridden.
     *
     * @param bike  its name
     * @param going {@code dry}, {@code damp} or {@code wet}; null where not given
     * @param mud   share of the way, 0 to 1; null where not given
     * @param with  names of parts that were on the bike in place of those mounted now
     */
    public record Conditions(String bike, String going, Double mud, List<String> with) {
        public Conditions {
            with = List.copyOf(with);
        }

        /** The same with the going of a report where none is written here. */
        public Conditions goingOr(String other) {
            return going == null ? new Conditions(bike, other, mud, with) : this;
        }
    }

    /**
     * A ride, or all rides of some days together.
     *
     * @param from   the first day
     * @param to     the last day, the same for one ride
     * @param hours  s
     * @param length m; null where not given
     */
    public record LoggedRide(LocalDate from, LocalDate to, double hours, Double length, Conditions on) {
    }

    /**
     * A file or folder with rides.
     *
     * @param key  {@code debrief} or {@code recordings}
     * @param path as written, beside the log or below it
     * @param date of a debrief; null for recordings, which have their own
     * @param line 1-based
     */
    public record LogSource(String key, String path, LocalDate date, Conditions on, int line) {
    }

    /**
     * Work done on a part, or a measurement of it.
     *
     * @param part     its name, or that of a bike
     * @param job      null where it was only measured
     * @param measured by what was measured, in the base unit
     * @param line     1-based
     */
    public record Service(LocalDate date, String part, String job, Map<PartDetail, Double> measured, int line) {
        public Service {
            measured = Map.copyOf(measured);
        }
    }

    /**
     * Something taken from the stock.
     *
     * @param stock    its name
     * @param quantity in pieces, or L of a liquid
     */
    public record StockUse(LocalDate date, String stock, double quantity) {
    }

    /**
     * A puncture that was repaired on a ride.
     *
     * @param kind of the stock that it took: {@code tube}, {@code plugs} or {@code sealant}
     */
    public record Puncture(LocalDate date, String bike, String kind) {
    }

    /**
     * What is ridden on a bike in a usual week.
     *
     * @param hours  s
     * @param length m; null where not given
     */
    public record Weekly(double hours, Double length, Conditions on) {
    }

    /** The same with rides and punctures that were read from its sources. */
    public RideLog with(List<LoggedRide> more, List<Puncture> found) {
        List<LoggedRide> all = new ArrayList<>(rides);
        all.addAll(more);
        List<Puncture> repaired = new ArrayList<>(punctures);
        repaired.addAll(found);
        return new RideLog(name, file, folder, all, List.of(), services, uses, repaired, weekly);
    }

    /** The first day of which it says something; null where it is empty. */
    public LocalDate first() {
        return days().min(Comparator.naturalOrder()).orElse(null);
    }

    /** The last day of which it says something; null where it is empty. */
    public LocalDate last() {
        return days().max(Comparator.naturalOrder()).orElse(null);
    }

    private Stream<LocalDate> days() {
        Stream<LocalDate> ridden = rides.stream().flatMap(each -> Stream.of(each.from(), each.to()));
        Stream<LocalDate> done = Stream.concat(services.stream().map(Service::date), uses.stream().map(StockUse::date));
        return Stream.concat(ridden, done).filter(Objects::nonNull);
    }
}
