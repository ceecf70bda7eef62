package dev.penstock.turbomachinery.start;

import dev.penstock.combustion.WorkingFluid;
import dev.penstock.combustion.WorkingState;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.errors.PenstockException;
import dev.penstock.errors.Require;
import dev.penstock.numerics.RootFinder;
import dev.penstock.provenance.ModelCard;
import dev.penstock.turbomachinery.turbine.TurbineMap;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Starts turbopumps with nothing but the pressure in the tanks: propellant flows by itself, becomes gas in the warm jacket of
 * an expander or in the lit generator, and turns the turbines. All shafts are taken to keep the same share n of their speed.
 * <pre>
 * liquid    p1 = p_tank + n² Δp0 - K ṁ²                     Δp0 shut-off rise of the pumps, K by the design point
 * turbine   ṁ = map(p1, h1, p2),  p2 what the choked way out needs, at least the surroundings
 * jacket    h1 = h_tank + ε (h(p1, T_m) - h_tank),  ε = 1 - exp(-hA/(ṁ cp)),  hA as ṁ^0.8;  C dT_m/dt = -ṁ (h1 - h_tank)
 * shafts    Σ Iω_d² dn/dt = P_turbines/n - P_pumps n² - b P_pumps,        b breakaway torque over design torque
 * </pre>
 * Torque at rest is that at a hundredth of the speed. Integrated by Heun's method; the metal is one lump. A first estimate:
 * filling of the volumes, two-phase flow of the first instants and the opening of valves are left out.
 */
