package courseworthy.event;

import courseworthy.text.Node;
import courseworthy.topic.Work;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The day as written; null means not written.
 *
 * @param name       may be empty
 * @param file       the path as typed, empty for no file
 * @param role       {@code race} or {@code training}; null where not written
 * @param date       the day
 * @param start      local time of the start
 * @param zone       the zone of the local time, or its offset from UTC on that day
 * @param laps       laps of the course, at least 1
 * @param aim        one of {@link #AIMS}
 * @param timeLimit  time allowed, s
 * @param groupShare share of the distance expected in a group, 0 to 1
 * @param forecast   the forecast, all of it may be unknown
 * @param support    support points in order; empty where none are written
 * @param supportKnown whether support points were written at all (an empty list then means none on the course)
 * @param rules      the event's equipment rules
 * @param startHeight height of the start above sea level, m, where the course does not tell
 * @param bike       the {@code bike:} block as written, read later by the reader of such blocks; null where not written here
 * @param plan       latest times on the way, where tyres are pumped, how long changes take
 * @param lines      the lines on which keys stand that are held against the course later
 */
public record Event(String name, String file, String role, LocalDate date, LocalTime start, ZoneId zone, Integer laps,
        String aim, Double timeLimit, Double groupShare, Forecast forecast, List<Support> support, boolean supportKnown, Rules rules,
        Double startHeight, Node.Mapping bike, Plan plan, Lines lines) {

    /** What the rider wants, least first. */
    public static final List<String> AIMS = List.of("finish", "time", "podium");

    /** The day nothing is known of. */
    public static final Event UNKNOWN = builder().build();

    /** Local time's offset from UTC at the start, by the rules of the zone for that date; null where zone or date are not written. */
    public ZoneOffset offset() {
        if (zone == null || zone instanceof ZoneOffset) {
            return (ZoneOffset) zone;
        }
        return date == null ? null : zone.getRules().getOffset(date.atTime(start == null ? LocalTime.NOON : start));
    }

    /** The same day with the role or the date replaced; null keeps the event's own. */
    public Event with(String otherRole, LocalDate otherDate) {
        return new Event(name, file, otherRole == null ? role : otherRole, otherDate == null ? date : otherDate, start, zone, laps, aim,
                timeLimit, groupShare, forecast, support, supportKnown, rules, startHeight, bike, plan, lines);
    }

    /** The same day with another journey; null keeps the event's own. */
    public Event with(Travel other) {
        Plan changed = other == null ? plan : new Plan(plan.cutoffs(), plan.pumped(), plan.changes(), plan.pits(), other, plan.hours(), plan.race());
        return new Event(name, file, role, date, start, zone, laps, aim, timeLimit, groupShare, forecast, support, supportKnown, rules,
                startHeight, bike, changed, lines);
    }

    /** The same day under another forecast. */
    public Event with(Forecast other) {
        return new Event(name, file, role, date, start, zone, laps, aim, timeLimit, groupShare, other, support, supportKnown, rules,
                startHeight, bike, plan, lines);
    }

    /** The same over another number of laps. */
    public Event withLaps(int other) {
        return new Event(name, file, role, date, start, zone, other, aim, timeLimit, groupShare, forecast, support, supportKnown, rules,
                startHeight, bike, plan, lines);
    }

    /** The same as a race over several days, or as one of its stages. */
    Event with(StageRace race) {
        Plan changed = new Plan(plan.cutoffs(), plan.pumped(), plan.changes(), plan.pits(), plan.travel(), plan.hours(), race);
        return new Event(name, file, role, date, start, zone, laps, aim, timeLimit, groupShare, forecast, support, supportKnown, rules,
                startHeight, bike, changed, lines);
    }

    /** The same with another share of the distance in a group. */
    Event inCompany(double share) {
        return new Event(name, file, role, date, start, zone, laps, aim, timeLimit, share, forecast, support, supportKnown, rules,
                startHeight, bike, plan, lines);
    }

    /** The same day with nothing said of the race that it is a stage of. */
    public Event onItsOwn() {
        return with((StageRace) null);
    }

    /** Whether it is a race over several days, looked at as a whole. */
    public boolean isStageRace() {
        return plan.race() != null && plan.race().number() == 0;
    }

    private static <T> T known(T first, T second) {
        return first != null ? first : second;
    }

    /**
     * The forecast at the start's height.
     *
     * @param low     lowest temperature of the day, C
     * @param high    highest temperature of the day, C
     * @param going   {@code dry}, {@code damp} or {@code wet}
     * @param wind    mean wind at 10 m height, m/s
     * @param from    direction it comes from, degrees clockwise from north
     * @param goodTo  how far its temperatures may be off either way, C
     * @param or      what it may turn to; whatever is not written there is as here
     * @param air     humidity and pressure of the air
     * @param hours   hour by hour, in order; empty where there are none. What they give is not given for the whole day, except that low and high are
     *                the least and the most of their temperatures
     */
    public record Forecast(Double low, Double high, String going, Double wind, Double from, Double goodTo, Forecast or, AirConditions air,
            List<WeatherHour> hours) {
        public static final Forecast UNKNOWN = builder().build();
        /** Words for the going, driest first. */
        public static final List<String> GOINGS = List.of("dry", "damp", "wet");

        public Forecast {
            hours = List.copyOf(hours);
        }

        /** The same with temperatures so much higher, and no alternative. */
        public Forecast warmer(double by) {
            return new Forecast(low == null ? null : Double.valueOf(low + by), high == null ? null : Double.valueOf(high + by), going, wind,
                    from, goodTo, null, air, hours.stream().map(hour -> hour.warmer(by)).toList());
        }

        /** The same with what it may turn to. */
        public Forecast turningTo(Forecast other) {
            return new Forecast(low, high, going, wind, from, goodTo, other, air, hours);
        }

        /** What it may turn to, with what is not given here taken from the forecast. */
        public Forecast orElse(Forecast forecast) {
            return new Forecast(known(low, forecast.low), known(high, forecast.high), known(going, forecast.going), known(wind, forecast.wind),
                    known(from, forecast.from), forecast.goodTo, null, air.orElse(forecast.air), hours.isEmpty() ? left(forecast.hours) : hours);
        }

        /** Of the hours of another forecast what is not given here for the whole day. */
        private List<WeatherHour> left(List<WeatherHour> others) {
            List<WeatherHour> out = others.stream().map(hour -> hour.without(this)).toList();
            return out.stream().anyMatch(WeatherHour::saysAnything) ? out : List.of();
        }

        public static Builder builder() {
            return new Builder();
        }

        /** Names each part as it is given. */
        public static final class Builder {

            private Double low;
            private Double high;
            private String going;
            private Double wind;
            private Double from;
            private Double goodTo;
            private Forecast or;
            private AirConditions air = AirConditions.UNKNOWN;
            private List<WeatherHour> hours = List.of();

            private Builder() {
            }

            public Builder low(Double value) {
                low = value;
                return this;
            }

            public Builder high(Double value) {
                high = value;
                return this;
            }

            public Builder going(String value) {
                going = value;
                return this;
            }

            public Builder wind(Double value) {
                wind = value;
                return this;
            }

            public Builder from(Double value) {
                from = value;
                return this;
            }

            public Builder goodTo(Double value) {
                goodTo = value;
                return this;
            }

            public Builder or(Forecast value) {
                or = value;
                return this;
            }

            public Builder air(AirConditions value) {
                air = value;
                return this;
            }

            public Builder hours(List<WeatherHour> value) {
                hours = value;
                return this;
            }

            public Forecast build() {
                return new Forecast(low, high, going, wind, from, goodTo, or, air, hours);
            }
        }
    }

    /**
     * The air of a forecast beside its temperature.
     *
     * @param humidity relative, 0 to 1, mean over the ride; null where not written
     * @param pressure at sea level, as weather services give it, Pa; null where not written
     */
    public record AirConditions(Double humidity, Double pressure) {
        public static final AirConditions UNKNOWN = new AirConditions(null, null);

        /** The same, and what is not written here as there. */
        public AirConditions orElse(AirConditions other) {
            return new AirConditions(known(humidity, other.humidity), known(pressure, other.pressure));
        }
    }

    /**
     * What the day's plan goes by besides.
     *
     * @param cutoffs latest times on the way, in order
     * @param pumped  where the tyres are pumped; null where not written
     * @param changes how long changes take, s, by the kind of work; those that are written
     * @param pits    of a race of laps, in the order of a lap
     * @param travel  the journey to the event and back
     * @param hours   the time for work on bikes before it; null where not written
     * @param race    the race over several days that it is, or is a stage of; null for an event of one day
     */
    public record Plan(List<Cutoff> cutoffs, InflationPlace pumped, Map<Work, Double> changes, List<Pit> pits, Travel travel, WorkHours hours, StageRace race) {

        public static final Plan NONE = new Plan(List.of(), null, Map.of(), List.of(), Travel.NONE, null, null);

        public Plan {
            cutoffs = List.copyOf(cutoffs);
            pits = List.copyOf(pits);
            changes = Collections.unmodifiableMap(new LinkedHashMap<>(changes));
        }
    }

    /**
     * The latest time at a point.
     *
     * @param at     m from the start of the event, over all laps
     * @param within s from the start
     */
    public record Cutoff(double at, double within) {
    }

    /**
     * Where the tyres are pumped.
     *
     * @param temperature C; null where not written
     * @param height      above sea level, m; null where not written
     */
    public record InflationPlace(Double temperature, Double height) {
    }

    /**
     * A support point.
     *
     * @param at    m from the start of the event, over all laps
     * @param water whether bottles can be filled
     * @param food  whether there is food
     * @param bag   whether a bag of one's own waits there
     * @param line  the line on which it is written, 0 where it is not from a file
     */
    public record Support(double at, boolean water, boolean food, boolean bag, int line) {
    }

    /**
     * The lines on which keys of an event stand.
     *
     * @param keys line by key; a key of a block by its path, {@code time to change/tyres}
     */
    public record Lines(Map<String, Integer> keys) {

        public static final Lines NONE = new Lines(Map.of());

        public Lines {
            keys = Map.copyOf(keys);
        }

        /** The line of a key, 0 where it is not written. */
        public int of(String key) {
            return keys.getOrDefault(key, 0);
        }
    }

    /**
     * The event's equipment rules; null means not written.
     *
     * @param aeroExtensions whether allowed
     * @param tyreWidthMost  widest tyre allowed, m
     * @param lights         whether lights are required
     * @param mudguards      whether mudguards are required
     * @param outsideHelp    whether outside help is allowed
     * @param kit            required kit, in the event's words
     * @param edition        date or year of the rules, as written
     * @param gearLimit      how high a gear may be
     */
    public record Rules(Boolean aeroExtensions, Double tyreWidthMost, Boolean lights, Boolean mudguards, Boolean outsideHelp,
            List<String> kit, String edition, GearLimit gearLimit) {
        public static final Rules NONE = new Rules(null, null, null, null, null, List.of(), "", null);
    }

    /**
     * The highest gear that an event allows, as it is checked: by how far a turn of the cranks takes the bike.
     *
     * @param development m
     * @param toAge       the highest age, as reached in the year of the event, that it holds for; null where it holds for all
     */
    public record GearLimit(double development, Integer toAge) {
    }

    public static Builder builder() {
        return new Builder();
    }

    /** Names each part as it is given. */
    public static final class Builder {

        private String name = "";
        private String file = "";
        private String role;
        private LocalDate date;
        private LocalTime start;
        private ZoneId zone;
        private Integer laps;
        private String aim;
        private Double timeLimit;
        private Double groupShare;
        private Forecast forecast = Forecast.UNKNOWN;
        private List<Support> support = List.of();
        private boolean supportKnown;
        private Rules rules = Rules.NONE;
        private Double startHeight;
        private Node.Mapping bike;
        private Plan plan = Plan.NONE;
        private Lines lines = Lines.NONE;

        private Builder() {
        }

        public Builder name(String value) {
            name = value;
            return this;
        }

        public Builder file(String value) {
            file = value;
            return this;
        }

        public Builder role(String value) {
            role = value;
            return this;
        }

        public Builder date(LocalDate value) {
            date = value;
            return this;
        }

        public Builder start(LocalTime value) {
            start = value;
            return this;
        }

        public Builder zone(ZoneId value) {
            zone = value;
            return this;
        }

        public Builder laps(Integer value) {
            laps = value;
            return this;
        }

        public Builder aim(String value) {
            aim = value;
            return this;
        }

        public Builder timeLimit(Double value) {
            timeLimit = value;
            return this;
        }

        public Builder groupShare(Double value) {
            groupShare = value;
            return this;
        }

        public Builder forecast(Forecast value) {
            forecast = value;
            return this;
        }

        public Builder support(List<Support> value) {
            support = value;
            return this;
        }

        public Builder supportKnown(boolean value) {
            supportKnown = value;
            return this;
        }

        public Builder rules(Rules value) {
            rules = value;
            return this;
        }

        public Builder startHeight(Double value) {
            startHeight = value;
            return this;
        }

        public Builder bike(Node.Mapping value) {
            bike = value;
            return this;
        }

        public Builder plan(Plan value) {
            plan = value;
            return this;
        }

        public Builder lines(Lines value) {
            lines = value;
            return this;
        }

        public Event build() {
            return new Event(name, file, role, date, start, zone, laps, aim, timeLimit, groupShare, forecast, support, supportKnown, rules,
                    startHeight, bike, plan, lines);
        }
    }
}
