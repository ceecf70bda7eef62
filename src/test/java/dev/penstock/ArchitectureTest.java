package dev.penstock;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Data flows one way: the package list of docs/architecture.md, kept by a test. */
class ArchitectureTest {

    private static final String ROOT = "dev.penstock.";
    /** Exactly this package: its types are what other programs use. */
    private static final String ENTRY = "dev.penstock";

    private static final List<String> ORDER = List.of(
            "errors",
            "files",
            "quantities",
            "provenance",
            "input",
            "numerics",
            "fluids",
            "combustion",
            "chamber",
            "cooling",
            "turbomachinery",
            "cycles",
            "vehicle",
            "study",
            "claims",
            "reports",
            "app");

    /** Inner order: a package uses those before it only; what lies beside the folders comes last, with {@code ""}. */
    private static final Map<String, List<String>> INNER = Map.ofEntries(
            Map.entry(
                    "fluids", List.of("store", "state", "property", "traits", "coolprop", "correlation", "table", "")),
            Map.entry("combustion", List.of("species", "gas", "equilibrium", "")),
            Map.entry("chamber", List.of("flow", "atmosphere", "design", "contour", "loss", "")),
            Map.entry(
                    "cooling", List.of("coolant", "wall", "gas", "design", "march", "jacket", "search", "protection")),
            Map.entry(
                    "turbomachinery",
                    List.of("speed", "pump", "turbine", "shaft", "electric", "start", "feed", "mass", "metal")),
            Map.entry(
                    "cycles",
                    List.of(
                            "concept",
                            "origin",
                            "sheet",
                            "hardware",
                            "arrangements",
                            "reading",
                            "solving",
                            "questions",
                            "trail")),
            Map.entry("study", List.of("store", "", "refine", "space", "search", "sample")),
            Map.entry("claims", List.of("figure", "picture", "file", "prior", "likelihood", "answer")),
            Map.entry("numerics", List.of("", "sampling", "design", "optimum", "variance")),
            Map.entry("vehicle", List.of("engine", "mass", "ascent", "plan", "stage", "", "reading", "trade", "cost")),
            Map.entry(
                    "reports",
                    List.of(
                            "text", "chart", "diagram", "page", "print", "table", "engine", "slide", "concept", "study",
                            "vehicle", "claims")),
            Map.entry("app", List.of("options", "console", "edit", "answer", "web", "study", "")));

    private static JavaClasses classes;

