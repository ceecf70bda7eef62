package dev.penstock.vehicle.reading;

import dev.penstock.errors.InvalidInput;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.UsualFluids;
import dev.penstock.input.InputTable;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import dev.penstock.vehicle.mass.BuiltUpDryMass;
import dev.penstock.vehicle.mass.DryMassDesign;
import dev.penstock.vehicle.mass.DryMassModel;
import dev.penstock.vehicle.mass.GivenDryMass;
import dev.penstock.vehicle.mass.PressurantSupply;
import dev.penstock.vehicle.mass.RecoveryHardware;
import dev.penstock.vehicle.mass.StructuralCoefficient;
import dev.penstock.vehicle.mass.TankMaterial;
import dev.penstock.vehicle.mass.TankShell;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads a {@code [dry_mass]} table: a mass, a structural coefficient, or how the stage is built for a line-by-line
 * estimate.
 */
final class DryMassReader {

    private static final double USUAL_GROWTH = 0.15;
    private static final String OWN_VAPOUR = "own-vapour";
    private static final String NONE = "none";

    private final InputTable table;

    DryMassReader(InputTable table) {
        this.table = table;
    }

    boolean commonBulkhead() {
        return table.flag("common_bulkhead", false);
    }

    DryMassModel model(boolean interstage, boolean recovered) {
        OptionalDouble mass = table.optionalQuantity("mass", Dimension.MASS, Range.POSITIVE);
        OptionalDouble coefficient =
                table.optionalQuantity("structural_coefficient", Dimension.RATIO, Range.of(0.001, 0.9));
        boolean simple = table.has("mass") || table.has("structural_coefficient");
        if (table.has("mass") && table.has("structural_coefficient")) {
            table.problem("mass", "given together with structural_coefficient", "give one of the two, or neither");
        }
        double growth = table.quantity("growth_margin", Dimension.RATIO, Range.of(0, 2), simple ? 0 : USUAL_GROWTH);
        if (mass.isPresent()) {
            return new GivenDryMass(mass.getAsDouble(), growth);
        }
        if (coefficient.isPresent()) {
            return new StructuralCoefficient(coefficient.getAsDouble(), growth);
        }
        if (simple) {
            return new StructuralCoefficient(0.1, 0); // stands in for a value whose problem is noted
        }
        return new BuiltUpDryMass(design(interstage, recovered, growth));
    }

    private DryMassDesign design(boolean interstage, boolean recovered, double growth) {
        String tanks = table.choice("tanks", List.of("by-volume", "integral", "pressure-stabilized"), "by-volume");
        Optional<TankShell.Kind> kind = tanks.equals("by-volume")
                ? Optional.empty()
                : Optional.of(tanks.equals("integral") ? TankShell.Kind.INTEGRAL : TankShell.Kind.PRESSURE_STABILIZED);
        TankMaterial material = table.choice("material", TankMaterial.class, TankMaterial.ALUMINIUM);
        String pressurant = table.text("pressurant", UsualFluids.pressurant());
        return new DryMassDesign(
                kind,
                material,
                supply(pressurant),
                pressurant.equals(OWN_VAPOUR),
                table.optionalQuantity("collapse_factor", Dimension.RATIO, Range.of(0.5, 10)),
                table.optionalQuantity("engine_mass", Dimension.MASS, Range.POSITIVE),
                interstage,
                table.quantity("fairing", Dimension.MASS, Range.NOT_NEGATIVE, 0),
                recovered
                        ? Optional.of(new RecoveryHardware(
                                table.quantity(
                                        "recovery_hardware",
                                        Dimension.RATIO,
                                        Range.of(0, 1),
                                        RecoveryHardware.USUAL_FRACTION),
                                0))
                        : Optional.empty(),
                growth);
    }

    /** Storable propellants of a stage with own-vapour pressurisation still need helium, so bottles are there too. */
    private Optional<PressurantSupply> supply(String pressurant) {
        double pressure = table.quantity("bottle_pressure", Dimension.PRESSURE, Range.of(5e6, 8e7), 30e6);
        double temperature = table.quantity("bottle_temperature", Dimension.TEMPERATURE, Range.of(60, 400), 290);
        OptionalDouble heated =
                table.optionalQuantity("pressurant_temperature", Dimension.TEMPERATURE, Range.of(60, 1000));
        boolean titanium = table.choice("bottle", List.of("composite", "titanium"), "composite")
                .equals("titanium");
        if (pressurant.equals(NONE)) {
            return Optional.empty();
        }
        return gas(pressurant.equals(OWN_VAPOUR) ? UsualFluids.pressurant() : pressurant)
                .map(gas -> PressurantSupply.of(
                        gas.fluid(),
                        pressure,
                        temperature,
                        heated,
                        titanium ? PressurantSupply.TITANIUM_BOTTLE : PressurantSupply.COMPOSITE_BOTTLE));
    }

    /** The gas of an id; empty after a noted problem. */
    private Optional<Propellant> gas(String id) {
        try {
            Propellant gas = FluidLibrary.open().propellant(id);
            if (gas.roles().contains(Propellant.Role.PRESSURANT)) {
                return Optional.of(gas);
            }
            table.problem(
                    "pressurant",
                    '"' + id + '"',
                    "write a fluid with the role pressurant, such as " + UsualFluids.pressurant() + ", " + OWN_VAPOUR
                            + " or " + NONE);
        } catch (InvalidInput e) {
            e.problems().forEach(problem -> table.problem("pressurant", problem.value(), problem.allowed()));
        }
        return Optional.empty();
    }
}
