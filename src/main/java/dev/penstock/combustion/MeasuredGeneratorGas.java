package dev.penstock.combustion;

import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.combustion.gas.SoaveGas;
import dev.penstock.combustion.species.SpeciesLibrary;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.errors.Require;
import dev.penstock.errors.Warning;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.property.ElementalComposition;
import dev.penstock.fluids.traits.GeneratorGasData;
import dev.penstock.provenance.ModelCard;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Gas of a fuel-rich gas generator: temperature, cp and gamma against mixture ratio, as measured and tabulated for turbine
 * design in {@code [combustion.generator_gas]} of the fuel's file. Most of the fuel leaves vaporised and cracked, far from
 * equilibrium. Beyond the measured mixture ratios the end slopes are continued, as far as the file allows, with a warning.
 */
public final class MeasuredGeneratorGas {

    /** What this model is. */
    public static final ModelCard CARD = new ModelCard(
            "combustion.measured-generator-gas",
            "Fuel-rich generator gas, measured",
            "T, cp and gamma interpolated linearly in mixture ratio",
            "the mixture ratios in the fuel's file, continued with a warning as far as it allows",
            "temperature about 30 K, cp and gamma about 3 percent, or what the fuel's file says of its own (common practice, no source)",
            List.of("nasa-sp-125"));

    private static final double SAME_ATOMS = 1e-6;

    private final Propellant fuel;
    private final GeneratorGasData data;

    private MeasuredGeneratorGas(Propellant fuel, GeneratorGasData data) {
        this.fuel = fuel;
        this.data = data;
    }

    /**
     * @param reactants what is burnt
     * @return its measured gas; empty if the mixture is not one of a fuel whose file holds measured gas with the oxidizer
     *     that it was measured with
     */
    public static Optional<MeasuredGeneratorGas> of(Reactants reactants) {
        Propellant fuel = reactants.leading().map(Reactants.Part::propellant).orElse(null);
        if (fuel == null || reactants.parts().size() != 2) {
            return Optional.empty();
        }
        return fuel.combustion()
                .generatorGas()
                .filter(data -> reactants.parts().stream()
                        .allMatch(p ->
                                p.propellant() == fuel || same(p.propellant().composition(), data.oxidizer())))
                .map(data -> new MeasuredGeneratorGas(fuel, data));
    }

    /**
     * @param fuel a fuel
     * @param oxidizer an oxidizer
     * @return the lowest temperature in the fuel's table of gas burnt with that oxidizer (K); empty if there is no such table
     */
    public static OptionalDouble coolest(Propellant fuel, Propellant oxidizer) {
        return fuel.combustion()
                .generatorGas()
                .filter(data -> same(oxidizer.composition(), data.oxidizer()))
                .map(data -> OptionalDouble.of(data.temperature().get(0)))
                .orElse(OptionalDouble.empty());
    }

    private static boolean same(ElementalComposition a, ElementalComposition b) {
        return a.molesPerKilogram().keySet().equals(b.molesPerKilogram().keySet())
                && a.molesPerKilogram().keySet().stream()
                        .allMatch(e -> Math.abs(a.of(e) - b.of(e)) <= SAME_ATOMS * b.of(e));
    }

    /**
     * @param reactants a mixture of this fuel and its oxidizer
     * @return oxidizer over fuel by mass (-)
     */
    public double mixtureRatio(Reactants reactants) {
        return 1 / reactants.fractionOf(fuel) - 1;
    }

    /**
     * @param mixtureRatio oxidizer over fuel by mass (-)
     * @return whether the table, continued as far as it may be, does not end below this mixture ratio
     */
    public boolean reaches(double mixtureRatio) {
        return mixtureRatio <= data.highest();
    }

    /**
     * @param mixtureRatio oxidizer over fuel by mass (-)
     * @param reactantEnthalpy enthalpy of the reactants (J/kg)
     * @return the gas
     * @throws OutsideValidity beyond the mixture ratios that the file allows
     */
    public EmpiricalWorkingFluid at(double mixtureRatio, double reactantEnthalpy) {
        Require.within(CARD.title(), "mixture ratio (-)", mixtureRatio, data.lowest(), data.highest());
        return new EmpiricalWorkingFluid(
                String.format(
                        Locale.ROOT,
                        data.doubt().isPresent()
                                ? "fuel-rich gas of %s at mixture ratio %.3f, tabulated"
                                : "fuel-rich gas of %s at mixture ratio %.3f, measured",
                        fuel.name(),
                        mixtureRatio),
                interpolate(data.mixtureRatio(), data.heatCapacity(), mixtureRatio),
                interpolate(data.mixtureRatio(), data.gamma(), mixtureRatio),
                interpolate(data.mixtureRatio(), data.temperature(), mixtureRatio),
                reactantEnthalpy);
    }

    /**
     * @param library species data
     * @return its departure from an ideal gas; empty where the file does not say what it is as dense as
     */
    public Optional<SoaveGas> departure(SpeciesLibrary library) {
        if (data.denseAs().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new SoaveGas(
                data.denseAs().keySet().stream().map(library::named).toList(),
                data.denseAs().values().stream().mapToDouble(x -> x).toArray()));
    }

    /**
     * @param temperature wanted gas temperature (K)
     * @return mixture ratio that gives it (-)
     * @throws OutsideValidity if that lies beyond the mixture ratios that the file allows
     */
    public double mixtureRatioFor(double temperature) {
        double ratio = interpolate(data.temperature(), data.mixtureRatio(), temperature);
        if (!(ratio >= data.lowest() && ratio <= data.highest())) {
            throw new OutsideValidity(
                    CARD.title(),
                    "gas temperature (K)",
                    temperature,
                    String.format(
                            Locale.ROOT,
                            "%.0f K to %.0f K",
                            interpolate(data.mixtureRatio(), data.temperature(), data.lowest()),
                            interpolate(data.mixtureRatio(), data.temperature(), data.highest())));
        }
        return ratio;
    }

    /**
     * @param mixtureRatio oxidizer over fuel by mass (-)
     * @return warnings: that the values do not reach that far, or are themselves in doubt
     */
    public List<Warning> warnings(double mixtureRatio) {
        List<Warning> warnings = new ArrayList<>();
        double first = data.mixtureRatio().get(0);
        double last = data.mixtureRatio().get(data.mixtureRatio().size() - 1);
        if (mixtureRatio < first || mixtureRatio > last) {
            warnings.add(new Warning(
                    CARD.id(),
                    String.format(
                            Locale.ROOT,
                            "mixture ratio %.3f is outside the measured %.3f to %.3f; the end slopes are continued",
                            mixtureRatio,
                            first,
                            last)));
        }
        data.doubt()
                .ifPresent(doubt ->
                        warnings.add(new Warning(CARD.id(), "fuel-rich gas of " + fuel.name() + ": " + doubt)));
        return warnings;
    }

    private static double interpolate(List<Double> x, List<Double> y, double at) {
        int i = 1;
        while (i < x.size() - 1 && at > x.get(i)) {
            i++;
        }
        return y.get(i - 1) + (y.get(i) - y.get(i - 1)) * (at - x.get(i - 1)) / (x.get(i) - x.get(i - 1));
    }
}
