package dev.penstock.cycles.reading;

import dev.penstock.cooling.coolant.CoolantSideDesign;
import dev.penstock.cooling.coolant.CoolantSideInputs;
import dev.penstock.cooling.design.ChannelLayout;
import dev.penstock.cooling.design.ChannelSection;
import dev.penstock.cooling.design.CoolantRoute;
import dev.penstock.cooling.design.ExtensionDesign;
import dev.penstock.cooling.design.JacketDesign;
import dev.penstock.cooling.design.JacketInputs;
import dev.penstock.cooling.design.JacketLimits;
import dev.penstock.cooling.gas.FilmDesign;
import dev.penstock.cooling.gas.GasSideDesign;
import dev.penstock.cooling.gas.GasSideInputs;
import dev.penstock.cooling.wall.ChannelKind;
import dev.penstock.cooling.wall.Coating;
import dev.penstock.cooling.wall.WallDesign;
import dev.penstock.cooling.wall.WallInputs;
import dev.penstock.cycles.concept.CoolingDesign;
import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.cycles.concept.Side;
import dev.penstock.input.InputTable;
import dev.penstock.input.Usual;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** Reads the table {@code [cooling]}: which propellant cools, and the jacket. Absent means an uncooled chamber. */
final class CoolingKeys {

    private static final double HEATER_DROP = 0.4;
    private static final double LARGEST_DROP = 0.6;

    private CoolingKeys() {}

