package dev.penstock.cooling.march;

import dev.penstock.cooling.coolant.ChannelFlow;
import dev.penstock.cooling.coolant.CoolantModels;
import dev.penstock.cooling.design.ChannelLayout;
import dev.penstock.cooling.design.ChannelRule;
import dev.penstock.cooling.design.ChannelSection;
import dev.penstock.cooling.design.JacketCase;
import dev.penstock.cooling.wall.ChannelKind;
import dev.penstock.cooling.wall.WallMaterial;
import dev.penstock.numerics.RootFinder;
import dev.penstock.provenance.ModelCard;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * Channels for a concept that does not give them: the smallest coolant velocity that keeps wall and coking limits, or,
 * where the pressure-drop budget comes first, the one that uses it up.
 * <pre>
 * pitch at the throat   2 mm √(D_t/0.25 m), 1.2 to 6 mm, at least 6 channels
 * width                 half the pitch, at most t √(2 σ/p) with two thirds of yield at 700 K as σ; tubes touch
 * height                at most 10 widths if 0.7 of the largest mass flux does that, 14 if the largest does; half the wall radius
 * mass flux             G = G_t (r_t/r)^1.2; height follows, G_t is the unknown
 * </pre>
 * The count stays a real number, so that the answer is a smooth function of the case. Rules of our own within common
 * practice, no source; the same rule for 100 N and 10 MN.
 */
public final class ChannelSizing {

    public static final ModelCard CARD = new ModelCard(
            "cooling.sizing",
            "Channels sized for wall limit and pressure-drop budget",
            "G = G_t (r_t/r)^1.2; G_t smallest that keeps the wall limits within the pressure-drop budget",
            "first estimate; give channel sizes to replace it",
            "not applicable",
            List.of("common practice, no source"));

    /** Height of a channel over the wall radius beyond which no shell closes it (-). */
    public static final double LARGEST_HEIGHT_OVER_RADIUS = 0.5;

    private static final int SIZING_CELLS = 40;
    private static final int SECTIONS = 40;
    private static final double FEWEST = 6;
    private static final double FLOOR_TEMPERATURE = 700;
    private static final double FLOOR_FACTOR = 1.5;
    private static final double USED_BUDGET = 0.95;
    private static final double LARGEST_SHARE_OF_INLET = 0.6;
    private static final double LOWEST_SHARE_OF_FLUX = 0.04;
    private static final double LOWEST_SHARE_OF_DYNAMIC_FLUX = 0.02;
    private static final double SLENDER_ASPECT = 14;
    private static final double MARGIN_OF_HEIGHT = 0.95;
    private static final double SHARE_SPENT_ON_HEIGHT = 0.7;
    private static final double MANIFOLD_LOSS = 1.5;
    private static final double BEYOND = 100;
    private static final double TYPICAL_FLUX = -0.7;
    private static final double TYPICAL_SLOPE = 0.4;
    private static final double TOLERANCE = 1e-9;

    private final JacketRun run;
    private final ChannelRule rule;
    private final double count;
    private final double[] share;
    private final double budget;

    /** Logarithm of the mass flux whose dynamic head at the inlet is the budget. */
    private double dynamicFlux;

    private ChannelSizing(JacketRun run, ChannelRule rule) {
        this.run = run;
        this.rule = rule;
        JacketGrid grid = run.grid;
        double floor = grid.around ? grid.wallLength : 2 * Math.PI * (grid.narrowestRadius + run.thickness);
        count = run.question.design().channels().count().orElse(Math.max(FEWEST, floor / rule.pitch()));
        share = flowPerChannel();
        JacketCase question = run.question;
        budget = USED_BUDGET
                * Math.min(
                        question.design().limits().pressureDropFraction() * grid.gas.pressure(),
                        LARGEST_SHARE_OF_INLET * question.inletPressure());
    }

    /** A sized layout and the effort it took. */
    public record Sized(ChannelLayout layout, int evaluations) {}

