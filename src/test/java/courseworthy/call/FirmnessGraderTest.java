package courseworthy.call;

import static org.assertj.core.api.Assertions.assertThat;

import courseworthy.call.Firmness.AgreementGrade;
import courseworthy.call.Firmness.FirmnessLevel;
import courseworthy.claim.Claim;
import courseworthy.claim.Evidence;
import courseworthy.claim.Force;
import courseworthy.claim.Rank;
import courseworthy.claim.RuleOrigin;
import courseworthy.claim.SourceLocation;
import courseworthy.claim.TestedFact;
import courseworthy.claim.Verb;
import courseworthy.decision.Decision;
import courseworthy.decision.Settler;
import courseworthy.demand.Assumptions;
import courseworthy.demand.Demands;
import courseworthy.demand.Demands.AssumedInput;
import courseworthy.demand.Measure;
import courseworthy.demand.MeasureValue;
import courseworthy.engine.UndeterminedRule;
import courseworthy.sheet.Saying;
import courseworthy.topic.Topic;
import courseworthy.topic.Topics;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What is behind a decision, from claims as a mechanic and a coach would make them. */
class FirmnessGraderTest {

    private static final Topic WIDTH = Topics.FRONT_TYRE_WIDTH;

    private final List<Claim> claims = new ArrayList<>();
    private final List<Claim> pressures = new ArrayList<>();
    private final List<AssumedInput> assumed = new ArrayList<>();
    private final List<UndeterminedRule> unchecked = new ArrayList<>();

    /** All want 50 mm, and the frame takes 45 mm: the marking decides, and nothing is firmer, however many want something else. */
    @Test
    void aMarkedLimitIsFirmAgainstAllAdvice() {
        say("shipped/rough", Rank.SHIPPED, Evidence.PRACTICE, Verb.PREFER, 50, "roughness");
        say("shipped/novice", Rank.SHIPPED, Evidence.PRACTICE, Verb.PREFER, 50, "skill");
        say("limit/clearance", Rank.LIMIT, Evidence.PRACTICE, Verb.AT_MOST, 45, "tyre clearance");
        Firmness firmness = grade();
        assertThat(firmness.decision().value()).isEqualTo(45);
        assertThat(firmness.evidence()).isEqualTo(Firmness.EvidenceGrade.LIMIT);
        assertThat(firmness.agreement()).isEqualTo(AgreementGrade.DIVIDED);
        assertThat(firmness.level()).isEqualTo(FirmnessLevel.FIRM);
        assertThat(firmness.carriers()).extracting(claim -> claim.origin().rule()).containsExactly("limit/clearance");
    }

    /** A clearance of 60 mm says nothing for 45 mm. */
    @Test
    void aLimitThatDoesNotDecideIsNoEvidence() {
        say("limit/clearance", Rank.LIMIT, Evidence.PRACTICE, Verb.AT_MOST, 60, "tyre clearance");
        say("shipped/rough", Rank.SHIPPED, Evidence.PRACTICE, Verb.PREFER, 45, "roughness");
        assertThat(grade().evidence()).isEqualTo(Firmness.EvidenceGrade.PRACTICE);
        assertThat(grade().level()).isEqualTo(FirmnessLevel.FAIR);
    }

    /** Two rows on roughness are one habit in two steps; roughness and skill are two habits. */
    @Test
    void habitsAreIndependentWhereTheyRestOnDifferentFacts() {
        say("shipped/rough", Rank.SHIPPED, Evidence.PRACTICE, Verb.PREFER, 45, "roughness");
        say("shipped/rougher", Rank.SHIPPED, Evidence.PRACTICE, Verb.PREFER, 45, "roughness", "bike at hand");
        assertThat(grade().evidence()).isEqualTo(Firmness.EvidenceGrade.PRACTICE);
        say("shipped/novice", Rank.SHIPPED, Evidence.PRACTICE, Verb.PREFER, 45, "skill", "bike at hand");
        assertThat(grade().evidence()).isEqualTo(Firmness.EvidenceGrade.PRACTICES);
        assertThat(grade().level()).isEqualTo(FirmnessLevel.FIRM);
        say("shipped/rough-novice", Rank.SHIPPED, Evidence.PRACTICE, Verb.PREFER, 45, "skill", "roughness");
        assertThat(grade().evidence()).as("one that joins both makes one habit of them").isEqualTo(Firmness.EvidenceGrade.PRACTICE);
    }

