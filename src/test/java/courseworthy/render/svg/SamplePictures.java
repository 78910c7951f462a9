package courseworthy.render.svg;

import courseworthy.report.Figure;
import courseworthy.report.RichText;
import courseworthy.report.picture.BackPlan;
import courseworthy.report.picture.Bar;
import courseworthy.report.picture.BarChart;
import courseworthy.report.picture.BeforeAfter;
import courseworthy.report.picture.DayStrip;
import courseworthy.report.picture.ElevationProfile;
import courseworthy.report.picture.GearLadder;
import courseworthy.report.picture.GroundBand;
import courseworthy.report.picture.GroundBand.ClimbFigures;
import courseworthy.report.picture.GroundBand.RiddenStretch;
import courseworthy.report.picture.GroundBand.TechnicalGrade;
import courseworthy.report.picture.GroundMaterial;
import courseworthy.report.picture.LongSection;
import courseworthy.report.picture.LongSection.ClimbBand;
import courseworthy.report.picture.LongSection.CourseMark;
import courseworthy.report.picture.LongSection.EffortBand;
import courseworthy.report.picture.LongSection.GearBand;
import courseworthy.report.picture.LongSection.HeightProfile;
import courseworthy.report.picture.LongSection.HeightPoint;
import courseworthy.report.picture.LongSection.TimeMark;
import courseworthy.report.picture.Picture;
import courseworthy.report.picture.PressureLine;
import courseworthy.report.picture.TrackPlan;
import courseworthy.report.picture.ValueRange;
import courseworthy.report.picture.WorthChart;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Pictures of invented courses and riders, as full as real ones become. */
final class SamplePictures {

    private static final GroundMaterial[] MATERIALS = GroundMaterial.values();
    private static final int[] SPROCKETS = {10, 12, 14, 16, 18, 21, 24, 28, 33, 38, 44, 50};
    private static final String[] GRADES = {"0+", "1-", "1", "1+", "2-", "2", "2+", "3-", "3"};

    private SamplePictures() {
    }

    static Figure figure(Picture picture) {
        return new Figure(RichText.of("The second climb decides the gear"), picture,
                RichText.of("The second long climb, kilometre 33 to 46, rises 730 m at 5.9 % and ends on rock."));
    }

    /** One of every kind. */
    static List<Picture> all() {
        return List.of(longSection(62, 12, 1), gearLadder(List.of(34)), pressureLine(), worthChart(), dayStrip(5, 8), dayStripByHour(5, 8), backPlan(), beforeAfter(),
                trackPlan(62, 12, 1), elevationProfile(), barChart());
    }

    /** A made-up course. The same seed gives the same course. */
    static LongSection longSection(double kilometres, int stretches, long seed) {
        Random random = new Random(seed);
        double metres = kilometres * 1000;
        double[] ends = ends(metres, stretches, random);
        List<HeightPoint> heights = heights(metres, random);
        List<GroundBand> ground = new ArrayList<>();
        for (int i = 0; i < stretches; i++) {
            ground.add(ground(ends[i], ends[i + 1], random));
        }
        List<TimeMark> passages = new ArrayList<>();
        for (double at = 0; at < metres; at += 1000) {
            passages.add(passage(at));
        }
        passages.add(passage(metres));
        List<CourseMark> marks = List.of(new CourseMark(metres * 0.29, List.of(CourseMark.Kind.WATER, CourseMark.Kind.FOOD), "feed", 0, null),
                new CourseMark(metres * 0.53, List.of(CourseMark.Kind.WATER, CourseMark.Kind.FOOD, CourseMark.Kind.BAG), "feed", 0, null),
                new CourseMark(metres * 0.81, List.of(CourseMark.Kind.CUT_OFF), "cut-off", 0, metres / 4));
        return new LongSection(metres, 1, 8 * 3600, new HeightProfile(heights, true, true), ground, gears(metres, random), passages, climbs(heights), marks);
    }

