package courseworthy.fit;

import courseworthy.fit.FitCases.FitCase;
import courseworthy.problem.Faults;
import courseworthy.sheet.RulesFolder;
import courseworthy.workshop.Part;
import courseworthy.workshop.PartDetail;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** The keys of a workshop that the cases of fit rules turn on. {@link FitCasesTest} moves each of them, and a case comes out otherwise. */
public final class FitCaseKeys {

    private static final Path RULES = Path.of("rules");

    private FitCaseKeys() {
    }

    static List<FitCase> cases(Faults faults) {
        List<FitCase> out = new ArrayList<>();
        for (Path drl : RulesFolder.files(RULES.resolve("fit"), ".drl")) {
            String name = drl.getFileName().toString().replace(".drl", ".cases.yaml");
            out.addAll(FitCases.read(drl.resolveSibling(name), "rules/fit/" + name, faults));
        }
        return out;
    }

    /** Of each kind of part, as {@code parts/tyre/width}, and of bikes, as {@code bikes/head angle}. */
    public static Set<String> all() {
        Set<String> out = new TreeSet<>();
        for (FitCase each : cases(new Faults())) {
            for (Map.Entry<String, Part> placed : each.parts().entrySet()) {
                Part part = placed.getValue();
                String path = placed.getKey().equals(FitCases.BIKE) ? "bikes/" : "parts/" + part.kind().word() + "/";
                for (PartDetail detail : part.kind().details()) {
                    if (part.has(detail) && FitCasesTest.isMoved(detail)) {
                        out.add(path + detail.written());
                    }
                }
            }
        }
        return out;
    }
}
