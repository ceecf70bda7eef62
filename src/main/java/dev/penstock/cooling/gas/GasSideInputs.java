package dev.penstock.cooling.gas;

import dev.penstock.input.Input;
import dev.penstock.input.InputGroup;
import dev.penstock.input.Usual;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;

/** What a file may say of how heat reaches the wall of a cooled chamber. */
public final class GasSideInputs {

    private static final Range RATIOS = Range.of(1, 1e4);

    public static final Input<GasSideDesign.Model> GAS_SIDE = Input.choice(
                    "gas_side", GasSideDesign.Model.class, "Model of convection from the gas")
            .usual(Usual.of(
                    GasSideDesign.Model.BOUNDARY_LAYER, "nearest to the measured chambers", "kays-crawford-1993"));
    public static final Input<GasSideDesign.Properties> GAS_PROPERTIES = Input.choice(
                    "gas_properties", GasSideDesign.Properties.class, "Composition of the gas in the boundary layer")
            .usual(Usual.common(GasSideDesign.Properties.FROZEN));
    public static final Input<Boolean> RADIATION = Input.flag("radiation", "Whether radiation of the gas counts")
            .usual(Usual.of(true, "gas radiation taken along", ""));
    public static final Input<Boolean> SOOT = Input.flag("soot", "Whether soot on the wall counts")
            .usual(Usual.of(true, "a kerosene flame lays soot on the wall", "nasa-tp-2862"));
    public static final Input<Double> SOOT_RESISTANCE = Input.ratio(
                    "soot_resistance_si", Range.of(0, 1), "Thermal resistance of the soot, in m²·K/W")
            .computed("measured in a calorimeter chamber, nasa-tp-2862");
    public static final Input<Double> SOOT_FACTOR = Input.ratio(
                    "soot_factor", Range.of(0, 20), "Thermal resistance of the soot over the measured one")
            .usual(Usual.between(0.7, 1, SootLayer.TEXTBOOK_OVER_MEASURED, "nasa-tp-2862 and nasa-sp-125")
                    .because("as measured; a textbook chamber has seven times as much"));
    public static final Input<Double> HEAT_RELEASE_LENGTH = Input.quantity(
                    "heat_release_length",
                    Dimension.LENGTH,
                    Range.of(0, 1),
                    "Distance from the injector face over which the heat flux develops")
            .usual(Usual.between(0.051, HeatRelease.LENGTH, 0.127, "dexter-2004 and marshall-2005")
                    .because("51 to 127 mm were measured"));
    public static final Input<Double> HEAT_FLUX_FACTOR = Input.ratio(
                    "heat_flux_factor", Range.of(0.2, 3), "Heat flux over that of the gas-side model")
            .usual(Usual.between(0.7, 1, 1.3, "docs/validation/cooling.md")
                    .because("the gas-side model as it stands; measured chambers had 0.7 to 1.3 of it"));
    public static final Input<FilmDesign.Kind> FILM_KIND = Input.choice(
                    "kind", FilmDesign.Kind.class, "State in which the film enters")
            .usual(Usual.of(FilmDesign.Kind.LIQUID, "enters from the injector's rim", ""));
    public static final Input<Double> FILM_FUEL_FRACTION = Input.ratio(
                    "fuel_fraction",
                    Range.of(1e-5, 0.5),
                    "Share of the chamber's fuel that runs along the wall as a film; it cools and costs impulse")
            .example("0.03");
    public static final Input<Double> FILM_AREA_RATIO = Input.ratio(
                    "area_ratio", RATIOS, "Cross-section over throat area where the film enters")
            .computed("enters at the injector's rim");
    public static final Input<Boolean> FILM_UPSTREAM = Input.flag(
                    "upstream", "Whether that place is upstream of the throat")
            .usual(Usual.of(true, "that place is upstream of the throat", ""));
    public static final Input<Double> FILM_TEMPERATURE = Input.quantity(
                    "temperature", Dimension.TEMPERATURE, Range.of(10, 3000), "Temperature with which the film enters")
            .computed("enters as the jacket's coolant does where that is the fuel, else as stored");
    public static final Input<Double> FILM_SLOT_HEIGHT = Input.quantity(
                    "slot_height", Dimension.LENGTH, Range.of(1e-5, 0.1), "Height of the slot of a gaseous film")
            .usual(Usual.common(1e-3));
    public static final Input<Double> FILM_EFFICIENCY = Input.ratio(
                    "efficiency",
                    Range.of(0.01, 1),
                    "Share of a liquid film that stays on the wall until it evaporates")
            .usual(Usual.between(0.3, 0.5, 0.7, "grisson-1991").because("0.3 to 0.7 of a liquid film stays"));
    /** A film of fuel along the wall. */
    public static final InputGroup FILM = InputGroup.table(
                    "film",
                    "A film of fuel along the wall, which cools it and costs impulse",
                    FILM_KIND,
                    FILM_FUEL_FRACTION,
                    FILM_AREA_RATIO,
                    FILM_UPSTREAM,
                    FILM_TEMPERATURE,
                    FILM_SLOT_HEIGHT,
                    FILM_EFFICIENCY)
            .ifWritten();

    public static final Input<Double> ZONE_FLOW_FRACTION = Input.ratio(
                    "flow_fraction", Range.of(0.001, 0.6), "Share of the chamber's flow that the outer row injects")
            .example("0.2");
    public static final Input<Double> ZONE_MIXTURE_RATIO_BIAS = Input.ratio(
                    "mixture_ratio_bias",
                    Range.of(0.01, 20),
                    "Mixture ratio of the outer row over that of the whole chamber")
            .example("0.6");
    /** An outer row of the injector with a mixture ratio of its own. */
    public static final InputGroup OUTER_ZONE = InputGroup.table(
                    "outer_zone",
                    "An outer row of the injector at another mixture ratio, whose gas runs along the wall and costs impulse",
                    ZONE_FLOW_FRACTION,
                    ZONE_MIXTURE_RATIO_BIAS)
            .ifWritten();

    private GasSideInputs() {}
}
