package dev.penstock.turbomachinery.pump;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.provenance.LimitKind;
import dev.penstock.quantities.Constants;
import dev.penstock.turbomachinery.speed.ShaftTorsion;
import org.junit.jupiter.api.Test;

/** What a sized pump says of itself fits together: identities of head, continuity, torque and suction. */
class PumpSizingTest {

    private static final Propellant OXYGEN = FluidLibrary.open().propellant("oxygen");
    private static final Propellant HYDROGEN = FluidLibrary.open().propellant("hydrogen");

    private final PumpModel model = new PumpModel();

    private PumpSizing oxygen(double discharge, double massFlow) {
        FluidState inlet = OXYGEN.fluid().atPressureTemperature(0.5e6, 91);
        return model.size("pump", new PumpDuty(OXYGEN, inlet, discharge, massFlow), PumpDefaults.of(OXYGEN));
    }

    private static PumpDuty hydrogen(double massFlow, double discharge) {
        return new PumpDuty(HYDROGEN, HYDROGEN.fluid().atPressureTemperature(0.25e6, 20.4), discharge, massFlow);
    }

    private static LimitCheck limit(PumpSizing pump, LimitKind kind) {
        return pump.limits().stream().filter(l -> l.kind() == kind).findFirst().orElseThrow();
    }

    @Test
    void aCentrifugalPumpFitsTogether() {
        PumpSizing pump = oxygen(18e6, 200);
        assertThat(pump.type()).isEqualTo(PumpType.CENTRIFUGAL);
        assertThat(pump.tipSpeed()).isCloseTo(Math.sqrt(pump.stageHead() / pump.headCoefficient()), within(1e-9));
        assertThat(pump.impellerDiameter()).isCloseTo(2 * pump.tipSpeed() / pump.speed(), within(1e-12));
        double ratio = StageShape.outletWidthRatio(SpecificSpeed.metric(pump.specificSpeed()));
        assertThat(pump.impellerTipWidth()).isCloseTo(ratio * pump.impellerDiameter(), within(1e-12));
        assertThat(pump.power()).isCloseTo(200 * pump.head() / pump.efficiency(), withinPercentage(1e-9));
        assertThat(pump.shaftDiameter())
                .isCloseTo(ShaftTorsion.diameter(pump.torque(), pump.design().shaftStress()), withinPercentage(1e-9));
        assertThat(limit(pump, PumpLimit.TIP_SPEED).value()).isEqualTo(pump.tipSpeed());
        assertThat(limit(pump, PumpLimit.INDUCER_TIP_SPEED).value())
                .isCloseTo(pump.speed() * pump.inducerDiameter() / 2, withinPercentage(1e-9));
        assertThat(limit(pump, PumpLimit.BEARING_SPEED).value())
                .isCloseTo(pump.speed() * pump.shaftDiameter() / 2, withinPercentage(1e-9));
        assertThat(limit(pump, PumpLimit.SUCTION_MARGIN).value())
                .isCloseTo(
                        (pump.netPositiveSuctionHead() + pump.suppressionHead()) / pump.requiredSuctionHead(),
                        withinPercentage(1e-9));
    }

    /** Continuity: Q = π D b φ u with the axial velocity 0.3 u that the shape of axial stages states. */
    @Test
    void anAxialPumpPassesItsFlowThroughItsAnnulus() {
        PumpDesign design = PumpDefaults.of(HYDROGEN).withStages(PumpType.AXIAL, 5);
        PumpSizing pump = model.size("pump", hydrogen(80, 8e6), design);
        double flow = Math.PI * pump.impellerDiameter() * pump.impellerTipWidth() * 0.30 * pump.tipSpeed();
        assertThat(flow).isCloseTo(pump.duty().volumeFlow(), withinPercentage(1e-9));
        assertThat(pump.stageHead()).isCloseTo(pump.head() / 5, withinPercentage(1e-9));
    }

    /** Identity: what is asked for is what there is, once the inlet has the pressure that the pump asks for. */
    @Test
    void hydraulicPowerIsFlowTimesHead() {
        PumpSizing pump = oxygen(18e6, 200);
        assertThat(model.hydraulicPower(pump.duty())).isCloseTo(200 * pump.head(), withinPercentage(1e-9));
    }

