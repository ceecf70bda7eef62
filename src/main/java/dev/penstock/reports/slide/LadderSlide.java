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
import java.util.function.Predicate;

/** Pressure along the main lines as stairs: what raises it and what uses it up. */
final class LadderSlide {

    /** The most rows of stairs that stay readable. */
    private static final int ROWS = 3;
    /** The most flights that share the last row. */
    private static final int BESIDE = 2;

    private static final double SIZE = 21;

    /** One step, of one part or of several small ones. */
    private record Stair(String label, double from, double to) {}

    /** The stairs of a line. */
    private record Flight(LineKey line, List<Stair> stairs) {}

    private static final double GAP = 60;
    /** Lines that fit below a bar. */
    private static final int NAME_LINES = 3;

    private LadderSlide() {}

    static Slide of(EngineBalance balance) {
        List<List<Flight>> rows = rows(balance);
        double highest = balance.pressureLadder().stream()
                .mapToDouble(s -> Math.max(s.from(), s.to()))
                .max()
                .orElse(1);
        double chamber = balance.engine().chamberPressure();
        String sentence = "For " + bar(chamber) + " in the chamber the feed system has to reach " + bar(highest)
                + ": every part on the way down takes its share.";
        return new Slide("pressure", "Pressure from tank to chamber", sentence, (pencil, room) -> {
            double height = room.getHeight() / rows.size();
            for (int i = 0; i < rows.size(); i++) {
                List<Flight> row = rows.get(i);
                double width = (room.getWidth() - (row.size() - 1) * GAP) / row.size();
                for (int k = 0; k < row.size(); k++) {
                    Rectangle2D part = new Rectangle2D.Double(
                            room.getX() + k * (width + GAP), room.getY() + i * height, width, height - 12);
                    draw(pencil, part, row.get(k), highest, chamber);
                }
            }
            pencil.right(
                    "dashed: chamber " + bar(chamber),
                    room.getMaxX(),
                    room.getY() + SIZE * 0.9,
                    SIZE,
                    false,
                    pencil.color(Ink.GAS));
        });
    }

    /** The longest lines from a tank, each in a row; those of gas, or else branches, beside one another in the last. */
    private static List<List<Flight>> rows(EngineBalance balance) {
        Map<LineKey, List<PressureStep>> lines = new LinkedHashMap<>();
        balance.pressureLadder().forEach(s -> lines.computeIfAbsent(s.line(), l -> new ArrayList<>())
                .add(s));
        lines.remove(LineKey.CHAMBER);
        List<Flight> gas = longest(lines, line -> line.content() == Content.BURNT_GAS, BESIDE);
        List<Flight> last = gas.isEmpty() ? longest(lines, line -> !line.fromTank(), BESIDE) : gas;
        List<List<Flight>> rows = new ArrayList<>();
        longest(lines, LineKey::fromTank, last.isEmpty() ? ROWS : ROWS - 1)
                .forEach(flight -> rows.add(List.of(flight)));
        if (!last.isEmpty()) {
            rows.add(last);
        }
        return rows;
    }

    private static List<Flight> longest(Map<LineKey, List<PressureStep>> lines, Predicate<LineKey> which, int most) {
        return lines.entrySet().stream()
                .filter(e -> which.test(e.getKey()))
                .sorted((a, b) ->
                        Integer.compare(b.getValue().size(), a.getValue().size()))
                .limit(most)
                .sorted((a, b) -> a.getKey().content().compareTo(b.getKey().content()))
                .map(e -> new Flight(e.getKey(), stairs(e.getKey(), e.getValue())))
                .toList();
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

    private static void draw(Pencil pencil, Rectangle2D room, Flight flight, double highest, double chamber) {
        List<Stair> stairs = flight.stairs();
        Ink ink = Ink.of(flight.line().content());
        double names = 2.6 * SIZE * Pencil.LEADING;
        double top = room.getY() + SIZE * 2.3;
        double base = room.getMaxY() - names;
        double scale = (base - top) / highest;
        pencil.text(flight.line().title(), room.getX(), room.getY() + SIZE * 0.9, SIZE * 1.15, true, pencil.color(ink));
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
            String value = (stair.to() >= stair.from() ? "" : "to ") + bar(stair.to());
            double size = Math.min(SIZE, SIZE * (step - 8) / Pencil.width(value, SIZE, true));
            pencil.middle(value, bar + width / 2, high - 8, size, true, pencil.color(Ink.TEXT));
            double letters = SIZE * 0.92;
            while (letters > SIZE / 2 && Pencil.lines(stair.label(), step - 8, letters, false) > NAME_LINES) {
                letters *= 0.95;
            }
            List<String> lines = Pencil.wrapped(stair.label(), step - 8, letters, false);
            pencil.middleLines(lines, bar + width / 2, base + SIZE * 1.15, letters, pencil.color(Ink.TEXT));
        }
    }

    private static String bar(double pressure) {
        return Notation.PRESSURE.writeWithUnit(pressure);
    }
}