    private static double[] ends(double metres, int stretches, Random random) {
        double[] ends = new double[stretches + 1];
        for (int i = 1; i < stretches; i++) {
            ends[i] = Math.round(random.nextDouble() * metres / 10) * 10;
        }
        ends[stretches] = metres;
        java.util.Arrays.sort(ends);
        return ends;
    }

    private static List<HeightPoint> heights(double metres, Random random) {
        List<HeightPoint> out = new ArrayList<>();
        double base = random.nextInt(1500) - 20;
        double a = random.nextDouble() * 6;
        for (double at = 0; at <= metres; at += 100) {
            double share = at / metres;
            out.add(new HeightPoint(at, base + 300 * Math.sin(share * 9 + a) + 120 * Math.sin(share * 31 + 2 * a) + 15 * Math.sin(at / 700)));
        }
        return out;
    }

    private static List<ClimbBand> climbs(List<HeightPoint> heights) {
        List<ClimbBand> out = new ArrayList<>();
        int foot = 0;
        for (int i = 1; i < heights.size(); i++) {
            boolean falls = i == heights.size() - 1 || heights.get(i + 1).heightMetres() < heights.get(i).heightMetres();
            double rise = heights.get(i).heightMetres() - heights.get(foot).heightMetres();
            if (falls && rise > 30) {
                double length = heights.get(i).atMetres() - heights.get(foot).atMetres();
                out.add(new ClimbBand(out.size() + 1, heights.get(foot).atMetres(), heights.get(i).atMetres(), rise, rise / length));
            }
            foot = falls ? i : foot;
        }
        return out;
    }

    private static GroundBand ground(double from, double to, Random random) {
        GroundMaterial material = MATERIALS[random.nextInt(MATERIALS.length)];
        boolean unknown = material == GroundMaterial.UNKNOWN;
        double roughness = random.nextDouble() * 4.5;
        int grade = random.nextInt(GRADES.length + 4);
        String surface = switch (material) {
            case PAVED -> "asphalt";
            case FIRM -> "compacted";
            case EARTH -> "ground";
            case UNKNOWN -> "unknown";
            default -> GroundWords.of(material);
        };
        return new GroundBand(from, to, material, surface, List.of(), unknown ? GroundBand.Basis.UNKNOWN : grade == 3 ? GroundBand.Basis.INFERRED : GroundBand.Basis.WRITTEN,
                unknown ? null : new ValueRange(roughness, roughness + 0.2, roughness + 0.4),
                grade < GRADES.length ? new TechnicalGrade(grade / 3.0, GRADES[grade]) : null, new ClimbFigures(random.nextInt(300), random.nextInt(300)),
                new RiddenStretch("34x" + SPROCKETS[grade % 12], SPROCKETS[grade % 12], passage(from).afterSeconds()));
    }

    private static List<GearBand> gears(double metres, Random random) {
        List<GearBand> out = new ArrayList<>();
        double at = 0;
        while (at < metres) {
            double to = Math.min(metres, at + 100 + random.nextInt(2500));
            int sprocket = SPROCKETS[random.nextInt(SPROCKETS.length)];
            int effort = random.nextInt(12);
            out.add(effort == 0 ? new GearBand(at, to, EffortBand.COASTING, "", 0)
                    : effort == 1 ? new GearBand(at, to, EffortBand.ON_FOOT, "", 0) : new GearBand(at, to, EffortBand.PEDALLED, "34x" + sprocket, sprocket));
            at = to;
        }
        return out;
    }

    private static TimeMark passage(double metres) {
        double seconds = metres / 4.2;
        return new TimeMark(metres, new ValueRange(seconds * 0.93, seconds, seconds * 1.08));
    }

