package dev.penstock.cycles.trail;

import static dev.penstock.provenance.Place.Role.INLET;
import static dev.penstock.provenance.Place.Role.JACKET;
import static dev.penstock.provenance.Place.Role.OUTLET;
import static dev.penstock.provenance.Place.Role.SHAFT;
import static dev.penstock.provenance.Place.fixed;
import static dev.penstock.provenance.Place.of;
import static dev.penstock.provenance.Place.own;
import static dev.penstock.provenance.Place.stated;
import static dev.penstock.quantities.Notation.significant;

import dev.penstock.chamber.ChamberFigures;
import dev.penstock.chamber.contour.EngineLength;
import dev.penstock.chamber.loss.LossFigures;
import dev.penstock.cooling.jacket.JacketFigures;
import dev.penstock.cycles.concept.ConceptTables;
import dev.penstock.cycles.concept.EngineInputs;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.hardware.HardwareCount;
import dev.penstock.cycles.hardware.HardwareFigures;
import dev.penstock.cycles.origin.Definitions;
import dev.penstock.cycles.origin.InputPaths;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.cycles.sheet.Component;
import dev.penstock.cycles.sheet.EnergyAudit;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.ExhaustJet;
import dev.penstock.cycles.sheet.ExhaustNozzle;
import dev.penstock.cycles.sheet.PressureStep;
import dev.penstock.cycles.sheet.Residual;
import dev.penstock.cycles.sheet.Station;
import dev.penstock.cycles.sheet.StationRecorder;
import dev.penstock.input.InputValue;
import dev.penstock.provenance.CheckFigures;
import dev.penstock.provenance.FigureTable;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Origin;
import dev.penstock.provenance.Place;
import dev.penstock.provenance.Words;
import dev.penstock.quantities.Notation;
import dev.penstock.turbomachinery.mass.EngineMass;
import dev.penstock.turbomachinery.mass.MassFigures;
import dev.penstock.turbomachinery.metal.MetalFigures;
import dev.penstock.turbomachinery.metal.MetalReport;
import dev.penstock.turbomachinery.pump.PumpFigures;
import dev.penstock.turbomachinery.shaft.ShaftFigures;
import dev.penstock.turbomachinery.turbine.TurbineFigures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a balanced engine publishes: headline figures, stations, parts, and the evidence that it closes. */
public final class EngineFigures {

    private static final Notation IMPULSE = Notation.fixed("s", "s", 1, 1);
    private static final Notation RELATIVE = significant("", 2);

    private static final Place.Source GRAVITY = fixed("constants.standard_gravity_m_s2");

