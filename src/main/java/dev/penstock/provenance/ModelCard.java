package dev.penstock.provenance;

import java.util.List;

/**
 * What a reader needs to judge a model: its equation, where it comes from, where it holds and how far to trust it.
 * Every physical model class has one as {@code public static final ModelCard CARD}.
 *
 * @param id stable identifier, dotted, starting with the package, for example "cooling.bartz"
 * @param title name of the model in the field's words
 * @param equation the equation in the field's notation, plain text
 * @param range where the equation holds
 * @param uncertainty how far off it may be, as its source states it, or "not stated"
 * @param sources keys into docs/sources.md, or "common practice, no source"
 */
public record ModelCard(
        String id, String title, String equation, String range, String uncertainty, List<String> sources) {

    /** What the ids of values that nothing here computes begin with. */
    static final String GIVEN = "given.";

    private static final String DEFINITION = "definition";

    /** A value that is published in two places. */
    public static final ModelCard SAME =
            definition("provenance.same", "The same value, shown in another place", "x = x", "everywhere");

    public ModelCard {
        if (id.isBlank() || title.isBlank() || equation.isBlank() || sources.isEmpty()) {
            throw new IllegalArgumentException("model card " + id + " lacks id, title, equation or source");
        }
        sources = List.copyOf(sources);
    }

    /**
     * @param id unique dotted id
     * @param title what it computes
     * @param equation the relation
     * @param range where it holds
     * @return card of a relation that no publication is needed for: conservation, or what a term of the trade means
     */
    public static ModelCard definition(String id, String title, String equation, String range) {
        return definition(id, title, equation, range, "exact");
    }

    /**
     * @param id unique dotted id
     * @param title what it computes
     * @param equation the relation
     * @param range where it holds
     * @param accuracy how far it may be off
     * @return card of a relation that no publication is needed for
     */
    public static ModelCard definition(String id, String title, String equation, String range, String accuracy) {
        return new ModelCard(id, title, equation, range, accuracy, List.of(DEFINITION));
    }

    /** @return whether it stands for values that nothing here computes */
    public boolean isGiven() {
        return id.startsWith(GIVEN);
    }

    /** @return whether no publication is needed for it */
    public boolean isDefinition() {
        return sources.contains(DEFINITION);
    }
}
