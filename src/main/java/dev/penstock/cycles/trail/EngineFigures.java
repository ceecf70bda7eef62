package dev.penstock.cycles.trail;

import static dev.penstock.quantities.Notation.significant;

import dev.penstock.chamber.ChamberFigures;
import dev.penstock.chamber.loss.LossFigures;
import dev.penstock.cooling.jacket.JacketFigures;
import dev.penstock.cycles.origin.Definitions;
import dev.penstock.cycles.sheet.Component;
import dev.penstock.cycles.sheet.EnergyAudit;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.EngineSummary;
import dev.penstock.cycles.sheet.PressureStep;
import dev.penstock.cycles.sheet.Residual;
import dev.penstock.cycles.sheet.Station;
import dev.penstock.input.InputValue;
import dev.penstock.provenance.CheckFigures;
import dev.penstock.provenance.FigureTable;
import dev.penstock.provenance.FigureTable.Placed;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Origin;
import dev.penstock.quantities.Notation;
import dev.penstock.turbomachinery.mass.MassFigures;
import dev.penstock.turbomachinery.pump.PumpFigures;
import dev.penstock.turbomachinery.shaft.ShaftFigures;
import dev.penstock.turbomachinery.turbine.TurbineFigures;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a balanced engine publishes: headline figures, stations, parts, and the evidence that it closes. */
public final class EngineFigures {

    private static final Notation IMPULSE = Notation.fixed("s", "s", 1, 1);
    private static final Notation RELATIVE = significant("", 2);

    /** Headline figures. */
    public static final FigureTable<EngineSummary> SUMMARY = FigureTable.<EngineSummary>ofOne()
            .word("cycle", "cycle", EngineSummary::cycle)
            .number("chamber_pressure_Pa", "chamber pressure", Notation.PRESSURE, EngineSummary::chamberPressure)
            .number("mixture_ratio", "mixture ratio", significant("", 4), EngineSummary::mixtureRatio)
            .number(
                    "chamber_mixture_ratio",
                    "mixture ratio in the chamber",
                    significant("", 4),
                    EngineSummary::chamberMixtureRatio)
            .number("thrust_vacuum_N", "thrust, vacuum", Notation.FORCE, EngineSummary::vacuumThrust)
            .number("thrust_sea_level_N", "thrust, sea level", Notation.FORCE, EngineSummary::seaLevelThrust)
            .number("isp_vacuum_s", "specific impulse, vacuum", IMPULSE, EngineSummary::vacuumIsp)
            .moreIsBetter()
            .number("isp_sea_level_s", "specific impulse, sea level", IMPULSE, EngineSummary::seaLevelIsp)
            .moreIsBetter()
            .number("mass_flow_kg_s", "mass flow", Notation.MASS_FLOW, EngineSummary::massFlow)
            .number("oxidizer_flow_kg_s", "oxidizer flow", Notation.MASS_FLOW, EngineSummary::oxidizerFlow)
            .number("fuel_flow_kg_s", "fuel flow", Notation.MASS_FLOW, EngineSummary::fuelFlow)
            .number("area_ratio", "area ratio", significant("", 4), EngineSummary::areaRatio)
            .number("throat_diameter_m", "throat diameter", Notation.LENGTH, EngineSummary::throatDiameter)
            .number("exit_diameter_m", "exit diameter", Notation.LENGTH, EngineSummary::exitDiameter)
            .lessIsBetter()
            .number(
                    "characteristic_velocity_m_s",
                    "characteristic velocity, delivered",
                    Notation.fixed("m/s", "m/s", 1, 1),
                    EngineSummary::characteristicVelocity)
            .table();

