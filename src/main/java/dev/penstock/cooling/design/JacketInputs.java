package dev.penstock.cooling.design;

import dev.penstock.cooling.coolant.CoolantSideInputs;
import dev.penstock.cooling.gas.GasSideInputs;
import dev.penstock.cooling.wall.ChannelKind;
import dev.penstock.cooling.wall.WallInputs;
import dev.penstock.input.Input;
import dev.penstock.input.InputGroup;
import dev.penstock.input.Usual;
import dev.penstock.provenance.Scatter;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import java.util.List;
import java.util.Set;

/** What a file may say of a cooling jacket. */
public final class JacketInputs {

    private static final Range RATIOS = Range.of(1, 1e4);
    private static final Range WIDTHS = Range.of(1e-4, 0.1);
    private static final String SIZED = "sized to keep the wall limits";
    public static final Input<ChannelKind> CHANNELS = Input.choice(
                    "channels", ChannelKind.class, "How the coolant passages are made")
            .usual(Usual.common(ChannelKind.MILLED));
    public static final Input<Double> CHANNEL_COUNT = Input.ratio(
                    "channel_count", Range.of(4, 5000), "Number of channels at the throat")
            .computed(SIZED);
    public static final Input<Double> CHANNEL_WIDTH = Input.quantity(
                    "channel_width", Dimension.LENGTH, WIDTHS, "Width of a channel, everywhere the same")
            .computed(SIZED);
    public static final Input<Double> CHANNEL_HEIGHT = Input.quantity(
                    "channel_height", Dimension.LENGTH, WIDTHS, "Height of a channel, everywhere the same")
            .computed(SIZED);
    public static final Input<Double> ROUGHNESS = Input.quantity(
                    "roughness", Dimension.LENGTH, Range.of(0, 1e-3), "Sand roughness of the channels")
            .computed("usual for the way of making");
    public static final Input<Double> SECTION_AREA_RATIO = Input.ratio(
                    "area_ratio", RATIOS, "Cross-section over throat area where the channel has this size")
            .example("1");
    public static final Input<Boolean> SECTION_UPSTREAM = Input.flag(
                    "upstream", "Whether that place is upstream of the throat")
            .usual(Usual.of(false, "downstream, or the throat itself", ""));
    public static final Input<Double> SECTION_WIDTH = Input.quantity(
                    "width", Dimension.LENGTH, WIDTHS, "Width of a channel there")
            .example("\"1 mm\"");
    public static final Input<Double> SECTION_HEIGHT = Input.quantity(
                    "height", Dimension.LENGTH, WIDTHS, "Height of a channel there")
            .example("\"3 mm\"");
    public static final Input<Double> SECTION_WALL = Input.quantity(
                    "wall_thickness",
                    Dimension.LENGTH,
                    WallInputs.THICKNESSES,
                    "Thickness between gas and coolant there")
            .computed("that of the jacket");
    /** Channel size along the axis. */
    public static final InputGroup SECTIONS = InputGroup.table(
                    "sections",
                    "Size of the channels along the axis, from the injector to the nozzle end",
                    SECTION_AREA_RATIO,
                    SECTION_UPSTREAM,
                    SECTION_WIDTH,
                    SECTION_HEIGHT,
                    SECTION_WALL)
            .repeated();

    public static final Input<CoolantRoute.Kind> ROUTE = Input.choice(
                    "route", CoolantRoute.Kind.class, "Way of the coolant")
            .usual(Usual.common(CoolantRoute.Kind.COUNTERFLOW));
    public static final Input<Double> END_AREA_RATIO = Input.ratio(
                    "end_area_ratio", RATIOS, "Area ratio at which the jacket ends, where the next circuit begins")
            .computed("nozzle exit, at most " + CoolantRoute.LARGEST_DEFAULT_AREA_RATIO
                    + " or where a radiating extension lasts");
    public static final Input<Double> ENTRY_AREA_RATIO = Input.ratio(
                    "entry_area_ratio", RATIOS, "Area ratio at which the coolant enters")
            .computed("half the end, or the throat for a split");
    public static final Input<Double> UPSTREAM_SHARE = Input.ratio(
                    "upstream_share", Range.of(0.01, 0.99), "Share of a split flow that goes towards the injector")
            .usual(Usual.of(0.5, "even split", ""));
    public static final Input<ExtensionKind> EXTENSION = Input.choice(
                    "extension",
                    ExtensionKind.class,
                    "How the nozzle behind the last jacket is kept from burning; without a jacket, how the whole wall is")
            .usual(Usual.common(ExtensionKind.RADIATING));
    public static final Input<String> EXTENSION_MATERIAL = Input.text(
                    "extension_material", "Material of the sheet behind the jacket, a file in fluids/walls")
            .usual(Usual.common(ExtensionKind.RADIATING.usualMaterial().orElseThrow()));
    public static final Input<Double> LINING_END = Input.ratio(
                    "lining_end_area_ratio",
                    RATIOS,
                    "Area ratio at which an ablative wall ends; a sheet that radiates follows to the exit")
            .computed("the nozzle exit");
    public static final Input<Integer> CELLS = Input.whole("cells", 10, 2000, "Cells along the jacket")
            .usual(Usual.of(100, "resolution along the axis", ""));
    public static final Input<Double> WALL_TEMPERATURE_LIMIT = Input.quantity(
                    "wall_temperature", Dimension.TEMPERATURE, Range.of(300, 4000), "Hottest gas-side wall")
            .computed("limit of the material")
            .scatter(Scatter.offsets(60, 60));
    public static final Input<Double> COOLANT_WALL_TEMPERATURE_LIMIT = Input.quantity(
                    "coolant_wall_temperature", Dimension.TEMPERATURE, Range.of(100, 3000), "Hottest coolant-side wall")
            .computed("coking limit of the coolant")
            .scatter(Scatter.offsets(30, 30));
    public static final Input<Double> COKING_SHARE = Input.ratio(
                    "coking_share",
                    Range.of(0, 1),
                    "Share of the way from where the coolant's deposits set in to the hottest wall that is known to serve")
            .usual(Usual.between(0, 0, 0.5, Usual.COMMON).because("where deposits set in"));
    /** Why the default of {@link #PRESSURE_DROP_LIMIT} is what it is. */
    public static final String PRESSURE_DROP_REASON =
            "10 to 25 % of chamber pressure are usual up to 10 MPa, more above,"
                    + " 40 to 60 % where the heat drives the pumps";

