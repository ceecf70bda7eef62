package dev.penstock.cooling.wall;

import dev.penstock.input.Input;
import dev.penstock.input.InputGroup;
import dev.penstock.input.Usual;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;

/** What a file may say of the wall of a cooled chamber. */
public final class WallInputs {

    /** Thicknesses that a wall between gas and coolant may have (m). */
    public static final Range THICKNESSES = Range.of(1e-5, 0.1);

    public static final Input<String> MATERIAL = Input.text("material", "Material of the liner, a file in fluids/walls")
            .usual(Usual.common("copper-silver-zirconium"));
    public static final Input<String> CLOSEOUT_MATERIAL = Input.text(
                    "closeout_material", "Material of the outer shell, a file in fluids/walls")
            .usual(Usual.common("nickel-200"));
    public static final Input<Double> WALL_THICKNESS = Input.quantity(
                    "wall_thickness",
                    Dimension.LENGTH,
                    THICKNESSES,
                    "Thickness between gas and coolant, at the throat where channels are sized")
            .computed("usual for the channels");
    public static final Input<Double> CLOSEOUT_THICKNESS = Input.quantity(
                    "closeout_thickness", Dimension.LENGTH, Range.of(1e-5, 0.5), "Thickness of the outer shell")
            .computed("sized for the coolant pressure");
    public static final Input<String> COATING_NAME =
            Input.text("name", "Name of the layer").example("\"zirconia\"");
    public static final Input<Double> COATING_THICKNESS = Input.quantity(
                    "thickness", Dimension.LENGTH, Range.of(1e-7, 0.01), "Thickness of the layer")
            .example("\"0.1 mm\"");
    public static final Input<Double> COATING_CONDUCTIVITY = Input.quantity(
                    "conductivity", Dimension.CONDUCTIVITY, Range.of(0.01, 1000), "Thermal conductivity of the layer")
            .example("\"1.1 W/(m·K)\"");
    public static final Input<Double> COATING_HIGHEST_TEMPERATURE = Input.quantity(
                    "highest_temperature",
                    Dimension.TEMPERATURE,
                    Range.of(300, 4000),
                    "Hottest surface that the layer stands")
            .example("\"1600 K\"");
    /** A layer on the gas side of the liner. */
    public static final InputGroup COATING = InputGroup.table(
                    "coating",
                    "A layer on the gas side of the liner",
                    COATING_NAME,
                    COATING_THICKNESS,
                    COATING_CONDUCTIVITY,
                    COATING_HIGHEST_TEMPERATURE)
            .ifWritten();

    private WallInputs() {}
}
