package dev.penstock;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.util.TreeScanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is calculated or shown does not depend on a message, a label or a name: no text in code is looked for in another text,
 * outside of what reads files. What talks to people ({@code app}) is left out; texts held in constants are not seen.
 */
class ControlFlowOnTextTest {

    private static final Path MAIN = Path.of("src/main/java/dev/penstock").toAbsolutePath();

    private static final Set<String> ASKING =
            Set.of("contains", "startsWith", "endsWith", "equals", "equalsIgnoreCase", "matches", "indexOf");

    /** They turn files, words of a command or another process's lines into values; text is what they work on. */
    private static final Set<String> READERS = Set.of(
            "input/",
            "cycles/reading/",
            "vehicle/reading/",
            "claims/figure/",
            "claims/file/",
            "fluids/FluidModelReader.java",
            "fluids/PropellantTraitsReader.java",
            "combustion/species/SpeciesFile.java",
            "combustion/species/SpeciesLibrary.java",
            "cooling/wall/WallLibrary.java",
            "fluids/coolprop/CoolPropWorkerProcess.java",
            "reports/print/",
            "study/Axis.java",
            "study/PropellantPair.java");

    /** File, and why it may ask texts. */
    private static final Map<String, String> ALLOWED = Map.ofEntries(
            Map.entry("chamber/flow/Recombination.java", "species by their formula"),
            Map.entry("combustion/equilibrium/EquilibriumSolver.java", "species by their formula"),
            Map.entry("combustion/equilibrium/GasSnapshot.java", "species by their formula"),
            Map.entry("combustion/equilibrium/HydrazineDecomposition.java", "species by their formula"),
            Map.entry(
                    "combustion/equilibrium/StartingMixture.java", "symbols of elements are what a formula is made of"),
            Map.entry("cycles/questions/PressureTrials.java", "writes pressures in bar"),
            Map.entry("fluids/FluidLibrary.java", "what the name of a fluid's file may be made of"),
            Map.entry("fluids/store/StoreFolders.java", "the system, which Java names by a text"),
            Map.entry("provenance/CheckFigures.java", "shortens a path for people"),
            Map.entry("quantities/Units.java", "reads units"),
            Map.entry("reports/chart/DrawingFont.java", "puts the font behind the head of a drawing"),
            Map.entry("reports/chart/SvgCanvas.java", "cuts the drawing out of a document"),
            Map.entry("reports/concept/InputsAndWarnings.java", "groups inputs by their tables"),
            Map.entry("reports/text/CsvLine.java", "what a cell must quote"),
            Map.entry("reports/text/ShellWords.java", "what a word must quote"),
            Map.entry("reports/text/Software.java", "files by their ending"));

    @Test
    void nothingCalculatedDependsOnText() throws IOException {
        Map<String, Set<String>> found = new TreeMap<>(questions(MAIN));
        found.keySet()
                .removeIf(file -> file.startsWith("app/") || READERS.stream().anyMatch(file::startsWith));
        assertThat(found.keySet())
                .as("files that ask texts and are allowed to; those not here any more go from the list: %s", found)
                .isEqualTo(ALLOWED.keySet());
    }

    /** A question would be found, the other way round and in pieces too. */
    @Test
    void theScanSeesQuestions(@TempDir Path sample) throws IOException {
        Files.writeString(
                sample.resolve("Sample.java"),
                """
                class Sample { boolean f(String a) {
                return a.contains("one") || "two".equals(a) || a.equals(a + "three") || a.equals(a) || a.isEmpty(); } }
                """);
        assertThat(questions(sample).get("Sample.java"))
                .containsExactlyInAnyOrder("a.contains(\"one\")", "\"two\".equals(a)", "a.equals(a + \"three\")");
    }

    private static Map<String, Set<String>> questions(Path folder) throws IOException {
        Map<String, Set<String>> questions = new TreeMap<>();
        ParsedSources.each(
                folder,
                (file, unit) -> new TreeScanner<Void, Void>() {
                    @Override
                    public Void visitMethodInvocation(MethodInvocationTree call, Void nothing) {
                        if (asks(call)) {
                            questions
                                    .computeIfAbsent(file, f -> new TreeSet<>())
                                    .add(call.toString());
                        }
                        return super.visitMethodInvocation(call, nothing);
                    }
                }.scan(unit, null));
        return questions;
    }

    private static boolean asks(MethodInvocationTree call) {
        return call.getMethodSelect() instanceof MemberSelectTree method
                && ASKING.contains(method.getIdentifier().toString())
                && (text(method.getExpression()) || call.getArguments().stream().anyMatch(a -> text(a)));
    }

    /** A text in code, or one put together with such. Empty ones ask nothing, single marks are no words. */
    private static boolean text(ExpressionTree expression) {
        if (expression instanceof BinaryTree sum) {
            return text(sum.getLeftOperand()) || text(sum.getRightOperand());
        }
        return expression instanceof LiteralTree literal
                && literal.getValue() instanceof String value
                && value.chars().anyMatch(Character::isLetter);
    }
}
