package dev.penstock.vehicle.reading;

import dev.penstock.errors.InvalidInput;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.UsualFluids;
import dev.penstock.input.InputTable;
import dev.penstock.input.Usual;
import dev.penstock.vehicle.engine.StartNeeds;
import dev.penstock.vehicle.mass.BuiltUpDryMass;
import dev.penstock.vehicle.mass.DryMassDesign;
import dev.penstock.vehicle.mass.DryMassInputs;
import dev.penstock.vehicle.mass.DryMassModel;
import dev.penstock.vehicle.mass.FactoredDryMass;
import dev.penstock.vehicle.mass.FairedDryMass;
import dev.penstock.vehicle.mass.GivenDryMass;
import dev.penstock.vehicle.mass.PressurantSupply;
import dev.penstock.vehicle.mass.RecoveryHardware;
import dev.penstock.vehicle.mass.StructuralCoefficient;
import dev.penstock.vehicle.mass.TankMaterial;
import dev.penstock.vehicle.mass.TankShell;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Reads a {@code [dry_mass]} table: a mass, a structural coefficient, or how the stage is built for a line-by-line
 * estimate.
 */
final class DryMassReader {

    private static final double USUAL_GROWTH = 0.15;
    private static final String OWN_VAPOUR = "own-vapour";
    private static final String NONE = "none";

    private final InputTable table;
    private final FluidLibrary fluids;

    DryMassReader(InputTable table, FluidLibrary fluids) {
        this.table = table;
        this.fluids = fluids;
    }

    boolean commonBulkhead() {
        return table.read(DryMassInputs.COMMON_BULKHEAD);
    }

    DryMassModel model(boolean interstage, boolean recovered) {
        OptionalDouble mass = table.number(DryMassInputs.MASS);
        OptionalDouble coefficient = table.number(DryMassInputs.STRUCTURAL_COEFFICIENT);
        boolean simple = table.has(DryMassInputs.MASS) || table.has(DryMassInputs.STRUCTURAL_COEFFICIENT);
        if (table.has(DryMassInputs.MASS) && table.has(DryMassInputs.STRUCTURAL_COEFFICIENT)) {
            table.problem(
                    DryMassInputs.MASS,
                    "given together with structural_coefficient",
                    "give one of the two, or neither");
        }
        double growth = table.read(
                DryMassInputs.GROWTH_MARGIN,
                simple ? Usual.of(0.0, "the mass as given", "") : Usual.common(USUAL_GROWTH));
        double factor = table.read(
                DryMassInputs.FACTOR,
                table.has(DryMassInputs.MASS)
                        ? Usual.of(1.0, "the mass as given", "")
                        : DryMassInputs.FACTOR.standing());
        DryMassModel model = model(mass, coefficient, simple, growth, interstage, recovered);
        return new FactoredDryMass(model, factor);
    }

    private DryMassModel model(
            OptionalDouble mass,
            OptionalDouble coefficient,
            boolean simple,
            double growth,
            boolean interstage,
            boolean recovered) {
        if (mass.isPresent()) {
            return covered(new GivenDryMass(mass.getAsDouble(), growth));
        }
        if (coefficient.isPresent()) {
            return covered(new StructuralCoefficient(coefficient.getAsDouble(), growth));
        }
        if (simple) {
            return new StructuralCoefficient(0.1, 0); // stands in for a value whose problem is noted
        }
        return new BuiltUpDryMass(design(interstage, recovered, growth));
    }

    private DryMassModel covered(DryMassModel stage) {
        double fairing = table.read(DryMassInputs.FAIRING);
        return fairing > 0 ? new FairedDryMass(stage, fairing) : stage;
    }

    private DryMassDesign design(boolean interstage, boolean recovered, double growth) {
        String tanks = table.read(DryMassInputs.TANKS);
        Optional<TankShell.Kind> kind = tanks.equals("by-volume")
                ? Optional.empty()
                : Optional.of(tanks.equals("integral") ? TankShell.Kind.INTEGRAL : TankShell.Kind.PRESSURE_STABILIZED);
        TankMaterial material = table.read(DryMassInputs.MATERIAL);
        String pressurant = table.read(DryMassInputs.PRESSURANT);
        return new DryMassDesign(
                kind,
                material,
                supply(pressurant),
                pressurant.equals(OWN_VAPOUR),
                table.number(DryMassInputs.COLLAPSE_FACTOR),
                table.number(DryMassInputs.ENGINE_MASS),
                interstage,
                table.read(DryMassInputs.FAIRING),
                recovered
                        ? Optional.of(new RecoveryHardware(table.read(DryMassInputs.RECOVERY_HARDWARE), 0))
                        : Optional.empty(),
                starts(pressurant),
                growth);
    }

    /** Engines start on the pressurant; helium where there is none. */
    private Optional<StartNeeds.Bottle> starts(String pressurant) {
        OptionalInt count = table.count(DryMassInputs.STARTS);
        double pressure = table.read(DryMassInputs.BOTTLE_PRESSURE);
        double temperature = table.read(DryMassInputs.BOTTLE_TEMPERATURE);
        boolean bottled = !pressurant.equals(OWN_VAPOUR) && !pressurant.equals(NONE);
        return count.isEmpty()
                ? Optional.empty()
                : gas(bottled ? pressurant : UsualFluids.pressurant())
                        .map(gas -> new StartNeeds.Bottle(count.getAsInt(), gas.fluid(), pressure, temperature));
    }

    /** Storable propellants of a stage with own-vapour pressurisation still need helium, so bottles are there too. */
    private Optional<PressurantSupply> supply(String pressurant) {
        double pressure = table.read(DryMassInputs.BOTTLE_PRESSURE);
        double temperature = table.read(DryMassInputs.BOTTLE_TEMPERATURE);
        OptionalDouble heated = table.number(DryMassInputs.PRESSURANT_TEMPERATURE);
        boolean titanium = table.read(DryMassInputs.BOTTLE).equals("titanium");
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
            Propellant gas = fluids.propellant(id);
            if (gas.roles().contains(Propellant.Role.PRESSURANT)) {
                return Optional.of(gas);
            }
            table.problem(
                    DryMassInputs.PRESSURANT,
                    '"' + id + '"',
                    "write a fluid with the role pressurant, such as " + UsualFluids.pressurant() + ", " + OWN_VAPOUR
                            + " or " + NONE);
        } catch (InvalidInput e) {
            e.problems()
                    .forEach(problem -> table.problem(DryMassInputs.PRESSURANT, problem.value(), problem.allowed()));
        }
        return Optional.empty();
    }
}
