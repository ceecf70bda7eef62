package dev.penstock.reports.slide;

import dev.penstock.chamber.loss.NamedLoss;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.quantities.Constants;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.chart.Ink;
import dev.penstock.reports.engine.ShaftPowers;
import dev.penstock.turbomachinery.pump.PumpSizing;
import dev.penstock.turbomachinery.shaft.ShaftBalance;
import java.awt.Color;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the power goes, as bars that add up: jet power (thrust times effective exhaust velocity over two, both in vacuum) from
 * ideal to delivered, shaft power from turbines to liquid, and heat through the wall.
 */
final class EnergySlide {

    /** A part of a bar. */
    private record Part(String label, double power, Ink ink, boolean strong) {}

    /** A bar: its parts add up to the whole. */
    private record Bar(String title, List<Part> parts) {

        double whole() {
            return parts.stream().mapToDouble(Part::power).sum();
        }
    }

    private static final double SIZE = 23;
    /** Size of text where one bar has the sheet for itself. */
    private static final double ALONE = 32;

    private static final double GAP = 56;

    /** Parts below this share of a bar are put together (-). */
    private static final double SMALL = 0.004;

    private static final double LIGHT = 0.5;
    private static final double LIGHTER = 0.28;

    private EnergySlide() {}

    static Slide of(EngineBalance balance) {
        List<Bar> bars = new ArrayList<>(List.of(jet(balance)));
        if (!balance.shafts().isEmpty()) {
            bars.add(shafts(balance));
        }
        double heat = balance.cooling().stream().mapToDouble(j -> j.heatLoad()).sum();
        double jet = 0.5 * balance.engine().vacuumThrust() * balance.engine().vacuumIsp() * Constants.STANDARD_GRAVITY;
        String sentence = "Delivered jet power is " + power(jet) + " of an ideal "
                + power(bars.get(0).whole())
                + (balance.shafts().isEmpty()
                        ? "."
                        : ". The pumps need " + percent(bars.get(1).whole() / jet) + " as much.")
                + (heat > 0 ? " The jacket takes up " + power(heat) + " of heat." : "");
        return new Slide("power", "Where the power goes", sentence, (pencil, room) -> {
            double height = room.getHeight() / bars.size();
            for (int i = 0; i < bars.size(); i++) {
                draw(
                        pencil,
                        new Rectangle2D.Double(room.getX(), room.getY() + i * height, room.getWidth(), height - 10),
                        bars.get(i),
                        bars.size() == 1);
            }
        });
    }

    /** From the jet power of an ideal expansion of all the flow down to what is delivered. */
    private static Bar jet(EngineBalance balance) {
        double flow = balance.engine().massFlow();
        double speed = balance.chamber().ideal().vacuumImpulse();
        List<Part> losses = new ArrayList<>();
        List<NamedLoss> all = new ArrayList<>(balance.chamber().losses());
        all.addAll(balance.engineLosses());
        for (NamedLoss loss : all) {
            double next = speed - loss.impulseLoss();
            losses.add(new Part(loss.name(), 0.5 * flow * (speed * speed - next * next), Ink.GAS, false));
            speed = next;
        }
        List<Part> parts = new ArrayList<>();
        parts.add(new Part("delivered jet power", 0.5 * flow * speed * speed, Ink.GAIN, true));
        parts.addAll(losses);
        return together("Jet power in vacuum: ideal expansion, less each loss", parts);
    }

    private static Bar shafts(EngineBalance balance) {
        List<Part> parts = new ArrayList<>();
        double given = 0;
        boolean turbines = false;
        for (ShaftPowers powers : ShaftPowers.of(balance)) {
            if (!powers.main()) {
                continue;
            }
            ShaftBalance shaft = powers.shaft();
            shaft.pumps().forEach(pump -> addPump(parts, pump, balance));
            if (shaft.powerTakenOff() > 0) {
                parts.add(new Part("boost pump by gear", shaft.powerTakenOff(), Ink.STEEL, true));
            }
            parts.add(new Part(shaft.name() + ", bearings and seals", shaft.mechanicalLoss(), Ink.STEEL, false));
            given += ShaftPowers.sum(powers.gives());
            turbines |= !shaft.turbines().isEmpty();
        }
        String source = (turbines ? "turbines give " : "motors give ") + power(given);
        return together("Shaft power: " + source, parts);
    }

