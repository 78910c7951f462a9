package courseworthy.report;

import courseworthy.course.ElevationLine;
import courseworthy.course.Ground;
import courseworthy.course.GroundCertainty;
import courseworthy.course.GroundPairs;
import courseworthy.demand.DayDemands.Ascent;
import courseworthy.report.picture.GroundBand;
import courseworthy.report.picture.GroundBand.Basis;
import courseworthy.report.picture.GroundBand.ClimbFigures;
import courseworthy.report.picture.GroundBand.RiddenStretch;
import courseworthy.report.picture.GroundBand.TechnicalGrade;
import courseworthy.report.picture.LongSection;
import courseworthy.report.picture.LongSection.ClimbBand;
import courseworthy.report.picture.LongSection.CourseMark;
import courseworthy.report.picture.LongSection.EffortBand;
import courseworthy.report.picture.LongSection.GearBand;
import courseworthy.report.picture.LongSection.HeightProfile;
import courseworthy.report.picture.LongSection.HeightPoint;
import courseworthy.report.picture.LongSection.TimeMark;
import courseworthy.ride.Range;
import courseworthy.task.Brief;
import courseworthy.task.CourseSummary;
import courseworthy.worth.Gear;
import courseworthy.worth.RoadBook;
import courseworthy.worth.RoadBook.GearUse;
import courseworthy.worth.RoadBook.GroundLook;
import courseworthy.worth.RoadBook.RoadBookGround;
import courseworthy.worth.RoadBook.SupportMark;
import java.util.ArrayList;
import java.util.List;

/** The course of a brief as a long section: heights, and below them ground, gears and clock. */
public final class LongSectionFigure {

    /** Columns of its data, a row of which is a piece of ground, in which a page shows pattern and strokes too. */
    public static final int SURFACE_COLUMN = 2;
    public static final int ROUGHNESS_COLUMN = 3;

    /** Nearer than this is the same place, as at the end of one lap and the beginning of the next; metres (judgement). */
    private static final double SAME_PLACE_M = 20;

    private static final List<String> ORDINALS = List.of("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth");

    private final Brief brief;
    private final RoadBook book;
    private final Integer start;

    private LongSectionFigure(Brief brief) {
        this.brief = brief;
        book = brief.roadBook();
        start = brief.outlook().plan() == null ? null : brief.outlook().plan().start();
    }

    /** Null where no ride was estimated. */
    static Figure of(Brief brief) {
        return brief.roadBook() == null ? null : new LongSectionFigure(brief).figure();
    }

    private Figure figure() {
        LongSection picture = new LongSection(book.lap(), book.laps(), start, heights(), ground(), gears(), passages(), climbs(), marks());
        return new Figure(RichText.of(title()), picture, RichText.of(sentence()), data());
    }

    /** What is seen: the climb that asks for the easiest gear, else how far it is and on what. */
    private String title() {
        if (book.deciding() != null) {
            return Phrases.capital(climb(book.deciding())) + " decides the lowest gear";
        }
        String surface = brief.course().surfaces().get(0).surface().replace('_', ' ');
        return Figures.distance(book.lap()) + ", " + Phrases.percent(brief.course().surfaces().get(0).share()) + " of it "
                + (surface.equals("unknown") ? "on unknown ground" : surface);
    }

    /** {@code the second climb}, {@code climb 14}. */
    private String climb(int number) {
        return book.climbs().size() == 1 ? "the climb" : number <= ORDINALS.size() ? "the " + ORDINALS.get(number - 1) + " climb" : "climb " + number;
    }

    private String sentence() {
        String climb = "";
        if (book.deciding() != null) {
            Ascent deciding = book.climbs().get(book.deciding() - 1);
            climb = climb(book.deciding()) + ", kilometre " + Phrases.number(deciding.foot() / 1000, 1) + " to " + Phrases.number(deciding.top() / 1000, 1)
                    + ", gains " + Phrases.number(deciding.rise(), 0) + " m at " + Phrases.number(100 * deciding.rise() / (deciding.top() - deciding.foot()), 1)
                    + " %; ";
        }
        RoadBook.RoadBookPassage last = book.passages().get(book.passages().size() - 1);
        return Phrases.capital(climb + Figures.distance(book.lap()) + (book.laps() == 1 ? "" : " a lap, " + book.laps() + " laps") + groundWords()
                + ", finished after " + Figures.time(last.after()) + ".");
    }

