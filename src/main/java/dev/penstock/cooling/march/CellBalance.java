package dev.penstock.cooling.march;

import dev.penstock.cooling.coolant.ChannelFlow;
import dev.penstock.cooling.coolant.ChannelFriction;
import dev.penstock.cooling.coolant.CoolantProperties;
import dev.penstock.cooling.coolant.CurvedChannel;

/**
 * Wall and coolant of one cell, solved together for the temperature T_s of the surface that faces the gas.
 * <pre>
 * q(T_s) from the gas;  h = h_0 + q A/2ṁ − V²/2;  p from the momentum so far;  then
 * r(T_s) = q − q_c,  q_c what the coolant takes from a wall that passes q
 * </pre>
 * The hotter the surface, the less the gas gives and the more the coolant takes, so r falls from above zero at the coolant's
 * temperature to below zero at the gas's: a root lies between, however steeply boiling, drying out or a pseudo-critical
 * point make the coolant answer. Secant steps held inside that bracket, halved where neither it nor the residual shrinks; at each, density and
 * pressure are settled by substitution, the better the smaller the step. Where properties have a small step just at the root
 * there is none: the cell then stands at the step. Solves one cell, from what the cells before it hand on; not thread-safe.
 */
final class CellBalance {

    private static final double ENTRANCE_LOSS = 0.5;
    private static final int MOST_EVALUATIONS = 150;
    private static final int MOST_SUBSTITUTIONS = 60;
    private static final int MOST_RETREATS = 12;
    private static final int STEPS_PER_HALVING = 4;
    /** Residual over that four steps before that is no stall, whatever the bracket does (-). */
    private static final double LEAST_PROGRESS = 0.01;

    private static final double TOLERANCE = 1e-9;
    private static final double NARROWEST = 1e-14;
    private static final double SETTLED = 1e-8;
    private static final double FIRST_DRIFT = 1e-4;
    private static final double DRIFT_PER_STEP = 1e-2;
    private static final double DRIFT_IN_RESIDUAL = 3;
    private static final double LARGEST_STEP_IN_PROPERTIES = 0.05;

    private final ChannelFlow flow;
    private final CoolantProperties properties;
    private final WallBalance wall;
    private final CoolantPoint before;
    private final Steepness steepness;

    private final double floor;
    private final double length;
    /** Half the heated area over the flow (m²·s/kg). */
    private final double half;

    private final double diameter;
    private final double relativeRoughness;
    /** Half the hydraulic diameter over the radius of curvature (-), and how much of its effect the cell has; 0 where it does not count (-). */
    private final double bend;

    private final double curved;

    private final double massFlux;

    /** How much steeper the residual was in the cell before than its own formula, which knows no change of properties, says (-). */
    static final class Steepness {

        private static final double MOST = 3;

        private double ratio = 1;

        private void seen(double found) {
            ratio = found > 1 / MOST && found < MOST ? found : 1;
        }
    }

    private JacketMarch.Outcome outcome = JacketMarch.Outcome.UNSETTLED;

    /** Where the search stands. */
    private double pressure;

    private double velocity;
    private double friction;
    private double density;
    private double curvature;
    private double drift;
    private double change;

    /**
     * @param march grid, channels, properties, wall and flow
     * @param leg flow of the leg
     * @param before what the cell before this one hands on
     * @param cell cell
     * @param densityRatio guess of the density over that of the cell before (-)
     */
    CellBalance(JacketMarch march, LegFlow leg, CoolantPoint before, int cell, double densityRatio) {
        this.flow = march.flow;
        this.properties = march.properties;
        this.wall = march.wall;
        this.before = before;
        this.steepness = march.steepness;
        this.floor = leg.lowestPressure();
        this.length = march.grid.way(cell);
        this.half = 0.5 * march.grid.area[cell] * leg.areaPerFlow();
        this.diameter = march.channels.hydraulicDiameter[cell];
        this.relativeRoughness = march.channels.roughness / diameter;
        this.bend = 0.5 * diameter / march.grid.curvature[cell];
        this.curved = march.curved ? march.grid.curved[cell] : 0;
        this.massFlux = leg.perChannel() / march.channels.flowArea[cell];
        this.friction = before.friction();
        this.density = before.density() * densityRatio;
        wall.enter(march.grid, march.channels, cell);
    }

    /**
     * Solves the cell.
     *
     * @param guess first guess of the surface temperature (K); any number
     */
    void solve(double guess) {
        outcome = search(guess);
        if (outcome == JacketMarch.Outcome.COMPLETE && velocity > flow.bulkSoundSpeed) {
            outcome = JacketMarch.Outcome.CHOKED;
        }
    }

    /** How it went. */
    JacketMarch.Outcome outcome() {
        return outcome;
    }

    /** Velocity over the velocity of sound (-). */
    double mach() {
        return velocity / flow.bulkSoundSpeed;
    }

    /** What a solved cell hands on: its heat is added to the coolant as it stands. */
    CoolantPoint after() {
        return new CoolantPoint(
                false,
                before.totalEnthalpy() + 2 * wall.heatFlux * half,
                before.distance() + length,
                pressure,
                velocity,
                massFlux,
                friction,
                density);
    }

