package dev.penstock.reports.engine;

import dev.penstock.chamber.flow.Expansion;
import dev.penstock.chamber.flow.ExpansionMode;
import dev.penstock.chamber.flow.IdealExpansion;
import dev.penstock.combustion.gas.GasState;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.provenance.CheckFigures;
import dev.penstock.quantities.Constants;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.Figures;
import dev.penstock.reports.text.TextTable;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Equilibrium combustion and loss-free expansion as a JSON document and terminal tables.
 *
 * @param oxidizer oxidizer as injected
 * @param fuel fuel as injected
 * @param mixtureRatio oxidizer over fuel by mass (-)
 * @param mode what the composition does in the expansion
 * @param expansion chamber and throat
 * @param expansions exits
 */
public record CombustView(
        FluidState oxidizer,
        FluidState fuel,
        double mixtureRatio,
        ExpansionMode mode,
        Expansion expansion,
        List<IdealExpansion> expansions) {

    private static final double LEAST_FRACTION = 1e-10;
    private static final double SHOWN_FRACTION = 5e-6;

    public CombustView {
        expansions = List.copyOf(expansions);
    }

    /** @return JSON document */
    public Map<String, Object> json() {
        GasState gas = expansion.chamber();
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("oxidizer", oxidizer.fluid());
        map.put("oxidizer_temperature_K", oxidizer.temperature());
        map.put("fuel", fuel.fluid());
        map.put("fuel_temperature_K", fuel.temperature());
        map.put("mixture_ratio", mixtureRatio);
        map.put("pressure_Pa", gas.pressure());
        map.put("composition", mode.name().toLowerCase(Locale.ROOT));
        map.put("temperature_K", gas.temperature());
        map.put("molar_mass_kg_mol", gas.molarMass());
        map.put("characteristic_velocity_m_s", expansion.characteristicVelocity());
        map.put("gamma_s", gas.gammaS());
        map.put("density_kg_m3", gas.density());
        map.put("enthalpy_J_kg", gas.enthalpy());
        map.put("entropy_J_kg_K", gas.entropy());
        map.put("cp_equilibrium_J_kg_K", gas.equilibriumHeatCapacity());
        map.put("cp_frozen_J_kg_K", gas.frozenHeatCapacity());
        map.put("sound_speed_m_s", gas.soundSpeed());
        map.put("viscosity_Pa_s", gas.transport().viscosity());
        map.put("prandtl_frozen", gas.transport().frozenPrandtl());
        map.put("condensed_mass_fraction", gas.condensedMassFraction());
        Map<String, Object> fractions = new LinkedHashMap<>();
        gas.moleFractions().forEach((name, x) -> {
            if (x >= LEAST_FRACTION) {
                fractions.put(name, x);
            }
        });
        map.put("mole_fractions", fractions);
        map.put("expansions", expansions.stream().map(CombustView::exit).toList());
        map.put("warnings", FigureJson.each(CheckFigures.WARNINGS, gas.warnings()));
        return map;
    }

    private static Map<String, Object> exit(IdealExpansion e) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("area_ratio", e.areaRatio());
        map.put("pressure_Pa", e.exit().pressure());
        map.put("temperature_K", e.exit().temperature());
        map.put("mach", e.exit().mach());
        map.put("isp_vacuum_s", e.vacuumSpecificImpulse());
        map.put("isp_ambient_matched_s", e.matchedImpulse() / Constants.STANDARD_GRAVITY);
        map.put("thrust_coefficient_vacuum", e.vacuumThrustCoefficient());
        return map;
    }

    /** @return tables for a terminal */
    public String text() {
        GasState gas = expansion.chamber();
        String line = System.lineSeparator();
        StringBuilder text = new StringBuilder();
        text.append(String.format(
                Locale.ROOT,
                "%s at %.2f K and %s at %.2f K, mixture ratio %s, %s bar%s%s",
                oxidizer.fluid(),
                oxidizer.temperature(),
                fuel.fluid(),
                fuel.temperature(),
                Figures.significant(mixtureRatio, 5),
                Figures.bar(gas.pressure()),
                line,
                line));
        TextTable table = new TextTable().header("chamber", "value", "<unit");
        table.row("temperature", Figures.fixed(gas.temperature(), 1), "K");
        table.row("molar mass", Figures.significant(gas.molarMass() * 1e3, 5), "g/mol");
        table.row("isentropic exponent, shifting", Figures.significant(gas.gammaS(), 5), "");
        table.row("cp, shifting", Figures.significant(gas.equilibriumHeatCapacity() / 1e3, 5), "kJ/(kg·K)");
        table.row("cp, frozen", Figures.significant(gas.frozenHeatCapacity() / 1e3, 5), "kJ/(kg·K)");
        table.row("density", Figures.significant(gas.density(), 5), "kg/m³");
        table.row("characteristic velocity", Figures.fixed(expansion.characteristicVelocity(), 1), "m/s");
        text.append(table.text()).append(line);
        TextTable species = new TextTable().header("species", "mole fraction");
        gas.moleFractions().entrySet().stream()
                .filter(e -> e.getValue() >= SHOWN_FRACTION)
                .forEach(e -> species.row(e.getKey(), Figures.fixed(e.getValue(), 5)));
        text.append(species.text()).append(line);
        if (!expansions.isEmpty()) {
            TextTable exits =
                    new TextTable().header("area ratio", "exit bar", "exit K", "Mach", "Isp vacuum s", "Isp matched s");
            expansions.forEach(e -> exits.row(
                    Figures.significant(e.areaRatio(), 5),
                    Figures.significant(e.exit().pressure() / 1e5, 4),
                    Figures.kelvin(e.exit().temperature()),
                    Figures.significant(e.exit().mach(), 4),
                    Figures.fixed(e.vacuumSpecificImpulse(), 2),
                    Figures.fixed(e.matchedImpulse() / Constants.STANDARD_GRAVITY, 2)));
            String how = mode == ExpansionMode.FROZEN ? "frozen composition" : "shifting equilibrium";
            text.append("expansion with ")
                    .append(how)
                    .append(", no losses")
                    .append(line)
                    .append(line);
            text.append(exits.text());
        }
        text.append(BalanceText.warnings(gas.warnings()));
        return text.toString();
    }
}
