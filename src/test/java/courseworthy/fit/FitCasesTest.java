package courseworthy.fit;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.fit.FitCases.FitCase;
import courseworthy.fit.FitResult.FitVerdict;
import courseworthy.problem.Fault;
import courseworthy.problem.Faults;
import courseworthy.sheet.RulesFolder;
import courseworthy.workshop.MountingPlace;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Every rule of fit against the cases beside it, on the network and on the plain table, and whether the cases would see a limit move. */
class FitCasesTest {

    private static final Path RULES = Path.of("rules");
    private static final FitRules NETWORK = FitRules.load();
    private static final Faults FAULTS = new Faults();
    private static final List<FitCase> CASES = FitCaseKeys.cases(FAULTS);

    /** Nothing is ever unknown to them: what is not written of travel or drop forbids nothing. */
    private static final Set<String> NEVER_UNKNOWN = Set.of("front-and-rear-travel", "marked-category");
    /** They turn the figure that is told and no limit: held against published figures in FittingTest. */
    private static final Set<PartDetail> ONLY_TOLD = Set.of(PartDetail.HEAD_ANGLE, PartDetail.WHEELBASE, PartDetail.DESIGN_FORK_LENGTH);

    /** Whether {@link #aLimitThatMovesIsSeen} moves a figure wherever it stands. */
    static boolean isMoved(PartDetail detail) {
        boolean step = detail.form() != PartDetail.Form.DAY && detail.form() != PartDetail.Form.SIZES;
        return step && detail != PartDetail.END && !ONLY_TOLD.contains(detail);
    }

    @Test
    void theCasesCanBeRead() {
        assertThat(FAULTS.faults().stream().map(Fault::text)).isEmpty();
        for (Path cases : RulesFolder.files(RULES.resolve("fit"), ".cases.yaml")) {
            assertThat(Files.exists(cases.resolveSibling(cases.getFileName().toString().replace(".cases.yaml", ".drl")))).isTrue();
        }
    }

    /** One that fits, one that does not, one that is unknown, and each beside the rule's own source. */
    @Test
    void everyRuleHasItsCases() {
        List<String> wrong = new ArrayList<>();
        NETWORK.authors().forEach((rule, author) -> {
            List<FitCase> cases = CASES.stream().filter(each -> each.rule().equals(rule)).toList();
            Set<FitVerdict> results = cases.stream().map(FitCase::result).collect(Collectors.toSet());
            if (!results.contains(FitVerdict.FITS) || !results.contains(FitVerdict.DOES_NOT_FIT) && !results.contains(FitVerdict.FLAGGED)
                    || !results.contains(FitVerdict.UNKNOWN) && !NEVER_UNKNOWN.contains(rule)) {
                wrong.add(rule + " has " + new TreeSet<>(results));
            }
            cases.stream().filter(each -> !each.where().file().equals(author.where().file().replace(".drl", ".cases.yaml")))
                    .forEach(each -> wrong.add(rule + " is not beside its cases"));
        });
        CASES.stream().filter(each -> !NETWORK.authors().containsKey(each.rule())).forEach(each -> wrong.add("no rule " + each.rule()));
        assertThat(wrong).isEmpty();
    }

    @Test
    void everyCaseHoldsOnTheTableAndInTheNetwork() {
        List<String> wrong = new ArrayList<>();
        for (FitCase each : CASES) {
            String wanted = each.result() + " " + each.says();
            String table = words(table(each));
            String network = words(network(each));
            if (!table.equals(wanted) || !network.equals(wanted)) {
                wrong.add(each.where() + ": " + each.name() + ": wanted " + wanted + ", table " + table + ", network " + network);
            }
        }
        assertThat(wrong).isEmpty();
    }

