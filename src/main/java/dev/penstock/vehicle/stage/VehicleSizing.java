package dev.penstock.vehicle.stage;

import dev.penstock.errors.Require;
import dev.penstock.errors.Warning;
import dev.penstock.vehicle.plan.VehiclePlan;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A vehicle that closes.
 *
 * @param plan what was asked for
 * @param startMass start mass: everything on the pad at ignition, payload, dry mass and all loaded propellant (kg)
 * @param payload payload (kg)
 * @param ispFactor specific impulse needed over that of the engines (-), where payload and start mass were both given
 * @param stages stages as sized, lowest first
 * @param warnings what the reader must know
 */
public record VehicleSizing(
        VehiclePlan plan,
        double startMass,
        double payload,
        OptionalDouble ispFactor,
        List<StageSizing> stages,
        List<Warning> warnings) {

    /** What is most often mixed up, for the reader of any output. */
    public static final List<String> DEFINITIONS = List.of(
            "Start mass is everything on the pad at ignition: payload, dry mass and all loaded propellant. The start"
                    + " mass of an upper stage is what stands on it when it ignites.",
            "Propellant mass is oxidizer and fuel as loaded into the tanks of one stage, residuals and start-up"
                    + " propellant included; it is part of the start mass.",
            "Dry mass is the stage without propellant and without what it carries.",
            "Delta-v of a stage is g0 Isp ln(m0/m1) with the specific impulse in vacuum; losses, back-pressure"
                    + " included, are terms of the mission's budget.");

    public VehicleSizing {
        Require.positive("vehicle", "start mass (kg)", startMass);
        Require.notNegative("vehicle", "payload (kg)", payload);
        stages = List.copyOf(stages);
        warnings = List.copyOf(warnings);
    }

    public VehicleSizing withIspFactor(double factor, double givenPayload) {
        return new VehicleSizing(plan, startMass, givenPayload, OptionalDouble.of(factor), stages, warnings);
    }

    /**
     * @param more what the reader must know besides
     * @return the same vehicle with that
     */
    public VehicleSizing withWarnings(List<Warning> more) {
        List<Warning> all = new ArrayList<>(warnings);
        all.addAll(more);
        return new VehicleSizing(plan, startMass, payload, ispFactor, stages, all);
    }

    /** @return payload over start mass (-) */
    public double payloadFraction() {
        return payload / startMass;
    }

    /** @return propellant loaded in all stages (kg) */
    public double propellantMass() {
        return stages.stream()
                .mapToDouble(s -> s.propellant().loaded()
                        + s.boosters().map(b -> b.count() * b.loadedEach()).orElse(0.0))
                .sum();
    }

    /** @return dry mass of all stages (kg) */
    public double dryMass() {
        return stages.stream()
                .mapToDouble(s -> s.dryMass().total()
                        + s.boosters().map(b -> b.count() * b.dryMass().total()).orElse(0.0))
                .sum();
    }

    /** @return height of the stages one upon the other (m), fairing apart */
    public double height() {
        return stages.stream().mapToDouble(s -> s.contents().length()).sum();
    }

    /** @return ideal delta-v of all stages (m/s) */
    public double deltaV() {
        return stages.stream().mapToDouble(StageSizing::deltaV).sum();
    }
}
