package dev.penstock.turbomachinery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.fluids.state.FluidState;
import dev.penstock.quantities.Constants;
import dev.penstock.turbomachinery.pump.PumpDefaults;
import dev.penstock.turbomachinery.pump.PumpDesign;
import dev.penstock.turbomachinery.pump.PumpDuty;
import dev.penstock.turbomachinery.pump.PumpModel;
import dev.penstock.turbomachinery.pump.PumpSizing;
import dev.penstock.turbomachinery.pump.PumpType;
import dev.penstock.turbomachinery.pump.SpecificSpeed;
import dev.penstock.turbomachinery.pump.StageShape;
import org.junit.jupiter.api.Test;

/**
 * Published: the A-1 oxidizer pump of [nasa-sp-125], sample calculations 6-2 to 6-7 (transcribed, page not seen).
 * Computed: a second pump from the same formulas by an independent calculation. Both take the liquid as incompressible.
 */
class PumpWorkedExamplesTest {

    private static final double G = Constants.STANDARD_GRAVITY;
    private static final double FOOT = 0.3048;
    private static final double INCH = 0.0254;
    private static final double RPM = Math.PI / 30;
    private static final double GPM = 3.785411784e-3 / 60;
    private static final double HORSEPOWER = 745.6999;
    private static final double POUND_PER_CUBIC_FOOT = 16.018463;

    private final PumpModel model = new PumpModel();

    private PumpSizing samplePump() {
        double density = 71.17 * POUND_PER_CUBIC_FOOT; // 71.17 lb/ft³
        double flow = 12420 * GPM; // 12 420 gpm
        double head = 2930 * FOOT * G; // 2930 ft
        ConstantDensityLiquid liquid = new ConstantDensityLiquid(density, 1700, 1e5);
        FluidState inlet = liquid.atPressureTemperature(1e5 + 58 * FOOT * density * G, 90); // NPSH 58 ft
        PumpDuty duty = new PumpDuty(liquid.asOxidizer(), inlet, inlet.pressure() + density * head, density * flow);
        PumpDesign design = PumpDefaults.of(liquid.asOxidizer())
                .withSpeed(7000 * RPM)
                .withEfficiency(0.707)
                .withStages(PumpType.CENTRIFUGAL, 1)
                .withHeadCoefficient(0.46);
        return model.size("oxidizer pump", duty, design);
    }

    @Test
    void samplePumpAbsorbsThePublishedPower() {
        assertThat(samplePump().power() / HORSEPOWER).isCloseTo(14850, withinPercentage(0.5)); // book 14 850 bhp
        assertThat(samplePump().duty().massFlow() / 0.45359237).isCloseTo(1969, withinPercentage(0.1)); // 1969 lb/s
    }

    @Test
    void samplePumpHasThePublishedSpecificSpeeds() {
        PumpSizing pump = samplePump();
        assertThat(SpecificSpeed.inUsUnits(pump.specificSpeed())).isCloseTo(1980, withinPercentage(1.2)); // book 1980
        double suction = SpecificSpeed.of(pump.speed(), pump.duty().volumeFlow(), G * pump.netPositiveSuctionHead());
        assertThat(SpecificSpeed.inUsUnits(suction)).isCloseTo(37230, withinPercentage(1)); // book 37 230
    }

    @Test
    void samplePumpHasThePublishedImpeller() {
        PumpSizing pump = samplePump();
        assertThat(pump.tipSpeed() / FOOT).isCloseTo(453, withinPercentage(1.5)); // book 453 ft/s
        assertThat(pump.impellerDiameter() / INCH).isCloseTo(14.8, withinPercentage(1.5)); // book 14.8 in
    }

    @Test
    void sampleImpellerNeedsThePublishedInducerHead() {
        PumpSizing pump = samplePump();
        double withoutInducer = 11000 / SpecificSpeed.inUsUnits(1); // 11 000 for an impeller without inducer
        double needed = Math.pow(pump.speed() * Math.sqrt(pump.duty().volumeFlow()) / withoutInducer, 4.0 / 3) / G;
        assertThat(needed / FOOT).isCloseTo(293, withinPercentage(1.5)); // book 293 ft
        double inducerHead = needed - pump.netPositiveSuctionHead();
        assertThat(inducerHead / FOOT).isCloseTo(235, withinPercentage(1.5)); // book 235 ft
        double tip = Math.sqrt(G * inducerHead / 0.06); // inducer head coefficient 0.06
        assertThat(tip / FOOT).isCloseTo(355, withinPercentage(1.5)); // book 355 ft/s
        assertThat(2 * tip / pump.speed() / INCH).isCloseTo(11.62, withinPercentage(1.5)); // book 11.62 in
    }

    @Test
    void theUsualHeadCoefficientIsThatOfTheSampleImpeller() {
        // the regression is not fitted to it: 0.46 in the book, tolerance the regression's own 10 %
        double nq = SpecificSpeed.metric(samplePump().specificSpeed());
        assertThat(StageShape.headCoefficient(nq)).isCloseTo(0.46, withinPercentage(10));
    }

    @Test
    void secondPumpAgreesWithAnIndependentCalculation() {
        ConstantDensityLiquid liquid = new ConstantDensityLiquid(1141, 1700, 1e5);
        FluidState inlet = liquid.atPressureTemperature(3e5, 90);
        PumpDuty duty = new PumpDuty(liquid.asOxidizer(), inlet, 10.3e6, 100);
        PumpDesign design = PumpDefaults.of(liquid.asOxidizer())
                .withSpeed(20000 * RPM)
                .withEfficiency(0.7)
                .withStages(PumpType.CENTRIFUGAL, 1)
                .withHeadCoefficient(0.5);
        PumpSizing pump = model.size("pump", duty, design);
        assertThat(duty.volumeFlow()).isCloseTo(0.08764, withinPercentage(0.01));
        assertThat(pump.head() / G).isCloseTo(893.70, withinPercentage(0.01));
        assertThat(pump.specificSpeed()).isCloseTo(0.68451, withinPercentage(0.01));
        assertThat(SpecificSpeed.inUsUnits(pump.specificSpeed())).isCloseTo(1870.8, withinPercentage(0.02));
        assertThat(pump.power()).isCloseTo(1.25203e6, withinPercentage(0.01));
        assertThat(pump.tipSpeed()).isCloseTo(132.40, withinPercentage(0.01));
        assertThat(pump.impellerDiameter()).isCloseTo(0.12643, withinPercentage(0.01));
        assertThat(pump.torque()).isCloseTo(597.8, withinPercentage(0.02));
    }

    @Test
    void requiredSuctionHeadAgreesWithAnIndependentCalculation() {
        double[][] cases = {{10000, 95.62}, {20000, 37.95}, {30000, 22.10}}; // suction specific speed (US), NPSH (m)
        for (double[] row : cases) {
            double omega = row[0] / SpecificSpeed.inUsUnits(1);
            double head = Math.pow(20000 * RPM * Math.sqrt(100 / 1141.0) / omega, 4.0 / 3) / G;
            assertThat(head).isCloseTo(row[1], withinPercentage(0.05));
        }
    }
}
