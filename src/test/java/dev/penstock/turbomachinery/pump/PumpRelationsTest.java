package dev.penstock.turbomachinery.pump;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.errors.Warning;
import dev.penstock.turbomachinery.ConstantDensityLiquid;
import dev.penstock.turbomachinery.speed.ShaftTorsion;
import dev.penstock.turbomachinery.speed.Smooth;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The relations of pumps at one point each, worked by hand from the equations of their cards. */
class PumpRelationsTest {

    private static final ConstantDensityLiquid LIQUID = new ConstantDensityLiquid(1000, 2000, 1e4);
    private static final PumpDesign OPEN = PumpDefaults.of(LIQUID.asOxidizer());
    private final PumpModel model = new PumpModel();

    private static PumpDuty duty(double inlet, double discharge, double massFlow) {
        return new PumpDuty(LIQUID.asOxidizer(), LIQUID.atPressureTemperature(inlet, 90), discharge, massFlow);
    }

    /** By the card: above 1 m³/s a is 0.5; below 0.005 m³/s the exponent stays; losses above 0.4 end in the exponential. */
    @ParameterizedTest
    @CsvSource({
        "30, 2, 1, 0.8908979",
        "30, 2, 2, 0.8738541",
        "60, 0.005, 1, 0.6980811",
        "60, 0.002, 1, 0.6317319",
        "8, 0.01, 1, 0.5812385",
        "6, 0.001, 2, 0.3233040"
    })
    void efficiencyOfThePublishedRegression(double nq, double flow, int stages, double expected) {
        assertThat(GulichEfficiency.of(nq, flow, stages)).isCloseTo(expected, within(1e-7));
    }

    /** 1.25 e^(−0.09)/(1.21 e^(−0.231)) = 1.1894883 at nq 30; 0.605 e^(−0.231) = 0.4802124. */
    @Test
    void headCoefficientsOfThePublishedRegressions() {
        assertThat(PumpCurve.shutOff(PumpType.CENTRIFUGAL, 30)).isCloseTo(1.1894883, within(1e-7));
        assertThat(PumpCurve.shutOff(PumpType.AXIAL, 30)).isEqualTo(1.5);
        assertThat(StageShape.headCoefficient(30)).isCloseTo(0.4802124, within(1e-7));
        assertThat(PumpCurve.head(0, 1.2)).isEqualTo(1.2);
        assertThat(PumpCurve.head(1.5, 1.2)).isCloseTo(1.2 - 0.2 * 2.25, within(1e-12));
        assertThat(PumpCurve.stallRatio(PumpType.AXIAL)).isEqualTo(0.75);
    }

    /** The published relation times the factor; a pump of very low specific speed does no worse than 0.25 times the factor. */
    @Test
    void theRelationIsTakenWithTheFactorOfRocketPumps() {
        PumpDesign settled = OPEN.withStages(PumpType.CENTRIFUGAL, 2);
        PumpDuty usual = duty(4e5, 10e6, 50);
        double head = (10e6 - 4e5) / 1000;
        double nq = SpecificSpeed.metric(1500 * Math.sqrt(0.05) / Math.pow(head / 2, 0.75));
        double industrial = GulichEfficiency.of(nq, 0.05, 2);
        assertThat(PumpStages.relationEfficiency(usual, settled, 1500, head))
                .isCloseTo(OPEN.efficiencyFactor() * Smooth.greatest(industrial, 0.25), withinPercentage(1e-9));
        assertThat(PumpStages.relationEfficiency(duty(4e5, 10e6, 0.01), settled, 50, head))
                .isCloseTo(OPEN.efficiencyFactor() * 0.25, withinPercentage(1));
    }

