package dev.penstock.provenance;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Where one value comes from.
 *
 * @param model model that made it
 * @param inputs paths of the values that went in, what decides first
 */
public record Origin(ModelCard model, List<String> inputs) {

    public Origin {
        inputs = List.copyOf(inputs);
    }

    /**
     * @param model model that made the value
     * @param parts lists of paths of the values that went in
     * @return the origin with each path once
     */
    @SafeVarargs
    public static Origin of(ModelCard model, List<String>... parts) {
        Set<String> all = new LinkedHashSet<>();
        for (List<String> part : parts) {
            all.addAll(part);
        }
        return new Origin(model, List.copyOf(all));
    }

    /**
     * @param what what kind of origin, for example "stated by the concept"
     * @param source who says so: a source key, a file, the words of the concept
     * @return the origin of a value from outside the calculation
     */
    public static Origin given(String what, String source) {
        return given(what, source, List.of());
    }

    /**
     * @param what what kind of origin, for example "default of the concept"
     * @param source who says so: a source key, a file, the words of the concept
     * @param follows paths of the values that a default was made from; empty for a value that stands alone
     * @return the origin of a value from outside the calculation
     */
    public static Origin given(String what, String source, List<String> follows) {
        return new Origin(
                new ModelCard(
                        ModelCard.GIVEN + Trail.slug(what),
                        what,
                        follows.isEmpty() ? "taken as it stands" : "follows other inputs",
                        "as its origin says",
                        "as its origin says",
                        List.of(source)),
                follows);
    }
}
