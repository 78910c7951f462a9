package courseworthy;

import courseworthy.call.Call;
import courseworthy.call.Calling;
import courseworthy.course.Course;
import courseworthy.decision.Decision;
import courseworthy.demand.Ride;
import courseworthy.event.Event;
import courseworthy.problem.Faults;
import courseworthy.rider.Bike;
import courseworthy.rider.Rider;
import courseworthy.rulebase.DroolsRules;
import courseworthy.rulebase.House;
import courseworthy.rulebase.Row;
import courseworthy.rulebase.check.Remark;
import courseworthy.rulebase.check.Remark.Fact;
import courseworthy.rulebase.check.Remark.Kind;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Topics on which nobody speaks on shipped courses, each ridden by a rider of whom nothing is known. */
final class LibraryGaps {

    private LibraryGaps() {
    }

    /** One remark for each such topic, in the order of the catalogue; none where the shipped courses are not at hand. */
    static List<Remark> of(Path home, List<Row> inForce, House house) {
        Inputs inputs = new Inputs(home, new Faults());
        DroolsRules rules = new DroolsRules(inForce, house);
        Map<Topic, List<String>> silent = new LinkedHashMap<>();
        List<String> courses = inputs.names();
        for (String name : courses) {
            Course course = inputs.course(name, null);
            if (course != null) {
                Call call = Calling.call(rules, new Ride(course, Rider.UNKNOWN, Event.UNKNOWN, Bike.UNKNOWN));
                for (Decision decision : call.decisions()) {
                    if (decision.status() == Decision.Status.SETTLED && decision.taken().isEmpty() && decision.lost().isEmpty()) {
                        silent.computeIfAbsent(decision.topic(), topic -> new ArrayList<>()).add(name);
                    }
                }
            }
        }
        List<Remark> out = new ArrayList<>();
        silent.forEach((topic, where) -> out.add(remark(topic, where, courses.size())));
        out.sort(Comparator.comparingInt(remark -> Topics.names().indexOf(remark.topic())));
        return out;
    }

    private static Remark remark(Topic topic, List<String> where, int all) {
        String on = where.size() == all ? "any of the " + all + " courses of the library"
                : where.size() + " of the " + all + " courses of the library: " + String.join(", ", where);
        return new Remark(Kind.GAP, List.of(), topic.name(), "Nobody speaks on it on " + on + "; the common value is taken, "
                + topic.text(topic.standard()) + ".", "Fine where the common value is; else write a row for them.", 0,
                List.of(new Fact("course", where.get(0))), null, topic.name());
    }
}
