package courseworthy.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import courseworthy.problem.Faults;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** What is wrong in one place of a track is mended there and nowhere else; the true heights are known, since the tracks are drawn. */
class ElevationRepairTest {

    /** How far smoothing reaches on either side of a point, m: half of 10 m and one step more, rounded up. */
    private static final double REACH = 25;

    private static TrackCleaner.CleanedTrack clean(double step, double[] elevation) {
        try {
            Path file = Files.createTempFile("drawn", ".gpx");
            try {
                Files.writeString(file, Points.north(step, elevation));
                Faults faults = new Faults();
                TrackCleaner.CleanedTrack cleaned = TrackCleaner.of(GpxReader.read(file, "t.gpx", faults), "t.gpx", faults);
                assertThat(faults.faults()).isEmpty();
                return cleaned;
            } finally {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** 22 km with a point every 11 m, drawn: six hills, 1016 m up and 1011 m down. */
    private static double[] drawn() {
        double[] turns = {300, 440, 320, 540, 360, 545, 335, 470, 350, 555, 420, 551, 305};
        double[] e = new double[2001];
        for (int i = 0; i < e.length; i++) {
            double at = i * (turns.length - 1) / (double) (e.length - 1);
            int leg = (int) Math.min(turns.length - 2, Math.floor(at));
            e[i] = turns[leg] + (turns[leg + 1] - turns[leg]) * 0.5 * (1 - Math.cos(Math.PI * (at - leg)));
        }
        return e;
    }

    private static double[] climbed(double[] e) {
        double up = 0;
        double down = 0;
        for (int i = 1; i < e.length; i++) {
            up += Math.max(0, e[i] - e[i - 1]);
            down += Math.max(0, e[i - 1] - e[i]);
        }
        return new double[] {up, down};
    }

    private static double net(TrackCleaner.CleanedTrack cleaned) {
        double[] e = cleaned.line().elevation();
        return e[e.length - 1] - e[0];
    }

    private static double across(TrackCleaner.CleanedTrack cleaned) {
        return cleaned.climbing().ascent() - cleaned.climbing().descent();
    }

    /** A point that is wrong by 450 m beside a step that an elevation model makes: what is true after it stays where it is. */
    @Test
    void oneWrongPointShiftsNothingElse() {
        double[] e = drawn();
        double[] truth = climbed(e);
        assertThat(truth[0]).isCloseTo(1016, within(1.0));
        assertThat(truth[1]).isCloseTo(1011, within(1.0));
        for (int i = 1100; i < 1104; i++) {
            e[i] += 13;
        }
        TrackCleaner.CleanedTrack right = clean(11, e);
        e[1101] = e[1100] - 450;
        TrackCleaner.CleanedTrack mended = clean(11, e);
        assertThat(mended.climbing().ascent()).isCloseTo(truth[0], within(15.0));
        assertThat(mended.climbing().descent()).isCloseTo(truth[1], within(15.0));
        assertThat(across(mended)).isCloseTo(305 - 300, within(1.0));
        assertSameOutside(right, mended, 1095 * 11, 1107 * 11);
    }

    @Test
    void aWrongPointWithFarStepsAfterItShiftsNothing() {
        double[] e = drawn();
        double[] wide = new double[40];
        for (int i = 0; i < wide.length; i++) {
            wide[i] = e[i * 50];
        }
        TrackCleaner.CleanedTrack right = clean(550, wide);
        wide[20] += 700;
        TrackCleaner.CleanedTrack mended = clean(550, wide);
        assertThat(mended.climbing().ascent()).isCloseTo(right.climbing().ascent(), within(60.0));
        assertThat(across(mended)).isCloseTo(across(right), within(0.01));
    }

    @Test
    void aWrongFirstOrLastPointIsNotTakenForTheGround() {
        for (int wrong : new int[] {0, 1, 1999, 2000}) {
            double[] e = drawn();
            TrackCleaner.CleanedTrack right = clean(11, e);
            e[wrong] += 300;
            TrackCleaner.CleanedTrack mended = clean(11, e);
            assertThat(mended.repairs()).as("%d", wrong).containsExactly(new TrackRepair("elevation spikes removed", 1));
            assertThat(mended.climbing().ascent()).as("%d", wrong).isCloseTo(right.climbing().ascent(), within(1.0));
        }
    }

    /** A kilometre 200 m too high, between two jumps: that is put back, the rest stays. */
    @Test
    void aStretchBetweenTwoJumpsIsPutBackAndNothingElse() {
        double[] e = drawn();
        TrackCleaner.CleanedTrack right = clean(11, e);
        for (int i = 950; i < 1050; i++) {
            e[i] += 200;
        }
        TrackCleaner.CleanedTrack mended = clean(11, e);
        assertThat(mended.repairs()).containsExactly(new TrackRepair("elevation jumps levelled", 2));
        assertSameOutside(right, mended, 949 * 11, 1050 * 11);
        assertThat(mended.climbing().ascent()).isCloseTo(right.climbing().ascent(), within(10.0));
    }

    /** Zeros beside the sea are ground whatever a point before them says. */
    @Test
    void aWrongPointBeforeTheSeasideLeavesTheSeasideAtZero() {
        double[] e = drawn();
        for (int i = 0; i < e.length; i++) {
            e[i] = i < 1200 ? Math.max(0, (1195 - i) / 6.0) : 0;
        }
        e[1199] = 120;
        TrackCleaner.CleanedTrack mended = clean(11, e);
        assertThat(mended.line().elevation()[mended.line().size() - 1]).isZero();
        assertThat(mended.repairs()).containsExactly(new TrackRepair("elevation spikes removed", 1));
    }

    private static void assertSameOutside(TrackCleaner.CleanedTrack right, TrackCleaner.CleanedTrack mended, double from, double to) {
        double[] distance = right.line().distance();
        for (int i = 0; i < distance.length; i++) {
            if (distance[i] < from - REACH || distance[i] > to + REACH) {
                assertThat(mended.line().elevation()[i]).as("at %.0f m", distance[i]).isEqualTo(right.line().elevation()[i]);
            }
        }
    }

    /**
     * On any drawn track, noisy or not, with wrong points, missing ones, drop-outs and jumps: metres up less metres down are the height of
     * its end over its start.
     */
    @Property(tries = 1000, seed = "20261129")
    void upLessDownIsTheNetRise(@ForAll @IntRange(max = 1_000_000) int seed) {
        Random random = new Random(seed);
        double step = 3 + 40 * random.nextDouble() * random.nextDouble();
        double[] e = terrain(random, 60 + random.nextInt(500), step, random.nextInt(3) * random.nextDouble());
        for (int wrong = random.nextInt(4); wrong > 0; wrong--) {
            spoil(e, random);
        }
        TrackCleaner.CleanedTrack cleaned = clean(step, e);
        if (cleaned.line() != null) {
            assertThat(across(cleaned)).isCloseTo(net(cleaned), within(1.0));
            assertThat(cleaned.climbing().ascentRange().low()).isLessThanOrEqualTo(cleaned.climbing().ascent());
            assertThat(cleaned.climbing().ascentRange().high()).isGreaterThanOrEqualTo(cleaned.climbing().ascent());
            assertThat(cleaned.climbing().descentRange().low()).isLessThanOrEqualTo(cleaned.climbing().descent());
            assertThat(cleaned.climbing().descentRange().high()).isGreaterThanOrEqualTo(cleaned.climbing().descent());
        }
    }

    /** One point that is far off, anywhere on ground that can be ridden: beyond the reach of the smoothing nothing is other than without it. */
    @Property(tries = 300, seed = "20261129")
    void oneWrongPointIsMendedWhereItIs(@ForAll @IntRange(max = 1_000_000) int seed) {
        Random random = new Random(seed);
        double step = 3 + 30 * random.nextDouble();
        double[] e = terrain(random, 100 + random.nextInt(300), step, 0.5 * random.nextDouble());
        TrackCleaner.CleanedTrack right = clean(step, e);
        int wrong = random.nextInt(e.length);
        e[wrong] += (random.nextBoolean() ? 1 : -1) * (40 + step + 1000 * random.nextDouble());
        TrackCleaner.CleanedTrack mended = clean(step, e);
        double at = right.track().pieces().get(0).distance()[wrong];
        assertSameOutside(right, mended, at - 2 * step, at + 2 * step);
        assertThat(mended.climbing().ascent()).isCloseTo(right.climbing().ascent(), within(10 + step));
    }

    /** Hills with slopes up to about 20 %. */
    private static double[] terrain(Random random, int n, double step, double noise) {
        double[] e = new double[n];
        double[] size = new double[4];
        double[] phase = new double[4];
        double[] length = new double[4];
        for (int k = 0; k < size.length; k++) {
            length[k] = 60 * Math.pow(3, k);
            size[k] = 0.05 * random.nextDouble() * length[k];
            phase[k] = 7 * random.nextDouble();
        }
        for (int i = 0; i < n; i++) {
            e[i] = 1200 + noise * random.nextGaussian();
            for (int k = 0; k < size.length; k++) {
                e[i] += size[k] * Math.sin(i * step / length[k] + phase[k]);
            }
        }
        return e;
    }

    private static void spoil(double[] e, Random random) {
        int at = random.nextInt(e.length);
        int length = 1 + random.nextInt(random.nextBoolean() ? 2 : 60);
        int how = random.nextInt(4);
        double by = 2000 * (random.nextDouble() - 0.5);
        for (int i = at; i < Math.min(e.length, at + length); i++) {
            e[i] = how == 0 ? Double.NaN : how == 1 ? 0 : e[i] + by;
        }
        for (int i = at; how == 3 && i < e.length; i++) {
            e[i] += by / 5;
        }
    }
}