    /** Headline figures. */
    public static final FigureTable<EngineBalance> SUMMARY = FigureTable.<EngineBalance>ofOne()
            .word("cycle", "cycle", b -> b.engine().cycle())
            .number("chamber_pressure_Pa", "chamber pressure", Notation.PRESSURE, b -> b.engine()
                    .chamberPressure())
            .briefly("chamber")
            .by(ModelCard.SAME, fixed(InputPaths.path(ConceptTables.ENGINE.of(EngineInputs.CHAMBER_PRESSURE))))
            .number("mixture_ratio", "mixture ratio", significant("", 4), b -> b.engine()
                    .mixtureRatio())
            .by(Definitions.RATIO, own("oxidizer_flow_kg_s", "fuel_flow_kg_s"))
            .number("chamber_mixture_ratio", "mixture ratio in the chamber", significant("", 4), b -> b.engine()
                    .chamberMixtureRatio())
            .from((b, at) -> new Origin(Definitions.RATIO, new EnginePlaces(b).chamberFlows()))
            .number("thrust_vacuum_N", "thrust, vacuum", Notation.FORCE, b -> b.engine()
                    .vacuumThrust())
            .briefly("thrust vac")
            .from((b, at) -> Origin.of(Definitions.SUM, EnginePlaces.chamberThrust(b), EnginePlaces.jets(b)))
            .number("thrust_sea_level_N", "thrust, sea level", Notation.FORCE, b -> b.engine()
                    .seaLevelThrust())
            .by(
                    b -> b.chamber().altitudeCard(),
                    own("thrust_vacuum_N"),
                    stated("engine.chambers"),
                    fixed("chamber.exit_area_m2", "constants.standard_atmosphere_Pa"),
                    stated("exhaust."))
            .number("isp_vacuum_s", "specific impulse, vacuum", IMPULSE, b -> b.engine()
                    .vacuumIsp())
            .briefly("Isp vac")
            .by(Definitions.IMPULSE, own("thrust_vacuum_N", "mass_flow_kg_s"), GRAVITY)
            .moreIsBetter()
            .number("isp_sea_level_s", "specific impulse, sea level", IMPULSE, b -> b.engine()
                    .seaLevelIsp())
            .briefly("Isp s.l.")
            .by(Definitions.IMPULSE, own("thrust_sea_level_N", "mass_flow_kg_s"), GRAVITY)
            .moreIsBetter()
            .number("mass_flow_kg_s", "mass flow", Notation.MASS_FLOW, b -> b.engine()
                    .massFlow())
            .briefly("flow")
            .from(EngineFigures::allFlows)
            .number("oxidizer_flow_kg_s", "oxidizer flow", Notation.MASS_FLOW, b -> b.engine()
                    .oxidizerFlow())
            .from((b, at) -> tankFlow(b, Side.OXIDIZER))
            .number("fuel_flow_kg_s", "fuel flow", Notation.MASS_FLOW, b -> b.engine()
                    .fuelFlow())
            .from((b, at) -> tankFlow(b, Side.FUEL))
            .optional("diluent_flow_kg_s", "flow of the third fluid", Notation.MASS_FLOW, EngineFigures::diluent)
            .from((b, at) -> new Origin(Definitions.SUM, List.of(diluentTank(b) + ".mass_flow_kg_s")))
            .leftOutIfAbsent()
            .number("area_ratio", "area ratio", significant("", 4), b -> b.engine()
                    .areaRatio())
            .by(ModelCard.SAME, fixed("chamber.area_ratio"))
            .number("throat_diameter_m", "throat diameter", Notation.LENGTH, b -> b.engine()
                    .throatDiameter())
            .by(Definitions.DIAMETER, fixed("chamber.throat_area_m2"))
            .number("exit_diameter_m", "exit diameter", Notation.LENGTH, b -> b.engine()
                    .exitDiameter())
            .by(Definitions.DIAMETER, fixed("chamber.exit_area_m2"))
            .lessIsBetter()
            .number(
                    "length_m",
                    "length, injector face to exit",
                    Notation.LENGTH,
                    b -> EngineLength.extended(b.chamber().contour()))
            .by(EngineLength.CARD, fixed("chamber.throat_area_m2"), fixed("chamber.area_ratio"))
            .lessIsBetter()
            .optional(
                    "stowed_length_m",
                    "length, extension stowed",
                    Notation.LENGTH,
                    b -> EngineLength.stowed(
                            b.chamber().contour(),
                            b.concept().chamber().nozzle().compensation().parting()))
            .by(EngineLength.CARD, own("length_m"))
            .leftOutIfAbsent()
            .number(
                    "characteristic_velocity_m_s",
                    "characteristic velocity, delivered",
                    Notation.fixed("m/s", "m/s", 1, 1),
                    b -> b.engine().characteristicVelocity())
            .by(ModelCard.SAME, fixed("chamber.characteristic_velocity_m_s"))
            .table();

    /** Headline figures with those of the mass. */
    public static final FigureTable<EngineBalance> HEADLINE = FigureTable.<EngineBalance>ofOne()
            .with(SUMMARY, balance -> balance)
            .with(MassFigures.TOTALS, EngineBalance::mass)
            .number("chamber_isp_vacuum_s", "chamber specific impulse in vacuum", IMPULSE, b -> b.chamber()
                    .vacuumSpecificImpulse())
            .by(Definitions.IMPULSE, fixed("chamber.vacuum_impulse_m_s"), GRAVITY)
            .outsideDocuments()
            .table();

