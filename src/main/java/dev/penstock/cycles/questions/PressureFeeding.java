package dev.penstock.cycles.questions;

import dev.penstock.cycles.concept.FeedDesign;
import dev.penstock.cycles.concept.PressurizationDesign;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.EngineSummary;
import dev.penstock.cycles.sheet.Station;
import dev.penstock.cycles.solving.Balancer;
import dev.penstock.errors.LimitReached;
import dev.penstock.errors.PenstockException;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.quantities.Constants;
import dev.penstock.turbomachinery.feed.PressurantBottle;
import dev.penstock.turbomachinery.feed.UllageGas;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Sizes tanks and pressurant of a balanced engine without pumps. The balance is the start of life. Not thread-safe.
 */
final class PressureFeeding {

    private static final int LOADINGS = 5;
    private static final double NEGLIGIBLE = 1e-3;

    private final Balancer balancer;
    private final EngineBalance balance;
    private final PressurizationDesign design;
    private final double propellantMass;
    private double loadedRatio;

    PressureFeeding(Balancer balancer, EngineBalance balance, PressurizationDesign design) {
        this.balancer = balancer;
        this.balance = balance;
        this.design = design;
        this.loadedRatio = balance.engine().mixtureRatio();
        this.propellantMass = design.propellantMass().orElse(balance.engine().massFlow() * design.burnTime());
    }

    PressureFeed make() {
        return design.feed() == PressurizationDesign.Feed.BLOWDOWN ? blowdown() : regulated();
    }

    // ---- regulated, with or without heat

    private PressureFeed regulated() {
        List<PressureFeed.Tank> tanks = new ArrayList<>();
        List<PressurantBottle.Demand> demands = new ArrayList<>();
        for (Side side : Side.values()) {
            Station outlet = balance.tankOutlet(side);
            double mass = load(side);
            double volume = mass / outlet.density() / (1 - design.initialUllage(side));
            tanks.add(new PressureFeed.Tank(
                    side,
                    balance.concept().feed(side).propellant(),
                    mass,
                    volume,
                    outlet.pressure(),
                    outlet.pressure(),
                    0,
                    vapourPressure(side),
                    0));
            demands.add(new PressurantBottle.Demand(outlet.pressure(), volume, design.collapse(side)));
        }
        PressurantBottle plain = bottle(OptionalDouble.empty(), demands);
        double time = propellantMass / balance.engine().massFlow();
        List<PressureFeed.Point> points = List.of(atDesign(0, 0), atDesign(1, time));
        if (design.feed() == PressurizationDesign.Feed.REGULATED) {
            return new PressureFeed(design, tanks, points, Optional.of(plain), Optional.empty(), Optional.empty());
        }
        PressurantBottle heated = bottle(OptionalDouble.of(design.heatedTo()), demands);
        double power = heated.heat() / time;
        double exhaust = balance.engine().vacuumIsp() * Constants.STANDARD_GRAVITY;
        double share = power / (0.5 * balance.engine().vacuumThrust() * exhaust);
        // v² goes with the enthalpy drop, so a small share of the jet's power costs half of it in velocity.
        OptionalDouble cost = design.heatSource() == PressurizationDesign.HeatSource.NOZZLE_COIL
                ? OptionalDouble.of(0.5 * share * balance.engine().vacuumIsp())
                : OptionalDouble.empty();
        return new PressureFeed(
                design,
                tanks,
                points,
                Optional.of(heated),
                Optional.of(plain),
                Optional.of(new PressureFeed.Heater(design.heatSource(), power, share, cost)));
    }

    private PressurantBottle bottle(OptionalDouble heatedTo, List<PressurantBottle.Demand> demands) {
        return PressurantBottle.of(
                design.gas().fluid(), design.bottlePressure(), design.bottleTemperature(), heatedTo, demands);
    }

    private PressureFeed.Point atDesign(double expelled, double time) {
        EngineSummary e = balance.engine();
        return new PressureFeed.Point(
                expelled,
                time,
                balance.tankOutlet(Side.OXIDIZER).pressure(),
                balance.tankOutlet(Side.FUEL).pressure(),
                e.chamberPressure(),
                e.mixtureRatio(),
                e.vacuumThrust(),
                e.vacuumIsp(),
                e.massFlow(),
                Math.min(
                        balance.concept().feed(Side.OXIDIZER).injectorLoss(),
                        balance.concept().feed(Side.FUEL).injectorLoss()));
    }

