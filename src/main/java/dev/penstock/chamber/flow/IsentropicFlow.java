package dev.penstock.chamber.flow;

import dev.penstock.combustion.WorkingState;
import dev.penstock.errors.NotConverged;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.errors.Require;
import dev.penstock.numerics.RootFinder;
import dev.penstock.provenance.ModelCard;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/**
 * One-dimensional, adiabatic, loss-free flow from rest through a throat.
 * <pre>
 * v = √(2 (h₀ − h))                              energy
 * v = a at the throat                            largest mass flux
 * ε = ρ_t v_t / (ρ v)                            mass
 * d ln ε / d ln p = 1/(γ M²) − 1/γ               along an isentrope
 * </pre>
 * The throat pressure starts from ((γ+1)/2)^(−γ/(γ−1)) and is corrected by Newton's method on ln(v²/a²) at constant γ,
 * d ln(v²/a²)/d ln p = −2/(γM²) − (γ−1)/γ, times what the last step showed of the change of γ; the area ratio likewise from the empirical starts of [nasa-rp-1311]. Either
 * falls back to a bracketed search where γ jumps because a condensed species appears. Tolerance 1e-11 on the equations.
 */
public final class IsentropicFlow {

    public static final ModelCard CARD = new ModelCard(
            "chamber.isentropic_flow",
            "One-dimensional isentropic nozzle flow",
            "v = √(2 (h₀ − h)); v = a at the throat; ε = ρ_t v_t/(ρ v)",
            "any gas; area ratio 1 to 5000",
            "exact for its assumptions",
            List.of("nasa-rp-1311"));

    private static final double TOLERANCE = 1e-11;
    private static final int NEWTON_STEPS = 25;
    /** Change of ln(v²/a²) from which its slope can be told (-). */
    private static final double TELLING = 1e-8;
    /** Slope over that at constant γ below which, or above whose inverse, it is that of a corner (-). */
    private static final double LEAST_BEND = 0.5;

    private final Isentrope upstream;
    private final Isentrope downstream;
    private final WorkingState chamber;
    private final WorkingState throat;
    private final double throatFlux;
    private final NearExpansion near;
    private int evaluations;

    /**
     * @param upstream isentrope from the chamber to the throat
     * @param chamber state at rest on it
     * @param near where to start; moves along
     * @param pastThroat gives the isentrope downstream from the throat state; return the upstream one if nothing changes
     */
    IsentropicFlow(
            Isentrope upstream,
            WorkingState chamber,
            NearExpansion near,
            Function<WorkingState, Isentrope> pastThroat) {
        this.near = near;
        this.upstream = upstream;
        this.chamber = chamber;
        this.throat = findThroat();
        this.throatFlux = flux(throat);
        this.downstream = pastThroat.apply(throat);
    }

    WorkingState throat() {
        return throat;
    }

    /** Mass flux at the throat (kg/(m²·s)). */
    double throatFlux() {
        return throatFlux;
    }

    /** Characteristic velocity p_c/(ρ_t v_t) (m/s). */
    double characteristicVelocity() {
        return chamber.pressure() / throatFlux;
    }

    /** Velocity at a state of this flow (m/s). */
    double velocity(WorkingState state) {
        return Math.sqrt(Math.max(0, 2 * (chamber.enthalpy() - state.enthalpy())));
    }

    double flux(WorkingState state) {
        return state.density() * velocity(state);
    }

    double areaRatio(WorkingState state) {
        return throatFlux / flux(state);
    }

    /** Isentrope states asked for so far. */
    int evaluations() {
        return evaluations;
    }

    WorkingState upstreamAt(double pressure) {
        evaluations++;
        return upstream.at(pressure);
    }

    WorkingState downstreamAt(double pressure) {
        evaluations++;
        return downstream.at(pressure);
    }

    /**
     * @param pressure static pressure (Pa), below the throat's
     * @return state downstream of the throat
     * @throws OutsideValidity if the pressure is not below the throat pressure
     */
    WorkingState atExitPressure(double pressure) {
        if (!(pressure > 0 && pressure < throat.pressure())) {
            throw new OutsideValidity(
                    "nozzle",
                    "exit pressure (Pa)",
                    pressure,
                    String.format(
                            Locale.ROOT,
                            "above 0 and below the throat pressure of %.6g Pa (chamber pressure %.6g Pa)",
                            throat.pressure(),
                            chamber.pressure()));
        }
        return downstreamAt(pressure);
    }

