package dev.penstock.chamber.loss;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.chamber.ChamberPerformance;
import dev.penstock.chamber.Designs;
import dev.penstock.chamber.Mixtures;
import dev.penstock.chamber.ThrustChamber;
import dev.penstock.chamber.design.ChamberDesign;
import dev.penstock.chamber.design.Efficiencies;
import dev.penstock.chamber.design.Injection;
import dev.penstock.chamber.design.LossKind;
import dev.penstock.chamber.flow.ExpansionMode;
import dev.penstock.chamber.flow.NozzleFlow;
import dev.penstock.combustion.equilibrium.Reactants;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Sudden freezing against finite-rate expansions, and its limits. */
class KineticsLossTest {

    private static ChamberPerformance chamber(
            String oxidizer, String fuel, double mixtureRatio, double pressure, double areaRatio, double thrust) {
        Reactants reactants = Mixtures.mix(Mixtures.named(oxidizer), Mixtures.named(fuel), mixtureRatio);
        ChamberDesign design = new ChamberDesign(
                pressure,
                Designs.combustor(2.5, 1.2),
                Designs.bell(areaRatio),
                ExpansionMode.SHIFTING,
                Efficiencies.MODELLED);
        return new ThrustChamber(Mixtures.nozzle(reactants)).forVacuumThrust(design, Injection.of(reactants), thrust);
    }

    private static double kinetics(ChamberPerformance chamber) {
        return chamber.losses().stream()
                .filter(loss -> loss.kind().equals(Optional.of(LossKind.KINETICS)))
                .findFirst()
                .orElseThrow()
                .factor();
    }

    /** Independent library; the tolerance is the uncertainty that the model card states. */
    @ParameterizedTest(name = "{0}: {1}/{2}")
    @CsvFileSource(resources = "/chamber/finite-rate-kinetics.csv", numLinesToSkip = 1)
    void lossAgreesWithFiniteRateExpansions(
            String name,
            String oxidizer,
            String fuel,
            double mixtureRatio,
            double pressure,
            double areaRatio,
            double thrust,
            double factor,
            double tolerance,
            String source) {
        assertThat(kinetics(chamber(oxidizer, fuel, mixtureRatio, pressure, areaRatio, thrust)))
                .isCloseTo(factor, within(tolerance));
    }

    /**
     * Identity: the loss changes with size without a jump, also where freezing moves away from the throat (near 700 N here).
     * With a jump the sizing for a thrust finds no throat there.
     */
    @Test
    void theLossOfTinyChambersChangesWithoutAJump() {
        double before = kinetics(chamber("O2", "H2", 5.5, 0.676e6, 6, 300));
        for (double thrust = 310; thrust <= 3000; thrust *= 1.03) {
            double here = kinetics(chamber("O2", "H2", 5.5, 0.676e6, 6, thrust));
            assertThat(here).as("at %.0f N", thrust).isBetween(before - 1e-9, before + 6e-4);
            before = here;
        }
    }

    @Test
    void largerAndDenserChambersLoseLess() {
        double small = kinetics(chamber("O2", "H2", 5.5, 2e6, 60, 2e4));
        double large = kinetics(chamber("O2", "H2", 5.5, 2e6, 60, 2e6));
        double dense = kinetics(chamber("O2", "H2", 5.5, 20e6, 60, 2e6));
        assertThat(large).isGreaterThan(small);
        assertThat(dense).isGreaterThan(large).isLessThanOrEqualTo(1);
    }

    @Test
    void lossIsBoundedByThroatFrozenFlow() {
        Reactants r = Mixtures.mix(Mixtures.TETROXIDE, Mixtures.MMH, 1.65);
        NozzleFlow nozzle = Mixtures.nozzle(r);
        double frozen = nozzle.toAreaRatio(r, 1e6, 100, ExpansionMode.FROZEN_AT_THROAT)
                        .vacuumImpulse()
                / nozzle.toAreaRatio(r, 1e6, 100, ExpansionMode.SHIFTING).vacuumImpulse();
        assertThat(kinetics(chamber("N2O4", "MMH", 1.65, 1e6, 100, 200))).isCloseTo(frozen, within(1e-3));
    }
}