    /** Figures of a station. */
    public static final FigureTable<Station> STATIONS = FigureTable.<Station>named(s -> Integer.toString(s.number()))
            .word("number", "no.", Station::number)
            .word("name", "station", Station::name)
            .word("medium", "medium", Station::medium)
            .number("pressure_Pa", "pressure", Notation.PRESSURE, Station::pressure)
            .number("temperature_K", "temperature", Notation.TEMPERATURE, Station::temperature)
            .number("density_kg_m3", "density", Notation.DENSITY, Station::density)
            .number("enthalpy_J_kg", "enthalpy", Notation.fixed("J/kg", "kJ/kg", 1e-3, 1), Station::enthalpy)
            .number("mass_flow_kg_s", "flow", Notation.MASS_FLOW, Station::massFlow)
            .table();

    /** Figures of a component. */
    public static final FigureTable<Component> COMPONENTS = FigureTable.named(Component::id)
            .word("id", "id", Component::id)
            .word("kind", "kind", c -> Words.of(c.kind()))
            .word("label", "component", Component::label)
            .word("inlets", "from", Component::inlets)
            .word("outlets", "to", Component::outlets)
            .number("heat_in_W", "heat in", Notation.POWER, Component::heatIn)
            .from((c, at) -> at.all(JACKET).isEmpty()
                    ? new Origin(Definitions.HEAT, ends(at))
                    : new Origin(
                            at.all(JACKET).size() > 1 ? Definitions.SUM : ModelCard.SAME,
                            at.all(JACKET, "heat_load_W")))
            .number("work_in_W", "work in", Notation.POWER, Component::workIn)
            .from((c, at) -> new Origin(Definitions.WORK, ends(at)))
            .table();

    /** Figures of a pressure step. */
    public static final FigureTable<PressureStep> LADDER = FigureTable.<PressureStep>ofOne()
            .word("line", "line", step -> step.line().title())
            .word("component", "at", step -> step.part().label())
            .number("from_Pa", "from", Notation.PRESSURE, PressureStep::from)
            .number("to_Pa", "to", Notation.PRESSURE, PressureStep::to)
            .number("rise_Pa", "step", Notation.PRESSURE, PressureStep::rise)
            .outsideDocuments()
            .table();

    /** Figures of a closing equation. */
    public static final FigureTable<Residual> RESIDUALS = FigureTable.named(Residual::name)
            .word("name", "equation", Residual::name)
            .number("value", "residual", r -> significant(r.unit(), 3).namingUnit(), Residual::value)
            .from((r, at) -> new Origin(Definitions.RESIDUAL, r.terms()))
            .word("unit", "unit", Residual::unit)
            .number("relative", "relative", RELATIVE, Residual::relative)
            .by(Definitions.RATIO, own("value"))
            .table();

    /** Figures of the audit of one component. */
    public static final FigureTable<EnergyAudit.Item> AUDIT = FigureTable.named(EnergyAudit.Item::component)
            .word("component", "component", EnergyAudit.Item::component)
            .number("mass_imbalance", "mass imbalance", RELATIVE, EnergyAudit.Item::massImbalance)
            .by(Definitions.AUDIT, of(INLET, "mass_flow_kg_s"), of(INLET, "enthalpy_J_kg"))
            .number("energy_imbalance", "energy imbalance", RELATIVE, EnergyAudit.Item::energyImbalance)
            .by(Definitions.AUDIT, of(INLET, "mass_flow_kg_s"), of(INLET, "enthalpy_J_kg"))
            .table();

    /** Figures of a jet of dumped gas. */
    public static final FigureTable<ExhaustJet> EXHAUSTS = FigureTable.named(ExhaustJet::name)
            .number("vacuum_thrust_N", "thrust in vacuum", Notation.FORCE, ExhaustJet::vacuumThrust)
            .by(
                    ExhaustNozzle.CARD,
                    stated(""),
                    of(INLET, "pressure_Pa"),
                    of(INLET, "temperature_K"),
                    of(INLET, "mass_flow_kg_s"))
            .table();

