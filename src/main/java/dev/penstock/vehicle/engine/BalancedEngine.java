package dev.penstock.vehicle.engine;

import dev.penstock.cycles.concept.CycleTraits;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.origin.PartKey;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.ExhaustJet;
import dev.penstock.cycles.sheet.Station;
import dev.penstock.errors.Require;
import dev.penstock.fluids.Propellant;
import dev.penstock.quantities.Constants;
import dev.penstock.turbomachinery.shaft.ShaftBalance;
import dev.penstock.turbomachinery.start.BottleStart;
import dev.penstock.turbomachinery.start.SpinUpDemand;
import dev.penstock.turbomachinery.start.StartGas;
import dev.penstock.turbomachinery.turbine.TurbineMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;

/**
 * An engine just balanced, as its vehicle sees it. Thrust against ambient pressure is asked of the balance once, at
 * closely spaced pressures, and interpolated linearly: exact while the nozzle flows full, since thrust is then linear in
 * ambient pressure, and within 0.1 % where the flow has separated.
 */
public final class BalancedEngine implements EnginePerformance {

    private static final double HIGHEST_PRESSURE = 1.2 * Constants.STANDARD_ATMOSPHERE;
    private static final int STEPS = 48;
    /** Regulated pressure of start gas over that of the full bottle (-): common practice, no source. */
    private static final double SUPPLY_SHARE = 0.1;

    /** Ambient pressures (Pa) between which the thrust is a straight line. */
    public static final List<Double> PRESSURES = IntStream.rangeClosed(0, STEPS)
            .mapToObj(i -> HIGHEST_PRESSURE * i / STEPS)
            .toList();

    private final EngineBalance balance;
    private final double[] thrust = new double[STEPS + 1];
    private final LoadedPropellant oxidizer;
    private final LoadedPropellant fuel;
    private final Optional<LoadedPropellant> diluent;
    private final double mass;
    private final Map<StartNeeds.Bottle, StartNeeds> starts = new ConcurrentHashMap<>();

    /**
     * @param balance the engine
     */
    public BalancedEngine(EngineBalance balance) {
        this.balance = balance;
        for (int i = 0; i <= STEPS; i++) {
            thrust[i] = balance.thrustAt(PRESSURES.get(i));
        }
        this.oxidizer = loaded(balance, Side.OXIDIZER);
        this.fuel = loaded(balance, Side.FUEL);
        this.diluent = balance.concept().diluent().map(d -> loaded(d.fluid(), balance.outlet(PartKey.diluentTank())));
        this.mass = balance.mass().total().mode();
    }

    private static LoadedPropellant loaded(EngineBalance balance, Side side) {
        return loaded(balance.concept().feed(side).propellant(), balance.tankOutlet(side));
    }

    private static LoadedPropellant loaded(Propellant propellant, Station outlet) {
        return new LoadedPropellant(propellant, outlet.density(), outlet.temperature(), outlet.pressure());
    }

    @Override
    public String name() {
        return balance.concept().name();
    }

    @Override
    public double vacuumThrust() {
        return thrust[0];
    }

    @Override
    public double massFlow() {
        return balance.engine().massFlow();
    }

    @Override
    public double thrustAt(double ambientPressure) {
        Require.within("engine", "ambient pressure (Pa)", ambientPressure, 0, HIGHEST_PRESSURE);
        double position = ambientPressure / HIGHEST_PRESSURE * STEPS;
        int i = (int) Math.min(position, STEPS - 1.0);
        return thrust[i] + (position - i) * (thrust[i + 1] - thrust[i]);
    }

    @Override
    public double mixtureRatio() {
        return balance.engine().mixtureRatio();
    }

    @Override
    public Optional<LoadedPropellant> diluent() {
        return diluent;
    }

    @Override
    public double diluentShare() {
        return balance.engine().diluentFlow() / balance.engine().massFlow();
    }

    @Override
    public LoadedPropellant oxidizer() {
        return oxidizer;
    }

    @Override
    public LoadedPropellant fuel() {
        return fuel;
    }

    @Override
    public double mass() {
        return mass;
    }

    @Override
    public double exitArea() {
        return balance.concept().chambers() * balance.chamber().exitArea()
                + balance.exhausts().stream().mapToDouble(ExhaustJet::exitArea).sum();
    }

    @Override
    public double chamberPressure() {
        return balance.engine().chamberPressure();
    }

    @Override
    public StartNeeds starts(StartNeeds.Bottle bottle) {
        return starts.computeIfAbsent(bottle, this::startsFrom);
    }

    private StartNeeds startsFrom(StartNeeds.Bottle bottle) {
        CycleTraits traits = balance.concept().cycle().traits();
        double igniter = StartNeeds.igniter(this, bottle.count());
        if (!traits.turbines() || traits.livesOnJacketHeat()) {
            return new StartNeeds(0, 0, igniter);
        }
        BottleStart from = new BottleStart(
                bottle.gas(),
                bottle.fullPressure(),
                bottle.temperature(),
                SUPPLY_SHARE * bottle.fullPressure(),
                Constants.STANDARD_ATMOSPHERE);
        double gas = 0;
        double shells = 0;
        for (ShaftBalance shaft : balance.shafts()) {
            if (shaft.turbines().isEmpty()) {
                continue;
            }
            StartGas start = from.sizeFor(
                    SpinUpDemand.of(shaft, StartNeeds.SPEED, StartNeeds.RISE),
                    new TurbineMap(shaft.turbines().get(0)),
                    bottle.count());
            gas += start.gasLoaded();
            shells += start.bottleMass();
        }
        return new StartNeeds(gas, shells, igniter);
    }
}
