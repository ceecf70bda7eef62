package dev.penstock.reports.engine;

import static dev.penstock.provenance.Place.Role.WHOLE;
import static dev.penstock.quantities.Notation.significant;

import dev.penstock.chamber.flow.Expansion;
import dev.penstock.chamber.flow.ExpansionMode;
import dev.penstock.chamber.flow.IdealExpansion;
import dev.penstock.chamber.flow.NozzleFlow;
import dev.penstock.combustion.equilibrium.EquilibriumSolver;
import dev.penstock.combustion.gas.GasState;
import dev.penstock.combustion.gas.MixtureTransport;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.provenance.CheckFigures;
import dev.penstock.provenance.FigureTable;
import dev.penstock.provenance.Origin;
import dev.penstock.provenance.Place;
import dev.penstock.quantities.Constants;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.page.FigureRows;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.TextTable;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

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
    private static final Notation HEAT_CAPACITY = significant("J/(kg·K)", "kJ/(kg·K)", 1e-3, 5);
    private static final Notation ISP = Notation.fixed("s", "s", 1, 2);

    private static final Origin STATED = Origin.given("stated with the question", "command line");
    private static final String[] QUESTION = {
        "oxidizer_temperature_K", "fuel_temperature_K", "mixture_ratio", "pressure_Pa"
    };
    private static final Place.Source ASKED =
            at -> Stream.of(QUESTION).map(at::own).toList();
    private static final Place.Source OF_CHAMBER = at ->
            Stream.of(QUESTION).flatMap(key -> at.all(WHOLE, key).stream()).toList();

    /** Figures of an exit. */
    private static final FigureTable<IdealExpansion> EXITS = FigureTable.<IdealExpansion>ofOne()
            .number("area_ratio", "area ratio", significant("", 5), IdealExpansion::areaRatio)
            .by(NozzleFlow.CARD, OF_CHAMBER)
            .number("pressure_Pa", "exit", significant("Pa", "bar", 1e-5, 4), e -> e.exit()
                    .pressure())
            .by(NozzleFlow.CARD, OF_CHAMBER)
            .number("temperature_K", "exit", Notation.TEMPERATURE, e -> e.exit().temperature())
            .by(NozzleFlow.CARD, OF_CHAMBER)
            .number("mach", "Mach", significant("", 4), e -> e.exit().mach())
            .by(NozzleFlow.CARD, OF_CHAMBER)
            .number("isp_vacuum_s", "Isp vacuum", ISP, IdealExpansion::vacuumSpecificImpulse)
            .by(NozzleFlow.CARD, OF_CHAMBER)
            .number("isp_ambient_matched_s", "Isp matched", ISP, e -> e.matchedImpulse() / Constants.STANDARD_GRAVITY)
            .by(NozzleFlow.CARD, OF_CHAMBER)
            .number(
                    "thrust_coefficient_vacuum",
                    "thrust coefficient",
                    significant("", 5),
                    e -> e.vacuumThrustCoefficient())
            .by(NozzleFlow.CARD, OF_CHAMBER)
            .table();

    /** A species and its share. */
    private static final FigureTable<Map.Entry<String, Double>> SPECIES = FigureTable.<Map.Entry<String, Double>>named(
                    Map.Entry::getKey)
            .word("name", "species", Map.Entry::getKey)
            .number("mole_fraction", "mole fraction", Notation.fixed("", "", 1, 5), Map.Entry::getValue)
            .table();

    /** Figures of the whole. */
    static final FigureTable<CombustView> ALL = FigureTable.<CombustView>ofOne()
            .word("oxidizer", "oxidizer", v -> v.oxidizer.fluid())
            .number("oxidizer_temperature_K", "oxidizer", Notation.TEMPERATURE, v -> v.oxidizer.temperature())
            .from((v, at) -> STATED)
            .word("fuel", "fuel", v -> v.fuel.fluid())
            .number("fuel_temperature_K", "fuel", Notation.TEMPERATURE, v -> v.fuel.temperature())
            .from((v, at) -> STATED)
            .number("mixture_ratio", "mixture ratio", significant("", 5), CombustView::mixtureRatio)
            .from((v, at) -> STATED)
            .number("pressure_Pa", "pressure", Notation.PRESSURE, v -> v.gas().pressure())
            .from((v, at) -> STATED)
            .word("composition", "composition", v -> v.mode.name().toLowerCase(Locale.ROOT))
            .number("temperature_K", "temperature", Notation.fixed("K", "K", 1, 1), v -> v.gas()
                    .temperature())
            .by(EquilibriumSolver.CARD, ASKED)
            .number("molar_mass_kg_mol", "molar mass", significant("kg/mol", "g/mol", 1e3, 5), v -> v.gas()
                    .molarMass())
            .by(EquilibriumSolver.CARD, ASKED)
            .number(
                    "characteristic_velocity_m_s",
                    "characteristic velocity",
                    Notation.fixed("m/s", "m/s", 1, 1),
                    v -> v.expansion.characteristicVelocity())
            .by(NozzleFlow.CARD, ASKED)
            .number("gamma_s", "isentropic exponent, shifting", significant("", 5), v -> v.gas()
                    .gammaS())
            .by(EquilibriumSolver.CARD, ASKED)
            .number("density_kg_m3", "density", significant("kg/m³", 5), v -> v.gas()
                    .density())
            .by(EquilibriumSolver.CARD, ASKED)
            .number("enthalpy_J_kg", "enthalpy", significant("J/kg", "kJ/kg", 1e-3, 5), v -> v.gas()
                    .enthalpy())
            .by(EquilibriumSolver.CARD, ASKED)
            .number("entropy_J_kg_K", "entropy", HEAT_CAPACITY, v -> v.gas().entropy())
            .by(EquilibriumSolver.CARD, ASKED)
            .number("cp_equilibrium_J_kg_K", "cp, shifting", HEAT_CAPACITY, v -> v.gas()
                    .equilibriumHeatCapacity())
            .by(EquilibriumSolver.CARD, ASKED)
            .number("cp_frozen_J_kg_K", "cp, frozen", HEAT_CAPACITY, v -> v.gas()
                    .frozenHeatCapacity())
            .by(EquilibriumSolver.CARD, ASKED)
            .number("sound_speed_m_s", "speed of sound", significant("m/s", 5), v -> v.gas()
                    .soundSpeed())
            .by(EquilibriumSolver.CARD, ASKED)
            .number("viscosity_Pa_s", "viscosity", significant("Pa·s", "µPa·s", 1e6, 5), v -> v.gas()
                    .transport()
                    .viscosity())
            .by(MixtureTransport.CARD, ASKED)
            .number("prandtl_frozen", "Prandtl number, frozen", significant("", 4), v -> v.gas()
                    .transport()
                    .frozenPrandtl())
            .by(MixtureTransport.CARD, ASKED)
            .number("condensed_mass_fraction", "condensed", significant("", 4), v -> v.gas()
                    .condensedMassFraction())
            .by(EquilibriumSolver.CARD, ASKED)
            .word("mole_fractions", "mole fractions", CombustView::fractions)
            .each("expansions", CombustView::expansions, EXITS)
            .each("warnings", v -> v.gas().warnings(), CheckFigures.WARNINGS)
            .table();

    public CombustView {
        expansions = List.copyOf(expansions);
    }

    /** @return JSON document */
    public Map<String, Object> json() {
        return FigureJson.of(ALL, this);
    }

    private GasState gas() {
        return expansion.chamber();
    }

    private Map<String, Double> fractions() {
        Map<String, Double> fractions = new LinkedHashMap<>(gas().moleFractions());
        fractions.values().removeIf(x -> !(x >= LEAST_FRACTION));
        return fractions;
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
                Notation.significant(mixtureRatio, 5),
                Notation.PRESSURE.write(gas.pressure()),
                line,
                line));
        text.append(TextTable.of(FigureRows.sheet(
                        "chamber",
                        ALL,
                        this,
                        "",
                        "temperature_K molar_mass_kg_mol gamma_s cp_equilibrium_J_kg_K cp_frozen_J_kg_K density_kg_m3"
                                + " characteristic_velocity_m_s")))
                .append(line);
        text.append(TextTable.of(FigureRows.list(
                        "",
                        SPECIES,
                        "",
                        gas.moleFractions().entrySet().stream()
                                .filter(e -> e.getValue() >= SHOWN_FRACTION)
                                .toList(),
                        "name mole_fraction")))
                .append(line);
        if (!expansions.isEmpty()) {
            String how = mode == ExpansionMode.FROZEN ? "frozen composition" : "shifting equilibrium";
            text.append("expansion with ")
                    .append(how)
                    .append(", no losses")
                    .append(line)
                    .append(line);
            text.append(TextTable.of(FigureRows.list(
                    "",
                    EXITS,
                    "expansions",
                    expansions,
                    "area_ratio pressure_Pa temperature_K mach isp_vacuum_s isp_ambient_matched_s")));
        }
        text.append(BalanceText.warnings(gas.warnings()));
        return text.toString();
    }
}
