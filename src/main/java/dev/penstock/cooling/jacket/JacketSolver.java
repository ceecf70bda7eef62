package dev.penstock.cooling.jacket;

import dev.penstock.cooling.coolant.ChannelFlow;
import dev.penstock.cooling.coolant.CoolantCorrelations;
import dev.penstock.cooling.coolant.CoolantModels;
import dev.penstock.cooling.coolant.CoolantSideDesign;
import dev.penstock.cooling.design.ChannelLayout;
import dev.penstock.cooling.design.ChannelRule;
import dev.penstock.cooling.design.ExtensionKind;
import dev.penstock.cooling.design.JacketCase;
import dev.penstock.cooling.design.JacketLoad;
import dev.penstock.cooling.march.ChannelGrid;
import dev.penstock.cooling.march.ChannelSizing;
import dev.penstock.cooling.march.JacketMarch;
import dev.penstock.cooling.march.JacketRun;
import dev.penstock.cooling.march.SizingStart;
import dev.penstock.cooling.wall.WallLibrary;
import dev.penstock.cooling.wall.WallMaterial;
import dev.penstock.errors.FailureSubject;
import dev.penstock.errors.NotConverged;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.errors.Warning;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.fluids.state.Phase;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Solves a cooling jacket: channels sized where the design leaves them open, then coolant marched cell by cell against
 * the hot gas. A jacket that overheats, boils its coolant or misses any other limit is a result with that limit missed;
 * only a jacket through which the flow cannot pass is an error. Safe to share between threads: what it keeps of a coolant
 * ({@link CoolantModels}) depends on nothing else, and every case is solved from its own start.
 */
public final class JacketSolver {

    /** The sizing march is coarse: where the fine one then runs out of pressure, channels grow until it passes. */
    private static final double WIDENING = 1.25;

    private static final int MOST_WIDENINGS = 10;

    private final WallLibrary walls;
    private final CoolantModels models;

    private final boolean tabulated;

    /** @param walls wall materials */
    public JacketSolver(WallLibrary walls) {
        this(walls, new CoolantModels(), true);
    }

    private JacketSolver(WallLibrary walls, CoolantModels models, boolean tabulated) {
        this.walls = walls;
        this.models = models;
        this.tabulated = tabulated;
    }

    /**
     * @param walls wall materials
     * @return a solver that asks the fluids' full models at every step, ten to forty times slower
     */
    public static JacketSolver onFullModels(WallLibrary walls) {
        return new JacketSolver(walls, new CoolantModels(), false);
    }

    /** @return the same solver for one series of questions, whose marches are counted from none */
    public JacketSolver counting() {
        return new JacketSolver(walls, models.counting(), tabulated);
    }

    /** @return marches through jackets so far, those that sized channels and those of judgements included */
    public int marches() {
        return models.marches();
    }

    /** @return effort of these marches, in states of the coolant ({@link dev.penstock.cooling.coolant.CoolantProperties#work()}) */
    public long work() {
        return models.work();
    }

    /**
     * A case with every channel size given.
     *
     * @param question the case
     * @param start where the sizing of a neighbouring case may begin; empty if the sizes were given
     */
    public record Sized(JacketCase question, Optional<SizingStart> start) {}

    /**
     * Chooses the channels of a case whose design leaves them open, so that a cycle may hold them while it iterates.
     *
     * @param question case
     * @return the case with every channel size given; the same case if they were given already
     */
    public JacketCase sized(JacketCase question) {
        return sized(question, Optional.empty()).question();
    }

    /** As {@link #sized(JacketCase)}, from where a neighbouring case was left. */
    public Sized sized(JacketCase question, Optional<SizingStart> near) {
        return question.design().channels().open()
                ? sized(question, ChannelRule.of(question), near)
                : new Sized(question, Optional.empty());
    }

    /**
     * Makes the automatic choice of a correlation explicit, so that a cycle may hold it while it iterates: it depends on
     * whether the inlet pressure is above the critical one.
     *
     * @param question case
     * @return the same case with the correlation named
     */
    public static JacketCase withCorrelation(JacketCase question) {
        CoolantSideDesign side = question.design().coolantSide();
        if (side.correlation() != CoolantSideDesign.Correlation.AUTOMATIC) {
            return question;
        }
        CoolantSideDesign named = new CoolantSideDesign(
                CoolantCorrelations.automatic(question.coolant(), question.inletPressure()),
                side.curvature(),
                side.roughWall());
        return question.withDesign(question.design().withCoolantSide(named));
    }

