package courseworthy.task;

import courseworthy.analysis.Finding;
import courseworthy.analysis.Finding.Fact;
import courseworthy.analysis.Finding.Kind;
import courseworthy.analysis.Finding.Witness;
import courseworthy.call.Call;
import courseworthy.call.CallMaker;
import courseworthy.course.Course;
import courseworthy.decision.Decision;
import courseworthy.demand.RideInput;
import courseworthy.engine.DroolsRules;
import courseworthy.engine.ShippedRules;
import courseworthy.event.Event;
import courseworthy.problem.Faults;
import courseworthy.rider.Bike;
import courseworthy.rider.Rider;
import courseworthy.sheet.Row;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Topics on which no rule on shipped courses, each ridden by a rider of whom nothing is known. */
final class LibraryGaps {

    private LibraryGaps() {
    }

    /** One remark for each such topic, in the order of the catalogue; none where the shipped courses are not at hand. */
    static List<Finding> of(Path home, List<Row> inForce, ShippedRules shipped) {
        RequestReader inputs = new RequestReader(home, new Faults());
        DroolsRules rules = new DroolsRules(inForce, shipped);
        Map<Topic, List<String>> silent = new LinkedHashMap<>();
        List<String> courses = inputs.names();
        for (String name : courses) {
            Course course = inputs.course(name, null);
            if (course != null) {
                Call call = CallMaker.call(rules, new RideInput(course, Rider.UNKNOWN, Event.UNKNOWN, Bike.UNKNOWN));
                for (Decision decision : call.decisions()) {
                    if (decision.status() == Decision.Status.SETTLED && decision.taken().isEmpty() && decision.lost().isEmpty()) {
                        silent.computeIfAbsent(decision.topic(), topic -> new ArrayList<>()).add(name);
                    }
                }
            }
        }
        List<Finding> out = new ArrayList<>();
        silent.forEach((topic, where) -> out.add(remark(topic, where, courses.size())));
        out.sort(Comparator.comparingInt(remark -> Topics.names().indexOf(remark.topic())));
        return out;
    }

    private static Finding remark(Topic topic, List<String> where, int all) {
        String on = where.size() == all ? "any of the " + all + " shipped courses"
                : where.size() + " of the " + all + " shipped courses: " + String.join(", ", where);
        return new Finding(Kind.GAP, List.of(), topic.name(), "No rule covers it on " + on + "; the default is used: "
                + topic.text(topic.standard()) + ".", "If the default suits them, leave it; if not, write a row for them.", 0,
                topic.name(), new Witness(List.of(new Fact("course", where.get(0))), null, null, Set.of()));
    }
}
