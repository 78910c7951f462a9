package courseworthy.render;

import courseworthy.report.Callout;
import courseworthy.report.CheckboxList;
import courseworthy.report.Definition;
import courseworthy.report.Figure;
import courseworthy.report.ItemList;
import courseworthy.report.picture.Bar;
import courseworthy.report.picture.BarChart;
import courseworthy.report.picture.ElevationProfile;
import courseworthy.report.Report;
import courseworthy.report.RichText;
import courseworthy.report.Section;
import courseworthy.report.Style;
import courseworthy.report.Table;
import java.util.List;

/** A report with every kind of block and span, and one text from a file at every place where there may be one. */
public final class SampleReport {

    private SampleReport() {
    }

    public static Report with(String fromFile) {
        RichText quoted = RichText.ofQuoted(fromFile);
        return Report.builder(quoted).subtitle(RichText.of("set up for ").quoted(fromFile))
                .paragraph(RichText.of("Of ").quoted(fromFile).text(" and ").styled(fromFile, Style.STRONG).text("."))
                .caution(quoted).note(quoted).remark(RichText.of("See ").append(quoted).footnote(fromFile))
                .figure(new Figure(quoted, new ElevationProfile(new double[] {0, 500, 1000}, new double[] {10, Double.NaN, 90}, true),
                        RichText.of("From 10 m up to 90 m: ").append(quoted)))
                .section(values(quoted, fromFile)).section(lists(quoted)).section(pictures(quoted, fromFile))
                .build();
    }

    private static Section values(RichText quoted, String fromFile) {
        return Section.builder("values", RichText.of("Values of ").append(quoted)).aside(quoted)
                .definitions("In short", List.of(new Definition(quoted, quoted, quoted, List.of(quoted)), Definition.of("tyres", quoted)))
                .table(Table.builder().column("What").figures("How much").column(fromFile.isEmpty() ? "Why" : fromFile)
                        .row(quoted, RichText.ofStrong("12 mm"), quoted).row(RichText.of("b").code(fromFile), quoted, RichText.EMPTY).build())
                .build();
    }

    private static Section lists(RichText quoted) {
        return Section.builder("lists", "Lists")
                .items(List.of(ItemList.Item.of(quoted, List.of(quoted, quoted)),
                        new ItemList.Item(quoted, List.of(new Callout(Callout.Kind.NOTE, quoted)))))
                .numbered(List.of(quoted, RichText.of("see ").crossReference("Values", "values")))
                .checkboxes(List.of(new CheckboxList.Entry(true, quoted, quoted, quoted),
                        new CheckboxList.Entry(false, quoted, RichText.EMPTY, RichText.EMPTY)))
                .build();
    }

    private static Section pictures(RichText quoted, String fromFile) {
        return Section.builder("pictures", "Pictures")
                .figure(new Figure(RichText.EMPTY, new ElevationProfile(new double[] {0, 9000}, new double[] {10, 90}, false), quoted))
                .figure(new Figure(quoted, new BarChart("Gear", "Time", List.of(new Bar(fromFile, 10, "10 s"), new Bar("b", 0, "0 s"))), quoted))
                .section(Section.builder("typed", quoted).listing("yaml", List.of("a: b", "  " + fromFile)).build())
                .build();
    }
}
