package courseworthy.render.svg;

import courseworthy.render.svg.TextBox.Anchor;
import courseworthy.report.picture.DayStrip;
import courseworthy.report.picture.DayStrip.HourColumn;
import courseworthy.report.picture.DayStrip.LightBand;
import courseworthy.report.picture.DayStrip.LightSection;
import courseworthy.report.picture.ValueRange;
import java.util.List;

/** The day hour by hour: columns from left to right where there is room for them, else rows downward. */
final class DayStripDrawing {

    private static final double LEFT = 110;
    private static final double LEAST_COLUMN = 40;
    private static final double TEMPERATURES = 50;
    private static final double BAND = 20;
    private static final double WINDS = 28;
    private static final double GOINGS = 14;
    private static final double BARS = 34;
    private static final double BETWEEN = 10;

    private final SvgCanvas canvas;
    private final DayStrip strip;
    private final Scale across;

    private DayStripDrawing(SvgCanvas canvas, DayStrip strip) {
        this.canvas = canvas;
        this.strip = strip;
        List<HourColumn> hours = strip.hours();
        across = Scale.linear(hours.get(0).fromSeconds(), hours.get(hours.size() - 1).toSeconds(), LEFT, canvas.width() - 22);
    }

    static void draw(SvgCanvas canvas, DayStrip strip) {
        if (strip.hours().isEmpty()) {
            canvas.text(TextStyle.PALE, Anchor.START, 0, 14, "The hours of the ride are not known.");
        } else if (canvas.narrow() || strip.hours().size() * LEAST_COLUMN > canvas.width() - LEFT - 22) {
            DayRowsDrawing.draw(canvas, strip);
        } else {
            new DayStripDrawing(canvas, strip).draw();
        }
    }

    /** True where something is known of an hour at all. */
    static boolean has(DayStrip strip, java.util.function.Function<HourColumn, ?> figure) {
        return strip.hours().stream().anyMatch(each -> figure.apply(each) != null);
    }

    private void draw() {
        double y = clock();
        if (has(strip, HourColumn::temperatureCelsius)) {
            y = temperatures(y);
        }
        if (has(strip, HourColumn::windKilometresPerHour)) {
            y = winds(y);
        }
        if (has(strip, HourColumn::rainMillimetres)) {
            y = bars(y, PictureText.of("Rain, mm"), HourColumn::rainMillimetres, 1, "mm");
        }
        if (strip.hours().stream().anyMatch(each -> each.weather() != null && !each.weather().going().isEmpty())) {
            y = goings(y);
        }
        y = light(y);
        if (has(strip, HourColumn::drinkLitres)) {
            y = bars(y, PictureText.heading("Drink, ", "L"), HourColumn::drinkLitres, 2, "L");
        }
        if (has(strip, HourColumn::carbohydrateGrams)) {
            y = bars(y, PictureText.of("Eat, g"), HourColumn::carbohydrateGrams, 0, "g");
        }
        for (HourColumn each : strip.hours()) {
            canvas.line("grid", across.at(each.fromSeconds()), 20, across.at(each.fromSeconds()), y - BETWEEN);
        }
        double end = across.at(strip.hours().get(strip.hours().size() - 1).toSeconds());
        canvas.line("grid", end, 20, end, y - BETWEEN);
    }

    private void name(String words, double y) {
        name(PictureText.of(words), y);
    }

    private void name(PictureText words, double y) {
        canvas.text(TextStyle.PALE, Anchor.END, LEFT - 24, y, words);
    }

    private double clock() {
        name(strip.startOfDay() == null ? "Time" : "Clock", 12);
        double end = strip.hours().get(strip.hours().size() - 1).toSeconds();
        canvas.label(TextStyle.PALE, Anchor.MIDDLE, across.at(strip.hours().get(0).fromSeconds()), 12, moment(strip.hours().get(0).fromSeconds()));
        canvas.label(TextStyle.PALE, Anchor.MIDDLE, across.at(end), 12, moment(end));
        for (HourColumn each : strip.hours()) {
            canvas.label(TextStyle.PALE, Anchor.MIDDLE, across.at(each.fromSeconds()), 12, moment(each.fromSeconds()));
        }
        return 28;
    }

    private String moment(double seconds) {
        return MomentText.of(strip.startOfDay(), seconds);
    }

    private double middle(HourColumn hour) {
        return across.at((hour.fromSeconds() + hour.toSeconds()) / 2);
    }

