package dev.penstock.reports;

import dev.penstock.provenance.Figure;
import dev.penstock.provenance.FigureTable;
import dev.penstock.provenance.FigureTable.Placed;
import dev.penstock.provenance.Place;
import java.util.List;
import java.util.stream.Stream;

/** Figures as tables of a page or a terminal, each number with the path of its trail. */
public final class FigureRows {

    private FigureRows() {}

    /**
     * @param caption what the table shows
     * @param table what a kind of thing publishes
     * @param things things of that kind, one for each row
     * @param keys keys of the figures that make the columns
     * @param <T> kind of thing
     * @return a table with a row for each thing
     */
    public static <T> PageTable list(String caption, FigureTable<T> table, List<Placed<T>> things, String... keys) {
        List<Figure<T>> figures = figures(table, keys);
        return new PageTable(
                caption,
                figures.stream()
                        .map(f -> new PageTable.Column(f.heading(), !f.isNumber()))
                        .toList(),
                things.stream().map(t -> row(figures, t)).toList());
    }

    /**
     * @param caption what the table shows
     * @param table what a kind of thing publishes
     * @param thing a thing of that kind
     * @param at where it stands
     * @param keys keys of the figures that make the rows
     * @param <T> kind of thing
     * @return a table with a row for each figure: quantity, value, unit
     */
    public static <T> PageTable sheet(String caption, FigureTable<T> table, T thing, String at, String... keys) {
        return new PageTable(
                caption,
                List.of(
                        new PageTable.Column("quantity", true),
                        new PageTable.Column("value", false),
                        new PageTable.Column("unit", true)),
                figures(table, keys).stream()
                        .map(f -> new PageTable.Row(
                                List.of(f.title(), f.text(thing), f.unit()), List.of("", path(f, Place.at(at))), ""))
                        .toList());
    }

    private static <T> PageTable.Row row(List<Figure<T>> figures, Placed<T> thing) {
        return new PageTable.Row(
                figures.stream().map(f -> f.text(thing.thing())).toList(),
                figures.stream().map(f -> path(f, thing.at())).toList(),
                "");
    }

    private static String path(Figure<?> figure, Place at) {
        return figure.isNumber() ? at.own(figure.key()) : "";
    }

    private static <T> List<Figure<T>> figures(FigureTable<T> table, String... keys) {
        return Stream.of(keys).map(table::figure).toList();
    }
}
