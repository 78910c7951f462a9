package courseworthy.render.svg;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.report.picture.GroundMaterial;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Hatches are told apart by form: each is drawn as a picture of black and white and compared with all others. */
class HatchPatternTest {

    private static final int WIDTH = 60;
    private static final int HEIGHT = 20;
    private static final int FARTHEST_SHIFT = 10;

    @Test
    void everyGroundHasAHatchAndWordsOfItsOwn() {
        Set<HatchPattern> hatches = new HashSet<>();
        Set<String> words = new HashSet<>();
        Set<String> ids = new HashSet<>();
        for (GroundMaterial each : GroundMaterial.values()) {
            assertThat(hatches.add(HatchPattern.of(each))).isTrue();
            assertThat(words.add(GroundWords.of(each))).isTrue();
            assertThat(ids.add(HatchPattern.of(each).tile().id())).isTrue();
        }
    }

    /** However one is moved against the other, less than half of what is black falls together. */
    @Test
    void noHatchLooksLikeAnother() {
        List<boolean[][]> drawn = new ArrayList<>();
        for (HatchPattern each : HatchPattern.values()) {
            drawn.add(each == HatchPattern.UNKNOWN ? new boolean[HEIGHT][WIDTH] : draw(each));
        }
        for (int i = 0; i < drawn.size(); i++) {
            for (int j = 0; j < i; j++) {
                assertThat(likeness(drawn.get(i), drawn.get(j))).as(HatchPattern.values()[i] + " and " + HatchPattern.values()[j]).isLessThan(0.5);
            }
        }
        assertThat(likeness(drawn.get(1), drawn.get(1))).isEqualTo(1);
    }

    /** A hatch is neither so light that it is taken for blank nor so dark that words on it stand out as holes. */
    @Test
    void hatchesAreNeitherTooLightNorTooDark() {
        for (HatchPattern each : HatchPattern.values()) {
            if (each != HatchPattern.UNKNOWN) {
                long black = black(draw(each));
                assertThat((double) black / (WIDTH * HEIGHT)).as(each.name()).isBetween(0.04, 0.4);
            }
        }
    }

    private static boolean[][] draw(HatchPattern hatch) {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, WIDTH, HEIGHT);
        graphics.setColor(Color.BLACK);
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.setStroke(new BasicStroke((float) hatch.tile().stroke(), BasicStroke.CAP_ROUND, BasicStroke.JOIN_MITER));
        Path2D path = path(hatch.tile().path());
        for (int x = 0; x < WIDTH; x += hatch.tile().width()) {
            for (int y = 0; y < HEIGHT; y += hatch.tile().height()) {
                graphics.translate(x, y);
                graphics.draw(path);
                graphics.translate(-x, -y);
            }
        }
        boolean[][] out = new boolean[HEIGHT][WIDTH];
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                out[y][x] = (image.getRGB(x, y) & 0xff) < 160;
            }
        }
        return out;
    }

    /** The commands that tiles are written with: M, h, v, l, q, t and z. */
    private static Path2D path(String commands) {
        Path2D out = new Path2D.Double();
        double[] control = new double[2];
        Matcher matcher = Pattern.compile("([Mhvlqtz])([^Mhvlqtz]*)").matcher(commands);
        while (matcher.find()) {
            double[] a = Pattern.compile("-?\\d*\\.?\\d+").matcher(matcher.group(2)).results().mapToDouble(each -> Double.parseDouble(each.group())).toArray();
            double x = out.getCurrentPoint() == null ? 0 : out.getCurrentPoint().getX();
            double y = out.getCurrentPoint() == null ? 0 : out.getCurrentPoint().getY();
            switch (matcher.group(1)) {
                case "M" -> out.moveTo(a[0], a[1]);
                case "h" -> out.lineTo(x + a[0] + (a[0] == 0 ? 0.01 : 0), y);
                case "v" -> out.lineTo(x, y + a[0]);
                case "l" -> lines(out, a);
                case "q" -> {
                    out.quadTo(x + a[0], y + a[1], x + a[2], y + a[3]);
                    control = new double[] {a[2] - a[0], a[3] - a[1]};
                }
                case "t" -> out.quadTo(x + control[0], y + control[1], x + a[0], y + a[1]);
                default -> out.closePath();
            }
        }
        return out;
    }

    private static void lines(Path2D path, double[] steps) {
        for (int i = 0; i < steps.length; i += 2) {
            path.lineTo(path.getCurrentPoint().getX() + steps[i], path.getCurrentPoint().getY() + steps[i + 1]);
        }
    }

    private static long black(boolean[][] image) {
        long out = 0;
        for (boolean[] row : image) {
            for (boolean each : row) {
                out += each ? 1 : 0;
            }
        }
        return out;
    }

    /** The greatest share of black in common over all shifts: twice what is black in both, by what is black in either. */
    private static double likeness(boolean[][] a, boolean[][] b) {
        double most = 0;
        for (int dx = -FARTHEST_SHIFT; dx <= FARTHEST_SHIFT; dx++) {
            for (int dy = -FARTHEST_SHIFT; dy <= FARTHEST_SHIFT; dy++) {
                most = Math.max(most, likeness(a, b, dx, dy));
            }
        }
        return most;
    }

    private static double likeness(boolean[][] a, boolean[][] b, int dx, int dy) {
        double both = 0;
        double all = 0;
        for (int y = Math.max(0, dy); y < HEIGHT + Math.min(0, dy); y++) {
            for (int x = Math.max(0, dx); x < WIDTH + Math.min(0, dx); x++) {
                both += a[y][x] && b[y - dy][x - dx] ? 2 : 0;
                all += (a[y][x] ? 1 : 0) + (b[y - dy][x - dx] ? 1 : 0);
            }
        }
        return all == 0 ? 0 : both / all;
    }
}