    /**
     * @param question case whose layout is open
     * @param material inner wall's material
     * @param models what is kept of coolants
     * @return a layout with every size
     */
    public static Sized size(JacketCase question, WallMaterial material, CoolantModels models) {
        return size(question, material, models, ChannelRule.usual(2 * question.narrowestRadius()));
    }

    /** As above, with another rule for the shape of the channels. */
    public static Sized size(JacketCase question, WallMaterial material, CoolantModels models, ChannelRule rule) {
        int cells = Math.min(SIZING_CELLS, question.design().cells());
        try (JacketRun run = new JacketRun(question, material, models, cells, true)) {
            ChannelSizing sizing = new ChannelSizing(run, rule);
            double massFlux = sizing.solve();
            return new Sized(sizing.layout(massFlux), run.evaluations());
        }
    }

    /** Coolant flow of one channel over jacket flow per channel, per cell (-). */
    private double[] flowPerChannel() {
        double[] factor = new double[run.grid.cells];
        for (List<Leg> legs : run.branches) {
            for (Leg leg : legs) {
                for (int c = leg.first(); c != leg.last() + leg.step(); c += leg.step()) {
                    factor[c] = leg.flowShare() / leg.channelShare();
                }
            }
        }
        return factor;
    }

    private double solve() {
        ChannelFlow inlet = new ChannelFlow();
        run.properties.bulk(run.question.inletPressure(), run.question.inletEnthalpy(), inlet);
        dynamicFlux = Math.log(Math.sqrt(2 * inlet.bulkDensity * budget));
        double high = dynamicFlux;
        double low = high + Math.log(LOWEST_SHARE_OF_DYNAMIC_FLUX);
        // friction goes with the square of the mass flux, so the logarithm of the drop is nearly straight
        DoubleUnaryOperator drop = g -> Math.log1p(dropExcess(g));
        double largest = RootFinder.near(
                        "channel size for the pressure drop", drop, low, high, high + TYPICAL_FLUX, 2, TOLERANCE)
                .value();
        double usual = Math.min(largest + Math.log(SHARE_SPENT_ON_HEIGHT), tallest(largest, rule.slenderness()));
        double lowHeight = Math.max(usual, Math.min(largest, tallest(largest, SLENDER_ASPECT)));
        double smallest = Math.max(largest + Math.log(LOWEST_SHARE_OF_FLUX), lowHeight);
        DoubleUnaryOperator coolness = g -> -heatExcess(g);
        return Math.exp(RootFinder.near(
                        "channel size for the wall temperature",
                        coolness,
                        smallest,
                        largest,
                        largest,
                        TYPICAL_SLOPE,
                        TOLERANCE)
                .value());
    }

    /** Logarithm of the throat mass flux at which the throat channels are as tall as they should be. */
    private double tallest(double logFlux, double allowed) {
        ChannelGrid channels = channels(Math.exp(logFlux));
        double excess = 0;
        for (int c = run.grid.first; c < run.grid.cells; c++) {
            double slender = channels.height[c] / channels.width[c] / allowed;
            double tall = channels.height[c] / run.grid.radius[c] / (MARGIN_OF_HEIGHT * LARGEST_HEIGHT_OVER_RADIUS);
            excess = Math.max(excess, Math.max(slender, tall));
        }
        return logFlux + Math.log(excess);
    }

    private double dropExcess(double logFlux) {
        run.march(channels(Math.exp(logFlux)));
        if (run.outcome == JacketMarch.Outcome.COMPLETE) {
            return (run.question.inletPressure() - run.outletPressure) / budget - 1;
        }
        if (run.outcome == JacketMarch.Outcome.PRESSURE_EXHAUSTED || run.outcome == JacketMarch.Outcome.CHOKED) {
            return BEYOND;
        }
        return Math.exp(2 * (logFlux - dynamicFlux)) * MANIFOLD_LOSS - 1;
    }

