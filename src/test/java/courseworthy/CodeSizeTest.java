package courseworthy;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LineMap;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Files, methods and lists of parameters stay small enough to be seen whole; sizes are those of the compiler's own trees. */
class CodeSizeTest {

    private static final int MOST_LINES_OF_A_FILE = 500;
    private static final int MOST_LINES_OF_A_METHOD = 40;
    private static final int MOST_PARAMETERS = 10;

    /** One loop, run for every piece of every ride: kept whole, since calls in it cost a cold run more than anything else does. */
    private static final List<String> METHODS_KEPT_WHOLE = List.of("RideSimulator.ride");

    private static final List<String> LONG_FILES = new ArrayList<>();
    private static final List<String> LONG_METHODS = new ArrayList<>();
    private static final List<String> MANY_PARAMETERS = new ArrayList<>();
    private static final Set<String> BUILT = new HashSet<>();
    private static int methods;

    @BeforeAll
    static void measure() throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.walk(Path.of("src", "main", "java"))) {
            files = all.filter(file -> file.toString().endsWith(".java")).sorted().toList();
        }
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null)) {
            JavacTask task = (JavacTask) compiler.getTask(null, manager, null, List.of("-proc:none"), null, manager.getJavaFileObjectsFromPaths(files));
            SourcePositions positions = Trees.instance(task).getSourcePositions();
            for (CompilationUnitTree unit : task.parse()) {
                String name = Path.of(unit.getSourceFile().getName()).getFileName().toString();
                long lines = unit.getLineMap().getLineNumber(positions.getEndPosition(unit, unit));
                if (lines > MOST_LINES_OF_A_FILE) {
                    LONG_FILES.add(name + " " + lines);
                }
                new Sizes(unit, positions).scan(unit, name);
            }
        }
    }

    @Test
    void noFileIsTooLong() {
        assertThat(LONG_FILES).isEmpty();
    }

    @Test
    void noMethodIsTooLong() {
        assertThat(methods).isGreaterThan(3000);
        assertThat(LONG_METHODS).isSubsetOf(METHODS_KEPT_WHOLE);
    }

    /** Where there are more, a builder names each as it is given. */
    @Test
    void noTypeTakesManyParametersWithoutABuilder() {
        assertThat(MANY_PARAMETERS).isEmpty();
    }

    private static final class Sizes extends TreeScanner<Void, String> {

        private final CompilationUnitTree unit;
        private final SourcePositions positions;

        Sizes(CompilationUnitTree unit, SourcePositions positions) {
            this.unit = unit;
            this.positions = positions;
        }

        @Override
        public Void visitClass(ClassTree type, String in) {
            long components = type.getKind() != Tree.Kind.RECORD ? 0 : type.getMembers().stream().filter(Sizes::isComponent).count();
            boolean builder = type.getMembers().stream().anyMatch(each -> each instanceof ClassTree nested && nested.getSimpleName().contentEquals("Builder"));
            if (builder) {
                BUILT.add(type.getSimpleName().toString());
            }
            if (components > MOST_PARAMETERS && !builder) {
                MANY_PARAMETERS.add(type.getSimpleName().toString());
            }
            return super.visitClass(type, type.getSimpleName().toString());
        }

        private static boolean isComponent(Tree member) {
            return member instanceof com.sun.source.tree.VariableTree field && !field.getModifiers().getFlags().contains(Modifier.STATIC);
        }

        @Override
        public Void visitMethod(MethodTree method, String in) {
            methods++;
            LineMap map = unit.getLineMap();
            if (method.getBody() != null) {
                long from = map.getLineNumber(positions.getStartPosition(unit, method.getBody()));
                long to = map.getLineNumber(Math.max(positions.getEndPosition(unit, method.getBody()), 1));
                if (to - from + 1 > MOST_LINES_OF_A_METHOD) {
                    LONG_METHODS.add(in + "." + method.getName());
                }
            }
            if (method.getReturnType() == null && method.getParameters().size() > MOST_PARAMETERS && !in.equals("Builder") && !BUILT.contains(in)) {
                MANY_PARAMETERS.add(in);
            }
            return super.visitMethod(method, in);
        }
    }
}
