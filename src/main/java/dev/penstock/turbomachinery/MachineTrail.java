package dev.penstock.turbomachinery;

import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Trail;
import java.util.ArrayList;
import java.util.List;

/** Records where the numbers of pumps, turbines and shafts come from: each with the model that made it. */
public final class MachineTrail {

    private final Trail trail;

    /** @param trail where to record */
    public MachineTrail(Trail trail) {
        this.trail = trail;
    }

    /**
     * @param pump pump as sized
     * @param inlet path of its inlet station
     * @param outlet path of its outlet station
     * @param given paths of concept inputs that fix or limit it
     */
    public void pump(PumpSizing pump, String inlet, String outlet, List<String> given) {
        String p = "pumps." + Trail.slug(pump.name());
        boolean stated = pump.design().efficiency().isPresent();
        String flow = p + ".mass_flow_kg_s";
        same(p + ".inlet_pressure_Pa", pump.duty().inlet().pressure(), "Pa", inlet + ".pressure_Pa");
        same(p + ".discharge_pressure_Pa", pump.duty().dischargePressure(), "Pa", outlet + ".pressure_Pa");
        if (driving(pump, inlet)) {
            put(flow, pump.duty().massFlow(), "kg/s", HydraulicTurbine.CARD, inlet + ".mass_flow_kg_s");
            put(
                    p + ".discharge_temperature_K",
                    pump.outlet().temperature(),
                    "K",
                    HydraulicTurbine.CARD,
                    outlet + ".temperature_K",
                    flow);
        } else {
            same(p + ".discharge_temperature_K", pump.outlet().temperature(), "K", outlet + ".temperature_K");
            same(flow, pump.duty().massFlow(), "kg/s", inlet + ".mass_flow_kg_s");
        }
        put(
                p + ".head_J_kg",
                pump.head(),
                "J/kg",
                PumpHead.CARD,
                p + ".inlet_pressure_Pa",
                inlet + ".temperature_K",
                p + ".discharge_pressure_Pa");
        put(
                p + ".speed_rad_s",
                pump.speed(),
                "rad/s",
                PumpSpeed.CARD,
                with(some(given, "speed", "suction", "inducer", "bearing"), flow, p + ".suction_head_available_m"));
        put(
                p + ".stages",
                pump.stages(),
                "",
                PumpStages.CARD,
                with(some(given, "tip_speed_limit", "stages"), p + ".head_J_kg", p + ".speed_rad_s"));
        put(
                p + ".specific_speed",
                pump.specificSpeed(),
                "",
                SpecificSpeed.CARD,
                p + ".speed_rad_s",
                flow,
                inlet + ".density_kg_m3",
                p + ".head_J_kg",
                p + ".stages");
        if (stated) {
            trail.given(p + ".efficiency", pump.efficiency(), "", "stated for this pump", "concept or usual value");
        } else {
            put(
                    p + ".efficiency",
                    pump.efficiency(),
                    "",
                    GulichEfficiency.CARD,
                    with(some(given, "efficiency"), p + ".specific_speed", flow, p + ".stages"));
        }
        put(p + ".power_W", pump.power(), "W", PumpHead.CARD, flow, p + ".head_J_kg", p + ".efficiency");
        put(
                p + ".suction_specific_speed",
                pump.suctionSpecificSpeed(),
                "",
                InducerSuction.CARD,
                with(some(given, "inducer_flow", "inducer_hub")));
        put(
                p + ".suction_head_available_m",
                pump.netPositiveSuctionHead() + pump.suppressionHead(),
                "m",
                SuppressionHead.CARD,
                with(some(given, "suppression"), inlet + ".pressure_Pa", inlet + ".temperature_K"));
        put(
                p + ".suction_head_required_m",
                pump.requiredSuctionHead(),
                "m",
                InducerSuction.CARD,
                p + ".speed_rad_s",
                flow,
                p + ".suction_specific_speed");
        put(
                p + ".tip_speed_m_s",
                pump.tipSpeed(),
                "m/s",
                StageShape.CARD,
                p + ".head_J_kg",
                p + ".stages",
                p + ".specific_speed");
        put(
                p + ".impeller_diameter_m",
                pump.impellerDiameter(),
                "m",
                StageShape.CARD,
                p + ".tip_speed_m_s",
                p + ".speed_rad_s");
        put(
                p + ".inducer_diameter_m",
                pump.inducerDiameter(),
                "m",
                InducerSuction.CARD,
                p + ".speed_rad_s",
                flow,
                inlet + ".density_kg_m3");
    }