    @BeforeAll
    static void readClasses() {
        classes = new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests())
                .importPackages("dev.penstock");
    }

    @TestFactory
    List<DynamicTest> packagesUseOnlyEarlierOnes() {
        return ORDER.subList(0, ORDER.size() - 1).stream()
                .map(name -> DynamicTest.dynamicTest(name, () -> {
                    String[] later = ORDER.subList(ORDER.indexOf(name) + 1, ORDER.size()).stream()
                            .map(p -> ROOT + p + "..")
                            .toArray(String[]::new);
                    noClasses()
                            .that()
                            .resideInAPackage(ROOT + name + "..")
                            .should()
                            .dependOnClassesThat()
                            .resideInAnyPackage(later)
                            .because("data flows one way, down the list of packages")
                            .check(classes);
                }))
                .toList();
    }

    @TestFactory
    List<DynamicTest> foldersOfAPackageUseOnlyEarlierOnes() {
        List<DynamicTest> tests = new ArrayList<>();
        INNER.forEach((name, order) -> {
            for (int i = 0; i < order.size() - 1; i++) {
                String[] later = order.subList(i + 1, order.size()).stream()
                        .map(folder -> inside(name, folder))
                        .toArray(String[]::new);
                String own = inside(name, order.get(i));
                tests.add(DynamicTest.dynamicTest(own, () -> noClasses()
                        .that()
                        .resideInAPackage(own)
                        .should()
                        .dependOnClassesThat()
                        .resideInAnyPackage(later)
                        .because("no arrow runs back up inside a package either")
                        .check(classes)));
            }
        });
        return tests;
    }

    private static String inside(String name, String folder) {
        return folder.isEmpty() ? ROOT + name : ROOT + name + "." + folder + "..";
    }

    @Test
    void everyFolderHasItsPlaceAndNoneIsLong() {
        Map<String, Long> files = classes.stream()
                .filter(c ->
                        !c.getFullName().contains("$") && !c.getSimpleName().equals("package-info"))
                .collect(Collectors.groupingBy(JavaClass::getPackageName, TreeMap::new, Collectors.counting()));
        Set<String> known = new TreeSet<>(Set.of("dev.penstock"));
        ORDER.forEach(name -> INNER.getOrDefault(name, List.of(""))
                .forEach(folder -> known.add(ROOT + name + (folder.isEmpty() ? "" : "." + folder))));
        assertThat(known).containsAll(files.keySet());
        assertThat(files).allSatisfy((name, count) -> assertThat(count).as(name).isLessThanOrEqualTo(26));
    }

    /** The table of the map tells the same order; what makes pages and commands has one row there. */
    @Test
    void theMapTellsThisOrder() throws IOException {
        Pattern row = Pattern.compile("\\| `([a-z.]+)` \\|.*");
        List<String> told = Files.readAllLines(Path.of("docs/architecture.md")).stream()
                .map(row::matcher)
                .filter(Matcher::matches)
                .map(m -> m.group(1))
                .toList();
        List<String> order = ORDER.stream()
                .flatMap(name -> (Set.of("reports", "app").contains(name)
                                ? Stream.of("")
                                : INNER.getOrDefault(name, List.of("")).stream())
                        .map(folder -> folder.isEmpty() ? name : name + "." + folder))
                .toList();
        assertThat(told).isEqualTo(order);
    }

    @Test
    void noPackagesDependOnEachOtherInACircle() {
        slices().matching(ROOT + "(*)..").should().beFreeOfCycles().check(classes);
    }

    @Test
    void nativeCodeIsTouchedByFluidsOnly() {
        onlyIn("com.sun.jna..", "fluids");
    }

    @Test
    void theTomlLibraryIsTouchedByInputOnly() {
        onlyIn("com.fasterxml.jackson.dataformat.toml..", "input");
    }

    @Test
    void theUnitLibraryIsTouchedByQuantitiesOnly() {
        onlyIn("tech.units..", "quantities");
        onlyIn("javax.measure..", "quantities");
    }

    @Test
    void jsonStaysAtTheEdges() {
        onlyIn("com.fasterxml.jackson..", "input", "reports", "app");
    }

    @Test
    void chartsAndPagesStayAtTheEdges() {
        onlyIn("org.jfree..", "reports", "app");
        onlyIn("org.apache.batik..", "reports");
        onlyIn("com.openhtmltopdf..", "reports");
        onlyIn("freemarker..", "reports", "app");
        onlyIn("io.javalin..", "reports", "app");
        onlyIn("picocli..", "reports", "app");
    }

    @Test
    void theDatabaseIsTouchedByTheStoreOnly() {
        onlyIn("org.duckdb..", "study.store");
        onlyIn("java.sql..", "study.store");
    }

    @Test
    void onlyTheAppPrintsOrExits() {
        noClasses()
                .that()
                .resideOutsideOfPackage(ROOT + "app..")
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .callMethod(System.class, "exit", int.class)
                .because("whoever calls a model decides what is shown")
                .check(classes);
    }

    @Test
    void commonsMathRootFindersAreGuarded() {
        onlyIn("org.apache.commons.math3.analysis.solvers..", "numerics");
    }

    @Test
    void theEntryForOtherProgramsIsUsedByNothingOfOurs() {
        noClasses()
                .that()
                .resideOutsideOfPackage(ENTRY)
                .should()
                .dependOnClassesThat()
                .resideInAPackage(ENTRY)
                .because("the entry stands above all packages, and the program talks to the models themselves")
                .check(classes);
    }

    @Test
    void theEntryForOtherProgramsShowsNothingInternal() {
        methods()
                .that()
                .areDeclaredInClassesThat()
                .resideInAPackage(ENTRY)
                .and()
                .arePublic()
                .should(new ArchCondition<>("show types of Java and of the entry only") {
                    @Override
                    public void check(JavaMethod method, ConditionEvents events) {
                        Stream.concat(Stream.of(method.getRawReturnType()), method.getRawParameterTypes().stream())
                                .filter(type -> type.getPackageName().startsWith(ROOT))
                                .forEach(type -> events.add(SimpleConditionEvent.violated(
                                        method, method.getFullName() + " shows " + type.getName())));
                    }
                })
                .check(classes);
    }

    @Test
    void theEntryNeedsNoLibraryOfPages() {
        noClasses()
                .that()
                .resideInAPackage(ENTRY)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        ROOT + "app..",
                        "org.jfree..",
                        "freemarker..",
                        "io.javalin..",
                        "picocli..",
                        "com.openhtmltopdf..")
                .check(classes);
    }

    @Test
    void everyOtherPackageSaysThatItIsInternal() throws IOException {
        Set<String> open = Set.of(ENTRY, ROOT + "errors");
        Set<String> silent = new TreeSet<>();
        for (String name : classes.stream().map(JavaClass::getPackageName).collect(Collectors.toSet())) {
            Path info = Path.of("src/main/java", name.replace('.', '/'), "package-info.java");
            if (!open.contains(name) && !Files.readString(info).contains("Internal: other programs use")) {
                silent.add(name);
            }
        }
        assertThat(silent).isEmpty();
    }

    @Test
    void theExampleUsesTheEntryAndTheFailuresOnly() throws IOException {
        List<String> imports;
        try (Stream<Path> files = Files.walk(Path.of("src/it"))) {
            imports = files.filter(file -> file.toString().endsWith(".java"))
                    .flatMap(ArchitectureTest::lines)
                    .filter(line -> line.startsWith("import " + ROOT))
                    .toList();
        }
        assertThat(imports)
                .contains("import dev.penstock.Penstock;")
                .allMatch(line -> line.matches("import dev\\.penstock\\.(errors\\.)?[A-Z]\\w*;"));
    }

    private static Stream<String> lines(Path file) {
        try {
            return Files.readAllLines(file).stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void onlyIn(String library, String... packages) {
        String[] allowed =
                java.util.Arrays.stream(packages).map(p -> ROOT + p + "..").toArray(String[]::new);
        noClasses()
                .that()
                .resideOutsideOfPackages(allowed)
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library)
                .because("a library of the edge stays at the edge")
                .check(classes);
    }
}
