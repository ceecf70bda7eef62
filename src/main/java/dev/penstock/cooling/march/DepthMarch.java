package dev.penstock.cooling.march;

import dev.penstock.cooling.coolant.ChannelFlow;
import dev.penstock.cooling.coolant.CoolantProperties;
import dev.penstock.cooling.wall.ChannelKind;
import dev.penstock.numerics.RootFinder;

/**
 * A march that makes each channel, cell by cell, as tall as a wall of a given temperature lets it be: the least mass flux, and so
 * the least drop, that holds the wall there. It writes the heights into the channels that it marches through. A search may begin at any height and
 * still end at the largest: where lower channels may be hotter ones it asks the tallest too. Not thread-safe.
 */
final class DepthMarch extends JacketMarch {

    private static final double TOLERANCE = 1e-8;
    private static final double TYPICAL_SLOPE = 0.4;
    private static final double DOES_NOT_PASS = -1;
    private static final double LARGEST_MACH = 0.28;

    /** Fin efficiency from which a wall is cooled so little that it may stand hotter in a lower channel (-). */
    private static final double STRAIGHT_FINS = 0.9;

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

    /** A cell as the coolant enters it. */
    private record Entry(
            LegFlow leg, CoolantPoint before, int cell, double ratio, double bulkTemperature, double bulkDensity) {}

    @Override
    CellBalance solved(LegFlow leg, CoolantPoint before, int c, double ratio, double guess) {
        Entry entry = new Entry(leg, before, c, ratio, flow.bulkTemperature, flow.bulkDensity);
        double guessed = channels.height[c];
        double tallest = target.tallest[c];
        double first = guessed > 0 ? Math.min(guessed, tallest) : tallest;
        channels.set(grid, c, channels.width[c], first);
        CellBalance cell = super.solved(leg, before, c, ratio, guess);
        if (flow.quality >= 0 && !before.first()) {
            return atHeight(heightFor(leg.perChannel() / before.massFlux(), c), entry);
        }
        boolean tall = first >= tallest;
        if (tall && (cell.outcome() != Outcome.COMPLETE || excess(cell) <= 0)) {
            return cell;
        }
        CellBalance found = searched(entry, cell, first);
        double height = channels.height[c];
        boolean fins = channels.kind != ChannelKind.TUBE && wall.finEfficiency > STRAIGHT_FINS;
        if (tall || !fins || height >= tallest) {
            return found;
        }
        CellBalance other = atHeight(tallest, entry);
        if (other.outcome() == Outcome.COMPLETE && excess(other) <= 0) {
            return other;
        }
        return atHeight(height, entry);
    }

    /** The cell at the height that holds its wall, from a first height where it has been solved. */
    private CellBalance searched(Entry entry, CellBalance cell, double first) {
        CellBalance[] last = {cell};
        int c = entry.cell;
        double start = Math.log(first);
        double high = Math.log(target.tallest[c]);
        double slope = target.slopes[c];
        target.slopes[c] = RootFinder.near(
                        "height of a channel",
                        height -> {
                            if (height != start) {
                                last[0] = atHeight(Math.exp(height), entry);
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

    /** The cell again with another height. */
    private CellBalance atHeight(double height, Entry entry) {
        flow.bulkTemperature = entry.bulkTemperature;
        flow.bulkDensity = entry.bulkDensity;
        channels.set(grid, entry.cell, channels.width[entry.cell], height);
        return super.solved(entry.leg, entry.before, entry.cell, entry.ratio, wall.surfaceTemperature);
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
