package courseworthy.render.svg;

import courseworthy.report.picture.LongSection.ClimbBand;
import java.util.Comparator;
import java.util.List;

/** Brackets over the climbs of a section, numbered; where there is room their length and gradient are written on them. */
final class ClimbLabels {

    /** What the brackets and two rows of labels take. */
    static final double HEIGHT = 42;
    private static final double[] ROWS = {28, 13};
    private static final double BRACKET = 34;
    private static final double HOOK = 5;
    /** How far a number may stand aside of its climb, pixels: beyond that it would be read as another's. */
    private static final double[] ASIDE = {0, -5, 5, -9, 9};

    private ClimbLabels() {
    }

    static void draw(SectionFrame frame, List<ClimbBand> climbs, double top) {
        StringBuilder brackets = new StringBuilder();
        climbs.forEach(climb -> brackets.append(bracket(frame, climb, top + BRACKET)));
        frame.canvas().path("bracket", brackets.toString(), top + BRACKET + HOOK);
        climbs.stream().sorted(Comparator.comparingDouble(ClimbBand::riseMetres).reversed().thenComparing(ClimbBand::number))
                .forEach(climb -> label(frame, climb, climbs, top));
    }

    private static String bracket(SectionFrame frame, ClimbBand climb, double y) {
        double from = frame.at(climb.footMetres()) + 0.5;
        double to = Math.max(from + 1, frame.at(climb.topMetres()) - 0.5);
        return "M" + SvgWriter.number(from) + " " + SvgWriter.number(y + HOOK) + "V" + SvgWriter.number(y) + "H" + SvgWriter.number(to)
                + "v" + SvgWriter.number(HOOK);
    }

    private static double middle(SectionFrame frame, ClimbBand climb) {
        return (frame.at(climb.footMetres()) + frame.at(climb.topMetres())) / 2;
    }

    /** Whether words over a climb leave the middle of each other climb free for its number. */
    private static boolean leavesRoom(SectionFrame frame, ClimbBand climb, List<ClimbBand> climbs, String words) {
        double taken = (PictureText.of(words).width(true) + PictureText.of("00").width(true)) / 2 + 2;
        double at = middle(frame, climb);
        return climbs.stream().allMatch(each -> each.number() == climb.number() || Math.abs(middle(frame, each) - at) > taken);
    }

    /** The longest words that find room and leave some: number, length and gradient; number and gradient; the number. */
    private static void label(SectionFrame frame, ClimbBand climb, List<ClimbBand> climbs, double top) {
        double middle = middle(frame, climb);
        String number = Integer.toString(climb.number());
        String gradient = NumberText.withUnit(NumberText.fixed(climb.gradient() * 100, 1), "%");
        String length = NumberText.withUnit(NumberText.shortest((climb.topMetres() - climb.footMetres()) / 1000, 1), "km");
        List<String> choices = frame.canvas().narrow() ? List.of(number + " \u00b7 " + gradient, number)
                : List.of(number + " \u00b7 " + length + " \u00b7 " + gradient, number + " \u00b7 " + gradient, number);
        for (String words : choices) {
            if (!words.equals(number) && !leavesRoom(frame, climb, climbs, words)) {
                continue;
            }
            for (double row : ROWS) {
                if (place(frame, words, middle, top + row, words.equals(number))) {
                    return;
                }
            }
        }
    }

    private static boolean place(SectionFrame frame, String words, double middle, double y, boolean aside) {
        for (double each : aside ? ASIDE : new double[] {0}) {
            double at = middle + each;
            if (frame.canvas().labelInside(TextStyle.VALUE, at, y, words)) {
                return true;
            }
        }
        return false;
    }
}
