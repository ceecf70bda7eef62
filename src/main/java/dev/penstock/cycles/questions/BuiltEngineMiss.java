package dev.penstock.cycles.questions;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.Side;
import dev.penstock.provenance.ModelCard;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;

/**
 * What the most likely figure of a built engine misses of the published one: the root mean square of their logarithms over the engines of
 * docs/validation/ratings.md. Part of it is what uncertain inputs do; the rest belongs to the model, and every band of a figure holds it.
 * <pre>
 * m² = max(0, (e t/z95)² − s²),  e = miss of built engines, s = standard deviation of ln(samples)
 * ln(q'/q50) = ±√(ln(q/q50)² + (z m)²),  z = normal deviate of the percentile
 * </pre>
 * t is the 95th percentile of Student's distribution with as many degrees of freedom as there are figures, z95 the normal one: so few
 * figures tell their own spread only so well.
 * Declared here for each quantity; a judgement of claims has errors of its own for impulses, of other engines and whole figures
 * ({@code claims.likelihood.ModelError}), and this one for dry masses. Where engines of one kind of fuel miss by more than the others together, they have a miss of their
 * own: what a family has in common is not averaged away.
 *
 * @param quantity what it is a miss of
 * @param share e, all causes together (-)
 * @param figures published figures behind it
 */
public record BuiltEngineMiss(String quantity, double share, int figures) {

    public static final ModelCard CARD = new ModelCard(
            "cycles.built-engine-miss",
            "What built engines miss beyond the spreads of inputs",
            "m² = max(0, (e t/z95)² − s²); ln(q'/q50) = ±√(ln(q/q50)² + (z m)²)",
            "impulse, thrust at sea level, mass flow, discharge pressure, power, speed, generator flow, dry mass",
            "that of a root mean square over as many figures as each says",
            List.of("built-engine-misses", "kennedy-ohagan-2001"));

    /** A miss of the figures whose path a pattern knows; of one family of fuels or of all. */
    private record Row(Pattern paths, Optional<Boolean> hydrogen, BuiltEngineMiss miss) {

        boolean is(String path, boolean burnsHydrogen) {
            return hydrogen.map(h -> h == burnsHydrogen).orElse(true)
                    && paths.matcher(path).matches();
        }
    }

    private static final String IMPULSE = "engine\\.(isp_vacuum_s|mass_flow_kg_s)";

    private static final List<Row> ROWS = List.of(
            row(IMPULSE, Optional.of(true), "vacuum impulse with hydrogen", 0.009, 7),
            row(IMPULSE, Optional.of(false), "vacuum impulse without hydrogen", 0.045, 8),
            of("engine\\.(isp_sea_level_s|thrust_sea_level_N)", "sea-level impulse", 0.040, 8),
            of("(figures|pumps\\.fuel-.*)\\.discharge_pressure_Pa", "fuel discharge", 0.14, 4),
            of("pumps\\.oxidizer-.*\\.discharge_pressure_Pa", "oxidizer discharge", 0.058, 3),
            of("(pumps|turbines|shafts)\\..*\\.speed_rad_s", "shaft speed", 0.228, 11),
            of("figures\\.pump_power_W|(turbines|pumps)\\..*\\.power_W", "turbine power", 0.159, 6),
            of("turbines\\..*\\.mass_flow_kg_s", "generator or preburner flow", 0.158, 2),
            of("engine\\.(mass_kg|thrust_to_weight)", "dry mass", 0.147, 16));

    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    private static Row of(String paths, String quantity, double share, int figures) {
        return row(paths, Optional.empty(), quantity, share, figures);
    }

    private static Row row(String paths, Optional<Boolean> hydrogen, String quantity, double share, int figures) {
        return new Row(Pattern.compile(paths), hydrogen, new BuiltEngineMiss(quantity, share, figures));
    }

    /** @return every quantity with its miss */
    public static List<BuiltEngineMiss> all() {
        return ROWS.stream().map(Row::miss).toList();
    }

    /**
     * @param path path of a figure of an engine
     * @param concept the engine
     * @return its miss; empty for a figure of which nothing is published, or which is an input
     */
    public static Optional<BuiltEngineMiss> of(String path, Concept concept) {
        return of(path, concept.feed(Side.FUEL).propellant().moleFraction("H2") > 0);
    }

    /**
     * @param path path of a figure of an engine
     * @param hydrogen whether it burns hydrogen
     * @return its miss; empty for a figure of which nothing is published, or which is an input
     */
    public static Optional<BuiltEngineMiss> of(String path, boolean hydrogen) {
        return ROWS.stream().filter(r -> r.is(path, hydrogen)).map(Row::miss).findFirst();
    }

    /**
     * @param path path of a figure of an engine
     * @param concept the engine
     * @param samples of that figure, over what is uncertain about its inputs
     * @return m, what the model misses beyond those (-); zero for a figure of which nothing is published
     */
    public static double beyond(String path, Concept concept, DescriptiveStatistics samples) {
        return of(path, concept).map(miss -> miss.beyond(samples)).orElse(0.0);
    }

    /**
     * @param samples of one figure, over what is uncertain about its inputs
     * @return m, what the model misses beyond those (-); zero where a sample is not positive
     */
    public double beyond(DescriptiveStatistics samples) {
        if (samples.getN() < 2 || samples.getMin() <= 0) {
            return 0;
        }
        DescriptiveStatistics logarithms = new DescriptiveStatistics(
                DoubleStream.of(samples.getValues()).map(Math::log).toArray());
        return Math.sqrt(Math.max(0, whole() * whole() - logarithms.getPopulationVariance()));
    }

    /** @return miss with what so few figures leave open (-): the standard deviation whose normal 95th percentile is that of Student's */
    public double whole() {
        return share
                * new TDistribution(null, figures).inverseCumulativeProbability(0.95)
                / NORMAL.inverseCumulativeProbability(0.95);
    }

    /**
     * @param samples of one figure
     * @param beyond m, what the model misses beyond its inputs (-); zero leaves the samples as they are
     * @param percent of cases that stay below (%), above 0 and below 100
     * @return percentile of the figure, SI
     */
    public static double percentile(DescriptiveStatistics samples, double beyond, double percent) {
        double sampled = samples.getPercentile(percent);
        double median = samples.getPercentile(50);
        if (beyond == 0 || percent == 50) {
            return sampled;
        }
        double deviate = NORMAL.inverseCumulativeProbability(percent / 100);
        return median * Math.exp(Math.signum(deviate) * Math.hypot(Math.log(sampled / median), deviate * beyond));
    }
}
