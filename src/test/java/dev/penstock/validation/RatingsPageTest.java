package dev.penstock.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class RatingsPageTest {

    private static final Path PAGE = Path.of("docs/validation/ratings.md");

    /** Every engine with enough data balances, and what it then misses is a limit of which something is known. */
    @Test
    void everyEngineBalancesAtItsRating() throws IOException {
        RatingsPage page = new RatingsPage();
        List<RatingsPage.Row> rows = RatedEngine.all().stream().map(page::row).toList();
        assertThat(rows).hasSizeGreaterThan(24).allSatisfy(row -> {
            assertThat(row.balance().residualWorst()).isLessThan(1e-8);
            assertThat(row.words()).doesNotStartWith("nothing known");
        });
        assertThat(AimedMisses.unexplained(rows)).isEmpty();
        PageNumbers.holdAgainst(PAGE, RatingsPage.text(rows));
    }
}
