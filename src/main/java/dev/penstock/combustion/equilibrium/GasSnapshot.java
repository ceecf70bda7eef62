package dev.penstock.combustion.equilibrium;

import dev.penstock.combustion.gas.FrozenTransport;
import dev.penstock.combustion.gas.GasCursor;
import dev.penstock.combustion.gas.GasState;
import dev.penstock.combustion.gas.GasTransport;
import dev.penstock.combustion.gas.MixtureTransport;
import dev.penstock.combustion.species.SpeciesSet;
import dev.penstock.combustion.species.ThermoTable;
import dev.penstock.errors.PropertyFailure;
import dev.penstock.errors.Warning;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;

/** Turns the state of a cursor into an immutable record with transport properties and warnings. Not thread-safe. */
final class GasSnapshot {

    private static final double SMALLEST_LISTED = 1e-12;
    private static final double LOWEST_OF_DATA = 200;
    private static final double HIGHEST_OF_DATA = 6000;
    private static final double FREEZING = 273.15;
    private static final double NOTICEABLE = 0.02;
    private static final double DENSE = 5e7;

    private final SpeciesSet set;
    private final ThermoTable thermo;
    private final MixtureTransport transport;
    private final double[] moles;

    GasSnapshot(SpeciesSet set) {
        this.set = set;
        this.thermo = set.thermo();
        this.transport = new MixtureTransport(set);
        this.moles = new double[set.size()];
    }

    GasState equilibrium(EquilibriumSolver gas) {
        gas.copyMoles(moles);
        double t = gas.temperature();
        double frozenCp = gas.frozenHeatCapacity();
        double cp = gas.equilibriumHeatCapacity();
        return new GasState(
                gas.pressure(),
                t,
                gas.density(),
                gas.enthalpy(),
                gas.entropy(),
                gas.molarMass(),
                cp,
                frozenCp,
                gas.isentropicExponent(),
                gas.soundSpeed(),
                moleFractions(),
                condensedMassFraction(set, moles),
                transport(t, frozenCp, cp),
                warnings(gas));
    }

    /** Transport properties of {@link #equilibrium} without reaction. */
    FrozenTransport transport(EquilibriumSolver gas) {
        gas.copyMoles(moles);
        return frozenTransport(gas);
    }

    /** Transport properties of a gas whose composition stands. */
    FrozenTransport transport(FrozenGas gas) {
        copyMoles(gas);
        return frozenTransport(gas);
    }

    private FrozenTransport frozenTransport(GasCursor gas) {
        collide(gas.temperature());
        double viscosity = transport.viscosity();
        return new FrozenTransport(viscosity, gas.frozenHeatCapacity() * viscosity / transport.frozenConductivity());
    }

    double condensedMassFraction(EquilibriumSolver gas) {
        gas.copyMoles(moles);
        return condensedMassFraction(set, moles);
    }

    private void copyMoles(FrozenGas gas) {
        for (int j = 0; j < moles.length; j++) {
            moles[j] = gas.moles(j);
        }
    }

    private void collide(double t) {
        thermo.evaluate(t);
        if (!transport.update(t, moles, thermo.cp, set.gasCount())) {
            throw new PropertyFailure("burnt gas", "T = " + t + " K", "no species has collision figures in fluids/gas");
        }
    }

    private GasTransport transport(double t, double cp, double heatCapacity) {
        collide(t);
        double frozen = transport.frozenConductivity();
        double full = frozen + transport.reactingConductivity(t, thermo.h);
        double viscosity = transport.viscosity();
        return new GasTransport(viscosity, frozen, full, cp * viscosity / frozen, heatCapacity * viscosity / full);
    }

    private Map<String, Double> moleFractions() {
        double total = 0;
        for (double each : moles) {
            total += each;
        }
        double sum = total;
        List<Integer> order = IntStream.range(0, moles.length)
                .filter(j -> moles[j] > SMALLEST_LISTED * sum)
                .boxed()
                .sorted(Comparator.comparingDouble((Integer j) -> -moles[j]))
                .toList();
        Map<String, Double> fractions = new LinkedHashMap<>();
        order.forEach(j -> fractions.put(set.species().get(j).name(), moles[j] / sum));
        return fractions;
    }

    static double condensedMassFraction(SpeciesSet set, double[] moles) {
        double mass = 0;
        for (int j = set.gasCount(); j < moles.length; j++) {
            mass += moles[j] * set.species().get(j).molarMass();
        }
        return Math.min(1, mass);
    }

    private List<Warning> warnings(EquilibriumSolver gas) {
        List<Warning> list = new ArrayList<>();
        double t = gas.temperature();
        if (t < LOWEST_OF_DATA || t > HIGHEST_OF_DATA) {
            list.add(warning(
                    "temperature %.5g K is outside the species data (200 K to 6000 K); cp is held at its value there",
                    t));
        }
        int water = set.indexOf("H2O(L)");
        if (water >= 0 && moles[water] > 0 && t < FREEZING) {
            list.add(warning("condensed water at %.5g K is taken as supercooled liquid; ice is left out", t));
        }
        if (gas.pressure() > DENSE) {
            list.add(warning(
                    thermo.dense()
                            ? "gas at %.4g bar is denser than its second virial coefficients tell; density is in doubt by 1 percent"
                            : "ideal gas assumed at %.4g bar; density may be several percent too high",
                    gas.pressure() / 1e5));
        }
        list.addAll(EquilibriumDoubt.of(gas.mixture(), t, gas.condensedCarbon()));
        if (transport.leftOut() > NOTICEABLE) {
            list.add(warning("no collision figures for %.3g of the gas by moles", transport.leftOut()));
        }
        return list;
    }

    private static Warning warning(String text, double value) {
        return new Warning("equilibrium", String.format(Locale.ROOT, text, value));
    }
}