    @Test
    void twoPeopleOnOneFactAreTwoHabits() {
        say("shipped/rough", Rank.SHIPPED, Evidence.PRACTICE, Verb.PREFER, 45, "roughness");
        say("Hill country/rough", Rank.COACH, Evidence.PRACTICE, Verb.PREFER, 45, "roughness");
        assertThat(grade().evidence()).isEqualTo(Firmness.EvidenceGrade.PRACTICES);
    }

    @Test
    void aSourceIsFirmAndAnOpinionThin() {
        say("shipped/measured", Rank.SHIPPED, Evidence.PUBLISHED, Verb.PREFER, 45, "roughness");
        assertThat(grade().level()).isEqualTo(FirmnessLevel.FIRM);
        claims.clear();
        say("coach/view", Rank.COACH, Evidence.OPINION, Verb.PREFER, 45, "roughness");
        assertThat(grade().level()).isEqualTo(FirmnessLevel.THIN);
        claims.clear();
        assertThat(grade().evidence()).isEqualTo(Firmness.EvidenceGrade.NONE);
        assertThat(grade().level()).isEqualTo(FirmnessLevel.THIN);
    }

    /** Tyres are made in 40 and 45 mm; who asks for 50 gets the nearest, and the reason for it is that asking. */
    @Test
    void whatComesNearestToTheAdviceIsLedToByIt() {
        say("shipped/measured", Rank.SHIPPED, Evidence.PUBLISHED, Verb.PREFER, 50, "roughness");
        claims.add(new Claim(origin("pairing/made", Rank.LIMIT, Evidence.PRACTICE), WIDTH, Verb.ONE_OF, List.of(40L, 45L), List.of("40 mm", "45 mm"), "what is made", List.of()));
        Firmness firmness = grade();
        assertThat(firmness.decision().value()).isEqualTo(45);
        assertThat(firmness.evidence()).isEqualTo(Firmness.EvidenceGrade.SOURCE);
        assertThat(firmness.carriers()).extracting(claim -> claim.origin().rule()).containsExactly("shipped/measured");
        claims.remove(0);
        assertThat(grade().evidence()).as("nobody asks for anything").isEqualTo(Firmness.EvidenceGrade.NONE);
    }

    /** Half for 40 mm, half for 50 mm. */
    @Test
    void dividedAdviceIsThinHoweverGood() {
        say("shipped/one", Rank.SHIPPED, Evidence.PUBLISHED, Verb.PREFER, 40, "roughness");
        say("shipped/other", Rank.SHIPPED, Evidence.PUBLISHED, Verb.PREFER, 50, "skill");
        assertThat(grade().level()).isEqualTo(FirmnessLevel.THIN);
    }

    /** Start-line mass follows from the rider's mass; what was assumed of something else does not matter. */
    @Test
    void whatWasAssumedUnderItCounts() {
        say("shipped/measured", Rank.SHIPPED, Evidence.PUBLISHED, Verb.PREFER, 45, "start-line mass");
        assumed.add(new AssumedInput("highest cadence", "100 rpm"));
        assertThat(grade().level()).isEqualTo(FirmnessLevel.FIRM);
        assumed.add(new AssumedInput("rider mass", "75 kg"));
        assertThat(grade().assumed()).containsExactly("rider mass");
        assertThat(grade().level()).isEqualTo(FirmnessLevel.FAIR);
    }

    /** A rule that cannot be checked matters where it would move the value, and only there. */
    @Test
    void whatIsUnknownCountsWhereItWouldChangeTheValue() {
        say("shipped/rough", Rank.SHIPPED, Evidence.PRACTICE, Verb.PREFER, 45, "roughness");
        unchecked.add(unchecked("shipped/agrees", WIDTH, Verb.AT_MOST, 50));
        unchecked.add(unchecked("shipped/elsewhere", Topics.REAR_TYRE_WIDTH, Verb.AT_MOST, 30));
        assertThat(grade().unknown()).isEmpty();
        assertThat(grade().level()).isEqualTo(FirmnessLevel.FAIR);
        unchecked.add(unchecked("shipped/narrower", WIDTH, Verb.AT_MOST, 40));
        assertThat(grade().unknown()).extracting(rule -> rule.origin().rule()).containsExactly("shipped/narrower");
        assertThat(grade().level()).isEqualTo(FirmnessLevel.THIN);
    }

    /** A notch of tyre width is 3 mm: a rule that would move it by two is not worth an answer. */
    @Test
    void whatIsUnknownCountsFromANotchOn() {
        say("shipped/rough", Rank.SHIPPED, Evidence.PRACTICE, Verb.PREFER, 45, "roughness");
        unchecked.add(unchecked("shipped/a-little", WIDTH, Verb.AT_MOST, 43));
        assertThat(grade().unknown()).isEmpty();
        unchecked.add(unchecked("shipped/a-notch", WIDTH, Verb.AT_MOST, 42));
        assertThat(grade().unknown()).extracting(rule -> rule.origin().rule()).containsExactly("shipped/a-notch");
    }