    /** {@code  of gravel 60 %, asphalt 40 %}. */
    private String groundWords() {
        boolean unknown = brief.course().surfaces().size() == 1 && brief.course().surfaces().get(0).surface().equals(CourseSummary.UNKNOWN);
        return unknown ? " on ground that is not known" : " of " + Phrases.surfaces(brief.course().ground(), 3);
    }

    private HeightProfile heights() {
        if (book.heights() == null) {
            return null;
        }
        ElevationLine line = book.heights().line();
        List<HeightPoint> points = new ArrayList<>();
        for (int i = 0; i < line.size(); i++) {
            points.add(new HeightPoint(line.distance()[i], line.elevation()[i]));
        }
        return new HeightProfile(points, line.absolute(), line.measured());
    }

    private List<GroundBand> ground() {
        List<GroundBand> out = new ArrayList<>();
        for (RoadBookGround each : book.ground()) {
            GroundLook look = each.look();
            Gear gear = each.use().gear();
            out.add(new GroundBand(each.from(), each.to(), GroundMaterials.of(look.surface()), GroundMaterials.words(look.surface()),
                    look.others().stream().map(GroundMaterials::words).toList(), basis(look.certainty()), Ranges.of(look.roughness()), grade(look),
                    each.change() == null ? null : new ClimbFigures(each.change().ascent(), each.change().descent()),
                    new RiddenStretch(gear == null ? "" : gear.teeth(), gear == null ? 0 : gear.sprocket(), Ranges.of(each.reached()))));
        }
        return out;
    }

    private static Basis basis(GroundCertainty certainty) {
        return switch (certainty) {
            case WRITTEN -> Basis.WRITTEN;
            case MAPPED -> Basis.MAPPED;
            case INFERRED -> Basis.INFERRED;
            case ASSUMED -> Basis.ASSUMED;
            case UNKNOWN -> Basis.UNKNOWN;
        };
    }

    private static TechnicalGrade grade(GroundLook look) {
        return look.grade() == null ? null : new TechnicalGrade(look.grade().mid(), gradeText(look));
    }

    /** As profiles write it: {@code 2+}. */
    private static String gradeText(GroundLook look) {
        return look.grade() == null ? "" : GroundPairs.of(Ground.builder().mtbScale(look.grade().mid()).build()).get("mtb:scale");
    }

    private List<GearBand> gears() {
        return book.gears().stream().map(each -> new GearBand(each.from(), each.to(), effort(each.use()), each.use().gear() == null ? "" : each.use().gear().teeth(),
                each.use().gear() == null ? 0 : each.use().gear().sprocket())).toList();
    }

    private static EffortBand effort(GearUse use) {
        return switch (use.effort()) {
            case PEDALLED -> EffortBand.PEDALLED;
            case COASTING -> EffortBand.COASTING;
            case ON_FOOT -> EffortBand.ON_FOOT;
            case BY_FERRY -> EffortBand.BY_FERRY;
        };
    }

    private List<TimeMark> passages() {
        return book.passages().stream().filter(each -> each.lap() == 1).map(each -> new TimeMark(each.at(), Ranges.of(each.after()))).toList();
    }

    private List<ClimbBand> climbs() {
        List<ClimbBand> out = new ArrayList<>();
        for (Ascent each : book.climbs()) {
            out.add(new ClimbBand(out.size() + 1, each.foot(), each.top(), each.rise(), each.rise() / (each.top() - each.foot())));
        }
        return out;
    }

