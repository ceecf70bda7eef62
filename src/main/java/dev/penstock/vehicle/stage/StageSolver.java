package dev.penstock.vehicle.stage;

import dev.penstock.errors.LimitReached;
import dev.penstock.numerics.RootFinder;
import dev.penstock.quantities.Constants;
import dev.penstock.quantities.Notation;
import dev.penstock.vehicle.plan.EngineCount;
import java.util.Locale;
import java.util.Optional;

/**
 * Finds the start mass of one stage that carries a given mass through a given speed gain, or says why there is none.
 *
 * <p>The mass carried grows with the start mass as long as the stage closes at all. The search doubles the start mass
 * from the lightest conceivable one until the mass carried is enough, then closes in by Brent's method. Engines that are
 * chosen by thrust-to-weight ratio are added one by one, so that the fewest that suffice are found.
 */
public final class StageSolver {

    /** Name of the limit at which no vehicle closes. */
    public static final String CLOSURE = "vehicle.closure";

    private static final double TOLERANCE = 1e-13;
    /** A stage this many times heavier than the ideal one is taken as not closing. */
    private static final double GIVE_UP = 1e7;

    /** Up to this many engines a stage is looked at to see whether it would close at all. */
    private static final int MANY_ENGINES = 3000;

    /** Digits of a thrust that is only about right. */
    private static final int ABOUT = 3;

    private final StageModel model;

    public StageSolver(StageModel model) {
        this.model = model;
    }

    /**
     * @param carried mass to carry (kg)
     * @param deltaV speed to gain (m/s)
     * @return the stage
     * @throws LimitReached if no start mass closes, or it would take too many engines
     */
    public StageSizing carrying(double carried, double deltaV) {
        Attempt attempt = attempt(carried, deltaV);
        return attempt.stage().orElseThrow(() -> new LimitReached(CLOSURE, sentence(attempt, deltaV)));
    }

    /**
     * @param carried mass to carry (kg)
     * @param deltaV speed to gain (m/s)
     * @return the stage, or how near to closing the search came
     */
    Attempt attempt(double carried, double deltaV) {
        int engines = model.enginesNeeded(carried);
        while (engines <= EngineCount.MOST) {
            Attempt attempt = attempt(carried, deltaV, engines);
            if (attempt.stage().isEmpty()) {
                return attempt;
            }
            int needed = model.enginesNeeded(attempt.stage().get().startMass());
            if (needed <= engines) {
                return attempt;
            }
            engines = needed;
        }
        return withEnginesToMatch(carried, deltaV, engines);
    }

    /**
     * Too many engines: either the stage is too large for its engine, or it closes at no size once its engines grow with
     * it. The second is looked for over all sizes.
     */
    private Attempt withEnginesToMatch(double carried, double deltaV, int engines) {
        StageSizing nearest = null;
        double bestMassRatio = 1;
        double mass = Math.max(carried + model.boosterMass(), model.leastStartMass(1));
        while (model.enginesNeeded(mass) <= MANY_ENGINES) {
            int count = model.enginesNeeded(mass);
            if (mass > model.leastStartMass(count)) {
                StageSizing stage = model.at(mass, deltaV, count);
                double massRatio = massRatioCarrying(carried, stage);
                if (stage.above() >= carried) {
                    return new Attempt(Optional.empty(), Optional.empty(), massRatio, count);
                }
                if (nearest == null || massRatio > bestMassRatio) {
                    nearest = stage;
                    bestMassRatio = massRatio;
                }
            }
            mass *= 1.1;
        }
        return new Attempt(Optional.empty(), Optional.ofNullable(nearest), bestMassRatio, engines);
    }

