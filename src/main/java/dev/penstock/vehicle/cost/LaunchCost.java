package dev.penstock.vehicle.cost;

import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Spread;
import dev.penstock.vehicle.stage.BoosterSizing;
import dev.penstock.vehicle.stage.StageSizing;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.List;

/**
 * Effort of one launch in work-years: what is lost is built anew, what comes back is shared by its flights and refurbished.
 * <pre>
 * lost stage    c_1 A(L)
 * reused stage  c_1 A(L/u) (1 + (u - 1) r)/u
 * </pre>
 * L launches of the run, u flights of a stage, r refurbishment over building, A the average of the learning curve; a stage's
 * c_1 is its structure's and, with A over all its engines, that of its engines. Development, propellant, range,
 * insurance and losses of stages are not in it.
 *
 * @param uses flights of the first stage
 * @param built first stages built in the run (-)
 * @param building effort of building, for each launch (work-years)
 * @param refurbishing effort of refurbishing, for each launch, from its lowest to its highest share (work-years)
 * @param payload payload (kg)
 */
public record LaunchCost(int uses, double built, double building, Spread refurbishing, double payload) {

    /** Equation, range and source. */
    public static final ModelCard CARD = new ModelCard(
            "vehicle.launch-effort",
            "Effort of one launch",
            "lost c_1 A(L); reused c_1 A(L/u)(1 + (u − 1) r)/u",
            "hardware alone; without development, propellant, range and losses",
            "a factor of " + CostRelations.BAND + " either way; refurbishment a factor of three",
            List.of("koelle-2003", "common practice, no source"));

    /**
     * @param vehicle a sized vehicle
     * @param back whether its first stage comes back
     * @param terms what is asked
     * @return effort of one launch
     */
    public static LaunchCost of(VehicleSizing vehicle, boolean back, CostTerms terms) {
        int uses = back ? (int) Math.min(terms.uses(), terms.launches()) : 1;
        LearningCurve curve = new LearningCurve(terms.learning());
        double launches = terms.launches();
        double built = launches / uses;
        double building = 0;
        double first = 0;
        for (StageSizing stage : vehicle.stages()) {
            boolean reused = back && stage == vehicle.stages().get(0);
            double run = reused ? built : launches;
            double one = unit(stage.dryMass().total(), stage.engine().mass(), stage.engines(), run, curve);
            first = reused ? one : first;
            building += reused ? one / uses : one;
            building += stage.boosters().map(b -> boosters(b, launches, curve)).orElse(0.0);
        }
        double share = first * (uses - 1) / uses;
        Spread refurbishing = share > 0 ? terms.refurbishment().times(share) : Spread.exactly(0);
        return new LaunchCost(uses, built, building, refurbishing, vehicle.payload());
    }

    private static double boosters(BoosterSizing boosters, double launches, LearningCurve curve) {
        return boosters.count()
                * unit(
                        boosters.dryMass().total(),
                        boosters.engineMass(),
                        boosters.plan().engines(),
                        boosters.count() * launches,
                        curve);
    }

    /** Average effort of a stage with its engines in a run. */
    private static double unit(double dryMass, double engineMass, int engines, double run, LearningCurve curve) {
        double structure = Math.max(0, dryMass - engines * engineMass);
        return CostRelations.stage(structure) * curve.average(run)
                + engines * CostRelations.engine(engineMass) * curve.average(engines * run);
    }

    /** @return effort of one launch at the refurbishment believed in, with its band (work-years) */
    public Spread total() {
        return new Spread(
                (building + refurbishing.low()) / CostRelations.BAND,
                building + refurbishing.mode(),
                (building + refurbishing.high()) * CostRelations.BAND);
    }

    /** @return effort for a tonne of payload at the refurbishment believed in (work-years/t) */
    public double perTonne() {
        return total().mode() / payload * 1000;
    }
}
