package dev.penstock.reports.slide;

import dev.penstock.cycles.origin.PartKind;
import dev.penstock.cycles.sheet.Component;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.diagram.FlowOutline;
import java.awt.Color;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The flow diagram of an engine, built up step by step: tanks, pumps, drive, jacket, chamber. */
final class FlowSlides {

    /** Steps in which an engine is built up. */
    enum Step {
        TANKS,
        PUMPS,
        DRIVE,
        JACKET,
        CHAMBER;

        static Step of(PartKind kind) {
            return switch (kind) {
                case TANK, BOTTLE, REGULATOR, HEATER -> TANKS;
                case PUMP -> PUMPS;
                case JACKET -> JACKET;
                case CHAMBER -> CHAMBER;
                default -> DRIVE;
            };
        }
    }

    private static final double LABEL = 17;
    private static final double FIGURE = 15;
    private static final double BOX = 48;
    private static final double SIGN = 50;
    private static final double LARGEST = 2.1;
    /** How much higher a flat diagram is drawn at most. */
    private static final double MOST_SPREAD = 1.9;

    private final FlowOutline outline;
    private final Map<String, Step> steps = new HashMap<>();

    FlowSlides(FlowOutline outline) {
        this.outline = outline;
        outline.boxes()
                .forEach(
                        b -> steps.put(b.component().id(), Step.of(b.component().kind())));
    }

    static double width(String label, String figure) {
        return SIGN + 16 + Math.max(Pencil.width(label, LABEL, true), Pencil.width(figure, FIGURE, false));
    }

    static double boxHeight() {
        return BOX;
    }

    /** @return whether the engine has parts of that step */
    boolean has(Step step) {
        return steps.containsValue(step);
    }

    /** Draws everything up to a step; what that step adds stands out. */
    void draw(Step upTo, Pencil pencil, Rectangle2D room) {
        double scale =
                Math.min(LARGEST, Math.min(room.getWidth() / outline.width(), room.getHeight() / outline.height()));
        FlowOutline drawn = outline.spread(Math.min(room.getHeight() / scale, MOST_SPREAD * outline.height()));
        double left = room.getCenterX() - scale * drawn.width() / 2;
        double top = room.getCenterY() - scale * drawn.height() / 2;
        List<FlowOutline.Way> ways = new ArrayList<>(drawn.ways());
        ways.sort(java.util.Comparator.comparing(w -> !w.shaft()));
        for (FlowOutline.Way way : ways) {
            Step later = later(steps.get(way.from()), steps.get(way.to()));
            if (later.compareTo(upTo) <= 0) {
                draw(way, later == upTo, pencil, scale, left, top);
            }
        }
        for (FlowOutline.Box box : drawn.boxes()) {
            Step step = steps.get(box.component().id());
            if (step.compareTo(upTo) <= 0) {
                draw(box, step == upTo, pencil, scale, left, top);
            }
        }
        ways.stream()
                .filter(w -> later(steps.get(w.from()), steps.get(w.to())).compareTo(upTo) <= 0)
                .forEach(w -> arrow(drawn, w, pencil, scale, left, top));
    }

    private static Step later(Step a, Step b) {
        return a.compareTo(b) >= 0 ? a : b;
    }

    private static void draw(FlowOutline.Way way, boolean fresh, Pencil pencil, double scale, double left, double top) {
        List<Point2D> corners = way.bends().stream()
                .map(p -> (Point2D) new Point2D.Double(left + scale * p.getX(), top + scale * p.getY()))
                .toList();
        Path2D path = Pencil.rounded(corners, 9 * scale);
        if (way.shaft()) {
            pencil.dashed(path, pencil.color(Ink.STEEL), 2 * scale, 3.5 * scale);
            return;
        }
        Color color = pencil.color(Ink.of(way.content()));
        pencil.line(path, color, (fresh ? 4 : 2.8) * scale);
    }

    private void draw(FlowOutline.Box box, boolean fresh, Pencil pencil, double scale, double left, double top) {
        Component c = box.component();
        Rectangle2D p = box.place();
        double x = left + scale * p.getX();
        double y = top + scale * p.getY();
        double height = scale * p.getHeight();
        Ink ink = ink(box);
        pencil.box(
                x,
                y,
                scale * p.getWidth(),
                height,
                14 * scale,
                fresh ? pencil.tint(ink, 0.16) : pencil.color(Ink.PANEL),
                fresh ? pencil.color(ink) : pencil.color(Ink.MUTED),
                (fresh ? 3 : 1.6) * scale);
        pencil.line(Sign.of(c.kind(), x + 29 * scale, y + height / 2, 1.15 * scale), pencil.color(ink), 2.2 * scale);
        double text = x + SIGN * scale;
        if (box.figure().isEmpty()) {
            pencil.text(
                    c.label(),
                    text,
                    y + height / 2 + LABEL * 0.35 * scale,
                    LABEL * scale,
                    true,
                    pencil.color(Ink.TEXT));
        } else {
            pencil.text(c.label(), text, y + height / 2 - 3 * scale, LABEL * scale, true, pencil.color(Ink.TEXT));
            pencil.text(box.figure(), text, y + height / 2 + 17 * scale, FIGURE * scale, false, pencil.color(Ink.TEXT));
        }
    }

    /** A head where a way enters a box, from above or, drawn upwards, from below. */
    private static void arrow(
            FlowOutline drawn, FlowOutline.Way way, Pencil pencil, double scale, double left, double top) {
        Point2D end = way.bends().get(way.upwards() ? 0 : way.bends().size() - 1);
        boolean enters = drawn.boxes().stream()
                .filter(b -> b.component().id().equals(way.upwards() ? way.from() : way.to()))
                .map(FlowOutline.Box::place)
                .anyMatch(p -> Math.abs(end.getY() - (way.upwards() ? p.getMaxY() : p.getY())) < 1);
        if (!way.shaft() && enters) {
            pencil.arrow(
                    left + scale * end.getX(),
                    top + scale * end.getY(),
                    (way.upwards() ? -5.5 : 5.5) * scale,
                    pencil.color(Ink.of(way.content())));
        }
    }

    private Ink ink(FlowOutline.Box box) {
        return switch (box.component().kind()) {
            case CHAMBER, GAS_GENERATOR, PREBURNER, EXHAUST -> Ink.GAS;
            case MOTOR -> Ink.STEEL;
            default ->
                outline.ways().stream()
                        .filter(w ->
                                !w.shaft() && w.from().equals(box.component().id()))
                        .findFirst()
                        .map(w -> Ink.of(w.content()))
                        .orElse(Ink.STEEL);
        };
    }
}