    /**
     * @param areaRatio area over throat area (-), at least 1
     * @return supersonic state there
     * @throws OutsideValidity if the area ratio is below 1 or above 5000
     * @throws NotConverged if no state with that area ratio is found
     */
    WorkingState atAreaRatio(double areaRatio) {
        Require.within("nozzle", "area ratio (-)", areaRatio, 1, 5000);
        if (areaRatio == 1) {
            return throat;
        }
        double lnEps = Math.log(areaRatio);
        double lnThroat = Math.log(throat.pressure());
        double lnP = startPressure(areaRatio, lnEps, lnThroat);
        double upper = lnThroat;
        double lower = lnP - 3;
        double known = Math.log(chamber.pressure()) + Math.log(near.exitShare());
        if (known > lower && known < upper) {
            lnP = known;
        }
        for (int i = 0; i < NEWTON_STEPS; i++) {
            WorkingState state = downstreamAt(Math.exp(lnP));
            double residual = Math.log(areaRatio(state)) - lnEps;
            double v = velocity(state);
            double mach2 = v * v * state.density() / (state.gamma() * state.pressure());
            if (Math.abs(residual) < TOLERANCE) {
                near.foundExit(state.pressure() / chamber.pressure());
                return state;
            }
            if (residual < 0) {
                upper = lnP;
            } else {
                lower = Math.max(lower, lnP);
            }
            double slope = (1 / mach2 - 1) / state.gamma();
            double next = lnP - residual / slope;
            if (mach2 > 1 && Math.abs(next - lnP) < 1e-13 * Math.abs(lnP)) {
                return state;
            }
            lnP = mach2 > 1 && next < upper && next > lower ? next : 0.5 * (upper + lower);
        }
        return bracketedAreaRatio(areaRatio, lnThroat);
    }

    private double startPressure(double areaRatio, double lnEps, double lnThroat) {
        double g = throat.gamma();
        if (areaRatio >= 2) {
            return Math.min(lnThroat - 0.5, Math.log(chamber.pressure()) - g - 1.4 * lnEps);
        }
        // Near the throat ln ε grows with the square of ln p: ln ε ≈ (γ+1)/(2γ²) (Δ ln p)²/... to leading order.
        return lnThroat - Math.sqrt(lnEps * (3.294 * lnEps + 1.535)) - 1e-9;
    }

    private WorkingState bracketedAreaRatio(double areaRatio, double lnThroat) {
        double low = Math.log(chamber.pressure()) - 2 - 2.5 * Math.log(areaRatio);
        double root = RootFinder.between(
                        "exit pressure for area ratio " + areaRatio,
                        s -> Math.log(areaRatio(downstreamAt(Math.exp(s))) / areaRatio),
                        low,
                        lnThroat - 1e-9,
                        1e-13)
                .value();
        return downstreamAt(Math.exp(root));
    }

    private WorkingState findThroat() {
        double g = chamber.gamma();
        double top = Math.log(chamber.pressure());
        double lnP =
                top + (near.throatShare() > 0 ? Math.log(near.throatShare()) : -g / (g - 1) * Math.log((g + 1) / 2));
        double bend = near.throatBend();
        double lastStep = 0;
        double lastResidual = 0;
        for (int i = 0; i < NEWTON_STEPS; i++) {
            WorkingState state = upstreamAt(Math.exp(lnP));
            double residual = sonicResidual(state);
            if (Math.abs(residual) < TOLERANCE) {
                near.foundThroat(state.pressure() / chamber.pressure(), bend);
                return state;
            }
            double gamma = state.gamma();
            double fall = 2 / (gamma * Math.exp(residual)) + (gamma - 1) / gamma;
            if (Math.abs(residual - lastResidual) > TELLING && lastStep != 0) {
                double seen = (lastResidual - residual) / (lastStep * fall);
                bend = seen > LEAST_BEND && seen < 1 / LEAST_BEND ? seen : 1;
            }
            double step = residual / (fall * bend);
            if (Math.abs(step) < 1e-14) {
                return state;
            }
            lastStep = Math.max(-0.3, Math.min(0.3, step));
            lastResidual = residual;
            lnP += lastStep;
            if (!(lnP < top)) {
                break;
            }
        }
        double root = RootFinder.between(
                        "throat pressure", s -> sonicResidual(upstreamAt(Math.exp(s))), top - 1.5, top - 0.2, 1e-13)
                .value();
        return upstreamAt(Math.exp(root));
    }

    /** ln(v²/a²), with a² = γ p/ρ. */
    private double sonicResidual(WorkingState state) {
        double v = velocity(state);
        return Math.log(v * v * state.density() / (state.gamma() * state.pressure()));
    }
}
