package dev.penstock.chamber;

import static dev.penstock.quantities.Notation.significant;

import dev.penstock.provenance.FigureTable;
import dev.penstock.quantities.Notation;

/** What a thrust chamber publishes beside its losses. */
public final class ChamberFigures {

    /** Figures of a thrust chamber. */
    public static final FigureTable<ChamberPerformance> ALL = FigureTable.<ChamberPerformance>ofOne()
            .number("gas_temperature_K", "gas temperature in the chamber", Notation.TEMPERATURE, c -> c.ideal()
                    .chamber()
                    .temperature())
            .number("gas_molar_mass_kg_mol", "molar mass", significant("kg/mol", "g/mol", 1e3, 4), c -> c.ideal()
                    .chamber()
                    .molarMass())
            .number("gas_isentropic_exponent", "isentropic exponent", significant("", 4), c -> c.ideal()
                    .chamber()
                    .gammaS())
            .number(
                    "ideal_characteristic_velocity_m_s",
                    "characteristic velocity, ideal",
                    Notation.fixed("m/s", "m/s", 1, 1),
                    c -> c.ideal().characteristicVelocity())
            .number(
                    "thrust_coefficient_vacuum",
                    "thrust coefficient in vacuum",
                    significant("", 5),
                    c -> c.vacuumThrustCoefficient())
            .number("mass_flow_kg_s", "chamber mass flow", Notation.MASS_FLOW, ChamberPerformance::massFlow)
            .number("length_m", "injector to throat", Notation.LENGTH, c -> c.contour()
                    .chamberLength())
            .number("nozzle_length_m", "throat to exit", Notation.LENGTH, c -> c.contour()
                    .nozzleLength())
            .table();

    private ChamberFigures() {}
}
