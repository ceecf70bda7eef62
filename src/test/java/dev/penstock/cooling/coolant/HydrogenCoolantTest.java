package dev.penstock.cooling.coolant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.penstock.cooling.march.RoughWall;
import dev.penstock.cooling.wall.FinEfficiency;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.state.Fluid;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Heat transfer to hydrogen, against limits, identities and a milled copper chamber of NASA TM-105679. */
class HydrogenCoolantTest {

    private static final Fluid HYDROGEN =
            FluidLibrary.open().propellant("hydrogen").fluid();

    private static ChannelFlow flow(double pressure, double bulk, double wall, double massFlux, double diameter) {
        ChannelFlow flow = new ChannelFlow();
        try (CoolantProperties properties = new CoolantProperties(HYDROGEN, Optional.empty(), pressure, false)) {
            var state = HYDROGEN.atPressureTemperature(pressure, bulk);
            properties.bulk(pressure, state.enthalpy(), flow);
            flow.wallTemperature = wall;
            flow.velocity = massFlux / flow.bulkDensity;
            flow.hydraulicDiameter = diameter;
            flow.reynolds = massFlux * diameter / flow.bulkViscosity;
            flow.prandtl = flow.bulkHeatCapacity * flow.bulkViscosity / flow.bulkConductivity;
            flow.distanceOverDiameter = 30;
            properties.mean(flow);
        }
        return flow;
    }

    private static double coefficient(CoolantSideHeatTransfer law, ChannelFlow flow) {
        return law.nusselt(flow) * law.conductivity(flow) / flow.hydraulicDiameter;
    }

    /** Limit: with the wall as warm as the bulk the law is Dittus and Boelter's. */
    @Test
    void withoutATemperatureDifferenceTheMeanIsTheBulk() {
        ChannelFlow flow = flow(15e6, 300, 300.001, 5000, 2e-3);
        assertThat(coefficient(new SchachtQuentmeyer(), flow))
                .isCloseTo(
                        coefficient(new DittusBoelter(), flow), within(1e-4 * coefficient(new DittusBoelter(), flow)));
    }

    /** Identity: the mean density of an ideal gas over temperature is that at the logarithmic mean temperature, ρ T ln(T_w/T_b)/(T_w − T_b). */
    @Test
    void theMeanDensityOfAGasIsTheIntegral() {
        ChannelFlow flow = flow(1e6, 300, 900, 500, 2e-3);
        double expected = flow.bulkDensity * 300 * Math.log(3) / 600;
        assertThat(flow.meanDensity).isCloseTo(expected, within(5e-3 * expected));
    }

    /**
     * [carlile-1992], aspect ratio 0.75: 0.909 kg/s of liquid hydrogen in 72 channels of 1.7 by 1.27 mm under 0.89 mm of copper, hot wall
     * 778 K. The flux is that of the sister chamber with a water calorimeter, 54 MW/m², the lower of two quoted; assumed are
     * hydrogen of 60 K and 8 MPa there and 360 W/(m·K). The law with roughness must lie within the 56 % of [locke-2008], and nearer than
     * Taylor's.
     */
    @Test
    void aMilledCopperChamberIsNearerThanByPipes() {
        double width = 1.7e-3;
        double height = 1.27e-3;
        double pitch = Math.PI * (0.066 + 2 * 0.89e-3) / 72;
        double floor = 778 - 54e6 * 0.89e-3 / 360;
        double diameter = 2 * width * height / (width + height);
        ChannelFlow flow = flow(8e6, 60, floor, 0.909 / 72 / (width * height), diameter);
        double needed = 50e3;
        for (int i = 0; i < 30; i++) {
            double fins = FinEfficiency.areaFactor(
                    FinEfficiency.of(needed, 360, pitch - width, height), width, height, pitch - width);
            needed = 54e6 / (floor - 60) / fins;
        }
        double rough = RoughWall.factor(
                ChannelFriction.factor(flow.reynolds, 3e-6 / diameter) / ChannelFriction.factor(flow.reynolds, 0));
        double computed = rough * coefficient(new SchachtQuentmeyer(), flow);
        double byPipes = coefficient(new Taylor(), flow);
        assertThat(computed / needed).isBetween(1 / 1.56, 1.56);
        assertThat(Math.abs(computed / needed - 1)).isLessThan(Math.abs(byPipes / needed - 1));
    }

    /** Limits: a smooth passage takes up no more, a fourfold friction the most. */
    @Test
    void roughnessRaisesHeatUpToAFourfoldFriction() {
        assertThat(RoughWall.factor(1)).isEqualTo(1);
        assertThat(RoughWall.factor(4)).isEqualTo(Math.pow(4, 0.6));
        assertThat(RoughWall.factor(9)).isEqualTo(RoughWall.factor(4));
    }
}