    static GearLadder gearLadder(List<Integer> rings) {
        List<GearLadder.Rung> rungs = new ArrayList<>();
        for (int ring : rings) {
            for (int i = SPROCKETS.length - 1; i >= 0; i--) {
                double ratio = (double) ring / SPROCKETS[i];
                rungs.add(new GearLadder.Rung(ring + "x" + SPROCKETS[i], ring, SPROCKETS[i], 0.062 / ratio - 0.02, 0.12 / ratio - 0.01, ratio * 2.1, ratio * 3.9,
                        i % 4 == 0 ? 0 : 700 * i));
            }
        }
        rungs.sort(java.util.Comparator.comparingDouble(each -> (double) each.ring() / each.sprocket()));
        return new GearLadder(rungs,
                List.of(new GearLadder.SteepMark("steepest 100 m", new ValueRange(0.21, 0.24, 0.26), 45000, false, new ValueRange(38, 42, 45)),
                        new GearLadder.SteepMark("steepest 500 m", new ValueRange(0.12, 0.129, 0.14), 44000, true, new ValueRange(48, 52, 55)),
                        new GearLadder.SteepMark("steepest 1 km", new ValueRange(0.09, 0.095, 0.1), 44000, true, new ValueRange(58, 62, 65)),
                        new GearLadder.SteepMark("last climb", new ValueRange(0.055, 0.059, 0.064), 40000, true, new ValueRange(60, 66, 70)),
                        new GearLadder.SteepMark("first climb", new ValueRange(0.044, 0.047, 0.049), 8000, true, new ValueRange(70, 75, 80))),
                List.of(new GearLadder.SpeedMark("useful at speed", new ValueRange(12.5, 13.3, 14.2)),
                        new GearLadder.SpeedMark("spun out", new ValueRange(14.0, 14.4, 15.0))));
    }

    static PressureLine pressureLine() {
        return new PressureLine(List.of(new PressureLine.Wheel("front", 95_000, 105_000, 130_000, 120_000, 130_000, 112_000.0, 250_000.0),
                new PressureLine.Wheel("rear", 108_000, 115_000, 145_000, 130_000, 140_000, 121_000.0, 250_000.0)));
    }

    static WorthChart worthChart() {
        return new WorthChart(List.of(new WorthChart.WorthBar("rear tyre casing", "reinforced", "light", new ValueRange(60, 180, 260), false,
                        "equal at one more stop of 8 min in 4.2 rides"),
                new WorthChart.WorthBar("front tyre width", "60 mm", "57 mm", new ValueRange(-25, 20, 60), true, ""),
                new WorthChart.WorthBar("wheel rim depth", "shallow", "mid", new ValueRange(-90, -45, -10), false, ""),
                new WorthChart.WorthBar("kind of bike", "cross-country full suspension", "cross-country hardtail with a suspension seatpost",
                        new ValueRange(-700, -420, -130), false, "")));
    }

    static DayStrip dayStrip(int hours, int startHour) {
        List<DayStrip.HourColumn> out = new ArrayList<>();
        for (int i = 0; i < hours; i++) {
            double to = i == hours - 1 ? i * 3600 + 1200 : (i + 1) * 3600;
            out.add(new DayStrip.HourColumn(i * 3600, to, 9.0 + 3 * Math.sin(i / 3.0) + i % 5, new ValueRange(0.4, 0.5 + 0.05 * i, 0.9 + 0.05 * i),
                    new ValueRange(60, 70, 80)));
        }
        double end = out.get(hours - 1).toSeconds();
        double sunset = Math.min(end, Math.max(0, (20.5 - startHour) * 3600));
        double dark = Math.min(end, sunset + 2200);
        return new DayStrip(startHour * 3600, out, List.of(new DayStrip.LightSection(0, sunset, DayStrip.LightBand.DAY),
                new DayStrip.LightSection(sunset, dark, DayStrip.LightBand.TWILIGHT), new DayStrip.LightSection(dark, end, DayStrip.LightBand.NIGHT)));
    }