    private double temperatures(double top) {
        name(new PictureText("Air, \u00b0C", "Air, \u00b0F"), top + TEMPERATURES / 2 + 4);
        List<HourColumn> known = strip.hours().stream().filter(each -> each.temperatureCelsius() != null).toList();
        double low = known.stream().mapToDouble(HourColumn::temperatureCelsius).min().orElse(0);
        double high = known.stream().mapToDouble(HourColumn::temperatureCelsius).max().orElse(0);
        double missing = Math.max(0, 5 - (high - low)) / 2;
        Scale up = Scale.linear(low - missing, high + missing, top + TEMPERATURES - 6, top + 20);
        double[] x = known.stream().mapToDouble(this::middle).toArray();
        double[] y = known.stream().mapToDouble(each -> up.at(each.temperatureCelsius())).toArray();
        canvas.path("line", LinePath.of(x, y), top + TEMPERATURES);
        for (int i = 0; i < x.length; i++) {
            canvas.circle("dot", x[i], y[i], 2.5);
            canvas.label(TextStyle.VALUE, Anchor.MIDDLE, x[i], y[i] - 6, PictureText.number(known.get(i).temperatureCelsius(), 0, "C", 0));
        }
        return top + TEMPERATURES + BETWEEN;
    }

    private double winds(double top) {
        name(PictureText.heading("Wind, ", "km/h"), top + 12);
        for (HourColumn each : strip.hours()) {
            if (each.windKilometresPerHour() != null) {
                canvas.label(TextStyle.VALUE, Anchor.MIDDLE, middle(each), top + 12, PictureText.number(each.windKilometresPerHour(), 0, "km/h", 0));
                canvas.label(TextStyle.PALE, Anchor.MIDDLE, middle(each), top + 26, each.weather().windFrom());
            }
        }
        return top + WINDS + BETWEEN;
    }

    /** A word where the going becomes another; it stands until the next. */
    private double goings(double top) {
        name("Going", top + 12);
        String before = "";
        for (HourColumn each : strip.hours()) {
            String now = each.weather() == null ? "" : each.weather().going();
            if (!now.isEmpty() && !now.equals(before)) {
                canvas.label(TextStyle.PLAIN, Anchor.START, across.at(each.fromSeconds()) + 4, top + 12, now);
            }
            before = now;
        }
        return top + GOINGS + BETWEEN;
    }

    private double light(double top) {
        name("Light", top + 14);
        if (strip.light().isEmpty()) {
            canvas.text(TextStyle.PALE, Anchor.START, LEFT + 4, top + 14, "not known");
        }
        for (LightSection each : strip.light()) {
            double left = across.at(each.fromSeconds());
            double right = across.at(each.toSeconds());
            if (right - left > 0.5) {
                band(canvas, each.light(), left, top, right - left, BAND);
                if (right - left > PictureText.of(words(each.light())).width(false) + 8) {
                    canvas.labelOver(TextStyle.PLAIN, (left + right) / 2, top + 14, words(each.light()));
                }
            }
        }
        return top + BAND + BETWEEN;
    }

    static void band(SvgCanvas canvas, LightBand light, double x, double y, double wide, double high) {
        switch (light) {
            case DAY -> canvas.rectangle("edge", x, y, wide, high);
            case TWILIGHT -> canvas.twilight(x, y, wide, high);
            case NIGHT -> canvas.shade(x, y, wide, high);
        }
    }

    static String words(LightBand light) {
        return switch (light) {
            case DAY -> "daylight";
            case TWILIGHT -> "twilight";
            case NIGHT -> "dark";
        };
    }

    private double bars(double top, PictureText name, java.util.function.Function<HourColumn, ValueRange> amount, int decimals, String unit) {
        name(name, top + BARS - 2);
        double most = strip.hours().stream().map(amount).filter(java.util.Objects::nonNull).mapToDouble(ValueRange::mid).max().orElse(0);
        double base = top + BARS;
        Scale high = Scale.linear(0, Math.max(most, 1e-9), 0, BARS - 16);
        for (HourColumn each : strip.hours()) {
            ValueRange value = amount.apply(each);
            if (value != null) {
                double tall = high.at(value.mid());
                double half = Math.min(9, (across.at(each.toSeconds()) - across.at(each.fromSeconds())) / 2 - 1);
                if (half > 0) {
                    canvas.rectangle("solid", middle(each) - half, base - tall, half * 2, tall);
                }
                canvas.label(TextStyle.VALUE, Anchor.MIDDLE, middle(each), base - tall - 4, PictureText.number(value.mid(), decimals, unit, -decimals));
            }
        }
        canvas.line("axis", across.at(strip.hours().get(0).fromSeconds()), base, canvas.width() - 22, base);
        return base + BETWEEN;
    }
}
