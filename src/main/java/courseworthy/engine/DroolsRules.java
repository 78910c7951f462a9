package courseworthy.engine;

import static org.drools.model.PatternDSL.declarationOf;
import static org.drools.model.PatternDSL.globalOf;
import static org.drools.model.PatternDSL.on;
import static org.drools.model.PatternDSL.pattern;
import static org.drools.model.PatternDSL.rule;

import courseworthy.claim.Claim;
import courseworthy.claim.Evidence;
import courseworthy.claim.Force;
import courseworthy.claim.Rank;
import courseworthy.claim.RuleOrigin;
import courseworthy.claim.SourceLocation;
import courseworthy.demand.Demands;
import courseworthy.sheet.Row;
import courseworthy.sheet.Stage;
import courseworthy.sheet.Truth;
import courseworthy.topic.SettledTopic;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.drools.model.Global;
import org.drools.model.Model;
import org.drools.model.PatternDSL.PatternDef;
import org.drools.model.Rule;
import org.drools.model.Variable;
import org.drools.model.functions.Block2;
import org.drools.model.functions.HashedExpression;
import org.drools.model.functions.Predicate1;
import org.drools.model.impl.ModelImpl;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.definition.KiePackage;
import org.kie.api.runtime.KieSession;

/**
 * Rows and joins in one rule network. Rows become rules through the model API, with no rule text and no compiler at run time; joins
 * are compiled when the tool is built. Each row waits for the stage of the layer at which it can tell, so nothing fires early.
 */
public final class DroolsRules implements RuleSet {

    private static final String PACKAGE = "courseworthy.engine.";
    private static final String JOINS = PACKAGE + "pairing";
    private static final String COLLECTOR = "collector";

    /** From so many rows on, rows that ask alike are one rule together: each rule costs time to build and to pass over. */
    private static final int MANY = 1_000;

    private final List<Row> rows;
    /** Rows that are asked once the network has fired, whether they could not tell; none where bundles do so themselves. */
    private final Map<Integer, List<Row>> byLayer;
    private final GearPairs pairs;
    private final KieBase network;
    private final Map<String, RuleOrigin> joins;

    /**
     * Builds the network.
     *
     * @param rows  rows with unique qualified ids
     * @param shipped for the gears that exist and where joins are written
     * @throws IllegalArgumentException where two rows have one id: the network would keep only the last
     */
    public DroolsRules(List<Row> rows, ShippedRules shipped) {
        this.rows = List.copyOf(rows);
        this.byLayer = rows.size() < MANY ? ClaimEmitter.byLayer(rows) : Map.of();
        this.pairs = shipped.pairs();
        List<Model> models = CompiledDrl.models(JOINS);
        models.add(model(rows));
        this.network = KieBaseBuilder.createKieBaseFromModel(models);
        this.joins = authors(network, shipped.joins());
    }

    private static Model model(List<Row> rows) {
        ModelImpl model = new ModelImpl("rows");
        Map<Rank, Global<ClaimCollector>> globals = new EnumMap<>(Rank.class);
        Set<String> names = new HashSet<>();
        for (Row row : rows) {
            if (!names.add(row.origin().rule())) {
                throw new IllegalArgumentException("two rows " + row.origin().rule());
            }
        }
        if (rows.size() >= MANY) {
            for (RuleIndexBucket bundle : RuleIndexBucket.of(rows)) {
                model.addRule(ruleOf(bundle, globals.computeIfAbsent(bundle.rank(), rank -> global(rank, model))));
            }
            return model;
        }
        for (Row row : rows) {
            Global<ClaimCollector> collector = globals.computeIfAbsent(row.origin().rank(), rank -> global(rank, model));
            for (int layer : row.layers()) {
                model.addRule(ruleOf(row, layer, collector));
            }
        }
        return model;
    }

    private static Rule ruleOf(RuleIndexBucket bundle, Global<ClaimCollector> collector) {
        Variable<StageFact> stage = declarationOf(StageFact.class, "stage");
        LayerTest at = new LayerTest(bundle.layer());
        MayHold may = new MayHold(bundle);
        PatternDef<StageFact> pattern = pattern(stage);
        pattern.expr(at.getExpressionHash(), at);
        pattern.expr(may.getExpressionHash(), may);
        return rule(PACKAGE + bundle.rank().word(), bundle.name()).build(pattern, on(stage, collector).execute(new EmitBucket(bundle)));
    }

    /** Whether some row of a bundle may hold at a stage. */
    private record MayHold(RuleIndexBucket bundle) implements Predicate1<StageFact>, HashedExpression {
        @Override
        public boolean test(StageFact fact) {
            Stage stage = fact.stage();
            return bundle.mayHold(stage);
        }

        @Override
        public String getExpressionHash() {
            return "Stage may hold " + bundle.name();
        }
    }

    /** What a bundle does when it fires: those of its rows that hold add their claims. */
    private record EmitBucket(RuleIndexBucket bundle) implements Block2<StageFact, ClaimCollector> {
        @Override
        public void execute(StageFact fact, ClaimCollector collector) {
            Stage stage = fact.stage();
            bundle.emit(stage, collector.emitter());
        }
    }

    private static Global<ClaimCollector> global(Rank rank, ModelImpl model) {
        Global<ClaimCollector> collector = globalOf(ClaimCollector.class, PACKAGE + rank.word(), COLLECTOR);
        model.addGlobal(collector);
        return collector;
    }