    /** How far the hottest place is above its limit, as a fraction of it, with a margin (-). */
    private double heatExcess(double logFlux) {
        run.march(channels(Math.exp(logFlux)));
        if (run.outcome != JacketMarch.Outcome.COMPLETE) {
            return BEYOND;
        }
        double wall = run.question.design().limits().wallTemperature().orElse(run.material.maximumTemperature());
        double coking = coolantWallLimit(run.question).orElse(Double.POSITIVE_INFINITY);
        double[] worst = {-1};
        run.forEachCell((field, c) ->
                worst[0] = Math.max(worst[0], Math.max(field.metal[c] / wall - 1, field.floor[c] / coking - 1)));
        return worst[0] + rule.wallMargin();
    }

    /** Limit on the channel floor: the design's, else the coolant's coking limit. */
    public static OptionalDouble coolantWallLimit(JacketCase question) {
        OptionalDouble own = question.design().limits().coolantWallTemperature();
        return own.isPresent() ? own : question.coolant().limits().coking();
    }

    private ChannelGrid channels(double throatFlux) {
        ChannelLayout wanted = run.question.design().channels();
        JacketGrid grid = run.grid;
        ChannelGrid channels = new ChannelGrid(grid, wanted.kind(), count, wanted.roughnessUsed(), run.thickness);
        double bending = run.material.yieldStrength().at(FLOOR_TEMPERATURE) / FLOOR_FACTOR;
        double widest = run.thickness * Math.sqrt(2 * bending / run.question.inletPressure());
        double tallest = Math.max(rule.slenderness(), aspectAtThroat(throatFlux, widest));
        for (int c = grid.first; c < grid.cells; c++) {
            double pitch = channels.pitch(grid, c);
            double flux = throatFlux * Math.pow(grid.narrowestRadius / grid.radius[c], rule.massFluxExponent());
            double area = run.question.massFlow() / count * share[c] / flux;
            double width = width(pitch, widest);
            double height = tube() ? area / width * 4 / Math.PI : area / width;
            channels.set(grid, c, width, Math.min(height, tallest * width));
        }
        return channels;
    }

    /** Height over width that the wanted mass flux asks for at the throat; nowhere else are channels more slender. */
    private double aspectAtThroat(double throatFlux, double widest) {
        double pitch = run.grid.around
                ? run.grid.wallLength / count
                : 2 * Math.PI * (run.grid.narrowestRadius + run.thickness) / count;
        double width = width(pitch, widest);
        double largestShare = 0;
        for (double s : share) {
            largestShare = Math.max(largestShare, s);
        }
        double area = run.question.massFlow() / count * largestShare / throatFlux;
        return area / (width * width) * (tube() ? 4 / Math.PI : 1);
    }

    private boolean tube() {
        return run.question.design().channels().kind() == ChannelKind.TUBE;
    }

    private double width(double pitch, double widest) {
        return tube()
                ? Math.max(0.3 * pitch, pitch - 2 * run.thickness)
                : Math.min(rule.widthShare() * pitch, Math.max(widest, 0.1 * pitch));
    }

    private ChannelLayout layout(double throatFlux) {
        ChannelGrid channels = channels(throatFlux);
        List<ChannelSection> sections = new ArrayList<>();
        double previous = Double.NEGATIVE_INFINITY;
        int stride = Math.max(1, (run.grid.cells - run.grid.first) / SECTIONS);
        for (int c = run.grid.first; c < run.grid.cells; c += stride) {
            if (run.grid.place[c] > previous + 1e-6) {
                sections.add(new ChannelSection(
                        run.grid.areaRatio[c], run.grid.x[c] < 0, channels.width[c], channels.height[c]));
                previous = run.grid.place[c];
            }
        }
        ChannelLayout wanted = run.question.design().channels();
        return new ChannelLayout(wanted.kind(), OptionalDouble.of(count), sections, wanted.roughness());
    }
}
