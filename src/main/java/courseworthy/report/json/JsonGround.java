package courseworthy.report.json;

import courseworthy.course.GroundPairs;
import courseworthy.task.Brief;
import courseworthy.task.CourseSummary;
import courseworthy.task.GroundBasis;
import java.io.IOException;

/** Writes where the ground of a course comes from, where a map gave any of it. */
final class JsonGround {

    private JsonGround() {
    }

    /** Who must be named; no field where nobody must. */
    static void attribution(String names, Json json) throws IOException {
        if (!names.isEmpty()) {
            json.string("attribution", names);
        }
    }

    /** Who must be named, and by what the ground is known along how much of the course; no fields where no map gave any. */
    static void origin(CourseSummary course, Json json) throws IOException {
        attribution(course.attribution(), json);
        if (course.basis() != null) {
            json.object("ground_known_by");
            lengths(course.basis(), json);
            json.close();
        }
    }

    private static void lengths(GroundBasis basis, Json json) throws IOException {
        json.metres("mapped_m", basis.mapped());
        json.metres("inferred_m", basis.inferred());
        json.metres("written_m", basis.written());
        json.metres("unknown_m", basis.unknown());
    }

    /** Topics whose decision could change with ground that is inferred or unknown; no field where no map gave any ground. */
    static void reliance(Brief brief, Json json) throws IOException {
        GroundBasis basis = brief.course().basis();
        if (basis != null) {
            json.strings("could_change_with_ground", brief.openToGround().stream().map(each -> each.topic().name()).toList());
        }
    }

    /** Lengths by origin, and each stretch; no field where no map gave any. */
    static void basis(GroundBasis basis, Json json) throws IOException {
        if (basis == null) {
            return;
        }
        json.object("ground");
        lengths(basis, json);
        json.strings("rules", basis.rules());
        json.list("stretches");
        for (GroundBasis.GroundBasisPiece each : basis.stretches()) {
            json.open();
            json.metres("from_m", each.from());
            json.metres("to_m", each.to());
            json.string("way", each.way());
            json.string("known_by", each.kind().word());
            json.object("values");
            for (var value : each.ground().entrySet()) {
                json.string(value.getKey(), value.getValue());
            }
            json.close();
            if (!each.mayBe().isEmpty()) {
                json.strings("may_be", each.mayBe().stream().map(GroundPairs::text).toList());
            }
            json.close();
        }
        json.endList();
        json.close();
    }
}
