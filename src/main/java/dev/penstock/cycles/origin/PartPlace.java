package dev.penstock.cycles.origin;

import dev.penstock.input.TableKey;
import java.util.List;

/**
 * Where a named part of an engine stands.
 *
 * @param part its key among the components
 * @param tables tables of the concept file that describe it
 * @param inlets numbers of the stations that flow in
 * @param outlets numbers of the stations that flow out
 */
public record PartPlace(PartKey part, List<TableKey> tables, List<Integer> inlets, List<Integer> outlets) {

    public PartPlace {
        tables = List.copyOf(tables);
        inlets = List.copyOf(inlets);
        outlets = List.copyOf(outlets);
    }
}
