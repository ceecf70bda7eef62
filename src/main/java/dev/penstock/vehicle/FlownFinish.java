package dev.penstock.vehicle;

import dev.penstock.numerics.LimitedDescent;
import dev.penstock.numerics.Ranges;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * What a flown choice costs, part by part, at the delta-v that its own flight takes. It is flown as sized at another one; the dynamic
 * pressure where stages part changes by some per cent for each 10 m/s of that, so that all parts are corrected to the first order:
 *
 * <pre>
 * part(own) = part(sized) + (own - sized) d part/d sized
 * </pre>
 *
 * Not thread-safe.
 */
final class FlownFinish implements LimitedDescent.Values<FlownSearch.Found> {

    /** Delta-v (m/s) by which sizings differ whose flights tell the slopes. */
    private static final double APART = 5;

    /** Change of the delta-v flown, in parts of that, from which the second flight is another one and tells no slopes. */
    private static final double ANOTHER = 2;

    private final Function<FlownDesign, FlownSearch.Found> cost;
    private final BiFunction<FlownDesign, double[], FlownDesign> choice;
    private final Ranges ranges;
    private FlownDesign base;
    private double[] slopes;

    /**
     * @param cost tells what a choice costs
     * @param choice makes a choice of another one and variables
     * @param ranges ranges of the variables
     * @param start a choice that flies
     */
    FlownFinish(
            Function<FlownDesign, FlownSearch.Found> cost,
            BiFunction<FlownDesign, double[], FlownDesign> choice,
            Ranges ranges,
            FlownSearch.Found start) {
        this.cost = cost;
        this.choice = choice;
        this.ranges = ranges;
        this.base = start.design();
        this.slopes = slopes(start);
    }

    @Override
    public FlownSearch.Found at(double[] unit) {
        return cost.apply(choice.apply(base, ranges.values(unit)));
    }

    @Override
    public double[] of(FlownSearch.Found there) {
        double[] parts = there.parts().clone();
        double more = there.design().deltaV() - there.sized();
        for (int i = 0; i < parts.length; i++) {
            parts[i] += slopes[i] * more;
        }
        return parts;
    }

    @Override
    public FlownSearch.Found anew(FlownSearch.Found best) {
        FlownSearch.Found again = cost.apply(best.design());
        FlownSearch.Found next = again.flies() ? again : best;
        base = next.design();
        slopes = slopes(next);
        return next;
    }

    private double[] slopes(FlownSearch.Found at) {
        double[] each = new double[at.parts().length];
        FlownSearch.Found more = cost.apply(at.design().sizedFor(at.sized() + APART));
        boolean alike =
                more.flies() && Math.abs(more.design().deltaV() - at.design().deltaV()) < ANOTHER * APART;
        for (int i = 0; i < each.length && alike; i++) {
            each[i] = (more.parts()[i] - at.parts()[i]) / (more.sized() - at.sized());
        }
        return each;
    }
}
