package dev.penstock.cooling.march;

import dev.penstock.cooling.coolant.ChannelFlow;
import dev.penstock.cooling.coolant.CoolantProperties;
import dev.penstock.errors.PropertyFailure;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * The march of the coolant through the cells of its legs.
 * <pre>
 * energy     h_0 += q A/ṁ                        total enthalpy; h = h_0 − V²/2
 * momentum   dp = −f (ds/D_h) ½ρV² − ρV dV       friction and acceleration, change of section included
 * manifolds  inlet p_0 − (1 + 0.5) ½ρV², outlet p: the dynamic head is lost
 * </pre>
 * Each cell is solved at its middle, wall and coolant together ({@link CellBalance}); the heat that enters is then added to
 * the coolant as it stands, so heat and enthalpy rise agree to round-off. Every march starts from the surface temperatures of
 * the last one through the same field. Loss coefficients of the manifolds: common practice
 * for sudden contraction and expansion. Not thread-safe; allocates nothing after construction.
 */
public final class JacketMarch {

    public static final ModelCard CARD = new ModelCard(
            "cooling.march",
            "Coolant energy and momentum along the channel",
            "m dh0 = q dA; dp = -f ds/D rho V^2/2 - rho V dV",
            "steady, one-dimensional, even split between channels; two-phase as a homogeneous mixture",
            "pressure drop about ±15 % with known roughness (own judgement)",
            List.of("nasa-sp-8087", "haaland-1983"));

    /** How a march ended. */
    public enum Outcome {
        COMPLETE,
        PRESSURE_EXHAUSTED,
        CHOKED,
        UNSETTLED,
        NO_STATE
    }

    private static final double LOWEST_PRESSURE_SHARE = 0.02;

    private final CellBalance balance;
    private final WallBalance wall;
    private final ChannelFlow flow;

    /** End of the march: outcome, where it stopped, and the reason. */
    Outcome outcome = Outcome.COMPLETE;

    int stoppedAt;
    String reason = "";

    double outletPressure;
    double outletEnthalpy;

    JacketMarch(
            JacketGrid grid,
            ChannelGrid channels,
            CoolantProperties properties,
            WallBalance wall,
            ChannelFlow flow,
            boolean curved) {
        this.balance = new CellBalance(grid, channels, properties, wall, flow, curved);
        this.wall = wall;
        this.flow = flow;
    }

    /**
     * Marches one branch.
     *
     * @param legs legs in flow order
     * @param fields one field per leg, overwritten
     * @param pressure inlet manifold pressure (Pa)
     * @param enthalpy inlet manifold enthalpy (J/kg)
     * @param jacketFlow coolant flow of the whole jacket (kg/s)
     */
    void run(List<Leg> legs, List<LegField> fields, double pressure, double enthalpy, double jacketFlow) {
        outcome = Outcome.COMPLETE;
        double p = pressure;
        double h = enthalpy;
        double floor = LOWEST_PRESSURE_SHARE * pressure;
        for (int i = 0; i < legs.size(); i++) {
            if (!runLeg(legs.get(i), fields.get(i), p, h, jacketFlow, floor)) {
                return;
            }
            p = outletPressure;
            h = outletEnthalpy;
        }
    }

    private boolean runLeg(Leg leg, LegField field, double inlet, double enthalpy, double jacketFlow, double floor) {
        int c = leg.first();
        double shift = 0;
        double lastDensity = 0;
        try {
            balance.startLeg(leg, inlet, enthalpy, jacketFlow, floor);
            for (; c != leg.last() + leg.step(); c += leg.step()) {
                double before = field.surface[c];
                boolean known = before > 0;
                double denser = known ? field.massFlux[c] / field.velocity[c] : 0;
                Outcome how = balance.solve(
                        c,
                        known ? before + shift : wall.surfaceTemperature,
                        denser > 0 && lastDensity > 0 ? denser / lastDensity : 1);
                lastDensity = denser;
                if (how == Outcome.COMPLETE && !(wall.floorTemperature > 0)) {
                    how = Outcome.UNSETTLED;
                }
                if (how != Outcome.COMPLETE) {
                    return stop(how, c, "");
                }
                shift = wall.surfaceTemperature - before;
                field.store(c, wall, flow, balance.pressure, balance.velocity, balance.massFlux);
            }
        } catch (PropertyFailure e) {
            return stop(Outcome.NO_STATE, c, e.getMessage());
        }
        outletPressure = balance.outletPressure();
        outletEnthalpy = balance.outletEnthalpy();
        return outletPressure > floor || stop(Outcome.PRESSURE_EXHAUSTED, leg.last(), "");
    }

    private boolean stop(Outcome how, int cell, String why) {
        outcome = how;
        stoppedAt = cell;
        reason = why;
        return false;
    }
}