    private Attempt attempt(double carried, double deltaV, int engines) {
        double ideal = carried * RocketEquation.massRatio(deltaV, model.exhaustVelocity());
        double low = Math.max(carried + model.boosterMass(), model.leastStartMass(engines));
        double high = Math.max(ideal, 1.01 * low);
        StageSizing nearest = null;
        double bestMassRatio = 1;
        StageSizing stage = model.at(high, deltaV, engines);
        while (stage.above() < carried) {
            double massRatio = massRatioCarrying(carried, stage);
            if (nearest == null || massRatio > bestMassRatio) {
                nearest = stage;
                bestMassRatio = massRatio;
            }
            low = high;
            high *= 1.6;
            if (high > GIVE_UP * Math.max(ideal, 1)) {
                return new Attempt(Optional.empty(), Optional.of(nearest), bestMassRatio, engines);
            }
            stage = model.at(high, deltaV, engines);
        }
        StageSizing lightest = model.at(low, deltaV, engines);
        if (lightest.above() < carried) {
            double root = RootFinder.between(
                            "start mass of " + model.plan().name(),
                            m -> model.at(m, deltaV, engines).above() - carried,
                            low,
                            high,
                            TOLERANCE)
                    .value();
            lightest = model.at(root, deltaV, engines);
        }
        return new Attempt(Optional.of(lightest), Optional.of(lightest), lightest.massRatio(), engines);
    }

    private static double massRatioCarrying(double carried, StageSizing stage) {
        double unburned = stage.dryMass().total()
                - stage.overboard()
                + stage.propellant().residual()
                + stage.propellant().recovery()
                + stage.propellant().vented()
                + carried;
        return 1 + stage.propellant().burned() / unburned;
    }

    private String sentence(Attempt attempt, double deltaV) {
        if (attempt.nearest().isEmpty() && attempt.engines() > MANY_ENGINES) {
            double pressure = model.plan().ignitionPressure();
            return String.format(
                    Locale.ROOT,
                    "%s would need more than %d engines for the thrust-to-weight ratio asked for: one gives %.4g kN at its"
                            + " ignition (%.4g kPa); take an engine for that pressure, a larger one, or a smaller payload",
                    model.plan().name(),
                    MANY_ENGINES,
                    model.engine().thrustAt(pressure) / 1e3,
                    pressure / 1e3);
        }
        if (attempt.nearest().isEmpty()) {
            return String.format(
                    Locale.ROOT,
                    "%s is too heavy for its engine: %d of them, the most taken seriously, do not give the thrust-to-weight"
                            + " ratio asked for; take an engine of about %s or more in place of %s, or a smaller payload",
                    model.plan().name(),
                    EngineCount.MOST,
                    Notation.FORCE.writeWithUnit(
                            model.engine().vacuumThrust() * attempt.engines() / EngineCount.MOST, ABOUT),
                    Notation.FORCE.writeWithUnit(model.engine().vacuumThrust()));
        }
        StageSizing best = attempt.nearest().get();
        double c = model.exhaustVelocity();
        double needed = RocketEquation.massRatio(deltaV, c);
        double loaded = best.propellant().loaded();
        double most = best.propellant().burned() / (needed - 1)
                - best.propellant().residual()
                - best.propellant().recovery()
                - best.propellant().vented();
        String ceiling = most > 0
                ? String.format(Locale.ROOT, "dry mass must stay below %.2f %% of the propellant", 100 * most / loaded)
                : "even a stage without dry mass leaves too much propellant unburnt";
        return String.format(
                Locale.ROOT,
                "%s does not close at any size: %.0f m/s at %.1f s needs a mass ratio of %.2f, for which %s, and the"
                        + " dry-mass model gives %.2f %%; it would close above %.1f s or below %.0f m/s%s",
                model.plan().name(),
                deltaV,
                c / Constants.STANDARD_GRAVITY,
                needed,
                ceiling,
                100 * best.dryMass().total() / loaded,
                deltaV / (Constants.STANDARD_GRAVITY * Math.log(attempt.massRatio())),
                c * Math.log(attempt.massRatio()),
                best.engines() > EngineCount.MOST
                        ? String.format(
                                Locale.ROOT,
                                " with %d engines, more than the %d taken seriously",
                                best.engines(),
                                EngineCount.MOST)
                        : "");
    }

    /**
     * Outcome of a search.
     *
     * @param stage the stage, if one closes
     * @param nearest the stage that came nearest to closing; empty where the number of engines ended the search
     * @param massRatio mass ratio that stage could have while carrying what it must (-)
     * @param engines engines at the end of the search
     */
    record Attempt(Optional<StageSizing> stage, Optional<StageSizing> nearest, double massRatio, int engines) {}
}