    /** A row waits for the stage at which it can tell; its condition is one node, so that the network is quick to build. */
    private static Rule ruleOf(Row row, int layer, Global<ClaimCollector> collector) {
        Variable<StageFact> stage = declarationOf(StageFact.class, "stage");
        PatternDef<StageFact> pattern = pattern(stage);
        LayerTest at = new LayerTest(layer);
        pattern.expr(at.getExpressionHash(), at);
        if (!row.condition().parts().isEmpty()) {
            Holds holds = new Holds(row);
            pattern.expr(holds.getExpressionHash(), holds);
        }
        return rule(PACKAGE + row.origin().rank().word(), row.origin().rule() + " after layer " + layer)
                .build(pattern, on(stage, collector).execute(new EmitRow(row)));
    }

    /** Whether a stage is that of a layer. Named classes, not lambdas: their identity needs no inspection of byte code. */
    private record LayerTest(int layer) implements Predicate1<StageFact>, HashedExpression {
        @Override
        public boolean test(StageFact fact) {
            Stage stage = fact.stage();
            return stage.layer() == layer;
        }

        @Override
        public String getExpressionHash() {
            return "Stage layer == " + layer;
        }
    }

    /** Whether a row's condition holds at a stage. Ids of rows are unique, so the id names the expression. */
    private record Holds(Row row) implements Predicate1<StageFact>, HashedExpression {
        @Override
        public boolean test(StageFact fact) {
            Stage stage = fact.stage();
            return row.condition().on(stage) == Truth.TRUE;
        }

        @Override
        public String getExpressionHash() {
            return "Stage holds " + row.origin().rule();
        }
    }

    /** What a row does when it fires: it adds its claims. */
    private record EmitRow(Row row) implements Block2<StageFact, ClaimCollector> {
        @Override
        public void execute(StageFact fact, ClaimCollector collector) {
            Stage stage = fact.stage();
            collector.row(row, stage);
        }
    }

    /** The joins as they sign their limits, by rule name. */
    private static Map<String, RuleOrigin> authors(KieBase network, Map<String, SourceLocation> where) {
        Map<String, RuleOrigin> out = new LinkedHashMap<>();
        KiePackage joins = network.getKiePackage(JOINS);
        for (org.kie.api.definition.rule.Rule rule : joins == null ? List.<org.kie.api.definition.rule.Rule>of() : joins.getRules()) {
            Map<String, Object> data = rule.getMetaData();
            out.put(rule.getName(), new RuleOrigin("pairing/" + rule.getName(), Rank.LIMIT, 0, Force.MUST,
                    Evidence.valueOf(text(data, "evidence").toUpperCase(Locale.ROOT)), text(data, "source"), text(data, "because"),
                    where.getOrDefault(rule.getName(), new SourceLocation("rules", 0))));
        }
        return out;
    }

    private static String text(Map<String, Object> data, String key) {
        return String.valueOf(data.getOrDefault(key, ""));
    }

    /** The topic of each join, by the join's qualified id. */
    public Map<String, String> topicsOfJoins() {
        Map<String, String> out = new LinkedHashMap<>();
        for (org.kie.api.definition.rule.Rule rule : network.getKiePackage(JOINS).getRules()) {
            out.put(joins.get(rule.getName()).rule(), text(rule.getMetaData(), "topic"));
        }
        return out;
    }

    /** The joins as they sign their limits, for listing them. */
    public List<RuleOrigin> joins() {
        return List.copyOf(joins.values());
    }

    /** The rows, in the order given. */
    public List<Row> rows() {
        return rows;
    }

    /**
     * What the joins say of what is settled; without a stage no row speaks.
     *
     * @param demands for the hardest gear that the event allows
     */
    public List<Claim> joined(Demands demands, Collection<SettledTopic> settled) {
        ClaimCollector collector = new ClaimCollector(joins);
        KieSession session = network.newKieSession();
        try {
            session.setGlobal(COLLECTOR, collector);
            session.insert(pairs.within(GearPairs.allowed(demands)));
            for (SettledTopic one : settled) {
                if (one.known()) {
                    session.insert(new SettledTopicFact(one));
                }
            }
            session.fireAllRules();
            return collector.emitter().drain().claims();
        } finally {
            session.dispose();
        }
    }

    @Override
    public Firing open() {
        return new DroolsFiring();
    }

    /** One session for one asking. */
    private final class DroolsFiring implements Firing {

        private final ClaimCollector collector = new ClaimCollector(joins);
        private final KieSession session = network.newKieSession();
        private final Set<String> settled = new HashSet<>();
        private boolean begun;

        DroolsFiring() {
            session.setGlobal(COLLECTOR, collector);
        }

        @Override
        public FiringResult fire(Stage stage) {
            if (!begun) {
                begun = true;
                session.insert(pairs.within(GearPairs.allowed(stage.demands())));
            }
            for (SettledTopic one : stage.settled().values()) {
                if (one.known() && settled.add(one.topic().name())) {
                    session.insert(new SettledTopicFact(one));
                }
            }
            session.insert(new StageFact(stage));
            session.fireAllRules();
            for (Row row : byLayer.getOrDefault(stage.layer(), List.of())) {
                if (!collector.fired(row)) {
                    collector.emitter().noteIfUnknown(row, stage);
                }
            }
            return collector.emitter().drain();
        }

        @Override
        public List<UndeterminedRule> undetermined() {
            return collector.emitter().undetermined();
        }

        @Override
        public void close() {
            session.dispose();
        }
    }
}
