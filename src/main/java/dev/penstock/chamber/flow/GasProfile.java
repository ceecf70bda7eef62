package dev.penstock.chamber.flow;

import dev.penstock.errors.Require;
import dev.penstock.numerics.RootFinder;
import java.util.List;

/**
 * Gas along a nozzle as a function of area ratio, interpolated along the isentrope so that hundreds of stations cost
 * next to nothing. Immutable and safe to share.
 *
 * <p>Nodes are spaced in ln p. Enthalpy and ln ρ are cubic Hermite curves with the exact isentropic slopes dh/dln p = p/ρ
 * and dln ρ/dln p = 1/γ, so that mass flux ρ·√(2(h₀ − h)) has its maximum exactly at the throat node; the other
 * quantities use finite-difference slopes. The two sides of the throat are separate curves, since a flow that freezes
 * there has a corner. Against the isentrope itself the error is below 1e-5 in temperature and density.
 */
public final class GasProfile {

    private static final int MOST_STEPS = 25;
    private static final double TOLERANCE = 1e-11;
    private static final String MODEL = "gas profile";

    private final NozzleStation throat;
    private final NozzleStation exit;
    private final GasBranch subsonic;
    private final GasBranch supersonic;
    private final RecombinationTable recombination;
    private final double exitCondensed;

    /**
     * @param subsonicNodes stations at rest or moving, pressure falling, the last one the throat
     * @param supersonicNodes the throat and stations downstream, pressure falling, the last one the exit
     * @param totalEnthalpy enthalpy at rest (J/kg)
     * @param exitCondensed mass fraction of condensed species at the exit (-)
     * @param recombination recombination at the supersonic nodes, empty unless the flow is shifting
     */
    GasProfile(
            List<NozzleStation> subsonicNodes,
            List<NozzleStation> supersonicNodes,
            double totalEnthalpy,
            RecombinationTable recombination,
            double exitCondensed) {
        this.exitCondensed = exitCondensed;
        this.recombination = recombination;
        throat = supersonicNodes.get(0);
        exit = supersonicNodes.get(supersonicNodes.size() - 1);
        subsonic = new GasBranch(subsonicNodes, totalEnthalpy);
        supersonic = new GasBranch(supersonicNodes, totalEnthalpy);
    }

    /** @return the sonic station */
    public NozzleStation throat() {
        return throat;
    }

    /** @return the last station */
    public NozzleStation exit() {
        return exit;
    }

    /**
     * @param areaRatio area over throat area (-), at least 1; downstream at most that of the exit
     * @param downstream whether the station lies downstream of the throat
     * @return the gas there
     * @throws dev.penstock.errors.OutsideValidity if the area ratio is below 1 or, downstream, beyond the exit
     */
    public NozzleStation at(double areaRatio, boolean downstream) {
        double highest = downstream ? exit.areaRatio() * (1 + 1e-9) : 1e6;
        Require.within(MODEL, "area ratio (-)", areaRatio, 1 - 1e-9, highest);
        if (areaRatio <= 1 + 1e-12) {
            return throat;
        }
        GasBranch branch = downstream ? supersonic : subsonic;
        double flux = throat.massFlux() / areaRatio;
        return branch.at(logPressure(branch, flux), areaRatio);
    }

    /**
     * @param pressure static pressure (Pa), between exit and chamber pressure
     * @return the gas there
     * @throws dev.penstock.errors.OutsideValidity if the flow does not reach that pressure
     */
    public NozzleStation atPressure(double pressure) {
        Require.within(MODEL, "pressure (Pa)", pressure, exit.pressure() * (1 - 1e-9), Math.exp(subsonic.highest()));
        double lnP = Math.log(pressure);
        boolean downstream = pressure < throat.pressure();
        GasBranch branch = downstream ? supersonic : subsonic;
        double clamped = Math.max(branch.lowest(), Math.min(branch.highest(), lnP));
        return branch.at(clamped, Math.max(1, throat.massFlux() / branch.massFlux(clamped)));
    }

    /** Mass fraction of condensed species at the exit (-). */
    public double exitCondensedFraction() {
        return exitCondensed;
    }

    public RecombinationTable recombination() {
        return recombination;
    }

    private static double logPressure(GasBranch branch, double flux) {
        int i = branch.intervalOfFlux(flux);
        double a = branch.lnPressure(i);
        double b = branch.lnPressure(i + 1);
        double fa = branch.nodeFlux(i) - flux;
        double fb = branch.nodeFlux(i + 1) - flux;
        if (fa == 0 || fb == 0 || fa > 0 == fb > 0) {
            return Math.abs(fa) < Math.abs(fb) ? a : b;
        }
        // Measured from the upper end, so that a tiny pressure drop near rest keeps its digits.
        double d = newton(branch, i, fa, flux);
        return a
                + (Double.isFinite(d)
                        ? d
                        : RootFinder.between(
                                        "pressure at a mass flux", x -> branch.massFlux(a + x) - flux, b - a, 0, 1e-13)
                                .value());
    }

    /** Newton's method inside a shrinking bracket; not a number if it takes long, as it may beside the throat. */
    private static double newton(GasBranch branch, int interval, double excessAtTop, double flux) {
        double a = branch.lnPressure(interval);
        double end = branch.lnPressure(interval + 1) - a;
        double low = end;
        double high = 0;
        double first = branch.shareOfInterval(interval, flux);
        double d = first > 0 && first < 1 ? first * end : 0.5 * end;
        double[] found = new double[2];
        for (int i = 0; i < MOST_STEPS; i++) {
            branch.stepTowards(interval, a + d, flux, found);
            if (found[0] > 0 == excessAtTop > 0) {
                high = d;
            } else {
                low = d;
            }
            double next = d - found[1];
            if (Math.abs(found[1]) <= TOLERANCE * Math.abs(d)) {
                return Math.min(0, Math.max(end, next));
            }
            d = next > low && next < high ? next : 0.5 * (low + high);
        }
        return Double.NaN;
    }
}
