package courseworthy.engine;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.drools.model.Model;

/** The DRL that was compiled into model classes when the tool was built, a package at a time, so that a run loads what it fires. */
public final class CompiledDrl {

    private static final String LISTED = "/META-INF/kie/courseworthy/courseworthy/drools-model";

    private CompiledDrl() {
    }

    /** The models of a package of rules. */
    public static List<Model> models(String rulePackage) {
        List<Model> out = new ArrayList<>();
        try (InputStream in = CompiledDrl.class.getResourceAsStream(LISTED)) {
            if (in == null) {
                throw new IllegalStateException("the compiled rules are missing: " + LISTED);
            }
            for (String name : new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n")) {
                if (name.startsWith(rulePackage + ".")) {
                    out.add((Model) Class.forName(name.trim()).getDeclaredConstructor().newInstance());
                }
            }
            return out;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}
