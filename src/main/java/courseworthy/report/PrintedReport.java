package courseworthy.report;

import java.util.List;

/**
 * A report to be printed and pinned up: sections by side of the paper, and what stands at the foot of each side.
 *
 * @param sides what each side holds; where there is one list alone, it may go on to a second side
 * @param foot  who it is for, and when
 * @param card  what is cut out and stuck to the bike; null for none
 */
public record PrintedReport(RichText title, RichText subtitle, List<List<Section>> sides, RichText foot, Section card) {

    public PrintedReport {
        sides = sides.stream().map(List::copyOf).toList();
    }
}
