package dev.penstock.reports.slide;

import dev.penstock.chamber.contour.ChamberContour;
import dev.penstock.chamber.contour.ContourPoint;
import dev.penstock.chamber.contour.EngineLength;
import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cooling.jacket.JacketStation;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.chart.Ink;
import java.awt.Color;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A chamber cut along its axis, with its jacket, to scale; beside it some channels at the throat, enlarged, to a scale of their own. */
final class CutawaySlide {

    private static final double SIZE = 22;
    /** Outer wall of the drawing over the height of the channels, which no model sizes. */
    private static final double CLOSE_OUT = 0.5;
    /** Channels shown enlarged in a column; in a row as many as fit, up to the most. */
    private static final int CHANNELS = 4;

    private static final int MOST_CHANNELS = 14;
    /** Room for the words beside the channels (px). */
    private static final double LABELS = 190;

    private final EngineBalance balance;
    private final ChamberContour contour;
    /** The jacket over the throat, or the one that comes nearest to it. */
    private final Optional<JacketResult> jacket;

    private CutawaySlide(EngineBalance balance) {
        this.balance = balance;
        this.contour = balance.chamber().contour();
        this.jacket = balance.cooling().stream()
                .min(Comparator.comparingDouble(j -> Math.abs(throat(j).x())));
    }

    static Slide of(EngineBalance balance) {
        CutawaySlide slide = new CutawaySlide(balance);
        return new Slide("cutaway", "Chamber, cut along its axis, to scale", slide.sentence(), slide::draw);
    }

    private String sentence() {
        String size = "From injector to exit " + metres(EngineLength.extended(contour))
                + ": the throat is " + millimetres(2 * contour.throatRadius()) + " wide, the exit "
                + metres(2 * contour.exitRadius()) + ".";
        Optional<JacketResult> hottest =
                balance.cooling().stream().max(Comparator.comparingDouble(JacketResult::peakWallTemperature));
        return hottest.map(j -> size + " The coolant keeps a wall of " + millimetres(j.wallThickness()) + " at "
                        + Notation.TEMPERATURE.writeWithUnit(j.peakWallTemperature()) + " at most.")
                .orElse(size);
    }

    private void draw(Pencil pencil, Rectangle2D room) {
        boolean wide = room.getWidth() > 1.3 * room.getHeight();
        Rectangle2D main = room;
        if (jacket.isPresent()) {
            Rectangle2D detail;
            if (wide) {
                double share = 0.27 * room.getWidth();
                main = new Rectangle2D.Double(room.getX(), room.getY(), room.getWidth() - share - 30, room.getHeight());
                detail = new Rectangle2D.Double(room.getMaxX() - share, room.getY(), share, room.getHeight());
            } else {
                double share = 0.36 * room.getHeight();
                main = new Rectangle2D.Double(room.getX(), room.getY(), room.getWidth(), room.getHeight() - share - 20);
                detail = new Rectangle2D.Double(room.getX(), room.getMaxY() - share, room.getWidth(), share);
            }
            detail(pencil, detail, jacket.get(), wide);
        }
        section(pencil, main);
    }

    private void section(Pencil pencil, Rectangle2D room) {
        double length = EngineLength.extended(contour);
        double outer = contour.points().stream()
                .mapToDouble(ContourPoint::radius)
                .max()
                .orElseThrow();
        double scale = Math.min((room.getWidth() - 90) / length, (room.getHeight() - 130) / (2.1 * outer));
        double left = room.getX() + 20 + (room.getWidth() - 90 - scale * length) / 2;
        double axis = room.getCenterY() - 10;
        double zero = left + scale * contour.chamberLength();
        for (int side : new int[] {-1, 1}) {
            balance.cooling().forEach(j -> jacket(pencil, j, zero, axis, side, scale));
        }
        pencil.fill(gas(zero, axis, scale), pencil.tint(Ink.GAS, 0.22));
        for (int side : new int[] {-1, 1}) {
            pencil.line(wall(zero, axis, side, scale), pencil.color(Ink.TEXT), 2.5);
        }
        double injector = scale * contour.points().get(0).radius();
        pencil.fill(
                new Rectangle2D.Double(left - 16, axis - injector - 8, 16, 2 * injector + 16), pencil.color(Ink.STEEL));
        pencil.dashed(
                new Line2D.Double(left - 30, axis, left + scale * length + 30, axis), pencil.color(Ink.MUTED), 1.5, 10);
        labels(pencil, zero, axis, scale, left);
    }

