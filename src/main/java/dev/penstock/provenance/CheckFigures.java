package dev.penstock.provenance;

import dev.penstock.errors.Warning;
import dev.penstock.quantities.Notation;

/** What a limit check and a warning publish. */
public final class CheckFigures {

    private static final ModelCard STATED =
            ModelCard.definition("cycles.bound", "Bound of a limit", "as its inputs state it", "where the part holds");
    private static final ModelCard MARGIN = ModelCard.definition(
            "cycles.margin",
            "Margin to a limit",
            "(limit − value)/|limit|, or the reverse for a lower limit",
            "everywhere");

    /** Figures of a limit check. */
    public static final FigureTable<LimitCheck> LIMITS = FigureTable.named(LimitCheck::name)
            .word("name", "name", LimitCheck::name)
            .number("value", "value", limit -> unit(limit).namingUnit(), LimitCheck::value)
            .from((limit, at) -> Origin.of(limit.kind().card(), at.all(Place.Role.BEFORE)))
            .number("limit", "bound", CheckFigures::bound, LimitCheck::limit)
            .from((limit, at) -> at.all(Place.Role.BOUND).isEmpty()
                    ? Origin.given("limit of the hardware", limit.source())
                    : Origin.of(STATED, at.all(Place.Role.BOUND)))
            .word("unit", "unit", LimitCheck::unit)
            .word("bound", "side", limit -> limit.upper() ? "upper" : "lower")
            .word("met", "met", LimitCheck::met)
            .word("sets", "sets", l -> l.sets().title())
            .number("margin", "margin", Notation.MARGIN, LimitCheck::margin)
            .by(MARGIN, Place.own("value", "limit"))
            .word("source", "source", LimitCheck::source)
            .word("title", "limit", CheckFigures::title)
            .outsideDocuments()
            .word("verdict", "state", LimitCheck::verdict)
            .outsideDocuments()
            .table();

    /** Words of a warning. */
    public static final FigureTable<Warning> WARNINGS = FigureTable.<Warning>ofOne()
            .word("source", "source", Warning::source)
            .word("message", "message", Warning::message)
            .table();

    private CheckFigures() {}

    /**
     * @param limit a limit check
     * @return its name for people
     */
    public static String title(LimitCheck limit) {
        return title(limit.name());
    }

    /**
     * @param name dotted name of a limit, for example "fuel pump.tip_speed"
     * @return the name for people
     */
    public static String title(String name) {
        String plain = name.startsWith("limits.") ? name.substring("limits.".length()) : name;
        return plain.replace(".", ": ")
                .replace("suction_margin", "NPSH available over required")
                .replace("annulus_speed", "square root of AN²")
                .replace("coolant_mach", "Mach number of the coolant")
                .replace('_', ' ');
    }

    /**
     * @param limit a limit check
     * @return its value with the unit
     */
    public static String value(LimitCheck limit) {
        String text = LIMITS.figure("value").text(limit);
        boolean same = !limit.met() && text.equals(unit(limit).writeWithUnit(limit.limit()));
        if (!same) {
            return text;
        }
        Notation unit = unit(limit);
        return unit.metric().isEmpty()
                ? Notation.significant(limit.value(), 9) + " " + limit.unit()
                : unit.writeWithUnit(limit.value(), 9);
    }

    /**
     * @param limit a limit check
     * @return its bound with side and unit, for example "at most 800.0 bar"
     */
    public static String boundary(LimitCheck limit) {
        return LIMITS.figure("limit").text(limit);
    }

    /**
     * @param limit a limit check
     * @return its name with its margin, or by how much it is missed
     */
    public static String verdict(LimitCheck limit) {
        double size = Math.abs(limit.margin());
        return title(limit) + (limit.met() ? " " + Notation.MARGIN.write(size) : " MISSED by " + Notation.share(size));
    }

    private static Notation unit(LimitCheck limit) {
        return Notation.ofUnit(limit.unit());
    }

    private static Notation bound(LimitCheck limit) {
        String side = limit.upper() ? "at most " : "at least ";
        return new Notation(limit.unit(), "", value -> side + unit(limit).writeWithUnit(value));
    }
}
