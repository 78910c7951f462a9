package courseworthy.report.json;

import courseworthy.course.ElevationLine;
import courseworthy.course.Surface;
import courseworthy.worth.RoadBook;
import courseworthy.worth.RoadBook.GearUse;
import courseworthy.worth.RoadBook.GroundLook;
import courseworthy.worth.RoadBook.RoadBookGround;
import courseworthy.worth.RoadBook.SimplifiedHeights;
import courseworthy.worth.RoadBook.SupportMark;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.Locale;

/** Writes under {@code road_book} the course as it is met on the way. */
final class JsonRoadBook {

    private final Json json;

    JsonRoadBook(Json json) {
        this.json = json;
    }

    void of(RoadBook book) throws IOException {
        json.object("road_book", book, known -> {
            json.decimal("lap_m", known.lap(), 1);
            json.number("laps", known.laps());
            heights(json, known.heights());
            json.objects("ground", known.ground(), this::ground);
            json.string("gears_of", known.drivetrain() == null ? null : known.drivetrain().teeth());
            json.objects("gears", known.gears(), piece -> {
                json.metres("from_m", piece.from());
                json.metres("to_m", piece.to());
                use(piece.use());
            });
            json.objects("clock", known.passages(), passage -> {
                json.metres("at_m", passage.at());
                json.number("lap", passage.lap());
                json.range("after_s", passage.after(), 0);
            });
            climbs(known);
            json.number("climb_that_decides_the_easiest_gear", known.deciding() == null ? null : BigDecimal.valueOf(known.deciding()));
            json.objects("marks", known.marks(), this::mark);
        });
    }

    /** The points of a line of heights, {@code heights}; null where none are known. */
    static void heights(Json json, SimplifiedHeights heights) throws IOException {
        json.object("heights", heights, known -> {
            ElevationLine line = known.line();
            json.decimal("tolerance_m", known.tolerance(), 2);
            json.yesNo("above_sea", line.absolute());
            json.yesNo("measured", line.measured());
            json.decimals("at_m", line.size(), i -> line.distance()[i], 1);
            json.decimals("height_m", line.size(), i -> line.elevation()[i], 1);
        });
    }

    private void ground(RoadBookGround piece) throws IOException {
        GroundLook look = piece.look();
        json.metres("from_m", piece.from());
        json.metres("to_m", piece.to());
        json.string("surface", look.surface() == null ? null : look.surface().tag());
        json.strings("surface_may_be", look.others().stream().map(Surface::tag).toList());
        json.string("known_by", look.certainty().word());
        json.range("roughness", look.roughness(), 1);
        json.range("mtb_scale", look.grade(), 2);
        json.metres("ascent_m", piece.change() == null ? null : Double.valueOf(piece.change().ascent()));
        json.metres("descent_m", piece.change() == null ? null : Double.valueOf(piece.change().descent()));
        use(piece.use());
        json.range("reached_after_s", piece.reached(), 0);
    }

    private void use(GearUse use) throws IOException {
        json.string("effort", use.effort().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        json.string("gear", use.gear() == null ? null : use.gear().teeth());
    }

    private void climbs(RoadBook book) throws IOException {
        json.list("climbs");
        for (int i = 0; i < book.climbs().size(); i++) {
            var climb = book.climbs().get(i);
            json.open();
            json.number("number", i + 1);
            json.metres("foot_m", climb.foot());
            json.metres("top_m", climb.top());
            json.metres("rise_m", climb.rise());
            json.decimal("gradient", climb.rise() / (climb.top() - climb.foot()), 4);
            json.close();
        }
        json.endList();
    }

    private void mark(SupportMark mark) throws IOException {
        json.metres("at_m", mark.at());
        json.number("lap", mark.lap());
        json.yesNo("water", mark.water());
        json.yesNo("food", mark.food());
        json.yesNo("bag", mark.bag());
        json.decimal("latest_s", mark.latest(), 0);
    }
}
