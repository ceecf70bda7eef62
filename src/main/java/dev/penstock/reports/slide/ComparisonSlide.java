package dev.penstock.reports.slide;

import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.reports.chart.Ink;
import dev.penstock.study.Measure;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Engines side by side: a small chart of bars for each figure that decides. */
final class ComparisonSlide {

    private static final double SIZE = 21;
    private static final List<String> FIGURES = List.of(
            "isp_vacuum_s", "isp_sea_level_s", "thrust_to_weight", "chamber_pressure_Pa", "thrust_vacuum_N", "mass_kg");

    private ComparisonSlide() {}

    static Slide of(List<EngineBalance> engines) {
        EngineBalance first = engines.stream()
                .max(java.util.Comparator.comparingDouble(b -> b.engine().vacuumIsp()))
                .orElseThrow();
        String sentence = first.concept().name() + " has the highest specific impulse of these " + engines.size()
                + " engines, " + Measure.named("isp_vacuum_s").orElseThrow().text(first)
                + " in vacuum. Every bar begins at zero.";
        return new Slide("comparison", "Engines side by side", sentence, (pencil, room) -> {
            int columns = room.getWidth() > 1.3 * room.getHeight() ? 3 : 2;
            int rows = (FIGURES.size() + columns - 1) / columns;
            for (int i = 0; i < FIGURES.size(); i++) {
                double width = room.getWidth() / columns;
                double height = room.getHeight() / rows;
                Rectangle2D part = new Rectangle2D.Double(
                        room.getX() + (i % columns) * width,
                        room.getY() + (i / columns) * height,
                        width - 40,
                        height - 24);
                draw(pencil, part, Measure.named(FIGURES.get(i)).orElseThrow(), engines);
            }
        });
    }

    private static void draw(Pencil pencil, Rectangle2D room, Measure measure, List<EngineBalance> engines) {
        pencil.text(measure.name(), room.getX(), room.getY() + SIZE, SIZE * 1.05, true, pencil.color(Ink.TEXT));
        List<Double> values = new ArrayList<>();
        for (EngineBalance b : engines) {
            OptionalDouble v = measure.of(b);
            values.add(v.isPresent() ? v.getAsDouble() : Double.NaN);
        }
        double most = values.stream()
                .filter(Double::isFinite)
                .mapToDouble(v -> v)
                .max()
                .orElse(1);
        double step = (room.getHeight() - SIZE * 1.8) / engines.size();
        double size = Math.min(SIZE, step * 0.48);
        double names = engines.stream()
                        .mapToDouble(b -> Pencil.width(b.concept().name(), size, false))
                        .max()
                        .orElse(0)
                + 14;
        double figures = engines.stream()
                        .mapToDouble(b -> Pencil.width(text(measure, b), size, true))
                        .max()
                        .orElse(0)
                + 12;
        double length = Math.max(40, room.getWidth() - names - figures);
        for (int i = 0; i < engines.size(); i++) {
            double y = room.getY() + SIZE * 1.8 + i * step;
            double thick = Math.min(step * 0.66, 54);
            double base = y + thick / 2 + size * 0.36;
            pencil.text(engines.get(i).concept().name(), room.getX(), base, size, false, pencil.color(Ink.TEXT));
            double v = values.get(i);
            double width = Double.isFinite(v) ? length * v / most : 0;
            boolean separated = measure.separated(engines.get(i));
            pencil.fill(
                    new Rectangle2D.Double(room.getX() + names, y, Math.max(2, width), thick),
                    separated ? pencil.tint(Ink.GAS, 0.35) : pencil.color(Ink.GAS));
            pencil.text(
                    text(measure, engines.get(i)),
                    room.getX() + names + width + 8,
                    base,
                    size,
                    true,
                    pencil.color(Ink.TEXT));
        }
    }

    private static String text(Measure measure, EngineBalance balance) {
        OptionalDouble value = measure.of(balance);
        return value.isEmpty()
                ? "-"
                : measure.notation().writeWithUnit(value.getAsDouble())
                        + (measure.separated(balance) ? " (separated)" : "");
    }
}
