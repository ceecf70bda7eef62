package dev.penstock.reports;

import dev.penstock.chamber.NamedLoss;
import dev.penstock.cooling.JacketResult;
import dev.penstock.cooling.JacketStation;
import dev.penstock.cycles.Component;
import dev.penstock.cycles.ConceptInput;
import dev.penstock.cycles.EngineBalance;
import dev.penstock.cycles.EngineSummary;
import dev.penstock.cycles.PressureStep;
import dev.penstock.cycles.Residual;
import dev.penstock.cycles.Station;
import dev.penstock.errors.Warning;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.turbomachinery.PumpSizing;
import dev.penstock.turbomachinery.ShaftBalance;
import dev.penstock.turbomachinery.TurbineSizing;
import dev.penstock.turbomachinery.mass.EngineMass;
import dev.penstock.turbomachinery.mass.MassItem;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

/** A balanced engine as a JSON document; keys end in the SI unit of the value. */
public final class BalanceJson {

    private BalanceJson() {}

    /**
     * @param balance balanced engine
     * @return JSON document
     */
    public static Map<String, Object> of(EngineBalance balance) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", balance.concept().name());
        map.put("oxidizer", balance.concept().oxidizer().id());
        map.put("fuel", balance.concept().fuel().id());
        EngineMass mass = balance.mass();
        map.put("engine", engine(balance.engine(), mass));
        map.put("stations", each(balance.stations(), BalanceJson::station));
        map.put("components", each(balance.components(), BalanceJson::component));
        map.put("pumps", each(balance.pumps(), BalanceJson::pump));
        map.put("turbines", each(balance.turbines(), BalanceJson::turbine));
        map.put("shafts", each(balance.shafts(), BalanceJson::shaft));
        map.put("mass", mass(mass));
        map.put("cooling", balance.cooling().map(BalanceJson::cooling));
        map.put("losses", each(balance.chamber().losses(), BalanceJson::loss));
        map.put("engine_losses", each(balance.engineLosses(), BalanceJson::loss));
        map.put("pressure_ladder", each(balance.pressureLadder(), BalanceJson::step));
        map.put("limits", each(balance.limits(), BalanceJson::limit));
        map.put("within_limits", balance.withinLimits());
        map.put("warnings", each(balance.warnings(), BalanceJson::warning));
        map.put("residual_worst", balance.residualWorst());
        map.put("residuals", each(balance.residuals(), BalanceJson::residual));
        map.put("audit_worst", balance.audit().worst());
        map.put("inputs", each(balance.concept().document().inputs(), BalanceJson::input));
        return map;
    }

    /**
     * @param engine headline figures
     * @return JSON object
     */
    public static Map<String, Object> engine(EngineSummary engine) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("cycle", engine.cycle());
        map.put("chamber_pressure_Pa", engine.chamberPressure());
        map.put("mixture_ratio", engine.mixtureRatio());
        map.put("chamber_mixture_ratio", engine.chamberMixtureRatio());
        map.put("thrust_vacuum_N", engine.vacuumThrust());
        map.put("thrust_sea_level_N", engine.seaLevelThrust());
        map.put("isp_vacuum_s", engine.vacuumIsp());
        map.put("isp_sea_level_s", engine.seaLevelIsp());
        map.put("mass_flow_kg_s", engine.massFlow());
        map.put("oxidizer_flow_kg_s", engine.oxidizerFlow());
        map.put("fuel_flow_kg_s", engine.fuelFlow());
        map.put("area_ratio", engine.areaRatio());
        map.put("throat_diameter_m", engine.throatDiameter());
        map.put("exit_diameter_m", engine.exitDiameter());
        map.put("characteristic_velocity_m_s", engine.characteristicVelocity());
        return map;
    }

    /**
     * @param engine headline figures
     * @param mass mass of the engine
     * @return JSON object of both
     */
    public static Map<String, Object> engine(EngineSummary engine, EngineMass mass) {
        Map<String, Object> map = engine(engine);
        map.put("mass_kg", mass.total().mode());
        map.put("mass_low_kg", mass.total().low());
        map.put("mass_high_kg", mass.total().high());
        map.put("thrust_to_weight", mass.thrustToWeight().mode());
        map.put("thrust_to_weight_low", mass.thrustToWeight().low());
        map.put("thrust_to_weight_high", mass.thrustToWeight().high());
        return map;
    }

    private static Map<String, Object> mass(EngineMass mass) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("items", each(mass.items(), BalanceJson::part));
        map.put("whole_engine", each(mass.wholeEngine(), BalanceJson::part));
        map.put("scope", MassView.SCOPE);
        return map;
    }

    private static Map<String, Object> part(MassItem item) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", item.name());
        map.put("low_kg", item.mass().low());
        map.put("mass_kg", item.mass().mode());
        map.put("high_kg", item.mass().high());
        map.put("source", item.source());
        return map;
    }

    private static Map<String, Object> station(Station s) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("number", s.number());
        map.put("name", s.name());
        map.put("medium", s.medium());
        map.put("pressure_Pa", s.pressure());
        map.put("temperature_K", s.temperature());
        map.put("density_kg_m3", s.density());
        map.put("enthalpy_J_kg", s.enthalpy());
        map.put("mass_flow_kg_s", s.massFlow());
        return map;
    }

    private static Map<String, Object> component(Component c) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("id", c.id());
        map.put("kind", c.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        map.put("label", c.label());
        map.put("inlets", c.inlets());
        map.put("outlets", c.outlets());
        map.put("heat_in_W", c.heatIn());
        map.put("work_in_W", c.workIn());
        return map;
    }

    private static Map<String, Object> pump(PumpSizing p) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", p.name());
        map.put("inlet_pressure_Pa", p.duty().inlet().pressure());
        map.put("discharge_pressure_Pa", p.duty().dischargePressure());
        map.put("discharge_temperature_K", p.outlet().temperature());
        map.put("mass_flow_kg_s", p.duty().massFlow());
        map.put("head_J_kg", p.head());
        map.put("efficiency", p.efficiency());
        map.put("power_W", p.power());
        map.put("speed_rad_s", p.speed());
        map.put("stages", p.stages());
        map.put("specific_speed", p.specificSpeed());
        map.put("suction_specific_speed", p.suctionSpecificSpeed());
        map.put("suction_head_available_m", p.netPositiveSuctionHead() + p.suppressionHead());
        map.put("suction_head_required_m", p.requiredSuctionHead());
        map.put("impeller_diameter_m", p.impellerDiameter());
        map.put("inducer_diameter_m", p.inducerDiameter());
        map.put("tip_speed_m_s", p.tipSpeed());
        return map;
    }

    private static Map<String, Object> turbine(TurbineSizing t) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", t.name());
        map.put("gas", t.duty().gas().description());
        map.put("inlet_pressure_Pa", t.inlet().pressure());
        map.put("inlet_temperature_K", t.inlet().temperature());
        map.put("exit_pressure_Pa", t.outlet().pressure());
        map.put("exit_temperature_K", t.outlet().temperature());
        map.put("pressure_ratio", t.inlet().pressure() / t.outlet().pressure());
        map.put("mass_flow_kg_s", t.duty().massFlow());
        map.put("isentropic_drop_J_kg", t.isentropicDrop());
        map.put("efficiency", t.efficiency());
        map.put("power_W", t.power());
        map.put("speed_rad_s", t.speed());
        map.put("type", t.type().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        map.put("stages", t.stages());
        map.put("velocity_ratio", t.velocityRatio());
        map.put("mean_diameter_m", t.meanDiameter());
        map.put("blade_height_m", t.bladeHeight());
        map.put("pitch_line_speed_m_s", t.pitchLineSpeed());
        return map;
    }

    private static Map<String, Object> shaft(ShaftBalance s) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", s.name());
        map.put("speed_rad_s", s.speed());
        map.put("speed_set_by", s.speedSetBy());
        map.put("pumps", s.pumps());
        map.put("turbines", s.turbines());
        map.put("power_delivered_W", s.powerDelivered());
        map.put("power_absorbed_W", s.powerAbsorbed());
        map.put("mechanical_loss_W", s.mechanicalLoss());
        map.put("diameter_m", s.diameter());
        map.put("mass_kg", s.mass());
        return map;
    }

    /**
     * @param jacket jacket
     * @return JSON object
     */
    public static Map<String, Object> cooling(JacketResult jacket) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("coolant", jacket.inlet().fluid());
        map.put("coolant_temperature_rise_K", jacket.coolantTemperatureRise());
        map.put("coolant_pressure_drop_Pa", jacket.pressureDrop());
        map.put("peak_wall_temperature_K", jacket.peakWallTemperature());
        map.put("peak_heat_flux_W_m2", jacket.peakHeatFlux());
        map.put("heat_load_W", jacket.heatLoad());
        map.put("inlet_pressure_Pa", jacket.inlet().pressure());
        map.put("inlet_temperature_K", jacket.inlet().temperature());
        map.put("outlet_pressure_Pa", jacket.outlet().pressure());
        map.put("outlet_temperature_K", jacket.outlet().temperature());
        map.put("profile", each(jacket.stations(), BalanceJson::cell));
        return map;
    }

    private static Map<String, Object> cell(JacketStation s) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("x_m", s.x());
        map.put("radius_m", s.radius());
        map.put("heat_flux_W_m2", s.heatFlux());
        map.put("wall_temperature_gas_side_K", s.gasSideWallTemperature());
        map.put("wall_temperature_coolant_side_K", s.coolantSideWallTemperature());
        map.put("coolant_temperature_K", s.coolantTemperature());
        map.put("coolant_pressure_Pa", s.coolantPressure());
        map.put("coolant_velocity_m_s", s.coolantVelocity());
        return map;
    }

    private static Map<String, Object> loss(NamedLoss l) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", l.name());
        map.put("factor", l.factor());
        map.put("impulse_loss_m_s", l.impulseLoss());
        map.put("model", l.model().map(card -> (Object) card.id()));
        map.put("note", l.note());
        return map;
    }

    private static Map<String, Object> step(PressureStep s) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("line", s.line());
        map.put("component", s.component());
        map.put("from_Pa", s.from());
        map.put("to_Pa", s.to());
        return map;
    }

    /**
     * @param check limit check
     * @return JSON object
     */
    public static Map<String, Object> limit(LimitCheck check) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", check.name());
        map.put("value", check.value());
        map.put("limit", check.limit());
        map.put("unit", check.unit());
        map.put("bound", check.upper() ? "upper" : "lower");
        map.put("met", check.met());
        map.put("margin", check.margin());
        map.put("source", check.source());
        return map;
    }

    /**
     * @param warning warning
     * @return JSON object
     */
    public static Map<String, Object> warning(Warning warning) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("source", warning.source());
        map.put("message", warning.message());
        return map;
    }

    private static Map<String, Object> residual(Residual r) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", r.name());
        map.put("value", r.value());
        map.put("unit", r.unit());
        map.put("relative", r.relative());
        return map;
    }

    private static Map<String, Object> input(ConceptInput i) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("key", i.key());
        map.put("value", i.value());
        map.put("unit", i.unit());
        map.put("given", i.given());
        map.put("source", i.source());
        return map;
    }

    private static <T> List<Map<String, Object>> each(List<T> list, Function<T, Map<String, Object>> view) {
        return list.stream().map(view).toList();
    }
}