    /** Mass part by part. */
    private static final FigureTable<EngineBalance> MASS = FigureTable.<EngineBalance>ofOne()
            .each("items", b -> b.mass().items(), MassFigures.ITEMS, EnginePlaces::mass)
            .each("whole_engine", b -> b.mass().wholeEngine(), MassFigures.ITEMS)
            .word("scope", "what it counts", b -> EngineMass.SCOPE)
            .table();

    /** Metals in oxygen and hydrogen. */
    private static final FigureTable<MetalReport> METALS = FigureTable.<MetalReport>ofOne()
            .with(MetalFigures.WORST, report -> report)
            .each(
                    "parts",
                    MetalReport::parts,
                    MetalFigures.PARTS,
                    (report, part, at) -> at.with(INLET, List.of(StationRecorder.at(part.station()))))
            .table();

    /** Words of an input. */
    public static final FigureTable<InputValue> INPUTS = FigureTable.named(InputValue::key)
            .word("key", "input", InputValue::key)
            .word("value", "value", InputValue::value)
            .word("unit", "unit", InputValue::unit)
            .word("given", "given", InputValue::given)
            .word("source", "source", InputValue::source)
            .table();

    /** Figures of several parts by which engines are compared: the largest, the sum, the tightest. */
    public static final FigureTable<EngineBalance> EXTREMES = FigureTable.<EngineBalance>ofOne()
            .optional("turbine_temperature_K", "hottest turbine gas", Notation.TEMPERATURE, b -> b.turbines().stream()
                    .mapToDouble(t -> t.inlet().temperature())
                    .max())
            .briefly("turbine")
            .from((b, at) -> turbines(Definitions.EXTREME, b, "inlet_temperature_K"))
            .lessIsBetter()
            .optional(
                    "turbine_pressure_ratio",
                    "highest turbine pressure ratio",
                    significant("", 4),
                    b -> b.turbines().stream()
                            .mapToDouble(t -> t.inlet().pressure() / t.outlet().pressure())
                            .max())
            .from((b, at) -> turbines(Definitions.EXTREME, b, "pressure_ratio"))
            .optional("discharge_pressure_Pa", "highest pump discharge", Notation.PRESSURE, b -> b.pumps().stream()
                    .mapToDouble(p -> p.duty().dischargePressure())
                    .max())
            .briefly("discharge")
            .from((b, at) -> pumps(Definitions.EXTREME, b, "discharge_pressure_Pa"))
            .lessIsBetter()
            .optional("pump_power_W", "pump power, all", Notation.POWER, EngineBalance::pumpPower)
            .briefly("pumps")
            .from((b, at) -> pumps(Definitions.SUM, b, "power_W"))
            .lessIsBetter()
            .optional(
                    "tightest_margin",
                    "margin of the tightest limit",
                    Notation.MARGIN,
                    b -> LimitCheck.margins(b.limits()).stream()
                            .mapToDouble(LimitCheck::margin)
                            .min())
            .from((b, at) -> new Origin(
                    Definitions.SMALLEST,
                    CheckFigures.LIMITS.paths("limits", LimitCheck.margins(b.limits()), "margin")))
            .moreIsBetter()
            .table();

