package dev.penstock.cycles.solving;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.combustion.species.SpeciesLibrary;
import dev.penstock.cooling.jacket.JacketSolver;
import dev.penstock.cooling.wall.WallLibrary;
import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.sheet.Models;
import dev.penstock.input.HomeFolder;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Identity: the same engine comes out from nothing and from a neighbour of another chamber pressure. */
class OneAnswerTest {

    private static final Path HOME = HomeFolder.find();
    private static final Balancer BALANCER =
            new Balancer(new Models(SpeciesLibrary.open(HOME), new JacketSolver(WallLibrary.open(HOME))));

    @ParameterizedTest
    @CsvSource({"heron, 1.02", "avocet, 0.98"})
    void theWayToABalanceDoesNotMatter(String demo, double neighbour) {
        Concept concept = Concepts.read(demo + ".toml");
        Balancer.Solved near =
                BALANCER.solve(concept.withChamberPressure(neighbour * concept.chamberPressure()), Optional.empty());
        assertThat(worst(BALANCER.solve(concept, Optional.empty()), BALANCER.solve(concept, Optional.of(near))))
                .isLessThan(1e-7);
    }

    /** Largest relative difference of chamber flow and unknowns (-). */
    static double worst(Balancer.Solved a, Balancer.Solved b) {
        double worst = Math.abs(a.assumed().chamberFlow() / b.assumed().chamberFlow() - 1);
        for (int i = 0; i < a.values().size(); i++) {
            worst = Math.max(worst, Math.abs(a.values().get(i) / b.values().get(i) - 1));
        }
        return worst;
    }
}
