package courseworthy.render.svg;

import courseworthy.render.svg.TextBox.Anchor;
import courseworthy.report.picture.GroundBand;
import courseworthy.report.picture.GroundBand.Basis;
import courseworthy.report.picture.GroundBand.TechnicalGrade;
import courseworthy.report.picture.GroundMaterial;
import courseworthy.report.picture.LongSection;
import courseworthy.report.picture.LongSection.EffortBand;
import courseworthy.report.picture.LongSection.GearBand;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BinaryOperator;
import java.util.function.Function;

/** The bands below a height line: surface as hatch, roughness as strokes, technical grade and gear as figures. */
final class SectionBands {

    /** The height of a band: two tiles of most hatches, pixels. */
    private static final double BAND = 20;
    private static final double BETWEEN = 5;
    /** Room above a band for its name, where there is none beside it. */
    private static final double NAME = 15;
    /** Below this width hatches look alike, pixels. Measured on drawings at one and two pixels to the dot. */
    private static final double LEAST_HATCH = 12;
    private static final double LEAST_STROKES = 4;
    private static final String ON_FOOT = "walk";
    private static final String BY_FERRY = "ferry";

    private final SectionFrame frame;
    private final LongSection section;
    /** Grounds whose hatch has its words nowhere in the band, with these words. */
    private final Map<GroundMaterial, Set<String>> withoutWords = new EnumMap<>(GroundMaterial.class);
    private final List<String> keyWords = new ArrayList<>();
    /** How shaded lengths are passed that have no room for the word. */
    private final Set<String> shadedWithoutWord = new TreeSet<>();
    private boolean merged;
    private double y;

    SectionBands(SectionFrame frame, LongSection section, double top) {
        this.frame = frame;
        this.section = section;
        this.y = top;
    }

    /** Adds what is drawn without words of its own. */
    void addTo(PictureKey key) {
        withoutWords.forEach((material, words) -> key.ground(material, String.join(", ", words)));
        if (!shadedWithoutWord.isEmpty()) {
            key.shade(String.join(" or ", shadedWithoutWord));
        }
    }

    /** Adds what else has to be said of the bands. */
    void addRemarksTo(PictureKey key) {
        keyWords.forEach(key::words);
        if (merged) {
            key.words("short pieces drawn longer, or together");
        }
    }

    /** Draws all bands. @return where they end */
    double draw() {
        surface();
        if (section.ground().stream().anyMatch(each -> each.roughness() != null)) {
            roughness();
        }
        if (section.ground().stream().anyMatch(each -> each.grade() != null)) {
            grade();
        }
        if (!section.gears().isEmpty()) {
            gears();
        }
        return y;
    }

    /** Writes the name of the next band and makes room for it. @return its upper edge */
    private double band(String name) {
        if (frame.canvas().narrow()) {
            frame.canvas().text(TextStyle.PALE, Anchor.START, frame.left(), y + 11, name);
            y += NAME;
        } else {
            frame.canvas().text(TextStyle.PALE, Anchor.END, frame.left() - 6, y + 14, name);
        }
        double top = y;
        y += BAND + BETWEEN;
        return top;
    }

    private <V> List<BandPiece<V>> pieces(List<BandPiece<V>> all, double leastPixels, BinaryOperator<V> choice) {
        List<BandPiece<V>> out = BandPiece.atLeast(frame.metresOf(leastPixels), all, choice);
        merged |= out.stream().anyMatch(BandPiece::merged);
        return out;
    }

    private <V> List<BandPiece<V>> ground(Function<GroundBand, V> value) {
        List<BandPiece<V>> out = new ArrayList<>();
        for (GroundBand each : section.ground()) {
            out.add(new BandPiece<>(each.fromMetres(), each.toMetres(), value.apply(each), false));
        }
        return out;
    }

    /** What is shown of a surface. */
    private record Hatch(GroundMaterial material, String words, boolean assumed) {

        static Hatch of(GroundBand ground) {
            return new Hatch(ground.material(), ground.surface(), ground.basis() == Basis.ASSUMED || ground.basis() == Basis.INFERRED);
        }
    }

    private void surface() {
        double top = band("Surface");
        Set<Hatch> worded = new HashSet<>();
        StringBuilder edges = new StringBuilder(LinePath.across(frame.left(), frame.right(), top)).append(LinePath.across(frame.left(), frame.right(), top + BAND));
        StringBuilder assumed = new StringBuilder();
        List<BandPiece<Hatch>> pieces = pieces(ground(Hatch::of), LEAST_HATCH, longer());
        for (BandPiece<Hatch> each : pieces) {
            GroundMaterial material = each.value().material();
            double left = frame.at(each.from());
            double right = frame.at(each.to());
            frame.canvas().hatchAlone(material, left, top, right - left, BAND);
            edges.append(LinePath.down(left, top, top + BAND));
            if (each.value().assumed()) {
                assumed.append(LinePath.across(left + 1, right - 1, top + BAND + 3));
            }
            if (frame.canvas().plate(TextStyle.PLAIN, left, right, top + 14, each.value().words())) {
                worded.add(each.value());
            } else if (material == GroundMaterial.UNKNOWN) {
                frame.canvas().label(TextStyle.VALUE, Anchor.MIDDLE, (left + right) / 2, top + 14, "?");
            }
        }
        if (!assumed.isEmpty()) {
            frame.canvas().path("assumed", assumed.toString(), top + BAND + BETWEEN);
            keyWords.add("dotted below: surface assumed or inferred");
        }
        frame.canvas().path("edge", edges.append(LinePath.down(frame.right(), top, top + BAND)).toString(), top + BAND);
        pieces.stream().map(BandPiece::value).filter(each -> !worded.contains(each))
                .forEach(each -> withoutWords.computeIfAbsent(each.material(), any -> new LinkedHashSet<>()).add(each.words()));
    }

