package dev.penstock.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class TurbomachineryPageTest {

    private static final Path PAGE = Path.of("docs/validation/turbomachinery.md");

    private static TurbomachineryPage page;

    @BeforeAll
    static void compute() {
        page = new TurbomachineryPage();
    }

    @Test
    void thePageShowsWhatTheProgramComputes() throws IOException {
        PageNumbers.holdAgainst(PAGE, page.text());
    }

    @Test
    void workedExamplesMeetTheirTargets() {
        assertThat(WorkedExamples.all().values().stream().flatMap(List::stream)).allMatch(Comparison::met);
    }

    @Test
    void turbinePowerAtThePublishedPumpDutyMeetsItsTarget() {
        assertThat(PublishedPumps.all().values().stream()
                        .flatMap(List::stream)
                        .filter(c -> !c.met())
                        .toList())
                .isEmpty();
    }
}