    /**
     * @param turbine turbine as sized
     * @param inlet path of its inlet station
     * @param outlet path of its outlet station
     * @param given paths of concept inputs that fix or limit it
     */
    public void turbine(TurbineSizing turbine, String inlet, String outlet, List<String> given) {
        String p = "turbines." + Trail.slug(turbine.name());
        same(p + ".inlet_pressure_Pa", turbine.inlet().pressure(), "Pa", inlet + ".pressure_Pa");
        same(p + ".inlet_temperature_K", turbine.inlet().temperature(), "K", inlet + ".temperature_K");
        same(p + ".exit_pressure_Pa", turbine.outlet().pressure(), "Pa", outlet + ".pressure_Pa");
        same(p + ".exit_temperature_K", turbine.outlet().temperature(), "K", outlet + ".temperature_K");
        same(p + ".mass_flow_kg_s", turbine.duty().massFlow(), "kg/s", inlet + ".mass_flow_kg_s");
        put(
                p + ".pressure_ratio",
                turbine.inlet().pressure() / turbine.outlet().pressure(),
                "",
                TurbineModel.CARD,
                p + ".inlet_pressure_Pa",
                p + ".exit_pressure_Pa");
        put(
                p + ".isentropic_drop_J_kg",
                turbine.isentropicDrop(),
                "J/kg",
                TurbineModel.CARD,
                p + ".inlet_pressure_Pa",
                p + ".inlet_temperature_K",
                p + ".exit_pressure_Pa");
        ModelCard blading = turbine.type() == TurbineType.REACTION ? ReactionBlading.CARD : ImpulseBlading.CARD;
        put(p + ".stages", turbine.stages(), "", blading, with(some(given, "stages"), p + ".pressure_ratio"));
        put(p + ".speed_rad_s", turbine.speed(), "rad/s", ShaftTorsion.CARD, with(List.of()));
        put(
                p + ".mean_diameter_m",
                turbine.meanDiameter(),
                "m",
                blading,
                with(some(given, "diameter", "pitch_line"), p + ".speed_rad_s", p + ".isentropic_drop_J_kg"));
        put(
                p + ".pitch_line_speed_m_s",
                turbine.pitchLineSpeed(),
                "m/s",
                blading,
                p + ".mean_diameter_m",
                p + ".speed_rad_s");
        put(
                p + ".velocity_ratio",
                turbine.velocityRatio(),
                "",
                blading,
                p + ".pitch_line_speed_m_s",
                p + ".isentropic_drop_J_kg");
        put(
                p + ".efficiency",
                turbine.efficiency(),
                "",
                blading,
                with(some(given, "efficiency", "nozzle", "blade_coefficient"), p + ".velocity_ratio", p + ".stages"));
        put(
                p + ".power_W",
                turbine.power(),
                "W",
                TurbineModel.CARD,
                p + ".mass_flow_kg_s",
                p + ".isentropic_drop_J_kg",
                p + ".efficiency");
        put(
                p + ".blade_height_m",
                turbine.bladeHeight(),
                "m",
                PartialAdmission.CARD,
                p + ".mass_flow_kg_s",
                p + ".mean_diameter_m",
                p + ".isentropic_drop_J_kg");
    }

    /**
     * @param shaft shaft
     * @param given paths of concept inputs on coupling and losses
     */
    public void shaft(ShaftBalance shaft, List<String> given) {
        String p = "shafts." + Trail.slug(shaft.name());
        List<String> pumps =
                shaft.pumps().stream().map(n -> "pumps." + Trail.slug(n)).toList();
        List<String> drivers =
                shaft.turbines().stream().map(n -> "turbines." + Trail.slug(n)).toList();
        List<String> speeds = pumps.stream().map(n -> n + ".speed_rad_s").toList();
        put(p + ".speed_rad_s", shaft.speed(), "rad/s", PumpSpeed.CARD, with(given, speeds));
        List<String> taken = pumps.stream().map(n -> n + ".power_W").toList();
        put(p + ".power_absorbed_W", shaft.powerAbsorbed(), "W", MechanicalLosses.CARD, taken.toArray(String[]::new));
        put(
                p + ".mechanical_loss_W",
                shaft.mechanicalLoss(),
                "W",
                MechanicalLosses.CARD,
                with(given, p + ".power_absorbed_W"));
        List<String> powers =
                drivers.stream().map(n -> n + ".power_W").filter(trail::has).toList();
        put(
                p + ".power_delivered_W",
                shaft.powerDelivered(),
                "W",
                MechanicalLosses.CARD,
                powers.isEmpty()
                        ? with(List.of(), p + ".power_absorbed_W", p + ".mechanical_loss_W")
                        : powers.toArray(String[]::new));
        put(
                p + ".diameter_m",
                shaft.diameter(),
                "m",
                ShaftTorsion.CARD,
                with(given, p + ".power_delivered_W", p + ".speed_rad_s"));
        put(p + ".mass_kg", shaft.mass(), "kg", TurbopumpMass.CARD, p + ".power_delivered_W", p + ".speed_rad_s");
        drivers.stream().filter(n -> trail.has(n + ".power_W")).forEach(n -> trail.entry(n + ".speed_rad_s")
                .ifPresent(e -> same(e.path(), e.value(), e.unit(), p + ".speed_rad_s")));
    }

    /** Whether liquid from behind the pump drives a boost pump and passes it again. */
    private boolean driving(PumpSizing pump, String inlet) {
        double flow = pump.duty().massFlow();
        return trail.entry(inlet + ".mass_flow_kg_s")
                .filter(e -> Math.abs(e.value() / flow - 1) > 1e-6)
                .isPresent();
    }

    private void same(String path, double value, String unit, String other) {
        put(path, value, unit, SAME, other);
    }

    private void put(String path, double value, String unit, ModelCard card, String... inputs) {
        trail.record(path, value, unit, card, inputs);
    }

    /** Those of the concept's inputs whose key speaks of one of the words. */
    private static List<String> some(List<String> given, String... words) {
        return given.stream()
                .filter(path ->
                        java.util.Arrays.stream(words).anyMatch(path.substring(path.lastIndexOf('.'))::contains))
                .toList();
    }

    private static String[] with(List<String> given, String... more) {
        return with(given, List.of(more));
    }

    private static String[] with(List<String> given, List<String> more) {
        List<String> all = new ArrayList<>(more);
        all.addAll(given);
        return all.toArray(String[]::new);
    }

    private static final ModelCard SAME = new ModelCard(
            "turbomachinery.same", "The value of another place", "x = x", "everywhere", "exact", List.of("definition"));
}
