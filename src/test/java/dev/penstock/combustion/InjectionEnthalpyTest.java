package dev.penstock.combustion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.combustion.equilibrium.EquilibriumSolver;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.combustion.gas.GasState;
import dev.penstock.combustion.species.Species;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.Propellant.Role;
import dev.penstock.fluids.state.FluidState;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The enthalpy with which real propellants enter the flame, and what it does to the flame. */
class InjectionEnthalpyTest {

    private static final FluidLibrary FLUIDS = FluidLibrary.open(Path.of("."));
    private static final Propellant OXYGEN = FLUIDS.propellant("oxygen");
    private static final Propellant METHANE = FLUIDS.propellant("methane");
    private static final double PRESSURE = 10e6;

    private static double absolute(Propellant propellant, double pressure, double temperature) {
        return propellant.absoluteEnthalpy(
                propellant.fluid().atPressureTemperature(pressure, temperature).enthalpy());
    }

    private static GasState flame(double oxygenEnthalpy, double methaneEnthalpy) {
        Reactants mixture = Reactants.of(OXYGEN, oxygenEnthalpy, METHANE, methaneEnthalpy, 3.4);
        return EquilibriumSolver.of(Mixtures.LIBRARY, mixture).solveEnthalpyPressure(mixture, PRESSURE);
    }

    /**
     * Independent: the fluid model's way from liquid at its boiling point to gas at 298.15 K and low pressure, whose
     * enthalpy is that of the species data, here by the equation of state and there by spectroscopy.
     */
    @ParameterizedTest
    @CsvSource({"oxygen, O2, 1.0", "methane, CH4, 1.5", "propane, C3H8, 6", "nitrogen, N2, 1.0", "ammonia, NH3, 5"})
    void warmGasHasTheEnthalpyOfItsSpecies(String id, String species, double kilojoulesPerKilogram) {
        Propellant propellant = FLUIDS.propellant(id);
        Species s = Mixtures.LIBRARY.named(species);
        double gas = s.intervals().get(0).enthalpy(298.15) * 8.314462618 * 298.15 / s.molarMass();
        assertThat(absolute(propellant, 1000, 298.15)).isCloseTo(gas, within(kilojoulesPerKilogram * 1e3));
    }

    /** Check number: storage states burn as the handbook's liquids do; heats of formation agree within 0.1 kJ/mol. */
    @Test
    void storageStatesBurnAsTheirHeatsOfFormationSay() {
        FluidState oxygen = OXYGEN.storageState();
        FluidState methane = METHANE.storageState();
        GasState real = flame(OXYGEN.absoluteEnthalpy(oxygen.enthalpy()), METHANE.absoluteEnthalpy(methane.enthalpy()));
        Reactants listed = Mixtures.of(Mixtures.OXYGEN, Mixtures.METHANE, 3.4);
        GasState table = EquilibriumSolver.of(Mixtures.LIBRARY, listed).solveEnthalpyPressure(listed, PRESSURE);
        assertThat(real.temperature()).isCloseTo(table.temperature(), within(2.0));
    }

    /** Every pair of the library, as loaded, at three mixture ratios: the atoms weigh up and a flame is found. */
    @Test
    void everyPairOfTheLibraryBurnsAtItsStorageState() {
        List<Propellant> all = FLUIDS.ids().stream().map(FLUIDS::propellant).toList();
        for (Propellant oxidizer : all) {
            for (Propellant fuel : all) {
                if (!oxidizer.roles().contains(Role.OXIDIZER) || !fuel.roles().contains(Role.FUEL)) {
                    continue;
                }
                for (double ratio : new double[] {0.5, 2, 6}) {
                    Reactants mixture = Reactants.of(oxidizer, stored(oxidizer), fuel, stored(fuel), ratio);
                    EquilibriumSolver solver = EquilibriumSolver.of(Mixtures.LIBRARY, mixture);
                    solver.setPressureEnthalpy(PRESSURE, mixture.enthalpy());
                    assertThat(solver.temperature())
                            .as("%s with %s at %s", oxidizer.id(), fuel.id(), ratio)
                            .isBetween(300.0, 4000.0);
                }
            }
        }
    }

    private static double stored(Propellant propellant) {
        return propellant.storedEnthalpy();
    }

