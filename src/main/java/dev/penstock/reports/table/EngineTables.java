package dev.penstock.reports.table;

import dev.penstock.chamber.ChamberFigures;
import dev.penstock.chamber.loss.LossFigures;
import dev.penstock.chamber.loss.NamedLoss;
import dev.penstock.cooling.jacket.JacketFigures;
import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cycles.hardware.HardwareCount;
import dev.penstock.cycles.hardware.HardwareFigures;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.trail.EngineFigures;
import dev.penstock.provenance.CheckFigures;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.reports.page.FigureRows;
import dev.penstock.reports.text.Markup;
import dev.penstock.reports.text.PageTable;
import dev.penstock.turbomachinery.mass.MassFigures;
import dev.penstock.turbomachinery.mass.MassItem;
import dev.penstock.turbomachinery.metal.MetalFigures;
import dev.penstock.turbomachinery.pump.PumpFigures;
import dev.penstock.turbomachinery.shaft.ShaftFigures;
import dev.penstock.turbomachinery.turbine.TurbineFigures;
import java.util.Comparator;
import java.util.List;

/** The tables of one balanced engine: which of its figures stand side by side. */
public final class EngineTables {

    private EngineTables() {}

    /** @return states at every station */
    public static PageTable stations(EngineBalance balance) {
        return FigureRows.list(
                "Stations",
                EngineFigures.STATIONS,
                "stations",
                balance.stations(),
                "number name medium pressure_Pa temperature_K density_kg_m3 enthalpy_J_kg mass_flow_kg_s");
    }

    /** @return pressure steps from tank to chamber, line by line */
    public static PageTable ladder(EngineBalance balance) {
        return FigureRows.list(
                "Pressure steps",
                EngineFigures.LADDER,
                EngineFigures.LADDER.placed("pressure_ladder", balance.pressureLadder()).stream()
                        .sorted(Comparator.comparing(step -> step.thing().line().title()))
                        .toList(),
                step -> "",
                "line component from_Pa to_Pa rise_Pa");
    }

    /** @return what each pump does and how big it is */
    public static PageTable pumps(EngineBalance balance) {
        return FigureRows.list(
                "Pumps",
                PumpFigures.ALL,
                "pumps",
                balance.pumps(),
                "name discharge_pressure_Pa mass_flow_kg_s head_J_kg efficiency power_W speed_rad_s stages"
                        + " impeller_diameter_m tip_speed_m_s suction_head_required_m suction_head_available_m");
    }

    /** @return what each turbine does and how big it is */
    public static PageTable turbines(EngineBalance balance) {
        return FigureRows.list(
                "Turbines",
                TurbineFigures.ALL,
                "turbines",
                balance.turbines(),
                "name blading inlet_pressure_Pa inlet_temperature_K exit_pressure_Pa pressure_ratio"
                        + " mass_flow_kg_s efficiency power_W velocity_ratio mean_diameter_m blade_height_m");
    }

    /** @return power and speed of each shaft */
    public static PageTable shafts(EngineBalance balance) {
        return FigureRows.list(
                "Shafts",
                ShaftFigures.ALL,
                "shafts",
                balance.shafts(),
                "name turbines pumps speed_rad_s speed_set_by power_delivered_W power_absorbed_W"
                        + " mechanical_loss_W diameter_m mass_kg");
    }

    /** @return gas, performance and size of the thrust chamber */
    public static PageTable chamber(EngineBalance balance) {
        PageTable chamber = FigureRows.sheet(
                "Thrust chamber and engine",
                ChamberFigures.ALL,
                balance.chamber(),
                "chamber",
                "gas_temperature_K gas_molar_mass_kg_mol gas_isentropic_exponent"
                        + " ideal_characteristic_velocity_m_s thrust_coefficient_vacuum mass_flow_kg_s length_m"
                        + " nozzle_length_m");
        return chamber.and(FigureRows.sheet(
                "",
                EngineFigures.HEADLINE,
                balance,
                "engine",
                "chamber_mixture_ratio characteristic_velocity_m_s chamber_isp_vacuum_s area_ratio"
                        + " throat_diameter_m exit_diameter_m thrust_vacuum_N thrust_sea_level_N"));
    }

    /** @return every loss between the ideal and the delivered specific impulse */
    public static PageTable losses(EngineBalance balance) {
        return losses("losses", balance.chamber().losses()).and(losses("engine_losses", balance.engineLosses()));
    }

