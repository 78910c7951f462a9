package courseworthy.report;

import courseworthy.ride.Range;

/** Figures with their units as people read them, rounded to what they are good for; a range in brackets where its ends differ. */
public final class Figures {

    private static final double MINUTE = 60;
    private static final double HOUR = 3600;
    /** Up to here in seconds, up to there in minutes. */
    private static final double IN_SECONDS = 100;
    private static final double IN_MINUTES = 100 * MINUTE;

    private Figures() {
    }

    /** {@code 18 s}, {@code 12 min}, {@code 4:07 h}. */
    public static String time(double seconds) {
        double size = Math.abs(seconds);
        if (size < IN_SECONDS) {
            return Phrases.number(whole(seconds), 0) + " s";
        }
        return size < IN_MINUTES ? Phrases.number(seconds / MINUTE, size < 10 * MINUTE ? 1 : 0) + " min" : clock(seconds);
    }

    private static String clock(double seconds) {
        long minutes = Math.round(Math.abs(seconds) / MINUTE);
        return (seconds < 0 ? "-" : "") + minutes / 60 + (minutes % 60 < 10 ? ":0" : ":") + minutes % 60 + " h";
    }

    static String time(Range seconds) {
        double size = Math.max(Math.abs(seconds.mid()), Math.max(Math.abs(seconds.low()), Math.abs(seconds.high())) / 3);
        if (size < IN_SECONDS) {
            return range(seconds, 0, "s");
        }
        if (size < IN_MINUTES) {
            return range(seconds.times(1 / MINUTE), size < 10 * MINUTE ? 1 : 0, "min");
        }
        String mid = clock(seconds.mid());
        String low = clock(seconds.low());
        String high = clock(seconds.high());
        return low.equals(high) ? mid : mid + " (" + low.substring(0, low.length() - 2) + " to " + high.substring(0, high.length() - 2) + ")";
    }

    /** {@code 350 m}, {@code 3.8 km}. */
    static String distance(double metres) {
        return metres < 1000 ? Phrases.number(metres, 0) + " m" : Phrases.number(metres / 1000, 1) + " km";
    }

    static String speed(double metresPerSecond) {
        return Phrases.number(metresPerSecond * 3.6, 1) + " km/h";
    }

    static String speed(Range metresPerSecond) {
        return range(metresPerSecond.times(3.6), 1, "km/h");
    }

    static String cadence(Range perMinute) {
        return range(perMinute, 0, "rpm");
    }

    static String torque(Range newtonMetres) {
        return range(newtonMetres, 0, "N m");
    }

    static String watts(Range watts) {
        return range(watts, 0, "W");
    }

    static String percent(Range share, int decimals) {
        return range(share.times(100), decimals, "%");
    }

    static String percent(double share) {
        return Phrases.number(share * 100, 0) + " %";
    }

    /** {@code 120 g}, {@code 1.2 kg}; with its sign where it is a difference. */
    static String mass(Range kilograms) {
        double size = Math.max(Math.abs(kilograms.low()), Math.abs(kilograms.high()));
        return size < 1 ? range(kilograms.times(1000), 0, "g") : range(kilograms, 1, "kg");
    }

    /** {@code 18 s (12 to 24)}. */
    static String range(Range range, int decimals, String unit) {
        String low = number(range.low(), decimals);
        String mid = number(range.mid(), decimals);
        String high = number(range.high(), decimals);
        return mid + " " + unit + (low.equals(high) ? "" : " (" + low + " to " + high + ")");
    }

    /** {@code 18 (12 to 24)}, for a column that names the unit. */
    static String plain(Range range, int decimals) {
        return range(range, decimals, "").replace("  ", " ").strip();
    }

    private static String number(double value, int decimals) {
        String text = Phrases.number(value, decimals);
        return text.startsWith("-") && zero(text) ? text.substring(1) : text;
    }

    private static boolean zero(String text) {
        for (int i = 1; i < text.length(); i++) {
            if (text.charAt(i) != '0' && text.charAt(i) != '.') {
                return false;
            }
        }
        return true;
    }

    /** Never a negative zero. */
    private static double whole(double value) {
        return Math.round(value) + 0.0;
    }
}