    /** Subcooling takes enthalpy out, jacket and pump put it in; the flame follows by dT = dh/cp. */
    @Test
    void flameFollowsTheInjectionEnthalpy() {
        double oxygen = absolute(OXYGEN, 15e6, 95);
        double cold = absolute(OXYGEN, 15e6, 70);
        double methane = absolute(METHANE, 15e6, 120);
        double heated = absolute(METHANE, 15e6, 450);
        GasState base = flame(oxygen, methane);
        GasState subcooled = flame(cold, methane);
        GasState regenerative = flame(oxygen, heated);
        assertThat(subcooled.temperature()).isLessThan(base.temperature());
        assertThat(regenerative.temperature()).isGreaterThan(base.temperature());
        double share = 1 / 4.4;
        double expected = share * (heated - methane) / base.equilibriumHeatCapacity();
        assertThat(regenerative.temperature() - base.temperature()).isCloseTo(expected, withinPercentage(10));
    }

    /**
     * Conservation: in a closed cycle the heat that cools the wall and the work of the pumps come back with the
     * propellants; whatever their path, the chamber sees the enthalpy of the tanks plus what was added from outside.
     */
    @Test
    void chamberEnthalpyIsThatOfTheTanksWhenNothingIsAdded() {
        double oxygenTank = OXYGEN.storedEnthalpy();
        double methaneTank = METHANE.storedEnthalpy();
        Reactants tanks = Reactants.of(OXYGEN, oxygenTank, METHANE, methaneTank, 3.4);
        // a preburner burns all of the methane with a little oxygen; a turbine takes work out, which the pumps put in
        double work = 80e3; // J per kg of all propellant
        double preburnerShare = (1 + 0.4) / (1 + 3.4);
        Reactants preburner = Reactants.of(OXYGEN, oxygenTank, METHANE, methaneTank, 0.4);
        TurbineGas hot = new GasGeneratorGas(Mixtures.LIBRARY, GasModel.AUTOMATIC).burn(preburner, 2 * PRESSURE);
        double exhaust = hot.inlet().enthalpy() - work / preburnerShare;
        WorkingState out = hot.fluid().atPressureEnthalpy(PRESSURE, exhaust);
        Reactants oxygen = Reactants.single(OXYGEN, oxygenTank + work / (1 - preburnerShare));
        Reactants chamber = oxygen.mixedWith(preburner.withEnthalpy(out.enthalpy()), preburnerShare);
        assertThat(chamber.enthalpy()).isCloseTo(tanks.enthalpy(), withinPercentage(1e-9));
        chamber.composition().molesPerKilogram().forEach((element, moles) -> assertThat(moles)
                .isCloseTo(tanks.composition().of(element), withinPercentage(1e-9)));
        GasState a = EquilibriumSolver.of(Mixtures.LIBRARY, chamber).solveEnthalpyPressure(chamber, PRESSURE);
        GasState b = EquilibriumSolver.of(Mixtures.LIBRARY, tanks).solveEnthalpyPressure(tanks, PRESSURE);
        assertThat(a.temperature()).isCloseTo(b.temperature(), withinPercentage(1e-8));
    }

    /** Limit and identity of the real working fluid: cp and density of an ideal gas where it is thin; dh = dp/ρ at s. */
    @Test
    void realFluidExpandsAlongItsIsentrope() {
        WorkingFluid methane = new RealFluidWorkingFluid(METHANE);
        WorkingState inlet = methane.atPressureTemperature(12e6, 500);
        WorkingState high = methane.atPressureEntropy(12e6 * 1.0005, inlet.entropy());
        WorkingState low = methane.atPressureEntropy(12e6 * 0.9995, inlet.entropy());
        double slope = (high.enthalpy() - low.enthalpy()) / (high.pressure() - low.pressure());
        assertThat(slope).isCloseTo(1 / inlet.density(), withinPercentage(0.01));
        double exponent = Math.log(high.pressure() / low.pressure()) / Math.log(high.density() / low.density());
        assertThat(inlet.gamma()).isCloseTo(exponent, withinPercentage(0.1));
        WorkingState again = methane.atPressureEnthalpy(12e6, inlet.enthalpy());
        assertThat(again.temperature()).isCloseTo(500, withinPercentage(1e-6));
        assertThat(inlet.enthalpy()).isCloseTo(absolute(METHANE, 12e6, 500), withinPercentage(1e-9));
    }
}