    private JacketMarch.Outcome search(double firstGuess) {
        double bulk = flow.bulkTemperature;
        double adiabatic = wall.adiabaticWallTemperature();
        double low = Math.min(bulk, adiabatic);
        double high = Math.max(bulk, adiabatic) + wall.radiationRise() + 1;
        double startDensity = density;
        double guess = firstGuess > low && firstGuess < high ? firstGuess : bulk + 0.3 * (adiabatic - bulk);
        double last = Double.NaN;
        double lastResidual = Double.NaN;
        double width = high - low;
        double checked = Double.POSITIVE_INFINITY;
        double allowedDrift = FIRST_DRIFT;
        int retreats = 0;
        for (int i = 0; i < MOST_EVALUATIONS; i++) {
            if (!moveTo(guess, allowedDrift)) {
                // less heat leaves the coolant denser, and it may then pass
                if (i == 0 || retreats++ == MOST_RETREATS) {
                    return JacketMarch.Outcome.PRESSURE_EXHAUSTED;
                }
                density = startDensity;
                low = guess;
                guess = 0.5 * (guess + high);
                last = Double.NaN;
                continue;
            }
            double residual = wall.residual(curvature);
            boolean alone = Double.isNaN(last) || guess == last;
            double slope = alone ? -slope() * steepness.ratio : (residual - lastResidual) / (guess - last);
            if (i == 1 && !alone) {
                steepness.seen(slope / -slope());
            }
            double next = slope < 0 ? guess - residual / slope : Double.NaN;
            boolean here = Math.abs(next - guess) <= TOLERANCE * guess;
            if (here && drift <= SETTLED) {
                return JacketMarch.Outcome.COMPLETE;
            }
            boolean sure = Math.abs(residual) > DRIFT_IN_RESIDUAL * drift * Math.abs(wall.heatFlux);
            if (sure && residual > 0) {
                low = guess;
            } else if (sure) {
                high = guess;
            }
            if (high - low <= NARROWEST * guess) {
                boolean step = Math.abs(residual) <= LARGEST_STEP_IN_PROPERTIES * Math.abs(wall.heatFlux);
                return step ? JacketMarch.Outcome.COMPLETE : JacketMarch.Outcome.UNSETTLED;
            }
            last = guess;
            lastResidual = residual;
            boolean check = i % STEPS_PER_HALVING == STEPS_PER_HALVING - 1;
            boolean stalls = check && high - low > 0.5 * width && Math.abs(residual) > LEAST_PROGRESS * checked;
            width = check ? high - low : width;
            checked = check ? Math.abs(residual) : checked;
            guess = here || next > low && next < high && !stalls ? next : 0.5 * (low + high);
            allowedDrift = Math.max(SETTLED, Math.min(FIRST_DRIFT, DRIFT_PER_STEP * Math.abs(guess / last - 1)));
        }
        return JacketMarch.Outcome.UNSETTLED;
    }

    /** Fall of the residual with the surface temperature, the warming of the coolant included (W/(m²·K)). */
    private double slope() {
        return wall.slope() + wall.gasCoefficient * wall.coolingPerArea() * half / flow.bulkHeatCapacity;
    }

    /**
     * Brings the coolant to the state that belongs to a surface temperature.
     *
     * @param allowedDrift relative change of density in the last pass that is small enough (-)
     * @return whether any pressure is left there
     */
    private boolean moveTo(double surface, double allowedDrift) {
        wall.receive(surface);
        double share = 1;
        double before = 0;
        for (int i = 0; i < MOST_SUBSTITUTIONS; i++) {
            if (!substitute(share)) {
                return false;
            }
            if (drift <= allowedDrift) {
                return true;
            }
            boolean swings = change * before < 0 && Math.abs(change) > 0.2 * Math.abs(before);
            share = swings ? 0.5 * share : share;
            before = change;
        }
        return true;
    }

    /** One pass from density to pressure to bulk state to density. */
    private boolean substitute(double share) {
        velocity = massFlux / density;
        pressure = before.first()
                ? before.pressure() - (1 + ENTRANCE_LOSS) * 0.5 * massFlux * velocity - friction
                : before.pressure()
                        - before.friction()
                        - friction
                        - 0.5 * (before.massFlux() + massFlux) * (velocity - before.velocity());
        if (!(pressure > floor)) {
            return false;
        }
        properties.bulk(pressure, before.totalEnthalpy() + wall.heatFlux * half - 0.5 * velocity * velocity, flow);
        flow.boilingTemperature = properties.saturationTemperature(pressure);
        flow.boilingShare = properties.boilingShare(pressure);
        flow.velocity = velocity;
        flow.hydraulicDiameter = diameter;
        flow.reynolds = massFlux * diameter / flow.bulkViscosity;
        flow.prandtl = flow.bulkHeatCapacity * flow.bulkViscosity / flow.bulkConductivity;
        flow.distanceOverDiameter = (before.distance() + 0.5 * length) / diameter;
        curvature = 1 + curved * (CurvedChannel.factor(flow.reynolds, bend) - 1);
        flow.frictionFactor = ChannelFriction.factor(flow.reynolds, relativeRoughness) * curvature;
        double newFriction = 0.25 * flow.frictionFactor * length / diameter * massFlux * massFlux / flow.bulkDensity;
        change = (flow.bulkDensity - density) / density;
        drift = Math.max(Math.abs(change), Math.abs(newFriction - friction) / pressure);
        density += share * (flow.bulkDensity - density);
        friction = newFriction;
        return true;
    }
}
