package dev.penstock.vehicle.stage;

import dev.penstock.errors.LimitReached;
import dev.penstock.errors.Require;
import dev.penstock.numerics.RootFinder;
import dev.penstock.provenance.ModelCard;
import dev.penstock.vehicle.VehicleSizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Split of a speed gain over stages of given structural coefficients that has the least start mass, by a Lagrange
 * multiplier.
 *
 * <pre>
 * n_i = (c_i η − 1)/(c_i ε_i η),   Σ c_i ln n_i = v
 * m_i = (n_i − 1)/(1 − n_i ε_i) · (mass that stage i carries),   ε_i = dry/(dry + propellant)
 * </pre>
 *
 * Source: [curtis-2014] §11.6. Start-up, residuals and boil-off are not part of it; {@link VehicleSizer} finds the
 * optimum with them and with real dry masses. A stage whose mass ratio comes out below one should not be there.
 */
public final class LagrangeStaging {

    public static final ModelCard CARD = new ModelCard(
            "vehicle.lagrange-staging",
            "Optimum staging by Lagrange multiplier",
            "n_i = (c_i η − 1)/(c_i ε_i η), Σ c_i ln n_i = v",
            "structural coefficients that do not depend on size; stages in series",
            "exact within its assumptions",
            List.of("curtis-2014"));

    private LagrangeStaging() {}

    /**
     * A stage as the method sees it.
     *
     * @param exhaustVelocity effective exhaust velocity (m/s)
     * @param structuralCoefficient dry mass over dry mass and propellant (-)
     */
    public record Stage(double exhaustVelocity, double structuralCoefficient) {

        public Stage {
            Require.positive("staging", "exhaust velocity (m/s)", exhaustVelocity);
            Require.within("staging", "structural coefficient (-)", structuralCoefficient, 1e-6, 0.999);
        }
    }

    /**
     * The optimum.
     *
     * @param multiplier Lagrange multiplier η (s/m)
     * @param massRatios mass ratio of each stage, lowest first (-)
     * @param stageMasses dry mass and propellant of each stage, lowest first (kg)
     * @param startMass stages and payload (kg)
     */
    public record Optimum(double multiplier, List<Double> massRatios, List<Double> stageMasses, double startMass) {

        public Optimum {
            massRatios = List.copyOf(massRatios);
            stageMasses = List.copyOf(stageMasses);
        }
    }

    /**
     * @param stages stages, lowest first
     * @param deltaV speed to gain (m/s)
     * @param payload payload (kg)
     * @return the optimum
     * @throws LimitReached if the stages cannot gain that speed even without payload; the message has the speed they can
     */
    public static Optimum optimum(List<Stage> stages, double deltaV, double payload) {
        Require.positive("staging", "delta-v (m/s)", deltaV);
        Require.positive("staging", "payload (kg)", payload);
        double most = stages.stream()
                .mapToDouble(s -> -s.exhaustVelocity() * Math.log(s.structuralCoefficient()))
                .sum();
        if (deltaV >= most) {
            throw new LimitReached(
                    StageSolver.CLOSURE,
                    String.format(
                            Locale.ROOT,
                            "%d stages of these structural coefficients gain less than %.0f m/s whatever their size; %.0f m/s"
                                    + " are asked for",
                            stages.size(),
                            most,
                            deltaV));
        }
        double slowest =
                stages.stream().mapToDouble(Stage::exhaustVelocity).min().orElseThrow();
        double inverse = RootFinder.between(
                        "Lagrange multiplier of staging",
                        u -> gained(stages, u) / deltaV - 1,
                        0,
                        slowest * (1 - 1e-12),
                        1e-14)
                .value();
        List<Double> ratios = new ArrayList<>();
        List<Double> masses = new ArrayList<>();
        double carried = payload;
        for (int i = stages.size() - 1; i >= 0; i--) {
            double n = massRatio(stages.get(i), inverse);
            double mass = (n - 1) / (1 - n * stages.get(i).structuralCoefficient()) * carried;
            ratios.add(0, n);
            masses.add(0, mass);
            carried += mass;
        }
        return new Optimum(1 / inverse, ratios, masses, carried);
    }

    private static double gained(List<Stage> stages, double inverse) {
        double sum = 0;
        for (Stage stage : stages) {
            sum += stage.exhaustVelocity() * Math.log(massRatio(stage, inverse));
        }
        return sum;
    }

    /** n = (1 − u/c)/ε with u = 1/η. */
    private static double massRatio(Stage stage, double inverse) {
        return (1 - inverse / stage.exhaustVelocity()) / stage.structuralCoefficient();
    }
}
