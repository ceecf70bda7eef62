package dev.penstock.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cycles.questions.BuiltEngineMiss;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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

    /** Identity: even values have even fifths; a figure of which no miss is declared has the band of its samples. */
    @Test
    void aFigureLiesInItsFifth() {
        double[] values = new double[101];
        for (int i = 0; i <= 100; i++) {
            values[i] = 100 + i;
        }
        assertThat(place("a", 150, values).fifth(Optional.empty())).isEqualTo(2);
        assertThat(place("a", 101, values).fifth(Optional.empty())).isZero();
        assertThat(place("a", 101, values).insideSamples()).isFalse();
        assertThat(place("a", 150, values).insideSamples()).isTrue();
    }

    /** By hand: ten engines that miss 1 % and one that misses 30 %, which their band cannot hold; it holds each of the ten. */
    @Test
    void anEngineUnlikeTheOthersIsLeftOut() {
        double[] values = {1.99, 2.0, 2.01};
        List<BandsPage.Place> places = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            places.add(place("e" + i, 2.02, values));
        }
        places.add(place("far", 2.6, values));
        assertThat(BandsPage.leftOut(places)).isEqualTo(10);
        assertThat(BandsPage.missed(places.subList(0, 10)).share()).isCloseTo(Math.log(1.01), within(1e-12));
        assertThat(BandsPage.interval(9, 10)).isEqualTo("65 to 98");
    }

    /** What the program declares is what the page shows, and of as many figures. */
    @Test
    void declaredMissesAreThoseOfThePage() throws IOException {
        List<String> lines = Files.readAllLines(PAGE);
        assertThat(BuiltEngineMiss.all()).allSatisfy(miss -> {
            String[] row = lines.stream()
                    .filter(l -> l.startsWith("| " + miss.quantity() + " | "))
                    .filter(l -> l.contains(" to "))
                    .reduce((a, b) -> b)
                    .orElseThrow()
                    .split("\\|");
            assertThat(row[2].strip()).isEqualTo(Integer.toString(miss.figures()));
            assertThat(row[3].strip()).isEqualTo(String.format(Locale.ROOT, "%.1f", 100 * miss.share()));
            assertThat(100 * miss.share() / Double.parseDouble(row[4])).isBetween(0.9, 1.15);
        });
    }

    private static BandsPage.Place place(String engine, double published, double[] values) {
        return new BandsPage.Place(engine, "hydrogen", BandsPage.QUANTITIES.get(0), published, 2, values);
    }
}
