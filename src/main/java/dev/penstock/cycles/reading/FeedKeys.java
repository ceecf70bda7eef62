package dev.penstock.cycles.reading;

import dev.penstock.cycles.concept.BoostDesign;
import dev.penstock.cycles.concept.Burner;
import dev.penstock.cycles.concept.ConceptTables;
import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.cycles.concept.FeedDesign;
import dev.penstock.cycles.concept.FeedInputs;
import dev.penstock.cycles.concept.Side;
import dev.penstock.errors.InvalidInput;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.Propellant;
import dev.penstock.input.Input;
import dev.penstock.input.InputTable;
import dev.penstock.input.Usual;
import dev.penstock.provenance.Words;
import dev.penstock.quantities.Range;
import dev.penstock.turbomachinery.pump.PumpDefaults;
import dev.penstock.turbomachinery.pump.PumpDesign;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** Reads what a concept says about one propellant from tank to injector. */
final class FeedKeys {

    private final FluidLibrary fluids;

    FeedKeys(FluidLibrary fluids) {
        this.fluids = fluids;
    }

    /** The propellant of a side; empty after a noted problem. */
    Optional<Propellant> propellant(InputTable root, Side side) {
        InputTable keys = root.at(ConceptTables.PROPELLANTS);
        Input<String> input = new FeedInputs(side).propellant();
        String id = keys.read(input);
        if (id.isEmpty()) {
            return Optional.empty();
        }
        try {
            Propellant propellant = fluids.propellant(id);
            Propellant.Role role = side == Side.OXIDIZER ? Propellant.Role.OXIDIZER : Propellant.Role.FUEL;
            if (!propellant.roles().contains(role)) {
                keys.problem(input, '"' + id + '"', "this fluid serves as " + propellant.roles());
                return Optional.empty();
            }
            return Optional.of(propellant);
        } catch (InvalidInput e) {
            e.problems().forEach(p -> keys.problem(input, p.value(), p.allowed()));
            return Optional.empty();
        }
    }

    Supplier<FeedDesign> read(InputTable root, Side side, Propellant propellant, CycleTraits traits) {
        FeedInputs feed = new FeedInputs(side);
        boolean subcooled =
                root.at(ConceptTables.PROPELLANTS).read(feed.loading()).equals("subcooled");
        if (subcooled && propellant.subcooledTemperature().isEmpty()) {
            root.at(ConceptTables.PROPELLANTS)
                    .problem(feed.loading(), "\"subcooled\"", propellant.file() + " states no subcooled loading");
        }
        InputTable tank = root.at(ConceptTables.tank(side));
        OptionalDouble pressure = traits.pumped()
                ? OptionalDouble.of(tank.read(
                        FeedInputs.TANK_PRESSURE, Usual.of(propellant.storagePressure(), "", fileOf(propellant))))
                : tank.number(FeedInputs.TANK_PRESSURE, "what the chamber pressure asks for");
        double temperature = temperature(tank, propellant, subcooled);
        InputTable lines = root.at(ConceptTables.LINES);
        double suction = lines.read(feed.suctionLoss());
        boolean cools = GasKeys.coolants(root).contains(side.key());
        double line = lines.read(feed.dischargeLoss(), FeedInputs.dischargeLoss(cools));
        double valve = lines.read(feed.valveLoss(), FeedInputs.valveLoss(!allThroughPreburner(side, traits)));
        double injector = root.at(ConceptTables.INJECTOR).read(feed.injectorLoss());
        Supplier<PumpDesign> pump = traits.pumped()
                ? PumpKeys.read(root.at(ConceptTables.pump(side)), propellant, !traits.turbines(), false)
                : () -> PumpDefaults.of(propellant);
        Supplier<Optional<BoostDesign>> boost = boost(root, side, propellant, traits);
        return () -> new FeedDesign(
                propellant, pressure, temperature, suction, line, valve, injector, pump.get(), boost.get());
    }

    private static double temperature(InputTable tank, Propellant propellant, boolean subcooled) {
        double usual = subcooled
                ? propellant.subcooledTemperature().orElse(propellant.storageTemperature())
                : propellant.storageTemperature();
        double temperature = tank.read(FeedInputs.TANK_TEMPERATURE, Usual.of(usual, "", fileOf(propellant)));
        Range known = Range.of(
                propellant.fluid().range().minimumTemperature(),
                propellant.fluid().range().maximumTemperature());
        if (!known.contains(temperature)) {
            tank.problem(FeedInputs.TANK_TEMPERATURE, temperature + " K", "allowed is " + known.describe("K"));
        }
        return temperature;
    }

    /** In staged combustion one propellant goes whole through the preburner; what trims the engine sits in the other. */
    private static boolean allThroughPreburner(Side side, CycleTraits traits) {
        return traits.burners().equals(List.of(side == Side.FUEL ? Burner.FUEL_RICH : Burner.OXIDIZER_RICH));
    }

    /** A boost pump is there if its table is. */
    private static Supplier<Optional<BoostDesign>> boost(
            InputTable root, Side side, Propellant propellant, CycleTraits traits) {
        if (!traits.pumped()
                || !root.has(ConceptTables.BOOST_PUMPS.key())
                || !root.at(ConceptTables.BOOST_PUMPS).has(side.key())) {
            return Optional::empty;
        }
        InputTable keys = root.at(ConceptTables.boostPump(side));
        OptionalDouble rise = keys.number(FeedInputs.PRESSURE_RISE);
        BoostDesign.Drive drive = keys.read(FeedInputs.DRIVE);
        refuseMissingGas(root, keys, drive, traits);
        double efficiency = keys.read(FeedInputs.DRIVE_EFFICIENCY, FeedInputs.driveEfficiency(drive));
        Supplier<PumpDesign> pump = PumpKeys.read(keys, propellant, !traits.turbines(), true);
        return () -> Optional.of(new BoostDesign(rise, drive, efficiency, pump.get()));
    }

    /** A turbine on gas needs that gas. */
    private static void refuseMissingGas(
            InputTable root, InputTable keys, BoostDesign.Drive drive, CycleTraits traits) {
        String missing =
                switch (drive) {
                    case LIQUID, GEAR -> "";
                    case HOT_GAS ->
                        traits.burners().isEmpty() ? "this cycle has no burner whose gas drives turbines" : "";
                    case TURBINE_EXHAUST ->
                        traits.dumps() ? "" : "this cycle burns its turbine gas in the chamber and has no exhaust";
                    case WARM_FUEL ->
                        GasKeys.coolants(root).contains(Side.FUEL.key())
                                ? ""
                                : "no jacket of this engine is cooled by the fuel and hands it on";
                };
        if (!missing.isEmpty()) {
            keys.problem(
                    FeedInputs.DRIVE,
                    '"' + Words.of(drive) + '"',
                    missing + "; allowed is liquid, gear, or a drive whose gas the engine has");
        }
    }

    private static String fileOf(Propellant propellant) {
        return propellant.file();
    }
}
