package dev.penstock.cycles.reading;

import dev.penstock.chamber.design.ChamberInputs;
import dev.penstock.chamber.design.OuterZone;
import dev.penstock.cooling.coolant.CoolantSideDesign;
import dev.penstock.cooling.coolant.CoolantSideInputs;
import dev.penstock.cooling.design.ChannelLayout;
import dev.penstock.cooling.design.ChannelSection;
import dev.penstock.cooling.design.CircuitKey;
import dev.penstock.cooling.design.CoolantRoute;
import dev.penstock.cooling.design.DumpDesign;
import dev.penstock.cooling.design.DumpInputs;
import dev.penstock.cooling.design.ExtensionDesign;
import dev.penstock.cooling.design.ExtensionKind;
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
import dev.penstock.cycles.concept.ConceptTables;
import dev.penstock.cycles.concept.CoolingCircuit;
import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.cycles.concept.EngineInputs;
import dev.penstock.cycles.concept.GasInputs;
import dev.penstock.cycles.concept.Side;
import dev.penstock.input.InputTable;
import dev.penstock.input.Usual;
import dev.penstock.provenance.Trail;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Reads the table {@code [cooling]}: which propellant cools, and the jacket; and the tables {@code [[cooling.circuits]]}
 * inside it, each a jacket that begins where the one before it ends, so that neither gaps nor overlaps can be written.
 * Absent means an uncooled chamber.
 */
final class CoolingKeys {

    private static final double HEATER_DROP = 0.4;
    private static final double LARGEST_DROP = 0.6;
    private static final String NOTHING = "none";

    /** Beyond every nozzle: a jacket that ends here ends at the exit (-). */
    private static final double NOZZLE_EXIT = 1e4;

    private static final String INNER =
            ConceptTables.NOZZLE.of(ChamberInputs.INNER_AREA_RATIO).path();
    private static final String COMPENSATION =
            ConceptTables.NOZZLE.of(ChamberInputs.COMPENSATION).path();

    private final CycleTraits traits;
    private final double chamberPressure;
    private final Behind behind;
    private final Set<String> names = new HashSet<>();
    private OptionalDouble end = OptionalDouble.empty();

    private CoolingKeys(CycleTraits traits, double chamberPressure, Behind behind) {
        this.traits = traits;
        this.behind = behind;
        this.chamberPressure = chamberPressure;
    }

    /**
     * What is known of the wall.
     *
     * @param circuits jackets from the injector to the nozzle; none if nothing cools
     * @param uncooled the wall that no jacket cools
     */
    record Wall(List<CoolingCircuit> circuits, ExtensionDesign uncooled) {}

    /**
     * What the wall behind the jackets must suit.
     *
     * @param exhaustInto area ratio at which turbine gas is led in (-); empty where it is not
     * @param parting area ratio at which the nozzle parts (-); empty for one in one piece
     */
    record Behind(OptionalDouble exhaustInto, OptionalDouble parting) {}

    static Supplier<Wall> read(InputTable root, CycleTraits traits, double chamberPressure, Behind behind) {
        if (!root.has(JacketInputs.GROUP)) {
            root.without(JacketInputs.GROUP.key(), NOTHING, "no jacket without a table [cooling]");
            return () -> new Wall(List.of(), ExtensionDesign.standard());
        }
        return new CoolingKeys(traits, chamberPressure, behind).all(root.table(JacketInputs.GROUP));
    }

