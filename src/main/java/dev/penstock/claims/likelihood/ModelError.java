package dev.penstock.claims.likelihood;

import dev.penstock.cycles.questions.BuiltEngineMiss;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * What the whole model misses built engines by, put to it at their own chamber pressure, mixture ratio and area ratio: the root mean
 * square of what the validation pages show. Part of that is explained by inputs that are known within bounds; the rest is the
 * model's own.
 * <pre>m = √(max(0, e² − Σ (Δ/(1.645 p))²)),  e = miss of built engines, Δ = change by the 95th percentile of an input</pre>
 * The numbers come from the engines that the coverage of judgements is then checked against. Leaving out one engine at a time moves
 * them as docs/validation/claims.md says.
 */
public final class ModelError {

    /** Vacuum impulse, and the flow for a thrust, over 24 engines of docs/validation/performance.md (-). */
    public static final double VACUUM_IMPULSE = 0.0125;

    /** Sea-level impulse and thrust, over nine engines of the same page (-). */
    public static final double SEA_LEVEL = 0.025;

    /** Dry mass, of logarithms, as bands of any engine have it (-): stated there alone. */
    public static final double MASS =
            BuiltEngineMiss.of("engine.mass_kg", false).orElseThrow().whole();

    public static final ModelCard CARD = new ModelCard(
            "claims.model-error",
            "What the model misses built engines by",
            "m = sqrt(max(0, e^2 - sum of (change by an input/prediction)^2))",
            "impulses, thrust at sea level and dry mass; other figures are taken as right",
            "that of a root mean square over nine to 24 engines",
            List.of("built-engine-misses"));

    private ModelError() {}

    /**
     * @param path path of a figure
     * @return what the model misses it by, all causes together (-)
     */
    static double whole(String path) {
        return switch (path) {
            case ChamberAlone.IMPULSE_VACUUM, ChamberAlone.FLOW -> VACUUM_IMPULSE;
            case ChamberAlone.IMPULSE_SEA_LEVEL, ChamberAlone.THRUST_SEA_LEVEL -> SEA_LEVEL;
            case "engine.mass_kg", "engine.thrust_to_weight" -> MASS;
            default -> 0;
        };
    }
}
