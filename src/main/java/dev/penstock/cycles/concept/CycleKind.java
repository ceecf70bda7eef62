package dev.penstock.cycles.concept;

/** What a concept must know of its cycle without solving it. Each arrangement of components is one kind. */
public interface CycleKind {

    /**
     * What a kind says of itself.
     *
     * @param id id, as in the key {@code cycle} of a concept file
     * @param title name for people
     * @param summary a sentence on what drives the pumps and where the gas goes
     * @param traits what a reader must know of it without solving it
     */
    record About(String id, String title, String summary, CycleTraits traits) {}

    /** @return what it says of itself */
    About about();

    /** @return id, as in the key {@code cycle} of a concept file */
    default String id() {
        return about().id();
    }

    /** @return name for people */
    default String title() {
        return about().title();
    }

    /** @return a sentence on what drives the pumps and where the gas goes */
    default String summary() {
        return about().summary();
    }

    /** @return what a reader must know of it without solving it */
    default CycleTraits traits() {
        return about().traits();
    }

    /** @return an example of it, from which a new concept file is written */
    default CycleExample example() {
        return CycleExample.of(id());
    }
}