    /** The whole engine. */
    public static final FigureTable<EngineBalance> ALL = FigureTable.<EngineBalance>ofOne()
            .word("name", "concept", b -> b.concept().name())
            .word("oxidizer", "oxidizer", b -> b.concept().oxidizer().id())
            .word("fuel", "fuel", b -> b.concept().fuel().id())
            .part("engine", Optional::of, HEADLINE)
            .each("stations", EngineBalance::stations, STATIONS)
            .each("components", EngineBalance::components, COMPONENTS, EnginePlaces::component)
            .each("pumps", EngineBalance::pumps, PumpFigures.ALL, EnginePlaces::pump)
            .each("turbines", EngineBalance::turbines, TurbineFigures.ALL, EnginePlaces::turbine)
            .each("shafts", EngineBalance::shafts, ShaftFigures.ALL, EnginePlaces::shaft)
            .part("mass", Optional::of, MASS)
            .part("cooling", b -> b.cooling().stream().findFirst(), JacketFigures.ALL, EnginePlaces::jacket)
            .each("circuits", b -> b.cooling().stream().skip(1).toList(), JacketFigures.BEHIND, EnginePlaces::jacket)
            .leftOutIfAbsent()
            .each("losses", b -> b.chamber().losses(), LossFigures.ALL, EnginePlaces::loss)
            .each("engine_losses", EngineBalance::engineLosses, LossFigures.ALL, EnginePlaces::engineLoss)
            .each("pressure_ladder", EngineBalance::pressureLadder, LADDER)
            .each("limits", EngineBalance::limits, CheckFigures.LIMITS, EnginePlaces::limit)
            .part("hardware", b -> Optional.of(HardwareCount.of(b)), HardwareFigures.ALL)
            .part("metals", b -> Optional.of(b.metals()), METALS)
            .word("within_limits", "within limits", EngineBalance::withinLimits)
            .word("limits_in_doubt", "limits in doubt", b -> !b.doubts().isEmpty())
            .each("warnings", EngineBalance::warnings, CheckFigures.WARNINGS)
            .number("residual_worst", "worst relative residual", RELATIVE, EngineBalance::residualWorst)
            .from((b, at) -> Origin.of(
                    Definitions.EXTREME,
                    RESIDUALS.paths("residuals", b.residuals(), "relative"),
                    own("audit_worst").paths(at)))
            .each("residuals", EngineBalance::residuals, RESIDUALS)
            .number("audit_worst", "worst of the audit", RELATIVE, b -> b.audit()
                    .worst())
            .from((b, at) -> new Origin(Definitions.AUDIT, EnginePlaces.enthalpies(b)))
            .each("inputs", b -> b.concept().document().inputs(), INPUTS)
            .part("chamber", b -> Optional.of(b.chamber()), ChamberFigures.ALL, EnginePlaces::chamber)
            .outsideDocuments()
            .each("audit", b -> b.audit().items(), AUDIT, EnginePlaces::audited)
            .outsideDocuments()
            .each("exhausts", EngineBalance::exhausts, EXHAUSTS, EnginePlaces::exhaust)
            .outsideDocuments()
            .part("figures", Optional::of, EXTREMES)
            .outsideDocuments()
            .table();

    private EngineFigures() {}

    private static Origin pumps(ModelCard model, EngineBalance balance, String key) {
        return new Origin(model, PumpFigures.ALL.paths("pumps", balance.pumps(), key));
    }

    private static Origin turbines(ModelCard model, EngineBalance balance, String key) {
        return new Origin(model, TurbineFigures.ALL.paths("turbines", balance.turbines(), key));
    }

    private static OptionalDouble diluent(EngineBalance balance) {
        double flow = balance.engine().diluentFlow();
        return flow > 0 ? OptionalDouble.of(flow) : OptionalDouble.empty();
    }

    private static String diluentTank(EngineBalance balance) {
        return StationRecorder.at(balance.outlet(PartKey.diluentTank()).number());
    }

    private static Origin allFlows(EngineBalance balance, Place at) {
        List<String> flows = new ArrayList<>(List.of(at.own("oxidizer_flow_kg_s"), at.own("fuel_flow_kg_s")));
        diluent(balance).ifPresent(d -> flows.add(at.own("diluent_flow_kg_s")));
        return new Origin(Definitions.SUM, flows);
    }

    private static Origin tankFlow(EngineBalance balance, Side side) {
        return new Origin(Definitions.SUM, List.of(new EnginePlaces(balance).tank(side) + ".mass_flow_kg_s"));
    }

    /** Enthalpies at the ends of a component; what the shafts deliver where it has none. */
    private static List<String> ends(Place at) {
        List<String> ends = new ArrayList<>(at.all(INLET, "enthalpy_J_kg"));
        ends.addAll(at.all(OUTLET, "enthalpy_J_kg"));
        return ends.isEmpty() ? at.all(SHAFT, "power_delivered_W") : ends;
    }
}
