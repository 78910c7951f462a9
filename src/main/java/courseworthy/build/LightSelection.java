package courseworthy.build;

import courseworthy.build.Build.UnmetDecision;
import courseworthy.call.Call;
import courseworthy.decision.Decision;
import courseworthy.decision.Decision.Status;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import courseworthy.workshop.PartKind;
import courseworthy.workshop.Workshop;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The lights of a build: one in front, to be seen or to see by as the call says and with the run time it asks for; one at the rear, to be
 * seen, wherever lights are called for (the local code decides what is required; common practice, no source); and where the call is a
 * backup, a second one in front to see by, apart from the first. Every choice is tried: what is missing weighs most, then a main light that
 * is known to run long enough, then what is mounted, then mass, then the order written.
 */
final class LightSelection {

    /** Places of the options of the topic lights (computing). */
    private static final int TO_BE_SEEN = 1;
    private static final int TO_SEE_BY = 2;
    private static final int WITH_A_BACKUP = 3;

    private final Part bike;
    private final long wanted;
    private final Decision lights;
    private final Decision runTime;
    private final List<Part> mounted = new ArrayList<>();
    private final List<Part> mayServe = new ArrayList<>();
    private long[] least;
    private Part main;
    private Part backup;
    private Part rear;

    private LightSelection(Call call, Workshop workshop, Part bike) {
        this.bike = bike;
        lights = settled(call, Topics.LIGHTS);
        runTime = settled(call, Topics.LIGHT_RUN_TIME);
        wanted = lights == null ? 0 : lights.value();
        for (Part part : workshop.parts()) {
            if (part.kind() == PartKind.LIGHTS && part.bike() == bike) {
                mounted.add(part);
            }
            if (part.kind() == PartKind.LIGHTS && part.owned() && part.mayServe(bike)) {
                mayServe.add(part);
            }
        }
        if (wanted >= TO_BE_SEEN) {
            choose();
        }
    }

    static LightSelection of(Call call, Workshop workshop, Part bike) {
        return new LightSelection(call, workshop, bike);
    }

    /** Null where it is not decided, or nobody spoke. */
    private static Decision settled(Call call, Topic topic) {
        for (Decision each : call.decisions()) {
            if (each.topic() == topic) {
                return each.status() == Status.SETTLED && !each.taken().isEmpty() ? each : null;
            }
        }
        return null;
    }

    private void choose() {
        for (Part front : orNone()) {
            for (Part second : wanted >= WITH_A_BACKUP ? orNone() : Arrays.asList((Part) null)) {
                for (Part behind : orNone()) {
                    if (serves(front, second, behind)) {
                        take(front, second, behind);
                    }
                }
            }
        }
    }

    private List<Part> orNone() {
        List<Part> out = new ArrayList<>(mayServe);
        out.add(null);
        return out;
    }

    private boolean serves(Part front, Part second, Part behind) {
        boolean apart = front == null || front != second && front != behind;
        return apart && (second == null || second != behind) && (front == null || isFront(front)) && (second == null || seesBy(second))
                && (behind == null || "rear".equals(behind.word(PartDetail.END)));
    }

    /** To see by is in front, if nothing else is written; to be seen may be either, and what is not written is not known. */
    private boolean isFront(Part part) {
        return seesBy(part) || wanted < TO_SEE_BY && "front".equals(part.word(PartDetail.END)) && part.has(PartDetail.LIGHT_KIND);
    }

    private static boolean seesBy(Part part) {
        return "to see by".equals(part.word(PartDetail.LIGHT_KIND)) && !"rear".equals(part.word(PartDetail.END));
    }

    private void take(Part front, Part second, Part behind) {
        long missing = (front == null ? 4 : 0) + (behind == null ? 2 : 0) + (wanted >= WITH_A_BACKUP && second == null ? 1 : 0);
        long[] cost = {missing, lasts(front), work(front) + work(second) + work(behind), grams(front) + grams(second) + grams(behind)};
        if (least == null || Arrays.compare(cost, least) < 0) {
            least = cost;
            main = front;
            backup = second;
            rear = behind;
        }
    }

    /** 0 where the main light is known to run long enough, 1 where that is not known, 2 where it does not. */
    private int lasts(Part front) {
        Double needed = needed();
        Double has = front == null ? null : front.number(PartDetail.RUN_TIME);
        return needed == null || front == null ? 0 : has == null ? 1 : has < needed - 1e-6 ? 2 : 0;
    }

    private Double needed() {
        return wanted >= TO_SEE_BY && runTime != null ? Double.valueOf(runTime.topic().resolution().base(runTime.value())) : null;
    }

    private long work(Part part) {
        return part == null || part.bike() == bike ? 0 : part.bike() == null ? 1 : 2;
    }

    private static long grams(Part part) {
        return part == null || !part.has(PartDetail.MASS) ? 0 : Math.round(part.number(PartDetail.MASS) * 1000);
    }

    /** What the bike carries: what was chosen, and what is mounted besides where lights are called for. */
    List<Part> carried() {
        List<Part> out = new ArrayList<>();
        for (Part part : new Part[] {main, backup, rear}) {
            if (part != null) {
                out.add(part);
            }
        }
        for (Part part : mounted) {
            if (!out.contains(part) && (lights == null || wanted > 0)) {
                out.add(part);
            }
        }
        return out;
    }

    /** Takes the lights to the bike, and off it where none are called for. */
    void mount(MountingState stand) {
        for (Part part : mounted) {
            stand.put(part, null);
        }
        for (Part part : carried()) {
            stand.put(part, bike);
        }
    }

    /** What a light is for, in words. */
    String serves(Part part) {
        if (part == null) {
            return "lights none";
        }
        String role = part == main ? "the main light, " : part == backup ? "the backup, apart from the main light, " : "the light at the rear, ";
        return role + "lights " + lights.text() + (part == main && needed() != null ? ", run time " + runTime.text() : "");
    }

    /** What the call wants and the workshop has not. */
    List<UnmetDecision> missing() {
        List<UnmetDecision> out = new ArrayList<>();
        if (wanted < TO_BE_SEEN) {
            return out;
        }
        String kind = wanted >= TO_SEE_BY ? "to see by" : "to be seen";
        String lasting = needed() == null ? "" : " that runs " + runTime.text() + " at the mode used";
        if (main == null) {
            out.add(new UnmetDecision(Topics.LIGHTS.name(), lights.text(), "no light " + kind + " in front", "a front light " + kind + lasting));
        } else if (lasts(main) > 0) {
            Double has = main.number(PartDetail.RUN_TIME);
            String got = has == null ? "that of " + main + " not known" : runTime.topic().text(Math.round(Math.floor(has / runTime.topic().resolution().base(1) + 1e-9)));
            out.add(new UnmetDecision(Topics.LIGHT_RUN_TIME.name(), runTime.text(), got, "a front light to see by" + lasting));
        }
        if (wanted >= WITH_A_BACKUP && backup == null) {
            out.add(new UnmetDecision(Topics.LIGHTS.name(), lights.text(), "no backup apart from the main light", "a second front light to see by"));
        }
        if (rear == null) {
            out.add(new UnmetDecision(Topics.LIGHTS.name(), lights.text(), "no light at the rear", "a rear light to be seen"));
        }
        return out;
    }
}
