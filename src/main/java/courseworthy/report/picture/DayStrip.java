package courseworthy.report.picture;

import java.util.List;

/**
 * The day hour by hour on the clock of the ride: temperature, light, what to drink and eat.
 *
 * @param startOfDay the start in seconds after midnight; null where it is not known
 * @param hours      in order, without a gap; the last ends with the ride
 * @param light      in order, without a gap over the hours; empty where it is not known when it is light
 */
public record DayStrip(Integer startOfDay, List<HourColumn> hours, List<LightSection> light) implements Picture {

    public DayStrip {
        hours = List.copyOf(hours);
        light = List.copyOf(light);
    }

    /**
     * One column.
     *
     * @param fromSeconds        from the start
     * @param toSeconds          from the start
     * @param temperatureCelsius in its middle; null where not known
     * @param drinkLitres        to drink in it
     * @param carbohydrateGrams  to eat in it; null where nothing is decided
     * @param weather            in it; null where it is not forecast by the hour
     */
    public record HourColumn(double fromSeconds, double toSeconds, Double temperatureCelsius, ValueRange drinkLitres, ValueRange carbohydrateGrams,
            HourReading weather) {

        /** An hour whose weather is not known. */
        public HourColumn(double fromSeconds, double toSeconds, Double temperatureCelsius, ValueRange drinkLitres, ValueRange carbohydrateGrams) {
            this(fromSeconds, toSeconds, temperatureCelsius, drinkLitres, carbohydrateGrams, null);
        }

        /** Mean wind in km/h; null where not known. */
        public Double windKilometresPerHour() {
            return weather == null ? null : weather.windKilometresPerHour();
        }

        /** Rain in mm; null where not known. */
        public ValueRange rainMillimetres() {
            return weather == null ? null : weather.rainMillimetres();
        }
    }

    /**
     * The weather of an hour; null where not known.
     *
     * @param windKilometresPerHour mean wind
     * @param windFrom              point of the compass; empty where not known
     * @param rainMillimetres       that falls
     * @param going                 of the ground, in a word or two; empty where not known
     */
    public record HourReading(Double windKilometresPerHour, String windFrom, ValueRange rainMillimetres, String going) {
    }

    /** How light it is from one moment to another, seconds from the start. */
    public record LightSection(double fromSeconds, double toSeconds, LightBand light) {
    }

    /** How light it is: sun above the horizon, civil twilight, dark. */
    public enum LightBand { DAY, TWILIGHT, NIGHT }

    @Override
    public <T> T accept(PictureVisitor<T> visitor) {
        return visitor.dayStrip(this);
    }
}
