package dev.penstock.turbomachinery.pump;

import dev.penstock.fluids.Propellant;
import dev.penstock.input.Input;
import dev.penstock.input.InputGroup;
import dev.penstock.input.Usual;
import dev.penstock.provenance.Spread;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;

/**
 * What a file may say of a pump, with the usual values and limits by propellant. Nothing here is fitted to one engine; the
 * efficiency factor is the general distance between industrial and rocket pumps (decision 0050).
 */
public final class PumpInputs {

    public static final Input<Double> SPEED = Input.quantity(
                    "speed", Dimension.ROTATIONAL_SPEED, Range.of(10, 3e4), "Speed of its shaft")
            .computed("the fastest that suction, inducer and bearings allow");
    public static final Input<Double> EFFICIENCY = Input.ratio(
                    "efficiency", Range.of(0.05, 1), "Hydraulic power over shaft power")
            .computed("relation of efficiency to specific speed");
    public static final Input<Integer> STAGES =
            Input.whole("stages", 1, 20, "Number of stages").computed("the fewest that keep the tip speed");
    public static final Input<PumpType> TYPE = Input.choice("type", PumpType.class, "Centrifugal or axial stages")
            .usual(Usual.of(PumpType.AUTOMATIC, "centrifugal unless axial stages pay", ""));
    public static final Input<Double> HEAD_COEFFICIENT = Input.ratio(
                    "head_coefficient", Range.of(0.05, 1), "Head of a stage times g over its tip speed squared")
            .computed("relation of head coefficient to specific speed");
    public static final Input<ImpellerMaterial> IMPELLER_MATERIAL = Input.choice(
                    "impeller_material", ImpellerMaterial.class, "Alloy of impeller and inducer")
            .follows("the fastest alloy that the liquid allows, nasa-sp-8109");
    public static final Input<Double> TIP_SPEED_LIMIT = Input.quantity(
                    "tip_speed_limit", Dimension.VELOCITY, Range.of(20, 1200), "Highest speed at the impeller's rim")
            .follows("what the alloy stands in the liquid, nasa-sp-8109");
    public static final Input<Double> INDUCER_TIP_SPEED_LIMIT = Input.quantity(
                    "inducer_tip_speed_limit",
                    Dimension.VELOCITY,
                    Range.of(5, 800),
                    "Highest speed at the inducer's rim")
            .follows("by liquid, nasa-sp-8052");
    public static final Input<Double> INDUCER_FLOW_COEFFICIENT = Input.ratio(
                    "inducer_flow_coefficient", Range.of(0.04, 0.3), "Axial velocity over tip speed of the inducer")
            .usual(Usual.between(0.07, 0.09, 0.12, "nasa-sp-8052"));
    public static final Input<Double> INDUCER_HUB_RATIO = Input.ratio(
                    "inducer_hub_ratio", Range.of(0, 0.8), "Hub over tip diameter at the inducer's inlet")
            .usual(Usual.common(0.3));
    public static final Input<Double> SUPPRESSION_FACTOR = Input.ratio(
                    "suppression_factor",
                    Range.of(0, 10),
                    "Thermodynamic suppression head in use over that of the model")
            .follows("1 for a cryogenic liquid, else 0, nasa-tn-d-5292");
    /** Nominal over required: inlet pressure falls and hydrogen warms towards the end of a burn. */
    public static final Input<Double> SUCTION_MARGIN = Input.ratio(
                    "suction_margin", Range.of(1, 10), "Net positive suction head over what the inducer needs")
            .follows("by liquid, " + Usual.COMMON);

    public static final Input<Double> SPECIFIC_SPEED_LIMIT = Input.ratio(
                    "specific_speed_limit", Range.of(0.1, 5), "Highest specific speed that a stage is designed for")
            .follows("0.66 for a main pump, 1 for a boost pump, nasa-sp-125");
    public static final Input<Double> BEARING_SPEED_LIMIT = Input.quantity(
                    "bearing_speed_limit",
                    Dimension.VELOCITY,
                    Range.of(5, 400),
                    "Highest product of shaft radius and shaft speed at the bearings")
            .follows("by liquid, nasa-sp-8048");
    public static final Input<Double> SHAFT_STRESS = Input.quantity(
                    "shaft_stress", Dimension.PRESSURE, Range.of(1e7, 2e9), "Shear stress that the shaft is sized for")
            .usual(Usual.between(250e6, 350e6, 450e6, Usual.COMMON));
    /**
     * Bearings of turbopumps are not built smaller, whatever the torque: the shaft is bored for a tie bolt, must carry the
     * overhung wheels without bending and its bearings must pass their coolant. Motor spindles are simpler.
     */
    public static final Input<Double> SMALLEST_SHAFT_DIAMETER = Input.quantity(
                    "smallest_shaft_diameter", Dimension.LENGTH, Range.of(1e-3, 0.1), "Smallest shaft that is built")
            .follows("25 mm beside turbines, 12 mm beside motors");