    /** Of two surfaces the one that is longer on the whole course. */
    private BinaryOperator<Hatch> longer() {
        Map<Hatch, Double> lengths = new HashMap<>();
        ground(Hatch::of).forEach(each -> lengths.merge(each.value(), each.length(), Double::sum));
        return (a, b) -> lengths.get(a) >= lengths.get(b) ? a : b;
    }

    /** Null where it is not known. */
    private static Integer strokes(GroundBand band) {
        return band.roughness() == null ? null : RoughnessStrokes.count(band.roughness().mid());
    }

    private void roughness() {
        double top = band("Roughness");
        BinaryOperator<Integer> roughest = (a, b) -> a == null ? b : b == null ? a : Integer.valueOf(Math.max(a, b));
        StringBuilder path = new StringBuilder();
        for (BandPiece<Integer> each : pieces(ground(SectionBands::strokes), LEAST_STROKES, roughest)) {
            double left = frame.at(each.from()) + 0.5;
            double right = frame.at(each.to()) - 0.5;
            if (each.value() == null) {
                unknown(left, right, top);
                continue;
            }
            path.append(RoughnessStrokes.path(each.value(), left, right, top + BAND));
        }
        frame.canvas().path("strokes", path.toString(), top + BAND);
    }

    private void unknown(double left, double right, double top) {
        if (right - left > LEAST_HATCH - 2) {
            frame.canvas().label(TextStyle.PALE, Anchor.MIDDLE, (left + right) / 2, top + 14, "?");
        }
    }

    private void grade() {
        double top = band("Grade");
        BinaryOperator<TechnicalGrade> hardest = (a, b) -> a == null ? b : b == null ? a : a.value() >= b.value() ? a : b;
        double least = ground(GroundBand::grade).stream().map(BandPiece::value).filter(Objects::nonNull)
                .mapToDouble(each -> PictureText.of(each.text()).width(true)).max().orElse(0) + 6;
        for (BandPiece<TechnicalGrade> each : pieces(ground(GroundBand::grade), least, hardest)) {
            if (each.value() != null) {
                double left = frame.at(each.from());
                double right = frame.at(each.to());
                frame.canvas().rectangle("edge", left, top, right - left, BAND);
                frame.canvas().label(TextStyle.VALUE, Anchor.MIDDLE, (left + right) / 2, top + 14, each.value().text().replace('-', '\u2212'));
            }
        }
    }

    private void gears() {
        boolean oneRing = section.gears().stream().filter(each -> each.effort() == EffortBand.PEDALLED).map(SectionBands::ring).distinct().count() <= 1;
        double top = band(oneRing ? "Sprocket" : "Gear");
        List<BandPiece<String>> all = new ArrayList<>();
        double least = 0;
        for (GearBand each : section.gears()) {
            String words = switch (each.effort()) {
                case PEDALLED -> oneRing ? Integer.toString(each.sprocket()) : each.gear().replace('x', '\u00d7');
                case COASTING -> "";
                case ON_FOOT -> ON_FOOT;
                case BY_FERRY -> BY_FERRY;
            };
            all.add(new BandPiece<>(each.fromMetres(), each.toMetres(), words, false));
            least = Math.max(least, each.effort() == EffortBand.PEDALLED ? PictureText.of(words).width(true) + 6 : 0);
        }
        if (all.stream().anyMatch(each -> each.value().isEmpty())) {
            keyWords.add("no " + (oneRing ? "sprocket" : "gear") + ": coasting");
        }
        StringBuilder divisions = new StringBuilder();
        for (BandPiece<String> each : pieces(all, Math.max(least, LEAST_HATCH), null)) {
            gear(each, top);
            divisions.append(LinePath.down(frame.at(each.from()), top + 2, top + BAND - 2));
        }
        frame.canvas().path("divide", divisions.append(LinePath.down(frame.right(), top + 2, top + BAND - 2)).toString(), top + BAND);
    }

    private void gear(BandPiece<String> piece, double top) {
        double left = frame.at(piece.from());
        double right = frame.at(piece.to());
        if (piece.value().equals(ON_FOOT) || piece.value().equals(BY_FERRY)) {
            frame.canvas().shade(left, top + 2, right - left, BAND - 4);
            if (!frame.canvas().plate(TextStyle.PLAIN, left, right, top + 14, piece.value())) {
                shadedWithoutWord.add(piece.value());
            }
        } else {
            frame.canvas().label(TextStyle.VALUE, Anchor.MIDDLE, (left + right) / 2, top + 14, piece.value());
        }
    }

    private static String ring(GearBand band) {
        int cross = band.gear().indexOf('x');
        return cross < 0 ? band.gear() : band.gear().substring(0, cross);
    }
}
