package dev.penstock.cycles.reading;

import dev.penstock.cooling.coolant.CoolantSideDesign;
import dev.penstock.cooling.design.ChannelLayout;
import dev.penstock.cooling.design.ChannelSection;
import dev.penstock.cooling.design.CoolantRoute;
import dev.penstock.cooling.design.ExtensionDesign;
import dev.penstock.cooling.design.JacketDesign;
import dev.penstock.cooling.design.JacketLimits;
import dev.penstock.cooling.gas.FilmDesign;
import dev.penstock.cooling.gas.GasSideDesign;
import dev.penstock.cooling.wall.ChannelKind;
import dev.penstock.cooling.wall.Coating;
import dev.penstock.cooling.wall.WallDesign;
import dev.penstock.cycles.concept.CoolingDesign;
import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.cycles.concept.Side;
import dev.penstock.input.InputTable;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** Reads the table {@code [cooling]}: which propellant cools, and the jacket. Absent means an uncooled chamber. */
final class CoolingKeys {

    private static final double HEATER_DROP = 0.4;
    private static final double LARGEST_DROP = 0.6;
    private static final String SIZED = "sized to keep the wall limits";

    private CoolingKeys() {}

    static Supplier<Optional<CoolingDesign>> read(ConceptKeys root, CycleTraits traits, double chamberPressure) {
        if (!root.has("cooling")) {
            root.choice("cooling", List.of("none"), "none", "no jacket without a table [cooling]");
            return Optional::empty;
        }
        ConceptKeys keys = root.table("cooling");
        String coolant = keys.choice("coolant", List.of("fuel", "oxidizer", "none"), "fuel", ConceptKeys.COMMON);
        double share = keys.quantity("flow_fraction", Dimension.RATIO, Range.of(0.01, 1), 1, "all of its chamber flow");
        double factor = keys.quantity(
                "heat_flux_factor", Dimension.RATIO, Range.of(0.2, 3), 1, "the gas-side model as it stands");
        Supplier<WallDesign> wall = wall(keys);
        Supplier<ChannelLayout> channels = channels(keys);
        Supplier<CoolantRoute> route = route(keys);
        Supplier<GasSideDesign> gasSide = gasSide(keys);
        CoolantSideDesign.Correlation correlation = keys.choice(
                "correlation",
                CoolantSideDesign.Correlation.class,
                CoolantSideDesign.Correlation.AUTOMATIC,
                "by coolant and state");
        boolean curvature = keys.flag("curvature", true, "curvature of the throat taken along");
        boolean rough = keys.flag("rough_wall", false, "roughness raises friction only");
        Supplier<JacketLimits> limits = limits(keys.table("limits"), usualDrop(traits, chamberPressure));
        int cells = keys.count("cells", 10, 2000, JacketDesign.DEFAULT_CELLS, "resolution along the axis");
        ExtensionDesign extension = keys.optionalText("extension_material")
                .map(ExtensionDesign::new)
                .orElse(ExtensionDesign.standard());
        if (coolant.equals("none")) {
            return Optional::empty;
        }
        Side side = coolant.equals("fuel") ? Side.FUEL : Side.OXIDIZER;
        return () -> Optional.of(new CoolingDesign(
                side,
                share,
                new JacketDesign(
                        wall.get(),
                        channels.get(),
                        route.get(),
                        gasSide.get(),
                        new CoolantSideDesign(correlation, curvature, rough),
                        limits.get(),
                        cells,
                        extension),
                factor));
    }

