package dev.penstock.cooling.design;

import dev.penstock.provenance.Trail;
import java.util.Objects;

/**
 * Which of an engine's cooling circuits is meant, and under which names its parts stand.
 *
 * @param name name in a concept file
 * @param label name of its jacket for people
 * @param owner name that limits are held against
 * @param word what its parts are called besides, with a space behind it; empty for the first
 * @param table table of the concept file that describes it
 */
public record CircuitKey(String name, String label, String owner, String word, String table) {

    /** Path of the figures of the first circuit, and name that its limits are held against. */
    private static final String FIRST_PATH = "cooling";

    /** Path of the list of the others. */
    private static final String LIST = "circuits";

    /** The circuit that begins at the injector: the only one of most engines. */
    public static final CircuitKey FIRST = new CircuitKey(FIRST_PATH, "cooling jacket", FIRST_PATH, "", "cooling");

    public CircuitKey {
        Objects.requireNonNull(name, "name");
    }

    /**
     * @param number its place among the circuits behind the first, from zero
     * @param name name that the concept gives it
     * @return the key of a circuit behind the first
     */
    public static CircuitKey behind(int number, String name) {
        String label = name + " jacket";
        return new CircuitKey(name, label, label, name + " ", "cooling.circuits[" + number + "]");
    }

    /**
     * @param part id of a part that every circuit has, for example "jacket"
     * @return id of this circuit's own
     */
    public String id(String part) {
        return word.isEmpty() ? part : part + "." + Trail.slug(name);
    }

    /** @return dotted path of its figures */
    public String path() {
        return path(owner);
    }

    /**
     * @param owner name that limits of a circuit are held against
     * @return dotted path of the figures of that circuit
     */
    public static String path(String owner) {
        return FIRST.owner.equals(owner) ? FIRST_PATH : LIST + "." + Trail.slug(owner);
    }

    /**
     * @param key key of a figure
     * @return its dotted path
     */
    public String figure(String key) {
        return path() + "." + key;
    }

    /** @return dotted path of the heat that its jacket takes up */
    public String heat() {
        return figure("heat_load_W");
    }

    /** @return dotted path of the pressure that its jacket takes */
    public String drop() {
        return figure("coolant_pressure_drop_Pa");
    }
}
