package courseworthy.demand;

import courseworthy.course.Ground;
import courseworthy.course.Stretch;
import courseworthy.ride.Range;
import java.util.List;

/**
 * How hard a course is to ride by its technical grades. Ground that may be one of several counts as the likely one, and at the ends as the
 * easiest and the hardest that it may be.
 *
 * @param mean    by length, off paved ground; null where no grade is known
 * @param hardest of all grades; null where none is known
 */
record TechnicalGrades(Range mean, Range hardest) {

    static TechnicalGrades of(List<Stretch> stretches) {
        Tally likely = new Tally();
        Tally easiest = new Tally();
        Tally hardest = new Tally();
        for (Stretch stretch : stretches) {
            Double grade = TerrainDemands.technicalGrade(stretch.ground());
            Double least = grade;
            Double most = grade;
            for (Ground other : stretch.alternatives()) {
                Double each = TerrainDemands.technicalGrade(other);
                least = each == null || least != null && least <= each ? least : each;
                most = each == null || most != null && most >= each ? most : each;
            }
            likely.add(stretch, grade);
            easiest.add(stretch, least);
            hardest.add(stretch, most);
        }
        return likely.hardest < 0 ? new TechnicalGrades(null, null)
                : new TechnicalGrades(Range.around(easiest.mean(), likely.mean(), hardest.mean()),
                        Range.around(Math.min(easiest.hardest, likely.hardest), likely.hardest, hardest.hardest));
    }

    /** Grades over lengths. */
    private static final class Tally {
        private double known;
        private double sum;
        private double hardest = -1;

        void add(Stretch stretch, Double grade) {
            if (grade != null) {
                boolean paved = TerrainDemands.isPaved(stretch.ground());
                hardest = Math.max(hardest, grade);
                known += paved ? 0 : stretch.length();
                sum += paved ? 0 : grade * stretch.length();
            }
        }

        double mean() {
            return known > 0 ? sum / known : 0;
        }
    }
}