    private static void addPump(List<Part> parts, PumpSizing pump, EngineBalance balance) {
        Ink ink = ShaftPowers.ink(balance, pump);
        double useful = pump.power() * pump.efficiency();
        parts.add(new Part(pump.name() + ", into the liquid", useful, ink, true));
        parts.add(new Part(pump.name() + ", loss", pump.power() - useful, ink, false));
    }

    private static Bar together(String title, List<Part> parts) {
        double whole = parts.stream().mapToDouble(Part::power).sum();
        List<Part> shown = new ArrayList<>();
        double rest = 0;
        for (Part part : parts) {
            if (part.power() > SMALL * whole) {
                shown.add(part);
            } else {
                rest += part.power();
            }
        }
        if (rest > 0) {
            shown.add(new Part("others together", rest, Ink.STEEL, false));
        }
        return new Bar(title, shown);
    }

    private static void draw(Pencil pencil, Rectangle2D room, Bar bar, boolean alone) {
        double full = alone ? ALONE : SIZE;
        double y = room.getY() + full;
        pencil.text(bar.title(), room.getX(), y, full * 1.1, true, pencil.color(Ink.TEXT));
        double top = y + full * 0.8;
        double thick = Math.min(alone ? 170 : 96, room.getHeight() * 0.24);
        double x = room.getX();
        double scale = room.getWidth() / bar.whole();
        int rows = bar.parts().size();
        int columns = room.getWidth() > 1200 && !alone ? 2 : 1;
        double listTop = top + thick + full * 1.8;
        int perColumn = (int) Math.ceil((double) rows / columns);
        double line = Math.min(full * 1.75, (room.getMaxY() - listTop + full * 0.8) / perColumn);
        double size = Math.min(full, line / 1.22);
        double column = (room.getWidth() - (columns - 1) * GAP) / columns;
        for (int i = 0; i < rows; i++) {
            Part part = bar.parts().get(i);
            Color color = color(pencil, bar, i);
            double width = scale * part.power();
            pencil.fill(new Rectangle2D.Double(x, top, Math.max(1.5, width - 1.5), thick), color);
            String share = percent(part.power() / bar.whole());
            if (width > Pencil.width(share, full, true) + 12) {
                pencil.middle(
                        share,
                        x + width / 2,
                        top + thick / 2 + full * 0.36,
                        full,
                        true,
                        part.strong() ? pencil.color(Ink.PAPER) : pencil.color(Ink.TEXT));
            }
            x += width;
            double left = room.getX() + (i / perColumn) * (column + GAP);
            double base = listTop + (i % perColumn) * line;
            pencil.fill(new Rectangle2D.Double(left, base - size * 0.78, size * 0.9, size * 0.9), color);
            pencil.text(part.label(), left + size * 1.4, base, size, false, pencil.color(Ink.TEXT));
            double end = left + column;
            pencil.right(power(part.power()) + ", " + share, end, base, size, false, pencil.color(Ink.TEXT));
            double rule = base + 0.36 * line;
            pencil.line(new Line2D.Double(left, rule, end, rule), pencil.tint(Ink.MUTED, 0.35), 1);
        }
        pencil.line(
                new Line2D.Double(room.getX(), top + thick + 4, room.getMaxX(), top + thick + 4),
                pencil.color(Ink.MUTED),
                1.5);
    }

    /** A tint; neighbours of one ink take turns, so that each is told from the next. */
    private static Color color(Pencil pencil, Bar bar, int i) {
        Part part = bar.parts().get(i);
        if (part.strong()) {
            return pencil.color(part.ink());
        }
        int run = 0;
        while (run < i && isTintOf(bar.parts().get(i - run - 1), part.ink())) {
            run++;
        }
        return pencil.tint(part.ink(), run % 2 == 0 ? LIGHT : LIGHTER);
    }

    private static boolean isTintOf(Part part, Ink ink) {
        return !part.strong() && part.ink() == ink;
    }

    static String power(double watt) {
        return watt >= 1e9 ? Notation.significant(watt / 1e9, 4) + " GW" : Notation.POWER.write(watt);
    }

    private static String percent(double share) {
        return share < 0.001 ? "under 0.1 %" : Notation.PERCENT.write(share);
    }
}
