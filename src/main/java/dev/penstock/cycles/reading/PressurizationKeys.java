package dev.penstock.cycles.reading;

import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.cycles.concept.PressurizationDesign;
import dev.penstock.cycles.concept.Side;
import dev.penstock.errors.InvalidInput;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.UsualFluids;
import dev.penstock.input.InputTable;
import dev.penstock.input.Usual;
import dev.penstock.turbomachinery.feed.UllageGas;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** Reads the table {@code [pressurization]} of a cycle without pumps. */
final class PressurizationKeys {

    private PressurizationKeys() {}

    static Supplier<Optional<PressurizationDesign>> read(
            InputTable root, FluidLibrary fluids, CycleTraits traits, Propellant oxidizer, Propellant fuel) {
        if (traits.pumped()) {
            return Optional::empty;
        }
        InputTable keys = root.at(PressurizationInputs.TABLE);
        PressurizationDesign.Feed feed = keys.read(PressurizationInputs.FEED);
        boolean blowdown = feed == PressurizationDesign.Feed.BLOWDOWN;
        Optional<Propellant> gas = gas(keys, fluids);
        OptionalDouble mass = keys.number(PressurizationInputs.PROPELLANT_MASS);
        double time = keys.read(PressurizationInputs.BURN_TIME);
        double ullage = keys.read(
                PressurizationInputs.INITIAL_ULLAGE,
                blowdown ? Usual.common(0.33).because("pressure falls to a third or more") : Usual.common(0.05));
        double fuelUllage = keys.read(
                PressurizationInputs.FUEL_INITIAL_ULLAGE,
                Usual.of(ullage, "as in the oxidizer tank", "")
                        .following(keys.pathOf(PressurizationInputs.INITIAL_ULLAGE.key())));
        UllageGas.Law law = blowdown
                ? keys.read(PressurizationInputs.EXPANSION)
                : PressurizationInputs.EXPANSION.standing().value();
        double exponent = blowdown
                ? keys.read(PressurizationInputs.POLYTROPIC_EXPONENT)
                : PressurizationInputs.POLYTROPIC_EXPONENT.standing().value();
        double pressure = blowdown
                ? PressurizationInputs.BOTTLE_PRESSURE.standing().value()
                : keys.read(PressurizationInputs.BOTTLE_PRESSURE);
        double temperature = blowdown
                ? PressurizationInputs.BOTTLE_TEMPERATURE.standing().value()
                : keys.read(PressurizationInputs.BOTTLE_TEMPERATURE);
        double oxidizerCollapse = blowdown ? collapse(oxidizer) : collapse(keys, Side.OXIDIZER, oxidizer);
        double fuelCollapse = blowdown ? collapse(fuel) : collapse(keys, Side.FUEL, fuel);
        boolean heated = feed == PressurizationDesign.Feed.HEATED;
        double heatedTo = heated
                ? keys.read(PressurizationInputs.HEATED_TEMPERATURE)
                : PressurizationInputs.HEATED_TEMPERATURE.standing().value();
        PressurizationDesign.HeatSource source = heated
                ? keys.read(PressurizationInputs.HEAT_SOURCE)
                : PressurizationInputs.HEAT_SOURCE.standing().value();
        return () -> Optional.of(new PressurizationDesign(
                feed,
                gas.orElseThrow(),
                mass,
                time,
                ullage,
                fuelUllage,
                law,
                exponent,
                pressure,
                temperature,
                heatedTo,
                source,
                oxidizerCollapse,
                fuelCollapse));
    }

    private static double collapse(InputTable keys, Side side, Propellant propellant) {
        return keys.read(
                PressurizationInputs.collapseFactor(side),
                Usual.of(collapse(propellant), "", propellant.file() + ", tank.collapse_factor"));
    }

    private static Optional<Propellant> gas(InputTable keys, FluidLibrary fluids) {
        String id = keys.read(PressurizationInputs.GAS);
        try {
            Propellant gas = fluids.propellant(id);
            if (!gas.roles().contains(Propellant.Role.PRESSURANT)) {
                keys.problem(
                        PressurizationInputs.GAS,
                        '"' + id + '"',
                        "write a fluid with the role pressurant, such as " + UsualFluids.pressurant());
                return Optional.empty();
            }
            return Optional.of(gas);
        } catch (InvalidInput e) {
            e.problems().forEach(problem -> keys.problem(PressurizationInputs.GAS, problem.value(), problem.allowed()));
            return Optional.empty();
        }
    }

    private static double collapse(Propellant propellant) {
        return propellant.collapseFactor(propellant.storageTemperature());
    }
}
