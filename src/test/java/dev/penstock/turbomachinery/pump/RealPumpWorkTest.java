package dev.penstock.turbomachinery.pump;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidState;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class RealPumpWorkTest {

    private static final FluidLibrary LIBRARY = FluidLibrary.open();

    /** Independent library: the reference equations of state, computed apart from this program; printed digits. */
    @ParameterizedTest
    @CsvSource({
        "hydrogen, 21, 0.2e6, 10e6, 133.45e3, 30.82",
        "hydrogen, 21, 0.2e6, 20e6, 260.59e3, 39.34",
        "oxygen, 90.2, 0.3e6, 20e6, 17.085e3, 98.46"
    })
    void workAndHeatingFollowTheEquationOfState(
            String id, double temperature, double inlet, double outlet, double rise, double outletTemperature) {
        Propellant propellant = LIBRARY.propellant(id);
        PumpDuty duty =
                new PumpDuty(propellant, propellant.fluid().atPressureTemperature(inlet, temperature), outlet, 20);
        PumpSizing pump =
                new PumpModel().size("pump", duty, PumpDefaults.of(propellant).withEfficiency(0.7));
        assertThat(pump.head()).isCloseTo(rise, withinPercentage(0.02));
        assertThat(pump.outlet().temperature()).isCloseTo(outletTemperature, within(0.01));
        assertThat(pump.power()).isCloseTo(20 * rise / 0.7, withinPercentage(0.02));
    }

    @Test
    void interpolatedIsentropeMeetsTheEquationOfState() {
        Propellant hydrogen = LIBRARY.propellant("hydrogen");
        Fluid fluid = hydrogen.fluid();
        FluidState inlet = fluid.atPressureTemperature(0.25e6, 21);
        LiquidIsentrope isentrope = new LiquidIsentrope(fluid, inlet, 40e6);
        for (double p = 0.5e6; p < 40e6; p *= 1.7) {
            double exact = fluid.atPressureEntropy(p, inlet.entropy()).enthalpy() - inlet.enthalpy();
            assertThat(isentrope.rise(p)).isCloseTo(exact, withinPercentage(1e-6));
        }
    }

    @Test
    void repeatedWorkIsTheSameAsTheFirst() {
        Propellant methane = LIBRARY.propellant("methane");
        PumpDuty duty = new PumpDuty(methane, methane.fluid().atPressureTemperature(0.4e6, 112), 25e6, 30);
        PumpModel model = new PumpModel();
        PumpDesign design = model.choose(duty, PumpDefaults.of(methane));
        double fresh = new PumpModel().work(duty, design).head();
        for (int i = 0; i < 4; i++) {
            assertThat(model.work(duty, design).head()).isCloseTo(fresh, withinPercentage(1e-6));
        }
    }

    @Property(tries = 60)
    void smallChangesOfTheDutyMakeSmallChangesOfThePower(
            @ForAll @DoubleRange(min = 0.02, max = 500) double flow,
            @ForAll @DoubleRange(min = 2e6, max = 50e6) double pressure) {
        Propellant oxygen = LIBRARY.propellant("oxygen");
        FluidState inlet = oxygen.fluid().atPressureTemperature(0.35e6, 92);
        PumpModel model = new PumpModel();
        PumpDuty duty = new PumpDuty(oxygen, inlet, pressure, flow);
        PumpDesign settled = model.choose(duty, PumpDefaults.of(oxygen));
        double here = model.work(duty, settled).power();
        double there = model.work(new PumpDuty(oxygen, inlet, pressure * (1 + 1e-6), flow * (1 + 1e-6)), settled)
                .power();
        assertThat(there / here - 1).isBetween(0.0, 2e-5);
    }

    @Property(tries = 40)
    void pumpsOfEverySizeAreComplete(@ForAll @DoubleRange(min = -2, max = 3.3) double logFlow) {
        Propellant methane = LIBRARY.propellant("methane");
        FluidState inlet = methane.fluid().atPressureTemperature(0.4e6, 112);
        double flow = Math.pow(10, logFlow);
        PumpSizing pump =
                new PumpModel().size("pump", new PumpDuty(methane, inlet, 15e6, flow), PumpDefaults.of(methane));
        assertThat(pump.efficiency()).isBetween(0.2, 0.9);
        assertThat(pump.netPositiveSuctionHead() + pump.suppressionHead())
                .isGreaterThanOrEqualTo(pump.requiredSuctionHead());
        assertThat(pump.limits())
                .filteredOn(check -> check.name().contains("speed"))
                .allMatch(check -> check.met());
    }

    @Test
    void pumpPowerFallsWithInletDensity() {
        Propellant oxygen = LIBRARY.propellant("oxygen");
        PumpDesign design = PumpDefaults.of(oxygen).withEfficiency(0.7);
        double last = 0;
        for (double t : new double[] {70, 80, 90, 100, 110}) {
            FluidState inlet = oxygen.fluid().atPressureTemperature(1.2e6, t);
            double power = new PumpModel()
                    .work(new PumpDuty(oxygen, inlet, 20e6, 100), design)
                    .power();
            assertThat(power).isGreaterThan(last);
            last = power;
        }
    }

    /** Every propellant that is pumped, from a 100 N thruster to a 10 MN booster. */
    @ParameterizedTest
    @MethodSource("pumped")
    void everyPropellantCanBePumpedAtEverySize(Propellant propellant) {
        FluidState inlet = propellant
                .fluid()
                .atPressureTemperature(Math.max(propellant.storagePressure(), 0.3e6), propellant.storageTemperature());
        PumpModel model = new PumpModel();
        for (double flow : new double[] {0.01, 1, 100, 3000}) {
            // the smallest pumps are inefficient: beyond 8 MPa they would boil what decomposes or evaporates easily
            for (double pressure : new double[] {2 * inlet.pressure(), 8e6, flow < 1 ? 8e6 : 40e6}) {
                PumpDuty duty = new PumpDuty(propellant, inlet, pressure, flow);
                PumpSizing pump = model.size("pump", duty, PumpDefaults.of(propellant));
                assertThat(pump.outlet().temperature()).isGreaterThan(inlet.temperature());
                assertThat(pump.power()).isCloseTo(flow * pump.head() / pump.efficiency(), withinPercentage(1e-9));
                // the fluid's own energy balance: what the shaft puts in is what the liquid carries off
                assertThat(pump.outlet().enthalpy() - inlet.enthalpy())
                        .isCloseTo(pump.power() / flow, withinPercentage(1e-3));
            }
        }
    }

    static Stream<Propellant> pumped() {
        return LIBRARY.ids().stream()
                .map(LIBRARY::propellant)
                .filter(p -> p.roles().contains(Propellant.Role.FUEL)
                        || p.roles().contains(Propellant.Role.OXIDIZER)
                        || p.roles().contains(Propellant.Role.MONOPROPELLANT));
    }
}
