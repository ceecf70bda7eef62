package dev.penstock.reports.engine;

import static dev.penstock.quantities.Notation.significant;

import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.provenance.Figure;
import dev.penstock.provenance.FigureTable;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.page.FigureRows;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.TextTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Fluids and their states as JSON documents and terminal tables. */
public final class FluidView {

    /** A fluid in a state. */
    private record Filled(Propellant propellant, FluidState state) {}

    private static final Notation ENERGY = significant("J/kg", "kJ/kg", 1e-3, 6);
    private static final Notation HEAT_CAPACITY = significant("J/(kg·K)", "kJ/(kg·K)", 1e-3, 5);
    private static final Notation KELVIN = significant("K", 6);
    private static final Notation PASCAL = significant("Pa", 6);
    private static final Notation DENSITY = significant("kg/m³", 6);

    /** Figures of a state. */
    private static final FigureTable<Filled> STATE = FigureTable.<Filled>ofOne()
            .word("fluid", "fluid", f -> f.propellant().id())
            .number("pressure_Pa", "pressure", significant("Pa", "MPa", 1e-6, 6), f -> f.state()
                    .pressure())
            .number("temperature_K", "temperature", KELVIN, f -> f.state().temperature())
            .word("phase", "phase", f -> phase(f, '-'))
            .number("density_kg_m3", "density", DENSITY, f -> f.state().density())
            .number("enthalpy_J_kg", "enthalpy, fluid's own zero", ENERGY, f -> f.state()
                    .enthalpy())
            .number(
                    "enthalpy_from_elements_J_kg",
                    "enthalpy, from the elements at 298.15 K",
                    ENERGY,
                    f -> f.propellant().absoluteEnthalpy(f.state().enthalpy()))
            .number(
                    "entropy_J_kg_K",
                    "entropy, fluid's own zero",
                    significant("J/(kg·K)", "kJ/(kg·K)", 1e-3, 6),
                    f -> f.state().entropy())
            .number("cp_J_kg_K", "heat capacity cp", HEAT_CAPACITY, f -> f.state()
                    .isobaricHeatCapacity())
            .number("cv_J_kg_K", "heat capacity cv", HEAT_CAPACITY, f -> f.state()
                    .isochoricHeatCapacity())
            .number("sound_speed_m_s", "speed of sound", significant("m/s", 5), f -> f.state()
                    .soundSpeed())
            .number("viscosity_Pa_s", "viscosity", significant("Pa·s", "µPa·s", 1e6, 5), f -> f.state()
                    .viscosity())
            .number(
                    "conductivity_W_m_K",
                    "thermal conductivity",
                    significant("W/(m·K)", "mW/(m·K)", 1e3, 5),
                    f -> f.state().conductivity())
            .number("prandtl", "Prandtl number", significant("", 4), f -> f.state()
                    .prandtl())
            .optional("vapour_pressure_Pa", "vapour pressure", significant("Pa", "MPa", 1e-6, 5), f -> f.state()
                    .vapourPressure())
            .leftOutIfAbsent()
            .word("sources", "sources", f -> f.propellant().sources())
            .word("phase_title", "phase", f -> phase(f, ' '))
            .outsideDocuments()
            .table();

