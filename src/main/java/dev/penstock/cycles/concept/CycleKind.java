package dev.penstock.cycles.concept;

/** What a concept must know of its cycle without solving it. Each arrangement of components is one kind. */
public interface CycleKind {

    /** @return id, as in the key {@code cycle} of a concept file */
    String id();

    /** @return name for people */
    String title();

    /** @return a sentence on what drives the pumps and where the gas goes */
    String summary();

    /** @return what a reader must know of it without solving it */
    CycleTraits traits();

    /** @return an example of it, from which a new concept file is written */
    default CycleExample example() {
        return CycleExample.of(id());
    }
}
