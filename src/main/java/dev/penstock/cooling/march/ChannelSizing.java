package dev.penstock.cooling.march;

import dev.penstock.cooling.coolant.CoolantModels;
import dev.penstock.cooling.design.ChannelLayout;
import dev.penstock.cooling.design.ChannelRule;
import dev.penstock.cooling.design.ChannelSection;
import dev.penstock.cooling.design.JacketCase;
import dev.penstock.cooling.design.JacketLimits;
import dev.penstock.cooling.gas.Bartz;
import dev.penstock.cooling.wall.ChannelKind;
import dev.penstock.cooling.wall.WallMaterial;
import dev.penstock.numerics.RootFinder;
import dev.penstock.provenance.ModelCard;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * Channels for a concept that does not give them: every channel as tall as a wall of one temperature lets it be
 * ({@link DepthMarch}), so that the pressure drop is spent where the wall is hot. That temperature keeps a margin to the limits of
 * wall and coking where the pressure-drop budget allows it, and otherwise is the lowest that the budget buys.
 * <pre>
 * pitch at the throat   2 mm √(D_t/0.25 m), 1.2 to 6 mm, at least 6 channels; down to 0.7 of it, but 1.1 mm, where the budget asks for it
 * width                 half the pitch, 0.6 where the budget asks for it, at most t √(2 σ/Δp) with two thirds of yield as σ, at 700 K, on
 *                       the nozzle falling to 300 K at an area ratio of 10, or to the coolant's coking limit;
 *                       tubes touch
 * wall                  t at the throat; elsewhere as thick as that width asks for, at most t (A/A_t)^0.9, which the flux falls with
 * height                at most 10 widths, 3 in tubes; 14 and 10 where height alone takes half the budget, or the wall the rest; widths at most
 *                       one and a half of the narrowest count; half the wall radius; one height in a cylinder
 * </pre>
 * The count stays a real number, so that the answer is a smooth function of the case. Rules of our own within common
 * practice, no source; the same rule for 100 N and 10 MN.
 */
public final class ChannelSizing {

    public static final ModelCard CARD = new ModelCard(
            "cooling.sizing",
            "Channels sized for wall limit and pressure-drop budget",
            "H(x) = largest with T_w(x) <= T_w,max; T_w,max = limit less 7 %, or lowest within the pressure-drop budget;"
                    + " t(x) = w √(Δp/(2 σ)), t* to t* (A/A*)^0.9",
            "first estimate; give channel sizes to replace it",
            "not applicable",
            List.of("common practice, no source"));

    /** Height of a channel over the wall radius beyond which no shell closes it (-). */
    public static final double LARGEST_HEIGHT_OVER_RADIUS = 0.5;

    private static final int SIZING_CELLS = 40;
    private static final int SECTIONS = 40;
    private static final double FEWEST = 6;
    private static final double FLOOR_TEMPERATURE = 700;
    private static final double COLD_FLOOR = 300;
    private static final double COLD_AREA_RATIO = 10;
    private static final double FLOOR_FACTOR = 1.5;
    private static final double USED_BUDGET = 0.95;
    private static final double LARGEST_SHARE_OF_INLET = 0.6;
    private static final double LEAST_DIFFERENCE = 0.2;
    private static final double SHORTEST = 0.45e-3;
    private static final double SHORTEST_ASPECT = 0.3;
    private static final double MOST_SLENDER = 1000;
    private static final double MARGIN_OF_HEIGHT = 0.95;
    private static final double LEAST_MARGIN = -1;
    private static final double FIRST_STEP = 0.05;
    private static final double BEYOND = 5;
    private static final double BEFORE_LEAST = 0.8;
    private static final double TYPICAL_SLOPE = 2;
    private static final double TYPICAL_RISE = 5;
    private static final double WIDENING = 1.5;
    private static final double SAME_PLACE = 1e-6;
    private static final double TOLERANCE = 1e-8;

    private final JacketRun run;
    private final ChannelRule rule;
    private ChannelGrid channels;

    /** Logarithm of the pressure drop last found over the budget. */
    private double dropExcess;

    /** What was tried: the steps of the search come back to the ends of each other's ranges. */
    private final Map<Wanted, Tried> tried = new HashMap<>();

    /** Written on from search to search. */
    private final SizingStart known;

    private final boolean passedTwice;
    private final double budget;

    private record Wanted(double margin, ChannelRule.Shape shape) {}

    private record Tried(ChannelGrid channels, double dropExcess) {}

