package dev.penstock.provenance;

import dev.penstock.errors.Warning;
import dev.penstock.quantities.Notation;

/** What a limit check and a warning publish. */
public final class CheckFigures {

    /** Figures of a limit check. */
    public static final FigureTable<LimitCheck> LIMITS = FigureTable.named(LimitCheck::name)
            .word("name", "name", LimitCheck::name)
            .number("value", "value", limit -> unit(limit).namingUnit(), LimitCheck::value)
            .number("limit", "bound", CheckFigures::bound, LimitCheck::limit)
            .word("unit", "unit", LimitCheck::unit)
            .word("bound", "side", limit -> limit.upper() ? "upper" : "lower")
            .word("met", "met", LimitCheck::met)
            .number("margin", "margin", Notation.MARGIN, LimitCheck::margin)
            .word("source", "source", LimitCheck::source)
            .word("title", "limit", CheckFigures::title)
            .outsideDocuments()
            .word("verdict", "", limit -> limit.met() ? "kept" : "MISSED")
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
        return plain.replace(".", ": ").replace('_', ' ');
    }

    private static Notation unit(LimitCheck limit) {
        return Notation.ofUnit(limit.unit());
    }

    private static Notation bound(LimitCheck limit) {
        String side = limit.upper() ? "at most " : "at least ";
        return new Notation(limit.unit(), "", value -> side + unit(limit).writeWithUnit(value));
    }
}
