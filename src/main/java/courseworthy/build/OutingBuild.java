package courseworthy.build;

import courseworthy.build.Build.FittedPart;
import courseworthy.workshop.Workshop;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The build for a start of a season.
 *
 * @param from the workshop from which it was made, as far as it may be used
 */
record OutingBuild(Outing outing, Workshop from, Build build) {

    /** A build that cannot be had costs more than any other (computing). */
    private static final long NONE = BuildObjective.EMPTY * 1000;

    long loss() {
        return loss(build);
    }

    static long loss(Build build) {
        return build.bike() == null ? NONE : build.loss();
    }

    /** Names of the bike and the parts that are ridden. */
    Set<String> used() {
        return used(build);
    }

    static Set<String> used(Build build) {
        Set<String> out = new LinkedHashSet<>();
        if (build.bike() != null) {
            out.add(build.bike().name());
            for (FittedPart each : build.parts()) {
                out.add(each.part().name());
            }
        }
        return out;
    }

    /** Where everything is once some are built: what a build needs is on it, whatever another took off. */
    static Map<String, String> moved(List<OutingBuild> made) {
        Map<String, String> out = new LinkedHashMap<>();
        for (OutingBuild each : made) {
            if (each.build().after() != null) {
                Map<String, String> from = MountingState.of(each.from()).written();
                each.build().after().written().forEach((part, host) -> {
                    if (!host.equals(from.get(part))) {
                        out.put(part, host);
                    }
                });
            }
        }
        for (OutingBuild each : made) {
            if (each.build().after() != null) {
                Map<String, String> after = each.build().after().written();
                for (FittedPart fitted : each.build().parts()) {
                    out.put(fitted.part().name(), after.get(fitted.part().name()));
                }
            }
        }
        return out;
    }

    /** The ends at which the parts of some builds are mounted that could be at either, by name. */
    static Map<String, String> ends(List<OutingBuild> made) {
        Map<String, String> out = new LinkedHashMap<>();
        for (OutingBuild each : made) {
            if (each.build().after() != null) {
                Map<String, String> ends = each.build().after().ends();
                each.build().parts().forEach(fitted -> out.put(fitted.part().name(), ends.get(fitted.part().name())));
            }
        }
        return out;
    }
}
