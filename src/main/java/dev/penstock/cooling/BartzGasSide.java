package dev.penstock.cooling;

import dev.penstock.provenance.ModelCard;
import java.util.ArrayList;
import java.util.List;

/** Gas side by Bartz's closed form, with radiation, soot and coating added per cell. */
final class BartzGasSide implements GasSide {

    private static final double RADIATION_WALL = 700;

    private final double stagnationTemperature;
    private final double[] coefficient;
    private final double[] total;
    private final double[] adiabatic;
    private final double[] radiation;
    private final double[] layers;
    private final List<ModelCard> cards = new ArrayList<>();

    BartzGasSide(JacketGrid grid, HotGasProfile profile, JacketDesign design, boolean sooty, double factor) {
        HotGas gas = profile.gas();
        boolean frozen = design.gasSide().properties() == GasSideDesign.Properties.FROZEN;
        double heatCapacity = frozen ? gas.frozenHeatCapacity() : gas.equilibriumHeatCapacity();
        double prandtl = frozen ? gas.frozenPrandtl() : gas.equilibriumPrandtl();
        stagnationTemperature = gas.temperature();
        double throat = factor
                * Bartz.throatCoefficient(
                        2 * profile.throatRadius(),
                        profile.throatCurvatureRadius(),
                        gas.viscosity(),
                        heatCapacity,
                        prandtl,
                        gas.pressure(),
                        gas.characteristicVelocity());
        coefficient = new double[grid.cells];
        total = new double[grid.cells];
        adiabatic = new double[grid.cells];
        for (int c = 0; c < grid.cells; c++) {
            double mach = grid.mach[c];
            coefficient[c] = throat * Math.pow(grid.areaRatio[c], -0.9);
            total[c] = 1 + 0.5 * (grid.gamma[c] - 1) * mach * mach;
            adiabatic[c] = RecoveryTemperature.of(stagnationTemperature, grid.gamma[c], mach, prandtl);
        }
        radiation = radiation(grid, design.gasSide().radiation());
        layers = layers(grid, design, sooty);
        cards.add(Bartz.CARD);
        cards.add(RecoveryTemperature.CARD);
        if (design.gasSide().radiation()) {
            cards.add(GasRadiation.CARD);
        }
        if (sooty && design.gasSide().soot()) {
            cards.add(SootLayer.CARD);
        }
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
                        RADIATION_WALL);
            }
        }
        return flux;
    }

    /** Resistance of soot and coating per cell (m²·K/W). */
    static double[] layers(JacketGrid grid, JacketDesign design, boolean sooty) {
        double[] resistance = new double[grid.cells];
        GasSideDesign options = design.gasSide();
        double coating = design.wall().coating().map(Coating::resistance).orElse(0.0);
        for (int c = 0; c < grid.cells; c++) {
            double soot = 0;
            if (sooty && options.soot()) {
                soot = options.sootResistance().isPresent()
                        ? options.sootResistance().getAsDouble()
                        : SootLayer.resistance(grid.place[c], grid.gas.pressure());
            }
            resistance[c] = coating + soot;
        }
        return resistance;
    }

    @Override
    public double coefficient(int cell, double surface) {
        return coefficient[cell] * Bartz.sigma(Math.max(1, surface) / stagnationTemperature, total[cell]);
    }

    @Override
    public double adiabaticWallTemperature(int cell) {
        return adiabatic[cell];
    }

    @Override
    public double radiation(int cell) {
        return radiation[cell];
    }

    @Override
    public double layers(int cell) {
        return layers[cell];
    }

    @Override
    public List<ModelCard> cards() {
        return List.copyOf(cards);
    }
}
