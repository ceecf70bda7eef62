package dev.penstock.cooling.march;

import dev.penstock.cooling.coolant.CoolantModels;
import dev.penstock.cooling.design.JacketCase;
import dev.penstock.cooling.design.JacketDesign;
import dev.penstock.cooling.gas.AcceleratedPipe;
import dev.penstock.cooling.gas.Bartz;
import dev.penstock.cooling.gas.BoundaryLayer;
import dev.penstock.cooling.gas.GasRadiation;
import dev.penstock.cooling.gas.GasSide;
import dev.penstock.cooling.gas.GasSideDesign;
import dev.penstock.cooling.gas.GasSideField;
import dev.penstock.cooling.gas.HeatRelease;
import dev.penstock.cooling.gas.HotGas;
import dev.penstock.cooling.gas.HotGasProfile;
import dev.penstock.cooling.gas.RecoveryTemperature;
import dev.penstock.cooling.gas.SootLayer;
import dev.penstock.cooling.wall.Coating;
import dev.penstock.provenance.ModelCard;

/** Makes the gas side that a design asks for: convection model, radiation, soot and coating, film. */
public final class GasSides {

    private static final double TYPICAL_WALL = 700;
    private static final double VISCOSITY_EXPONENT = 0.6;

    private GasSides() {}

    public static GasSide of(JacketGrid grid, JacketCase question, CoolantModels models) {
        GasSideDesign options = question.design().gasSide();
        HotGasProfile profile = question.gas();
        HotGas gas = profile.gas();
        double heatCapacity = gas.heatCapacity(options.properties());
        double prandtl = gas.prandtl(options.properties());
        double[] adiabatic = new double[grid.cells];
        for (int c = 0; c < grid.cells; c++) {
            adiabatic[c] = RecoveryTemperature.of(gas.temperature(), grid.gamma[c], grid.mach[c], prandtl);
        }
        double[] coefficient = new double[grid.cells];
        double[] constant = new double[grid.cells];
        double[] slope = new double[grid.cells];
        ModelCard model =
                switch (options.model()) {
                    case BARTZ -> {
                        bartz(
                                grid,
                                Bartz.throatCoefficient(profile, options.properties()),
                                coefficient,
                                constant,
                                slope);
                        yield Bartz.CARD;
                    }
                    case BOUNDARY_LAYER -> {
                        boundaryLayer(grid, heatCapacity, prandtl, adiabatic, coefficient, constant, slope);
                        yield BoundaryLayer.CARD;
                    }
                    case ACCELERATED_PIPE -> {
                        acceleratedPipe(grid, heatCapacity, prandtl, coefficient, constant, slope);
                        yield AcceleratedPipe.CARD;
                    }
                };
        double length = options.heatReleaseLength();
        for (int c = 0; c < grid.cells; c++) {
            double developed = HeatRelease.share(grid.x[c] - profile.start(), length, -profile.start());
            coefficient[c] *= question.heatFluxFactor() * developed;
        }
        double[] radiation = radiation(grid, options.radiation());
        double soot = options.soot() ? profile.soot() * options.sootFactor() : 0;
        double[] layers = layers(grid, question.design(), soot);
        GasSideField bare = new GasSideField(coefficient, constant, slope, adiabatic, radiation, layers, model);
        return profile.film()
                .<GasSide>map(film -> FilmCooling.apply(grid, question, bare, film, models))
                .orElse(bare);
    }

    private static void bartz(JacketGrid grid, double throat, double[] coefficient, double[] constant, double[] slope) {
        for (int c = 0; c < grid.cells; c++) {
            double total = total(grid, c);
            coefficient[c] = throat * Math.pow(grid.areaRatio[c], -Bartz.AREA_EXPONENT) * Math.pow(total, -0.12);
            constant[c] = 0.5;
            slope[c] = 0.5 * total / grid.gas.temperature();
        }
    }

    private static void boundaryLayer(
            JacketGrid grid,
            double heatCapacity,
            double prandtl,
            double[] adiabatic,
            double[] coefficient,
            double[] constant,
            double[] slope) {
        double integral = 0;
        for (int c = 0; c < grid.cells; c++) {
            double massFlux = grid.density[c] * grid.velocity[c];
            double difference = Math.max(100, adiabatic[c] - TYPICAL_WALL);
            double part = Math.pow(grid.radius[c] * difference, 1.25) * massFlux * grid.length[c];
            double toMiddle = integral + 0.5 * part;
            integral += part;
            double stanton = BoundaryLayer.stanton(prandtl, grid.radius[c], difference, viscosity(grid, c), toMiddle);
            coefficient[c] = stanton * massFlux * heatCapacity;
            referenceTemperature(grid, c, prandtl, constant, slope);
        }
    }

    private static void acceleratedPipe(
            JacketGrid grid,
            double heatCapacity,
            double prandtl,
            double[] coefficient,
            double[] constant,
            double[] slope) {
        for (int c = 0; c < grid.cells; c++) {
            coefficient[c] = AcceleratedPipe.coefficient(
                    grid.place[c],
                    grid.density[c] * grid.velocity[c],
                    2 * grid.radius[c],
                    viscosity(grid, c),
                    heatCapacity,
                    prandtl);
            referenceTemperature(grid, c, prandtl, constant, slope);
        }
    }

    private static double viscosity(JacketGrid grid, int c) {
        return grid.gas.viscosity() * Math.pow(grid.temperature[c] / grid.gas.temperature(), VISCOSITY_EXPONENT);
    }

    /** Eckert's reference over free-stream temperature as a + b T_s. */
    private static void referenceTemperature(
            JacketGrid grid, int c, double prandtl, double[] constant, double[] slope) {
        double total = total(grid, c);
        constant[c] = 0.5 + 0.22 * Math.cbrt(prandtl) * (total - 1);
        slope[c] = 0.5 * total / grid.gas.temperature();
    }

    private static double total(JacketGrid grid, int c) {
        return 1 + 0.5 * (grid.gamma[c] - 1) * grid.mach[c] * grid.mach[c];
    }

    /** Radiative flux per cell to a wall at a typical temperature, whose own emission hardly counts (W/m²). */
    static double[] radiation(JacketGrid grid, boolean wanted) {
        double[] flux = new double[grid.cells];
        if (wanted) {
            double steam = grid.gas.moleFraction("H2O");
            double dioxide = grid.gas.moleFraction("CO2");
            for (int c = 0; c < grid.cells; c++) {
                flux[c] = GasRadiation.flux(
                        steam * grid.pressure[c],
                        dioxide * grid.pressure[c],
                        2 * grid.radius[c],
                        grid.temperature[c],
                        TYPICAL_WALL);
            }
        }
        return flux;
    }

    /** Resistance of soot and coating per cell (m²·K/W). */
    private static double[] layers(JacketGrid grid, JacketDesign design, double sootFactor) {
        double[] resistance = new double[grid.cells];
        double coating = design.wall().coating().map(Coating::resistance).orElse(0.0);
        for (int c = 0; c < grid.cells; c++) {
            resistance[c] = coating + (sootFactor > 0 ? sootFactor * soot(grid, design.gasSide(), c) : 0);
        }
        return resistance;
    }

    private static double soot(JacketGrid grid, GasSideDesign options, int c) {
        return options.sootResistance().isPresent()
                ? options.sootResistance().getAsDouble()
                : SootLayer.resistance(grid.place[c], grid.gas.pressure());
    }
}