    private void labels(Pencil pencil, double zero, double axis, double scale, double left) {
        Color ink = pencil.color(Ink.TEXT);
        double throat = scale * contour.throatRadius();
        double exit = scale * contour.exitRadius();
        double end = zero + scale * contour.nozzleLength();
        pencil.measure(new Point2D.Double(zero, axis - throat), new Point2D.Double(zero, axis + throat), ink);
        pencil.measure(new Point2D.Double(end + 26, axis - exit), new Point2D.Double(end + 26, axis + exit), ink);
        double deep = Math.max(exit, scale * contour.chamberRadius()) + 46;
        pencil.line(new Line2D.Double(zero, axis - throat - 6, zero, axis - deep + 24), pencil.color(Ink.MUTED), 1.5);
        pencil.middle("throat " + millimetres(2 * contour.throatRadius()), zero, axis - deep + 16, SIZE, true, ink);
        pencil.right("exit " + metres(2 * contour.exitRadius()), end + 40, axis - exit - 30, SIZE, true, ink);
        String chamber = Notation.PRESSURE.writeWithUnit(balance.engine().chamberPressure()) + ", "
                + Notation.TEMPERATURE.writeWithUnit(
                        balance.chamber().ideal().chamber().temperature());
        double below = left + Pencil.width(chamber, SIZE, true) + 12;
        double wall = contour.points().stream()
                .filter(p -> zero + scale * p.x() < below)
                .mapToDouble(ContourPoint::radius)
                .max()
                .orElse(contour.chamberRadius());
        pencil.text(chamber, left, axis + scale * wall + 44, SIZE, true, ink);
        double bar = step(EngineLength.extended(contour));
        double y = axis + deep;
        pencil.measure(new Point2D.Double(left, y), new Point2D.Double(left + scale * bar, y), ink);
        pencil.text(bar >= 1 ? metres(bar) : millimetres(bar), left + scale * bar + 14, y + 7, SIZE, false, ink);
    }

    /** A round length of about a fifth of the whole. */
    private static double step(double length) {
        double decade = Math.pow(10, Math.floor(Math.log10(length / 4)));
        double share = length / 4 / decade;
        return decade * (share >= 5 ? 5 : share >= 2 ? 2 : 1);
    }

    private Path2D gas(double zero, double axis, double scale) {
        Path2D path = wall(zero, axis, -1, scale);
        List<ContourPoint> points = contour.points();
        for (int i = points.size() - 1; i >= 0; i--) {
            path.lineTo(
                    zero + scale * points.get(i).x(),
                    axis + scale * points.get(i).radius());
        }
        path.closePath();
        return path;
    }

    private Path2D wall(double zero, double axis, int side, double scale) {
        Path2D path = new Path2D.Double();
        for (ContourPoint p : contour.points()) {
            double x = zero + scale * p.x();
            double y = axis + side * scale * p.radius();
            if (path.getCurrentPoint() == null) {
                path.moveTo(x, y);
            } else {
                path.lineTo(x, y);
            }
        }
        return path;
    }

    /** Outer wall with channels in it and the hot wall inside of them, each as thick as it is at this scale. */
    private void jacket(Pencil pencil, JacketResult j, double zero, double axis, int side, double scale) {
        List<JacketStation> cells = new ArrayList<>(j.stations());
        cells.sort(Comparator.comparingDouble(JacketStation::x));
        Path2D channels = band(cells, zero, axis, side, scale, j.wallThickness(), 0, 1);
        Path2D shell = band(cells, zero, axis, side, scale, j.wallThickness(), -1, 1 + CLOSE_OUT);
        pencil.fill(shell, pencil.color(Ink.STEEL));
        pencil.fill(channels, pencil.color(coolantInk(j)));
    }

    private Ink coolantInk(JacketResult j) {
        return balance.concept().cooling().stream()
                .filter(c -> c.key().equals(j.circuit()))
                .findFirst()
                .map(c -> c.coolant() == dev.penstock.cycles.concept.Side.FUEL ? Ink.FUEL : Ink.OXIDIZER)
                .orElse(Ink.FUEL);
    }

