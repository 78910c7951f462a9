package courseworthy.render.svg;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.report.picture.BackPlan;
import courseworthy.report.picture.Bar;
import courseworthy.report.picture.BarChart;
import courseworthy.report.picture.BeforeAfter;
import courseworthy.report.picture.GearLadder;
import courseworthy.report.picture.GroundBand;
import courseworthy.report.picture.LongSection;
import courseworthy.report.picture.Picture;
import courseworthy.report.picture.PressureLine;
import courseworthy.report.picture.ValueRange;
import courseworthy.report.picture.WorthChart;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.w3c.dom.Element;

/** Labels of any kind and length: they stay text, off each other and inside the picture. */
class HostilePictureTest {

    @Provide
    Arbitrary<String> labels() {
        Arbitrary<String> pieces = Arbitraries.of("<script>alert(1)</script>", "</svg>", "\"><rect/>", "\u202e", "\u0000", "\ud800", "&#x3c;", "WWWW", "\ufdfd", "\u4e2d\u6587",
                "\u05e9\u05dc\u05d5\u05dd", "\ud83d\udeb2", "e\u0301", " ", "tyre", "60 mm", "\n").list().ofMaxSize(8).map(list -> String.join("", list));
        return Arbitraries.oneOf(pieces, Arbitraries.strings().ofMaxLength(30), Arbitraries.of("x".repeat(10_000), "long words ".repeat(900)));
    }

    @Property(seed = "20261129", tries = 60)
    void labelsStayTextOffEachOtherAndInside(@ForAll("labels") String one, @ForAll("labels") String other) {
        for (Picture picture : pictures(one, other)) {
            for (String markup : new SvgPictures("p").draw(SamplePictures.figure(picture)).strip().split("\n(?=<svg)")) {
                Element svg = DrawnText.parse(markup);
                assertThat(DrawnText.faults(svg)).as(svg.getAttribute("class")).isEmpty();
                assertThat(svg.getElementsByTagName("script").getLength()).isZero();
                assertThat(markup).doesNotContain("\u202e", "\u0000");
            }
        }
    }

    private static List<Picture> pictures(String one, String other) {
        ValueRange minute = new ValueRange(30, 60, 90);
        LongSection section = SamplePictures.longSection(62, 12, 1);
        List<GroundBand> ground = new ArrayList<>();
        for (GroundBand each : section.ground()) {
            ground.add(new GroundBand(each.fromMetres(), each.toMetres(), each.material(), one, List.of(other), each.basis(), each.roughness(), each.grade(),
                    each.climbing(), each.ridden()));
        }
        GearLadder ladder = SamplePictures.gearLadder(List.of(34));
        return List.of(new WorthChart(List.of(new WorthChart.WorthBar(one, other, one, minute, false, other), new WorthChart.WorthBar(other, one, other, minute, true, one))),
                new BeforeAfter(one, List.of(new BeforeAfter.PlaceComparison(one, other, one, true, other, one), new BeforeAfter.PlaceComparison(other, one, "", false, "", ""))),
                new BackPlan(8 * 3600, "2026-06-20", List.of(new BackPlan.SessionBar(one, -40_000, 3, 1, 600.0)), List.of(new BackPlan.WaitBar(other, -50_000, -9_000)),
                        List.of(new BackPlan.DeadlineMark(one, -7_000))),
                new PressureLine(List.of(new PressureLine.Wheel(one, 95_000, 105_000, 130_000, 120_000, 130_000, null, null),
                        new PressureLine.Wheel(other, 95_000, 105_000, 130_000, 120_000, 130_000, 110_000.0, 140_000.0))),
                new BarChart(one, other, List.of(new Bar(one, 3, other), new Bar(other, 0, one))),
                new GearLadder(ladder.rungs(), List.of(new GearLadder.SteepMark(one, new ValueRange(0.1, 0.12, 0.14), 100, true, minute)),
                        List.of(new GearLadder.SpeedMark(other, new ValueRange(10, 12, 13)))),
                new LongSection(section.lengthMetres(), 1, null, section.heights(), ground, section.gears(), section.passages(), section.climbs(), section.marks()));
    }
}
