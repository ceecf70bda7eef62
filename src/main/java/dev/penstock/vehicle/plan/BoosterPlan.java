package dev.penstock.vehicle.plan;

import dev.penstock.errors.Require;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.mass.DryMassModel;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Boosters of given size beside the first stage. They burn from release together with it and are dropped when empty.
 *
 * @param count number of boosters
 * @param engineFile concept file of their engine; empty where the concept that carries the vehicle table serves them too
 * @param engines engines of each
 * @param propellant propellant loaded in each (kg)
 * @param diameter outer diameter (m); empty for one that makes the tanks six diameters long
 * @param allowances propellant and volume that give no speed
 * @param dryMass dry-mass model
 * @param stated their engine where it is stated by its figures
 * @param solid one of them where they are solid; then nothing is said of an engine
 */
public record BoosterPlan(
        int count,
        Optional<Path> engineFile,
        int engines,
        double propellant,
        OptionalDouble diameter,
        Allowances allowances,
        DryMassModel dryMass,
        Optional<EnginePerformance> stated,
        Optional<SolidBooster> solid) {

    /** Boosters whose engine a concept file gives. */
    public BoosterPlan(
            int count,
            Optional<Path> engineFile,
            int engines,
            double propellant,
            OptionalDouble diameter,
            Allowances allowances,
            DryMassModel dryMass) {
        this(count, engineFile, engines, propellant, diameter, allowances, dryMass, Optional.empty(), Optional.empty());
    }

    /**
     * @param count number of boosters
     * @param booster one of them
     * @param diameter outer diameter (m); empty for a usual one
     * @return solid boosters
     */
    public static BoosterPlan solid(int count, SolidBooster booster, OptionalDouble diameter) {
        return new BoosterPlan(
                count,
                Optional.empty(),
                1,
                booster.motor().propellant(),
                diameter,
                Allowances.NONE,
                booster.inert(),
                Optional.empty(),
                Optional.of(booster));
    }

    public BoosterPlan {
        Require.within("boosters", "number of boosters", count, 1, 12);
        Require.within("boosters", "engines of each", engines, 1, EngineCount.MOST);
        Require.positive("boosters", "propellant of each (kg)", propellant);
    }
}
