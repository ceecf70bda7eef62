package dev.penstock.cycles.sheet;

import dev.penstock.chamber.design.ChamberInputs;
import dev.penstock.chamber.flow.CombustorPressure;
import dev.penstock.combustion.equilibrium.EquilibriumSolver;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.ConceptTables;
import dev.penstock.cycles.concept.FeedInputs;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.concept.TurbinePlace;
import dev.penstock.cycles.origin.Closing;
import dev.penstock.cycles.origin.Definitions;
import dev.penstock.cycles.origin.InputPaths;
import dev.penstock.cycles.origin.LineKey;
import dev.penstock.cycles.origin.Origins;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.cycles.origin.PartKind;
import dev.penstock.cycles.origin.PartPlace;
import dev.penstock.cycles.origin.PumpKey;
import dev.penstock.input.TableKey;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Origin;
import dev.penstock.provenance.Traced;
import dev.penstock.provenance.Trail;
import dev.penstock.turbomachinery.pump.HydraulicTurbine;
import dev.penstock.turbomachinery.pump.PumpSpeed;
import dev.penstock.turbomachinery.speed.SpeedLimit;
import dev.penstock.turbomachinery.turbine.BoostTurbine;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Writes down, while an arrangement is laid out, what each station and each step of pressure was made from: the component
 * that makes a stream hands over what it used. Not thread-safe; one per pass.
 */
public final class StationRecorder {

    /** Path of the pressure at the injector face over that at the nozzle entrance. */
    public static final String FACE_RATIO = "chamber.face_pressure_ratio";

    private static final ModelCard STEP = Definitions.PRODUCT;

    private final Trail trail = new Trail();
    private final InputPaths inputs;
    private final SortedMap<Integer, Station> stations = new TreeMap<>();
    private final Map<Integer, Medium> media = new LinkedHashMap<>();
    private final Map<String, PartPlace> places = new LinkedHashMap<>();
    private final List<PressureStep> ladder = new ArrayList<>();

    public StationRecorder(Concept concept, CarriedValues assumed) {
        this.inputs = new InputPaths(concept);
        faceRatio(assumed.faceRatio());
    }

    /** Paths of the concept's inputs. */
    public InputPaths inputs() {
        return inputs;
    }

    private void faceRatio(double ratio) {
        trail.record(
                FACE_RATIO,
                ratio,
                "",
                Origin.of(
                        CombustorPressure.CARD,
                        inputs.of(ConceptTables.CHAMBER.of(ChamberInputs.CONTRACTION_RATIO)),
                        List.of("chamber.throat_area_m2", "chamber.gas_isentropic_exponent")));
    }

    /** What flows at a station that was recorded. */
    public Medium medium(int station) {
        return media.get(station);
    }

    // ---- paths

    public static String at(int station) {
        return "stations." + station;
    }

    public static String pressure(int station) {
        return at(station) + ".pressure_Pa";
    }

    public static String pressure(Stream stream) {
        return pressure(stream.station());
    }

    public static String temperature(Stream stream) {
        return at(stream.station()) + ".temperature_K";
    }

    public static String density(Stream stream) {
        return at(stream.station()) + ".density_kg_m3";
    }

    public static String enthalpy(Stream stream) {
        return at(stream.station()) + ".enthalpy_J_kg";
    }

    public static String flow(Stream stream) {
        return at(stream.station()) + ".mass_flow_kg_s";
    }

    // ---- what components make

    /** A station as numbered; its state follows from pressure, enthalpy and medium. */
    public void station(Station station, Medium medium) {
        stations.put(station.number(), station);
        media.put(station.number(), medium);
        String p = at(station.number());
        Origin state = Origin.of(medium.model(), List.of(p + ".pressure_Pa", p + ".enthalpy_J_kg"), medium.madeFrom());
        trail.record(p + ".temperature_K", station.temperature(), "K", state);
        trail.record(p + ".density_kg_m3", station.density(), "kg/m³", state);
    }

    public void tank(Stream out, Side side, Traced flow, Traced pressure) {
        String p = at(out.station());
        places.put(
                PartKey.tank(side).label(),
                new PartPlace(
                        PartKey.tank(side), List.of(ConceptTables.tank(side)), List.of(), List.of(out.station())));
        boolean stated = !inputs.of(ConceptTables.tank(side).of(FeedInputs.TANK_PRESSURE))
                .isEmpty();
        Origin state = Origin.of(
                out.medium().model(),
                List.of(p + ".pressure_Pa", p + ".temperature_K"),
                out.medium().madeFrom());
        set(
                out,
                new Origin(stated ? ModelCard.SAME : Definitions.BUDGET, pressure.from()),
                state,
                new Origin(Definitions.TANK_FLOW, flow.from()));
        Station station = station(out);
        trail.record(
                p + ".temperature_K",
                station.temperature(),
                "K",
                new Origin(ModelCard.SAME, inputs.of(ConceptTables.tank(side).of(FeedInputs.TANK_TEMPERATURE))));
        trail.record(p + ".density_kg_m3", station.density(), "kg/m³", state);
    }

