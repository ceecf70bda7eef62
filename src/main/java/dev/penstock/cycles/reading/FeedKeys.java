package dev.penstock.cycles.reading;

import dev.penstock.cycles.concept.BoostDesign;
import dev.penstock.cycles.concept.Burner;
import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.cycles.concept.FeedDesign;
import dev.penstock.cycles.concept.Side;
import dev.penstock.errors.InvalidInput;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.Propellant;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.turbomachinery.pump.HydraulicTurbine;
import dev.penstock.turbomachinery.pump.PumpDefaults;
import dev.penstock.turbomachinery.pump.PumpDesign;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** Reads what a concept says about one propellant from tank to injector. */
final class FeedKeys {

    private static final Range TANK_PRESSURES = Range.of(1e4, 6e7);
    private static final double GEAR_EFFICIENCY = 0.96;
    private static final double MAIN_VALVE = 0.03;
    private static final double TRIM = 0.07;
    private static final Range LOSSES = Range.of(0, 1);

    private final FluidLibrary fluids;

    FeedKeys(FluidLibrary fluids) {
        this.fluids = fluids;
    }

    /** The propellant of a side; empty after a noted problem. */
    Optional<Propellant> propellant(ConceptKeys root, Side side) {
        ConceptKeys keys = root.table("propellants");
        String id = keys.text(side.key());
        if (id.isEmpty()) {
            return Optional.empty();
        }
        try {
            Propellant propellant = fluids.propellant(id);
            Propellant.Role role = side == Side.OXIDIZER ? Propellant.Role.OXIDIZER : Propellant.Role.FUEL;
            if (!propellant.roles().contains(role)) {
                keys.problem(side.key(), '"' + id + '"', "this fluid serves as " + propellant.roles());
                return Optional.empty();
            }
            return Optional.of(propellant);
        } catch (InvalidInput e) {
            e.problems().forEach(p -> keys.problem(side.key(), p.value(), p.allowed()));
            return Optional.empty();
        }
    }

    Supplier<FeedDesign> read(ConceptKeys root, Side side, Propellant propellant, CycleTraits traits) {
        boolean subcooled = root.table("propellants")
                .choice(side.key() + "_loading", List.of("normal", "subcooled"), "normal", ConceptKeys.COMMON)
                .equals("subcooled");
        if (subcooled && propellant.subcooledTemperature().isEmpty()) {
            root.table("propellants")
                    .problem(
                            side.key() + "_loading",
                            "\"subcooled\"",
                            propellant.file() + " states no subcooled loading");
        }
        ConceptKeys tank = root.table("tanks").table(side.key());
        OptionalDouble pressure = traits.pumped()
                ? OptionalDouble.of(tank.quantity(
                        "pressure",
                        Dimension.PRESSURE,
                        TANK_PRESSURES,
                        propellant.storagePressure(),
                        fileOf(propellant)))
                : tank.optional("pressure", Dimension.PRESSURE, TANK_PRESSURES, "what the chamber pressure asks for");
        double usualTemperature = subcooled
                ? propellant.subcooledTemperature().orElse(propellant.storageTemperature())
                : propellant.storageTemperature();
        double temperature = tank.quantity(
                "temperature",
                Dimension.TEMPERATURE,
                Range.of(
                        propellant.fluid().range().minimumTemperature(),
                        propellant.fluid().range().maximumTemperature()),
                usualTemperature,
                fileOf(propellant));
        ConceptKeys lines = root.table("lines");
        double suction = lines.quantity(
                side.key() + "_suction_loss",
                Dimension.PRESSURE,
                Range.of(0, 5e6),
                40e3,
                "35 to 50 kPa are usual, " + ConceptKeys.COMMON);
        double line = lines.quantity(
                side.key() + "_discharge_loss",
                Dimension.RATIO,
                LOSSES,
                0.02,
                "of chamber pressure, " + ConceptKeys.COMMON);
        boolean untrimmed = allThroughPreburner(side, traits);
        double valve = lines.quantity(
                side.key() + "_valve_loss",
                Dimension.RATIO,
                LOSSES,
                untrimmed ? MAIN_VALVE : MAIN_VALVE + TRIM,
                (untrimmed
                                ? "of chamber pressure, main valve only: the flows are trimmed in the other propellant; "
                                : "of chamber pressure: main valve 3 %, calibration orifice that trims flow and mixture ratio 7 %; ")
                        + ConceptKeys.COMMON);
        double injector = root.table("injector")
                .quantity(
                        side.key() + "_loss",
                        Dimension.RATIO,
                        LOSSES,
                        0.18,
                        "15 to 20 % of chamber pressure, nasa-sp-125");
        Supplier<PumpDesign> pump = traits.pumped()
                ? PumpKeys.read(root.table("pumps").table(side.key()), propellant, !traits.turbines())
                : () -> PumpDefaults.of(propellant);
        Supplier<Optional<BoostDesign>> boost = boost(root, side, propellant, traits);
        return () -> new FeedDesign(
                propellant, pressure, temperature, suction, line, valve, injector, pump.get(), boost.get());
    }

    /** In staged combustion one propellant goes whole through the preburner; what trims the engine sits in the other. */
    private static boolean allThroughPreburner(Side side, CycleTraits traits) {
        return traits.burners().equals(List.of(side == Side.FUEL ? Burner.FUEL_RICH : Burner.OXIDIZER_RICH));
    }

    /** A boost pump is there if its table is. */
    private static Supplier<Optional<BoostDesign>> boost(
            ConceptKeys root, Side side, Propellant propellant, CycleTraits traits) {
        if (!traits.pumped()
                || !root.has("boost_pumps")
                || !root.table("boost_pumps").has(side.key())) {
            return Optional::empty;
        }
        ConceptKeys keys = root.table("boost_pumps").table(side.key());
        OptionalDouble rise = keys.optional(
                "pressure_rise",
                Dimension.PRESSURE,
                Range.of(1e4, 2e7),
                "what the main pump's suction needs at the speed that its other limits allow");
        BoostDesign.Drive drive = keys.choice(
                "drive", BoostDesign.Drive.class, BoostDesign.Drive.LIQUID, "hydraulic turbine, " + ConceptKeys.COMMON);
        double efficiency = keys.quantity(
                "drive_efficiency",
                Dimension.RATIO,
                Range.of(0.05, 1),
                drive == BoostDesign.Drive.LIQUID
                        ? HydraulicTurbine.efficiency().spread().mode()
                        : GEAR_EFFICIENCY,
                "hydraulic turbine or gear, " + ConceptKeys.COMMON);
        Supplier<PumpDesign> pump = PumpKeys.read(keys, propellant, !traits.turbines());
        return () -> Optional.of(new BoostDesign(rise, drive, efficiency, pump.get()));
    }

    private static String fileOf(Propellant propellant) {
        return propellant.file();
    }
}
