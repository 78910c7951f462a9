package courseworthy.report;

import courseworthy.report.picture.TrackPlan;
import courseworthy.report.picture.TrackPlan.KilometreMark;
import courseworthy.report.picture.TrackPlan.TrackLeg;
import courseworthy.report.picture.TrackPlan.PlanPoint;
import courseworthy.task.Brief;
import courseworthy.task.CourseMap;
import courseworthy.task.CourseMap.MapPoint;
import java.util.ArrayList;
import java.util.List;

/** The line of a brief's course seen from above. */
final class TrackFigure {

    private TrackFigure() {
    }

    /** Null where no track is known. */
    static Figure of(Brief brief) {
        CourseMap map = brief.courseMap();
        if (map == null || map.legs().isEmpty()) {
            return null;
        }
        List<KilometreMark> marks = new ArrayList<>();
        for (int i = 1; i < map.kilometres().size(); i++) {
            marks.add(new KilometreMark(i, point(map.kilometres().get(i))));
        }
        CourseMap.MapLeg first = map.legs().get(0);
        CourseMap.MapLeg last = map.legs().get(map.legs().size() - 1);
        TrackPlan plan = new TrackPlan(map.legs().stream().map(TrackFigure::leg).toList(), marks, point(first.points().get(0)),
                point(last.points().get(last.points().size() - 1)));
        String title = Figures.distance(brief.course().distance()) + " seen from above, " + (map.isLoop() ? "back to its start" : "from one place to another");
        return new Figure(RichText.of(title), plan, RichText.of("The track runs over " + Phrases.surfaces(brief.course().ground(), 3) + ", and "
                + (map.isLoop() ? "ends where it starts." : "ends " + Figures.distance(map.apart()) + " from its start.")), data(map));
    }

    private static TrackLeg leg(CourseMap.MapLeg each) {
        return new TrackLeg(GroundMaterials.of(each.surface()), GroundMaterials.words(each.surface()), each.points().stream().map(TrackFigure::point).toList());
    }

    private static PlanPoint point(MapPoint place) {
        return new PlanPoint(place.east(), place.north());
    }

    private static Table data(CourseMap map) {
        Table.Builder out = Table.builder().figures("From km").figures("To km").column("Surface");
        for (CourseMap.MapLeg each : map.legs()) {
            out.row(Phrases.number(each.from() / 1000, 1), Phrases.number(each.to() / 1000, 1), GroundMaterials.words(each.surface()));
        }
        return out.build();
    }
}
