package dev.penstock.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
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
    void thePageShowsWhatIsComputed() throws IOException {
        PageNumbers.holdAgainst(PAGE, VehiclePage.text());
    }
}
