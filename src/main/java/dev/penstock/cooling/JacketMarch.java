package dev.penstock.cooling;

import dev.penstock.errors.NotConverged;
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
 * Each cell is solved at its middle, flux and state together, to 1e-8, which is near the noise of a property library; the heat that enters is then added to the
 * coolant as it stands, so heat and enthalpy rise agree to round-off. Loss coefficients of the manifolds: common practice
 * for sudden contraction and expansion. Not thread-safe; allocates nothing after construction.
 */
final class JacketMarch {

    static final ModelCard CARD = new ModelCard(
            "cooling.march",
            "Coolant energy and momentum along the channel",
            "m dh0 = q dA; dp = -f ds/D rho V^2/2 - rho V dV",
            "steady, one-dimensional, even split between channels; two-phase as a homogeneous mixture",
            "pressure drop about ±15 % with known roughness (own judgement)",
            List.of("nasa-sp-8087", "haaland-1983"));

    /** How a march ended. */
    enum Outcome {
        COMPLETE,
        PRESSURE_EXHAUSTED,
        CHOKED,
        UNSETTLED,
        NO_STATE
    }

    private static final double ENTRANCE_LOSS = 0.5;
    private static final double SHORTEST_STEP = 0.02;
    private static final int MAX_SWEEPS = 200;
    private static final double TOLERANCE = 1e-8;
    private static final double LOWEST_PRESSURE_SHARE = 0.02;

    private final JacketGrid grid;
    private final ChannelGrid channels;
    private final CoolantProperties properties;
    private final WallBalance wall;
    private final ChannelFlow flow;
    private final boolean curved;

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
        this.grid = grid;
        this.channels = channels;
        this.properties = properties;
        this.wall = wall;
        this.flow = flow;
        this.curved = curved;
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
        double legFlow = jacketFlow * leg.flowShare();
        double perChannel = legFlow / (channels.count * leg.share());
        double total = enthalpy;
        double distance = 0;
        double previousVelocity = 0;
        double previousMomentum = 0;
        double previousFriction = 0;
        double pressure = inlet;
        double flux = 0;
        double density = 0;
        boolean first = true;
        for (int c = leg.first(); c != leg.last() + leg.step(); c += leg.step()) {
            double massFlux = perChannel / channels.flowArea[c];
            double half = 0.5 * grid.area[c] * leg.share() / legFlow;
            wall.enter(grid, channels, c);
            double friction = 0;
            double velocity = 0;
            double p = pressure;
            double sound = 0;
            boolean settled = false;
            double step = 1;
            double lastChange = 0;
            try {
                if (first) {
                    properties.bulk(inlet, enthalpy, flow);
                    density = flow.bulkDensity;
                }
                for (int sweep = 0; sweep < MAX_SWEEPS && !settled; sweep++) {
                    velocity = massFlux / density;
                    double momentum = massFlux * velocity;
                    p = first
                            ? inlet - (1 + ENTRANCE_LOSS) * 0.5 * momentum - friction
                            : pressure
                                    - previousFriction
                                    - friction
                                    - 0.5
                                            * (previousMomentum / previousVelocity + massFlux)
                                            * (velocity - previousVelocity);
                    if (!(p > floor)) {
                        return stop(Outcome.PRESSURE_EXHAUSTED, c, "");
                    }
                    double staticEnthalpy = total + flux * half - 0.5 * velocity * velocity;
                    properties.bulk(p, staticEnthalpy, flow);
                    double diameter = channels.hydraulicDiameter[c];
                    flow.boilingTemperature = properties.saturationTemperature(p);
                    flow.velocity = velocity;
                    flow.hydraulicDiameter = diameter;
                    flow.reynolds = massFlux * diameter / flow.bulkViscosity;
                    flow.prandtl = flow.bulkHeatCapacity * flow.bulkViscosity / flow.bulkConductivity;
                    flow.distanceOverDiameter = (distance + 0.5 * grid.length[c]) / diameter;
                    double curvature =
                            curved ? CurvedChannel.factor(flow.reynolds, 0.5 * diameter / grid.curvature[c]) : 1;
                    flow.frictionFactor =
                            ChannelFriction.factor(flow.reynolds, channels.roughness / diameter) * curvature;
                    double newFriction = 0.25
                            * flow.frictionFactor
                            * grid.length[c]
                            / diameter
                            * massFlux
                            * massFlux
                            / flow.bulkDensity;
                    wall.solve(curvature);
                    settled = sweep > 0
                            && close(wall.heatFlux, flux)
                            && close(flow.bulkDensity, density)
                            && Math.abs(newFriction - friction) <= TOLERANCE * p;
                    double change = wall.heatFlux - flux;
                    step = settled ? 1 : relaxation(step, change, lastChange);
                    lastChange = change;
                    flux += step * change;
                    density += step * (flow.bulkDensity - density);
                    friction = newFriction;
                }
                sound = flow.bulkSoundSpeed;
                if (velocity > sound) {
                    return stop(Outcome.CHOKED, c, "");
                }
            } catch (PropertyFailure e) {
                return stop(Outcome.NO_STATE, c, e.getMessage());
            } catch (NotConverged e) {
                return stop(Outcome.UNSETTLED, c, e.getMessage());
            }
            if (!settled || !(wall.floorTemperature > 0)) {
                return stop(Outcome.UNSETTLED, c, "");
            }
            field.store(c, wall, flow, p, velocity, massFlux, sound);
            total += 2 * flux * half;
            distance += grid.length[c];
            previousVelocity = velocity;
            previousMomentum = massFlux * velocity;
            previousFriction = friction;
            pressure = p;
            first = false;
        }
        outletPressure = pressure - previousFriction;
        outletEnthalpy = total;
        return outletPressure > floor || stop(Outcome.PRESSURE_EXHAUSTED, leg.last(), "");
    }

    /** Full steps, halved where a cell's own heat swings its flux, as when the coolant dries out in it. */
    private static double relaxation(double step, double change, double lastChange) {
        boolean swings = change * lastChange < 0 && Math.abs(change) > 0.2 * Math.abs(lastChange);
        return swings ? Math.max(SHORTEST_STEP, 0.5 * step) : Math.min(1, 1.3 * step);
    }

    private static boolean close(double a, double b) {
        return Math.abs(a - b) <= TOLERANCE * Math.max(Math.abs(a), 1);
    }

    private boolean stop(Outcome how, int cell, String why) {
        outcome = how;
        stoppedAt = cell;
        reason = why;
        return false;
    }
}