    private Supplier<Wall> all(InputTable keys) {
        String coolant = keys.read(ConceptInputs.COOLANT);
        double share = keys.read(EngineInputs.FLOW_FRACTION);
        double factor = keys.read(GasSideInputs.HEAT_FLUX_FACTOR);
        names.add(CircuitKey.FIRST.name());
        List<InputTable> others = keys.tables(ConceptInputs.CIRCUITS);
        Function<Optional<ExtensionDesign>, JacketDesign> first =
                jacket(keys, CircuitKey.FIRST, others.isEmpty(), Optional.empty(), CoolingKeys::gasSide);
        List<ExtensionDesign> follows = new ArrayList<>();
        Optional<ExtensionDesign> none = Optional.empty();
        List<Supplier<CoolingCircuit>> circuits = new ArrayList<>();
        circuits.add(() -> new CoolingCircuit(
                side(coolant),
                share,
                first.apply(others.isEmpty() ? Optional.of(follows.get(0)) : none),
                factor,
                Optional.empty()));
        for (int i = 0; i < others.size(); i++) {
            InputTable own = others.get(i);
            boolean last = i == others.size() - 1;
            CircuitKey key = CircuitKey.behind(i, name(own));
            Side side = side(own.read(ConceptInputs.CIRCUIT_COOLANT));
            Optional<DumpDesign> dump = dump(own, last);
            double part = dump.isPresent()
                    ? own.read(EngineInputs.FLOW_FRACTION, DumpInputs.FLOW_FRACTION)
                    : own.read(EngineInputs.FLOW_FRACTION);
            Function<Optional<ExtensionDesign>, JacketDesign> jacket =
                    jacket(own, key, last, dump, k -> () -> first.apply(none).gasSide());
            circuits.add(() -> new CoolingCircuit(
                    side, part, jacket.apply(last ? Optional.of(follows.get(0)) : none), factor, dump));
        }
        follows.add(extension(keys, others.isEmpty() ? keys : others.get(others.size() - 1), !coolant.equals(NOTHING)));
        if (coolant.equals(NOTHING)) {
            if (!others.isEmpty()) {
                keys.problem(
                        ConceptInputs.COOLANT,
                        '"' + NOTHING + '"',
                        "circuits follow in [[cooling.circuits]]: write fuel or oxidizer, or leave the circuits out");
            }
            return () -> new Wall(List.of(), follows.get(0));
        }
        return () -> new Wall(circuits.stream().map(Supplier::get).toList(), follows.get(0));
    }

    /** How the coolant of a circuit leaves that is dumped; only the last may be, since the others have a wall behind them. */
    private static Optional<DumpDesign> dump(InputTable own, boolean last) {
        if (!own.has(DumpInputs.GROUP)) {
            return Optional.empty();
        }
        InputTable keys = own.table(DumpInputs.GROUP);
        double pressure = keys.read(DumpInputs.PRESSURE);
        double ratio = keys.read(DumpInputs.AREA_RATIO);
        double efficiency = keys.read(DumpInputs.EFFICIENCY);
        if (!last) {
            own.problem(
                    DumpInputs.GROUP.key(),
                    "given",
                    "only the last circuit may dump its coolant, at the end of the nozzle: list it last");
        }
        return Optional.of(new DumpDesign(pressure, ratio, efficiency));
    }

    /** What follows the last jacket. A film of turbine gas must reach it from where it begins or before. */
    private ExtensionDesign extension(InputTable keys, InputTable last, boolean cooled) {
        ExtensionKind kind = keys.read(JacketInputs.EXTENSION);
        String standing = JacketInputs.EXTENSION_MATERIAL.standing().value();
        String material = keys.read(
                JacketInputs.EXTENSION_MATERIAL,
                Usual.common(kind.usualMaterial().orElse(standing)));
        if (kind == ExtensionKind.ABLATIVE && keys.has(JacketInputs.EXTENSION_MATERIAL)) {
            keys.problem(
                    JacketInputs.EXTENSION_MATERIAL,
                    '"' + material + '"',
                    "an ablative extension has no sheet: leave it out, or write extension = \"radiating\"");
        }
        double jacketEnd = end.orElse(CoolantRoute.LARGEST_DEFAULT_AREA_RATIO);
        String entry = ConceptTables.EXHAUST.of(GasInputs.EXHAUST_INTO).path();
        if (kind == ExtensionKind.FILM_COOLED && behind.exhaustInto().isEmpty()) {
            keys.problem(
                    JacketInputs.EXTENSION,
                    "\"film-cooled\"",
                    traits.dumps()
                            ? "the film is turbine gas: write " + entry + ", the area ratio at which it enters"
                            : "the film is turbine gas, and this cycle dumps none: write radiating or ablative");
        } else if (kind == ExtensionKind.FILM_COOLED && behind.exhaustInto().getAsDouble() > jacketEnd) {
            keys.problem(
                    JacketInputs.EXTENSION,
                    "\"film-cooled\"",
                    "the turbine gas enters at area ratio "
                            + behind.exhaustInto().getAsDouble() + " (" + entry
                            + "), behind the end of the jacket at " + jacketEnd
                            + ", so that the wall between them is bare: write at most " + jacketEnd + " there");
        }
        keys.replaced(
                "extension_parting_area_ratio", INNER + ", with " + COMPENSATION + " = \"stowed\" or \"extendible\"");
        if (cooled) {
            behind.parting().ifPresent(parting -> parting(last, parting));
        }
        return new ExtensionDesign(kind, material, lining(keys, kind, cooled ? jacketEnd : 1));
    }

