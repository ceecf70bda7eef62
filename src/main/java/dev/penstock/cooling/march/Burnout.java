package dev.penstock.cooling.march;

import dev.penstock.cooling.coolant.Boiling;
import dev.penstock.cooling.coolant.SaturationLine;

/** Wall flux over critical heat flux in a cell, from what the march left there. */
public final class Burnout {

    private static final double HIGHEST_REDUCED_PRESSURE = 0.95;

    private Burnout() {}

    /** Flux on the wetted surface over the critical one (-); zero where the coolant cannot boil or is no liquid. */
    public static double ratio(JacketRun run, LegField field, int c) {
        double pressure = field.pressure[c];
        double critical = run.properties.criticalPressure();
        if (!(pressure < HIGHEST_REDUCED_PRESSURE * critical) || !run.properties.boils(pressure)) {
            return 0;
        }
        SaturationLine line = run.saturation.get();
        double boiling = line.temperature(pressure);
        if (field.bulk[c] > boiling * (1 + 1e-9)) {
            return 0;
        }
        double convective = field.coolantCoefficient[c];
        double superheat = field.floor[c] - boiling;
        double flux = Math.hypot(
                convective * (field.floor[c] - field.bulk[c]), Boiling.nucleateFlux(critical, pressure, superheat));
        double liquid = line.liquidDensity(pressure);
        double vapour = line.hasVapour()
                ? line.vapourDensity(pressure)
                : Boiling.vapourDensity(run.properties.fluid().molarMass(), pressure, boiling);
        double latent = line.hasVapour()
                ? line.vapourEnthalpy(pressure) - line.liquidEnthalpy(pressure)
                : Boiling.latentHeat(line, run.properties.fluid().molarMass(), pressure);
        double subcooling = Math.max(0, boiling - field.bulk[c]);
        double sensible = Math.max(0, line.liquidEnthalpy(pressure) - field.enthalpy[c]) / latent;
        return flux / Boiling.criticalFlux(critical, pressure, subcooling, liquid / vapour, sensible, convective);
    }
}
