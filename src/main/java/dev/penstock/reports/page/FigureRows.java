package dev.penstock.reports.page;

import dev.penstock.provenance.Figure;
import dev.penstock.provenance.FigureTable;
import dev.penstock.provenance.FigureTable.Placed;
import dev.penstock.provenance.Place;
import dev.penstock.reports.text.PageTable;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Figures as tables of a page or a terminal, each number with the path of its trail. Keys of figures stand in one text,
 * parted by blanks.
 */
public final class FigureRows {

    private FigureRows() {}

    /**
     * @param caption what the table shows
     * @param table what a kind of thing publishes
     * @param list path of the list that the things stand in
     * @param things things of that kind, one for each row
     * @param keys keys of the figures that make the columns
     * @param <T> kind of thing
     * @return a table with a row for each thing
     */
    public static <T> PageTable list(String caption, FigureTable<T> table, String list, List<T> things, String keys) {
        return list(caption, table, table.placed(list, things), thing -> "", keys);
    }

    /**
     * @param caption what the table shows
     * @param table what a kind of thing publishes
     * @param things things of that kind with their places, one for each row
     * @param mark "missed", "best" or empty text for each
     * @param keys keys of the figures that make the columns
     * @param <T> kind of thing
     * @return a table with a row for each thing
     */
    public static <T> PageTable list(
            String caption, FigureTable<T> table, List<Placed<T>> things, Function<T, String> mark, String keys) {
        List<T> all = things.stream().map(Placed::thing).toList();
        List<Figure<T>> figures =
                figures(table, keys).stream().map(f -> f.column(all)).toList();
        return new PageTable(
                caption,
                figures.stream()
                        .map(f -> new PageTable.Column(f.heading(), !isNumeric(f, things)))
                        .toList(),
                things.stream()
                        .map(t -> new PageTable.Row(
                                figures.stream().map(f -> f.text(t.thing())).toList(),
                                figures.stream()
                                        .map(f -> path(f, t.thing(), t.at()))
                                        .toList(),
                                mark.apply(t.thing())))
                        .toList());
    }

    /**
     * @param caption what the table shows
     * @param table what a kind of thing publishes
     * @param thing a thing of that kind
     * @param at path of the thing
     * @param keys keys of the figures that make the rows
     * @param <T> kind of thing
     * @return a table with a row for each figure: quantity, value, unit
     */
    public static <T> PageTable sheet(String caption, FigureTable<T> table, T thing, String at, String keys) {
        return new PageTable(
                caption,
                List.of(
                        new PageTable.Column("quantity", true),
                        new PageTable.Column("value", false),
                        new PageTable.Column("unit", true)),
                figures(table, keys).stream()
                        .map(f -> new PageTable.Row(
                                List.of(f.title(), f.text(thing), f.unit()),
                                List.of("", path(f, thing, Place.at(at))),
                                ""))
                        .toList());
    }

    /**
     * @param table what a kind of thing publishes
     * @param thing a thing of that kind
     * @param at path of the thing
     * @param rows keys of the figures of each row, the first of which gives the row its title
     * @param <T> kind of thing
     * @return rows to add to a table, each with a title and its figures
     */
    public static <T> PageTable rows(FigureTable<T> table, T thing, String at, List<String> rows) {
        return new PageTable(
                "",
                List.of(),
                rows.stream()
                        .map(keys -> {
                            List<Figure<T>> figures = figures(table, keys);
                            return new PageTable.Row(
                                    Stream.concat(
                                                    Stream.of(figures.get(0).title()),
                                                    figures.stream().map(f -> f.text(thing)))
                                            .toList(),
                                    Stream.concat(
                                                    Stream.of(""),
                                                    figures.stream().map(f -> path(f, thing, Place.at(at))))
                                            .toList(),
                                    "");
                        })
                        .toList());
    }

    /** Whole numbers that are names, such as those of stations, stand like numbers too. */
    private static <T> boolean isNumeric(Figure<T> figure, List<Placed<T>> things) {
        return figure.isNumber()
                || !things.isEmpty() && figure.value(things.get(0).thing()) instanceof Number;
    }

    /** A number that the thing does not have is traced to nothing. */
    private static <T> String path(Figure<T> figure, T thing, Place at) {
        return figure.number(thing).isPresent() ? at.own(figure.key()) : "";
    }

    private static <T> List<Figure<T>> figures(FigureTable<T> table, String keys) {
        return Stream.of(keys.split(" ")).map(table::figure).toList();
    }
}
