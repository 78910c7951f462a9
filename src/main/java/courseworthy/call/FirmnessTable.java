package courseworthy.call;

import courseworthy.call.Firmness.AgreementGrade;
import courseworthy.call.Firmness.EvidenceGrade;
import courseworthy.call.Firmness.Knowledge;
import courseworthy.call.Firmness.FirmnessLevel;
import courseworthy.problem.FaultList;
import courseworthy.problem.Faults;
import courseworthy.text.FieldReader;
import courseworthy.text.Node;
import courseworthy.text.YamlReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The table of how firm a decision is. Each combination of evidence, agreement and knowledge has one row, and so has each of how firm a decision
 * is of itself and how firm what it rests on.
 *
 * @param grades      the rows for a decision by itself
 * @param foundations the rows for a decision and the one that it rests on
 */
public record FirmnessTable(List<Grade> grades, List<Foundation> foundations) {

    private static final String FILE = "rules/firmness/firmness.yaml";
    private static final int LONGEST = 400;

    public FirmnessTable {
        grades = List.copyOf(grades);
        foundations = List.copyOf(foundations);
    }

    /**
     * A row: it holds where each of its lists has what is found.
     *
     * @param because why its word follows
     */
    public record Grade(String id, List<String> evidence, List<String> agreement, List<String> knowledge, FirmnessLevel level, String because) {
        public Grade {
            evidence = List.copyOf(evidence);
            agreement = List.copyOf(agreement);
            knowledge = List.copyOf(knowledge);
        }

        boolean holds(EvidenceGrade found, AgreementGrade agreed, Knowledge known) {
            return evidence.contains(found.word()) && agreement.contains(agreed.word()) && knowledge.contains(known.word());
        }
    }

    /**
     * A row on what a decision rests on: it holds where both of its lists have what is found.
     *
     * @param itself  how firm the decision is by itself, in words
     * @param restsOn how firm the decision is that it rests on, in words
     * @param because why its word follows
     */
    public record Foundation(String id, List<String> itself, List<String> restsOn, FirmnessLevel level, String because) {
        public Foundation {
            itself = List.copyOf(itself);
            restsOn = List.copyOf(restsOn);
        }

        boolean holds(FirmnessLevel of, FirmnessLevel on) {
            return itself.contains(of.word()) && restsOn.contains(on.word());
        }
    }

    private static final class Holder {
        private static final FirmnessTable SHIPPED = read();
    }

    /** The shipped table. @throws IllegalStateException where it is missing or spoilt, which is a fault of the build */
    public static FirmnessTable shipped() {
        return Holder.SHIPPED;
    }

    private static FirmnessTable read() {
        Faults faults = new Faults();
        try (InputStream in = FirmnessTable.class.getResourceAsStream("firmness.yaml")) {
            if (in == null) {
                throw new IllegalStateException(FILE + " is not in the build");
            }
            FirmnessTable out = of(YamlReader.read(in.readAllBytes(), FILE, faults), faults);
            if (!faults.faults().isEmpty()) {
                throw new IllegalStateException(FaultList.text(faults.faults()));
            }
            return out;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static FirmnessTable of(Node.Mapping tree, Faults faults) {
        FieldReader fields = new FieldReader(FILE, tree, faults);
        fields.line("firmness", LONGEST);
        fields.line("about", LONGEST);
        List<Grade> grades = new ArrayList<>();
        for (FieldReader row : fields.blocks("grades")) {
            grades.add(new Grade(row.line("id", LONGEST), row.texts("evidence"), row.texts("agreement"), row.texts("under it"), level(row.word("firmness", words())),
                    row.line("because", LONGEST)));
            row.done();
        }
        List<Foundation> foundations = new ArrayList<>();
        for (FieldReader row : fields.blocks("foundations")) {
            foundations.add(new Foundation(row.line("id", LONGEST), row.texts("of itself"), row.texts("rests on"), level(row.word("firmness", words())),
                    row.line("because", LONGEST)));
            row.done();
        }
        fields.done();
        return new FirmnessTable(grades, foundations);
    }

    /** The words for how firm a decision is, the firmest first. */
    public static List<String> words() {
        return Arrays.stream(FirmnessLevel.values()).map(FirmnessLevel::word).toList();
    }

    private static FirmnessLevel level(String word) {
        return FirmnessLevel.values()[Math.max(0, words().indexOf(word))];
    }

    /** The row for what is found. @throws IllegalStateException where the table has none */
    public Grade grade(EvidenceGrade evidence, AgreementGrade agreement, Knowledge knowledge) {
        for (Grade each : grades) {
            if (each.holds(evidence, agreement, knowledge)) {
                return each;
            }
        }
        throw new IllegalStateException(FILE + " has nothing for " + evidence + ", " + agreement + ", " + knowledge);
    }

    /** The row for a decision that is so firm by itself and rests on one that is so firm. @throws IllegalStateException where the table has none */
    public Foundation foundation(FirmnessLevel itself, FirmnessLevel restsOn) {
        for (Foundation each : foundations) {
            if (each.holds(itself, restsOn)) {
                return each;
            }
        }
        throw new IllegalStateException(FILE + " has nothing for " + itself + " on " + restsOn);
    }
}
