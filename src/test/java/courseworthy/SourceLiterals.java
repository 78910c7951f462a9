package courseworthy;

import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** Every string literal of the main code, from the compiler's own trees. */
final class SourceLiterals {

    /**
     * A string literal.
     *
     * @param pack    the package below the root, {@code report.json}; empty for the root
     * @param type    the file's name without its ending
     * @param line    where it is
     * @param text    what it says
     * @param callee  the method that takes it as its first argument; empty where there is none
     * @param joined  whether it is joined to something else by a plus
     */
    record Literal(String pack, String type, long line, String text, String callee, boolean joined) {
    }

    private SourceLiterals() {
    }

    static List<Literal> ofMain() throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.walk(Path.of("src", "main", "java"))) {
            files = all.filter(file -> file.toString().endsWith(".java")).sorted().toList();
        }
        List<Literal> out = new ArrayList<>();
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null)) {
            JavacTask task = (JavacTask) compiler.getTask(null, manager, null, List.of("-proc:none"), null, manager.getJavaFileObjectsFromPaths(files));
            var positions = com.sun.source.util.Trees.instance(task).getSourcePositions();
            for (CompilationUnitTree unit : task.parse()) {
                String pack = unit.getPackageName().toString().replaceFirst("courseworthy\\.?", "");
                String type = Path.of(unit.getSourceFile().getName()).getFileName().toString().replace(".java", "");
                new TreePathScanner<Void, Void>() {
                    @Override
                    public Void visitLiteral(LiteralTree literal, Void none) {
                        if (literal.getValue() instanceof String text) {
                            Tree parent = getCurrentPath().getParentPath().getLeaf();
                            long line = unit.getLineMap().getLineNumber(positions.getStartPosition(unit, literal));
                            out.add(new Literal(pack, type, line, text, callee(parent, literal), parent instanceof BinaryTree && parent.getKind() == Tree.Kind.PLUS));
                        }
                        return null;
                    }
                }.scan(unit, null);
            }
        }
        return out;
    }

    private static String callee(Tree parent, LiteralTree literal) {
        if (!(parent instanceof MethodInvocationTree call) || call.getArguments().isEmpty() || call.getArguments().get(0) != literal) {
            return "";
        }
        ExpressionTree method = call.getMethodSelect();
        return method instanceof MemberSelectTree select ? select.getIdentifier().toString() : method.toString();
    }
}
