package courseworthy.task;

import courseworthy.call.Call;
import courseworthy.call.Flip;
import courseworthy.call.NearestChangeFinder;
import courseworthy.call.WhatIfCall;
import courseworthy.demand.Measure;
import courseworthy.engine.DroolsRules;
import courseworthy.topic.Topic;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The nearest changes of a single figure that would change each decision, worked out when they are first asked for. */
public final class SingleChanges {

    /** At most this many are given for one decision, each of another measure (judgement: the rest is in {@code why}). */
    private static final int MOST_LISTED = 3;

    private final DroolsRules rules;
    private final Call call;
    private final WhatIfCall trial;
    private Map<Topic, List<Flip>> found;

    /** @param trial of the call, where something else asks it too, else null */
    SingleChanges(DroolsRules rules, Call call, WhatIfCall trial) {
        this.rules = rules;
        this.call = call;
        this.trial = trial;
    }

    /** The nearest first; none where no reasonable change of a single figure would change it. */
    public synchronized List<Flip> of(Topic topic) {
        if (found == null) {
            found = trial == null ? NearestChangeFinder.of(rules, call) : NearestChangeFinder.of(call, trial);
        }
        Set<Measure> seen = EnumSet.noneOf(Measure.class);
        List<Flip> out = new ArrayList<>();
        for (Flip flip : found.get(topic)) {
            if (out.size() < MOST_LISTED && seen.add(flip.measure())) {
                out.add(flip);
            }
        }
        return out;
    }
}
