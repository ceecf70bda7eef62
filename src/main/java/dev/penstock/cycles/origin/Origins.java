package dev.penstock.cycles.origin;

import dev.penstock.provenance.Trail;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a calculation wrote down of its own while it was made.
 *
 * @param entries where stations, speeds, unknowns and steps of pressure come from
 * @param places where parts stand, by their name
 */
public record Origins(List<Trail.Entry> entries, Map<String, PartPlace> places) {

    public Origins {
        entries = List.copyOf(entries);
        places = Collections.unmodifiableMap(new LinkedHashMap<>(places));
    }

    /**
     * @param part name of a part, for example "fuel pump"
     * @return where it stands, if it has a place in the arrangement
     */
    public Optional<PartPlace> place(String part) {
        return Optional.ofNullable(places.get(part));
    }
}
