package dev.penstock.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class CoolingPageTest {

    private static final Path PAGE = Path.of("docs/validation/cooling.md");

    private static CoolingPage page;

    @BeforeAll
    static void make() {
        page = new CoolingPage();
    }

    @Test
    void thePageShowsWhatTheProgramComputes() throws IOException {
        PageNumbers.holdAgainst(PAGE, page.text());
    }

    @Test
    void workedNumbersMeetTheirTargets() {
        assertThat(page.worked()).allMatch(CoolingPage.Check::met);
    }

    /** Published rise and flux within 25 %. */
    @Test
    void publishedJacketsMeetTheirTargets() {
        assertThat(page.jackets()).allMatch(CoolingPage.Check::met);
    }
}
