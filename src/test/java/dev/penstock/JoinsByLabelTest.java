package dev.penstock;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.ExpressionTree;
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
 * Parts of an engine are joined by their keys, never by what people read: no label, title or name of one thing is compared with
 * that of another outside of what reads files and talks to people.
 */
class JoinsByLabelTest {

    private static final Path MAIN = Path.of("src/main/java/dev/penstock").toAbsolutePath();

    private static final Set<String> COMPARING = Set.of("equals", "contains", "startsWith", "endsWith");
    private static final Set<String> READ_BY_PEOPLE = Set.of("label", "title", "name", "owner");

    /** File, and why it may compare. */
    private static final Map<String, String> ALLOWED = Map.ofEntries(
            Map.entry("combustion/species/SpeciesLibrary.java", "species by their formula"),
            Map.entry("combustion/species/SpeciesSet.java", "species by their formula"),
            Map.entry("cycles/questions/LimitSearch.java", "a limit by its dotted name, as its result gives it"),
            Map.entry("cycles/questions/PressureTrials.java", "a limit by its dotted name, as a user leaves it out"),
            Map.entry("cycles/trail/EnginePlaces.java", "an item of mass by the part it belongs to"),
            Map.entry("reports/chart/LineChart.java", "curves of one panel by the names of its key"),
            Map.entry("reports/study/SweepLimits.java", "a limit by its dotted name, as a sweep chose it"),
            Map.entry("study/store/StoredRows.java", "columns of a table by their name"),
            Map.entry("vehicle/PayloadPartials.java", "stages by the names that the file gives them"),
            Map.entry("vehicle/StageReturn.java", "stages by the names that the file gives them"));

    @Test
    void partsAreJoinedByTheirKeys() throws IOException {
        Map<String, Set<String>> found = comparisons(MAIN);
        found.keySet().removeIf(file -> file.startsWith("app/"));
        assertThat(found.keySet())
                .as("files that compare what people read and may; those not here any more go from the list: %s", found)
                .isEqualTo(ALLOWED.keySet());
    }

    /** A comparison would be found, on either side. */
    @Test
    void theScanSeesComparisons(@TempDir Path sample) throws IOException {
        Files.writeString(
                sample.resolve("Sample.java"),
                "class Sample { boolean f(P a, P b) { return a.name().equals(b.x) || b.list().contains(a.label())"
                        + " || a.key().equals(b.key()); } }");
        assertThat(comparisons(sample).get("Sample.java"))
                .containsExactlyInAnyOrder("a.name().equals(b.x)", "b.list().contains(a.label())");
    }

    private static Map<String, Set<String>> comparisons(Path folder) throws IOException {
        Map<String, Set<String>> comparisons = new TreeMap<>();
        ParsedSources.each(
                folder,
                (file, unit) -> new TreeScanner<Void, Void>() {
                    @Override
                    public Void visitMethodInvocation(MethodInvocationTree call, Void nothing) {
                        if (call.getMethodSelect() instanceof MemberSelectTree method
                                && COMPARING.contains(method.getIdentifier().toString())
                                && (readByPeople(method.getExpression())
                                        || call.getArguments().stream().anyMatch(a -> readByPeople(a)))) {
                            comparisons
                                    .computeIfAbsent(file, f -> new TreeSet<>())
                                    .add(call.toString());
                        }
                        return super.visitMethodInvocation(call, nothing);
                    }
                }.scan(unit, null));
        return comparisons;
    }

    private static boolean readByPeople(ExpressionTree expression) {
        return expression instanceof MethodInvocationTree call
                && call.getMethodSelect() instanceof MemberSelectTree method
                && READ_BY_PEOPLE.contains(method.getIdentifier().toString());
    }
}
