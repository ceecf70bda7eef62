package dev.penstock.chamber.design;

import dev.penstock.chamber.flow.ExpansionMode;
import dev.penstock.input.Belief;
import dev.penstock.input.Input;
import dev.penstock.input.InputGroup;
import dev.penstock.input.Usual;
import dev.penstock.provenance.Scatter;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import java.util.Arrays;

/** What a file may say of a combustor, its nozzle and their losses. */
public final class ChamberInputs {

    public static final Input<Double> CONTRACTION_RATIO = Input.ratio(
                    "contraction_ratio", Range.of(1.1, 20), "Cross-section of the chamber over that of the throat")
            .follows("usual for a throat of this size, humble-1995");
    public static final Input<Double> CHARACTERISTIC_LENGTH = Input.quantity(
                    "characteristic_length",
                    Dimension.LENGTH,
                    Range.of(0.1, 10),
                    "Volume of the chamber over the area of the throat")
            .follows("usual for the pair, nasa-sp-125, or longer where the finest drops need it");
    public static final Input<Double> CONVERGENT_HALF_ANGLE = Input.quantity(
                    "convergent_half_angle",
                    Dimension.ANGLE,
                    Range.of(Math.toRadians(10), Math.toRadians(60)),
                    "Half angle of the cone before the throat")
            .usual(Usual.of(Math.toRadians(30), "20 to 45 degrees are usual", "nasa-sp-125"));
    public static final Input<InjectionState> INJECTION = Input.choice(
                    "injection", InjectionState.class, "State in which the propellants are injected")
            .follows("by cycle, fuel and coolant");
    public static final Input<Double> DROP_RADIUS = Input.quantity(
                    "drop_radius",
                    Dimension.LENGTH,
                    Range.of(5e-6, 5e-4),
                    "Radius of the drops that halve the mass of the spray, at the design point")
            .computed("that of an injector developed for the usual characteristic length")
            .scatter(Scatter.factors(0.8, 1.3));
    public static final Input<ExpansionMode> EXPANSION = Input.choice(
                    "expansion", ExpansionMode.class, "Composition of the gas in the ideal expansion")
            .usual(Usual.of(ExpansionMode.SHIFTING, "losses are taken off shifting equilibrium", ""));

    /** The combustor. */
    public static final InputGroup CHAMBER = InputGroup.table(
            "chamber",
            "The combustor",
            CONTRACTION_RATIO,
            CHARACTERISTIC_LENGTH,
            CONVERGENT_HALF_ANGLE,
            INJECTION,
            DROP_RADIUS,
            EXPANSION);

    public static final Input<Double> AREA_RATIO = Input.ratio(
                    "area_ratio", Range.of(1.05, 2000), "Area of the exit over that of the throat")
            .computed("from the exit pressure")
            .believed(Belief.factors(5, 300));
    public static final Input<Double> EXIT_PRESSURE = Input.quantity(
                    "exit_pressure", Dimension.PRESSURE, Range.of(10, 1e7), "Pressure of the gas at the exit")
            .computed("from the area ratio")
            .believed(Belief.factors(500, 1.5e5));
    public static final Input<NozzleDesign.Shape> SHAPE = Input.choice(
                    "shape", NozzleDesign.Shape.class, "Shape of the divergent wall")
            .usual(Usual.common(NozzleDesign.Shape.BELL));
    public static final Input<Double> LENGTH_FRACTION = Input.ratio(
                    "length_fraction", Range.of(0.5, 1.2), "Length over that of a cone of 15 degrees")
            .usual(Usual.common(0.8));
    public static final Input<Double> CONE_HALF_ANGLE = Input.quantity(
                    "cone_half_angle",
                    Dimension.ANGLE,
                    Range.of(Math.toRadians(5), Math.toRadians(40)),
                    "Half angle of a conical nozzle")
            .usual(Usual.common(Math.toRadians(15)));
    public static final Input<SeparationCriterion> SEPARATION = Input.choice(
                    "separation", SeparationCriterion.class, "Criterion for separation of the flow at the wall")
            .usual(Usual.of(SeparationCriterion.SCHMUCKER, "", "schmucker-1973"));

    public static final Input<AltitudeCompensation.Kind> COMPENSATION = Input.choice(
                    "compensation",
                    AltitudeCompensation.Kind.class,
                    "How the nozzle follows the ambient pressure, or stows: plug, dual bell, extension moved in flight or before ignition")
            .usual(Usual.of(AltitudeCompensation.Kind.NONE, "one piece", ""));
    public static final Input<Double> INNER_AREA_RATIO = Input.ratio(
                    "inner_area_ratio",
                    Range.of(1, 2000),
                    "Area ratio at the inflection of a dual bell, or at which an extendible or stowed nozzle parts")
            .computed("a nozzle in one piece, or a plug");

    /** The nozzle. */
    public static final InputGroup NOZZLE = InputGroup.table(
            "nozzle",
            "The nozzle: exactly one of area_ratio and exit_pressure",
            AREA_RATIO,
            EXIT_PRESSURE,
            SHAPE,
            LENGTH_FRACTION,
            CONE_HALF_ANGLE,
            SEPARATION,
            COMPENSATION,
            INNER_AREA_RATIO);

    /** Efficiencies that replace the models of the losses. */
    public static final InputGroup EFFICIENCIES = InputGroup.table(
            "efficiencies",
            "Efficiencies that replace the models of the losses",
            Arrays.stream(LossKind.values()).map(LossKind::efficiency).toArray(Input<?>[]::new));

    private ChamberInputs() {}
}
