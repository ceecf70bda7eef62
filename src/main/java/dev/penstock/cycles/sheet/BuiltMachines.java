package dev.penstock.cycles.sheet;

import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.concept.TurbinePlace;
import dev.penstock.cycles.origin.Machines;
import dev.penstock.cycles.origin.PartKind;
import dev.penstock.cycles.origin.PumpKey;
import dev.penstock.errors.LimitReached;
import dev.penstock.errors.PropertyFailure;
import dev.penstock.numerics.RootFinder;
import dev.penstock.turbomachinery.pump.PumpDuty;
import dev.penstock.turbomachinery.pump.PumpMap;
import dev.penstock.turbomachinery.pump.PumpModel;
import dev.penstock.turbomachinery.pump.PumpPoint;
import dev.penstock.turbomachinery.pump.PumpSizing;
import dev.penstock.turbomachinery.turbine.TurbineDuty;
import dev.penstock.turbomachinery.turbine.TurbineMap;
import dev.penstock.turbomachinery.turbine.TurbinePoint;
import dev.penstock.turbomachinery.turbine.TurbineSizing;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/** Main pumps, turbines and gas generator of an engine as built, for use away from their design point. */
public final class BuiltMachines {

    private static final double SLOWEST = 0.1;
    private static final double FASTEST = 2.0;
    private static final double STEP = 0.87;

    private final Map<Side, PumpMap> pumps = new EnumMap<>(Side.class);
    private final Map<TurbinePlace, TurbineMap> turbines = new EnumMap<>(TurbinePlace.class);
    private final Map<Side, PumpSizing> boosts = new EnumMap<>(Side.class);
    private final Optional<Station> generator;

    public BuiltMachines(EngineBalance balance) {
        Machines machines = balance.machines();
        for (Side side : Side.values()) {
            machines.pump(PumpKey.main(side)).ifPresent(pump -> pumps.put(side, new PumpMap(pump)));
            machines.pump(new PumpKey(side, PumpKey.Role.BOOST)).ifPresent(pump -> boosts.put(side, pump));
        }
        machines.turbines().forEach((place, turbine) -> turbines.put(place, new TurbineMap(turbine)));
        generator = balance.components().stream()
                .filter(c -> c.kind() == PartKind.GAS_GENERATOR)
                .findFirst()
                .map(c -> balance.station(c.outlets().get(0)));
    }

    PumpSizing pump(Side side) {
        return pumps.get(side).pump();
    }

    TurbineSizing turbine(TurbinePlace place) {
        return turbines.get(place).turbine();
    }

    /** Pressure that a boost pump was sized to add (Pa). */
    Optional<Double> boostRise(Side side) {
        return Optional.ofNullable(boosts.get(side))
                .map(b -> b.duty().dischargePressure() - b.duty().inlet().pressure());
    }

    /** Flow through a boost pump's hydraulic turbine over that through the boost pump (-). */
    double driveShare(Side side) {
        return pump(side).duty().massFlow() / boosts.get(side).duty().massFlow() - 1;
    }

    /** A pump at a speed; the model knows the liquid. */
    PumpPoint at(Side side, PumpDuty duty, double speed, PumpModel model) {
        return pumps.get(side).at(duty, speed, model.head(duty));
    }

    TurbinePoint at(TurbinePlace place, TurbineDuty duty, double speed) {
        return turbines.get(place)
                .at(duty.gas(), duty.inletPressure(), duty.inletEnthalpy(), duty.exitPressure(), speed);
    }

    /**
     * Speed over design speed at which a pump gives the pressure asked for: the liquid is asked once for the head that this takes,
     * and the pump's curve for the speed that gives it.
     *
     * @throws LimitReached if it does not up to twice its design speed
     */
    double speedRatio(Side side, PumpDuty duty, PumpModel model) {
        double needed;
        try {
            needed = model.head(duty);
        } catch (PropertyFailure e) {
            throw beyond(side, duty);
        }
        DoubleUnaryOperator excess = ratio -> pumps.get(side).head(duty.volumeFlow(), ratio) / needed - 1;
        double low = 1;
        double high = 1;
        while (excess.applyAsDouble(low) > 0) {
            high = low;
            low *= STEP;
            require(low > SLOWEST, side, duty);
        }
        while (excess.applyAsDouble(high) < 0) {
            low = high;
            high /= STEP;
            require(high < FASTEST, side, duty);
        }
        if (low == high) {
            return low;
        }
        return RootFinder.between("speed of the " + side.key() + " pump", excess, low, high, 1e-12)
                .value();
    }

    private static void require(boolean inside, Side side, PumpDuty duty) {
        if (!inside) {
            throw beyond(side, duty);
        }
    }

    private static LimitReached beyond(Side side, PumpDuty duty) {
        return new LimitReached(
                "speed of the " + side.key() + " pump",
                String.format(
                        Locale.ROOT,
                        "the %s pump as built does not give %.4g MPa at %.4g kg/s between %.1f and %.1f of its design speed",
                        side.key(),
                        duty.dischargePressure() / 1e6,
                        duty.massFlow(),
                        SLOWEST,
                        FASTEST));
    }

    /** Choked turbine nozzles: at the same gas temperature the pressure before them goes with the flow (Pa). */
    Optional<Double> generatorPressure(double gasFlow) {
        return generator.map(g -> g.pressure() * gasFlow / g.massFlow());
    }
}