    /** An open case with its channels sized to another rule for their shape. */
    public JacketCase sized(JacketCase open, ChannelRule rule) {
        return sized(open, rule, Optional.empty()).question();
    }

    private Sized sized(JacketCase open, ChannelRule rule, Optional<SizingStart> near) {
        JacketCase question = JacketEnd.stated(open, walls);
        WallMaterial material = walls.material(question.design().wall().material());
        ChannelSizing.Sized chosen = ChannelSizing.size(question, material, models, rule, near);
        return new Sized(
                question.withDesign(question.design().withChannels(chosen.layout())), Optional.of(chosen.start()));
    }

    /**
     * @param asked case
     * @return the jacket, with every limit held against its value
     * @throws dev.penstock.errors.InvalidInput if channels overlap, naming the place, or the material is unknown
     * @throws OutsideValidity if the coolant runs out of pressure, chokes or leaves its fluid's model, naming the place
     * @throws NotConverged if a wall balance does not settle
     */
    public JacketResult solve(JacketCase asked) {
        JacketCase question = JacketEnd.stated(asked, walls);
        WallMaterial material = walls.material(question.design().wall().material());
        int sizing = 0;
        boolean own = question.design().channels().open();
        JacketCase sized = question;
        if (own) {
            ChannelSizing.Sized chosen = ChannelSizing.size(question, material, models);
            sizing = chosen.evaluations();
            sized = question.withDesign(question.design().withChannels(chosen.layout()));
        }
        try (JacketRun run =
                new JacketRun(sized, material, models, sized.design().cells(), tabulated)) {
            ChannelLayout layout = sized.design().channels();
            ChannelGrid channels = ChannelGrid.of(run.grid, layout, run.thickness);
            run.march(channels);
            for (int i = 0; i < MOST_WIDENINGS && own && run.outcome != JacketMarch.Outcome.COMPLETE; i++) {
                layout = layout.taller(WIDENING);
                channels = ChannelGrid.of(run.grid, layout, run.thickness);
                run.march(channels);
            }
            refuseFailure(run);
            return result(run, channels, layout, sizing);
        }
    }

    /**
     * Marches through a jacket whose channels are given, and no more: the same heat and pressure drop as {@link #solve}, at
     * a third of its cost.
     *
     * @param asked case with every channel size given
     * @return heat load and pressure drop
     * @throws dev.penstock.errors.InvalidInput if channels overlap, naming the place, or the material is unknown
     * @throws OutsideValidity as {@link #solve}
     * @throws NotConverged as {@link #solve}
     */
    public JacketLoad load(JacketCase asked) {
        JacketCase question = JacketEnd.stated(asked, walls);
        WallMaterial material = walls.material(question.design().wall().material());
        ChannelLayout layout = question.design().channels();
        try (JacketRun run =
                new JacketRun(question, material, models, question.design().cells(), tabulated)) {
            run.march(ChannelGrid.of(run.grid, layout, run.thickness));
            refuseFailure(run);
            int hottest = run.hottestBulk();
            return new JacketLoad(
                    JacketStations.heatLoad(run),
                    question.inletPressure() - run.outletPressure,
                    layout,
                    run.grid.x[hottest],
                    run.grid.areaRatio[hottest]);
        }
    }

    /**
     * @param question case that was solved
     * @param jacket its jacket
     * @return the station at the throat with two-dimensional conduction; empty for tubes
     */
    public Optional<CellCheck> cellCheck(JacketCase question, JacketResult jacket) {
        WallMaterial material = walls.material(question.design().wall().material());
        return CellCheck.of(jacket.layout().kind(), jacket.stations(), material);
    }

