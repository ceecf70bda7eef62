package dev.penstock.cooling.march;

import dev.penstock.cooling.coolant.ChannelFlow;
import dev.penstock.cooling.coolant.CoolantProperties;
import dev.penstock.errors.PropertyFailure;
import dev.penstock.numerics.Cancellation;
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
 * the last one through the same field, the first one from those of the cells before. Loss coefficients of the manifolds: common practice
 * for sudden contraction and expansion. Not thread-safe.
 */
public class JacketMarch {

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

    /**
     * End of a march.
     *
     * @param outcome how it ended
     * @param cell last cell
     * @param reason why it stopped there, where the coolant has no state; else empty
     * @param pressure pressure behind the last cell (Pa); means nothing unless complete
     * @param enthalpy total enthalpy there (J/kg)
     */
    record End(Outcome outcome, int cell, String reason, double pressure, double enthalpy) {

        private static End stopped(Outcome outcome, int cell, String reason) {
            return new End(outcome, cell, reason, 0, 0);
        }

        boolean complete() {
            return outcome == Outcome.COMPLETE;
        }
    }

    final JacketGrid grid;
    final ChannelGrid channels;
    final CoolantProperties properties;
    final WallBalance wall;
    final ChannelFlow flow;
    final boolean curved;
    private final Runnable afterCell;

    CellBalance.Steepness steepness = new CellBalance.Steepness();

    JacketMarch(
            JacketGrid grid,
            ChannelGrid channels,
            CoolantProperties properties,
            WallBalance wall,
            ChannelFlow flow,
            boolean curved,
            Runnable afterCell) {
        this.grid = grid;
        this.channels = channels;
        this.properties = properties;
        this.wall = wall;
        this.flow = flow;
        this.curved = curved;
        this.afterCell = afterCell;
    }

    /**
     * Marches one branch.
     *
     * @param legs legs in flow order
     * @param fields one field per leg, overwritten
     * @param pressure inlet manifold pressure (Pa)
     * @param enthalpy inlet manifold enthalpy (J/kg)
     * @param jacketFlow coolant flow of the whole jacket (kg/s)
     * @return how it ended
     */
    End run(List<Leg> legs, List<LegField> fields, double pressure, double enthalpy, double jacketFlow) {
        double floor = LOWEST_PRESSURE_SHARE * pressure;
        End end = new End(Outcome.COMPLETE, legs.get(0).first(), "", pressure, enthalpy);
        for (int i = 0; i < legs.size() && end.complete(); i++) {
            LegFlow legFlow = LegFlow.of(legs.get(i), channels, jacketFlow, floor);
            end = runLeg(legs.get(i), legFlow, fields.get(i), end);
        }
        return end;
    }

    /**
     * One cell, solved.
     *
     * @param leg flow of the leg
     * @param before what the cell before this one hands on
     * @param c cell
     * @param ratio guess of the density over that of the cell before (-)
     * @param guess guess of the surface temperature (K)
     * @return the cell, with how it went
     */
    CellBalance solved(LegFlow leg, CoolantPoint before, int c, double ratio, double guess) {
        CellBalance cell = new CellBalance(this, leg, before, c, ratio);
        cell.solve(guess);
        afterCell.run();
        return cell;
    }

    private End runLeg(Leg leg, LegFlow legFlow, LegField field, End inlet) {
        Cancellation.check();
        steepness = new CellBalance.Steepness();
        int c = leg.first();
        double shift = 0;
        double last = Double.NaN;
        double lastDensity = 0;
        try {
            properties.bulk(inlet.pressure, inlet.enthalpy, flow);
            CoolantPoint point = CoolantPoint.inlet(inlet.pressure, inlet.enthalpy, flow.bulkDensity);
            for (; c != leg.last() + leg.step(); c += leg.step()) {
                double before = field.surface[c];
                boolean known = before > 0;
                double denser = known ? field.massFlux[c] / field.velocity[c] : 0;
                double ratio = denser > 0 && lastDensity > 0 ? denser / lastDensity : 1;
                double here = wall.surfaceTemperature;
                double onward = Double.isNaN(last) ? here : 2 * here - last;
                CellBalance cell = solved(legFlow, point, c, ratio, known ? before + shift : onward);
                Outcome how = cell.outcome();
                lastDensity = denser;
                if (how == Outcome.COMPLETE && !(wall.floorTemperature > 0)) {
                    how = Outcome.UNSETTLED;
                }
                if (how != Outcome.COMPLETE) {
                    return End.stopped(how, c, "");
                }
                point = cell.after();
                shift = wall.surfaceTemperature - before;
                last = c == leg.first() ? Double.NaN : here;
                field.store(c, wall, flow, point);
            }
            return point.outletPressure() > legFlow.lowestPressure()
                    ? new End(Outcome.COMPLETE, leg.last(), "", point.outletPressure(), point.totalEnthalpy())
                    : End.stopped(Outcome.PRESSURE_EXHAUSTED, leg.last(), "");
        } catch (PropertyFailure e) {
            return End.stopped(Outcome.NO_STATE, c, e.getMessage());
        }
    }
}