    // ---- blowdown

    private PressureFeed blowdown() {
        double[] vapour = new double[2];
        double[] begin = new double[2];
        UllageGas[] gas = new UllageGas[2];
        for (Side side : Side.values()) {
            int i = side.ordinal();
            vapour[i] = vapourPressure(side);
            begin[i] = balance.tankOutlet(side).pressure();
            double partial = begin[i] - vapour[i];
            if (!(partial > 0.05 * begin[i])) {
                throw new LimitReached(
                        "pressurization.feed",
                        String.format(
                                Locale.ROOT,
                                "the %s itself has a vapour pressure of %.4g MPa of the %.4g MPa in its tank; no gas is"
                                        + " left to expand",
                                side.key(),
                                vapour[i] / 1e6,
                                begin[i] / 1e6));
            }
            FluidState start = design.gas()
                    .fluid()
                    .atPressureTemperature(partial, balance.concept().feed(side).tankTemperature());
            gas[i] = new UllageGas(design.gas().fluid(), start, design.law(), design.exponent());
        }
        BlowdownLife life = new BlowdownLife(balancer, balance, (side, gone) -> {
            double ratio = 1 + gone * (1 - design.initialUllage(side)) / design.initialUllage(side);
            return vapour[side.ordinal()] + gas[side.ordinal()].at(ratio).pressure();
        });
        List<PressureFeed.Point> points = loadedToEndTogether(life);
        List<PressureFeed.Tank> tanks = new ArrayList<>();
        PressureFeed.Point last = points.get(points.size() - 1);
        for (Side side : Side.values()) {
            double mass = load(side);
            double volume = mass / balance.tankOutlet(side).density() / (1 - design.initialUllage(side));
            tanks.add(new PressureFeed.Tank(
                    side,
                    balance.concept().feed(side).propellant(),
                    mass,
                    volume,
                    begin[side.ordinal()],
                    side == Side.OXIDIZER ? last.oxidizerTankPressure() : last.fuelTankPressure(),
                    gas[side.ordinal()].start().density() * design.initialUllage(side) * volume,
                    vapour[side.ordinal()],
                    life.residual(side)));
        }
        return new PressureFeed(design, tanks, points, Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** The mixture ratio drifts, so the tanks are loaded by what the engine burns over its life, not at its start. */
    private List<PressureFeed.Point> loadedToEndTogether(BlowdownLife life) {
        List<PressureFeed.Point> points = List.of();
        double lastRatio = 0;
        double lastExcess = 0;
        for (int round = 0; round < LOADINGS; round++) {
            points = life.run(load(Side.OXIDIZER), load(Side.FUEL));
            double left = life.residual(Side.OXIDIZER) + life.residual(Side.FUEL);
            if (left < NEGLIGIBLE * propellantMass || round == LOADINGS - 1) {
                break;
            }
            double burnt =
                    (load(Side.OXIDIZER) - life.residual(Side.OXIDIZER)) / (load(Side.FUEL) - life.residual(Side.FUEL));
            double excess = Math.log(burnt / loadedRatio);
            double slope = round == 0 ? -1 : (excess - lastExcess) / Math.log(loadedRatio / lastRatio);
            lastRatio = loadedRatio;
            lastExcess = excess;
            // A secant in the logarithm; its first step takes the burnt ratio itself.
            loadedRatio *= Math.exp(-excess / Math.min(slope, -0.1));
        }
        return points;
    }

    // ---- of the balance

    private double load(Side side) {
        double ratio = loadedRatio;
        return propellantMass * (side == Side.OXIDIZER ? ratio : 1) / (1 + ratio);
    }

    /** Vapour fills the ullage beside the gas, and more evaporates as it grows; nothing for propellants without the datum. */
    private double vapourPressure(Side side) {
        FeedDesign feed = balance.concept().feed(side);
        try {
            return feed.propellant().fluid().vapourPressure(feed.tankTemperature());
        } catch (PenstockException e) {
            return 0;
        }
    }
}
