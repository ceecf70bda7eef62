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

class BandsPageTest {

    private static final Path PAGE = Path.of("docs/validation/bands.md");

    @Test
    @EnabledIfSystemProperty(named = "penstock.bands.long", matches = "true")
    void thePageShowsWhatTheProgramComputes() throws IOException {
        BandsPage page = new BandsPage();
        List<BandsPage.Sampled> engines = new ArrayList<>();
        for (RatedEngine question : RatedEngine.all()) {
            engines.add(page.places(question, BandsPage.SAMPLES));
        }
        PageNumbers.holdAgainst(PAGE, BandsPage.text(engines));
    }

    /** The page has a row for every quantity of which an engine of it has a figure that was read. */
    @Test
    void thePageHasEveryQuantity() throws IOException {
        List<String> lines = Files.readAllLines(PAGE);
        assertThat(BandsPage.QUANTITIES)
                .filteredOn(q -> RatedEngine.all().stream()
                        .anyMatch(e -> e.engine().seen(q.column()).isPresent()))
                .hasSizeGreaterThan(6)
                .allSatisfy(q -> assertThat(lines).anyMatch(l -> l.startsWith("| " + q.name() + " | ")));
    }

    /** Identity: a figure at the end of its band has a reach of one, at the median of zero. */
    @Test
    void theReachIsMeasuredInHalfBands() {
        double[] values = new double[101];
        for (int i = 0; i <= 100; i++) {
            values[i] = i;
        }
        assertThat(place("a", 95, values).reach()).isCloseTo(1, within(1e-9));
        assertThat(place("a", 50, values).reach()).isZero();
        assertThat(place("a", 4, values).inside()).isFalse();
        assertThat(place("a", 20.5, values).rank()).isCloseTo(21 / 101.0, within(1e-12));
    }

    /** Identity: an engine far from ten others is not inside bands that were stretched for those. */
    @Test
    void anEngineUnlikeTheOthersIsLeftOut() {
        double[] values = {0, 1, 2, 3, 4};
        List<BandsPage.Place> places = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            places.add(place("e" + i, 2.5, values));
        }
        places.add(place("far", 40, values));
        assertThat(BandsPage.leftOut(places)).isCloseTo(10 / 11.0, within(1e-12));
        assertThat(BandsPage.interval(9, 10)).isEqualTo("65 to 98");
    }

    private static BandsPage.Place place(String engine, double published, double[] values) {
        return new BandsPage.Place(engine, "hydrogen", BandsPage.QUANTITIES.get(0), published, 2, values);
    }
}