    private ChannelSizing(JacketRun run, ChannelRule rule, Optional<SizingStart> near) {
        this.run = run;
        this.rule = rule;
        known = near.filter(n -> n.heights().length == run.grid.cells)
                .map(SizingStart::copy)
                .orElseGet(() -> SizingStart.nowhere(run.grid.cells));
        JacketGrid grid = run.grid;
        channels = channels(rule.usual());
        passedTwice =
                run.branches.stream().flatMap(List::stream).mapToInt(Leg::cells).sum() > grid.cells - grid.first;
        JacketCase question = run.question;
        budget = USED_BUDGET
                * Math.min(
                        question.design().limits().pressureDropFraction() * grid.gas.pressure(),
                        LARGEST_SHARE_OF_INLET * question.inletPressure());
    }

    /**
     * A sized layout.
     *
     * @param layout channels with every size
     * @param evaluations effort it took
     * @param start where the sizing of a neighbouring case may begin
     */
    public record Sized(ChannelLayout layout, int evaluations, SizingStart start) {}

    /**
     * @param question case whose layout is open
     * @param material inner wall's material
     * @param models what is kept of coolants
     * @return a layout with every size
     */
    public static Sized size(JacketCase question, WallMaterial material, CoolantModels models) {
        return size(question, material, models, ChannelRule.of(question), Optional.empty());
    }

    /** As above, with another rule for the shape of the channels, and from where a neighbouring case was left. */
    public static Sized size(
            JacketCase question,
            WallMaterial material,
            CoolantModels models,
            ChannelRule rule,
            Optional<SizingStart> near) {
        int cells = Math.min(SIZING_CELLS, question.design().cells());
        try (JacketRun run = new JacketRun(question, material, models, cells, true)) {
            ChannelSizing sizing = new ChannelSizing(run, rule, near);
            sizing.solve();
            return new Sized(sizing.layout(), run.evaluations(), sizing.known);
        }
    }

    private void solve() {
        double margin = rule.wallMargin();
        ChannelRule.Shape usual = rule.usual();
        double usualSlenderness = Math.log(usual.slenderness());
        boolean wasTight = known.roots().containsKey(SizingStart.Search.SLENDERNESS)
                && known.roots().get(SizingStart.Search.SLENDERNESS).value() > usualSlenderness;
        if (!wasTight && lessThanHalf(margin, usual)) {
            return;
        }
        double slender = search(
                SizingStart.Search.SLENDERNESS,
                s -> -dropExcess(LEAST_MARGIN, usual.slender(Math.exp(s))) - Math.log(2),
                usualSlenderness,
                Math.log(rule.tightest().slenderness()),
                usualSlenderness,
                TYPICAL_SLOPE);
        boolean tight = slender > usualSlenderness;
        if (!tight && lessThanHalf(margin, usual)) {
            return;
        }
        ChannelRule.Shape roomy = tight ? usual.slender(Math.exp(slender)) : usual;
        double wide = dropExcess(margin, roomy);
        if (wide <= 0) {
            return;
        }
        if (wide == BEYOND && dropExcess(LEAST_MARGIN, rule.tightest().slender(MOST_SLENDER)) == BEYOND) {
            // not even the tallest channels that nothing asks to be cool let the coolant pass
            return;
        }
        double best = leastDrop(
                wide, dropExcess(margin, roomy.towards(rule.tightest(), 0.5)), dropExcess(margin, rule.tightest()));
        double shape = search(
                SizingStart.Search.SHAPE,
                s -> -dropExcess(margin, roomy.towards(rule.tightest(), s)),
                0,
                best,
                best,
                TYPICAL_SLOPE);
        ChannelRule.Shape tightest = roomy.towards(rule.tightest(), shape);
        if (shape < best || dropExcess <= 0) {
            return;
        }
        double coolest = search(
                SizingStart.Search.WALL_MARGIN,
                m -> dropExcess(m, tightest),
                LEAST_MARGIN,
                margin,
                margin - FIRST_STEP,
                TYPICAL_RISE);
        if (coolest <= LEAST_MARGIN && dropExcess > 0) {
            search(
                    SizingStart.Search.MOST_SLENDER,
                    s -> -dropExcess(LEAST_MARGIN, tightest.slender(Math.exp(s))),
                    Math.log(tightest.slenderness()),
                    Math.log(MOST_SLENDER),
                    Math.log(tightest.slenderness()) + FIRST_STEP,
                    1);
        }
    }

