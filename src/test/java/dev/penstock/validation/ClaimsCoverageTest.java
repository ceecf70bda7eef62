package dev.penstock.validation;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.numerics.sampling.Workers;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/** A small part of {@code ClaimsCoverageRun}: one built engine, whose row of the tables is the source. */
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
        assertThat(row.holdsPressure()).as(row.line()).isTrue();
    }
}
