package courseworthy.wear;

import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.problem.Spelling;
import courseworthy.workshop.Part;
import courseworthy.workshop.RideLog;
import courseworthy.workshop.Workshop;
import java.util.ArrayList;
import java.util.List;

/** Checks the jobs that a log and the parts of a workshop name: a job that is misspelt would never count. */
public final class ServiceJobCheck {

    private ServiceJobCheck() {
    }

    /** @param workshop with its log */
    public static void check(Workshop workshop, Faults faults) {
        for (RideLog.Service each : workshop.log().services()) {
            Part part = workshop.find(each.part());
            List<String> jobs = jobs(part);
            if (each.job() != null && !jobs.contains(each.job())) {
                String near = Spelling.didYouMean(each.job(), jobs);
                faults.add(workshop.log().file(), each.line(), "job", "\"" + each.job() + "\" on a " + part.kind().word(), "one of: " + String.join(", ", jobs),
                        near.isEmpty() ? "Or state it among the part's intervals in the workshop's file." : near);
            }
        }
        for (Part part : workshop.parts()) {
            List<String> usual = IntervalTable.shipped().jobs(part.kind());
            for (Part.StatedInterval each : part.intervals()) {
                String near = usual.contains(each.job()) ? "" : Spelling.didYouMean(each.job(), usual);
                if (!near.isEmpty()) {
                    faults.add(Fault.warning(workshop.file(), part.line(), "intervals", "job \"" + each.job() + "\" of \"" + part + "\"", "a job of its own", near));
                }
            }
        }
    }

    private static List<String> jobs(Part part) {
        List<String> out = new ArrayList<>(IntervalTable.shipped().jobs(part.kind()));
        part.intervals().stream().map(Part.StatedInterval::job).filter(job -> !out.contains(job)).forEach(out::add);
        if (!out.contains(ServiceStart.RENEW)) {
            out.add(ServiceStart.RENEW);
        }
        return out;
    }
}
