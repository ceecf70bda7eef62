package dev.penstock.validation;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.numerics.sampling.Workers;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * A small part of {@code ClaimsCoverageRun}: one built engine, whose row of the tables is the source. Whether the interval of one engine
 * holds the truth proves nothing of nine in ten; what it said stands on docs/validation/claims.md.
 */
@EnabledIfSystemProperty(named = "penstock.claims.long", matches = "true")
class ClaimsCoverageTest {

    @Test
    void aBuiltEngineWithoutPumpsIsFoundAmongOthers() {
        PublishedEngine engine = ClaimsCoverage.engines().stream()
                .filter(e -> e.cycle().equals("pressure-fed"))
                .findFirst()
                .orElseThrow();
        Workers workers = (count, work) -> IntStream.range(0, count).parallel().forEach(work);
        ClaimsCoverage.Row row = ClaimsCoverage.judged(engine, "[\"pressure-fed\", \"gas-generator\"]", 16, workers);
        assertThat(row.probability()).as(row.line()).isGreaterThan(0.1);
        // Before the claims nine tenths of such engines lie within a factor of some forty; impulse and mass must tell
        // more.
        assertThat(row.pressure().p95() / row.pressure().p05()).as(row.line()).isLessThan(10);
        assertThat(row.ratio().p05()).isLessThan(row.ratio().p95());
    }
}
