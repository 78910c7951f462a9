package courseworthy.ride;

import java.util.function.DoubleUnaryOperator;

/**
 * What the weather of each hour means along a way, for a rider who is at each place at a given time: by lap and step, laps one after the other. All
 * rides of an estimate meet it at the same places, faster and slower ones too.
 */
public final class HourlyConditions {

    /** 0 °C in K, exact by definition. */
    private static final double KELVIN = 273.15;

    private final double[] density;
    private final double[] wind;
    private final int[] wetness;
    private final boolean rains;
    private final boolean directed;
    private final double reference;

    private HourlyConditions(int size, boolean rains, RideAssumptions.WeatherAssumptions weather, DiscretisedCourse way) {
        this.rains = rains;
        directed = way.hasHeadings() && weather.directed() && weather.hourly().hasWind();
        reference = weather.wind();
        density = new double[size];
        wind = new double[size];
        wetness = new int[size];
    }

    /**
     * The conditions along a way.
     *
     * @param clock time from the start, stops counted, at a distance from the start over all laps, s
     * @param going null where no rain is forecast
     */
    static HourlyConditions along(DiscretisedCourse way, RideAssumptions basis, GoingByHour going, GroundFigures grounds, DoubleUnaryOperator clock) {
        HourlyConditions out = new HourlyConditions(way.size() * basis.laps(), going != null, basis.weather(), way);
        RideAssumptions.WeatherAssumptions weather = basis.weather();
        DayTemperature day = weather.day(clock.applyAsDouble(way.length() * basis.laps()));
        for (int lap = 0; lap < basis.laps(); lap++) {
            for (int i = 0; i < way.size(); i++) {
                int at = lap * way.size() + i;
                double seconds = clock.applyAsDouble(lap * way.length() + way.along(i) - 0.5 * way.length(i));
                out.density[at] = density(weather, day, seconds);
                out.wind[at] = wind(weather, way, i, seconds);
                out.wetness[at] = going == null ? 0 : going.wetness(grounds.ground(way.ground(i)), seconds);
            }
        }
        return out;
    }

    /** Density then over that of the mean temperature and humidity. */
    private static double density(RideAssumptions.WeatherAssumptions weather, DayTemperature day, double seconds) {
        double now = day == null ? weather.temperature() : day.temperature(seconds, 0);
        if (!weather.hourly().hasHumidity()) {
            return (weather.temperature() + KELVIN) / (now + KELVIN);
        }
        return Air.density(weather.pressure(), now, weather.hourly().humidity(seconds))
                / Air.density(weather.pressure(), weather.temperature(), weather.humidity());
    }

    /** Headwind over the wind of the forecast where the heading is known, else the strength of the wind over that. */
    private static double wind(RideAssumptions.WeatherAssumptions weather, DiscretisedCourse way, int step, double seconds) {
        if (!(weather.wind() > 0)) {
            return 0;
        }
        double strength = weather.hourly().wind(seconds) / weather.wind();
        double from = weather.hourly().from(seconds);
        boolean directed = way.hasHeadings() && weather.hourly().hasDirection();
        return !directed ? strength : Double.isNaN(from) ? 0 : strength * Math.cos(from - way.bearing(step));
    }

    /** Density of the air over that at the mean temperature and humidity. */
    public double density(int at) {
        return density[at];
    }

    /** Headwind over the wind of the forecast where the heading is known, else the strength of the wind over that. */
    public double wind(int at) {
        return wind[at];
    }

    /** Headwind at 10 m height on a step of a lap, m/s, below 0 from behind; NaN where the heading or where the wind comes from is not known. */
    public double headwind(int at) {
        return directed ? wind[at] * reference : Double.NaN;
    }

    /** How wet the ground is on a step of a lap: 0 dry, 1 damp, 2 wet. */
    public int wetness(int at) {
        return wetness[at];
    }

    /** Which of the figures of a ground hold: the first where no rain is forecast by the hour, else those of dry, damp and wet after it. */
    public int slotAt(int at) {
        return rains ? slot(wetness[at]) : 0;
    }

    static int slot(int wetness) {
        return 1 + wetness;
    }
}
