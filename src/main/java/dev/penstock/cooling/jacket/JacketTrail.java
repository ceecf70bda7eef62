package dev.penstock.cooling.jacket;

import dev.penstock.cooling.coolant.ChannelFriction;
import dev.penstock.cooling.gas.Bartz;
import dev.penstock.cooling.march.JacketMarch;
import dev.penstock.cooling.march.WallBalance;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Trail;
import java.util.ArrayList;
import java.util.List;

/** Records where the numbers of a jacket come from: each with the model that made it. */
public final class JacketTrail {

    private final Trail trail;

    /** @param trail where to record */
    public JacketTrail(Trail trail) {
        this.trail = trail;
    }

    /**
     * @param jacket jacket as solved
     * @param inlet path of the coolant's station before the jacket
     * @param hot paths of what makes the hot side: chamber pressure, gas temperature, throat
     * @param given paths of concept inputs that shape it
     */
    public void jacket(JacketResult jacket, String inlet, List<String> hot, List<String> given) {
        ModelCard gas = named(jacket, Bartz.CARD, "cooling.bartz", "cooling.boundary-layer");
        ModelCard film = jacket.models().stream()
                .filter(JacketTrail::isCoolantFilm)
                .findFirst()
                .orElse(WallBalance.CARD);
        String end = "cooling.outlet_";
        put("cooling.inlet_pressure_Pa", jacket.inlet().pressure(), "Pa", JacketMarch.CARD, inlet + ".pressure_Pa");
        put(
                "cooling.inlet_temperature_K",
                jacket.inlet().temperature(),
                "K",
                JacketMarch.CARD,
                inlet + ".temperature_K");
        for (int i = 0; i < jacket.stations().size(); i++) {
            cell(i, jacket.stations().get(i), gas, film, hot, given);
        }
        List<String> fluxes = every(jacket, "heat_flux_W_m2");
        put("cooling.heat_load_W", jacket.heatLoad(), "W", JacketMarch.CARD, fluxes);
        put("cooling.peak_heat_flux_W_m2", jacket.peakHeatFlux(), "W/m²", gas, fluxes);
        put(
                "cooling.peak_wall_temperature_K",
                jacket.peakWallTemperature(),
                "K",
                WallBalance.CARD,
                every(jacket, "wall_temperature_gas_side_K"));
        put(
                end + "temperature_K",
                jacket.outlet().temperature(),
                "K",
                JacketMarch.CARD,
                "cooling.inlet_temperature_K",
                "cooling.heat_load_W",
                inlet + ".mass_flow_kg_s");
        put(
                end + "pressure_Pa",
                jacket.outlet().pressure(),
                "Pa",
                JacketMarch.CARD,
                "cooling.inlet_pressure_Pa",
                "cooling.coolant_pressure_drop_Pa");
        put(
                "cooling.coolant_temperature_rise_K",
                jacket.coolantTemperatureRise(),
                "K",
                JacketMarch.CARD,
                "cooling.inlet_temperature_K",
                end + "temperature_K");
        put(
                "cooling.coolant_pressure_drop_Pa",
                jacket.pressureDrop(),
                "Pa",
                ChannelFriction.CARD,
                every(jacket, "coolant_velocity_m_s"));
    }

    private void cell(int i, JacketStation s, ModelCard gas, ModelCard film, List<String> hot, List<String> given) {
        String p = "cooling.profile." + i;
        List<String> shape = new ArrayList<>(given);
        shape.addAll(hot);
        put(p + ".x_m", s.x(), "m", JacketMarch.CARD, shape);
        put(p + ".radius_m", s.radius(), "m", JacketMarch.CARD, p + ".x_m");
        List<String> sides = new ArrayList<>(hot);
        sides.add(p + ".radius_m");
        sides.add(p + ".wall_temperature_gas_side_K");
        put(p + ".heat_flux_W_m2", s.heatFlux(), "W/m²", gas, sides);
        put(
                p + ".wall_temperature_gas_side_K",
                s.gasSideWallTemperature(),
                "K",
                WallBalance.CARD,
                p + ".heat_flux_W_m2",
                p + ".wall_temperature_coolant_side_K");
        put(
                p + ".wall_temperature_coolant_side_K",
                s.coolantSideWallTemperature(),
                "K",
                film,
                p + ".heat_flux_W_m2",
                p + ".coolant_temperature_K",
                p + ".coolant_velocity_m_s");
        put(
                p + ".coolant_temperature_K",
                s.coolantTemperature(),
                "K",
                JacketMarch.CARD,
                p + ".heat_flux_W_m2",
                "cooling.inlet_temperature_K");
        put(
                p + ".coolant_pressure_Pa",
                s.coolantPressure(),
                "Pa",
                ChannelFriction.CARD,
                p + ".coolant_velocity_m_s",
                "cooling.inlet_pressure_Pa");
        put(
                p + ".coolant_velocity_m_s",
                s.coolantVelocity(),
                "m/s",
                JacketMarch.CARD,
                p + ".coolant_temperature_K",
                p + ".coolant_pressure_Pa");
    }

    private static boolean isCoolantFilm(ModelCard card) {
        return List.of(
                        "cooling.dittus-boelter",
                        "cooling.gnielinski",
                        "cooling.sieder-tate",
                        "cooling.taylor",
                        "cooling.hess-kunz",
                        "cooling.mccarthy-wolf",
                        "cooling.jackson",
                        "cooling.spencer-rousar",
                        "cooling.kerosene-tube")
                .contains(card.id());
    }

    private static ModelCard named(JacketResult jacket, ModelCard otherwise, String... ids) {
        return jacket.models().stream()
                .filter(card -> List.of(ids).contains(card.id()))
                .findFirst()
                .orElse(otherwise);
    }

    private static List<String> every(JacketResult jacket, String key) {
        List<String> paths = new ArrayList<>();
        for (int i = 0; i < jacket.stations().size(); i++) {
            paths.add("cooling.profile." + i + "." + key);
        }
        return paths;
    }

    private void put(String path, double value, String unit, ModelCard card, String... inputs) {
        trail.record(path, value, unit, card, inputs);
    }

    private void put(String path, double value, String unit, ModelCard card, List<String> inputs) {
        trail.record(path, value, unit, card, inputs.toArray(String[]::new));
    }
}