    /** An event that writes nothing of tyres is taken to allow any. */
    @Test
    void rulesThatTheEventDoesNotWriteAreAssumed() {
        say("shipped/measured", Rank.SHIPPED, Evidence.PUBLISHED, Verb.PREFER, 45, "roughness");
        unchecked.add(new UndeterminedRule(origin("limit/allowed", Rank.LIMIT, Evidence.PRACTICE), List.of(WIDTH.name()), List.of("tyre width allowed")));
        assertThat(grade().unknown()).isEmpty();
        assertThat(grade().assumed()).containsExactly(Assumptions.EVENT_RULES);
        assertThat(grade().level()).isEqualTo(FirmnessLevel.FAIR);
    }

    /** The common value is what a rule asks for at the least: the rule leads to it. */
    @Test
    void aBoundOnWhichTheCommonValueLiesLeadsToIt() {
        say("shipped/least", Rank.SHIPPED, Evidence.PRACTICE, Verb.AT_LEAST, WIDTH.standard(), "roughness");
        assertThat(grade().decision().value()).isEqualTo(WIDTH.standard());
        assertThat(grade().evidence()).isEqualTo(Firmness.EvidenceGrade.PRACTICE);
        claims.clear();
        say("shipped/least", Rank.SHIPPED, Evidence.PRACTICE, Verb.AT_LEAST, WIDTH.standard() - 3, "roughness");
        assertThat(grade().evidence()).isEqualTo(Firmness.EvidenceGrade.NONE);
    }

    /** The pressure goes by the width, on which advice is divided: it is no firmer, though its own advice is good. */
    @Test
    void aDecisionIsNoFirmerThanWhatItIsWorkedOutFrom() {
        say("shipped/rough", Rank.SHIPPED, Evidence.PRACTICE, Verb.PREFER, 40, "roughness");
        say("shipped/novice", Rank.SHIPPED, Evidence.PRACTICE, Verb.PREFER, 50, "skill");
        pressure("shipped/load", Evidence.PUBLISHED, 160, fact("front reference pressure", "", true));
        Firmness pressure = grade(Topics.FRONT_TYRE_PRESSURE);
        assertThat(grade().level()).isEqualTo(FirmnessLevel.THIN);
        assertThat(pressure.grade().level()).isEqualTo(FirmnessLevel.FIRM);
        assertThat(pressure.level()).isEqualTo(FirmnessLevel.THIN);
        assertThat(pressure.restsOn().decision().topic()).isEqualTo(WIDTH);
    }

    /** Another rule leads to the same pressure, and asks nothing of the tyre. */
    @Test
    void adviceApartFromWhatIsThinKeepsItFirm() {
        say("shipped/rough", Rank.SHIPPED, Evidence.PRACTICE, Verb.PREFER, 40, "roughness");
        say("shipped/novice", Rank.SHIPPED, Evidence.PRACTICE, Verb.PREFER, 50, "skill");
        pressure("shipped/load", Evidence.PRACTICE, 160, fact("front reference pressure", "", true));
        pressure("shipped/measured", Evidence.PUBLISHED, 160, fact("roughness", "so", true));
        Firmness pressure = grade(Topics.FRONT_TYRE_PRESSURE);
        assertThat(pressure.level()).isEqualTo(FirmnessLevel.FIRM);
        assertThat(pressure.restsOn()).isNull();
        assertThat(pressure.carriers()).extracting(claim -> claim.origin().rule()).containsExactly("shipped/measured");
    }

    /** Half the advice is for 40 mm and half for 50: a rule for tyres of 35 mm and more holds for both, one for 45 and more does not. */
    @Test
    void aTestThatHoldsForAllThatIsAdvisedDoesNotRestOnIt() {
        say("shipped/rough", Rank.SHIPPED, Evidence.PRACTICE, Verb.PREFER, 40, "roughness");
        say("shipped/novice", Rank.SHIPPED, Evidence.PRACTICE, Verb.PREFER, 50, "skill");
        long width = grade().decision().value();
        pressure("shipped/any", Evidence.PUBLISHED, 160, fact("decided: front tyre width", "at least 35 mm", true));
        assertThat(grade(Topics.FRONT_TYRE_PRESSURE).level()).isEqualTo(FirmnessLevel.FIRM);
        pressures.clear();
        pressure("shipped/one", Evidence.PUBLISHED, 160, fact("decided: front tyre width", "at least 45 mm", width >= 45));
        assertThat(grade(Topics.FRONT_TYRE_PRESSURE).level()).isEqualTo(FirmnessLevel.THIN);
    }

