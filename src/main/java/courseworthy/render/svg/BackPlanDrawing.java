package courseworthy.render.svg;

import courseworthy.render.svg.TextBox.Anchor;
import courseworthy.report.picture.BackPlan;
import courseworthy.report.picture.BackPlan.DeadlineMark;
import courseworthy.report.picture.BackPlan.SessionBar;
import courseworthy.report.picture.BackPlan.WaitBar;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.function.ObjDoubleConsumer;
import java.util.stream.DoubleStream;

/** The days before the start on a line of time that ends with it: work, what has to wait, and when work for other weather has to begin at the latest. */
final class BackPlanDrawing {

    private static final double DAY = 86400;
    private static final double HOUR = 3600;
    private static final double LABELS = 330;
    private static final double MARGIN = 14;
    private static final double ROW = 20;
    private static final List<String> DAYS = List.of("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun");

    private final SvgCanvas canvas;
    private final BackPlan plan;
    private final Scale across;
    private final double from;
    private final double left;
    private final double right;
    private double y = 26;

    private BackPlanDrawing(SvgCanvas canvas, BackPlan plan) {
        this.canvas = canvas;
        this.plan = plan;
        left = canvas.narrow() ? MARGIN : LABELS + MARGIN;
        right = canvas.width() - MARGIN;
        double earliest = DoubleStream.concat(plan.sittings().stream().mapToDouble(BackPlanDrawing::begin),
                DoubleStream.concat(plan.waits().stream().mapToDouble(WaitBar::fromSeconds), plan.lastMoments().stream().mapToDouble(DeadlineMark::atSeconds)))
                .min().orElse(-DAY);
        from = Math.min(earliest, -HOUR) * 1.03;
        across = Scale.linear(from, 0, left, right);
    }

    static void draw(SvgCanvas canvas, BackPlan plan) {
        new BackPlanDrawing(canvas, plan).draw();
    }

    private static double begin(SessionBar sitting) {
        return sitting.endSeconds() - (sitting.workSeconds() == null ? 0 : sitting.workSeconds());
    }

    private void draw() {
        double top = y;
        plan.sittings().forEach(each -> row(words(each), TextStyle.VALUE, each, this::work));
        plan.waits().forEach(each -> row(each.label() + ", " + DurationText.of(each.toSeconds() - each.fromSeconds()), TextStyle.PLAIN, each, this::waiting));
        plan.lastMoments().forEach(each -> row(each.label() + ", start work by " + moment(each.atSeconds()), TextStyle.PLAIN, each, this::lastMoment));
        canvas.line("axis", left, y, right, y);
        days(top);
        canvas.line("start", right, top - 8, right, y + 4);
        canvas.label(TextStyle.VALUE, Anchor.END, canvas.width(), 12, plan.startOfDay() == null ? "start" : "start " + MomentText.of(plan.startOfDay(), 0));
        PictureKey key = new PictureKey(canvas, 0, y + 26).work("work");
        if (!plan.waits().isEmpty()) {
            key.shade("waiting");
        }
        if (!plan.lastMoments().isEmpty()) {
            key.lastMoment("last moment to begin");
        }
    }

    private <T> void row(String words, TextStyle style, T what, ObjDoubleConsumer<T> mark) {
        double labelWidth = canvas.narrow() ? canvas.width() : LABELS;
        List<PictureText> lines = LabelLines.of(words, labelWidth, style.bold(), 3);
        double middle = y + ROW / 2;
        for (PictureText each : lines) {
            canvas.textOver(style, 0, y + 14, each);
            y += LabelLines.PITCH;
        }
        y += ROW - LabelLines.PITCH;
        if (canvas.narrow()) {
            middle = y + 6;
            y += ROW - 2;
        }
        canvas.line("grid", left, y, right, y);
        mark.accept(what, middle);
        y += 4;
    }

    private static String words(SessionBar sitting) {
        String work = sitting.workSeconds() == null ? "" : ", " + DurationText.of(sitting.workSeconds());
        String safety = sitting.critical() == 0 ? "" : ", " + sitting.critical() + " for safety";
        return sitting.label() + ": " + sitting.items() + (sitting.items() == 1 ? " job" : " jobs") + safety + work;
    }

    /** A bar as long as the work; where that is not known, one from its end that is open to the left. */
    private void work(SessionBar sitting, double middle) {
        double end = across.at(sitting.endSeconds());
        double begin = Math.min(across.at(begin(sitting)), end - 4);
        canvas.rectangle("solid", begin, middle - 6, end - begin, 12);
    }

    private void waiting(WaitBar wait, double middle) {
        double begin = across.at(wait.fromSeconds());
        canvas.shade(begin, middle - 6, Math.max(2, across.at(wait.toSeconds()) - begin), 12);
    }

    private void lastMoment(DeadlineMark moment, double middle) {
        double x = across.at(moment.atSeconds());
        canvas.path("mark limit-mark", "M" + SvgWriter.number(x) + " " + SvgWriter.number(middle - 7) + "v14l-9-7z", middle + 7);
        canvas.line("limit", x, middle - 9, x, middle + 9);
    }

    /** {@code Fri 18:00}; with the hours before the start where its date or time is not known. */
    private String moment(double seconds) {
        if (plan.startOfDay() == null || plan.startDate().isEmpty()) {
            return DurationText.of(-seconds) + " before the start";
        }
        return day(Math.floor((plan.startOfDay() + seconds) / DAY)) + " " + MomentText.of(plan.startOfDay(), seconds);
    }

    private String day(double daysFromStart) {
        LocalDate date = LocalDate.parse(plan.startDate()).plusDays((long) daysFromStart);
        DayOfWeek day = date.getDayOfWeek();
        return DAYS.get(day.getValue() - 1) + " " + date.getDayOfMonth();
    }

    /** Midnights, and the name of each day in its middle; hours before the start where that has no date. */
    private void days(double top) {
        if (plan.startOfDay() == null || plan.startDate().isEmpty()) {
            AxisTicks ticks = AxisTicks.within(from / HOUR, 0, 6);
            for (double each : ticks.values()) {
                canvas.line("axis", across.at(each * HOUR), y, across.at(each * HOUR), y + 4);
                canvas.label(TextStyle.PALE, Anchor.MIDDLE, across.at(each * HOUR), y + 16, NumberText.withUnit(NumberText.fixed(each, ticks.decimals()), "h"));
            }
            return;
        }
        for (int day = (int) Math.floor((plan.startOfDay() + from) / DAY); day <= 0; day++) {
            double midnight = day * DAY - plan.startOfDay();
            if (midnight > from) {
                canvas.line("midnight", across.at(midnight), top - 4, across.at(midnight), y + 4);
            }
            double middle = (across.at(midnight) + across.at(Math.min(0, midnight + DAY))) / 2;
            canvas.labelInside(TextStyle.PALE, middle, y + 16, day(day));
        }
    }
}
