package courseworthy.rulebase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.drools.model.PatternDSL.globalOf;
import static org.drools.model.PatternDSL.on;
import static org.drools.model.PatternDSL.pattern;
import static org.drools.model.PatternDSL.rule;
import static org.drools.model.PatternDSL.declarationOf;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.drools.model.Global;
import org.drools.model.Model;
import org.drools.model.Rule;
import org.drools.model.Variable;
import org.drools.model.impl.ModelImpl;
import org.drools.modelcompiler.KieBaseBuilder;
import org.junit.jupiter.api.Test;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSession;

/** Rules compiled from DRL at build time and rules made at run time live in one KieBase. */
class TwoKindsOfRuleTest {

    private static final String COMPILED_MODELS = "/META-INF/kie/courseworthy/courseworthy/drools-model";

    @Test
    void bothKindsFireInOneSession() throws Exception {
        List<Model> models = new ArrayList<>(compiledModels());
        models.add(madeAtRunTime());
        KieBase rules = KieBaseBuilder.createKieBaseFromModel(models);
        List<String> said = new ArrayList<>();
        KieSession session = rules.newKieSession();
        try {
            session.setGlobal("said", said);
            session.insert(3);
            session.insert(4);
            session.fireAllRules();
        } finally {
            session.dispose();
        }
        assertThat(said).containsExactlyInAnyOrder("compiled 4", "made 3", "made 4");
    }

    private static Model madeAtRunTime() {
        Global<?> said = globalOf(List.class, "courseworthy.rulebase.joins", "said");
        Variable<Integer> number = declarationOf(Integer.class, "number");
        @SuppressWarnings("unchecked")
        Rule above = rule("courseworthy.rulebase.joins", "made: above two").build(
                pattern(number).expr("Integer intValue > 2", n -> n > 2),
                on(number, said).execute((n, out) -> ((List<String>) out).add("made " + n)));
        return new ModelImpl().addRule(above).addGlobal(said);
    }

    private static List<Model> compiledModels() throws IOException, ReflectiveOperationException {
        List<Model> models = new ArrayList<>();
        try (InputStream in = TwoKindsOfRuleTest.class.getResourceAsStream(COMPILED_MODELS)) {
            assertThat(in).as(COMPILED_MODELS).isNotNull();
            for (String name : new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n")) {
                if (!name.isBlank() && !name.startsWith("Drools-Model-Version")) {
                    models.add((Model) Class.forName(name.trim()).getDeclaredConstructor().newInstance());
                }
            }
        }
        assertThat(models).isNotEmpty();
        return models;
    }
}
