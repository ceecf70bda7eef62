package dev.penstock.cycles;

import dev.penstock.errors.InvalidInput;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.Propellant;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.turbomachinery.feed.UllageGas;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** Reads the table {@code [pressurization]} of a cycle without pumps. */
final class PressurizationKeys {

    private static final double CRYOGENIC = 200;

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
        UllageGas.Law law = UllageGas.Law.ISOTHERMAL;
        double exponent = 1.2;
        if (blowdown) {
            law = keys.choice(
                    "expansion", UllageGas.Law.class, law, "walls keep the gas warm over a long life, sutton-rpe");
            exponent = keys.quantity(
                    "polytropic_exponent",
                    Dimension.RATIO,
                    Range.of(0.95, 1.9),
                    exponent,
                    "between isothermal and isentropic, " + ConceptKeys.COMMON);
        }
        double pressure = 31e6;
        double temperature = 293.15;
        double heatedTo = 500;
        PressurizationDesign.HeatSource source = PressurizationDesign.HeatSource.NOZZLE_COIL;
        double oxidizerCollapse = collapse(oxidizer);
        double fuelCollapse = collapse(fuel);
        if (!blowdown) {
            pressure = keys.quantity(
                    "bottle_pressure", Dimension.PRESSURE, Range.of(1e6, 1e8), pressure, ConceptKeys.COMMON);
            temperature = keys.quantity(
                    "bottle_temperature", Dimension.TEMPERATURE, Range.of(50, 400), temperature, "room temperature");
            oxidizerCollapse = keys.quantity(
                    "oxidizer_collapse_factor",
                    Dimension.RATIO,
                    Range.of(1, 5),
                    oxidizerCollapse,
                    "1.15 storable, 1.4 cryogenic, 1.6 hydrogen: middle of the ranges in nasa-sp-8112");
            fuelCollapse = keys.quantity(
                    "fuel_collapse_factor",
                    Dimension.RATIO,
                    Range.of(1, 5),
                    fuelCollapse,
                    "1.15 storable, 1.4 cryogenic, 1.6 hydrogen: middle of the ranges in nasa-sp-8112");
        }
        if (feed == PressurizationDesign.Feed.HEATED) {
            heatedTo = keys.quantity(
                    "heated_temperature",
                    Dimension.TEMPERATURE,
                    Range.of(250, 1200),
                    heatedTo,
                    "what tank walls and propellant vapour stand, " + ConceptKeys.COMMON);
            source = keys.choice("heat_source", PressurizationDesign.HeatSource.class, source, ConceptKeys.COMMON);
        }
        PressurizationDesign.HeatSource heatSource = source;
        UllageGas.Law chosen = law;
        double n = exponent;
        double p = pressure;
        double t = temperature;
        double hot = heatedTo;
        double oxidizerFactor = oxidizerCollapse;
        double fuelFactor = fuelCollapse;
        return () -> Optional.of(new PressurizationDesign(
                feed,
                gas.orElseThrow(),
                mass,
                time,
                ullage,
                fuelUllage,
                chosen,
                n,
                p,
                t,
                hot,
                heatSource,
                oxidizerFactor,
                fuelFactor));
    }

    private static Optional<Propellant> gas(ConceptKeys keys, FluidLibrary fluids) {
        String id = keys.word("gas", "helium", ConceptKeys.COMMON);
        try {
            Propellant gas = fluids.propellant(id);
            if (!gas.roles().contains(Propellant.Role.PRESSURANT)) {
                keys.problem("gas", '"' + id + '"', "write a pressurant such as helium or nitrogen");
                return Optional.empty();
            }
            return Optional.of(gas);
        } catch (InvalidInput e) {
            e.problems().forEach(problem -> keys.problem("gas", problem.value(), problem.allowed()));
            return Optional.empty();
        }
    }

    private static double collapse(Propellant propellant) {
        if (propellant.id().equals("hydrogen")) {
            return 1.6;
        }
        return propellant.storageTemperature() < CRYOGENIC ? 1.4 : 1.15;
    }
}
