package dev.penstock.chamber.design;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * Wall pressure at which the flow leaves the wall of an overexpanded nozzle, over the ambient pressure.
 * <pre>
 * Summerfield: p_s/p_a = 0.4
 * Schmucker:   p_s/p_a = (1.88 M − 1)^−0.64
 * Stark:       p_s/p_a = π/(3 M)
 * </pre>
 * M is the Mach number of the undisturbed one-dimensional flow at the wall pressure p_s. Sources: [summerfield-1954],
 * [schmucker-1973], [stark-2005]. Schmucker holds for turbulent free separation, Stark for 2.4 ≤ M ≤ 4.5 (extended here
 * to 5); scatter between nozzles is about ±15 %.
 */
public enum SeparationCriterion {
    SUMMERFIELD(new ModelCard(
            "chamber.separation.summerfield",
            "Summerfield separation pressure",
            "p_s/p_a = 0.4",
            "conical nozzles, p_c/p_a above about 16",
            "0.35 to 0.45 in tests",
            List.of("summerfield-1954"))) {
        @Override
        double ratio(double mach) {
            return 0.4;
        }
    },
    SCHMUCKER(new ModelCard(
            "chamber.separation.schmucker",
            "Schmucker separation pressure",
            "p_s/p_a = (1.88 M − 1)^−0.64",
            "turbulent free separation, M above 1.5",
            "about 15 %",
            List.of("schmucker-1973"))) {
        @Override
        double ratio(double mach) {
            return Math.pow(1.88 * mach - 1, -0.64);
        }
    },
    STARK(new ModelCard(
            "chamber.separation.stark",
            "Stark separation pressure",
            "p_s/p_a = π/(3 M)",
            "turbulent free separation, cold and hot gas, M up to 5",
            "about 15 %",
            List.of("stark-2005"))) {
        @Override
        double ratio(double mach) {
            return Math.PI / (3 * mach);
        }
    };

    private final ModelCard card;

    SeparationCriterion(ModelCard card) {
        this.card = card;
    }

    /** @return equation, source and range */
    public ModelCard card() {
        return card;
    }

    /**
     * @param mach Mach number of the undisturbed flow at the wall (-), above 1
     * @return separation pressure over ambient pressure (-), never above 1
     */
    public double pressureRatio(double mach) {
        Require.within(card.title(), "Mach number (-)", mach, 1, 100);
        return Math.min(1, ratio(mach));
    }

    abstract double ratio(double mach);
}