    private static PageTable losses(String list, List<NamedLoss> losses) {
        return FigureRows.list(
                "Losses", LossFigures.ALL, list, losses, "name factor impulse_loss_m_s model_title source note");
    }

    /** @return what the jacket does as a whole */
    public static PageTable cooling(JacketResult jacket) {
        return FigureRows.sheet(
                Markup.capitalized(jacket.circuit().word() + "jacket"),
                JacketFigures.ALL,
                jacket,
                jacket.circuit().path(),
                "inlet_temperature_K outlet_temperature_K coolant_temperature_rise_K"
                        + " inlet_pressure_Pa outlet_pressure_Pa coolant_pressure_drop_Pa heat_load_W"
                        + " peak_heat_flux_W_m2 peak_wall_temperature_K");
    }

    /** @return what happens along the wall */
    public static PageTable profile(JacketResult jacket) {
        return FigureRows.list(
                "Along the wall, from the place that the coolant reaches first; distances from the throat",
                JacketFigures.CELLS,
                jacket.circuit().figure("profile"),
                JacketFigures.Cell.of(jacket),
                "x_m radius_m heat_flux_W_m2 wall_temperature_gas_side_K wall_temperature_coolant_side_K"
                        + " coolant_temperature_K coolant_pressure_Pa coolant_velocity_m_s channel_width_m"
                        + " channel_height_m land_width_m");
    }

    /** @return mass of each part with its scatter, then that of the engine */
    public static PageTable mass(EngineBalance balance) {
        return mass("Engine mass", "mass.items", balance.mass().items())
                .and(FigureRows.rows(
                        EngineFigures.HEADLINE, balance, "engine", List.of("mass_kg mass_low_kg mass_high_kg")));
    }

    /** @return what has to be built, counted */
    public static PageTable hardware(EngineBalance balance) {
        return FigureRows.sheet(
                "What has to be built",
                HardwareFigures.ALL,
                HardwareCount.of(balance),
                "hardware",
                "parts machines pumps turbines motors rotors gears burners chambers injectors jackets valves moving_parts"
                        + " joints hot_joints");
    }

    /** @return parts that meet oxygen or hydrogen, with what their metals bear */
    public static PageTable metals(EngineBalance balance) {
        return metals(
                balance,
                "name metal medium pressure_Pa temperature_K oxygen_pressure_Pa oxygen_threshold_Pa hydrogen_pressure_Pa"
                        + " strength_in_hydrogen verdict usual source");
    }

    /**
     * @param balance balanced engine
     * @param keys keys of the figures that make the columns, parted by blanks
     * @return the parts
     */
    public static PageTable metals(EngineBalance balance, String keys) {
        return FigureRows.list(
                "Metals in oxygen and hydrogen",
                MetalFigures.PARTS,
                "metals.parts",
                balance.metals().parts(),
                keys);
    }

    /** @return what relations for whole engines say */
    public static PageTable wholeEngine(EngineBalance balance) {
        return mass(
                "What relations for whole engines say",
                "mass.whole_engine",
                balance.mass().wholeEngine());
    }

    private static PageTable mass(String caption, String list, List<MassItem> items) {
        return FigureRows.list(caption, MassFigures.ITEMS, list, items, "name mass_kg low_kg high_kg source");
    }

    /**
     * @param limits limit checks
     * @return the limits, the tightest first
     */
    public static PageTable limits(List<LimitCheck> limits) {
        return limits(limits, "title value limit margin verdict source");
    }

    /**
     * @param limits limit checks
     * @param keys keys of the figures that make the columns, parted by blanks
     * @return the limits, the tightest first
     */
    public static PageTable limits(List<LimitCheck> limits, String keys) {
        return FigureRows.list(
                "Limits, the tightest first; those that set a speed last",
                CheckFigures.LIMITS,
                CheckFigures.LIMITS.placed("limits", limits).stream()
                        .sorted((a, b) -> LimitCheck.TIGHTEST_FIRST.compare(a.thing(), b.thing()))
                        .toList(),
                limit -> limit.met() ? "" : "missed",
                keys);
    }

    /** @return what is left of every closing equation */
    public static PageTable residuals(EngineBalance balance) {
        return FigureRows.list(
                "Closing equations", EngineFigures.RESIDUALS, "residuals", balance.residuals(), "name value relative");
    }

    /** @return mass and energy added up again, component by component */
    public static PageTable audit(EngineBalance balance) {
        return FigureRows.list(
                "Audit by component",
                EngineFigures.AUDIT,
                "audit",
                balance.audit().items(),
                "component mass_imbalance energy_imbalance");
    }
}