    /** Tank of a third fluid. */
    public void diluentTank(Stream out, Traced flow, Traced pressure) {
        set(
                out,
                new Origin(ModelCard.SAME, pressure.from()),
                Origin.of(
                        out.medium().model(),
                        List.of(at(out.station()) + ".pressure_Pa"),
                        out.medium().madeFrom()),
                new Origin(Definitions.FLOW, flow.from()));
    }

    public void passage(Stream out, Stream in, Traced behind, PartKind kind) {
        set(
                out,
                new Origin(model(kind), behind.from()),
                new Origin(Definitions.LOSS, List.of(enthalpy(in))),
                passed(in));
    }

    /** A valve or injector takes what is left over; a line or duct takes what is stated. */
    private static ModelCard model(PartKind kind) {
        return switch (kind) {
            case INJECTOR -> CombustorPressure.CARD;
            case VALVE -> Definitions.BUDGET;
            case ORIFICE -> ModelCard.SAME;
            default -> Definitions.LOSS;
        };
    }

    public void branch(Stream out, Stream in, Traced share) {
        set(
                out,
                new Origin(ModelCard.SAME, List.of(pressure(in))),
                new Origin(ModelCard.SAME, List.of(enthalpy(in))),
                Origin.of(Definitions.FLOW, List.of(flow(in)), share.from()));
    }

    /** Streams brought together, burnt or not. */
    public void merged(Stream out, List<Stream> in, Traced pressure) {
        List<String> flows = in.stream().map(StationRecorder::flow).toList();
        set(
                out,
                new Origin(Definitions.BUDGET, pressure.from()),
                Origin.of(
                        Definitions.MIXING,
                        in.stream().map(StationRecorder::enthalpy).toList(),
                        flows),
                new Origin(Definitions.FLOW, flows));
    }

    /** A stream behind a jacket, and the path of the heat that it took up there. */
    public void heated(Stream out, Stream in, Traced behind, String heat) {
        set(
                out,
                new Origin(Definitions.DIFFERENCE, behind.from()),
                new Origin(Definitions.HEAT, List.of(enthalpy(in), heat, flow(in))),
                passed(in));
    }

    /** A stream behind a machine whose power goes into it or comes out of it. */
    public void worked(Stream out, Stream in, Traced target, List<String> power) {
        set(
                out,
                new Origin(Definitions.BUDGET, target.from()),
                Origin.of(Definitions.WORK, List.of(enthalpy(in)), power, List.of(flow(in))),
                passed(in));
    }

    /** Gas at the nozzle entrance, and the paths of the heat that it gave to jackets. */
    public void chamber(Station station, List<Stream> in, Traced pressure, List<String> heat) {
        stations.put(station.number(), station);
        String p = at(station.number());
        List<String> flows = in.stream().map(StationRecorder::flow).toList();
        trail.record(p + ".pressure_Pa", station.pressure(), "Pa", new Origin(ModelCard.SAME, pressure.from()));
        trail.record(
                p + ".enthalpy_J_kg",
                station.enthalpy(),
                "J/kg",
                Origin.of(
                        Definitions.MIXING,
                        in.stream().map(StationRecorder::enthalpy).toList(),
                        flows,
                        heat));
        Origin gas = new Origin(
                EquilibriumSolver.CARD,
                List.of(p + ".pressure_Pa", p + ".enthalpy_J_kg", "engine.chamber_mixture_ratio"));
        trail.record(p + ".temperature_K", station.temperature(), "K", gas);
        trail.record(p + ".density_kg_m3", station.density(), "kg/m³", gas);
        trail.record(p + ".mass_flow_kg_s", station.massFlow(), "kg/s", new Origin(Definitions.FLOW, flows));
    }

    private static Origin passed(Stream in) {
        return new Origin(Definitions.FLOW, List.of(flow(in)));
    }

    private void set(Stream out, Origin pressure, Origin enthalpy, Origin flow) {
        Station station = station(out);
        String p = at(station.number());
        trail.record(p + ".pressure_Pa", station.pressure(), "Pa", pressure);
        trail.record(p + ".enthalpy_J_kg", station.enthalpy(), "J/kg", enthalpy);
        trail.record(p + ".mass_flow_kg_s", station.massFlow(), "kg/s", flow);
    }

    private Station station(Stream stream) {
        return stations.get(stream.station());
    }

    // ---- machines

    /** Where a part stands that other results speak of by its name. */
    public void place(String name, PartKey part, TableKey table, Stream in, Stream out) {
        places.put(name, new PartPlace(part, List.of(table), List.of(in.station()), List.of(out.station())));
    }

    /** A shaft stands where its machines do. */
    public void place(Shaft shaft) {
        List<String> machines = new ArrayList<>();
        shaft.turbines().forEach(t -> machines.add(t.name()));
        shaft.pumps().forEach(p -> machines.add(p.name()));
        List<TableKey> tables = new ArrayList<>(List.of(ConceptTables.SHAFTS));
        machines.forEach(m -> tables.addAll(places.get(m).tables()));
        places.put(
                shaft.name(),
                new PartPlace(
                        places.get(machines.get(0)).part(),
                        tables.stream().distinct().toList(),
                        List.of(),
                        List.of()));
    }