    /** An ablative wall may end before the exit, not before the jacket does. */
    private static OptionalDouble lining(InputTable keys, ExtensionKind kind, double jacketEnd) {
        OptionalDouble lining = keys.number(JacketInputs.LINING_END);
        if (lining.isPresent() && kind != ExtensionKind.ABLATIVE) {
            keys.problem(
                    JacketInputs.LINING_END,
                    Double.toString(lining.getAsDouble()),
                    "no ablative wall is there to end: write extension = \"ablative\", or leave it out");
            return OptionalDouble.empty();
        }
        if (lining.isPresent() && lining.getAsDouble() < jacketEnd) {
            keys.problem(
                    JacketInputs.LINING_END,
                    Double.toString(lining.getAsDouble()),
                    "the ablative wall would end before it begins, at area ratio " + jacketEnd + ": write at least "
                            + jacketEnd);
            return OptionalDouble.empty();
        }
        return lining;
    }

    /** A nozzle whose extension moves parts behind the last jacket, whose tubes and channels do not. */
    private void parting(InputTable last, double parting) {
        if (end.isEmpty() || end.getAsDouble() == NOZZLE_EXIT) {
            last.problem(
                    JacketInputs.END_AREA_RATIO,
                    "missing",
                    "the nozzle parts at area ratio " + parting + " (" + INNER
                            + "), and a jacket does not part: write the area ratio, at most that, at which it ends");
        } else if (parting < end.getAsDouble()) {
            last.problem(
                    JacketInputs.END_AREA_RATIO,
                    Double.toString(end.getAsDouble()),
                    "the extension begins before the jacket ends: write at most " + parting
                            + ", where the nozzle parts (" + INNER + ")");
        }
    }

    private static Side side(String coolant) {
        return coolant.equals(Side.OXIDIZER.key()) ? Side.OXIDIZER : Side.FUEL;
    }

    /** Name of a circuit behind the first, which no other has: letters, digits, spaces and hyphens. */
    private String name(InputTable own) {
        String name = own.read(ConceptInputs.CIRCUIT_NAME);
        if (!name.isEmpty() && !name.matches("[A-Za-z0-9][A-Za-z0-9 -]{0,39}")) {
            own.problem(
                    ConceptInputs.CIRCUIT_NAME, '"' + name + '"', "write up to 40 letters, digits, spaces and hyphens");
        } else if (!names.add(Trail.slug(name))) {
            own.problem(
                    ConceptInputs.CIRCUIT_NAME,
                    '"' + name + '"',
                    "another circuit has that name; the first is called cooling");
        }
        return name;
    }

    /** A jacket, which still has to be told what follows it. */
    private Function<Optional<ExtensionDesign>, JacketDesign> jacket(
            InputTable keys,
            CircuitKey key,
            boolean last,
            Optional<DumpDesign> dump,
            Function<InputTable, Supplier<GasSideDesign>> gasSideOf) {
        Supplier<WallDesign> wall = wall(keys);
        Supplier<ChannelLayout> channels = channels(keys);
        Supplier<CoolantRoute> route = route(keys, last, dump.isPresent());
        Supplier<GasSideDesign> gasSide = gasSideOf.apply(keys);
        CoolantSideDesign.Correlation correlation = keys.read(CoolantSideInputs.CORRELATION);
        boolean curvature = keys.read(CoolantSideInputs.CURVATURE);
        boolean rough = keys.read(CoolantSideInputs.ROUGH_WALL);
        double drop = dump.map(d -> DumpInputs.LARGEST_DROP * d.pressureShare())
                .orElseGet(() -> usualDrop(traits, chamberPressure));
        Supplier<JacketLimits> limits = limits(keys.table(JacketInputs.LIMITS), drop);
        int cells = keys.read(JacketInputs.CELLS);
        return extension -> new JacketDesign(
                key,
                wall.get(),
                channels.get(),
                route.get(),
                gasSide.get(),
                new CoolantSideDesign(correlation, curvature, rough),
                limits.get(),
                cells,
                extension);
    }

