package dev.penstock.cooling.gas;

import dev.penstock.chamber.ChamberPerformance;
import dev.penstock.chamber.WallStream;
import dev.penstock.chamber.contour.ChamberContour;
import dev.penstock.chamber.contour.ContourPoint;
import dev.penstock.chamber.contour.EngineLength;
import dev.penstock.chamber.flow.NozzleStation;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.combustion.gas.GasState;
import dev.penstock.fluids.Propellant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Makes the hot side of a jacket from a thrust chamber. The stagnation temperature is taken down with the square of the
 * combustion efficiency, T_0 = T_c (c*_delivered/c*_ideal)², as [nasa-sp-125] does, what film and outer zone cost left out; the
 * free stream is that of the ideal expansion, scaled by the same factor. Where the injector has an outer zone its gas runs along
 * the wall unmixed, with the pressure and Mach number of the whole.
 */
public final class HotGasProfiles {

    private static final double LONGEST_STEP = 0.02;

    private HotGasProfiles() {}

    /**
     * @param chamber thrust chamber
     * @param reactants what burns in it; that which weighs most of the fuels is the film, if there is one
     * @return its hot side
     */
    public static HotGasProfile of(ChamberPerformance chamber, Reactants reactants) {
        boolean sooty = reactants.parts().stream()
                .anyMatch(part -> part.propellant().combustion().soot());
        return of(chamber, sooty, reactants.leading().map(Reactants.Part::propellant));
    }

    /**
     * @param chamber thrust chamber
     * @param fuel its fuel, which the film is of, if there is one
     * @return its hot side
     */
    public static HotGasProfile of(ChamberPerformance chamber, Propellant fuel) {
        return of(chamber, fuel.combustion().soot(), Optional.of(fuel));
    }

    private static HotGasProfile of(ChamberPerformance chamber, boolean sooty, Optional<Propellant> fuel) {
        GasState whole = chamber.ideal().chamber();
        Optional<WallStream.Outer> outer = chamber.wallStream().outer();
        GasState state = outer.map(WallStream.Outer::gas).orElse(whole);
        double release = energyRelease(chamber);
        double velocity = outer.map(WallStream.Outer::characteristicVelocity)
                .orElse(chamber.ideal().characteristicVelocity());
        HotGas gas = new HotGas(
                chamber.ideal().chamberPressure(),
                state.temperature() * release * release,
                velocity * release,
                state.transport().viscosity(),
                state.frozenHeatCapacity(),
                state.transport().frozenPrandtl(),
                state.equilibriumHeatCapacity(),
                state.transport().equilibriumPrandtl(),
                state.moleFractions());
        double heat = gas.temperature() / whole.temperature();
        double lightness = whole.molarMass() / state.molarMass();
        ChamberContour contour = chamber.contour();
        List<HotGasStation> stations = new ArrayList<>();
        double longest = LONGEST_STEP * EngineLength.extended(contour);
        ContourPoint previous = null;
        for (ContourPoint point : contour.points()) {
            if (previous != null) {
                int parts = (int) Math.ceil((point.x() - previous.x()) / longest);
                for (int i = 1; i < parts; i++) {
                    double x = previous.x() + (point.x() - previous.x()) * i / parts;
                    double r = previous.radius() + (point.radius() - previous.radius()) * i / parts;
                    stations.add(station(chamber, x, r, heat, lightness));
                }
            }
            stations.add(station(chamber, point.x(), point.radius(), heat, lightness));
            previous = point;
        }
        double share = chamber.wallStream().filmShare();
        return new HotGasProfile(
                gas,
                sooty
                        ? SootLayer.inMixture(
                                outer.map(WallStream.Outer::mixtureRatioBias).orElse(1.0))
                        : 0,
                contour.throatRadius(),
                contour.throatCurvatureRadius(),
                stations,
                fuel.filter(f -> share > 0).map(f -> new HotGasProfile.Film(f, share * chamber.massFlow())));
    }

    /**
     * c* over the ideal one as the injector releases it. What film and outer zone cost is no loss of the gas that burns beside
     * them: their own state has it.
     */
    private static double energyRelease(ChamberPerformance chamber) {
        return chamber.combustionEfficiency() / chamber.wallStream().velocityFactor();
    }

    private static HotGasStation station(
            ChamberPerformance chamber, double x, double radius, double heat, double lightness) {
        double ratio = radius / chamber.contour().throatRadius();
        double areaRatio = Math.max(1, x > 0 ? Math.min(ratio * ratio, chamber.areaRatio()) : ratio * ratio);
        NozzleStation gas = chamber.profile().at(areaRatio, x > 0);
        return new HotGasStation(
                x,
                radius,
                gas.mach(),
                gas.pressure(),
                gas.temperature() * heat,
                gas.density() / (heat * lightness),
                gas.velocity() * Math.sqrt(heat * lightness),
                gas.gamma());
    }
}
