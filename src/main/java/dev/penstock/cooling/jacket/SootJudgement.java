package dev.penstock.cooling.jacket;

import dev.penstock.cooling.design.JacketCase;
import dev.penstock.cooling.design.JacketDesign;
import dev.penstock.cooling.gas.GasSideDesign;
import dev.penstock.cooling.gas.SootLayer;
import dev.penstock.cooling.march.ChannelGrid;
import dev.penstock.cooling.march.ChannelSizing;
import dev.penstock.cooling.march.JacketMarch;
import dev.penstock.cooling.march.JacketRun;
import dev.penstock.errors.Warning;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/**
 * Whether the soot that is assumed on the wall decides over the jacket: the same channels are marched with the least and the most that
 * is published, and a sentence says where one of them turns a wall limit.
 */
final class SootJudgement {

    /** Least soot over the measured one, our judgement of that measurement (-). */
    private static final double LEAST = 0.7;

    private SootJudgement() {}

    /** Resistance of the soot at the throat (m²·K/W); zero without soot. */
    static double resistance(JacketRun run) {
        GasSideDesign gas = run.question.design().gasSide();
        double factor = gas.soot() ? run.question.gas().soot() * gas.sootFactor() : 0;
        return factor
                * gas.sootResistance()
                        .orElse(SootLayer.resistance(0, run.question.gas().gas().pressure()));
    }

    /** Share of the convective coefficient that soot takes at the narrowest cell (-). */
    static double shareTaken(JacketRun run) {
        int throat = 0;
        for (int c = 1; c < run.grid.cells; c++) {
            throat = run.grid.radius[c] < run.grid.radius[throat] ? c : throat;
        }
        double[] coefficient = new double[1];
        int at = throat;
        run.forEachCell((field, c) -> coefficient[0] = c == at ? field.gasCoefficient[c] : coefficient[0]);
        double product = coefficient[0] * resistance(run);
        return product / (1 + product);
    }

    /**
     * @param run jacket as marched
     * @param again makes the same jacket for another case
     * @return the sentence, where soot decides
     */
    static Optional<Warning> of(JacketRun run, ChannelGrid channels, Function<JacketCase, JacketRun> again) {
        GasSideDesign gas = run.question.design().gasSide();
        if (!(resistance(run) > 0) || gas.sootResistance().isPresent()) {
            return Optional.empty();
        }
        boolean kept = wallKept(run);
        double other = kept ? LEAST : SootLayer.TEXTBOOK_OVER_MEASURED;
        if (kept == (gas.sootFactor() <= other)) {
            return Optional.empty();
        }
        JacketDesign design = run.question.design().withGasSide(gas.withSootFactor(other));
        try (JacketRun tried = again.apply(run.question.withDesign(design))) {
            tried.march(channels);
            boolean then = tried.outcome == JacketMarch.Outcome.COMPLETE && wallKept(tried);
            return then == kept
                    ? Optional.empty()
                    : Optional.of(new Warning(
                            SootLayer.CARD.id(),
                            String.format(
                                    Locale.ROOT,
                                    "one assumed number decides here: with %.2g times the measured soot the wall limits are %s,"
                                            + " with %.2g times, which is as well published, they are %s",
                                    gas.sootFactor(),
                                    kept ? "kept" : "missed",
                                    other,
                                    kept ? "missed" : "kept")));
        }
    }

    /** Whether metal and channel floor stay below their limits everywhere. */
    private static boolean wallKept(JacketRun run) {
        double wall = run.question.design().limits().wallTemperature().orElse(run.material.maximumTemperature());
        double coking = ChannelSizing.coolantWallLimit(run.question).orElse(Double.POSITIVE_INFINITY);
        boolean[] kept = {true};
        run.forEachCell((field, c) -> kept[0] &= field.metal[c] <= wall && field.floor[c] <= coking);
        return kept[0];
    }
}