    /** Less than half the pressure drop: nothing is asked of the shape. */
    private boolean lessThanHalf(double margin, ChannelRule.Shape usual) {
        return dropExcess(margin, usual) <= -Math.log(2);
    }

    /** Root of a rising function, from where the same search ended before, else from a guess. */
    private double search(
            SizingStart.Search what,
            DoubleUnaryOperator function,
            double low,
            double high,
            double guess,
            double slope) {
        SizingStart.Root before = known.roots().getOrDefault(what, new SizingStart.Root(guess, slope));
        RootFinder.Root root =
                RootFinder.near(what.title, function, low, high, before.value(), before.slope(), TOLERANCE);
        known.roots().put(what, new SizingStart.Root(root.value(), root.slope()));
        return root.value();
    }

    /**
     * How far from the usual shape (0) to the tightest (1) it pays to go: four fifths of the way to the least drop, by a parabola through both
     * and the middle. That has all but a twenty-fifth of what can be had; where the drop no longer falls, the shape would leap.
     */
    private static double leastDrop(double usual, double middle, double tightest) {
        double curvature = 2 * (usual - 2 * middle + tightest);
        if (!(curvature > 0)) {
            return tightest <= usual ? 1 : 0;
        }
        return Math.max(0, Math.min(1, BEFORE_LEAST * 0.5 * (1 - (tightest - usual) / curvature)));
    }

    /**
     * Chooses the heights for a margin to the wall limits and a height over width, and how far the pressure drop is then above
     * the budget.
     */
    private double dropExcess(double margin, ChannelRule.Shape shape) {
        Wanted wanted = new Wanted(margin, shape);
        Tried known = tried.get(wanted);
        if (known == null) {
            choose(margin, shape);
            known = new Tried(channels, dropExcess);
            tried.put(wanted, known);
        }
        channels = known.channels;
        dropExcess = known.dropExcess;
        return dropExcess;
    }

    private void choose(double margin, ChannelRule.Shape shape) {
        JacketGrid grid = run.grid;
        channels = channels(shape);
        // channels that nothing asks to be cool are as tall as they may be
        boolean cooled = margin > LEAST_MARGIN;
        double narrowest = Double.POSITIVE_INFINITY;
        for (int c = grid.first; c < grid.cells; c++) {
            channels.set(grid, c, channels.width[c], cooled ? known.heights()[c] : 0);
            narrowest = Math.min(narrowest, channels.width[c]);
        }
        double[] tallest = new double[grid.cells];
        double[] shortest = new double[grid.cells];
        for (int c = grid.first; c < grid.cells; c++) {
            shortest[c] = Math.max(SHORTEST, SHORTEST_ASPECT * channels.width[c]);
            double deepest = Math.min(
                    shape.slenderness() * Math.min(channels.width[c], WIDENING * narrowest),
                    MARGIN_OF_HEIGHT * LARGEST_HEIGHT_OVER_RADIUS * grid.radius[c]);
            tallest[c] = Math.max(shortest[c], deepest);
        }
        double wall = (1 - margin)
                * run.question.design().limits().wallTemperature().orElse(run.material.maximumTemperature());
        double floor = (1 - margin) * coolantWallLimit(run.question).orElse(Double.POSITIVE_INFINITY);
        DepthMarch.Target target =
                new DepthMarch.Target(wall, floor, tallest, shortest, cooled ? known.slopes() : new double[grid.cells]);
        run.deepen(channels, target);
        if (cooled && run.outcome == JacketMarch.Outcome.COMPLETE) {
            for (int c = grid.first; c < grid.cells; c++) {
                known.heights()[c] = channels.height[c] < tallest[c] ? channels.height[c] : Double.POSITIVE_INFINITY;
            }
        }
        if (run.outcome == JacketMarch.Outcome.COMPLETE && tie(channels.height, tallest)) {
            if (passedTwice) {
                run.deepen(channels, target);
                tie(channels.height, tallest);
            }
            for (int c = grid.first; c < grid.cells; c++) {
                channels.set(grid, c, channels.width[c], Math.min(channels.height[c], tallest[c]));
            }
            run.march(channels);
        }
        if (run.outcome != JacketMarch.Outcome.COMPLETE) {
            for (int c = grid.first; c < grid.cells; c++) {
                channels.set(grid, c, channels.width[c], tallest[c]);
            }
        }
        dropExcess = run.outcome == JacketMarch.Outcome.COMPLETE
                ? Math.log((run.question.inletPressure() - run.outletPressure) / budget)
                : BEYOND;
    }

