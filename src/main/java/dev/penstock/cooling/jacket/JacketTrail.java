package dev.penstock.cooling.jacket;

import dev.penstock.cooling.coolant.ChannelFriction;
import dev.penstock.cooling.design.CircuitKey;
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
    private final CircuitKey circuit;

    /**
     * @param trail where to record
     * @param circuit circuit of the jacket
     */
    public JacketTrail(Trail trail, CircuitKey circuit) {
        this.trail = trail;
        this.circuit = circuit;
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
        String end = own("outlet_");
        put(own("inlet_pressure_Pa"), jacket.inlet().pressure(), "Pa", JacketMarch.CARD, inlet + ".pressure_Pa");
        put(own("inlet_temperature_K"), jacket.inlet().temperature(), "K", JacketMarch.CARD, inlet + ".temperature_K");
        for (int i = 0; i < jacket.stations().size(); i++) {
            cell(i, jacket.stations().get(i), gas, film, hot, given);
        }
        List<String> fluxes = every(jacket, "heat_flux_W_m2");
        put(own("heat_load_W"), jacket.heatLoad(), "W", JacketMarch.CARD, fluxes);
        put(own("peak_heat_flux_W_m2"), jacket.peakHeatFlux(), "W/m²", gas, fluxes);
        put(
                own("peak_wall_temperature_K"),
                jacket.peakWallTemperature(),
                "K",
                WallBalance.CARD,
                every(jacket, "wall_temperature_gas_side_K"));
        put(
                end + "temperature_K",
                jacket.outlet().temperature(),
                "K",
                JacketMarch.CARD,
                own("inlet_temperature_K"),
                own("heat_load_W"),
                inlet + ".mass_flow_kg_s");
        put(
                end + "pressure_Pa",
                jacket.outlet().pressure(),
                "Pa",
                JacketMarch.CARD,
                own("inlet_pressure_Pa"),
                own("coolant_pressure_drop_Pa"));
        put(
                own("coolant_temperature_rise_K"),
                jacket.coolantTemperatureRise(),
                "K",
                JacketMarch.CARD,
                own("inlet_temperature_K"),
                end + "temperature_K");
        put(
                own("coolant_pressure_drop_Pa"),
                jacket.pressureDrop(),
                "Pa",
                ChannelFriction.CARD,
                every(jacket, "coolant_velocity_m_s"));
    }

    private void cell(int i, JacketStation s, ModelCard gas, ModelCard film, List<String> hot, List<String> given) {
        String p = own("profile." + i);
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
                own("inlet_temperature_K"));
        put(
                p + ".coolant_pressure_Pa",
                s.coolantPressure(),
                "Pa",
                ChannelFriction.CARD,
                p + ".coolant_velocity_m_s",
                own("inlet_pressure_Pa"));
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

    private List<String> every(JacketResult jacket, String key) {
        List<String> paths = new ArrayList<>();
        for (int i = 0; i < jacket.stations().size(); i++) {
            paths.add(own("profile." + i + "." + key));
        }
        return paths;
    }

    private String own(String key) {
        return circuit.figure(key);
    }

    private void put(String path, double value, String unit, ModelCard card, String... inputs) {
        trail.record(path, value, unit, card, inputs);
    }

    private void put(String path, double value, String unit, ModelCard card, List<String> inputs) {
        trail.record(path, value, unit, card, inputs.toArray(String[]::new));
    }
}
