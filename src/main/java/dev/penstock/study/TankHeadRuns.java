package dev.penstock.study;

import dev.penstock.combustion.WorkingState;
import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cooling.jacket.JacketStation;
import dev.penstock.cycles.concept.Burner;
import dev.penstock.cycles.concept.CoolingCircuit;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.concept.ThrustTarget;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.ExhaustJet;
import dev.penstock.cycles.sheet.Station;
import dev.penstock.errors.InvalidInput;
import dev.penstock.quantities.Constants;
import dev.penstock.turbomachinery.mass.MassPart;
import dev.penstock.turbomachinery.pump.PumpMap;
import dev.penstock.turbomachinery.pump.PumpSizing;
import dev.penstock.turbomachinery.shaft.ShaftBalance;
import dev.penstock.turbomachinery.start.TankHeadRun;
import dev.penstock.turbomachinery.start.TankHeadStart;
import dev.penstock.turbomachinery.turbine.TurbineMap;
import dev.penstock.turbomachinery.turbine.TurbineSizing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Starts a balanced expander or gas-generator engine on the pressure in its own tanks. */
public final class TankHeadRuns {

    /** Heat capacity of chamber metal (J/(kg·K)), copper near room temperature: common practice, no source. */
    private static final double METAL = 385;

    /** What vacuum is taken as: gas leaves into it all the same (Pa). */
    private static final double VACUUM = 500;

    private final EngineBalance balance;
    private final boolean jacket;

    private TankHeadRuns(EngineBalance balance) {
        this.balance = balance;
        this.jacket = balance.concept().cycle().traits().livesOnJacketHeat();
        boolean generator = balance.concept().cycle().traits().burners().equals(List.of(Burner.GENERATOR));
        if (!jacket && !generator || balance.concept().cycle().traits().ownGas()) {
            throw new InvalidInput(
                    "",
                    "cycle",
                    balance.concept().cycle().id(),
                    "a start on tank head is followed for expanders and gas generators with one gas for all turbines; other"
                            + " cycles take bottled gas");
        }
    }

    /**
     * @param balance balanced engine
     * @param speedFraction share of the design speed to reach (-)
     * @param soak temperature of the jacket's metal before the start (K)
     * @return how long it takes, or why it cannot be reached
     * @throws InvalidInput if the cycle is neither an expander nor a gas generator
     */
    public static TankHeadRun of(EngineBalance balance, double speedFraction, double soak) {
        return new TankHeadRuns(balance).start(soak).to(speedFraction);
    }

    private TankHeadStart start(double soak) {
        TurbineSizing first = balance.turbines().stream()
                .max((a, b) -> Double.compare(a.duty().inletPressure(), b.duty().inletPressure()))
                .orElseThrow();
        boolean series = series(first);
        double flow = series
                ? first.duty().massFlow()
                : balance.turbines().stream()
                        .mapToDouble(t -> t.duty().massFlow())
                        .sum();
        double drops = balance.turbines().stream()
                .mapToDouble(TurbineSizing::isentropicDrop)
                .sum();
        List<TankHeadStart.Stage> stages = new ArrayList<>();
        stages.add(stage(first, flow, series, drops));
        balance.turbines().stream().filter(t -> t != first).forEach(t -> stages.add(stage(t, flow, series, drops)));
        double inertia = 0;
        double power = 0;
        for (ShaftBalance shaft : balance.shafts()) {
            if (!shaft.drivers().isEmpty()) {
                inertia += shaft.rotor().inertia() * shaft.speed() * shaft.speed();
                power += shaft.powerAbsorbed();
            }
        }
        return new TankHeadStart(
                first.duty().gas(),
                feed(first, flow),
                jacket ? Optional.of(metal(first, soak)) : Optional.empty(),
                first.duty().inletEnthalpy(),
                stages,
                new TankHeadStart.Shafts(inertia, power));
    }