    /** φ = 8Q ω²/(π(1 − ν²)(2 u)³) keeps the inducer's tip at u, 0.999 of its limit; 0.3 is the most. */
    @Test
    void aFastInducerTakesALargerFlowCoefficient() {
        PumpDuty duty = duty(4e5, 10e6, 50);
        double hub = OPEN.inducerHubRatio();
        double tip = 0.999 * OPEN.inducerTipSpeedLimit();
        double speed = Math.sqrt(0.2 * Math.PI * (1 - hub * hub) * Math.pow(2 * tip, 3) / (8 * 0.05));
        assertThat(PumpSuction.flowCoefficient(duty, OPEN, speed)).isCloseTo(0.2, withinPercentage(0.1));
        assertThat(0.5 * speed * InducerSuction.diameter(0.05, speed, 0.2, hub)).isCloseTo(tip, withinPercentage(1e-9));
        assertThat(PumpSuction.flowCoefficient(duty, OPEN, 0.01 * speed))
                .isCloseTo(OPEN.inducerFlowCoefficient(), withinPercentage(1e-6));
        assertThat(PumpSuction.flowCoefficient(duty, OPEN, 10 * speed)).isCloseTo(0.3, withinPercentage(1e-6));
    }

    /** The bearing beside the turbine: the weaker shaft's stress, the faster liquid's surface speed, 70 % efficiency. */
    @Test
    void pumpsOnOneShaftShareTheBearing() {
        PumpDesign other = new PumpDesign(
                OPEN.speed(),
                OPEN.efficiency(),
                OPEN.stages(),
                OPEN.type(),
                OPEN.headCoefficient(),
                OPEN.tipSpeedLimit(),
                OPEN.tipSpeedSource(),
                OPEN.inducerTipSpeedLimit(),
                OPEN.inducerFlowCoefficient(),
                OPEN.inducerHubRatio(),
                OPEN.suppressionFactor(),
                OPEN.suctionMargin(),
                OPEN.specificSpeedLimit(),
                2 * OPEN.bearingSpeedLimit(),
                0.5 * OPEN.shaftStress(),
                OPEN.minimumShaftDiameter(),
                OPEN.efficiencyFactor());
        assertThat(PumpModel.sharedBearings(1e6, List.of(OPEN, other)).speed())
                .isCloseTo(
                        ShaftTorsion.fastest(1e6 / 0.7, 0.5 * OPEN.shaftStress(), 2 * OPEN.bearingSpeedLimit()),
                        withinPercentage(1e-9));
    }

    /** A map asked near a pressure whose head is known gives that pressure where the head is its own, and its own where not. */
    @Test
    void aKnownDischargeIsTakenWhereItIsThePumps() {
        PumpSizing pump = model.size("pump", duty(4e5, 10e6, 50), OPEN);
        PumpMap map = new PumpMap(pump);
        PumpPoint alone = map.at(pump.duty().inlet(), 0.9 * pump.speed(), 45);
        PumpDuty there = duty(4e5, 1.23456e7, 45);
        assertThat(map.at(there, 0.9 * pump.speed(), alone.head()).dischargePressure())
                .isEqualTo(1.23456e7);
        assertThat(map.at(there, 0.9 * pump.speed(), 1.001 * alone.head())).isEqualTo(alone);
        // a liquid that does not give way: Δp = ρ Δh
        assertThat(alone.dischargePressure() - 4e5).isCloseTo(1000 * alone.head(), withinPercentage(1e-6));
        assertThat(map.head(0.045, 0.9)).isCloseTo(alone.head(), withinPercentage(1e-9));
    }

    /** Who reads a pump outside its relation is told: specific speeds below 5, and impellers worse than a displacement pump. */
    @Test
    void pumpsOutsideTheirRelationAreTold() {
        PumpDesign one = OPEN.withStages(PumpType.CENTRIFUGAL, 1);
        assertThat(messages(duty(4e5, 10e6, 50), one.withSpeed(1500))).isEmpty();
        assertThat(messages(duty(4e5, 10e6, 50), one.withSpeed(150))).anyMatch(w -> w.contains("outside the 5 to 100"));
        assertThat(messages(duty(4e5, 0.5e6, 500), one.withSpeed(1500)))
                .anyMatch(w -> w.contains("outside the 5 to 100"));
        assertThat(messages(duty(4e5, 10e6, 0.02), one.withSpeed(1500))).anyMatch(w -> w.contains("displacement"));
    }

    private List<String> messages(PumpDuty duty, PumpDesign design) {
        return model.size("pump", duty, design).warnings().stream()
                .map(Warning::message)
                .toList();
    }
}
