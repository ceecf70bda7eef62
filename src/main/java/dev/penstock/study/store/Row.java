package dev.penstock.study.store;

import java.util.List;
import java.util.Optional;

/**
 * One row of a study.
 *
 * @param cells what the columns hold, in their order; empty where the row has no such value
 */
public record Row(List<Optional<Object>> cells) {

    public Row {
        cells = List.copyOf(cells);
    }
}