    /** Whether a second turbine takes what the first one leaves. */
    private boolean series(TurbineSizing first) {
        return balance.turbines().stream()
                .anyMatch(t -> t.duty().inletPressure() < 0.999 * first.duty().inletPressure()
                        && Math.abs(t.duty().massFlow() / first.duty().massFlow() - 1) < 1e-6);
    }

    private static TankHeadStart.Stage stage(TurbineSizing t, double flow, boolean series, double drops) {
        return new TankHeadStart.Stage(
                new TurbineMap(t),
                t.speed(),
                series ? 1 : t.duty().massFlow() / flow,
                series ? t.isentropicDrop() / drops : 1,
                series ? t.outlet().pressure() / t.inlet().pressure() : 0);
    }

    private TankHeadStart.Feed feed(TurbineSizing first, double flow) {
        double inlet = first.duty().inletPressure();
        // a generator takes the lower of two tanks, and the lower of two discharges as the pumps come up
        double tank = jacket
                ? balance.tankOutlet(Side.FUEL).pressure()
                : Math.min(
                        balance.tankOutlet(Side.OXIDIZER).pressure(),
                        balance.tankOutlet(Side.FUEL).pressure());
        double rise = (jacket ? discharge(Side.FUEL) : Math.min(discharge(Side.OXIDIZER), discharge(Side.FUEL))) - tank;
        double shutOff = jacket ? shutOff(Side.FUEL) : 1;
        double resistance = ((shutOff - 1) * rise + tank + rise - inlet) / (flow * flow);
        boolean ground = balance.concept().thrust().kind() == ThrustTarget.Kind.SEA_LEVEL_THRUST;
        return new TankHeadStart.Feed(
                tank, shutOff * rise, resistance, ground ? Constants.STANDARD_ATMOSPHERE : VACUUM, wayOut(flow));
    }

    /** Into the unlit chamber where the gas goes there, else through the exhaust nozzle that the design flow fills. */
    private double wayOut(double flow) {
        if (balance.exhausts().stream().noneMatch(ExhaustJet::ofTurbines)) {
            return balance.concept().chambers() * balance.chamber().throatArea();
        }
        TurbineSizing last = balance.turbines().stream()
                .min((a, b) -> Double.compare(a.outlet().pressure(), b.outlet().pressure()))
                .orElseThrow();
        WorkingState out = last.outlet();
        return flow / (out.pressure() * TankHeadStart.choking(out));
    }

    private TankHeadStart.Metal metal(TurbineSizing first, double soak) {
        JacketResult result = fuelJacket();
        double difference = result.stations().stream()
                .mapToDouble((JacketStation s) -> s.coolantSideWallTemperature() - s.coolantTemperature())
                .average()
                .orElseThrow();
        double mass = balance.mass().items().stream()
                .filter(i -> i.part() == MassPart.CHAMBER)
                .mapToDouble(i -> i.mass().mode())
                .sum();
        Station cold = balance.tankOutlet(Side.FUEL);
        return new TankHeadStart.Metal(
                cold.enthalpy(),
                cold.temperature(),
                balance.concept().chambers() * result.heatLoad() / difference,
                first.duty().massFlow(),
                METAL * mass,
                soak);
    }

    /** The jacket that the fuel passes last. */
    private JacketResult fuelJacket() {
        List<CoolingCircuit> circuits = balance.concept().cooling();
        for (int i = 0; i < circuits.size(); i++) {
            if (circuits.get(i).coolant() == Side.FUEL && circuits.get(i).returns()) {
                return balance.cooling().get(i);
            }
        }
        throw new IllegalStateException("no jacket of the fuel");
    }

    private List<PumpSizing> pumps(Side side) {
        String id = balance.concept().feed(side).propellant().id();
        return balance.pumps().stream()
                .filter(p -> p.duty().propellant().id().equals(id))
                .toList();
    }

    private double discharge(Side side) {
        return pumps(side).stream()
                .mapToDouble(p -> p.duty().dischargePressure())
                .max()
                .orElseThrow();
    }

    private double shutOff(Side side) {
        return new PumpMap(pumps(side).get(0)).shutOff();
    }
}