    public static final Input<Double> PRESSURE_DROP_LIMIT = Input.ratio(
                    "pressure_drop_fraction", Range.of(1e-3, 5), "Largest pressure drop over chamber pressure")
            .follows(PRESSURE_DROP_REASON + ", " + Usual.COMMON)
            .scatter(Scatter.factors(0.7, 1.5));
    public static final Input<Double> LIFE_LIMIT = Input.ratio(
                    "life", Range.of(1, 1e6), "Load cycles that the liner has to stand")
            .usual(Usual.between(5, 10, 20, Usual.COMMON).because("load cycles"));
    /** What the jacket is held against. */
    public static final InputGroup LIMITS = InputGroup.table(
            "limits",
            "What the jacket is held against",
            WALL_TEMPERATURE_LIMIT,
            COOLANT_WALL_TEMPERATURE_LIMIT,
            COKING_SHARE,
            PRESSURE_DROP_LIMIT,
            LIFE_LIMIT);
    /** All of them; a cycle adds which propellant cools. */
    public static final InputGroup GROUP = InputGroup.table(
                    "cooling",
                    "A cooling jacket",
                    GasSideInputs.HEAT_FLUX_FACTOR,
                    WallInputs.MATERIAL,
                    WallInputs.CLOSEOUT_MATERIAL,
                    WallInputs.WALL_THICKNESS,
                    WallInputs.CLOSEOUT_THICKNESS,
                    CHANNELS,
                    CHANNEL_COUNT,
                    CHANNEL_WIDTH,
                    CHANNEL_HEIGHT,
                    ROUGHNESS,
                    ROUTE,
                    END_AREA_RATIO,
                    ENTRY_AREA_RATIO,
                    UPSTREAM_SHARE,
                    GasSideInputs.GAS_SIDE,
                    GasSideInputs.GAS_PROPERTIES,
                    GasSideInputs.RADIATION,
                    GasSideInputs.SOOT,
                    GasSideInputs.SOOT_RESISTANCE,
                    GasSideInputs.SOOT_FACTOR,
                    GasSideInputs.HEAT_RELEASE_LENGTH,
                    CoolantSideInputs.CORRELATION,
                    CoolantSideInputs.CURVATURE,
                    CoolantSideInputs.ROUGH_WALL,
                    CELLS,
                    EXTENSION,
                    EXTENSION_MATERIAL,
                    LINING_END)
            .ifWritten()
            .with(WallInputs.COATING, SECTIONS, GasSideInputs.FILM, GasSideInputs.OUTER_ZONE, LIMITS);

    /** What belongs to the wall as a whole: it is stated once, whatever cools the wall. */
    private static final Set<Input<?>> OF_THE_WALL = Set.of(
            GasSideInputs.HEAT_FLUX_FACTOR,
            GasSideInputs.GAS_SIDE,
            GasSideInputs.GAS_PROPERTIES,
            GasSideInputs.RADIATION,
            GasSideInputs.SOOT,
            GasSideInputs.SOOT_RESISTANCE,
            EXTENSION,
            EXTENSION_MATERIAL,
            LINING_END);

    /** Inputs of a jacket that does not begin at the injector. */
    public static final List<Input<?>> OF_ONE_CIRCUIT = GROUP.inputs().stream()
            .filter(input -> !OF_THE_WALL.contains(input))
            .toList();

    private JacketInputs() {}
}
