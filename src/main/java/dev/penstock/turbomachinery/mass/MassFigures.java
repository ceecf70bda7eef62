package dev.penstock.turbomachinery.mass;

import static dev.penstock.quantities.Notation.significant;

import dev.penstock.provenance.FigureTable;
import dev.penstock.quantities.Notation;

/** What the mass of an engine publishes: each part, and the whole. */
public final class MassFigures {

    /** Figures of one part. */
    public static final FigureTable<MassItem> ITEMS = FigureTable.named(MassItem::name)
            .word("name", "part", MassItem::name)
            .number("low_kg", "lowest", Notation.MASS, item -> item.mass().low())
            .number("mass_kg", "mass", Notation.MASS, item -> item.mass().mode())
            .number("high_kg", "highest", Notation.MASS, item -> item.mass().high())
            .word("source", "source", MassItem::source)
            .table();

    /** Headline figures of the whole. */
    public static final FigureTable<EngineMass> TOTALS = FigureTable.<EngineMass>ofOne()
            .number("mass_kg", "engine mass, dry", Notation.MASS, m -> m.total().mode())
            .lessIsBetter()
            .number("mass_low_kg", "engine mass, lowest", Notation.MASS, m -> m.total()
                    .low())
            .number("mass_high_kg", "engine mass, highest", Notation.MASS, m -> m.total()
                    .high())
            .number("thrust_to_weight", "thrust to weight", significant("", 3), m -> m.thrustToWeight()
                    .mode())
            .moreIsBetter()
            .number("thrust_to_weight_low", "thrust to weight, lowest", significant("", 3), m -> m.thrustToWeight()
                    .low())
            .number("thrust_to_weight_high", "thrust to weight, highest", significant("", 3), m -> m.thrustToWeight()
                    .high())
            .table();

    /** Mass part by part. */
    public static final FigureTable<EngineMass> ALL = FigureTable.<EngineMass>ofOne()
            .each("items", EngineMass::items, ITEMS)
            .each("whole_engine", EngineMass::wholeEngine, ITEMS)
            .word("scope", "what it counts", mass -> EngineMass.SCOPE)
            .table();

    private MassFigures() {}
}
