package courseworthy.render.svg;

import courseworthy.render.svg.TextBox.Anchor;
import courseworthy.report.picture.LongSection;
import courseworthy.report.picture.LongSection.TimeMark;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** When the rider is where, below the other bands: times with their ranges under them, those that matter most first and as many as find room. */
final class ClockBand {

    private static final double HEIGHT = 40;

    private final SectionFrame frame;
    private final LongSection section;
    private final double top;
    private final StringBuilder ticks = new StringBuilder();

    private ClockBand(SectionFrame frame, LongSection section, double top) {
        this.frame = frame;
        this.section = section;
        this.top = top;
    }

    /** Draws it. @return where it ends */
    static double draw(SectionFrame frame, LongSection section, double top) {
        if (section.passages().isEmpty()) {
            return top;
        }
        ClockBand band = new ClockBand(frame, section, top);
        frame.canvas().text(TextStyle.PALE, Anchor.END, frame.left() - 6, top + 18, section.startOfDay() == null ? "Time" : "Clock");
        List<TimeMark> shown = band.byImportance().stream().filter(band::time).toList();
        shown.forEach(band::range);
        frame.canvas().path("divide", band.ticks.toString(), top + 6);
        return top + HEIGHT;
    }

    /** Start and end of the lap, marks, tops and feet of climbs, then the others. */
    private Set<TimeMark> byImportance() {
        List<TimeMark> all = section.passages();
        Set<TimeMark> out = new LinkedHashSet<>();
        out.add(all.get(0));
        out.add(all.get(all.size() - 1));
        section.marks().forEach(each -> out.add(nearest(each.atMetres())));
        section.climbs().forEach(each -> out.add(nearest(each.topMetres())));
        section.climbs().forEach(each -> out.add(nearest(each.footMetres())));
        for (int parts = 2; parts <= all.size(); parts *= 2) {
            for (int i = 1; i < parts; i++) {
                out.add(all.get((all.size() - 1) * i / parts));
            }
        }
        return out;
    }

    private TimeMark nearest(double metres) {
        TimeMark nearest = section.passages().get(0);
        for (TimeMark each : section.passages()) {
            if (Math.abs(each.atMetres() - metres) < Math.abs(nearest.atMetres() - metres)) {
                nearest = each;
            }
        }
        return nearest;
    }

    private boolean time(TimeMark passage) {
        double x = frame.at(passage.atMetres());
        String words = text(passage.afterSeconds().mid());
        boolean written = frame.canvas().labelInside(TextStyle.VALUE, Math.max(x, frame.left() + PictureText.of(words).width(true) / 2), top + 18, words);
        if (written) {
            ticks.append(LinePath.down(x, top, top + 6));
        }
        return written;
    }

    private void range(TimeMark passage) {
        String from = text(passage.afterSeconds().low());
        String to = text(passage.afterSeconds().high());
        if (!from.equals(to)) {
            frame.canvas().labelInside(TextStyle.PALE, frame.at(passage.atMetres()), top + 32, from + "\u2013" + to);
        }
    }

    private String text(double seconds) {
        return MomentText.of(section.startOfDay(), seconds);
    }
}
