package dev.penstock.chamber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.chamber.design.ChamberDesign;
import dev.penstock.chamber.design.Efficiencies;
import dev.penstock.chamber.design.Injection;
import dev.penstock.chamber.design.LossKind;
import dev.penstock.chamber.design.NozzleDesign;
import dev.penstock.chamber.design.SeparationCriterion;
import dev.penstock.chamber.flow.CombustorPressure;
import dev.penstock.chamber.flow.ExpansionMode;
import dev.penstock.chamber.flow.GasProfile;
import dev.penstock.chamber.flow.PerfectGas;
import dev.penstock.chamber.loss.NamedLoss;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.errors.OutsideValidity;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Sizing, the account of losses, and thrust against ambient pressure. */
class ThrustChamberTest {

    private static final Reactants MIXTURE = Mixtures.mix(Mixtures.OXYGEN, Mixtures.METHANE, 3.4);
    private final ThrustChamber chamber = new ThrustChamber(Mixtures.nozzle(MIXTURE));

    private static ChamberDesign design(double areaRatio, Efficiencies efficiencies) {
        return new ChamberDesign(
                10e6, Designs.combustor(2.5, 1.2), Designs.bell(areaRatio), ExpansionMode.SHIFTING, efficiencies);
    }

    @Test
    void lossesMultiplyAndAddUpToTheDeliveredImpulse() {
        ChamberPerformance p = chamber.forVacuumThrust(design(40, Efficiencies.MODELLED), Injection.of(MIXTURE), 1e6);
        double product = p.losses().stream().mapToDouble(NamedLoss::factor).reduce(1, (a, b) -> a * b);
        double sum = p.losses().stream().mapToDouble(NamedLoss::impulseLoss).sum();
        assertThat(p.vacuumImpulse() / (p.ideal().vacuumImpulse() * product)).isCloseTo(1, within(1e-14));
        assertThat(p.ideal().vacuumImpulse() - sum).isCloseTo(p.vacuumImpulse(), within(1e-9));
        assertThat(p.losses()).hasSize(LossKind.values().length).allSatisfy(loss -> {
            assertThat(loss.factor()).isBetween(0.8, 1.0);
            assertThat(loss.model()).isPresent();
        });
        assertThat(p.combustionEfficiency() * p.nozzleEfficiency()).isCloseTo(product, within(1e-12));
    }

    @Test
    void thrustAndThroatAreTwoWaysToTheSameChamber() {
        ChamberDesign design = design(40, Efficiencies.MODELLED);
        ChamberPerformance a = chamber.forVacuumThrust(design, Injection.of(MIXTURE), 1e6);
        ChamberPerformance b = chamber.forThroatArea(design, Injection.of(MIXTURE), a.throatArea());
        assertThat(a.vacuumThrust()).isCloseTo(1e6, within(1e-4));
        assertThat(b.massFlow() / a.massFlow()).isCloseTo(1, within(1e-9));
        assertThat(a.massFlow() * a.characteristicVelocity() / (10e6 * a.throatArea()))
                .isCloseTo(1, within(1e-12));
        assertThat(a.contour().exitRadius()).isCloseTo(Math.sqrt(a.exitArea() / Math.PI), within(1e-6));
    }

    @Test
    void statedEfficienciesReplaceTheModels() {
        ChamberPerformance ideal = chamber.forVacuumThrust(design(40, Efficiencies.IDEAL), Injection.of(MIXTURE), 1e6);
        assertThat(ideal.vacuumImpulse()).isEqualTo(ideal.ideal().vacuumImpulse());
        ChamberPerformance stated =
                chamber.forVacuumThrust(design(40, Efficiencies.overall(0.96, 0.97)), Injection.of(MIXTURE), 1e6);
        assertThat(stated.combustionEfficiency()).isCloseTo(0.96, within(1e-12));
        assertThat(stated.nozzleEfficiency()).isCloseTo(0.97, within(1e-12));
        assertThat(stated.losses()).allSatisfy(loss -> assertThat(loss.model()).isEmpty());
    }

