package dev.penstock.cooling.march;

import dev.penstock.cooling.coolant.CoolantModels;
import dev.penstock.cooling.design.JacketCase;
import dev.penstock.cooling.design.JacketDesign;
import dev.penstock.cooling.gas.Bartz;
import dev.penstock.cooling.gas.BoundaryLayer;
import dev.penstock.cooling.gas.GasRadiation;
import dev.penstock.cooling.gas.GasSide;
import dev.penstock.cooling.gas.GasSideDesign;
import dev.penstock.cooling.gas.GasSideField;
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
        boolean frozen = options.properties() == GasSideDesign.Properties.FROZEN;
        double heatCapacity = frozen ? gas.frozenHeatCapacity() : gas.equilibriumHeatCapacity();
        double prandtl = frozen ? gas.frozenPrandtl() : gas.equilibriumPrandtl();
        double[] adiabatic = new double[grid.cells];
        for (int c = 0; c < grid.cells; c++) {
            adiabatic[c] = RecoveryTemperature.of(gas.temperature(), grid.gamma[c], grid.mach[c], prandtl);
        }
        double[] coefficient = new double[grid.cells];
        double[] constant = new double[grid.cells];
        double[] slope = new double[grid.cells];
        boolean closedForm = options.model() == GasSideDesign.Model.BARTZ;
        if (closedForm) {
            bartz(grid, profile, heatCapacity, prandtl, coefficient, constant, slope);
        } else {
            boundaryLayer(grid, heatCapacity, prandtl, adiabatic, coefficient, constant, slope);
        }
        for (int c = 0; c < grid.cells; c++) {
            coefficient[c] *= question.heatFluxFactor();
        }
        double[] radiation = radiation(grid, options.radiation());
        boolean soot = profile.sooty() && options.soot();
        double[] layers = layers(grid, question.design(), soot);
        ModelCard model = closedForm ? Bartz.CARD : BoundaryLayer.CARD;
        GasSideField bare = new GasSideField(coefficient, constant, slope, adiabatic, radiation, layers, model);
        return options.film().isPresent()
                ? FilmCooling.apply(grid, question, bare, options.film().get(), models)
                : bare;
    }

    private static void bartz(
            JacketGrid grid,
            HotGasProfile profile,
            double heatCapacity,
            double prandtl,
            double[] coefficient,
            double[] constant,
            double[] slope) {
        HotGas gas = profile.gas();
        double throat = Bartz.throatCoefficient(
                2 * profile.throatRadius(),
                profile.throatCurvatureRadius(),
                gas.viscosity(),
                heatCapacity,
                prandtl,
                gas.pressure(),
                gas.characteristicVelocity());
        for (int c = 0; c < grid.cells; c++) {
            double total = total(grid, c);
            coefficient[c] = throat * Math.pow(grid.areaRatio[c], -0.9) * Math.pow(total, -0.12);
            constant[c] = 0.5;
            slope[c] = 0.5 * total / gas.temperature();
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
        HotGas gas = grid.gas;
        double integral = 0;
        for (int c = 0; c < grid.cells; c++) {
            double massFlux = grid.density[c] * grid.velocity[c];
            double difference = Math.max(100, adiabatic[c] - TYPICAL_WALL);
            double part = Math.pow(grid.radius[c] * difference, 1.25) * massFlux * grid.length[c];
            double toMiddle = integral + 0.5 * part;
            integral += part;
            double viscosity = gas.viscosity() * Math.pow(grid.temperature[c] / gas.temperature(), VISCOSITY_EXPONENT);
            double stanton = BoundaryLayer.stanton(prandtl, grid.radius[c], difference, viscosity, toMiddle);
            double total = total(grid, c);
            coefficient[c] = stanton * massFlux * heatCapacity;
            constant[c] = 0.5 + 0.22 * Math.cbrt(prandtl) * (total - 1);
            slope[c] = 0.5 * total / gas.temperature();
        }
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
    private static double[] layers(JacketGrid grid, JacketDesign design, boolean sooty) {
        double[] resistance = new double[grid.cells];
        double coating = design.wall().coating().map(Coating::resistance).orElse(0.0);
        for (int c = 0; c < grid.cells; c++) {
            double soot = 0;
            if (sooty) {
                soot = design.gasSide().sootResistance().isPresent()
                        ? design.gasSide().sootResistance().getAsDouble()
                        : SootLayer.resistance(grid.place[c], grid.gas.pressure());
            }
            resistance[c] = coating + soot;
        }
        return resistance;
    }
}