public final class TankHeadStart {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.tank-head-start",
            "Start on tank head",
            "Σ Iω_d² dn/dt = P_turbines/n - P_pumps n² - b P_pumps; flow by tank head, gas by warm metal or burner",
            "expanders and gas generators, lumped",
            "inertia and breakaway torque a factor of 2: so is the time",
            List.of("common practice, no source"));

    /** Torque that friction of seals and bearings asks before the shaft moves, over design torque: common practice, no source. */
    public static final double BREAKAWAY = 0.01;

    private static final double LONGEST_STEP = 0.02;
    private static final double LARGEST_GAIN = 0.01;
    private static final double LONGEST = 30;
    private static final double AT_REST = 0.01;
    private static final double LARGEST_RATIO = 30;
    private static final double NO_GAIN = 2e-4;

    /** Pressure before the turbines over that behind the engine from which gas flows (-). */
    private static final double LEAST_DROP = 1.02;

    /**
     * What pushes the propellant.
     *
     * @param tankPressure lowest pressure of the tanks that feed the gas (Pa)
     * @param pumpRise shut-off rise of the pumps at design speed (Pa)
     * @param resistance K of everything before the turbines (Pa/(kg/s)²), on the turbines' flow
     * @param surroundings pressure behind the engine (Pa)
     * @param wayOut choked area behind the turbines (m²)
     */
    public record Feed(double tankPressure, double pumpRise, double resistance, double surroundings, double wayOut) {

        public Feed {
            Require.positive("tank-head start", "tank pressure (Pa)", tankPressure);
            Require.positive("tank-head start", "pump rise (Pa)", pumpRise);
            Require.positive("tank-head start", "resistance (Pa/(kg/s)²)", resistance);
            Require.positive("tank-head start", "pressure behind the engine (Pa)", surroundings);
            Require.positive("tank-head start", "area of the way out (m²)", wayOut);
        }
    }

    /**
     * Warm metal of a jacket.
     *
     * @param coldEnthalpy enthalpy of the propellant as it enters (J/kg), on the scale of the gas
     * @param coldTemperature its temperature (K)
     * @param conductance hA at the design flow (W/K)
     * @param designFlow that flow (kg/s)
     * @param heatCapacity of the metal (J/K)
     * @param temperature of the metal at the start (K)
     */
    public record Metal(
            double coldEnthalpy,
            double coldTemperature,
            double conductance,
            double designFlow,
            double heatCapacity,
            double temperature) {

        public Metal {
            Require.positive("tank-head start", "conductance (W/K)", conductance);
            Require.positive("tank-head start", "heat capacity (J/K)", heatCapacity);
            Require.positive("tank-head start", "metal temperature (K)", temperature);
        }
    }

    /**
     * A turbine in the gas path.
     *
     * @param map the turbine as built
     * @param speed its design speed (rad/s)
     * @param flowShare its share of the gas (-)
     * @param dropShare its share of the enthalpy drop (-): one unless another stands in series
     * @param exitRatio exit over inlet pressure that the turbines behind it leave it (-); zero if none does
     */
    public record Stage(TurbineMap map, double speed, double flowShare, double dropShare, double exitRatio) {}

    /**
     * What turns.
     *
     * @param inertia Σ Iω² at design speed (J)
     * @param pumpPower Σ of the pumps at design speed (W)
     */
    public record Shafts(double inertia, double pumpPower) {

        public Shafts {
            Require.positive("tank-head start", "inertia at design speed (J)", inertia);
            Require.positive("tank-head start", "pump power (W)", pumpPower);
        }
    }

    private final WorkingFluid gas;
    private final Feed feed;
    private final Optional<Metal> metal;
    private final double burntEnthalpy;
    private final List<Stage> stages;
    private final Shafts shafts;

    /**
     * @param gas what drives the turbines
     * @param feed what pushes the propellant
     * @param metal warm jacket; empty where a burner makes the gas
     * @param burntEnthalpy enthalpy of a burner's gas (J/kg); not used with a jacket
     * @param stages turbines, the first in the gas path first
     * @param shafts what turns
     */
    public TankHeadStart(
            WorkingFluid gas,
            Feed feed,
            Optional<Metal> metal,
            double burntEnthalpy,
            List<Stage> stages,
            Shafts shafts) {
        this.gas = gas;
        this.feed = feed;
        this.metal = metal;
        this.burntEnthalpy = burntEnthalpy;
        this.stages = List.copyOf(stages);
        this.shafts = shafts;
    }

    /** Flow and gas at one moment. */
    private record Moment(double flow, double pressure, double temperature, double heat, double turbinePower) {}

    /**
     * @param target share of the design speed to reach (-)
     * @return how long it takes, or why it cannot be reached
     */
    public TankHeadRun to(double target) {
        Require.within("tank-head start", "share of the design speed (-)", target, 0.01, 1);
        double speed = 0;
        double warmth = metal.map(Metal::temperature).orElse(0.0);
        double time = 0;
        double used = 0;
        List<TankHeadRun.Point> points = new ArrayList<>();
        Moment now;
        try {
            now = moment(speed, warmth);
        } catch (PenstockException e) {
            return new TankHeadRun(false, 0, 0, 0, 0, warmth, "no gas flows at rest: " + e.getMessage(), points);
        }
        double breakaway = torque(now, 0) / (BREAKAWAY * shafts.pumpPower());
        points.add(point(time, speed, warmth, now));
        if (breakaway < 1) {
            return new TankHeadRun(
                    false, 0, 0, breakaway, 0, warmth, "the torque at rest does not break the shafts away", points);
        }
        String why = "";
        while (speed < target && why.isEmpty()) {
            try {
                double rate = rate(now, speed);
                double step = Math.min(LONGEST_STEP, LARGEST_GAIN / Math.max(rate, LARGEST_GAIN));
                Moment guess = moment(speed + step * rate, warmth - step * cooling(now));
                double mean = 0.5 * (rate + rate(guess, speed + step * rate));
                speed += step * mean;
                warmth -= 0.5 * step * (cooling(now) + cooling(guess));
                used += 0.5 * step * (now.flow() + guess.flow());
                time += step;
                now = moment(speed, warmth);
                points.add(point(time, speed, warmth, now));
                if (mean < NO_GAIN) {
                    why = "pumps and friction take all that the turbines give at this speed";
                } else if (time > LONGEST) {
                    why = "it is not reached in 30 s";
                }
            } catch (PenstockException e) {
                why = "the gas ends: " + e.getMessage();
            }
        }
        return new TankHeadRun(why.isEmpty(), speed, time, breakaway, used, warmth, why, points);
    }

    private static TankHeadRun.Point point(double time, double speed, double warmth, Moment m) {
        return new TankHeadRun.Point(time, speed, m.flow(), m.pressure(), m.temperature(), warmth);
    }

    private double cooling(Moment m) {
        return metal.map(body -> m.heat() / body.heatCapacity()).orElse(0.0);
    }

    /** Turbine torque times design speed (W). */
    private double torque(Moment m, double speed) {
        return m.turbinePower() / Math.max(speed, AT_REST);
    }

    private double rate(Moment m, double speed) {
        double pumps = shafts.pumpPower() * speed * speed;
        return (torque(m, speed) - pumps - BREAKAWAY * shafts.pumpPower()) / shafts.inertia();
    }

    // ---- flow and power at a speed and metal temperature

    private Moment moment(double speed, double warmth) {
        double head = feed.tankPressure() + feed.pumpRise() * speed * speed;
        double low = LEAST_DROP * feed.surroundings();
        if (!(head > low)) {
            throw new OutsideValidity(
                    CARD.id(),
                    "tank pressure and rise of the pumps (Pa)",
                    head,
                    "above " + low + " Pa, 2 % over the surroundings");
        }
        double pressure = RootFinder.between(
                        "flow by tank head",
                        p -> gasFlow(p, liquidFlow(head, p), speed, warmth) - liquidFlow(head, p),
                        low,
                        head * (1 - 1e-9),
                        1e-6)
                .value();
        double flow = liquidFlow(head, pressure);
        double enthalpy = enthalpy(pressure, flow, warmth);
        WorkingState inlet = gas.atPressureEnthalpy(pressure, enthalpy);
        double exit = exit(inlet, flow);
        double power = 0;
        if (exit < pressure) {
            double drop =
                    enthalpy - gas.atPressureEntropy(exit, inlet.entropy()).enthalpy();
            for (Stage stage : stages) {
                double own = Math.max(1e-3, drop * stage.dropShare());
                double efficiency = stage.map().efficiency(Math.max(speed, AT_REST) * stage.speed(), own);
                power += flow * stage.flowShare() * own * efficiency;
            }
        }
        double heat = metal.map(m -> flow * (enthalpy - m.coldEnthalpy())).orElse(0.0);
        return new Moment(flow, pressure, inlet.temperature(), heat, power);
    }

    private double liquidFlow(double head, double pressure) {
        return Math.sqrt(Math.max(0, head - pressure) / feed.resistance());
    }

    private double gasFlow(double pressure, double flow, double speed, double warmth) {
        double enthalpy = enthalpy(pressure, flow, warmth);
        WorkingState inlet = gas.atPressureEnthalpy(pressure, enthalpy);
        Stage first = stages.get(0);
        double exit = Math.max(exit(inlet, flow), first.exitRatio() * pressure);
        if (exit >= 0.9999 * pressure) {
            return 0;
        }
        double own = first.map()
                .at(gas, pressure, enthalpy, exit, Math.max(speed, AT_REST) * first.speed())
                .massFlow();
        return own / first.flowShare();
    }

    /** Pressure behind the turbines: what the choked way out needs for the flow, and no less than a turbine makes use of. */
    private double exit(WorkingState inlet, double flow) {
        double needed = Math.max(feed.surroundings(), flow / (feed.wayOut() * choking(inlet)));
        return Math.max(needed, inlet.pressure() / LARGEST_RATIO);
    }

    /**
     * @param state total state of a gas
     * @return its flow per area and pressure through a choked throat (s/m): γ (2/(γ+1))^((γ+1)/(2(γ-1)))/a
     */
    public static double choking(WorkingState state) {
        double g = state.gamma();
        return g * Math.pow(2 / (g + 1), (g + 1) / (2 * (g - 1))) / state.soundSpeed();
    }

    private double enthalpy(double pressure, double flow, double warmth) {
        if (metal.isEmpty()) {
            return burntEnthalpy;
        }
        Metal m = metal.get();
        double full = gas.atPressureTemperature(pressure, warmth).enthalpy() - m.coldEnthalpy();
        double capacity = full / Math.max(1, warmth - m.coldTemperature());
        double conductance = m.conductance() * Math.pow(flow / m.designFlow(), 0.8);
        double units = flow > 0 ? conductance / (flow * capacity) : Double.POSITIVE_INFINITY;
        return m.coldEnthalpy() + full * (1 - Math.exp(-units));
    }
}