    private static void refuseFailure(JacketRun run) {
        if (run.outcome == JacketMarch.Outcome.COMPLETE) {
            return;
        }
        String place = String.format(
                Locale.ROOT,
                "%s at x = %.4g m (area ratio %.4g)",
                run.question.design().circuit().label(),
                run.grid.x[run.stoppedAt],
                run.grid.areaRatio[run.stoppedAt]);
        double inlet = run.question.inletPressure();
        switch (run.outcome) {
            case PRESSURE_EXHAUSTED ->
                throw new OutsideValidity(
                        FailureSubject.JACKET,
                        place,
                        "inlet pressure (Pa)",
                        inlet,
                        "more than the pressure drop up to there; make channels larger or raise the pressure");
            case CHOKED ->
                throw new OutsideValidity(
                        FailureSubject.JACKET,
                        place,
                        "coolant flow (kg/s)",
                        run.question.massFlow(),
                        "below the flow at which the channel chokes");
            case NO_STATE ->
                throw new OutsideValidity(
                        FailureSubject.JACKET,
                        place + ", coolant leaves the range of its fluid model (" + run.reason + ")",
                        "inlet pressure (Pa)",
                        inlet,
                        "inside the fluid's range all the way");
            default ->
                throw new NotConverged(
                        FailureSubject.JACKET, place, 1, Double.POSITIVE_INFINITY, "flux and state do not settle");
        }
    }

    private JacketResult result(JacketRun run, ChannelGrid channels, ChannelLayout layout, int sizing) {
        JacketCase question = run.question;
        FluidState inlet =
                question.coolant().fluid().atPressureEnthalpy(question.inletPressure(), question.inletEnthalpy());
        FluidState outlet = outlet(run, inlet);
        List<JacketStation> stations = JacketStations.of(run, channels);
        List<WallAssessment> wall = JacketStations.wall(run, channels, stations);
        Optional<ExtensionResult> extension = question.design()
                .extension()
                .filter(e -> e.kind() != ExtensionKind.ABLATIVE)
                .flatMap(e -> RadiationSkirt.beyond(
                        question, e.kind(), JacketRun.endAreaRatio(question), walls.material(e.material()), models));
        List<Warning> warnings = new ArrayList<>(new JacketWarnings(run, inlet, outlet).collect(extension));
        int own = run.grid.cells - run.grid.first;
        SootJudgement.of(run, channels, other -> new JacketRun(other, run.material, models, own, tabulated))
                .ifPresent(warnings::add);
        Optional<CellCheck> cell = CellCheck.of(channels.kind, stations, run.material);
        double peakWall = cell.map(c -> c.hottest(stations, run.material)).orElse(0.0);
        double peakFlux = Double.NEGATIVE_INFINITY;
        for (JacketStation station : stations) {
            peakWall = Math.max(peakWall, station.gasSideWallTemperature());
            peakFlux = Math.max(peakFlux, station.heatFlux());
        }
        return new JacketResult(
                question.design().circuit(),
                stations,
                inlet,
                outlet,
                JacketStations.heatLoad(run),
                question.inletPressure() - run.outletPressure,
                outlet.temperature() - inlet.temperature(),
                peakWall,
                peakFlux,
                layout.counted(channels.count),
                run.thickness,
                SootJudgement.resistance(run),
                wall,
                extension,
                new JacketChecks(run, walls).of(channels, stations, peakWall, wall, extension),
                warnings,
                run.gasSide.model(),
                run.coolantModel(),
                sizing + run.evaluations());
    }

    /** The outlet manifold; beyond the range of the fluid's model with the numbers that the march carried on with. */
    private static FluidState outlet(JacketRun run, FluidState inlet) {
        ChannelFlow end = new ChannelFlow();
        run.properties.bulk(run.outletPressure, run.outletEnthalpy, end);
        if (!run.properties.beyondModel()) {
            return run.question.coolant().fluid().atPressureEnthalpy(run.outletPressure, run.outletEnthalpy);
        }
        FluidState edge = run.question
                .coolant()
                .fluid()
                .atPressureTemperature(run.outletPressure, run.properties.edgeTemperature(run.outletPressure));
        double ratio = end.bulkTemperature / edge.temperature();
        return new FluidState(
                inlet.fluid(),
                run.outletPressure,
                end.bulkTemperature,
                end.bulkDensity,
                run.outletEnthalpy,
                edge.entropy() + edge.isobaricHeatCapacity() * Math.log(ratio),
                edge.isobaricHeatCapacity(),
                edge.isochoricHeatCapacity(),
                edge.soundSpeed() * Math.sqrt(ratio),
                edge.viscosity(),
                edge.conductivity(),
                edge.phase() == Phase.TWO_PHASE ? Phase.GAS : edge.phase(),
                OptionalDouble.empty());
    }
}
