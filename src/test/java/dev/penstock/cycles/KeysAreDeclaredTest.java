package dev.penstock.cycles;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.util.TreeScanner;
import dev.penstock.ParsedSources;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What reads a concept, a vehicle or claims, or lays an arrangement, names inputs, tables and parts by their declarations: none of the
 * calls that ask for one has a text for it.
 */
class KeysAreDeclaredTest {

    private static final Path MAIN = Path.of("src/main/java/dev/penstock").toAbsolutePath();
    private static final Set<String> FOLDERS = Set.of(
            "cycles/reading/",
            "cycles/sheet/",
            "cycles/arrangements/",
            "cycles/solving/",
            "vehicle/reading/",
            "claims/file/");
    private static final Set<String> ASKING = Set.of(
            "has",
            "table",
            "tables",
            "problem",
            "given",
            "drop",
            "valve",
            "split",
            "merge",
            "hotDuct",
            "injector",
            "component",
            "outlet",
            "step");

    /** Inputs are declared in groups, whose keys are texts there and nowhere else. */
    private static final String DECLARATION = "InputGroup.table";

    @Test
    void noReaderAndNoCycleHasATextForAKey() throws IOException {
        assertThat(texts(MAIN, true)).isEmpty();
    }

    /** A text would be found. */
    @Test
    void theScanSeesTexts(@TempDir Path sample) throws IOException {
        Files.writeString(
                sample.resolve("Sample.java"),
                "class Sample { void f(T t) { t.has(\"one\"); t.table(KEY); t.a().problem(\"two\", x); } }");
        assertThat(texts(sample, false))
                .containsExactly("Sample.java: t.a().problem(\"two\", x)", "Sample.java: t.has(\"one\")");
    }

    private static Set<String> texts(Path folder, boolean chosen) throws IOException {
        Set<String> found = new TreeSet<>();
        ParsedSources.each(folder, (file, unit) -> {
            if (chosen && FOLDERS.stream().noneMatch(file::startsWith)) {
                return;
            }
            new TreeScanner<Void, Void>() {
                @Override
                public Void visitMethodInvocation(MethodInvocationTree call, Void nothing) {
                    if (call.getMethodSelect() instanceof MemberSelectTree method
                            && ASKING.contains(method.getIdentifier().toString())
                            && !method.toString().equals(DECLARATION)
                            && call.getArguments().stream()
                                    .limit(1)
                                    .anyMatch(a ->
                                            a instanceof LiteralTree literal && literal.getValue() instanceof String)) {
                        found.add(file + ": " + call);
                    }
                    return super.visitMethodInvocation(call, nothing);
                }
            }.scan(unit, null);
        });
        return found;
    }
}