    /** What holds for the front wheel holds for the rear one where the rule speaks of both. */
    @Test
    void everyCaseHoldsAtTheOtherEnd() {
        List<String> wrong = new ArrayList<>();
        int mirrored = 0;
        for (FitCase each : CASES) {
            Map<String, Part> parts = new LinkedHashMap<>();
            each.parts().forEach((place, part) -> parts.put(place.replace("front ", "rear "), part));
            boolean both = each.parts().keySet().stream().anyMatch(place -> place.startsWith("front "))
                    && each.parts().keySet().stream().noneMatch(place -> place.startsWith("rear ") || place.equals("fork"));
            if (both) {
                mirrored++;
                FitCase other = each.with(parts, each.load());
                String wanted = each.result() + " " + each.says();
                if (!words(table(other)).equals(wanted) || !words(network(other)).equals(wanted)) {
                    wrong.add(each.where() + ": " + each.name() + " at the rear: " + words(table(other)) + ", " + words(network(other)));
                }
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(mirrored).isGreaterThan(30);
    }

    /**
     * A limit moved by a step against its figure is a figure moved by a step against its limit: for each rule, each figure in its cases is
     * moved up and down by a step in all of them, each label changed, each list cut; each time a case must come out otherwise.
     */
    @Test
    void aLimitThatMovesIsSeen() {
        List<String> unseen = new ArrayList<>();
        int moves = 0;
        for (String rule : NETWORK.authors().keySet()) {
            List<FitCase> cases = CASES.stream().filter(each -> each.rule().equals(rule)).toList();
            for (String place : places(cases)) {
                for (PartDetail detail : details(cases, place)) {
                    for (boolean up : new boolean[] {true, false}) {
                        moves++;
                        if (cases.stream().noneMatch(each -> sees(each, changed(each, place, part -> moved(part, detail, up)), each.load()))) {
                            unseen.add(rule + ": " + detail.written() + " of " + place + (up ? " up" : " down"));
                        }
                    }
                }
            }
            moves += loads(rule, cases, unseen);
        }
        assertThat(unseen).isEmpty();
        assertThat(moves).isGreaterThan(200);
    }

    private static int loads(String rule, List<FitCase> cases, List<String> unseen) {
        Map<String, UnaryOperator<BuildLoad>> moves = new LinkedHashMap<>();
        if (cases.stream().anyMatch(each -> each.load().system() != null)) {
            moves.put("system up", load -> new BuildLoad(load.rider(), plus(load.system(), 1), load.ledge()));
            moves.put("system down", load -> new BuildLoad(load.rider(), plus(load.system(), -1), load.ledge()));
            moves.put("rider up", load -> new BuildLoad(plus(load.rider(), 1), load.system(), load.ledge()));
            moves.put("rider down", load -> new BuildLoad(plus(load.rider(), -1), load.system(), load.ledge()));
        }
        if (cases.stream().anyMatch(each -> each.load().ledge() != null)) {
            moves.put("ledge up", load -> new BuildLoad(load.rider(), load.system(), plus(load.ledge(), 0.01)));
            moves.put("ledge down", load -> new BuildLoad(load.rider(), load.system(), plus(load.ledge(), -0.01)));
        }
        moves.forEach((name, move) -> {
            if (cases.stream().noneMatch(each -> sees(each, each.parts(), move.apply(each.load())))) {
                unseen.add(rule + ": " + name);
            }
        });
        return moves.size();
    }

    private static Double plus(Double value, double more) {
        return value == null ? null : Double.valueOf(value + more);
    }

    /** Figures in what is told move with it; the finding and the other words must not stay. */
    private static boolean sees(FitCase one, Map<String, Part> parts, BuildLoad load) {
        return !withoutFigures(words(table(one))).equals(withoutFigures(words(table(one.with(parts, load)))));
    }

    private static String withoutFigures(String words) {
        return words.replaceAll("[0-9.]+", "#");
    }

    private static Set<String> places(List<FitCase> cases) {
        Set<String> out = new TreeSet<>();
        cases.forEach(each -> out.addAll(each.parts().keySet()));
        return out;
    }

    private static Set<PartDetail> details(List<FitCase> cases, String place) {
        Set<PartDetail> out = new TreeSet<>();
        for (FitCase each : cases) {
            Part part = each.parts().get(place);
            if (part != null) {
                part.kind().details().stream().filter(part::has).filter(FitCasesTest::isMoved).forEach(out::add);
            }
        }
        return out;
    }

    private static Map<String, Part> changed(FitCase one, String place, UnaryOperator<Part> change) {
        Map<String, Part> out = new LinkedHashMap<>(one.parts());
        out.computeIfPresent(place, (key, part) -> change.apply(part));
        return out;
    }

    private static Part moved(Part part, PartDetail moved, boolean up) {
        Map<PartDetail, Object> details = new EnumMap<>(PartDetail.class);
        for (PartDetail detail : part.kind().details()) {
            if (part.has(detail)) {
                Object value = value(part, detail);
                details.put(detail, detail == moved ? moved(detail, value, up ? 1 : -1) : value);
            }
        }
        return new Part(part.name(), part.kind(), part.line(), details);
    }

    private static Object value(Part part, PartDetail detail) {
        return switch (detail.form()) {
            case AMOUNT, NUMBER, WHOLE -> part.number(detail);
            case YES_NO -> part.yes(detail);
            case WORD, LABEL -> part.word(detail);
            case WORDS, LABELS -> part.words(detail);
            case TEETH -> part.teeth(detail);
            case DAY -> part.day(detail);
            case SIZES -> part.sizes(detail);
            case INTERVALS -> part.intervals();
            case CLEARANCES -> part.clearance(0.622);
            case CHART -> part.chart(detail);
        };
    }

    /** A step: 1 mm (0.1 mm of a post), 1 kg, one tooth or sprocket, two links, the next word, another label, a list without its first, yes for no. */
    private static Object moved(PartDetail detail, Object value, int way) {
        return switch (detail.form()) {
            case AMOUNT -> (Double) value + way * step(detail);
            case NUMBER, WHOLE -> (Double) value + way * (detail == PartDetail.LINKS ? 2 : 1);
            case YES_NO -> !(Boolean) value;
            case WORD -> {
                List<String> words = detail.words();
                yield words.get(Math.floorMod(words.indexOf(value) + way, words.size()));
            }
            case LABEL -> value + " of another kind";
            case WORDS, LABELS -> ((List<?>) value).subList(1, ((List<?>) value).size());
            case TEETH -> teeth(detail, (int[]) value, way);
            case CLEARANCES -> List.of(new Part.Clearance(0.622, (Double) value + way * 0.001));
            case DAY, SIZES, INTERVALS, CHART -> value;
        };
    }

    /** One sprocket more or less at the large end; one tooth more or less on the largest ring. */
    private static int[] teeth(PartDetail detail, int[] value, int way) {
        int[] out = Arrays.copyOf(value, detail == PartDetail.SPROCKETS ? value.length + way : value.length);
        if (detail == PartDetail.TEETH) {
            out[0] += way;
        } else if (way > 0) {
            out[value.length] = value[value.length - 1] + 4;
        }
        return out;
    }

    private static double step(PartDetail detail) {
        return switch (detail) {
            case MASS_LIMIT, RIDER_LIMIT -> 1;
            case POST_DIAMETER -> 0.0001;
            case LEDGE_LIMIT -> 0.01;
            default -> 0.001;
        };
    }

    private static Map<MountingPlace, Part> mounted(FitCase one) {
        Map<MountingPlace, Part> out = new EnumMap<>(MountingPlace.class);
        one.parts().forEach((place, part) -> {
            if (!place.equals(FitCases.BIKE)) {
                out.put(FitCases.place(place), part);
            }
        });
        return out;
    }

    /** The worst that the rule finds anywhere. */
    private static FitResult table(FitCase one) {
        FitResult worst = FitResult.FITS;
        for (FitChecks.Check check : FitChecks.all()) {
            if (check.rule().equals(one.rule())) {
                worst = worse(worst, check.on(one.parts().get(FitCases.BIKE), one.load(), mounted(one)));
            }
        }
        return worst;
    }

    private static FitResult network(FitCase one) {
        FitResult worst = FitResult.FITS;
        for (FitFindings.FitFinding finding : NETWORK.on(one.parts().get(FitCases.BIKE), mounted(one), one.load())) {
            if (finding.origin().rule().equals("fit/" + one.rule())) {
                worst = worse(worst, finding.fit());
            }
        }
        return worst;
    }

    private static FitResult worse(FitResult one, FitResult other) {
        return other.result().compareTo(one.result()) > 0 || other.result() == one.result() && one.words().isEmpty() ? other : one;
    }

    private static String words(FitResult fit) {
        return fit.result() + " " + fit.words();
    }
}