    private static Supplier<WallDesign> wall(ConceptKeys keys) {
        WallDesign usual = JacketDesign.automatic().wall();
        String material = keys.optionalText("material").orElse(usual.material());
        String closeout = keys.optionalText("closeout_material").orElse(usual.closeoutMaterial());
        OptionalDouble thickness =
                keys.optional("wall_thickness", Dimension.LENGTH, Range.of(1e-5, 0.1), "usual for the channels");
        OptionalDouble shell = keys.optional(
                "closeout_thickness", Dimension.LENGTH, Range.of(1e-5, 0.5), "sized for the coolant pressure");
        boolean coated = keys.has("coating");
        Optional<Coating> coating = Optional.empty();
        if (coated) {
            ConceptKeys layer = keys.table("coating");
            String name = layer.text("name");
            double depth = layer.required("thickness", Dimension.LENGTH, Range.of(1e-7, 0.01));
            double conductivity = layer.required("conductivity", Dimension.CONDUCTIVITY, Range.of(0.01, 1000));
            double highest = layer.required("highest_temperature", Dimension.TEMPERATURE, Range.of(300, 4000));
            if (depth > 0 && conductivity > 0 && highest > 0) {
                coating = Optional.of(new Coating(name, depth, conductivity, highest));
            }
        }
        Optional<Coating> layer = coating;
        return () -> new WallDesign(material, thickness, closeout, shell, layer);
    }

    private static Supplier<ChannelLayout> channels(ConceptKeys keys) {
        ChannelKind kind = keys.choice("channels", ChannelKind.class, ChannelKind.MILLED, ConceptKeys.COMMON);
        OptionalDouble count = keys.optional("channel_count", Dimension.RATIO, Range.of(4, 5000), SIZED);
        OptionalDouble width = keys.optional("channel_width", Dimension.LENGTH, Range.of(1e-4, 0.1), SIZED);
        OptionalDouble height = keys.optional("channel_height", Dimension.LENGTH, Range.of(1e-4, 0.1), SIZED);
        OptionalDouble roughness =
                keys.optional("roughness", Dimension.LENGTH, Range.of(0, 1e-3), "usual for the way of making");
        if (width.isPresent() != height.isPresent()) {
            keys.problem(
                    width.isPresent() ? "channel_height" : "channel_width",
                    "missing",
                    "write channel_width and channel_height together, or neither to have them sized");
        }
        List<ChannelSection> sections = sections(keys);
        if (!sections.isEmpty() && width.isPresent()) {
            keys.problem("channel_width", "given", "write channel_width or [[cooling.sections]], not both");
        } else if (width.isPresent() && height.isPresent()) {
            sections.add(new ChannelSection(1, false, width.getAsDouble(), height.getAsDouble()));
        }
        return () -> new ChannelLayout(kind, count, sections, roughness);
    }

    /** Tables {@code [[cooling.sections]]}: channel size along the axis, from the injector to the nozzle end. */
    private static List<ChannelSection> sections(ConceptKeys keys) {
        List<ChannelSection> sections = new ArrayList<>();
        double last = Double.NEGATIVE_INFINITY;
        for (InputTable table : keys.raw().tables("sections")) {
            double ratio = table.quantity("area_ratio", Dimension.RATIO, Range.of(1, 1e4));
            boolean upstream = table.flag("upstream", false);
            double width = table.quantity("width", Dimension.LENGTH, Range.of(1e-4, 0.1));
            double height = table.quantity("height", Dimension.LENGTH, Range.of(1e-4, 0.1));
            double place = upstream ? -Math.log(ratio) : Math.log(ratio);
            if (place <= last) {
                table.problem(
                        "area_ratio", Double.toString(ratio), "list the sections from the injector to the nozzle end");
            } else if (ratio >= 1 && width > 0 && height > 0) {
                sections.add(new ChannelSection(ratio, upstream, width, height));
                last = place;
            }
        }
        return sections;
    }

    private static Supplier<CoolantRoute> route(ConceptKeys keys) {
        CoolantRoute.Kind kind =
                keys.choice("route", CoolantRoute.Kind.class, CoolantRoute.Kind.COUNTERFLOW, ConceptKeys.COMMON);
        OptionalDouble end = keys.optional(
                "end_area_ratio",
                Dimension.RATIO,
                Range.of(1, 1e4),
                "nozzle exit, at most " + CoolantRoute.LARGEST_DEFAULT_AREA_RATIO);
        OptionalDouble entry = keys.optional(
                "entry_area_ratio", Dimension.RATIO, Range.of(1, 1e4), "half the end, or the throat for a split");
        double share = keys.quantity("upstream_share", Dimension.RATIO, Range.of(0.01, 0.99), 0.5, "even split");
        return () -> new CoolantRoute(kind, end, entry, share);
    }

