package courseworthy.wear;

import courseworthy.problem.Faults;
import courseworthy.ride.Range;
import courseworthy.text.YamlReader;
import courseworthy.workshop.RideLog;
import courseworthy.workshop.RideLog.Conditions;
import courseworthy.workshop.RideLog.Puncture;
import courseworthy.workshop.RideLog.LoggedRide;
import courseworthy.workshop.RideLog.Service;
import courseworthy.workshop.RideLog.StockUse;
import courseworthy.workshop.RideLog.Weekly;
import courseworthy.workshop.Workshop;
import courseworthy.workshop.WorkshopReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A workshop with a log, made line by line. */
final class ExampleWorkshop {

    static final double HOUR = 3600;
    /** A Monday. */
    static final LocalDate START = LocalDate.of(2026, 3, 2);

    private final Workshop workshop;
    private final List<LoggedRide> rides = new ArrayList<>();
    private final List<Service> services = new ArrayList<>();
    private final List<StockUse> uses = new ArrayList<>();
    private final List<Puncture> punctures = new ArrayList<>();
    private final List<Weekly> weekly = new ArrayList<>();

    ExampleWorkshop(String text) {
        Faults faults = new Faults();
        workshop = WorkshopReader.decode(YamlReader.read(text.getBytes(StandardCharsets.UTF_8), "w.yaml", faults), "w.yaml", faults);
        if (faults.stop()) {
            faults.throwIfAny();
        }
    }

    /** One bike, {@code b}, with some parts. */
    static ExampleWorkshop with(String... parts) {
        return new ExampleWorkshop("bikes:\n  - {name: b, mass: 9 kg}\nparts:\n  - " + String.join("\n  - ", parts) + "\n");
    }

    /** The same where more is written of the bike. */
    static ExampleWorkshop withBike(String more, String... parts) {
        return new ExampleWorkshop("bikes:\n  - {name: b, mass: 9 kg, " + more + "}\nparts:\n  - " + String.join("\n  - ", parts) + "\n");
    }

    ExampleWorkshop ride(LocalDate day, double hours, String going) {
        rides.add(new LoggedRide(day, day, hours * HOUR, null, new Conditions("b", going, null, List.of())));
        return this;
    }

    ExampleWorkshop ride(LoggedRide ride) {
        rides.add(ride);
        return this;
    }

    ExampleWorkshop service(LocalDate day, String part, String job) {
        services.add(new Service(day, part, job, Map.of(), 1));
        return this;
    }

    ExampleWorkshop service(Service service) {
        services.add(service);
        return this;
    }

    ExampleWorkshop used(LocalDate day, String stock, double quantity) {
        uses.add(new StockUse(day, stock, quantity));
        return this;
    }

    /** @param kind of the stock that it took */
    ExampleWorkshop puncture(LocalDate day, String kind) {
        punctures.add(new Puncture(day, "b", kind));
        return this;
    }

    ExampleWorkshop weekly(double hours, String going) {
        weekly.add(new Weekly(hours * HOUR, null, new Conditions("b", going, null, List.of())));
        return this;
    }

    Workshop made() {
        return workshop.with(new RideLog("", "log.yaml", Path.of("."), rides, List.of(), services, uses, punctures, weekly));
    }

    /** The plan of some weeks, with two hours for work on each day. */
    UpkeepPlan plan(int weeks) {
        return plan(weeks, List.of(), List.of(), 120);
    }

    UpkeepPlan plan(int weeks, List<RideUse> events, List<UpkeepPlanner.TyreChange> changes, int aDay) {
        Workshop made = made();
        LocalDate from = made.log().last() == null ? START : made.log().last();
        return UpkeepPlanner.of(made, events, changes, new WorkTime(aDay, Map.of()), from.plusWeeks(weeks));
    }

    static RideUse event(LocalDate day, double hours, String... parts) {
        return new RideUse(day, "b", Set.of(parts), Range.exact(hours * HOUR), null, "dry", null, "a race");
    }
}
