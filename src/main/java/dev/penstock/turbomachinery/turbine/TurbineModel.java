package dev.penstock.turbomachinery.turbine;

import dev.penstock.combustion.WorkingState;
import dev.penstock.errors.Warning;
import dev.penstock.provenance.LimitCheck;
import dev.penstock.provenance.ModelCard;
import dev.penstock.turbomachinery.speed.SpeedBound;
import dev.penstock.turbomachinery.speed.SpeedLimit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Sizes a turbine for a duty at a shaft speed: kind, stages, pitch diameter, blades, efficiency and power.
 * <pre>
 * Δhs = h1 - h(p2, s1),  C0 = √(2Δhs),  U = min(ν_best C0/√n, pitch-line limit, ω D_max/2),  D = 2U/ω
 * η from the velocity triangles at ν = U/C0,  power = ṁ η Δhs
 * </pre>
 * The wheel is made as large as the best velocity ratio asks, but not larger than the blade speed allows nor than
 * D_max = k τ^(1/3), the pitch diameter that built turbines have for their torque.
 *
 * <p>Inside a solver loop settle kind and number of stages first with {@link #choose}; on a settled design {@link #work} is smooth
 * in every number of the duty and in the speed. Has no state.
 */
public final class TurbineModel {

    /** Equation, range and source of the isentropic work. */
    public static final ModelCard CARD = new ModelCard(
            "turbomachinery.turbine-work",
            "Turbine work from the isentropic drop of the real gas",
            "Δhs = h1 - h(p2, s1); C0 = √(2Δhs); power = ṁ η Δhs; h2 = h1 - η Δhs",
            "that of the gas model",
            "that of the gas model, and of the efficiency",
            List.of("nasa-sp-125", "nasa-sp-8110"));

    /** Pressure ratio up to which stages share the drop between them. */
    private static final double REACTION_PRESSURE_RATIO = 3;

    /** Velocity ratio below which two rows per stage are used, and above which reaction [nasa-sp-8110, from memory]. */
    private static final double TWO_ROWS_BELOW = 0.3;

    private static final double REACTION_ABOVE = 0.45;
    private static final int MOST_STAGES = 4;

    /** Efficiency that one more stage must bring (-): common practice, no source. */
    private static final double WORTH_OF_A_STAGE = 0.02;

    /** Efficiency given up to keep the annulus limit, per unit of excess (-): common practice, no source. */
    private static final double COST_OF_ANNULUS = 0.3;

    /** Admission below which reaction stages leak too much (-): common practice, no source. */
    private static final double FULL_ADMISSION = 0.9;

    /** Admission below which the reader is told (-). */
    private static final double LITTLE_ADMISSION = 0.5;

    /** Velocity ratio below which the triangles are far from any published curve (-). */
    private static final double SLOW_WHEEL = 0.1;

    private static final double BLADE_DENSITY = 8200;

    /** Oxidizer that is warmer counts as hot gas (K): common practice, no source. */
    private static final double ROOM_TEMPERATURE = 298.15;

    private static final String HOT_OXIDIZER =
            "oxygen-rich hot gas: metals can ignite; needs burn-resistant alloys or coatings, clean passages and no rubbing";
    private static final String COLD_OXIDIZER =
            "cold oxidizer: a rub or a particle can ignite metals; needs clean passages and no rubbing";

    /**
     * @param duty what is offered
     * @param speed shaft speed (rad/s)
     * @param design what is fixed
     * @return the design with kind and number of stages settled
     */
    public TurbineDesign choose(TurbineDuty duty, double speed, TurbineDesign design) {
        if (design.settled()) {
            return design;
        }
        return choose(new GasExpansion(duty), speed, design);
    }

    private TurbineDesign choose(GasExpansion gas, double speed, TurbineDesign design) {
        int fixed = design.stages().orElse(0);
        if (design.type() != TurbineType.AUTOMATIC) {
            return design.type() == TurbineType.REACTION && fixed == 0
                    ? best(gas, speed, design, TurbineType.REACTION)
                    : design.withStages(design.type(), Math.max(fixed, 1));
        }
        double ratio = TurbineWheel.greatestPitchLineSpeed(gas, speed, design) / gas.spoutingVelocity;
        boolean shared = gas.duty.pressureRatio() <= REACTION_PRESSURE_RATIO || ratio > REACTION_ABOVE;
        if (fixed > 1 || fixed == 1 && shared) {
            return design.withStages(TurbineType.REACTION, fixed);
        }
        if (shared) {
            return best(gas, speed, design, TurbineType.REACTION, TurbineType.IMPULSE);
        }
        return design.withStages(ratio < TWO_ROWS_BELOW ? TurbineType.VELOCITY_COMPOUNDED : TurbineType.IMPULSE, 1);
    }

    /** The stages of these kinds with the best efficiency, less what each further stage and a wide annulus cost. */
    private static TurbineDesign best(GasExpansion gas, double speed, TurbineDesign design, TurbineType... kinds) {
        TurbineDesign chosen = design.withStages(kinds[kinds.length - 1], 1);
        double best = Double.NEGATIVE_INFINITY;
        for (TurbineType kind : kinds) {
            for (int n = 1; n <= MOST_STAGES; n++) {
                TurbineDesign candidate = design.withStages(kind, n);
                TurbineWheel wheel = new TurbineWheel(gas, speed, candidate);
                boolean starved = kind == TurbineType.REACTION && wheel.admission < FULL_ADMISSION && kinds.length > 1;
                double excess = Math.max(0, wheel.annulusSpeed / design.annulusSpeedLimit() - 1);
                double score = wheel.efficiency - WORTH_OF_A_STAGE * (n - 1) - COST_OF_ANNULUS * excess;
                if (!starved && score > best) {
                    chosen = candidate;
                    best = score;
                }
            }
        }
        return chosen;
    }

    /**
     * @param duty what is offered
     * @param speed shaft speed (rad/s)
     * @param design what is fixed; settled where the result must not jump
     * @return drop, efficiency, power and outlet enthalpy
     */
    public TurbineWork work(TurbineDuty duty, double speed, TurbineDesign design) {
        GasExpansion gas = new GasExpansion(duty);
        TurbineDesign settled = design.settled() ? design : choose(gas, speed, design);
        double efficiency = settled.efficiency().isPresent()
                ? settled.efficiency().getAsDouble()
                : new TurbineWheel(gas, speed, settled).efficiency;
        return work(gas, efficiency);
    }

    /**
     * @param duty what is offered
     * @param speed a shaft speed near the answer (rad/s)
     * @param design what is fixed, settled
     * @return speed at which the last rotor's annulus reaches its limit with nozzles of 30° (rad/s)
     */
    public SpeedLimit annulusLimit(TurbineDuty duty, double speed, TurbineDesign design) {
        return new SpeedLimit(
                SpeedBound.ANNULUS, TurbineWheel.annulusLimitedSpeed(new GasExpansion(duty), speed, design));
    }

    private static TurbineWork work(GasExpansion gas, double efficiency) {
        double work = efficiency * gas.drop;
        return new TurbineWork(gas.drop, efficiency, gas.duty.massFlow() * work, gas.duty.inletEnthalpy() - work);
    }

    /**
     * @param name name of the turbine in the cycle
     * @param duty what is offered
     * @param speed shaft speed (rad/s)
     * @param design what is fixed
     * @return the turbine, with its limits and warnings
     */
    public TurbineSizing size(String name, TurbineDuty duty, double speed, TurbineDesign design) {
        GasExpansion gas = new GasExpansion(duty);
        TurbineDesign settled = design.settled() ? design : choose(gas, speed, design);
        TurbineWheel wheel = new TurbineWheel(gas, speed, settled);
        TurbineWork work = work(gas, settled.efficiency().orElse(wheel.efficiency));
        WorkingState exit = duty.gas().atPressureEnthalpy(duty.exitPressure(), work.outletEnthalpy());
        List<LimitCheck> limits = new ArrayList<>();
        limits.add(LimitCheck.atMost(
                TurbineLimit.PITCH_LINE_SPEED,
                name,
                wheel.pitchLineSpeed,
                settled.pitchLineSpeedLimit(),
                "m/s",
                "nasa-sp-8110"));
        limits.add(LimitCheck.atMost(
                TurbineLimit.ANNULUS_SPEED,
                name,
                wheel.annulusSpeed,
                settled.annulusSpeedLimit(),
                "m/s",
                "nasa-sp-8110"));
        limits.add(LimitCheck.atMost(
                TurbineLimit.INLET_TEMPERATURE,
                name,
                gas.inlet.temperature(),
                settled.inletTemperatureLimit(),
                "K",
                "nasa-sp-125"));
        return new TurbineSizing(
                name,
                duty,
                wheel.settled,
                gas.inlet,
                exit,
                speed,
                work.efficiency(),
                work.isentropicDrop(),
                work.power(),
                gas.spoutingVelocity,
                wheel.pitchLineSpeed / gas.spoutingVelocity,
                wheel.pitchLineSpeed,
                settled.stages().orElseThrow(),
                wheel.diameter,
                wheel.height,
                wheel.admission,
                wheel.annulusSpeed,
                untaperedRootStress(wheel.annulusSpeed),
                limits,
                warnings(name, settled, wheel, gas, exit));
    }

    /**
     * Centrifugal stress at the root of a blade of constant section: σ = ρ A ω²/(2π).
     *
     * @param annulusSpeed ω√A (m/s)
     * @return stress for an alloy of 8200 kg/m³ (Pa); a tapered blade has 0.5 to 0.7 of it
     */
    public static double untaperedRootStress(double annulusSpeed) {
        return BLADE_DENSITY * annulusSpeed * annulusSpeed / (2 * Math.PI);
    }

    private static List<Warning> warnings(
            String name, TurbineDesign design, TurbineWheel wheel, GasExpansion gas, WorkingState exit) {
        double velocityRatio = wheel.pitchLineSpeed / gas.spoutingVelocity;
        List<Warning> warnings = new ArrayList<>();
        if (design.oxygenRich()) {
            warnings.add(new Warning(name, gas.inlet.temperature() > ROOM_TEMPERATURE ? HOT_OXIDIZER : COLD_OXIDIZER)
                    .asAside());
        }
        if (exit.wet()) {
            warnings.add(
                    new Warning(
                            name,
                            "the gas leaves wet: drops brake and wear the blades, and the efficiency given knows nothing of them"));
        }
        if (wheel.admission < LITTLE_ADMISSION) {
            warnings.add(new Warning(
                    name,
                    String.format(
                            Locale.ROOT,
                            "gas reaches %.0f %% of the circumference only: the flow is too small for blades of %.1f mm all around",
                            100 * wheel.admission,
                            1000 * wheel.height)));
        }
        if (design.efficiency().isEmpty() && velocityRatio < SLOW_WHEEL) {
            warnings.add(new Warning(
                    name,
                    String.format(
                            Locale.ROOT,
                            "velocity ratio %.3f is so low that the efficiency of %.2f is uncertain by ten points",
                            velocityRatio,
                            wheel.efficiency)));
        }
        return warnings;
    }
}
