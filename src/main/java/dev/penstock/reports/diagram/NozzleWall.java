package dev.penstock.reports.diagram;

import dev.penstock.cooling.design.CoolantRoute;
import dev.penstock.cooling.design.ExtensionDesign;
import dev.penstock.cooling.design.ExtensionKind;
import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cooling.wall.ChannelKind;
import dev.penstock.cycles.concept.CoolingCircuit;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.quantities.Notation;
import java.util.List;
import java.util.OptionalDouble;

/** What keeps the end of a nozzle from burning: a sign of its own for each kind, and its caption. */
enum NozzleWall {
    /** Rays that leave the wall. */
    RADIATING("sheet radiates", "<path d=\"M-11 3l-4 -2M-14 8l-3 -2M11 3l4 -2M14 8l3 -2\"/>"),
    /** A broken line inside of the wall. */
    FILM_COOLED("under turbine gas", "<path d=\"M-4 0q-1 5 -5 11M4 0q1 5 5 11\" stroke-dasharray=\"2.500 2\"/>"),
    /** A thick wall. */
    ABLATIVE("ablative lining", "<path d=\"M-5 -2q-1 6 -6 13M5 -2q1 6 6 13\" stroke-width=\"4.500\"/>"),
    /** A double wall that is open at its end. */
    DUMP_COOLED(
            "dump-cooled",
            "<path d=\"M-6 -12q-1 13 -8 21M6 -12q1 13 8 21\"/><path d=\"M-14 9v7M-16.500 13.500l2.500 3l2.500 -3M14 9v7M11.500 13.500l2.500 3l2.500 -3\"/>"),
    /** Tubes from throat to exit. */
    TUBE_COOLED("cooled by tubes", "<path d=\"M-1.500 -12q0 14 -4 24M1.500 -12q0 14 4 24\"/>"),
    /** A double wall. */
    CHANNEL_COOLED("cooled by channels", "<path d=\"M-7 -12q-1 14 -10 24M7 -12q1 14 10 24\"/>");

    private final String words;
    private final String sign;

    NozzleWall(String words, String sign) {
        this.words = words;
        this.sign = sign;
    }

    /** SVG elements that are drawn over the sign of a nozzle. */
    String sign() {
        return sign;
    }

    /** The last wall of a nozzle, and what is written beside it. */
    record Drawn(NozzleWall wall, String caption) {}

    static Drawn of(EngineBalance balance) {
        List<CoolingCircuit> circuits = balance.concept().cooling();
        ExtensionDesign uncooled = balance.concept().uncooledWall();
        if (circuits.isEmpty()) {
            return uncooled(uncooled, OptionalDouble.empty());
        }
        JacketResult last = balance.cooling().get(circuits.size() - 1);
        CoolingCircuit circuit = circuits.get(circuits.size() - 1);
        double exit = balance.engine().areaRatio();
        double end = circuit.jacket().route().endAreaRatio().orElse(CoolantRoute.LARGEST_DEFAULT_AREA_RATIO);
        if (last.extension().isPresent()) {
            return uncooled(uncooled, OptionalDouble.of(last.extension().get().startAreaRatio()));
        } else if (uncooled.kind() == ExtensionKind.ABLATIVE && end < exit) {
            return uncooled(uncooled, OptionalDouble.of(end));
        }
        NozzleWall wall = !circuit.returns()
                ? DUMP_COOLED
                : last.layout().kind() == ChannelKind.TUBE ? TUBE_COOLED : CHANNEL_COOLED;
        return new Drawn(wall, wall.words + " to the exit");
    }

    static Drawn uncooled(ExtensionDesign design, OptionalDouble from) {
        NozzleWall wall =
                switch (design.kind()) {
                    case RADIATING -> RADIATING;
                    case FILM_COOLED -> FILM_COOLED;
                    case ABLATIVE -> ABLATIVE;
                };
        String start = from.isPresent() ? " from area ratio " + ratio(from.getAsDouble()) : "";
        String end = design.liningEnd().isPresent()
                ? " to " + ratio(design.liningEnd().getAsDouble()) + ", then " + RADIATING.words
                : "";
        return new Drawn(wall, wall.words + start + end);
    }

    private static String ratio(double areaRatio) {
        return Notation.significant(areaRatio, 3);
    }
}
