package dev.penstock.cooling.gas;

import dev.penstock.chamber.ChamberPerformance;
import dev.penstock.chamber.contour.ChamberContour;
import dev.penstock.chamber.contour.ContourPoint;
import dev.penstock.chamber.flow.NozzleStation;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.combustion.gas.GasState;
import java.util.ArrayList;
import java.util.List;

/**
 * Makes the hot side of a jacket from a thrust chamber. The stagnation temperature is taken down with the square of the
 * combustion efficiency, T_0 = T_c (c*_delivered/c*_ideal)², as [nasa-sp-125] does; the free stream is that of the ideal
 * expansion, scaled by the same factor.
 */
public final class HotGasProfiles {

    private static final double LONGEST_STEP = 0.02;

    private HotGasProfiles() {}

    /**
     * @param chamber thrust chamber
     * @param reactants what burns in it; the files of the propellants tell whether the flame is sooty
     * @return its hot side
     */
    public static HotGasProfile of(ChamberPerformance chamber, Reactants reactants) {
        return of(chamber, reactants.parts().stream().anyMatch(part -> part.propellant()
                .combustion()
                .soot()));
    }

    /**
     * @param chamber thrust chamber
     * @param sooty whether the flame lays soot on the wall
     * @return its hot side
     */
    public static HotGasProfile of(ChamberPerformance chamber, boolean sooty) {
        double efficiency = chamber.combustionEfficiency();
        double heat = efficiency * efficiency;
        GasState state = chamber.ideal().chamber();
        HotGas gas = new HotGas(
                chamber.ideal().chamberPressure(),
                state.temperature() * heat,
                chamber.characteristicVelocity(),
                state.gammaS(),
                state.molarMass(),
                state.transport().viscosity(),
                state.frozenHeatCapacity(),
                state.transport().frozenPrandtl(),
                state.equilibriumHeatCapacity(),
                state.transport().equilibriumPrandtl(),
                state.moleFractions());
        ChamberContour contour = chamber.contour();
        List<HotGasStation> stations = new ArrayList<>();
        double longest = LONGEST_STEP * (contour.chamberLength() + contour.nozzleLength());
        ContourPoint previous = null;
        for (ContourPoint point : contour.points()) {
            if (previous != null) {
                int parts = (int) Math.ceil((point.x() - previous.x()) / longest);
                for (int i = 1; i < parts; i++) {
                    double x = previous.x() + (point.x() - previous.x()) * i / parts;
                    double r = previous.radius() + (point.radius() - previous.radius()) * i / parts;
                    stations.add(station(chamber, x, r, heat));
                }
            }
            stations.add(station(chamber, point.x(), point.radius(), heat));
            previous = point;
        }
        return new HotGasProfile(gas, sooty, contour.throatRadius(), contour.throatCurvatureRadius(), stations);
    }

    private static HotGasStation station(ChamberPerformance chamber, double x, double radius, double heat) {
        double ratio = radius / chamber.contour().throatRadius();
        double areaRatio = Math.max(1, x > 0 ? Math.min(ratio * ratio, chamber.areaRatio()) : ratio * ratio);
        NozzleStation gas = chamber.profile().at(areaRatio, x > 0);
        return new HotGasStation(
                x,
                radius,
                gas.mach(),
                gas.pressure(),
                gas.temperature() * heat,
                gas.density() / heat,
                gas.velocity() * Math.sqrt(heat),
                gas.gamma());
    }
}