    @Test
    void exitPressureFixesTheAreaRatio() {
        NozzleDesign nozzle = Designs.bellToExitPressure(60e3);
        ChamberDesign design = new ChamberDesign(
                10e6, Designs.combustor(2.5, 1.2), nozzle, ExpansionMode.SHIFTING, Efficiencies.MODELLED);
        ChamberPerformance p = chamber.forVacuumThrust(design, Injection.of(MIXTURE), 1e6);
        assertThat(p.ideal().exit().pressure()).isCloseTo(60e3, within(0.01));
        assertThat(p.areaRatio()).isBetween(15.0, 30.0);
    }

    @ParameterizedTest
    @EnumSource(SeparationCriterion.class)
    void thrustIsContinuousWhereTheFlowBeginsToSeparate(SeparationCriterion criterion) {
        ChamberDesign design = new ChamberDesign(
                10e6,
                Designs.combustor(2.5, 1.2),
                Designs.bell(60).withSeparation(criterion),
                ExpansionMode.SHIFTING,
                Efficiencies.MODELLED);
        ChamberPerformance p = chamber.forVacuumThrust(design, Injection.of(MIXTURE), 1e6);
        double wall = p.ideal().exit().pressure() * p.exitWallPressureRatio();
        double onset =
                wall / criterion.pressureRatio(p.profile().atPressure(wall).mach());
        double attached = p.thrustAt(onset * (1 - 1e-6));
        double separated = p.thrustAt(onset * (1 + 1e-6));
        assertThat(p.separationAreaRatio(onset * (1 - 1e-6))).isEmpty();
        assertThat(p.separationAreaRatio(onset * (1 + 1e-6))).isPresent();
        assertThat(separated / attached).isCloseTo(1, within(1e-5));
        assertThat(p.separationWarning(2 * onset)).isPresent();
    }

    @Property(tries = 30)
    void separatedThrustLiesAboveTheFullFlowingOneAndFallsWithAmbientPressure(
            @ForAll @DoubleRange(min = 100, max = 3e5) double ambient) {
        ChamberPerformance p = PERFORMANCE;
        double full = p.vacuumThrust() - ambient * p.exitArea();
        assertThat(p.thrustAt(ambient)).isGreaterThanOrEqualTo(full - 1e-6);
        assertThat(p.thrustAt(ambient * 1.02)).isLessThan(p.thrustAt(ambient));
        OptionalDouble ratio = p.separationAreaRatio(ambient);
        ratio.ifPresent(r -> assertThat(r).isBetween(1.0, p.areaRatio()));
    }

    private static final ChamberPerformance PERFORMANCE = new ThrustChamber(Mixtures.nozzle(MIXTURE))
            .forVacuumThrust(design(80, Efficiencies.MODELLED), Injection.of(MIXTURE), 1e6);

    @Test
    void ambientPressureAboveTheThroatIsRefused() {
        assertThatThrownBy(() -> PERFORMANCE.thrustAt(8e6))
                .isInstanceOf(OutsideValidity.class)
                .hasMessageContaining("ambient pressure (Pa) is 8.00000e+06")
                .hasMessageContaining("below the throat pressure");
    }

    /** Closed form for γ 1.2: contraction 1.6, 3 and 4 cost about 7 to 8, 1.5 to 2 and 1 % (common practice, no source). */
    @Test
    void injectorFacePressureExceedsTheStagnationPressureByTheUsualShare() {
        GasProfile gas = new PerfectGas(1.2, 360, 7e6, 3500).profile(10);
        assertThat(CombustorPressure.ratio(gas.at(1.6, false))).isBetween(1.065, 1.09);
        assertThat(CombustorPressure.ratio(gas.at(3, false))).isBetween(1.012, 1.025);
        assertThat(CombustorPressure.ratio(gas.at(4, false))).isBetween(1.007, 1.014);
    }

    @Test
    void exitConditionsAreCheckedByTheDesign() {
        assertThatThrownBy(() -> Designs.bell(0.7))
                .isInstanceOf(OutsideValidity.class)
                .hasMessage("nozzle: area ratio (-) is 0.700000; allowed is above 1, at most 2000");
        assertThatThrownBy(() -> new ChamberDesign(
                        5e6,
                        Designs.combustor(2.5, 1),
                        Designs.bellToExitPressure(6e6),
                        ExpansionMode.SHIFTING,
                        Efficiencies.MODELLED))
                .isInstanceOf(OutsideValidity.class)
                .hasMessageContaining("exit pressure (Pa) is 6.00000e+06; allowed is below the chamber pressure");
    }
}