    static Supplier<Optional<CoolingDesign>> read(InputTable root, CycleTraits traits, double chamberPressure) {
        if (!root.has("cooling")) {
            root.without("cooling", "none", "no jacket without a table [cooling]");
            return Optional::empty;
        }
        InputTable keys = root.table("cooling");
        String coolant = keys.read(ConceptInputs.COOLANT);
        double share = keys.read(ConceptInputs.FLOW_FRACTION);
        double factor = keys.read(GasSideInputs.HEAT_FLUX_FACTOR);
        Supplier<WallDesign> wall = wall(keys);
        Supplier<ChannelLayout> channels = channels(keys);
        Supplier<CoolantRoute> route = route(keys);
        Supplier<GasSideDesign> gasSide = gasSide(keys);
        CoolantSideDesign.Correlation correlation = keys.read(CoolantSideInputs.CORRELATION);
        boolean curvature = keys.read(CoolantSideInputs.CURVATURE);
        boolean rough = keys.read(CoolantSideInputs.ROUGH_WALL);
        Supplier<JacketLimits> limits = limits(keys.table("limits"), usualDrop(traits, chamberPressure));
        int cells = keys.read(JacketInputs.CELLS);
        ExtensionDesign extension = new ExtensionDesign(keys.read(JacketInputs.EXTENSION_MATERIAL));
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

    private static Supplier<WallDesign> wall(InputTable keys) {
        String material = keys.read(WallInputs.MATERIAL);
        String closeout = keys.read(WallInputs.CLOSEOUT_MATERIAL);
        OptionalDouble thickness = keys.number(WallInputs.WALL_THICKNESS);
        OptionalDouble shell = keys.number(WallInputs.CLOSEOUT_THICKNESS);
        boolean coated = keys.has("coating");
        Optional<Coating> coating = Optional.empty();
        if (coated) {
            InputTable layer = keys.table("coating");
            String name = layer.read(WallInputs.COATING_NAME);
            double depth = layer.read(WallInputs.COATING_THICKNESS);
            double conductivity = layer.read(WallInputs.COATING_CONDUCTIVITY);
            double highest = layer.read(WallInputs.COATING_HIGHEST_TEMPERATURE);
            if (depth > 0 && conductivity > 0 && highest > 0) {
                coating = Optional.of(new Coating(name, depth, conductivity, highest));
            }
        }
        Optional<Coating> layer = coating;
        return () -> new WallDesign(material, thickness, closeout, shell, layer);
    }

    private static Supplier<ChannelLayout> channels(InputTable keys) {
        ChannelKind kind = keys.read(JacketInputs.CHANNELS);
        OptionalDouble count = keys.number(JacketInputs.CHANNEL_COUNT);
        OptionalDouble width = keys.number(JacketInputs.CHANNEL_WIDTH);
        OptionalDouble height = keys.number(JacketInputs.CHANNEL_HEIGHT);
        OptionalDouble roughness = keys.number(JacketInputs.ROUGHNESS);
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
    private static List<ChannelSection> sections(InputTable keys) {
        List<ChannelSection> sections = new ArrayList<>();
        double last = Double.NEGATIVE_INFINITY;
        for (InputTable table : keys.tables(JacketInputs.SECTIONS.key())) {
            double ratio = table.read(JacketInputs.SECTION_AREA_RATIO);
            boolean upstream = table.read(JacketInputs.SECTION_UPSTREAM);
            double width = table.read(JacketInputs.SECTION_WIDTH);
            double height = table.read(JacketInputs.SECTION_HEIGHT);
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

    private static Supplier<CoolantRoute> route(InputTable keys) {
        CoolantRoute.Kind kind = keys.read(JacketInputs.ROUTE);
        OptionalDouble end = keys.number(JacketInputs.END_AREA_RATIO);
        OptionalDouble entry = keys.number(JacketInputs.ENTRY_AREA_RATIO);
        double share = keys.read(JacketInputs.UPSTREAM_SHARE);
        return () -> new CoolantRoute(kind, end, entry, share);
    }

    private static Supplier<GasSideDesign> gasSide(InputTable keys) {
        GasSideDesign.Model model = keys.read(GasSideInputs.GAS_SIDE);
        GasSideDesign.Properties properties = keys.read(GasSideInputs.GAS_PROPERTIES);
        boolean radiation = keys.read(GasSideInputs.RADIATION);
        boolean soot = keys.read(GasSideInputs.SOOT);
        OptionalDouble resistance = keys.number(GasSideInputs.SOOT_RESISTANCE);
        Supplier<Optional<FilmDesign>> film = film(keys);
        return () -> new GasSideDesign(model, properties, radiation, soot, resistance, film.get());
    }

    /** Table {@code [cooling.film]}: a film of the coolant along the wall. Its flow is not taken off the engine's. */
    private static Supplier<Optional<FilmDesign>> film(InputTable keys) {
        if (!keys.has("film")) {
            return Optional::empty;
        }
        InputTable table = keys.table("film");
        FilmDesign.Kind kind = table.read(GasSideInputs.FILM_KIND);
        double fraction = table.read(GasSideInputs.FILM_THROAT_FLOW_FRACTION);
        OptionalDouble place = table.number(GasSideInputs.FILM_AREA_RATIO);
        boolean upstream = table.read(GasSideInputs.FILM_UPSTREAM);
        OptionalDouble temperature = table.number(GasSideInputs.FILM_TEMPERATURE);
        double slot = table.read(GasSideInputs.FILM_SLOT_HEIGHT);
        double efficiency = table.read(GasSideInputs.FILM_EFFICIENCY);
        return () -> Optional.of(new FilmDesign(kind, fraction, place, upstream, temperature, slot, efficiency));
    }

    /**
     * Share of chamber pressure that a jacket may use. The flux goes with p^0.8 and the mass flux that carries it off with p,
     * so that friction goes with p^1.8: a quarter up to 10 MPa grows with p^0.8 above. A cycle that lives on the heat has
     * long, narrow passages.
     */
    private static double usualDrop(CycleTraits traits, double chamberPressure) {
        double grown = chamberPressure > 0 ? Math.pow(chamberPressure / 10e6, 0.8) : 1;
        double usual = JacketLimits.USUAL_PRESSURE_DROP * Math.max(1, grown);
        return Math.min(traits.livesOnJacketHeat() ? Math.max(HEATER_DROP, usual) : usual, LARGEST_DROP);
    }

    private static Supplier<JacketLimits> limits(InputTable keys, double usualDrop) {
        OptionalDouble wall = keys.number(JacketInputs.WALL_TEMPERATURE_LIMIT);
        OptionalDouble coolantWall = keys.number(JacketInputs.COOLANT_WALL_TEMPERATURE_LIMIT);
        double drop = keys.read(
                JacketInputs.PRESSURE_DROP_LIMIT,
                Usual.of(usualDrop, JacketInputs.PRESSURE_DROP_REASON, Usual.COMMON)
                        .following("engine." + ConceptInputs.CHAMBER_PRESSURE.key()));
        double life = keys.read(JacketInputs.LIFE_LIMIT);
        return () -> new JacketLimits(wall, coolantWall, drop, life);
    }
}
