package jarwise;

import static javax.lang.model.element.Modifier.STATIC;
import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LineMap;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/** Files, methods and packages stay small enough to be read in one go. There are no exceptions. */
class SourceSizeTest {

    private static final int JAVA_FILE_LINES = 400;
    private static final int METHOD_LINES = 40;
    private static final int PARAMETERS = 6;
    private static final int FILES_IN_A_PACKAGE = 20;
    private static final int SCRIPT_LINES = 150;
    private static final int STYLESHEET_LINES = 200;
    private static final int LINE_WIDTH = 100;

    @Test
    void filesAreShort() {
        List<String> offenders = new ArrayList<>();
        offenders.addAll(longerThan(JAVA_FILE_LINES, Sources.files(Sources.MAIN, ".java")));
        offenders.addAll(longerThan(JAVA_FILE_LINES, Sources.files(Sources.TESTS, ".java")));
        offenders.addAll(longerThan(SCRIPT_LINES, Sources.files(Sources.RESOURCES, ".js")));
        offenders.addAll(longerThan(STYLESHEET_LINES, Sources.files(Sources.RESOURCES, ".css")));

        assertThat(offenders).isEmpty();
    }

    @Test
    void linesOfTheProgramFitOnAPage() {
        List<String> offenders = new ArrayList<>();
        for (Path file :
                Stream.of(
                                Sources.files(Sources.MAIN, ".java"),
                                Sources.files(Sources.RESOURCES, ".js"),
                                Sources.files(Sources.RESOURCES, ".css"))
                        .flatMap(List::stream)
                        .toList()) {
            List<String> lines = Sources.lines(file);
            for (int i = 0; i < lines.size(); i++) {
                if (lines.get(i).length() > LINE_WIDTH) {
                    offenders.add(file + ":" + (i + 1));
                }
            }
        }

        assertThat(offenders).isEmpty();
    }

    @Test
    void packagesHoldFewFiles() {
        Map<Path, Long> filesOfPackage =
                Sources.files(Sources.MAIN, ".java").stream()
                        .filter(file -> !file.endsWith("package-info.java"))
                        .collect(
                                Collectors.groupingBy(
                                        Path::getParent, TreeMap::new, Collectors.counting()));
        filesOfPackage.values().removeIf(number -> number <= FILES_IN_A_PACKAGE);

        assertThat(filesOfPackage).isEmpty();
    }

    @Test
    void methodsAreShortAndTakeFewParameters() throws IOException {
        List<Path> sources = new ArrayList<>(Sources.files(Sources.MAIN, ".java"));
        sources.addAll(Sources.files(Sources.TESTS, ".java"));

        assertThat(oversizedMethods(sources)).isEmpty();
    }

    @Test
    void everyPackageSaysWhatItIsForAndIsCheckedForNull() {
        List<Path> offenders = new ArrayList<>();
        for (Path folder :
                Sources.files(Sources.MAIN, ".java").stream()
                        .map(Path::getParent)
                        .distinct()
                        .toList()) {
            Path info = folder.resolve("package-info.java");
            String text = Files.exists(info) ? Sources.text(info) : "";
            if (!text.contains("/**") || !text.contains("@NullMarked")) {
                offenders.add(info);
            }
        }

        assertThat(offenders).isEmpty();
    }

    private static List<String> longerThan(int limit, List<Path> files) {
        List<String> offenders = new ArrayList<>();
        for (Path file : files) {
            int lines = Sources.lines(file).size();
            if (lines > limit) {
                offenders.add(file + ": " + lines + " lines, at most " + limit);
            }
        }
        return offenders;
    }

    private static List<String> oversizedMethods(List<Path> sources) throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        List<String> offenders = new ArrayList<>();
        try (StandardJavaFileManager manager =
                compiler.getStandardFileManager(null, null, StandardCharsets.UTF_8)) {
            JavacTask task =
                    (JavacTask)
                            compiler.getTask(
                                    null,
                                    manager,
                                    null,
                                    List.of("-proc:none"),
                                    null,
                                    manager.getJavaFileObjectsFromPaths(sources));
            SourcePositions positions = Trees.instance(task).getSourcePositions();
            for (CompilationUnitTree unit : task.parse()) {
                new MethodMeter(unit, positions, offenders).scan(unit, null);
            }
        }
        return offenders;
    }

    /** Measures every method of one file. */
    private static final class MethodMeter extends TreeScanner<Void, Void> {

        private final CompilationUnitTree unit;
        private final SourcePositions positions;
        private final List<String> offenders;
        private String type = "";
        private int recordComponents = -1;

        MethodMeter(CompilationUnitTree unit, SourcePositions positions, List<String> offenders) {
            this.unit = unit;
            this.positions = positions;
            this.offenders = offenders;
        }

        @Override
        public Void visitClass(ClassTree node, Void nothing) {
            String outerType = type;
            int outerComponents = recordComponents;
            type = node.getSimpleName().toString();
            recordComponents = node.getKind() == Tree.Kind.RECORD ? componentsOf(node) : -1;
            super.visitClass(node, null);
            type = outerType;
            recordComponents = outerComponents;
            return null;
        }

        private static int componentsOf(ClassTree node) {
            return (int)
                    node.getMembers().stream()
                            .filter(VariableTree.class::isInstance)
                            .map(VariableTree.class::cast)
                            .filter(field -> !field.getModifiers().getFlags().contains(STATIC))
                            .count();
        }

        @Override
        public Void visitMethod(MethodTree method, Void nothing) {
            LineMap lines = unit.getLineMap();
            long first = lines.getLineNumber(positions.getStartPosition(unit, method));
            long last = lines.getLineNumber(positions.getEndPosition(unit, method));
            String name = "%s:%d %s".formatted(unit.getSourceFile().getName(), first, type);
            name += "." + method.getName();
            if (last - first + 1 > METHOD_LINES) {
                offenders.add("%s: %d lines".formatted(name, last - first + 1));
            }
            int parameters = method.getParameters().size();
            if (parameters > PARAMETERS && !makesRecord(method)) {
                offenders.add("%s: %d parameters".formatted(name, parameters));
            }
            return super.visitMethod(method, null);
        }

        /** A record is what many parameters become; its own constructor takes them all. */
        private boolean makesRecord(MethodTree method) {
            return method.getName().contentEquals("<init>")
                    && method.getParameters().size() == recordComponents;
        }
    }
}