    /** Limit on the channel floor: the design's, else the coolant's coking limit. */
    public static OptionalDouble coolantWallLimit(JacketCase question) {
        JacketLimits limits = question.design().limits();
        OptionalDouble own = limits.coolantWallTemperature();
        return own.isPresent() ? own : question.coolant().limits().coking(limits.cokingShare());
    }

    /**
     * Heights that belong together: a layout tells places apart by their area ratio, so that a cylinder has one height, and cells
     * that are passed twice have theirs already. The smallest of them becomes the largest allowed.
     *
     * @return whether heights have to be made smaller
     */
    private boolean tie(double[] height, double[] tallest) {
        double[] place = run.grid.place;
        boolean any = passedTwice;
        int from = run.grid.first;
        for (int c = from + 1; c <= place.length; c++) {
            if (c < place.length && place[c] <= place[from] + SAME_PLACE) {
                continue;
            }
            double least = height[from];
            for (int i = from; i < c; i++) {
                least = Math.min(least, height[i]);
            }
            for (int i = from; i < c && (c > from + 1 || passedTwice); i++) {
                any |= height[i] > least;
                tallest[i] = least;
            }
            from = c;
        }
        return any;
    }

    /** Channels of a shape, their heights open. */
    private ChannelGrid channels(ChannelRule.Shape shape) {
        JacketGrid grid = run.grid;
        ChannelLayout wanted = run.question.design().channels();
        double floor = grid.around ? grid.wallLength : 2 * Math.PI * (grid.narrowestRadius + run.thickness);
        double count = wanted.count().orElse(Math.max(FEWEST, floor / shape.pitch()));
        ChannelGrid made = new ChannelGrid(grid, wanted.kind(), count, wanted.roughnessUsed(), run.thickness);
        for (int c = grid.first; c < grid.cells; c++) {
            double pitch = made.pitch(grid, c);
            double across = Math.max(
                    LEAST_DIFFERENCE * run.question.inletPressure(), run.question.inletPressure() - grid.pressure[c]);
            double bending = run.material.yieldStrength().at(floorTemperature(c)) / FLOOR_FACTOR;
            double span = Math.sqrt(2 * bending / across);
            if (!tube()) {
                double borne = Math.min(shape.widthShare() * pitch / span, run.thickness * thickening(c));
                made.thickness[c] = Math.max(run.thickness, borne);
                pitch = made.pitch(grid, c);
            }
            double width = tube()
                    ? Math.max(0.3 * pitch, pitch - 2 * run.thickness)
                    : Math.min(shape.widthShare() * pitch, Math.max(span * made.thickness[c], 0.1 * pitch));
            made.set(grid, c, width, 0);
        }
        return made;
    }

    /**
     * Temperature at which a floor has to bear the coolant: that of hot walls up to the throat, falling along the nozzle, but over a coolant
     * that cokes, which keeps every floor near its limit (K).
     */
    private double floorTemperature(int cell) {
        double place = run.grid.place[cell];
        double cold = Math.max(0, Math.min(1, place / Math.log(COLD_AREA_RATIO)));
        double coking = coolantWallLimit(run.question).orElse(FLOOR_TEMPERATURE);
        return FLOOR_TEMPERATURE + cold * ((coking < FLOOR_TEMPERATURE ? coking : COLD_FLOOR) - FLOOR_TEMPERATURE);
    }

    /** How much thicker than where the jacket is narrowest a wall may be for the same fall of temperature in it (-). */
    private double thickening(int cell) {
        return Math.pow(run.grid.radius[cell] / run.grid.narrowestRadius, 2 * Bartz.AREA_EXPONENT);
    }

    private boolean tube() {
        return run.question.design().channels().kind() == ChannelKind.TUBE;
    }

    private ChannelLayout layout() {
        List<ChannelSection> sections = new ArrayList<>();
        double previous = Double.NEGATIVE_INFINITY;
        int stride = Math.max(1, (run.grid.cells - run.grid.first) / SECTIONS);
        for (int c = run.grid.first; c < run.grid.cells; c += stride) {
            if (run.grid.place[c] > previous + SAME_PLACE) {
                sections.add(new ChannelSection(
                        run.grid.areaRatio[c],
                        run.grid.x[c] < 0,
                        channels.width[c],
                        channels.height[c],
                        OptionalDouble.of(channels.thickness[c])));
                previous = run.grid.place[c];
            }
        }
        ChannelLayout wanted = run.question.design().channels();
        return new ChannelLayout(wanted.kind(), OptionalDouble.of(channels.count), sections, wanted.roughness());
    }
}