    /** Headline figures with those of the mass. */
    public static final FigureTable<EngineBalance> HEADLINE = FigureTable.<EngineBalance>ofOne()
            .with(SUMMARY, EngineBalance::engine)
            .with(MassFigures.TOTALS, EngineBalance::mass)
            .number("chamber_isp_vacuum_s", "chamber specific impulse in vacuum", IMPULSE, b -> b.chamber()
                    .vacuumSpecificImpulse())
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
            .word("kind", "kind", c -> c.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'))
            .word("label", "component", Component::label)
            .word("inlets", "from", Component::inlets)
            .word("outlets", "to", Component::outlets)
            .number("heat_in_W", "heat in", Notation.POWER, Component::heatIn)
            .number("work_in_W", "work in", Notation.POWER, Component::workIn)
            .table();

    /** Figures of a pressure step. */
    public static final FigureTable<PressureStep> LADDER = FigureTable.<PressureStep>ofOne()
            .word("line", "line", PressureStep::line)
            .word("component", "at", PressureStep::component)
            .number("from_Pa", "from", Notation.PRESSURE, PressureStep::from)
            .number("to_Pa", "to", Notation.PRESSURE, PressureStep::to)
            .number("rise_Pa", "step", Notation.PRESSURE, PressureStep::rise)
            .outsideDocuments()
            .table();

    /** Figures of a closing equation. */
    public static final FigureTable<Residual> RESIDUALS = FigureTable.named(Residual::name)
            .word("name", "equation", Residual::name)
            .number("value", "left over", r -> significant(r.unit(), 3).namingUnit(), Residual::value)
            .word("unit", "unit", Residual::unit)
            .number("relative", "relative", RELATIVE, Residual::relative)
            .table();

    /** Figures of the audit of one component. */
    public static final FigureTable<EnergyAudit.Item> AUDIT = FigureTable.named(EnergyAudit.Item::component)
            .word("component", "component", EnergyAudit.Item::component)
            .number("mass_imbalance", "mass imbalance", RELATIVE, EnergyAudit.Item::massImbalance)
            .number("energy_imbalance", "energy imbalance", RELATIVE, EnergyAudit.Item::energyImbalance)
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
            .from((b, at) -> of(Definitions.EXTREME, turbines(b), "inlet_temperature_K"))
            .lessIsBetter()
            .optional(
                    "turbine_pressure_ratio",
                    "highest turbine pressure ratio",
                    significant("", 4),
                    b -> b.turbines().stream()
                            .mapToDouble(t -> t.inlet().pressure() / t.outlet().pressure())
                            .max())
            .from((b, at) -> of(Definitions.EXTREME, turbines(b), "pressure_ratio"))
            .optional("discharge_pressure_Pa", "highest pump discharge", Notation.PRESSURE, b -> b.pumps().stream()
                    .mapToDouble(p -> p.duty().dischargePressure())
                    .max())
            .from((b, at) -> of(Definitions.EXTREME, pumps(b), "discharge_pressure_Pa"))
            .lessIsBetter()
            .optional("pump_power_W", "pump power, all", Notation.POWER, EngineBalance::pumpPower)
            .from((b, at) -> of(Definitions.SUM, pumps(b), "power_W"))
            .lessIsBetter()
            .optional("tightest_margin", "margin of the tightest limit", Notation.MARGIN, b -> b.limits().stream()
                    .mapToDouble(l -> l.margin())
                    .min())
            .from((b, at) -> of(Definitions.SMALLEST, CheckFigures.LIMITS.placed("limits", b.limits()), "margin"))
            .moreIsBetter()
            .table();

    /** The whole engine. */
    public static final FigureTable<EngineBalance> ALL = FigureTable.<EngineBalance>ofOne()
            .word("name", "concept", b -> b.concept().name())
            .word("oxidizer", "oxidizer", b -> b.concept().oxidizer().id())
            .word("fuel", "fuel", b -> b.concept().fuel().id())
            .part("engine", Optional::of, HEADLINE)
            .each("stations", EngineBalance::stations, STATIONS)
            .each("components", EngineBalance::components, COMPONENTS)
            .each("pumps", EngineBalance::pumps, PumpFigures.ALL)
            .each("turbines", EngineBalance::turbines, TurbineFigures.ALL)
            .each("shafts", EngineBalance::shafts, ShaftFigures.ALL)
            .part("mass", b -> Optional.of(b.mass()), MassFigures.ALL)
            .part("cooling", b -> b.cooling().stream().findFirst(), JacketFigures.ALL)
            .each("circuits", b -> b.cooling().stream().skip(1).toList(), JacketFigures.BEHIND)
            .leftOutIfAbsent()
            .each("losses", b -> b.chamber().losses(), LossFigures.ALL)
            .each("engine_losses", EngineBalance::engineLosses, LossFigures.ALL)
            .each("pressure_ladder", EngineBalance::pressureLadder, LADDER)
            .each("limits", EngineBalance::limits, CheckFigures.LIMITS)
            .word("within_limits", "within limits", EngineBalance::withinLimits)
            .each("warnings", EngineBalance::warnings, CheckFigures.WARNINGS)
            .number("residual_worst", "worst relative residual", RELATIVE, EngineBalance::residualWorst)
            .each("residuals", EngineBalance::residuals, RESIDUALS)
            .number("audit_worst", "worst of the audit", RELATIVE, b -> b.audit()
                    .worst())
            .each("inputs", b -> b.concept().document().inputs(), INPUTS)
            .part("chamber", b -> Optional.of(b.chamber()), ChamberFigures.ALL)
            .outsideDocuments()
            .each("audit", b -> b.audit().items(), AUDIT)
            .outsideDocuments()
            .part("figures", Optional::of, EXTREMES)
            .outsideDocuments()
            .table();

    private EngineFigures() {}

    private static List<? extends Placed<?>> pumps(EngineBalance balance) {
        return PumpFigures.ALL.placed("pumps", balance.pumps());
    }

    private static List<? extends Placed<?>> turbines(EngineBalance balance) {
        return TurbineFigures.ALL.placed("turbines", balance.turbines());
    }

    private static Origin of(ModelCard model, List<? extends Placed<?>> parts, String key) {
        return new Origin(model, parts.stream().map(part -> part.at().own(key)).toList());
    }
}
