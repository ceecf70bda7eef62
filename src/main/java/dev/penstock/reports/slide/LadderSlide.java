package dev.penstock.reports.slide;

import dev.penstock.cycles.origin.Content;
import dev.penstock.cycles.origin.LineKey;
import dev.penstock.cycles.origin.PartKind;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.PressureStep;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.chart.Ink;
import java.awt.Color;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Pressure along the main lines as stairs: what raises it and what uses it up. */
final class LadderSlide {

    /** The most flights of stairs that stay readable. */
    private static final int MOST = 3;

    private static final double SIZE = 21;

    /** One step, of one part or of several small ones. */
    private record Stair(String label, double from, double to) {}

    private LadderSlide() {}

    static Slide of(EngineBalance balance) {
        Map<LineKey, List<Stair>> flights = flights(balance);
        double highest = balance.pressureLadder().stream()
                .mapToDouble(s -> Math.max(s.from(), s.to()))
                .max()
                .orElse(1);
        double chamber = balance.engine().chamberPressure();
        String sentence = "For " + bar(chamber) + " in the chamber the feed system has to reach " + bar(highest)
                + ": every part on the way down takes its share.";
        return new Slide("pressure", "Pressure from tank to chamber", sentence, (pencil, room) -> {
            int n = flights.size();
            double height = room.getHeight() / n;
            int i = 0;
            for (Map.Entry<LineKey, List<Stair>> flight : flights.entrySet()) {
                LineKey line = flight.getKey();
                Rectangle2D part =
                        new Rectangle2D.Double(room.getX(), room.getY() + i * height, room.getWidth(), height - 12);
                draw(pencil, part, line.title(), flight.getValue(), highest, chamber, Ink.of(line.content()));
                i++;
            }
        });
    }

    /** The longest lines, what is small put together. */
    private static Map<LineKey, List<Stair>> flights(EngineBalance balance) {
        Map<LineKey, List<PressureStep>> lines = new LinkedHashMap<>();
        balance.pressureLadder().forEach(s -> lines.computeIfAbsent(s.line(), l -> new ArrayList<>())
                .add(s));
        Map<LineKey, List<Stair>> flights = new LinkedHashMap<>();
        lines.entrySet().stream()
                .filter(e -> !e.getKey().equals(LineKey.CHAMBER))
                .sorted((a, b) ->
                        Integer.compare(b.getValue().size(), a.getValue().size()))
                .limit(MOST)
                .sorted((a, b) -> a.getKey().content().compareTo(b.getKey().content()))
                .forEach(e -> flights.put(e.getKey(), stairs(e.getKey(), e.getValue())));
        return flights;
    }

    private static List<Stair> stairs(LineKey line, List<PressureStep> steps) {
        List<Stair> stairs = new ArrayList<>();
        boolean small = false;
        if (!steps.isEmpty() && line.content() != Content.BURNT_GAS) {
            double tank = steps.get(0).from();
            stairs.add(new Stair(line.fromTank() ? "tank" : "branch", tank, tank));
        }
        for (PressureStep step : steps) {
            PartKind kind = step.part().kind();
            boolean plain = kind == PartKind.LINE || kind == PartKind.VALVE || kind == PartKind.ORIFICE;
            if (plain && small) {
                Stair last = stairs.remove(stairs.size() - 1);
                stairs.add(new Stair("lines and valves", last.from(), step.to()));
            } else {
                stairs.add(new Stair(step.part().label(), step.from(), step.to()));
            }
            small = plain;
        }
        return stairs;
    }

    private static void draw(
            Pencil pencil,
            Rectangle2D room,
            String title,
            List<Stair> stairs,
            double highest,
            double chamber,
            Ink ink) {
        double names = 2.6 * SIZE * Pencil.LEADING;
        double top = room.getY() + SIZE * 2.3;
        double base = room.getMaxY() - names;
        double scale = (base - top) / highest;
        pencil.text(title, room.getX(), room.getY() + SIZE * 0.9, SIZE * 1.15, true, pencil.color(ink));
        pencil.line(new Line2D.Double(room.getX(), base, room.getMaxX(), base), pencil.color(Ink.MUTED), 1.5);
        double level = base - scale * chamber;
        pencil.dashed(new Line2D.Double(room.getX(), level, room.getMaxX(), level), pencil.color(Ink.GAS), 2, 8);
        double step = room.getWidth() / stairs.size();
        for (int i = 0; i < stairs.size(); i++) {
            Stair stair = stairs.get(i);
            double x = room.getX() + i * step;
            double low = base - scale * Math.min(stair.from(), stair.to());
            double high = base - scale * Math.max(stair.from(), stair.to());
            boolean rise = stair.to() > stair.from();
            Color color = pencil.color(rise ? Ink.GAIN : ink);
            double width = Math.min(step * 0.62, 190);
            double bar = x + (step - width) / 2;
            pencil.fill(new Rectangle2D.Double(bar, low, width, base - low), pencil.tint(ink, 0.10));
            pencil.fill(new Rectangle2D.Double(bar, high, width, Math.max(3, low - high)), color);
            if (i + 1 < stairs.size()) {
                double y = base - scale * stair.to();
                pencil.line(new Line2D.Double(bar + width, y, bar + step, y), pencil.color(Ink.MUTED), 1.5);
            }
            pencil.middle(
                    (stair.to() >= stair.from() ? "" : "to ") + bar(stair.to()),
                    bar + width / 2,
                    high - 8,
                    SIZE,
                    true,
                    pencil.color(Ink.TEXT));
            List<String> lines = Pencil.wrapped(stair.label(), step - 8, SIZE * 0.92, false);
            pencil.middleLines(
                    lines.subList(0, Math.min(3, lines.size())),
                    bar + width / 2,
                    base + SIZE * 1.15,
                    SIZE * 0.92,
                    pencil.color(Ink.TEXT));
        }
        pencil.right(
                "chamber " + bar(chamber),
                room.getMaxX(),
                room.getY() + SIZE * 0.9,
                SIZE,
                false,
                pencil.color(Ink.GAS));
    }

    private static String bar(double pressure) {
        return Notation.PRESSURE.writeWithUnit(pressure);
    }
}
