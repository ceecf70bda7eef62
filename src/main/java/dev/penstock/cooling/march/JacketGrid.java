package dev.penstock.cooling.march;

import dev.penstock.cooling.coolant.CurvedChannel;
import dev.penstock.cooling.gas.HotGas;
import dev.penstock.cooling.gas.HotGasProfile;
import dev.penstock.cooling.gas.HotGasStation;
import dev.penstock.errors.OutsideValidity;
import dev.penstock.errors.Require;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * Cells along the wall from the injector to the end of the jacket, with the gas at the middle of each; a jacket that begins
 * on the nozzle has as many cells before it as in it, since boundary layer and film come from the injector. {@link WallPieces} says where
 * they end: no cell belongs to two pieces of the wall. Package-private arrays, written once here and only read afterwards.
 */
public final class JacketGrid {

    /** All cells, and the first that the jacket covers. */
    public final int cells;

    public final int first;

    /** Whether channels run around the wall instead of along it. */
    final boolean around;

    /** Length of the wall that the jacket covers (m). */
    final double wallLength;

    final double throatRadius;

    /** Radius of the wall where the jacket is narrowest (m). */
    final double narrowestRadius;

    public final HotGas gas;

    /** Middle of each cell: position (m), wall radius (m), area ratio (-), logarithm of area ratio negative upstream. */
    public final double[] x;

    public final double[] radius;
    public final double[] areaRatio;
    final double[] place;

    /** Gas at the middle of each cell. */
    final double[] mach;

    final double[] gamma;
    public final double[] pressure;
    final double[] temperature;
    final double[] density;
    final double[] velocity;

    /** Length along the wall (m) and area of gas-side surface (m²) of each cell. */
    final double[] length;

    public final double[] area;

    /** Radius of curvature of the channels where they are curved (m), and how much of its effect each place has (-). */
    final double[] curvature;

    final double[] curved;

    /**
     * @param profile hot side
     * @param endAreaRatio nozzle area ratio at which the jacket ends (-)
     * @param joints where no cell may straddle: logarithms of area ratio, negative upstream (-)
     * @param cells number of cells
     */
    public JacketGrid(HotGasProfile profile, double endAreaRatio, List<Double> joints, int cells) {
        this(profile, OptionalDouble.empty(), endAreaRatio, joints, cells, false);
    }

    /**
     * @param profile hot side
     * @param startAreaRatio nozzle area ratio at which the jacket begins (-); empty begins it at the injector
     * @param endAreaRatio nozzle area ratio at which it ends (-)
     * @param joints where else no cell may straddle: logarithms of area ratio, negative upstream (-)
     * @param ownCells number of cells of the jacket
     * @param around whether channels run around the wall
     * @throws OutsideValidity if it ends before it begins, or has fewer cells than pieces
     */
    public JacketGrid(
            HotGasProfile profile,
            OptionalDouble startAreaRatio,
            double endAreaRatio,
            List<Double> joints,
            int ownCells,
            boolean around) {
        this.first = startAreaRatio.isPresent() ? ownCells : 0;
        this.cells = first + ownCells;
        this.around = around;
        this.throatRadius = profile.throatRadius();
        this.narrowestRadius = throatRadius * Math.sqrt(startAreaRatio.orElse(1));
        this.gas = profile.gas();
        x = new double[cells];
        radius = new double[cells];
        areaRatio = new double[cells];
        place = new double[cells];
        mach = new double[cells];
        gamma = new double[cells];
        pressure = new double[cells];
        temperature = new double[cells];
        density = new double[cells];
        velocity = new double[cells];
        length = new double[cells];
        area = new double[cells];
        curvature = new double[cells];
        curved = new double[cells];
        fill(profile, new WallPieces(profile, startAreaRatio, endAreaRatio, joints, ownCells));
        wallLength = DoubleStream.of(length).skip(first).sum();
    }

    /** Length of the coolant's way through a cell (m). */
    double way(int cell) {
        return around ? 2 * Math.PI * radius[cell] : length[cell];
    }

    private void fill(HotGasProfile profile, WallPieces pieces) {
        List<HotGasStation> s = profile.stations();
        double[] measure = pieces.measure;
        double previousX = s.get(0).x();
        double previousR = s.get(0).radius();
        int segment = 1;
        for (int c = 0; c < cells; c++) {
            double face = pieces.faces[c + 1];
            double middle = 0.5 * (pieces.faces[c] + face);
            segment = segmentOf(measure, segment, middle);
            readGas(s, measure, segment, middle, c);
            int faceSegment = segmentOf(measure, segment, face);
            double along = (face - measure[faceSegment - 1]) / (measure[faceSegment] - measure[faceSegment - 1]);
            double faceX =
                    between(s.get(faceSegment - 1).x(), s.get(faceSegment).x(), along);
            double faceR =
                    between(s.get(faceSegment - 1).radius(), s.get(faceSegment).radius(), along);
            length[c] = Math.hypot(faceX - previousX, faceR - previousR);
            area[c] = Math.PI * (previousR + faceR) * length[c];
            previousX = faceX;
            previousR = faceR;
        }
        fillCurvature(profile.throatCurvatureRadius());
    }

    private static int segmentOf(double[] measure, int from, double value) {
        int segment = from;
        while (segment < measure.length - 1 && measure[segment] < value) {
            segment++;
        }
        return segment;
    }

    private void readGas(List<HotGasStation> s, double[] measure, int segment, double value, int c) {
        HotGasStation a = s.get(segment - 1);
        HotGasStation b = s.get(segment);
        double along = (value - measure[segment - 1]) / (measure[segment] - measure[segment - 1]);
        x[c] = between(a.x(), b.x(), along);
        radius[c] = Require.positive("jacket grid", "wall radius (m)", between(a.radius(), b.radius(), along));
        double ratio = radius[c] / throatRadius;
        areaRatio[c] = Math.max(1, ratio * ratio);
        place[c] = x[c] < 0 ? -Math.log(areaRatio[c]) : Math.log(areaRatio[c]);
        mach[c] = between(a.mach(), b.mach(), along);
        gamma[c] = between(a.gamma(), b.gamma(), along);
        pressure[c] = between(a.pressure(), b.pressure(), along);
        temperature[c] = between(a.temperature(), b.temperature(), along);
        density[c] = between(a.density(), b.density(), along);
        velocity[c] = between(a.velocity(), b.velocity(), along);
    }

    /** The throat's radius of curvature, the effect of which fades from the throat; that of the wall where channels run around it. */
    private void fillCurvature(double throatCurvature) {
        for (int c = 0; c < cells; c++) {
            curvature[c] = around ? radius[c] : throatCurvature;
            curved[c] = around ? 1 : CurvedChannel.fading(areaRatio[c]);
        }
    }

    private static double between(double a, double b, double fraction) {
        return a + fraction * (b - a);
    }
}
