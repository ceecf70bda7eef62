package dev.penstock.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

class LimitsPageTest {

    private static final Path PAGE = Path.of("docs/validation/limits.md");

    /** An engine whose search is short. */
    private static final String SHORT = "LR-87-AJ-7";

    @Test
    @EnabledIfSystemProperty(named = "penstock.limits.long", matches = "true")
    void thePageShowsWhatTheProgramComputes() throws IOException {
        LimitsPage page = new LimitsPage();
        List<LimitsPage.Row> rows = new ArrayList<>();
        for (LimitsPage.Case question : LimitsPage.cases()) {
            LimitsPage.Row row = page.row(question);
            rows.add(row);
            System.out.print(row.line());
        }
        PageNumbers.holdAgainst(PAGE, LimitsPage.text(rows));
    }

    /** Every case has its line, with the pressure that the table says flew. */
    @Test
    void thePageHasEveryCase() throws IOException {
        List<String> lines = Files.readAllLines(PAGE);
        assertThat(LimitsPage.cases()).hasSizeGreaterThan(12).allSatisfy(question -> assertThat(lines)
                .anyMatch(line -> line.startsWith("| " + question.flown().engine() + " | "
                                + question.flown().level().orElseThrow().word() + " |")
                        && line.contains(String.format(
                                java.util.Locale.ROOT,
                                " | %.2f | ",
                                question.flown().number("chamber_pressure_MPa").orElseThrow()))));
    }

    /** The ratio of one line, as the program computes it now; regression. */
    @Test
    void oneLineIsWhatTheProgramComputes() throws IOException {
        LimitsPage.Case question = LimitsPage.cases().stream()
                .filter(c -> c.engine().name().equals(SHORT))
                .findFirst()
                .orElseThrow();
        String line = Files.readAllLines(PAGE).stream()
                .filter(l -> l.startsWith("| " + question.flown().engine() + " |"))
                .findFirst()
                .orElseThrow();
        double written = Double.parseDouble(line.split("\\|")[7].strip());
        assertThat(new LimitsPage().row(question).ratio().orElseThrow()).isCloseTo(written, within(0.03));
    }
}