    /** Nobody says anything about the width, so nothing else is thought of. */
    @Test
    void aCommonValueThatNobodyQuestionsLowersNothing() {
        pressure("shipped/load", Evidence.PUBLISHED, 160, fact("front reference pressure", "", true));
        assertThat(grade().level()).isEqualTo(FirmnessLevel.THIN);
        assertThat(grade(Topics.FRONT_TYRE_PRESSURE).level()).isEqualTo(FirmnessLevel.FIRM);
    }

    /** Most advice is for the hardtail at hand, some for gravel: the width is said of that hardtail. Of a bike that has still to be found it is less firm. */
    @Test
    void theBikeAtHandIsAFactWhereItIsRidden() {
        String hardtail = "cross-country hardtail";
        say("shipped/width", Rank.SHIPPED, Evidence.PUBLISHED, Verb.PREFER, 50, List.of(fact("decided: bike", hardtail, true)));
        List<Claim> bikes = List.of(bike("shipped/own", hardtail), bike("shipped/trails", hardtail), bike("coach/gravel", "gravel"));
        List<Decision> decisions = List.of(Settler.settle(Topics.BIKE, bikes), Settler.settle(WIDTH, claims));
        assertThat(decisions.get(0).text()).isEqualTo(hardtail);
        Demands atHand = new Demands(Map.of(Measure.BIKE_AT_HAND, MeasureValue.exact(decisions.get(0).value())), List.of(), assumed);
        assertThat(FirmnessGrader.on(new Call(atHand, decisions, List.of(), List.of()), WIDTH).level()).isEqualTo(FirmnessLevel.FIRM);
        Demands noBike = new Demands(Map.of(), List.of(), assumed);
        assertThat(FirmnessGrader.on(new Call(noBike, decisions, List.of(), List.of()), WIDTH).level()).isEqualTo(FirmnessLevel.FAIR);
    }

    private static Claim bike(String rule, String kind) {
        return Claim.of(origin(rule, Rank.SHIPPED, Evidence.PRACTICE), Topics.BIKE, Verb.PREFER, Topics.BIKE.options().indexOf(kind), kind, List.of());
    }

    private void pressure(String rule, Evidence evidence, long value, TestedFact fact) {
        pressures.add(Claim.of(origin(rule, Rank.SHIPPED, evidence), Topics.FRONT_TYRE_PRESSURE, Verb.PREFER, value, value + " kPa", List.of(fact)));
    }

    private static TestedFact fact(String measure, String test, boolean met) {
        return new TestedFact(measure, "so", null, "", test, met, false);
    }

    private Firmness grade(Topic topic) {
        List<Decision> decisions = List.of(Settler.settle(WIDTH, claims), Settler.settle(Topics.FRONT_TYRE_PRESSURE, pressures));
        return FirmnessGrader.on(new Call(new Demands(Map.of(), List.of(), assumed), decisions, List.of(), unchecked), topic);
    }

    private Firmness grade() {
        List<Decision> decisions = List.of(Settler.settle(WIDTH, claims));
        return FirmnessGrader.on(new Call(new Demands(Map.of(), List.of(), assumed), decisions, List.of(), unchecked), WIDTH);
    }

    private void say(String rule, Rank rank, Evidence evidence, Verb verb, long value, String... facts) {
        List<TestedFact> grounds = new ArrayList<>();
        for (String fact : facts) {
            grounds.add(new TestedFact(fact, "so", null, "", "so", true, false));
        }
        say(rule, rank, evidence, verb, value, grounds);
    }

    private void say(String rule, Rank rank, Evidence evidence, Verb verb, long value, List<TestedFact> grounds) {
        claims.add(Claim.of(origin(rule, rank, evidence), WIDTH, verb, value, value + " mm", grounds));
    }

    private static UndeterminedRule unchecked(String rule, Topic topic, Verb verb, long value) {
        Saying saying = new Saying(topic, verb, new Saying.Literal(value), value + " mm");
        return new UndeterminedRule(origin(rule, Rank.SHIPPED, Evidence.PRACTICE), List.of(topic.name()), List.of("sand"), List.of(saying));
    }

    private static RuleOrigin origin(String rule, Rank rank, Evidence evidence) {
        return new RuleOrigin(rule, rank, 0, rank == Rank.LIMIT ? Force.MUST : Force.SHOULD, evidence, "", "So.", new SourceLocation("a.yaml", 1));
    }
}