    private static Supplier<GasSideDesign> gasSide(ConceptKeys keys) {
        GasSideDesign usual = GasSideDesign.standard();
        GasSideDesign.Model model = keys.choice("gas_side", GasSideDesign.Model.class, usual.model(), "bartz-1957");
        GasSideDesign.Properties properties =
                keys.choice("gas_properties", GasSideDesign.Properties.class, usual.properties(), ConceptKeys.COMMON);
        boolean radiation = keys.flag("radiation", usual.radiation(), "gas radiation taken along");
        boolean soot = keys.flag("soot", usual.soot(), "a kerosene flame lays soot on the wall, nasa-sp-125");
        OptionalDouble resistance = keys.optional(
                "soot_resistance_si",
                Dimension.RATIO,
                Range.of(0, 1),
                "published curve of carbon deposit, nasa-sp-125");
        Supplier<Optional<FilmDesign>> film = film(keys);
        return () -> new GasSideDesign(model, properties, radiation, soot, resistance, film.get());
    }

    /** Table {@code [cooling.film]}: a film of the coolant along the wall. Its flow is not taken off the engine's. */
    private static Supplier<Optional<FilmDesign>> film(ConceptKeys keys) {
        if (!keys.has("film")) {
            return Optional::empty;
        }
        ConceptKeys table = keys.table("film");
        FilmDesign.Kind kind =
                table.choice("kind", FilmDesign.Kind.class, FilmDesign.Kind.LIQUID, "enters from the injector's rim");
        double fraction = table.required("throat_flow_fraction", Dimension.RATIO, Range.of(1e-5, 0.5));
        OptionalDouble place =
                table.optional("area_ratio", Dimension.RATIO, Range.of(1, 1e4), "enters at the injector's rim");
        boolean upstream = table.flag("upstream", true, "that place is upstream of the throat");
        OptionalDouble temperature = table.optional(
                "temperature", Dimension.TEMPERATURE, Range.of(10, 3000), "enters as the jacket's coolant does");
        double slot = table.quantity("slot_height", Dimension.LENGTH, Range.of(1e-5, 0.1), 1e-3, ConceptKeys.COMMON);
        double efficiency = table.quantity(
                "efficiency",
                Dimension.RATIO,
                Range.of(0.01, 1),
                0.5,
                "0.3 to 0.7 of a liquid film stays, grisson-1991");
        return () -> Optional.of(new FilmDesign(kind, fraction, place, upstream, temperature, slot, efficiency));
    }

    /**
     * Share of chamber pressure that a jacket may use. The flux goes with p^0.8 and the mass flux that carries it off with p,
     * so that friction goes with p^1.8: a quarter up to 10 MPa grows with p^0.8 above. A cycle that lives on the heat has
     * long, narrow passages.
     */
    private static double usualDrop(CycleTraits traits, double chamberPressure) {
        double grown = chamberPressure > 0 ? Math.pow(chamberPressure / 10e6, 0.8) : 1;
        double usual = JacketLimits.standard().pressureDropFraction() * Math.max(1, grown);
        return Math.min(traits.livesOnJacketHeat() ? Math.max(HEATER_DROP, usual) : usual, LARGEST_DROP);
    }

    private static Supplier<JacketLimits> limits(ConceptKeys keys, double usualDrop) {
        JacketLimits usual = JacketLimits.standard();
        OptionalDouble wall =
                keys.optional("wall_temperature", Dimension.TEMPERATURE, Range.of(300, 4000), "limit of the material");
        OptionalDouble coolantWall = keys.optional(
                "coolant_wall_temperature", Dimension.TEMPERATURE, Range.of(100, 3000), "coking limit of the coolant");
        double drop = keys.quantity(
                "pressure_drop_fraction",
                Dimension.RATIO,
                Range.of(1e-3, 5),
                usualDrop,
                "10 to 25 % of chamber pressure are usual up to 10 MPa, more above, 40 to 60 % where the heat drives the pumps; "
                        + ConceptKeys.COMMON);
        double life = keys.quantity(
                "life", Dimension.RATIO, Range.of(1, 1e6), usual.life(), "load cycles, " + ConceptKeys.COMMON);
        return () -> new JacketLimits(wall, coolantWall, drop, life);
    }
}