    /** The same with the weather of each hour. */
    static DayStrip dayStripByHour(int hours, int startHour) {
        List<String> goings = List.of("dry", "dry to damp", "damp", "damp to wet", "wet");
        DayStrip plain = dayStrip(hours, startHour);
        List<DayStrip.HourColumn> out = new ArrayList<>();
        for (int i = 0; i < hours; i++) {
            DayStrip.HourColumn hour = plain.hours().get(i);
            double rain = i % 7 * 1.7;
            out.add(new DayStrip.HourColumn(hour.fromSeconds(), hour.toSeconds(), hour.temperatureCelsius(), hour.drinkLitres(), hour.carbohydrateGrams(),
                    new DayStrip.HourReading(8.0 + 5 * i % 60, List.of("SW", "WSW", "N").get(i % 3), new ValueRange(rain, rain, rain), goings.get(i % goings.size()))));
        }
        return new DayStrip(plain.startOfDay(), out, plain.light());
    }

    static BackPlan backPlan() {
        return new BackPlan(8 * 3600, "2026-06-20", List.of(new BackPlan.SessionBar("three days before", -60 * 3600, 14, 5, 9000.0),
                new BackPlan.SessionBar("night before", -11 * 3600, 22, 9, 3600.0), new BackPlan.SessionBar("on the morning", -3600, 12, 8, null)),
                List.of(new BackPlan.WaitBar("sealant", -60 * 3600, -48 * 3600), new BackPlan.WaitBar("brake pads bed in", -58 * 3600, -50 * 3600)),
                List.of(new BackPlan.DeadlineMark("wet: 3 changes", -16 * 3600), new BackPlan.DeadlineMark("cold: 1 change", -2.5 * 3600)));
    }

    static BeforeAfter beforeAfter() {
        return new BeforeAfter("trail bike", List.of(new BeforeAfter.PlaceComparison("front tyre", "all-round 57, light casing", "all-round 60, reinforced casing", true, "", ""),
                new BeforeAfter.PlaceComparison("rear tyre", "all-round 57, light casing", "fast 57", true, "winter bike", "training bike with a long name"),
                new BeforeAfter.PlaceComparison("wheels", "carbon, 29 mm inside", "carbon, 29 mm inside", false, "", ""),
                new BeforeAfter.PlaceComparison("lights", "", "bar light 900 lm", true, "", ""), new BeforeAfter.PlaceComparison("mudguards", "clip-on rear", "", true, "", "")));
    }

    static TrackPlan trackPlan(double kilometres, int stretches, long seed) {
        Random random = new Random(seed);
        double metres = kilometres * 1000;
        double[] ends = ends(metres, stretches, random);
        List<TrackPlan.TrackLeg> legs = new ArrayList<>();
        for (int i = 0; i < stretches; i++) {
            List<TrackPlan.PlanPoint> points = new ArrayList<>();
            for (double at = ends[i]; at < ends[i + 1]; at += 50) {
                points.add(place(at, metres));
            }
            points.add(place(ends[i + 1], metres));
            legs.add(new TrackPlan.TrackLeg(MATERIALS[random.nextInt(MATERIALS.length)], "any", points));
        }
        List<TrackPlan.KilometreMark> marks = new ArrayList<>();
        for (int kilometre = 1; kilometre < kilometres; kilometre++) {
            marks.add(new TrackPlan.KilometreMark(kilometre, place(kilometre * 1000, metres)));
        }
        return new TrackPlan(legs, marks, place(0, metres), place(metres, metres));
    }

    private static TrackPlan.PlanPoint place(double at, double metres) {
        double angle = at / metres * 2 * Math.PI;
        double radius = metres / 7 * (1 + 0.35 * Math.sin(3 * angle) + 0.06 * Math.sin(23 * angle));
        return new TrackPlan.PlanPoint(radius * Math.sin(angle) * 1.3, radius * Math.cos(angle));
    }

    static ElevationProfile elevationProfile() {
        double[] distances = new double[100];
        double[] heights = new double[100];
        for (int i = 0; i < 100; i++) {
            distances[i] = i * 250;
            heights[i] = i > 40 && i < 50 ? Double.NaN : 300 + 80 * Math.sin(i / 9.0);
        }
        return new ElevationProfile(distances, heights, true);
    }

    static BarChart barChart() {
        return new BarChart("gear", "time", List.of(new Bar("34x50", 2400, "40 min"), new Bar("34x21", 1300, "22 min"), new Bar("34x10", 0, "0 min")));
    }
}