    @Test
    void mechanicalBoundsAreThoseThatSuctionHasNoPartIn() {
        PumpDuty duty = hydrogen(20, 15e6);
        PumpDesign design = PumpDefaults.of(HYDROGEN);
        assertThat(model.mechanicalLimits(duty, design))
                .isNotEmpty()
                .allSatisfy(limit -> assertThat(model.speedLimits(duty, design)).anySatisfy(other -> {
                    assertThat(other.bound()).isEqualTo(limit.bound());
                    assertThat(other.speed()).isEqualTo(limit.speed());
                }));
        assertThat(model.speedLimits(duty, design))
                .hasSizeGreaterThan(model.mechanicalLimits(duty, design).size());
    }

    @Test
    void onlyALargeFlowOfALightLiquidGetsAxialStages() {
        PumpDesign open = PumpDefaults.of(HYDROGEN);
        assertThat(model.choose(hydrogen(3, 8e6), open).type()).isEqualTo(PumpType.CENTRIFUGAL);
        assertThat(oxygen(18e6, 2000).type()).isEqualTo(PumpType.CENTRIFUGAL);
        assertThat(model.choose(hydrogen(80, 8e6), open.withStages(PumpType.AXIAL, 7))
                        .stages())
                .hasValue(7);
    }

    @Test
    void moreHeadThanATipSpeedAllowsTakesMoreStages() {
        PumpDesign open = PumpDefaults.of(HYDROGEN);
        PumpDesign low = model.choose(hydrogen(20, 6e6), open);
        PumpDesign high = model.choose(hydrogen(20, 45e6), open);
        assertThat(high.stages().orElseThrow()).isGreaterThan(low.stages().orElseThrow());
        PumpSizing sized = model.size("pump", hydrogen(20, 45e6), high);
        assertThat(limit(sized, PumpLimit.TIP_SPEED).met()).isTrue();
        // one stage fewer would turn too fast at its rim, or give away 3 points of efficiency
        int fewer = high.stages().orElseThrow() - 1;
        PumpSizing less = model.size("pump", hydrogen(20, 45e6), open.withStages(PumpType.CENTRIFUGAL, fewer));
        assertThat(!limit(less, PumpLimit.TIP_SPEED).met() || sized.efficiency() >= less.efficiency() + 0.03)
                .isTrue();
    }

    @Test
    void aSmallPumpIsToldApart() {
        assertThat(oxygen(18e6, 200).warnings()).isEmpty();
        PumpSizing small = oxygen(18e6, 1);
        assertThat(small.duty().volumeFlow()).isLessThan(GulichEfficiency.SMALLEST_FLOW);
        assertThat(small.warnings()).anyMatch(w -> w.message().contains("is below the 0.00500 m³/s"));
        PumpDesign stated = PumpDefaults.of(OXYGEN).withEfficiency(0.5);
        assertThat(model.size("pump", small.duty(), stated).warnings()).isEmpty();
    }

    /** Worked by hand: 0.017 + 0.262 · 0.3 − 0.08 · 0.3² + 0.0093 · 0.3³ = 0.0886511; wide stages keep the width of nq 250. */
    @Test
    void theOutletWidthFollowsItsPolynomial() {
        assertThat(StageShape.outletWidthRatio(30)).isCloseTo(0.0886511, within(1e-12));
        assertThat(StageShape.outletWidthRatio(400)).isEqualTo(StageShape.outletWidthRatio(250));
    }

    /** Identity: the head required at the stated speed, less what there is, over ρ g. */
    @Test
    void theInletPressureForASpeedIsWhatIsMissing() {
        FluidState inlet = OXYGEN.fluid().atPressureTemperature(0.35e6, 91);
        PumpDuty duty = new PumpDuty(OXYGEN, inlet, 20e6, 300);
        PumpDesign design = PumpDefaults.of(OXYGEN);
        PumpSizing sized = model.size("pump", duty, design.withSpeed(1200));
        double missing = design.suctionMargin() * sized.requiredSuctionHead()
                - sized.netPositiveSuctionHead()
                - sized.suppressionHead();
        assertThat(model.inletPressureFor(duty, design, 1200) - 0.35e6)
                .isCloseTo(missing * inlet.density() * Constants.STANDARD_GRAVITY, withinPercentage(1e-6));
    }
}
