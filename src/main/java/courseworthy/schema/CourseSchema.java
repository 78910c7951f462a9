package courseworthy.schema;

import static courseworthy.schema.SchemaFragments.about;
import static courseworthy.schema.SchemaFragments.amount;

import courseworthy.course.CourseReader;
import courseworthy.course.GroundReader;
import courseworthy.course.Smoothness;
import courseworthy.course.Surface;
import courseworthy.demand.StretchMeasure;
import courseworthy.text.FileKey;
import courseworthy.units.Dimension;
import java.util.List;
import java.util.Map;

/** A course profile. */
final class CourseSchema {

    private CourseSchema() {
    }

    static Map<String, Object> of() {
        Map<String, Object> stretches = SchemaFragments.listOf(stretch());
        stretches.put("minItems", 1);
        return new SchemaFragments.KeyBlock()
                .key("name", about("The course's name", SchemaFragments.text()))
                .key("summary", about("One line on it", SchemaFragments.text()))
                .key("track", about("A GPX file, relative to this one", SchemaFragments.text()))
                .key("attribution", about("Who must be named in what is made from it", SchemaFragments.text()))
                .key("start height", about("Height of the start above sea level", amount(Dimension.LENGTH)))
                .key("latitude", about("Of the start", amount(Dimension.ANGLE)))
                .key("longitude", about("Of the start", amount(Dimension.ANGLE)))
                .key("stretches", about("In order, one lap", stretches))
                .also("anyOf", List.of(SchemaFragments.of("required", List.of("stretches")), SchemaFragments.of("required", List.of("track"))))
                .also("dependentRequired", SchemaFragments.of("latitude", List.of("longitude"), "longitude", List.of("latitude")))
                .file("Course profile");
    }

    private static Map<String, Object> stretch() {
        SchemaFragments.KeyBlock block = new SchemaFragments.KeyBlock().keys(CourseReader.STRETCH_FORMS)
                .key("to", about("Or where it ends, from the start", amount(Dimension.LENGTH)));
        ground(block);
        block.key("way", about("Name or number of the mapped way", SchemaFragments.text()))
                .key("mapped", about("What was taken from the map when it was imported", SchemaFragments.text()))
                .key("inferred", about("What was inferred from the map when it was imported, and by which rule", SchemaFragments.oneOrMore(SchemaFragments.text())))
                .key("may be", about("What the ground may be instead, such as surface=gravel", SchemaFragments.oneOrMore(SchemaFragments.text())));
        return block.also("oneOf", List.of(SchemaFragments.of("required", List.of("length")), SchemaFragments.of("required", List.of("to")))).shape();
    }

    private static void ground(SchemaFragments.KeyBlock block) {
        block.keys(GroundReader.KEY_FORMS)
                .key("surface", about("OpenStreetMap surface", SchemaFragments.word(Surface.tags())))
                .key("smoothness", about("OpenStreetMap smoothness", SchemaFragments.word(Smoothness.tags())))
                .key("mtb:scale", about("OpenStreetMap mtb:scale, 0 to 6, with + or - where needed",
                        SchemaFragments.anyOf(SchemaFragments.pattern("[0-6][+-]?"), SchemaFragments.whole(0, 6))));
        for (FileKey<?> key : GroundReader.KEY_FORMS) {
            if (key.form() == FileKey.Form.YES_NO) {
                block.key(key.name(), about(StretchMeasure.find(key.name()).about(), SchemaFragments.yesNo()));
            }
        }
    }
}
