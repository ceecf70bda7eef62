package dev.penstock.reports.engine;

import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.PropellantLimits;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.reports.text.Figures;
import dev.penstock.reports.text.TextTable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

/** Fluids and their states as JSON documents and terminal tables. */
public final class FluidView {

    private FluidView() {}

    /**
     * @param propellant fluid
     * @param state its state
     * @return JSON document
     */
    public static Map<String, Object> stateJson(Propellant propellant, FluidState state) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("fluid", propellant.id());
        map.put("pressure_Pa", state.pressure());
        map.put("temperature_K", state.temperature());
        map.put("phase", phase(state, '-'));
        map.put("density_kg_m3", state.density());
        map.put("enthalpy_J_kg", state.enthalpy());
        map.put("enthalpy_from_elements_J_kg", propellant.absoluteEnthalpy(state.enthalpy()));
        map.put("entropy_J_kg_K", state.entropy());
        map.put("cp_J_kg_K", state.isobaricHeatCapacity());
        map.put("cv_J_kg_K", state.isochoricHeatCapacity());
        map.put("sound_speed_m_s", state.soundSpeed());
        map.put("viscosity_Pa_s", state.viscosity());
        map.put("conductivity_W_m_K", state.conductivity());
        map.put("prandtl", state.prandtl());
        put(map, "vapour_pressure_Pa", state.vapourPressure());
        map.put("sources", propellant.sources());
        return map;
    }

    /**
     * @param propellant fluid
     * @param state its state
     * @return table for a terminal
     */
    public static String stateText(Propellant propellant, FluidState state) {
        TextTable table = new TextTable().header(propellant.fluid().name(), "value", "<unit");
        table.row("pressure", Figures.significant(state.pressure() / 1e6, 6), "MPa");
        table.row("temperature", Figures.significant(state.temperature(), 6), "K");
        table.row("density", Figures.significant(state.density(), 6), "kg/m³");
        table.row("enthalpy, fluid's own zero", Figures.significant(state.enthalpy() / 1e3, 6), "kJ/kg");
        table.row(
                "enthalpy, from the elements at 298.15 K",
                Figures.significant(propellant.absoluteEnthalpy(state.enthalpy()) / 1e3, 6),
                "kJ/kg");
        table.row("entropy, fluid's own zero", Figures.significant(state.entropy() / 1e3, 6), "kJ/(kg·K)");
        table.row("heat capacity cp", Figures.significant(state.isobaricHeatCapacity() / 1e3, 5), "kJ/(kg·K)");
        table.row("heat capacity cv", Figures.significant(state.isochoricHeatCapacity() / 1e3, 5), "kJ/(kg·K)");
        table.row("speed of sound", Figures.significant(state.soundSpeed(), 5), "m/s");
        table.row("viscosity", Figures.significant(state.viscosity() * 1e6, 5), "µPa·s");
        table.row("thermal conductivity", Figures.significant(state.conductivity() * 1e3, 5), "mW/(m·K)");
        table.row("Prandtl number", Figures.significant(state.prandtl(), 4), "");
        state.vapourPressure().ifPresent(p -> table.row("vapour pressure", Figures.significant(p / 1e6, 5), "MPa"));
        table.row("phase", phase(state, ' '), "");
        return table.text();
    }

    /**
     * @param propellant fluid
     * @return JSON document with what its file states
     */
    public static Map<String, Object> cardJson(Propellant propellant) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("fluid", propellant.id());
        map.put("name", propellant.fluid().name());
        map.put("roles", roles(propellant));
        map.put("molar_mass_kg_mol", propellant.fluid().molarMass());
        map.put("formation_enthalpy_J_kg", propellant.formationEnthalpy());
        map.put("storage_temperature_K", propellant.storageTemperature());
        map.put("storage_pressure_Pa", propellant.storagePressure());
        map.put("loading_density_kg_m3", propellant.loadingDensity());
        put(map, "subcooled_temperature_K", propellant.subcooledTemperature());
        put(map, "subcooled_density_kg_m3", propellant.subcooledDensity());
        PropellantLimits limits = propellant.limits();
        put(map, "freezing_K", limits.freezing());
        put(map, "boiling_K", limits.boiling());
        put(map, "decomposition_K", limits.decomposition());
        put(map, "coking_K", limits.coking());
        map.put("model_minimum_temperature_K", propellant.fluid().range().minimumTemperature());
        map.put("model_maximum_temperature_K", propellant.fluid().range().maximumTemperature());
        map.put("model_maximum_pressure_Pa", propellant.fluid().range().maximumPressure());
        map.put("hazards", propellant.hazards());
        map.put("sources", propellant.sources());
        return map;
    }

    /**
     * @param propellant fluid
     * @return what its file states, for a terminal
     */
    public static String cardText(Propellant propellant) {
        TextTable table = new TextTable().header(propellant.fluid().name(), "value", "<unit");
        cardJson(propellant).forEach((key, value) -> {
            if (value instanceof Double number) {
                String unit = unitOf(key);
                String name = key.substring(0, key.length() - (unit.isEmpty() ? 0 : unit.length() + 1));
                table.row(name.replace('_', ' '), Figures.significant(number, 6), printed(unit));
            }
        });
        String line = System.lineSeparator();
        return table.text() + line + "serves as " + String.join(", ", roles(propellant)) + line + "hazards: "
                + String.join("; ", propellant.hazards()) + line + "sources: "
                + String.join(", ", propellant.sources()) + line;
    }

    /**
     * @param propellants fluids
     * @return JSON document with the card of each
     */
    public static Map<String, Object> listJson(List<Propellant> propellants) {
        return Map.of("fluids", propellants.stream().map(FluidView::cardJson).toList());
    }

    /**
     * @param propellants fluids
     * @return one line for each, for a terminal
     */
    public static String listText(List<Propellant> propellants) {
        TextTable table = new TextTable().header("id", "<name", "<serves as", "loaded at K", "kg/m³");
        for (Propellant p : propellants) {
            table.row(
                    p.id(),
                    p.fluid().name(),
                    String.join(", ", roles(p)),
                    Figures.significant(p.storageTemperature(), 4),
                    Figures.significant(p.loadingDensity(), 4));
        }
        return table.text();
    }

    private static String phase(FluidState state, char separator) {
        return state.phase().name().toLowerCase(Locale.ROOT).replace('_', separator);
    }

    private static List<String> roles(Propellant propellant) {
        List<String> roles = new ArrayList<>();
        for (Propellant.Role role : Propellant.Role.values()) {
            if (propellant.roles().contains(role)) {
                roles.add(role.name().toLowerCase(Locale.ROOT));
            }
        }
        return roles;
    }

    private static String unitOf(String key) {
        for (String unit : List.of("kg_m3", "kg_mol", "J_kg", "Pa", "K")) {
            if (key.endsWith("_" + unit)) {
                return unit;
            }
        }
        return "";
    }

    private static String printed(String unit) {
        return unit.replace("kg_m3", "kg/m³").replace('_', '/');
    }

    private static void put(Map<String, Object> map, String key, OptionalDouble value) {
        value.ifPresent(v -> map.put(key, v));
    }
}
