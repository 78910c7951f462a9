package courseworthy.workshop;

import courseworthy.problem.FaultList;
import courseworthy.problem.Faults;
import courseworthy.text.FieldReader;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import courseworthy.units.Amount;
import courseworthy.units.Dimension;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/**
 * The table of what is done before what on the stand.
 *
 * @param wheelOut   kinds of work for which the wheel at that end comes out
 * @param precedence what comes before what
 * @param followUps  work that other work makes necessary
 */
public record WorkRules(List<String> wheelOut, List<Precedence> precedence, List<FollowUp> followUps) {

    public static final String WHEEL_OUT = "wheel out";
    public static final String WHEEL_IN = "wheel in";
    public static final String TEST_RIDE = "test ride";
    /** Stands for every kind of work after which something follows. */
    static final String ANY = "any";
    /** Stands for work that opens the hose of a brake: a caliper that goes on, or a part that the hose runs inside. */
    static final String HOSE_OPENED = "hose opened";
    /** Stands for the same of a brake that is pulled by a cable. */
    static final String CABLE_OPENED = "cable opened";

    private static final String FILE = "rules/stand/order.yaml";
    private static final int LONGEST = 400;
    private static final double MINUTE = 60;

    public WorkRules {
        wheelOut = List.copyOf(wheelOut);
        precedence = List.copyOf(precedence);
        followUps = List.copyOf(followUps);
    }

    /** What two jobs have in common, least first: each includes those before it. */
    public enum SharePolicy {
        NOTHING, BIKE, END, WHEEL;

        static final List<String> WORDS = List.of("nothing", "bike", "end", "wheel");
    }

    /**
     * Work that comes before other work.
     *
     * @param first kinds of work
     * @param then  kinds of work that come after each of them
     * @param share what two jobs must have in common
     * @param pause minutes between the end of the one and the start of the other, at least
     */
    public record Precedence(String id, List<String> first, List<String> then, SharePolicy share, int pause, String because) {
        public Precedence {
            first = List.copyOf(first);
            then = List.copyOf(then);
        }

        public boolean holds(String one, String other, SharePolicy common) {
            return first.contains(one) && then.contains(other) && common.compareTo(share) >= 0;
        }
    }

    /**
     * Work that is done once on a bike, or once at each end of it, after other work there.
     *
     * @param job     its kind
     * @param what    what to do; {@code END} in it is the end of the bike
     * @param after   kinds of work that it follows
     * @param share   {@code END} where it is done at each end by itself, else {@code BIKE}
     * @param minutes of work
     */
    public record FollowUp(String id, String job, String what, List<String> after, SharePolicy share, int minutes, String because) {
        public FollowUp {
            after = List.copyOf(after);
        }

        public boolean follows(String kind) {
            return after.contains(kind) || after.contains(ANY) && !kind.equals(job);
        }

        /** Whether it follows work that opens the hose of a brake. */
        public boolean followsOpenedHose() {
            return after.contains(HOSE_OPENED);
        }

        /** Whether it follows work that takes off the cable of a brake. */
        public boolean followsOpenedCable() {
            return after.contains(CABLE_OPENED);
        }
    }

    private static final class Holder {
        private static final WorkRules SHIPPED = read();
    }

    /** The shipped table. @throws IllegalStateException where it is missing or spoilt, which is a fault of the build */
    public static WorkRules shipped() {
        return Holder.SHIPPED;
    }

    private static WorkRules read() {
        Faults faults = new Faults();
        try (InputStream in = WorkRules.class.getResourceAsStream("order.yaml")) {
            if (in == null) {
                throw new IllegalStateException(FILE + " is not in the build");
            }
            WorkRules out = of(YamlReader.read(in.readAllBytes(), FILE, faults), faults);
            if (!faults.faults().isEmpty()) {
                throw new IllegalStateException(FaultList.text(faults.faults()));
            }
            return out;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static WorkRules of(Node.Mapping tree, Faults faults) {
        FieldReader fields = new FieldReader(FILE, tree, faults);
        fields.line("stand", LONGEST);
        fields.line("about", LONGEST);
        List<String> wheelOut = fields.texts("wheel out for");
        List<Precedence> precedence = new ArrayList<>();
        for (FieldReader row : fields.blocks("precedence")) {
            precedence.add(new Precedence(row.line("id", LONGEST), row.texts("first"), row.texts("then"), share(row.word("share", SharePolicy.WORDS)),
                    minutes(row.amount("wait", Dimension.TIME)), row.line("because", LONGEST)));
            row.done();
        }
        List<FollowUp> followUps = new ArrayList<>();
        for (FieldReader row : fields.blocks("follow-ups")) {
            followUps.add(new FollowUp(row.line("id", LONGEST), row.line("job", LONGEST), row.line("what", LONGEST), row.texts("after"),
                    share(row.word("share", SharePolicy.WORDS)), minutes(row.amount("minutes", Dimension.TIME)), row.line("because", LONGEST)));
            row.done();
        }
        fields.done();
        return new WorkRules(wheelOut, precedence, followUps);
    }

    static SharePolicy share(String word) {
        return SharePolicy.values()[Math.max(0, SharePolicy.WORDS.indexOf(word))];
    }

    private static int minutes(Amount amount) {
        return amount == null ? 0 : (int) Math.round(amount.inBase() / MINUTE);
    }

    /** Minutes from the end of a job to the start of another that comes after it; -1 where it need not. */
    public int wait(String one, String other, SharePolicy common) {
        int out = -1;
        for (Precedence each : precedence) {
            out = each.holds(one, other, common) ? Math.max(out, each.pause()) : out;
        }
        for (FollowUp each : followUps) {
            out = common.compareTo(each.share()) >= 0 && other.equals(each.job()) && each.follows(one) ? Math.max(out, 0) : out;
        }
        return out;
    }
}
