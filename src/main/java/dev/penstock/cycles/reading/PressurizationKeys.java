package dev.penstock.cycles.reading;

import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.cycles.concept.PressurizationDesign;
import dev.penstock.errors.InvalidInput;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.UsualFluids;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.turbomachinery.feed.UllageGas;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** Reads the table {@code [pressurization]} of a cycle without pumps. */
final class PressurizationKeys {

    private static final double EXPONENT = 1.2;
    private static final double BOTTLE_PRESSURE = 31e6;
    private static final double ROOM = 293.15;
    private static final double HEATED = 500;

    private PressurizationKeys() {}

    static Supplier<Optional<PressurizationDesign>> read(
            ConceptKeys root, FluidLibrary fluids, CycleTraits traits, Propellant oxidizer, Propellant fuel) {
        if (traits.pumped()) {
            return Optional::empty;
        }
        ConceptKeys keys = root.table("pressurization");
        PressurizationDesign.Feed feed = keys.choice(
                "feed", PressurizationDesign.Feed.class, PressurizationDesign.Feed.REGULATED, ConceptKeys.COMMON);
        boolean blowdown = feed == PressurizationDesign.Feed.BLOWDOWN;
        Optional<Propellant> gas = gas(keys, fluids);
        OptionalDouble mass = keys.optional(
                "propellant_mass", Dimension.MASS, Range.of(1e-3, 1e7), "what burns in the burn time at the start");
        double time = keys.quantity(
                "burn_time", Dimension.TIME, Range.of(0.1, 1e6), 600, "sizes tanks where no mass is given, an example");
        double ullage = keys.quantity(
                "initial_ullage",
                Dimension.RATIO,
                Range.of(0.01, 0.95),
                blowdown ? 0.33 : 0.05,
                blowdown ? "pressure falls to a third or more, " + ConceptKeys.COMMON : ConceptKeys.COMMON);
        double fuelUllage = keys.quantity(
                "fuel_initial_ullage", Dimension.RATIO, Range.of(0.01, 0.95), ullage, "as in the oxidizer tank");
        UllageGas.Law law = blowdown
                ? keys.choice(
                        "expansion",
                        UllageGas.Law.class,
                        UllageGas.Law.ISOTHERMAL,
                        "walls keep the gas warm over a long life, sutton-rpe")
                : UllageGas.Law.ISOTHERMAL;
        double exponent = blowdown
                ? keys.quantity(
                        "polytropic_exponent",
                        Dimension.RATIO,
                        Range.of(0.95, 1.9),
                        EXPONENT,
                        "between isothermal and isentropic, " + ConceptKeys.COMMON)
                : EXPONENT;
        double pressure = blowdown
                ? BOTTLE_PRESSURE
                : keys.quantity(
                        "bottle_pressure", Dimension.PRESSURE, Range.of(1e6, 1e8), BOTTLE_PRESSURE, ConceptKeys.COMMON);
        double temperature = blowdown
                ? ROOM
                : keys.quantity(
                        "bottle_temperature", Dimension.TEMPERATURE, Range.of(50, 400), ROOM, "room temperature");
        double oxidizerCollapse = blowdown ? collapse(oxidizer) : collapse(keys, "oxidizer_collapse_factor", oxidizer);
        double fuelCollapse = blowdown ? collapse(fuel) : collapse(keys, "fuel_collapse_factor", fuel);
        boolean heated = feed == PressurizationDesign.Feed.HEATED;
        double heatedTo = heated
                ? keys.quantity(
                        "heated_temperature",
                        Dimension.TEMPERATURE,
                        Range.of(250, 1200),
                        HEATED,
                        "what tank walls and propellant vapour stand, " + ConceptKeys.COMMON)
                : HEATED;
        PressurizationDesign.HeatSource source = heated
                ? keys.choice(
                        "heat_source",
                        PressurizationDesign.HeatSource.class,
                        PressurizationDesign.HeatSource.NOZZLE_COIL,
                        ConceptKeys.COMMON)
                : PressurizationDesign.HeatSource.NOZZLE_COIL;
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

    private static double collapse(ConceptKeys keys, String key, Propellant propellant) {
        return keys.quantity(
                key,
                Dimension.RATIO,
                Range.of(1, 5),
                collapse(propellant),
                propellant.file() + ", tank.collapse_factor");
    }

    private static Optional<Propellant> gas(ConceptKeys keys, FluidLibrary fluids) {
        String id = keys.word("gas", UsualFluids.pressurant(), ConceptKeys.COMMON);
        try {
            Propellant gas = fluids.propellant(id);
            if (!gas.roles().contains(Propellant.Role.PRESSURANT)) {
                keys.problem(
                        "gas",
                        '"' + id + '"',
                        "write a fluid with the role pressurant, such as " + UsualFluids.pressurant());
                return Optional.empty();
            }
            return Optional.of(gas);
        } catch (InvalidInput e) {
            e.problems().forEach(problem -> keys.problem("gas", problem.value(), problem.allowed()));
            return Optional.empty();
        }
    }

    private static double collapse(Propellant propellant) {
        return propellant.collapseFactor(propellant.storageTemperature());
    }
}