    private static Supplier<WallDesign> wall(InputTable keys) {
        String material = keys.read(WallInputs.MATERIAL);
        String closeout = keys.read(WallInputs.CLOSEOUT_MATERIAL);
        OptionalDouble thickness = keys.number(WallInputs.WALL_THICKNESS);
        OptionalDouble shell = keys.number(WallInputs.CLOSEOUT_THICKNESS);
        boolean coated = keys.has(WallInputs.COATING);
        Optional<Coating> coating = Optional.empty();
        if (coated) {
            InputTable layer = keys.table(WallInputs.COATING);
            layer.read(WallInputs.COATING_NAME);
            double depth = layer.read(WallInputs.COATING_THICKNESS);
            double conductivity = layer.read(WallInputs.COATING_CONDUCTIVITY);
            double highest = layer.read(WallInputs.COATING_HIGHEST_TEMPERATURE);
            if (depth > 0 && conductivity > 0 && highest > 0) {
                coating = Optional.of(new Coating(depth, conductivity, highest));
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
                    width.isPresent() ? JacketInputs.CHANNEL_HEIGHT : JacketInputs.CHANNEL_WIDTH,
                    "missing",
                    "write channel_width and channel_height together, or neither to have them sized");
        }
        List<ChannelSection> sections = sections(keys);
        if (!sections.isEmpty() && width.isPresent()) {
            keys.problem(JacketInputs.CHANNEL_WIDTH, "given", "write channel_width or [[cooling.sections]], not both");
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
            OptionalDouble wall = table.number(JacketInputs.SECTION_WALL);
            double place = upstream ? -Math.log(ratio) : Math.log(ratio);
            if (place <= last) {
                table.problem(
                        JacketInputs.SECTION_AREA_RATIO,
                        Double.toString(ratio),
                        "list the sections from the injector to the nozzle end");
            } else if (ratio >= 1 && width > 0 && height > 0) {
                sections.add(new ChannelSection(ratio, upstream, width, height, wall));
                last = place;
            }
        }
        return sections;
    }

    /** The way of the coolant, from where the circuit before ended. */
    private Supplier<CoolantRoute> route(InputTable keys, boolean last, boolean dumped) {
        CoolantRoute.Kind kind = dumped
                ? keys.read(
                        JacketInputs.ROUTE,
                        Usual.common(CoolantRoute.Kind.PARALLEL).because("with the gas, to be dumped at the end"))
                : keys.read(JacketInputs.ROUTE);
        OptionalDouble start = end;
        end = keys.number(JacketInputs.END_AREA_RATIO);
        if (dumped && end.isEmpty()) {
            end = OptionalDouble.of(NOZZLE_EXIT);
        }
        OptionalDouble stop = end;
        OptionalDouble entry = keys.number(JacketInputs.ENTRY_AREA_RATIO);
        double share = keys.read(JacketInputs.UPSTREAM_SHARE);
        if (!last && stop.isEmpty() && !keys.has(JacketInputs.END_AREA_RATIO)) {
            keys.problem(
                    JacketInputs.END_AREA_RATIO,
                    "missing",
                    "write the area ratio at which this circuit ends and the next begins");
        }
        if (start.isPresent() && stop.isPresent() && stop.getAsDouble() <= start.getAsDouble()) {
            keys.problem(
                    JacketInputs.END_AREA_RATIO,
                    Double.toString(stop.getAsDouble()),
                    "it must lie beyond " + start.getAsDouble()
                            + ", where the circuit before it ends; list the circuits from the injector to the nozzle exit");
        }
        if (entry.isPresent() && entry.getAsDouble() < start.orElse(0)) {
            keys.problem(
                    JacketInputs.ENTRY_AREA_RATIO.key(),
                    Double.toString(entry.getAsDouble()),
                    "this circuit begins at " + start.getAsDouble() + ", where the one before it ends");
        }
        return () -> new CoolantRoute(kind, start, stop, entry, share);
    }

