package dev.penstock.vehicle.mass;

import dev.penstock.fluids.UsualFluids;
import dev.penstock.input.Belief;
import dev.penstock.input.Input;
import dev.penstock.input.InputGroup;
import dev.penstock.input.Usual;
import dev.penstock.provenance.Spread;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import java.util.List;

/** Inputs of the dry mass of a stage or a booster. */
public final class DryMassInputs {

    public static final Input<Boolean> COMMON_BULKHEAD = Input.flag("common_bulkhead", "Whether the tanks share a head")
            .usual(Usual.of(false, "two heads between them", ""));
    public static final Input<Double> MASS = Input.quantity(
                    "mass", Dimension.MASS, Range.NOT_NEGATIVE, "The whole dry mass but for a fairing; 0 for none")
            .computed("line by line from how the stage is built");
    public static final Input<Double> STRUCTURAL_COEFFICIENT = Input.ratio(
                    "structural_coefficient",
                    Range.of(0.001, 0.9),
                    "Dry mass over dry mass and propellant, a fairing aside")
            .computed("line by line from how the stage is built")
            .believed(Belief.factors(0.03, 0.2));
    /** 5 and 95 % at 0.73 and 1.35, where the fifteen flown stages of docs/validation/vehicle.md have 0.73 and 1.37. */
    public static final Input<Double> FACTOR = Input.ratio(
                    "factor", Range.of(0.2, 5), "What is estimated of the dry mass as it turns out over as estimated")
            .usual(Usual.of(
                    new Spread(0.6, 1, 1.5),
                    "as far as flown stages lie from their estimates",
                    "docs/validation/vehicle.md"));

    public static final Input<Double> GROWTH_MARGIN = Input.ratio(
                    "growth_margin",
                    Range.of(0, 2),
                    "Growth that is added to what is estimated of the dry mass, over it")
            .follows("15 % of an estimate, none of a given mass, " + Usual.COMMON);
    public static final Input<String> TANKS = Input.word(
                    "tanks", List.of("by-volume", "integral", "pressure-stabilized"), "How the tanks are built")
            .usual(Usual.of("by-volume", "mass by volume", ""));
    public static final Input<TankMaterial> MATERIAL = Input.choice(
                    "material", TankMaterial.class, "Material of the tanks")
            .usual(Usual.common(TankMaterial.ALUMINIUM));
    public static final Input<String> PRESSURANT = Input.text(
                    "pressurant", "What keeps the tanks under pressure: a file in fluids, own-vapour or none")
            .usual(Usual.common(UsualFluids.pressurant()));
    public static final Input<Double> COLLAPSE_FACTOR = Input.ratio(
                    "collapse_factor",
                    Range.of(0.5, 10),
                    "Pressurant needed over what fills the tank at its own temperature")
            .computed("by propellant");
    public static final Input<Double> ENGINE_MASS = Input.quantity(
                    "engine_mass", Dimension.MASS, Range.POSITIVE, "Mass of one engine")
            .computed("as the engine's balance estimates it");
    public static final Input<Double> FAIRING = Input.quantity(
                    "fairing",
                    Dimension.MASS,
                    Range.NOT_NEGATIVE,
                    "Mass of the payload fairing, which goes overboard while this stage burns")
            .usual(Usual.of(0.0, "none", ""));
    public static final Input<Double> RECOVERY_HARDWARE = Input.ratio(
                    "recovery_hardware", Range.of(0, 1), "Mass of legs, fins and the like over the other dry mass")
            .usual(Usual.common(RecoveryHardware.USUAL_FRACTION));
    public static final Input<Double> BOTTLE_PRESSURE = Input.quantity(
                    "bottle_pressure", Dimension.PRESSURE, Range.of(5e6, 8e7), "Pressure of the full bottles")
            .usual(Usual.common(30e6));
    public static final Input<Double> BOTTLE_TEMPERATURE = Input.quantity(
                    "bottle_temperature", Dimension.TEMPERATURE, Range.of(60, 400), "Temperature of the full bottles")
            .usual(Usual.of(290.0, "room temperature", ""));
    public static final Input<Double> PRESSURANT_TEMPERATURE = Input.quantity(
                    "pressurant_temperature",
                    Dimension.TEMPERATURE,
                    Range.of(60, 1000),
                    "Temperature to which the pressurant is heated")
            .computed("it is not heated");
    public static final Input<String> BOTTLE = Input.word(
                    "bottle", List.of("composite", "titanium"), "How bottles are built")
            .usual(Usual.common("composite"));

    public static final Input<Integer> STARTS = Input.whole(
                    "starts", 1, 50, "Starts in flight for which gas, pressurant and igniter fluid are carried")
            .computed("nothing is carried for them");

    public static final InputGroup GROUP = InputGroup.table(
            "dry_mass",
            "Dry mass: a mass, a structural coefficient, or how the stage is built",
            MASS,
            STRUCTURAL_COEFFICIENT,
            FACTOR,
            GROWTH_MARGIN,
            TANKS,
            MATERIAL,
            COMMON_BULKHEAD,
            PRESSURANT,
            COLLAPSE_FACTOR,
            BOTTLE_PRESSURE,
            BOTTLE_TEMPERATURE,
            PRESSURANT_TEMPERATURE,
            BOTTLE,
            STARTS,
            ENGINE_MASS,
            FAIRING,
            RECOVERY_HARDWARE);

    private DryMassInputs() {}
}
