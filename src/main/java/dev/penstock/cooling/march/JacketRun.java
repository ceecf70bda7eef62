package dev.penstock.cooling.march;

import dev.penstock.cooling.coolant.ChannelFlow;
import dev.penstock.cooling.coolant.CoolantCorrelations;
import dev.penstock.cooling.coolant.CoolantModels;
import dev.penstock.cooling.coolant.CoolantProperties;
import dev.penstock.cooling.coolant.CoolantSideHeatTransfer;
import dev.penstock.cooling.coolant.PseudoCriticalLine;
import dev.penstock.cooling.coolant.SaturationLine;
import dev.penstock.cooling.design.CoolantRoute;
import dev.penstock.cooling.design.JacketCase;
import dev.penstock.cooling.design.JacketDesign;
import dev.penstock.cooling.gas.GasSide;
import dev.penstock.cooling.gas.HotGasProfile;
import dev.penstock.cooling.wall.WallMaterial;
import dev.penstock.numerics.Cancellation;
import dev.penstock.provenance.ModelCard;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A case laid out for marching on one grid: gas side, coolant, wall and route. Marches any channels that fit the grid.
 * Closed after use, on the thread that made it. Not thread-safe.
 */
public final class JacketRun implements AutoCloseable {

    private static final double RELATIVE_THROAT = 1;

    /** Time of a wall balance over that of a state from a table (-): measured. */
    private static final long WALL_EFFORT = 7;

    /** Effort behind which a march tells of it, and asks whether to go on: a cell that does not settle takes a thousand times its usual. */
    private static final long MOST_UNTOLD = 2_000;

    public final JacketCase question;
    public final JacketGrid grid;
    public final GasSide gasSide;
    public final WallMaterial material;
    public final double thickness;
    public final CoolantSideHeatTransfer correlation;
    public final CoolantProperties properties;
    public final PseudoCriticalLine pseudoCritical;
    public final List<List<Leg>> branches;
    public final List<List<LegField>> fields = new ArrayList<>();

    final Optional<SaturationLine> saturation;

    private final ChannelFlow flow = new ChannelFlow();
    private final WallBalance wall;
    private final CoolantModels models;
    private long told;

    public JacketMarch.Outcome outcome;
    public int stoppedAt;
    public String reason = "";
    public double outletPressure;
    public double highestBranchPressure;
    public double outletEnthalpy;

    public JacketRun(JacketCase question, WallMaterial material, CoolantModels models, int cells, boolean tabulated) {
        this.question = question;
        this.material = material;
        this.models = models;
        JacketDesign design = question.design();
        double end = endAreaRatio(question);
        boolean around = design.route().kind() == CoolantRoute.Kind.CIRCUMFERENTIAL;
        List<Double> joints = new ArrayList<>();
        RoutePlan.joint(design.route(), end).ifPresent(joints::add);
        if (question.gas().film().isPresent()) {
            FilmCooling.joint(design.gasSide().film()).ifPresent(joints::add);
        }
        grid = new JacketGrid(question.gas(), design.route().startAreaRatio(), end, joints, cells, around);
        gasSide = GasSides.of(grid, question, models);
        thickness = WallSizing.thickness(design, material, question.gas().throatRadius());
        correlation = CoolantCorrelations.of(
                design.coolantSide().correlation(), question.coolant(), question.inletPressure());
        saturation = models.saturation(question.coolant().fluid());
        pseudoCritical = models.pseudoCritical(question.coolant().fluid());
        flow.criticalPressure = pseudoCritical.criticalPressure();
        branches = RoutePlan.of(design.route(), grid, end);
        branches.forEach(legs ->
                fields.add(legs.stream().map(leg -> new LegField(grid.cells)).toList()));
        properties = new CoolantProperties(question.coolant().fluid(), saturation, question.inletPressure(), tabulated);
        flow.pseudoCriticalTemperature = pseudoCritical.at(question.inletPressure());
        wall = new WallBalance(gasSide, material.conductivity(), correlation, properties, design.coolantSide(), flow);
    }

    public static double endAreaRatio(JacketCase question) {
        HotGasProfile gas = question.gas();
        double exit = gas.areaRatio(gas.stations().get(gas.stations().size() - 1));
        double wanted = question.design()
                .route()
                .endAreaRatio()
                .orElse(Math.min(exit, CoolantRoute.LARGEST_DEFAULT_AREA_RATIO));
        return Math.max(RELATIVE_THROAT, Math.min(exit, wanted));
    }

    /** Marches every branch through the channels; the outcome tells whether the outlet means anything. */
    public void march(ChannelGrid channels) {
        march(new JacketMarch(grid, channels, properties, wall, flow, curved(), this::afterCell));
    }

    /** Marches, and chooses the height of every channel on the way. */
    void deepen(ChannelGrid channels, DepthMarch.Target target) {
        march(new DepthMarch(grid, channels, properties, wall, flow, curved(), this::afterCell, target));
    }

    private boolean curved() {
        return question.design().coolantSide().curvature();
    }

    private void march(JacketMarch march) {
        told = effort();
        models.marching();
        try {
            marchBranches(march);
        } finally {
            tell();
        }
    }

    private void afterCell() {
        if (effort() - told > MOST_UNTOLD) {
            tell();
            Cancellation.check();
        }
    }

    private void tell() {
        long now = effort();
        models.worked(now - told);
        told = now;
    }

    private long effort() {
        return properties.work() + WALL_EFFORT * wall.evaluations;
    }

    private void marchBranches(JacketMarch march) {
        outletPressure = Double.POSITIVE_INFINITY;
        highestBranchPressure = 0;
        outletEnthalpy = 0;
        for (int b = 0; b < branches.size(); b++) {
            List<Leg> legs = branches.get(b);
            JacketMarch.End end = march.run(
                    legs, fields.get(b), question.inletPressure(), question.inletEnthalpy(), question.massFlow());
            outcome = end.outcome();
            stoppedAt = end.cell();
            reason = end.reason();
            if (!end.complete()) {
                return;
            }
            highestBranchPressure = Math.max(highestBranchPressure, end.pressure());
            outletPressure = Math.min(outletPressure, end.pressure());
            outletEnthalpy += legs.get(0).flowShare() * end.enthalpy();
        }
    }

    /** What to do with one cell of one leg's field. */
    public interface CellVisitor {
        void visit(LegField field, int cell);
    }

    /** Visits every cell that coolant passed, once per leg. */
    public void forEachCell(CellVisitor visitor) {
        for (List<LegField> branch : fields) {
            for (LegField field : branch) {
                for (int c = 0; c < grid.cells; c++) {
                    if (field.visited[c]) {
                        visitor.visit(field, c);
                    }
                }
            }
        }
    }

    /** Cell in which the coolant is hottest. */
    public int hottestBulk() {
        int[] cell = new int[1];
        double[] hottest = new double[1];
        forEachCell((field, c) -> {
            if (field.bulk[c] > hottest[0]) {
                hottest[0] = field.bulk[c];
                cell[0] = c;
            }
        });
        return cell[0];
    }

    public int evaluations() {
        return wall.evaluations;
    }

    /** Model of the heat transfer to the coolant. */
    public ModelCard coolantModel() {
        return correlation.card();
    }

    @Override
    public void close() {
        properties.close();
    }
}