    private static Supplier<GasSideDesign> gasSide(InputTable keys) {
        GasSideDesign.Model model = keys.read(GasSideInputs.GAS_SIDE);
        GasSideDesign.Properties properties = keys.read(GasSideInputs.GAS_PROPERTIES);
        boolean radiation = keys.read(GasSideInputs.RADIATION);
        boolean soot = keys.read(GasSideInputs.SOOT);
        OptionalDouble resistance = keys.number(GasSideInputs.SOOT_RESISTANCE);
        double factor = keys.read(GasSideInputs.SOOT_FACTOR);
        double release = keys.read(GasSideInputs.HEAT_RELEASE_LENGTH);
        Supplier<FilmDesign> film = film(keys);
        return () -> new GasSideDesign(model, properties, radiation, soot, resistance, factor, release, film.get());
    }

    /**
     * What runs along the wall, and so costs impulse.
     *
     * @param film share of the chamber's fuel that is a film (-)
     * @param outerZone outer row of the injector
     */
    record WallShield(double film, Optional<OuterZone> outerZone) {}

    /** Shares of the flow in {@code [cooling.film]} and {@code [cooling.outer_zone]}, with or without a jacket. */
    static WallShield shield(InputTable root) {
        if (!root.has(JacketInputs.GROUP)) {
            return new WallShield(0, Optional.empty());
        }
        InputTable keys = root.table(JacketInputs.GROUP);
        double film = filmed(keys) ? filmShare(keys.table(GasSideInputs.FILM)) : 0;
        if (!keys.has(GasSideInputs.OUTER_ZONE)) {
            return new WallShield(film, Optional.empty());
        }
        InputTable zone = keys.table(GasSideInputs.OUTER_ZONE);
        double share = zone.read(GasSideInputs.ZONE_FLOW_FRACTION);
        double bias = zone.read(GasSideInputs.ZONE_MIXTURE_RATIO_BIAS);
        return new WallShield(film, share > 0 && bias > 0 ? Optional.of(new OuterZone(share, bias)) : Optional.empty());
    }

    /** Whether there is a film: the file has its table, or its technology has one. */
    private static boolean filmed(InputTable keys) {
        return keys.has(GasSideInputs.FILM) || keys.table(GasSideInputs.FILM).settled(GasSideInputs.FILM_FUEL_FRACTION);
    }

    private static double filmShare(InputTable film) {
        boolean old = film.replaced("throat_flow_fraction", "fuel_fraction, the share of the chamber's fuel");
        return old ? 0 : film.read(GasSideInputs.FILM_FUEL_FRACTION);
    }

    /** Table {@code [cooling.film]}: how a film enters. */
    private static Supplier<FilmDesign> film(InputTable keys) {
        if (!filmed(keys)) {
            return FilmDesign::liquid;
        }
        InputTable table = keys.table(GasSideInputs.FILM);
        FilmDesign.Kind kind = table.read(GasSideInputs.FILM_KIND);
        OptionalDouble place = table.number(GasSideInputs.FILM_AREA_RATIO);
        boolean upstream = table.read(GasSideInputs.FILM_UPSTREAM);
        OptionalDouble temperature = table.number(GasSideInputs.FILM_TEMPERATURE);
        double slot = table.read(GasSideInputs.FILM_SLOT_HEIGHT);
        double efficiency = table.read(GasSideInputs.FILM_EFFICIENCY);
        return () -> new FilmDesign(kind, place, upstream, temperature, slot, efficiency);
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
        double coking = keys.read(JacketInputs.COKING_SHARE);
        double drop = keys.read(
                JacketInputs.PRESSURE_DROP_LIMIT,
                Usual.of(usualDrop, JacketInputs.PRESSURE_DROP_REASON, Usual.COMMON)
                        .following(ChamberKeys.PRESSURE));
        double life = keys.read(JacketInputs.LIFE_LIMIT);
        return () -> new JacketLimits(wall, coolantWall, coking, drop, life);
    }
}
