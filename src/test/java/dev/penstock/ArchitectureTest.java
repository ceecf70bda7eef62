package dev.penstock;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Data flows one way: the package list of docs/architecture.md, kept by a test. */
class ArchitectureTest {

    private static final String ROOT = "dev.penstock.";
    private static final List<String> ORDER = List.of(
            "errors",
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
            "reports",
            "app");

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
        onlyIn("freemarker..", "reports", "app");
        onlyIn("io.javalin..", "reports", "app");
        onlyIn("picocli..", "reports", "app");
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
