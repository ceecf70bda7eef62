package dev.penstock.cooling.jacket;

import dev.penstock.cooling.coolant.CoolantModels;
import dev.penstock.cooling.design.JacketCase;
import dev.penstock.cooling.gas.GasSide;
import dev.penstock.cooling.gas.HotGasProfile;
import dev.penstock.cooling.march.GasSides;
import dev.penstock.cooling.march.JacketGrid;
import dev.penstock.cooling.wall.WallMaterial;
import dev.penstock.numerics.RootFinder;
import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Constants;
import java.util.List;
import java.util.Optional;

/**
 * Equilibrium of a thin uncooled wall that radiates to the outside.
 * <pre>h_g(T)(T_aw − T) + q_rad = ε σ T⁴</pre>
 * Radiation back through the exit, conduction along the wall and heat from surroundings are left out; the first makes the
 * wall cooler, the last hotter. Common practice, no source.
 */
public final class RadiationSkirt {

    public static final ModelCard CARD = new ModelCard(
            "cooling.radiation-skirt",
            "Radiating nozzle extension",
            "h_g (T_aw - T) + q_rad = eps sigma T^4",
            "thin wall facing space",
            "±10 % in temperature (own judgement)",
            List.of("common practice, no source"));

    private static final int CELLS = 240;

    private RadiationSkirt() {}

    /**
     * @param flux heat flux into the wall, whatever its temperature (W/m²)
     * @param emissivity emissivity (-)
     * @return temperature at which the wall radiates it (K)
     */
    public static double equilibrium(double flux, double emissivity) {
        return Math.sqrt(Math.sqrt(flux / (emissivity * Constants.STEFAN_BOLTZMANN)));
    }

    /** The part of the nozzle beyond the jacket; empty if the jacket reaches the exit. */
    static Optional<ExtensionResult> beyond(
            JacketCase question, double endAreaRatio, WallMaterial material, CoolantModels models) {
        HotGasProfile profile = question.gas();
        double exit =
                profile.areaRatio(profile.stations().get(profile.stations().size() - 1));
        if (endAreaRatio >= exit * (1 - 1e-6)) {
            return Optional.empty();
        }
        JacketGrid grid = new JacketGrid(profile, exit, CELLS);
        GasSide gas = GasSides.of(grid, question, models);
        double start = 0;
        double last = 0;
        double heat = 0;
        double area = 0;
        for (int c = 0; c < grid.cells; c++) {
            if (grid.x[c] <= 0 || grid.areaRatio[c] < endAreaRatio) {
                continue;
            }
            last = temperature(gas, c, material.emissivity());
            start = start == 0 ? last : start;
            heat += material.emissivity() * Constants.STEFAN_BOLTZMANN * Math.pow(last, 4) * grid.area[c];
            area += grid.area[c];
        }
        return start == 0
                ? Optional.empty()
                : Optional.of(new ExtensionResult(material.id(), endAreaRatio, start, last, heat, area));
    }

    private static double temperature(GasSide gas, int cell, double emissivity) {
        double adiabatic = gas.adiabaticWallTemperature(cell);
        double high = adiabatic + gas.radiation(cell) / gas.coefficient(cell, adiabatic) + 1;
        return RootFinder.between(
                        "temperature of the nozzle extension",
                        t -> gas.coefficient(cell, t) * (adiabatic - t)
                                + gas.radiation(cell)
                                - emissivity * Constants.STEFAN_BOLTZMANN * Math.pow(t, 4),
                        1,
                        high,
                        1e-10)
                .value();
    }
}
