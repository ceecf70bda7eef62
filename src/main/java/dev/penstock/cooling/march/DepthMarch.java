package dev.penstock.cooling.march;

import dev.penstock.cooling.coolant.ChannelFlow;
import dev.penstock.cooling.coolant.CoolantProperties;
import dev.penstock.cooling.wall.ChannelKind;
import dev.penstock.numerics.RootFinder;

/**
 * A march that makes each channel, cell by cell, as tall as a wall of a given temperature lets it be: the least mass flux, and so
 * the least drop, that holds the wall there. It writes the heights into the channels that it marches through. Not thread-safe.
 */
final class DepthMarch extends JacketMarch {

    private static final double TOLERANCE = 1e-8;
    private static final double TYPICAL_SLOPE = 0.4;
    private static final double DOES_NOT_PASS = -1;
    private static final double LARGEST_MACH = 0.28;

    /**
     * What the heights are chosen for.
     *
     * @param wall hottest place of the metal (K)
     * @param floor temperature of the channel floor (K)
     * @param tallest largest height of each cell (m)
     * @param shortest smallest height of each cell (m)
     * @param slopes how the excess of each cell rises with the logarithm of its height (-); 0 where it is not known yet. Written anew
     */
    record Target(double wall, double floor, double[] tallest, double[] shortest, double[] slopes) {}

    private final Target target;

    DepthMarch(
            JacketGrid grid,
            ChannelGrid channels,
            CoolantProperties properties,
            WallBalance wall,
            ChannelFlow flow,
            boolean curved,
            Runnable afterCell,
            Target target) {
        super(grid, channels, properties, wall, flow, curved, afterCell);
        this.target = target;
    }

    @Override
    CellBalance solved(LegFlow leg, CoolantPoint before, int c, double ratio, double guess) {
        double bulk = flow.bulkTemperature;
        double density = flow.bulkDensity;
        double guessed = channels.height[c];
        double first = guessed > 0 ? Math.min(guessed, target.tallest[c]) : target.tallest[c];
        channels.set(grid, c, channels.width[c], first);
        CellBalance cell = super.solved(leg, before, c, ratio, guess);
        if (flow.quality >= 0 && !before.first()) {
            flow.bulkTemperature = bulk;
            flow.bulkDensity = density;
            channels.set(grid, c, channels.width[c], heightFor(leg.perChannel() / before.massFlux(), c));
            return again(leg, before, c, ratio);
        }
        boolean tall = channels.height[c] >= target.tallest[c];
        if (tall && (cell.outcome() != Outcome.COMPLETE || excess(cell) <= 0)) {
            return cell;
        }
        CellBalance[] last = {cell};
        double start = Math.log(first);
        double high = Math.log(target.tallest[c]);
        double slope = target.slopes[c];
        target.slopes[c] = RootFinder.near(
                        "height of a channel",
                        height -> {
                            if (height != start) {
                                flow.bulkTemperature = bulk;
                                flow.bulkDensity = density;
                                channels.set(grid, c, channels.width[c], Math.exp(height));
                                last[0] = again(leg, before, c, ratio);
                            }
                            return excess(last[0]);
                        },
                        Math.min(high, Math.log(target.shortest[c])),
                        high,
                        start,
                        slope > 0 ? slope : TYPICAL_SLOPE,
                        TOLERANCE)
                .slope();
        return last[0];
    }

    private CellBalance again(LegFlow leg, CoolantPoint before, int c, double ratio) {
        return super.solved(leg, before, c, ratio, wall.surfaceTemperature);
    }

    /** Height of a channel of that cross-section, as far as it is allowed (m). */
    private double heightFor(double area, int c) {
        double height = area / channels.width[c] * (channels.kind == ChannelKind.TUBE ? 4 / Math.PI : 1);
        return Math.max(target.shortest[c], Math.min(target.tallest[c], height));
    }

    /** How far the hottest place is above what is wanted; never more than the coolant's velocity leaves room for (-). */
    private double excess(CellBalance cell) {
        return cell.outcome() == Outcome.COMPLETE
                ? Math.min(
                        1 - cell.mach() / LARGEST_MACH,
                        Math.max(hottest() / target.wall, wall.floorTemperature / target.floor) - 1)
                : DOES_NOT_PASS;
    }

    private double hottest() {
        return wall.metalTemperature + (channels.kind == ChannelKind.TUBE ? 0 : wall.hotSpot());
    }
}