    public static final Input<Double> EFFICIENCY_FACTOR = Input.ratio(
                    "efficiency_factor", Range.of(0.1, 1.2), "Efficiency over that of an industrial pump")
            .usual(Usual.between(0.76, 0.86, 0.94, "nasa-sp-125"));

    /** All of them. */
    public static final InputGroup GROUP = InputGroup.table(
            "pump",
            "A pump",
            SPEED,
            EFFICIENCY,
            STAGES,
            TYPE,
            HEAD_COEFFICIENT,
            IMPELLER_MATERIAL,
            TIP_SPEED_LIMIT,
            INDUCER_TIP_SPEED_LIMIT,
            INDUCER_FLOW_COEFFICIENT,
            INDUCER_HUB_RATIO,
            SUPPRESSION_FACTOR,
            SUCTION_MARGIN,
            SPECIFIC_SPEED_LIMIT,
            BEARING_SPEED_LIMIT,
            SHAFT_STRESS,
            SMALLEST_SHAFT_DIAMETER,
            EFFICIENCY_FACTOR);

    private PumpInputs() {}

    /**
     * @param propellant what is pumped
     * @return default of {@link #IMPELLER_MATERIAL}
     */
    public static Usual<ImpellerMaterial> impellerMaterial(Propellant propellant) {
        return Usual.of(ImpellerMaterial.usual(propellant), "the fastest alloy that the liquid allows", "nasa-sp-8109");
    }

    /**
     * @param material alloy of the impeller
     * @param propellant what is pumped
     * @return default of {@link #TIP_SPEED_LIMIT} (m/s)
     */
    public static Usual<Double> tipSpeed(ImpellerMaterial material, Propellant propellant) {
        return Usual.of(material.tipSpeed(propellant), material.title(), "nasa-sp-8109");
    }

    /**
     * @param propellant what is pumped
     * @return default of {@link #INDUCER_TIP_SPEED_LIMIT} (m/s)
     */
    public static Usual<Double> inducerTipSpeed(Propellant propellant) {
        return hydrogen(propellant)
                ? Usual.between(300, 340, 400, "nasa-sp-8052")
                : Usual.between(130, 170, 200, "nasa-sp-8052");
    }

    /**
     * @param propellant what is pumped
     * @return default of {@link #SUPPRESSION_FACTOR} (-): zero by physics where nothing evaporates
     */
    public static Usual<Double> suppression(Propellant propellant) {
        return cryogenic(propellant)
                ? Usual.between(0, 1, 2, "nasa-tn-d-5292")
                : Usual.of(Spread.exactly(0), "", "nasa-tn-d-5292");
    }

    /**
     * @param propellant what is pumped
     * @return default of {@link #SUCTION_MARGIN} (-)
     */
    public static Usual<Double> suctionMargin(Propellant propellant) {
        return hydrogen(propellant)
                ? Usual.between(1.2, 2.0, 3.0, Usual.COMMON)
                : Usual.between(1.1, 1.5, 2.2, Usual.COMMON);
    }

    /**
     * Main pumps are Francis impellers, 1200 to 2400 in US units: taken is the middle, where efficiency is within a per cent of its
     * best and the head still falls steadily with flow. Twelve built oxidizer pumps have 870 to 2340, their median 1570, with any one left out 1530 to 1600
     * (docs/validation/turbomachinery.md). A boost pump is a mixed-flow or axial wheel of little head, and turns faster.
     *
     * @param boost whether a main pump stands behind it
     * @return default of {@link #SPECIFIC_SPEED_LIMIT} (-)
     */
    public static Usual<Double> specificSpeed(boolean boost) {
        return boost
                ? Usual.between(0.8, 1.0, 1.3, "nasa-sp-125").because("mixed-flow wheels, 2200 to 3500 in US units")
                : Usual.between(0.44, 0.66, 0.88, "nasa-sp-125")
                        .because("middle of Francis impellers, 1200 to 2400 in US units");
    }

    /**
     * DN 1.6, 1.5 and 1.2 million mm·rpm; hydrogen has been shown to bear 2.0.
     *
     * @param propellant what is pumped
     * @return default of {@link #BEARING_SPEED_LIMIT} (m/s)
     */
    public static Usual<Double> bearingSpeed(Propellant propellant) {
        if (hydrogen(propellant)) {
            return Usual.between(79, 84, 105, "nasa-sp-8048");
        }
        return cryogenic(propellant)
                ? Usual.between(70, 79, 89, "nasa-sp-8048")
                : Usual.between(52, 63, 79, "nasa-sp-8048");
    }

    /**
     * @param motorDriven whether an electric motor drives the pump
     * @return default of {@link #SMALLEST_SHAFT_DIAMETER} (m)
     */
    public static Usual<Double> smallestShaft(boolean motorDriven) {
        return motorDriven
                ? Usual.between(0.008, 0.012, 0.020, Usual.COMMON)
                : Usual.between(0.020, 0.025, 0.035, "nasa-sp-8048");
    }

    private static boolean hydrogen(Propellant propellant) {
        return LightLiquid.is(propellant.loadingDensity());
    }

    private static boolean cryogenic(Propellant propellant) {
        return propellant.storageTemperature() < 150;
    }
}
