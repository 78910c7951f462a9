package courseworthy.render.svg;

import courseworthy.render.svg.TextBox.Anchor;
import courseworthy.report.picture.DayStrip;
import courseworthy.report.picture.DayStrip.HourColumn;
import courseworthy.report.picture.DayStrip.LightSection;

/** The day hour by hour, downward: a row an hour with clock, light, temperature, what to drink and to eat. */
final class DayRowsDrawing {

    private static final double ROW = 22;
    /** A second line, for the weather. */
    private static final double SECOND = 17;
    private static final double TOP = 22;
    private static final double LIGHT_LEFT = 52;
    private static final double LIGHT_WIDTH = 76;
    private static final double TEMPERATURE_RIGHT = 172;
    private static final double DRINK_RIGHT = 244;
    private static final double EAT_RIGHT = 308;

    private final SvgCanvas canvas;
    private final DayStrip strip;
    /** Height of a row. */
    private final double row;

    private DayRowsDrawing(SvgCanvas canvas, DayStrip strip) {
        this.canvas = canvas;
        this.strip = strip;
        row = ROW + (DayStripDrawing.has(strip, HourColumn::weather) ? SECOND : 0);
    }

    static void draw(SvgCanvas canvas, DayStrip strip) {
        new DayRowsDrawing(canvas, strip).draw();
    }

    private void draw() {
        heading(Anchor.START, 0, strip.startOfDay() == null ? "Time" : "Clock");
        heading(Anchor.START, LIGHT_LEFT, "Light");
        heading(Anchor.END, TEMPERATURE_RIGHT, new PictureText("\u00b0C", "\u00b0F"));
        heading(Anchor.END, DRINK_RIGHT, PictureText.heading("Drink, ", "L"));
        heading(Anchor.END, EAT_RIGHT, "Eat, g");
        double y = TOP;
        for (HourColumn each : strip.hours()) {
            row(each, y);
            y += row;
        }
        // After the lines between rows, so that the plate of a word covers them.
        light();
        canvas.line("axis", 0, y, width(), y);
    }

    private double width() {
        return Math.min(canvas.width(), EAT_RIGHT + 8);
    }

    private void heading(Anchor anchor, double x, String words) {
        heading(anchor, x, PictureText.of(words));
    }

    private void heading(Anchor anchor, double x, PictureText words) {
        canvas.text(TextStyle.PALE, anchor, x, 13, words);
    }

    private void row(HourColumn hour, double top) {
        canvas.line("grid", 0, top, width(), top);
        double y = top + 15;
        canvas.text(TextStyle.PLAIN, Anchor.START, 0, y, MomentText.of(strip.startOfDay(), hour.fromSeconds()));
        if (hour.temperatureCelsius() != null) {
            value(TEMPERATURE_RIGHT, y, hour.temperatureCelsius(), 0, "C", 0);
        }
        if (hour.drinkLitres() != null) {
            value(DRINK_RIGHT, y, hour.drinkLitres().mid(), 2, "L", -2);
        }
        if (hour.carbohydrateGrams() != null) {
            value(EAT_RIGHT, y, hour.carbohydrateGrams().mid(), 0, "g", 0);
        }
        if (hour.weather() != null) {
            canvas.text(TextStyle.PALE, Anchor.END, EAT_RIGHT, y + SECOND, weather(hour));
            String going = hour.weather().going();
            canvas.text(TextStyle.PALE, Anchor.START, 0, y + SECOND, going.substring(going.lastIndexOf(' ') + 1));
        }
    }

    /** {@code 18 km/h SW, 1.2 mm}. */
    private static String weather(HourColumn hour) {
        StringBuilder out = new StringBuilder();
        if (hour.windKilometresPerHour() != null) {
            out.append(NumberText.fixed(hour.windKilometresPerHour(), 0)).append(" km/h").append(hour.weather().windFrom().isEmpty() ? "" : " ")
                    .append(hour.weather().windFrom());
        }
        if (hour.rainMillimetres() != null) {
            out.append(out.length() == 0 ? "" : ", ").append(NumberText.fixed(hour.rainMillimetres().mid(), 1)).append(" mm");
        }
        return out.toString();
    }

    private void value(double right, double y, double value, int decimals, String unit, int finer) {
        canvas.text(TextStyle.VALUE, Anchor.END, right, y, PictureText.number(value, decimals, unit, finer));
    }

    /** One column of all rows: the light of each moment at its place in its hour. */
    private void light() {
        Scale down = Scale.linear(0, strip.hours().size(), TOP, TOP + strip.hours().size() * row);
        for (LightSection each : strip.light()) {
            double top = down.at(rows(each.fromSeconds()));
            double bottom = down.at(rows(each.toSeconds()));
            if (bottom - top > 0.5) {
                DayStripDrawing.band(canvas, each.light(), LIGHT_LEFT, top, LIGHT_WIDTH, bottom - top);
                if (bottom - top >= ROW - 4) {
                    canvas.plate(TextStyle.PLAIN, LIGHT_LEFT, LIGHT_LEFT + LIGHT_WIDTH, (top + bottom) / 2 + 4, DayStripDrawing.words(each.light()));
                }
            }
        }
    }

    /** How many rows lie before a moment, with a part of one. */
    private double rows(double seconds) {
        double rows = 0;
        for (HourColumn each : strip.hours()) {
            rows += Math.max(0, Math.min(1, (seconds - each.fromSeconds()) / (each.toSeconds() - each.fromSeconds())));
        }
        return rows;
    }
}