    /** What the file of a fluid states. */
    private static final FigureTable<Propellant> CARD = FigureTable.<Propellant>ofOne()
            .word("fluid", "id", Propellant::id)
            .word("name", "name", p -> p.fluid().name())
            .word("roles", "serves as", FluidView::roles)
            .number("molar_mass_kg_mol", "molar mass", significant("kg/mol", 6), p -> p.fluid()
                    .molarMass())
            .number("formation_enthalpy_J_kg", "formation enthalpy", significant("J/kg", 6), p -> p.formationEnthalpy())
            .number("storage_temperature_K", "storage temperature", KELVIN, Propellant::storageTemperature)
            .number("storage_pressure_Pa", "storage pressure", PASCAL, Propellant::storagePressure)
            .number("loading_density_kg_m3", "loading density", DENSITY, Propellant::loadingDensity)
            .optional("subcooled_temperature_K", "subcooled temperature", KELVIN, Propellant::subcooledTemperature)
            .leftOutIfAbsent()
            .optional("subcooled_density_kg_m3", "subcooled density", DENSITY, Propellant::subcooledDensity)
            .leftOutIfAbsent()
            .optional("freezing_K", "freezing", KELVIN, p -> p.limits().freezing())
            .leftOutIfAbsent()
            .optional("boiling_K", "boiling", KELVIN, p -> p.limits().boiling())
            .leftOutIfAbsent()
            .optional(
                    "decomposition_K", "decomposition", KELVIN, p -> p.limits().decomposition())
            .leftOutIfAbsent()
            .optional("coking_K", "coking", KELVIN, p -> p.limits().coking())
            .leftOutIfAbsent()
            .optional("coking_highest_K", "coking, refined fuel at high velocity", KELVIN, p -> p.limits()
                    .cokingHighest())
            .leftOutIfAbsent()
            .number("model_minimum_temperature_K", "model minimum temperature", KELVIN, p -> p.fluid()
                    .range()
                    .minimumTemperature())
            .number("model_maximum_temperature_K", "model maximum temperature", KELVIN, p -> p.fluid()
                    .range()
                    .maximumTemperature())
            .number("model_maximum_pressure_Pa", "model maximum pressure", PASCAL, p -> p.fluid()
                    .range()
                    .maximumPressure())
            .word("hazards", "hazards", Propellant::hazards)
            .word("sources", "sources", Propellant::sources)
            .table();

    private FluidView() {}

    /**
     * @param propellant fluid
     * @param state its state
     * @return JSON document
     */
    public static Map<String, Object> stateJson(Propellant propellant, FluidState state) {
        return FigureJson.of(STATE, new Filled(propellant, state));
    }

    /**
     * @param propellant fluid
     * @param state its state
     * @return table for a terminal
     */
    public static String stateText(Propellant propellant, FluidState state) {
        return sheet(
                propellant,
                STATE,
                new Filled(propellant, state),
                "pressure_Pa temperature_K density_kg_m3 enthalpy_J_kg enthalpy_from_elements_J_kg entropy_J_kg_K"
                        + " cp_J_kg_K cv_J_kg_K sound_speed_m_s viscosity_Pa_s conductivity_W_m_K prandtl"
                        + " vapour_pressure_Pa phase_title");
    }

    /** Those of the figures that the thing has. */
    private static <T> String sheet(Propellant propellant, FigureTable<T> table, T thing, String keys) {
        String there = Stream.of(keys.split(" "))
                .filter(key -> !table.figure(key).plain(thing).isEmpty())
                .collect(Collectors.joining(" "));
        return TextTable.of(FigureRows.sheet(propellant.fluid().name(), table, thing, "", there));
    }

    /**
     * @param propellant fluid
     * @return JSON document with what its file states
     */
    public static Map<String, Object> cardJson(Propellant propellant) {
        return FigureJson.of(CARD, propellant);
    }

    /**
     * @param propellant fluid
     * @return what its file states, for a terminal
     */
    public static String cardText(Propellant propellant) {
        String numbers = CARD.figures().stream()
                .filter(Figure::isNumber)
                .map(Figure::key)
                .collect(Collectors.joining(" "));
        String line = System.lineSeparator();
        return sheet(propellant, CARD, propellant, numbers) + line + "serves as " + String.join(", ", roles(propellant))
                + line + "hazards: "
                + String.join("; ", propellant.hazards()) + line + "sources: "
                + String.join(", ", propellant.sources()) + line;
    }

    /**
     * @param propellants fluids
     * @return JSON document with the card of each
     */
    public static Map<String, Object> listJson(List<Propellant> propellants) {
        return Map.of("fluids", FigureJson.each(CARD, propellants));
    }

    /**
     * @param propellants fluids
     * @return one line for each, for a terminal
     */
    public static String listText(List<Propellant> propellants) {
        return TextTable.of(FigureRows.list(
                "", CARD, "fluids", propellants, "fluid name roles storage_temperature_K loading_density_kg_m3"));
    }

    private static String phase(Filled filled, char separator) {
        return filled.state().phase().name().toLowerCase(Locale.ROOT).replace('_', separator);
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
}
