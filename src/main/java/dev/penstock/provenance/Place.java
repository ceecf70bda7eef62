package dev.penstock.provenance;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Where a thing stands in a result: its own path, and the paths of those around it that it is made from. Immutable.
 */
public final class Place {

    /** What another thing is to this one. */
    public enum Role {
        /** station that flows in */
        INLET,
        /** station that flows out */
        OUTLET,
        /** station of the gas in the main chamber */
        GAS,
        /** stations at the tanks */
        TANKS,
        /** pumps on a shaft */
        PUMPS,
        /** turbines on a shaft */
        TURBINES,
        /** shaft of a machine; of the whole, every shaft */
        SHAFT,
        /** engine of a stage */
        ENGINE,
        /** cooling jackets */
        JACKET,
        /** thing that this one is a part of */
        WHOLE,
        /** values that this one starts from */
        BEFORE,
        /** values that it has to come to */
        TARGET,
        /** values that set the throat; none where thrust sets the size */
        THROAT,
        /** values that set the thrust; none where the throat sets the size */
        THRUST,
        /** inputs that people state of this one */
        GIVEN,
        /** inputs that people state of the whole */
        PLAN,
        /** inputs that set a bound */
        BOUND
    }

    private final String path;
    private final Map<Role, List<String>> around;

    private Place(String path, Map<Role, List<String>> around) {
        this.path = path;
        this.around = around;
    }

    /**
     * @param path dotted path; empty for the whole result
     * @return the place, with nothing around it
     */
    public static Place at(String path) {
        return new Place(path, new EnumMap<>(Role.class));
    }

    /**
     * @param role what the others are to this one
     * @param paths their paths
     * @return this place with them around it
     */
    public Place with(Role role, List<String> paths) {
        Map<Role, List<String>> more = new EnumMap<>(Role.class);
        more.putAll(around);
        more.put(role, List.copyOf(paths));
        return new Place(path, more);
    }

    /**
     * @param name name of a part
     * @return where the part stands, with the same around it
     */
    public Place part(String name) {
        return new Place(own(name), around);
    }

    /** @return dotted path; empty for the whole result */
    public String path() {
        return path;
    }

    /**
     * @param key key of a figure of this thing
     * @return path of the figure
     */
    public String own(String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    /**
     * @param role what others are to this one
     * @return their paths; none if nothing here has that role
     */
    public List<String> all(Role role) {
        return around.getOrDefault(role, List.of());
    }

    /**
     * @param role what others are to this one
     * @param key key of a figure of theirs
     * @return paths of that figure of each
     */
    public List<String> all(Role role, String key) {
        return all(role).stream().map(p -> p.isEmpty() ? key : p + "." + key).toList();
    }

    /**
     * A source among the figures of the thing itself.
     *
     * @param keys keys of figures
     * @return their paths, at any place
     */
    public static Source own(String first, String... more) {
        List<String> keys = new ArrayList<>(List.of(first));
        keys.addAll(List.of(more));
        return at -> keys.stream().map(at::own).toList();
    }

    /**
     * A source among the figures of others.
     *
     * @param role what they are to this one
     * @param key key of a figure of theirs
     * @return its paths, at any place
     */
    public static Source of(Role role, String key) {
        return at -> at.all(role, key);
    }

    /**
     * A source that is the values around the thing.
     *
     * @param role what they are to this one: values themselves, not things with figures
     * @return their paths, at any place
     */
    public static Source values(Role role) {
        return at -> at.all(role);
    }

    /**
     * A source among what people state.
     *
     * @param keys last parts of inputs' keys; none for every input that belongs here
     * @return paths of those inputs, at any place
     */
    public static Source given(String... keys) {
        Set<String> wanted = Set.of(keys);
        return at -> at.all(Role.GIVEN).stream()
                .filter(path -> keys.length == 0 || wanted.contains(path.substring(path.lastIndexOf('.') + 1)))
                .toList();
    }

    /**
     * A source among what people state.
     *
     * @param starts beginnings of inputs' keys, for example "nozzle."
     * @return paths of those inputs, at any place
     */
    public static Source stated(String... starts) {
        return at -> at.all(Role.GIVEN).stream()
                .filter(path -> Stream.of(starts).anyMatch(start -> path.startsWith(start, path.indexOf('.') + 1)))
                .toList();
    }

    /**
     * A source among what people state.
     *
     * @param table last table of inputs' keys, for example "dry_mass"
     * @return paths of its inputs, at any place
     */
    public static Source table(String table) {
        return at -> at.all(Role.GIVEN).stream()
                .filter(path -> KeyPath.keys(path).contains(table))
                .toList();
    }

    /**
     * A source that is the same everywhere.
     *
     * @param paths dotted paths
     * @return the paths, at any place
     */
    public static Source fixed(String... paths) {
        return at -> List.of(paths);
    }

    /** Says which values went into a figure of the thing at a place. */
    @FunctionalInterface
    public interface Source {

        /**
         * @param at place of the thing
         * @return paths of values
         */
        List<String> paths(Place at);
    }
}
