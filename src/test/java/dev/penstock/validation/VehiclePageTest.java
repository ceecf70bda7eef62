package dev.penstock.validation;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.vehicle.mass.MassTable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Holds docs/validation/vehicle.md to what the program computes now. */
class VehiclePageTest {

    private static final Path PAGE = Path.of("docs/validation/vehicle.md");

    @Test
    void everyTargetIsMet() {
        assertThat(VehiclePage.checks()).allSatisfy(check -> assertThat(check.met())
                .as(
                        "%s, %s: published %s, computed %s",
                        check.example(), check.figure(), check.published(), check.computed())
                .isTrue());
    }

    @Test
    void theSpreadOfDryMassesIsThatOfFlownStages() {
        List<PublishedStages.Row> rows = PublishedStages.rows();
        assertThat(rows).hasSizeGreaterThanOrEqualTo(10);
        double shown = PublishedStages.spread(rows);
        double lines =
                rows.stream().mapToDouble(PublishedStages.Row::lines).average().orElseThrow();
        assertThat(Math.hypot(lines, MassTable.COMMON)).isBetween(0.9 * shown, 1.2 * shown);
        // aim of the design: 15 % in the mean
        assertThat(rows.stream()
                        .mapToDouble(r -> Math.abs(r.byVolume() / r.dry() - 1))
                        .average()
                        .orElseThrow())
                .isLessThan(0.25);
    }

    @Test
    void thePageShowsWhatIsComputed() throws IOException {
        PageNumbers.holdAgainst(PAGE, VehiclePage.text());
    }
}