    private static Path2D band(
            List<JacketStation> cells,
            double zero,
            double axis,
            int side,
            double scale,
            double wall,
            double from,
            double to) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < cells.size(); i++) {
            JacketStation c = cells.get(i);
            double x = zero + scale * end(cells, i);
            double inner = c.radius() + (from < 0 ? 0 : wall + from * c.channelHeight());
            double y = axis + side * scale * inner;
            if (path.getCurrentPoint() == null) {
                path.moveTo(x, y);
            } else {
                path.lineTo(x, y);
            }
        }
        for (int i = cells.size() - 1; i >= 0; i--) {
            JacketStation c = cells.get(i);
            path.lineTo(
                    zero + scale * end(cells, i), axis + side * scale * (c.radius() + wall + to * c.channelHeight()));
        }
        path.closePath();
        return path;
    }

    /** Cells are given by their middles: the first and the last reach half a cell farther. */
    private static double end(List<JacketStation> cells, int i) {
        int n = cells.size();
        double x = cells.get(i).x();
        if (n < 2) {
            return x;
        }
        return i == 0
                ? x - 0.5 * (cells.get(1).x() - x)
                : i == n - 1 ? x + 0.5 * (x - cells.get(n - 2).x()) : x;
    }

    private static JacketStation throat(JacketResult j) {
        return j.stations().stream()
                .min(Comparator.comparingDouble(s -> Math.abs(s.x())))
                .orElseThrow();
    }

    /** Some channels at the throat, looking along the axis: every length in one scale; words above and below, or beside. */
    private void detail(Pencil pencil, Rectangle2D room, JacketResult j, boolean column) {
        JacketStation c = throat(j);
        double pitch = c.channelWidth() + c.landWidth();
        double high = j.wallThickness() + (1 + CLOSE_OUT) * c.channelHeight();
        String title = "Channels at the throat, enlarged, gas side below";
        String widths = "channels " + fine(c.channelWidth()) + ", lands " + fine(c.landWidth())
                + "; the outer wall is not sized";
        Color ink = pencil.color(Ink.TEXT);
        if (!column) {
            double words = 0.36 * room.getWidth();
            List<String> lines = Pencil.wrapped(title, words, SIZE, true);
            double y = room.getY() + SIZE;
            pencil.lines(lines, room.getX(), y, SIZE, true, ink);
            y += (lines.size() + 0.5) * SIZE * Pencil.LEADING;
            pencil.lines(Pencil.wrapped(widths, words, SIZE * 0.9, false), room.getX(), y, SIZE * 0.9, false, ink);
            double scale = (room.getHeight() - 30) / high;
            double left = room.getX() + words + 40;
            double free = room.getMaxX() - left - LABELS;
            int count = (int) Math.max(2, Math.min(MOST_CHANNELS, Math.floor(free / (scale * pitch))));
            scale = Math.min(scale, free / (count * pitch));
            channels(pencil, j, c, new Point2D.Double(left, room.getY() + scale * high), scale, count);
            return;
        }
        double scale = Math.min((room.getWidth() - LABELS) / (CHANNELS * pitch), (room.getHeight() - 150) / high);
        double left = room.getX();
        double bottom = room.getY() + 70 + scale * high + (room.getHeight() - 150 - scale * high) / 2;
        List<String> lines = Pencil.wrapped(title, room.getWidth(), SIZE, true);
        double first = bottom - scale * high - 18 - (lines.size() - 1) * SIZE * Pencil.LEADING;
        pencil.lines(lines, left, first, SIZE, true, ink);
        channels(pencil, j, c, new Point2D.Double(left, bottom), scale, CHANNELS);
        List<String> below = Pencil.wrapped(widths, room.getWidth(), SIZE * 0.9, false);
        pencil.lines(below, left, bottom + 46, SIZE * 0.9, false, ink);
    }

    private void channels(Pencil pencil, JacketResult j, JacketStation c, Point2D corner, double scale, int count) {
        double left = corner.getX();
        double bottom = corner.getY();
        double pitch = c.channelWidth() + c.landWidth();
        double high = scale * (j.wallThickness() + (1 + CLOSE_OUT) * c.channelHeight());
        double width = scale * count * pitch;
        Color ink = pencil.color(Ink.TEXT);
        pencil.fill(new Rectangle2D.Double(left, bottom - high, width, high), pencil.tint(Ink.STEEL, 0.55));
        pencil.fill(new Rectangle2D.Double(left, bottom, width, 12), pencil.color(Ink.GAS));
        double floor = bottom - scale * j.wallThickness();
        double channel = scale * c.channelHeight();
        for (int i = 0; i < count; i++) {
            double x = left + scale * (i * pitch + c.landWidth() / 2);
            pencil.fill(
                    new Rectangle2D.Double(x, floor - channel, scale * c.channelWidth(), channel),
                    pencil.color(coolantInk(j)));
        }
        double side = left + width + 20;
        double words = side + 16;
        double size = SIZE * 0.9;
        pencil.measure(new Point2D.Double(side, floor), new Point2D.Double(side, floor - channel), ink);
        pencil.text("channel", words, floor - channel / 2 - 6, size, false, ink);
        pencil.text(fine(c.channelHeight()) + " high", words, floor - channel / 2 + 18, size, false, ink);
        pencil.text("wall " + fine(j.wallThickness()), words, bottom + 6, size, false, ink);
    }

    private static String fine(double metres) {
        return String.format(Locale.ROOT, "%.2f mm", 1e3 * metres);
    }

    private static String millimetres(double metres) {
        return metres < 0.0095 ? fine(metres) : metres < 1 ? Math.round(1e3 * metres) + " mm" : metres(metres);
    }

    private static String metres(double metres) {
        return metres < 1 ? Math.round(1e3 * metres) + " mm" : String.format(Locale.ROOT, "%.2f m", metres);
    }
}
