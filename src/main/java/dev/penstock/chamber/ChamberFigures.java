package dev.penstock.chamber;

import static dev.penstock.chamber.loss.LossFigures.DELIVERED;
import static dev.penstock.provenance.Place.Role.GAS;
import static dev.penstock.provenance.Place.Role.THROAT;
import static dev.penstock.provenance.Place.Role.THRUST;
import static dev.penstock.provenance.Place.fixed;
import static dev.penstock.provenance.Place.given;
import static dev.penstock.provenance.Place.of;
import static dev.penstock.provenance.Place.own;
import static dev.penstock.provenance.Place.values;
import static dev.penstock.quantities.Notation.significant;

import dev.penstock.chamber.contour.ContourBuilder;
import dev.penstock.chamber.flow.IsentropicFlow;
import dev.penstock.chamber.loss.LossFigures;
import dev.penstock.combustion.equilibrium.EquilibriumSolver;
import dev.penstock.provenance.FigureTable;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Origin;
import dev.penstock.provenance.Place;
import dev.penstock.quantities.Notation;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;

/** What a thrust chamber publishes beside its losses. */
public final class ChamberFigures {

    private static final ModelCard CHOKED = new ModelCard(
            "chamber.throat",
            "Throat area from mass flow",
            "A_t = ṁ c*/p_c",
            "choked throat",
            "that of the characteristic velocity",
            List.of("definition"));

    private static final Notation VELOCITY = Notation.fixed("m/s", "m/s", 1, 1);
    private static final Notation AREA = significant("m²", 4);
    private static final Place.Source MIXTURE = fixed("engine.chamber_mixture_ratio");

    /** Figures of a thrust chamber. */
    public static final FigureTable<ChamberPerformance> ALL = FigureTable.<ChamberPerformance>ofOne()
            .number("gas_temperature_K", "gas temperature in the chamber", Notation.TEMPERATURE, c -> c.ideal()
                    .chamber()
                    .temperature())
            .by(EquilibriumSolver.CARD, of(GAS, "pressure_Pa"), of(GAS, "enthalpy_J_kg"), MIXTURE)
            .number("gas_molar_mass_kg_mol", "molar mass", significant("kg/mol", "g/mol", 1e3, 4), c -> c.ideal()
                    .chamber()
                    .molarMass())
            .by(EquilibriumSolver.CARD, of(GAS, "pressure_Pa"), of(GAS, "enthalpy_J_kg"), MIXTURE)
            .number("gas_isentropic_exponent", "isentropic exponent", significant("", 4), c -> c.ideal()
                    .chamber()
                    .gammaS())
            .by(EquilibriumSolver.CARD, of(GAS, "pressure_Pa"), of(GAS, "enthalpy_J_kg"), MIXTURE)
            .number("ideal_characteristic_velocity_m_s", "characteristic velocity, ideal", VELOCITY, c -> c.ideal()
                    .characteristicVelocity())
            .by(IsentropicFlow.CARD, of(GAS, "pressure_Pa"), of(GAS, "enthalpy_J_kg"), MIXTURE)
            .number("area_ratio", "area ratio", significant("", 4), ChamberPerformance::areaRatio)
            .by(IsentropicFlow.CARD, given())
            .number("ideal_vacuum_impulse_m_s", "impulse in vacuum, ideal", VELOCITY, c -> c.ideal()
                    .vacuumImpulse())
            .by(IsentropicFlow.CARD, own("ideal_characteristic_velocity_m_s", "area_ratio"))
            .number(
                    "characteristic_velocity_m_s",
                    "characteristic velocity, delivered",
                    VELOCITY,
                    ChamberPerformance::characteristicVelocity)
            .from(delivered("ideal_characteristic_velocity_m_s"))
            .number("vacuum_impulse_m_s", "impulse in vacuum, delivered", VELOCITY, ChamberPerformance::vacuumImpulse)
            .from(delivered("ideal_vacuum_impulse_m_s"))
            .number(
                    "thrust_coefficient_vacuum",
                    "thrust coefficient in vacuum",
                    significant("", 5),
                    c -> c.vacuumThrustCoefficient())
            .by(DELIVERED, own("vacuum_impulse_m_s", "characteristic_velocity_m_s"))
            .number("throat_area_m2", "throat area", AREA, ChamberPerformance::throatArea)
            .from((c, at) -> sized(at)
                    ? Origin.of(CHOKED, at.all(THROAT))
                    : Origin.of(CHOKED, own("mass_flow_kg_s").paths(at), choked(at)))
            .number("mass_flow_kg_s", "chamber mass flow", Notation.MASS_FLOW, ChamberPerformance::massFlow)
            .from((c, at) -> sized(at)
                    ? Origin.of(CHOKED, own("throat_area_m2").paths(at), choked(at))
                    : Origin.of(
                            DELIVERED,
                            own("vacuum_thrust_N", "vacuum_impulse_m_s").paths(at)))
            .number("vacuum_thrust_N", "thrust of the chamber in vacuum", Notation.FORCE, c -> c.vacuumThrust())
            .from((c, at) -> Origin.of(
                    DELIVERED, (sized(at) ? own("mass_flow_kg_s", "vacuum_impulse_m_s") : values(THRUST)).paths(at)))
            .number("exit_area_m2", "exit area", AREA, ChamberPerformance::exitArea)
            .by(IsentropicFlow.CARD, own("throat_area_m2", "area_ratio"))
            .number("length_m", "injector to throat", Notation.LENGTH, c -> c.contour()
                    .chamberLength())
            .by(ContourBuilder.CARD, own("throat_area_m2"), given())
            .number("nozzle_length_m", "throat to exit", Notation.LENGTH, c -> c.contour()
                    .nozzleLength())
            .by(ContourBuilder.CARD, own("throat_area_m2", "area_ratio"), given())
            .table();

    private ChamberFigures() {}

    /** Whether the throat is given; else the flow follows from thrust, and the throat from the flow. */
    private static boolean sized(Place at) {
        return !at.all(THROAT).isEmpty();
    }

    private static List<String> choked(Place at) {
        List<String> paths = new ArrayList<>(own("characteristic_velocity_m_s").paths(at));
        paths.addAll(at.all(GAS, "pressure_Pa"));
        return paths;
    }

    /** An ideal figure less every loss by name. */
    private static BiFunction<ChamberPerformance, Place, Origin> delivered(String ideal) {
        return (chamber, at) ->
                Origin.of(DELIVERED, own(ideal).paths(at), LossFigures.ALL.paths("losses", chamber.losses(), "factor"));
    }
}