    public void pumped(Stream out, Stream in, Traced target, PumpKey pump, Optional<Shaft> driven) {
        List<String> power = new ArrayList<>(List.of(pump.path() + ".power_W"));
        driven.ifPresent(s -> power.add(delivered(s)));
        worked(out, in, target, power);
    }

    public void expanded(Stream out, Stream in, Traced exit, TurbinePlace place) {
        worked(out, in, exit, List.of("turbines." + Trail.slug(place.title()) + ".power_W"));
    }

    /** The speed of a pump, by what bounds it. */
    public void pump(PumpKey pump, SpeedLimit limit) {
        speed(pump.path(), limit);
    }

    /** A main pump that also passes the liquid which drives its boost pump. */
    public void driving(PumpKey pump, Stream in, double flow, Shaft boost) {
        trail.record(
                pump.path() + ".mass_flow_kg_s",
                flow,
                "kg/s",
                Origin.of(
                        HydraulicTurbine.CARD,
                        List.of(flow(in), delivered(boost)),
                        inputs.of(ConceptTables.boostPump(pump.side()).of(FeedInputs.DRIVE_EFFICIENCY))));
    }

    /** The flow that drives a boost pump's turbine beside others. */
    public void drives(Stream taken, Shaft boost, Side side) {
        trail.record(
                flow(taken),
                taken.flow(),
                "kg/s",
                Origin.of(
                        BoostTurbine.CARD,
                        List.of(delivered(boost), enthalpy(taken), pressure(taken)),
                        inputs.of(ConceptTables.boostPump(side).of(FeedInputs.DRIVE_EFFICIENCY))));
    }

    public void shaft(Shaft shaft) {
        speed("shafts." + Trail.slug(shaft.name()), shaft.speedSetBy());
    }

    /** By what bounds it, and by the next of the other bounds, into which the tightest passes without a corner. */
    private void speed(String machine, SpeedLimit limit) {
        List<String> others = new ArrayList<>();
        limit.next().ifPresent(next -> {
            String path = machine + ".next_speed_limit_rad_s";
            trail.record(path, next.speed(), "rad/s", new Origin(PumpSpeed.CARD, next.from()));
            others.add(path);
        });
        trail.record(machine + ".speed_rad_s", limit.speed(), "rad/s", Origin.of(PumpSpeed.CARD, limit.from(), others));
    }

    /** A turbine turns with its shaft. */
    public void turns(TurbinePlace place, Shaft shaft) {
        trail.record(
                "turbines." + Trail.slug(place.title()) + ".speed_rad_s",
                shaft.speed(),
                "rad/s",
                new Origin(ModelCard.SAME, List.of("shafts." + Trail.slug(shaft.name()) + ".speed_rad_s")));
    }

    static String delivered(Shaft shaft) {
        return "shafts." + Trail.slug(shaft.name()) + ".power_delivered_W";
    }

    /** Powers that balance on a shaft. */
    public static List<String> powers(Shaft shaft) {
        List<String> terms = new ArrayList<>();
        shaft.turbines().forEach(t -> terms.add("turbines." + Trail.slug(t.name()) + ".power_W"));
        String p = "shafts." + Trail.slug(shaft.name());
        terms.add(p + ".power_absorbed_W");
        terms.add(p + ".mechanical_loss_W");
        return terms;
    }

    // ---- unknowns and steps of pressure

    /** A number that the solver found: at its value all equations of the balance vanish together. */
    public Traced unknown(String name, double value, String unit) {
        String path = Closing.path(name);
        trail.record(path, value, unit, new Origin(Definitions.CLOSING, List.of(Closing.LOOP)));
        return new Traced(value, List.of(path));
    }

    public void step(LineKey line, PartKey part, Traced from, Traced to) {
        String p = "pressure_ladder." + ladder.size();
        PressureStep step = new PressureStep(line, part, from.value(), to.value());
        trail.record(p + ".from_Pa", step.from(), "Pa", shown(from));
        trail.record(p + ".to_Pa", step.to(), "Pa", shown(to));
        trail.record(
                p + ".rise_Pa",
                step.rise(),
                "Pa",
                new Origin(Definitions.DIFFERENCE, List.of(p + ".from_Pa", p + ".to_Pa")));
        ladder.add(step);
    }

    private static Origin shown(Traced pressure) {
        return new Origin(pressure.from().size() == 1 ? ModelCard.SAME : STEP, pressure.from());
    }

    // ---- results

    /** By their numbers. */
    public List<Station> stations() {
        return List.copyOf(stations.values());
    }

    public List<PressureStep> ladder() {
        return ladder;
    }

    public Origins origins() {
        return new Origins(trail.entries(), places);
    }
}