    private List<CourseMark> marks() {
        List<CourseMark> out = new ArrayList<>();
        for (SupportMark each : book.marks()) {
            List<CourseMark.Kind> kinds = new ArrayList<>();
            List<String> words = new ArrayList<>();
            add(kinds, words, each.water(), CourseMark.Kind.WATER, "water");
            add(kinds, words, each.food(), CourseMark.Kind.FOOD, "food");
            add(kinds, words, each.bag(), CourseMark.Kind.BAG, "own bag");
            add(kinds, words, each.latest() != null, CourseMark.Kind.CUT_OFF, each.latest() == null ? "" : "cut-off " + time(each.latest()));
            if (!kinds.isEmpty()) {
                add(out, new CourseMark(each.at() - (each.lap() - 1) * book.lap(), kinds, String.join(", ", words), each.lap(), each.latest()));
            }
        }
        return out;
    }

    /** What is at one place on several laps is one mark; a cut-off has a time of its own on each. */
    private static void add(List<CourseMark> out, CourseMark mark) {
        for (int i = 0; i < out.size() && mark.latestSeconds() == null; i++) {
            CourseMark other = out.get(i);
            if (other.latestSeconds() == null && other.kinds().equals(mark.kinds()) && Math.abs(other.atMetres() - mark.atMetres()) < SAME_PLACE_M) {
                out.set(i, new CourseMark(other.atMetres(), other.kinds(), other.label(), 0, null));
                return;
            }
        }
        out.add(mark);
    }

    private static void add(List<CourseMark.Kind> kinds, List<String> words, boolean there, CourseMark.Kind kind, String word) {
        if (there) {
            kinds.add(kind);
            words.add(word);
        }
    }

    /** By the clock where the start is known, else from the start. */
    private String time(double seconds) {
        return start == null ? PlanReport.clock(seconds) : PlanReport.ofDay(start + seconds);
    }

    /** The road strip: a row a piece of ground, what is read while riding first, so that a narrow page shows it. */
    private Table data() {
        Table.Builder out = Table.builder().figures("km").column(start == null ? "h" : "Time").column("Surface").column("Rough, 0 to 5")
                .column("Grade").column("Gear").figures("Up, m").figures("Down, m").column(start == null ? "Between, h" : "Between").column("Rough between")
                .column("Ground is");
        for (RoadBookGround each : book.ground()) {
            GroundLook look = each.look();
            out.row(Phrases.number(each.from() / 1000, 1), time(each.reached().mid()), GroundMaterials.words(look.surface()),
                    look.roughness() == null ? "" : Phrases.number(look.roughness().mid(), 1), gradeText(look), gear(each.use()),
                    each.change() == null ? "" : Phrases.number(each.change().ascent(), 0),
                    each.change() == null ? "" : Phrases.number(each.change().descent(), 0), between(each.reached()), roughBetween(look.roughness()), basis(look));
        }
        RoadBook.RoadBookPassage end = book.passages().stream().filter(each -> each.lap() == 1).reduce((one, other) -> other).orElseThrow();
        return out.row(Phrases.number(book.lap() / 1000, 1), time(end.after().mid()), book.laps() == 1 ? "finish" : "end of the lap", "", "", "", "", "",
                between(end.after()), "", "").build();
    }

    private String between(Range after) {
        String low = time(after.low());
        String high = time(after.high());
        return low.equals(high) ? "" : low + " to " + high;
    }

    private static String roughBetween(Range roughness) {
        if (roughness == null) {
            return "";
        }
        String low = Phrases.number(roughness.low(), 1);
        String high = Phrases.number(roughness.high(), 1);
        return low.equals(high) ? "" : low + " to " + high;
    }

    /** {@code inferred, or compacted}: how it is known, and what else it may be. */
    private static String basis(GroundLook look) {
        List<String> words = new ArrayList<>(List.of(look.certainty().word()));
        look.others().forEach(each -> words.add("or " + GroundMaterials.words(each)));
        return String.join(", ", words);
    }

    private static String gear(GearUse use) {
        return switch (use.effort()) {
            case PEDALLED -> use.gear() == null ? "" : use.gear().teeth();
            case COASTING -> "coasting";
            case ON_FOOT -> "on foot";
            case BY_FERRY -> "by ferry";
        };
    }
}
