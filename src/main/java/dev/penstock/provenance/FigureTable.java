package dev.penstock.provenance;

import dev.penstock.quantities.Notation;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;

/**
 * What a kind of thing publishes, in the order of documents: figures, and parts that have tables of their own. Declared
 * beside the record that it describes. Immutable; the declaring methods of {@link Builder} are not thread-safe.
 *
 * @param <T> kind of thing
 */
public final class FigureTable<T> {

    /** A figure, or a part with figures of its own. */
    public sealed interface Member<T> permits Figure, Branch {

        /** @return key in documents and paths */
        String key();

        /** @return whether documents hold it */
        Presence presence();
    }

    /** How the parts of a thing stand in documents. */
    public enum Shape {
        /** one part or none */
        ONE,
        /** a list */
        LIST,
        /** an object with the name of each part as key */
        KEYED
    }

    /** Whether documents hold a figure or part. */
    public enum Presence {
        /** always; null where the thing lacks it */
        ALWAYS,
        /** where the thing has it */
        IF_THERE,
        /** never: only tables and the trail show it */
        NEVER
    }

    /**
     * Parts of a thing.
     *
     * @param key key in documents and paths
     * @param shape one part, a list, or parts by their names
     * @param parts the parts of a thing
     * @param table what a part publishes
     * @param placing where a part stands
     * @param presence whether documents hold it
     * @param <T> kind of thing
     * @param <C> kind of part
     */
    public record Branch<T, C>(
            String key,
            Shape shape,
            Function<T, List<C>> parts,
            FigureTable<C> table,
            Placing<T, C> placing,
            Presence presence)
            implements Member<T> {

        /** The part of that name, or the only one. */
        private Optional<C> part(T thing, String name) {
            List<C> all = parts.apply(thing);
            return IntStream.range(0, all.size())
                    .filter(i -> shape == Shape.ONE || table.path(all.get(i), i).equals(name))
                    .mapToObj(all::get)
                    .findFirst();
        }

        private Branch<T, C> shown(Presence where) {
            return new Branch<>(key, shape, parts, table, placing, where);
        }

        /**
         * @param thing a thing
         * @param at where it stands
         * @param visitor told of every part
         */
        void visit(T thing, Place at, Visitor visitor) {
            List<C> all = parts.apply(thing);
            for (int i = 0; i < all.size(); i++) {
                visitor.visit(table, all.get(i), place(thing, all.get(i), i, at));
            }
        }

        /**
         * @param thing a thing
         * @param part one of its parts
         * @param index place of the part in its list
         * @param at where the thing stands
         * @return where the part stands
         */
        public Place place(T thing, C part, int index, Place at) {
            Place here = at.part(shape == Shape.ONE ? key : key + "." + table.path(part, index))
                    .with(Place.Role.WHOLE, List.of(at.path()));
            return placing.place(thing, part, here);
        }
    }

    /** Says what is around a part. */
    @FunctionalInterface
    public interface Placing<T, C> {

        /**
         * @param thing a thing
         * @param part one of its parts
         * @param at path of the part, with what is around the thing
         * @return the place of the part
         */
        Place place(T thing, C part, Place at);
    }

    /** Told of a thing with its table and place; decides whether to go on to its parts. */
    @FunctionalInterface
    public interface Visitor {

        /**
         * @param table what the thing publishes
         * @param thing the thing
         * @param at where it stands
         * @param <C> kind of thing
         */
        <C> void visit(FigureTable<C> table, C thing, Place at);
    }

    private final BiFunction<T, Integer, String> name;
    private final List<Member<T>> members;

    private FigureTable(BiFunction<T, Integer, String> name, List<Member<T>> members) {
        this.name = name;
        this.members = List.copyOf(members);
    }

    /**
     * @param <T> kind of thing
     * @return a table of a thing that is the only one of its kind
     */
    public static <T> Builder<T> ofOne() {
        return new Builder<>((thing, index) -> Integer.toString(index));
    }

    /**
     * @param name name of a thing among its like, for people or not; paths hold its {@link Trail#slug}
     * @param <T> kind of thing
     * @return a table of things with names
     */
    public static <T> Builder<T> named(Function<T, String> name) {
        return new Builder<>((thing, index) -> name.apply(thing));
    }

    /**
     * @param thing a thing
     * @param index its place among its like
     * @return its name; its place where it has none
     */
    public String name(T thing, int index) {
        return name.apply(thing, index);
    }

    private String path(T thing, int index) {
        return Trail.slug(name(thing, index));
    }

    /** @return figures and parts in the order of documents */
    public List<Member<T>> members() {
        return members;
    }

    /** @return the figures alone, in order */
    public List<Figure<T>> figures() {
        List<Figure<T>> figures = new ArrayList<>();
        for (Member<T> member : members) {
            if (member instanceof Figure<T> figure) {
                figures.add(figure);
            }
        }
        return figures;
    }

    /** @return the figures that documents hold, in order */
    public List<Figure<T>> documented() {
        return figures().stream()
                .filter(figure -> figure.presence() != Presence.NEVER)
                .toList();
    }

    /**
     * @param key key of a figure
     * @return the figure
     * @throws IllegalArgumentException if there is none of that key (a defect in the caller)
     */
    public Figure<T> figure(String key) {
        return figures().stream()
                .filter(figure -> figure.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no figure " + key));
    }

    /**
     * @param path path of a figure below a thing of this kind, for example "pumps.fuel-pump.speed_rad_s"
     * @return the figure as one of the thing, empty where the thing lacks the part; none if no thing can have it
     */
    public Optional<Figure<T>> at(String path) {
        int dot = path.indexOf('.');
        if (dot < 0) {
            return figures().stream().filter(f -> f.key().equals(path)).findFirst();
        }
        return members.stream()
                .filter(member -> member instanceof Branch && member.key().equals(path.substring(0, dot)))
                .findFirst()
                .flatMap(member -> below((Branch<T, ?>) member, path.substring(dot + 1)));
    }

    private static <T, C> Optional<Figure<T>> below(Branch<T, C> branch, String path) {
        int dot = branch.shape() != Shape.ONE ? path.lastIndexOf('.') : -1;
        String part = path.substring(0, Math.max(0, dot));
        return branch.table()
                .at(path.substring(dot + 1))
                .filter(figure -> branch.shape() == Shape.ONE || dot > 0)
                .map(figure -> figure.within(
                        whole -> branch.part(whole, part),
                        branch.shape() != Shape.ONE ? part.replace('-', ' ') + ", " + figure.title() : figure.title()));
    }

    /**
     * @param same model of a value that is shown in another place
     * @param first path of a thing where its figures are made
     * @return the same figures, each made from itself there
     */
    public FigureTable<T> again(ModelCard same, Function<T, String> first) {
        List<Member<T>> shown = new ArrayList<>();
        for (Figure<T> figure : figures()) {
            shown.add(figure.from(
                    (thing, at) -> Optional.of(new Origin(same, List.of(first.apply(thing) + "." + figure.key())))));
        }
        return new FigureTable<>(name, shown);
    }

    /**
     * @param keys keys of figures
     * @return the same figures without these
     */
    public FigureTable<T> without(String... keys) {
        List<String> left = List.of(keys);
        return new FigureTable<>(
                name, members.stream().filter(m -> !left.contains(m.key())).toList());
    }

    /**
     * Records every number that has an origin, of a thing and its parts. What the calculation wrote down itself stands.
     *
     * @param thing a thing
     * @param at where it stands
     * @param trail where to record
     */
    public void record(T thing, Place at, Trail trail) {
        walk(thing, at, new Visitor() {
            @Override
            public <C> void visit(FigureTable<C> table, C part, Place place) {
                for (Figure<C> figure : table.figures()) {
                    String path = place.own(figure.key());
                    if (!trail.has(path)) {
                        figure.number(part).ifPresent(value -> figure.origin(part, place)
                                .ifPresent(origin -> trail.record(
                                        path, value, figure.notation(part).siUnit(), origin)));
                    }
                }
            }
        });
    }

    /**
     * @param thing a thing
     * @param at where it stands
     * @param visitor told of the thing, then of each of its parts
     */
    public void walk(T thing, Place at, Visitor visitor) {
        visitor.visit(this, thing, at);
        Visitor deeper = new Visitor() {
            @Override
            public <C> void visit(FigureTable<C> table, C part, Place place) {
                table.walk(part, place, visitor);
            }
        };
        for (Member<T> member : members) {
            if (member instanceof Branch<T, ?> branch) {
                branch.visit(thing, at, deeper);
            }
        }
    }

    /**
     * A thing where it stands.
     *
     * @param thing the thing
     * @param at where it stands
     * @param <T> kind of thing
     */
    public record Placed<T>(T thing, Place at) {}

    /**
     * @param list path of the list that things of this kind stand in
     * @param things the things, in the order of that list
     * @return each with its path, and nothing around it
     */
    public List<Placed<T>> placed(String list, List<T> things) {
        List<Placed<T>> placed = new ArrayList<>();
        for (int i = 0; i < things.size(); i++) {
            placed.add(new Placed<>(things.get(i), Place.at(list + "." + path(things.get(i), i))));
        }
        return placed;
    }

    /**
     * @param list path of the list that things of this kind stand in
     * @param things the things, in the order of that list
     * @param key key of a figure
     * @return path of that figure of each
     */
    public List<String> paths(String list, List<T> things, String key) {
        return placed(list, things).stream().map(thing -> thing.at().own(key)).toList();
    }

    /**
     * @param list path of the list that things of this kind stand in
     * @param things the things, in the order of that list
     * @return path of each
     */
    public List<String> paths(String list, List<T> things) {
        return placed(list, things).stream().map(thing -> thing.at().path()).toList();
    }

    /** Declares the figures of a kind of thing one after the other. */
    public static final class Builder<T> {

        private final BiFunction<T, Integer, String> name;
        private final List<Member<T>> members = new ArrayList<>();

        private Builder(BiFunction<T, Integer, String> name) {
            this.name = name;
        }

        /**
         * @param key key in documents
         * @param title name for people, empty if tables do not show it
         * @param value text, truth or list of texts or numbers; may be optional
         * @return this builder
         */
        public Builder<T> word(String key, String title, Function<T, ?> value) {
            members.add(Figure.word(key, title, value));
            return this;
        }

        /**
         * @param key key in documents, ending in the SI unit
         * @param title name for people, without the unit
         * @param notation how people read it, with its SI unit
         * @param value the number in SI
         * @return this builder
         */
        public Builder<T> number(String key, String title, Notation notation, ToDoubleFunction<T> value) {
            members.add(Figure.number(key, title, notation, value::applyAsDouble));
            return this;
        }

        /**
         * @param key key in documents
         * @param title name for people
         * @param notation how people read it: things of this kind have different units
         * @param value the number in SI
         * @return this builder
         */
        public Builder<T> number(String key, String title, Function<T, Notation> notation, ToDoubleFunction<T> value) {
            members.add(Figure.number(key, title, notation, value::applyAsDouble));
            return this;
        }

        /**
         * @param key key in documents, ending in the SI unit
         * @param title name for people, without the unit
         * @param notation how people read it, with its SI unit
         * @param value the number in SI as {@link java.util.OptionalDouble}, or {@link Optional} of a number
         * @return this builder
         */
        public Builder<T> optional(String key, String title, Notation notation, Function<T, ?> value) {
            members.add(Figure.number(key, title, notation, value));
            return this;
        }

        /**
         * @param key key in documents
         * @param title name for people
         * @param value a whole number
         * @return this builder
         */
        public Builder<T> count(String key, String title, ToIntFunction<T> value) {
            members.add(Figure.number(key, title, Notation.COUNT, value::applyAsInt));
            return this;
        }

        /**
         * Says where the last figure comes from.
         *
         * @param model model that makes it
         * @param sources what goes in
         * @return this builder
         */
        public Builder<T> by(ModelCard model, Place.Source... sources) {
            return by(thing -> model, sources);
        }

        /**
         * Says where the last figure comes from.
         *
         * @param model model that makes it, of a thing
         * @param sources what goes in
         * @return this builder
         */
        public Builder<T> by(Function<T, ModelCard> model, Place.Source... sources) {
            return from((thing, at) -> new Origin(model.apply(thing), paths(at, sources)));
        }

        /**
         * Says where the last figure comes from.
         *
         * @param origin its model and what goes in, of a thing at its place
         * @return this builder
         */
        public Builder<T> from(BiFunction<T, Place, Origin> origin) {
            return change(figure -> figure.from((thing, at) -> Optional.of(origin.apply(thing, at))));
        }

        /**
         * @param head what stands for the last figure's title above a narrow column
         * @return this builder
         */
        public Builder<T> briefly(String head) {
            return change(figure -> figure.briefly(head));
        }

        /** @return this builder; of the last figure more is better */
        public Builder<T> moreIsBetter() {
            return change(figure -> figure.better(1));
        }

        /** @return this builder; of the last figure less is better */
        public Builder<T> lessIsBetter() {
            return change(figure -> figure.better(-1));
        }

        /** @return this builder; documents do not hold the last figure or part, tables and the trail do */
        public Builder<T> outsideDocuments() {
            return shown(Presence.NEVER);
        }

        /** @return this builder; documents hold the last figure or part only where the thing has it */
        public Builder<T> leftOutIfAbsent() {
            return shown(Presence.IF_THERE);
        }

        private Builder<T> shown(Presence where) {
            int last = members.size() - 1;
            if (last >= 0 && members.get(last) instanceof Branch<T, ?> branch) {
                members.set(last, branch.shown(where));
                return this;
            }
            return change(figure -> figure.shown(where));
        }

        /**
         * Takes over the figures of a thing that belongs to this one and is shown as one with it.
         *
         * @param table what it publishes
         * @param owned the thing that belongs to this one
         * @param <C> kind of that thing
         * @return this builder
         */
        public <C> Builder<T> with(FigureTable<C> table, Function<T, C> owned) {
            table.figures().forEach(figure -> members.add(figure.of(owned)));
            return this;
        }

        /**
         * @param key key of the list
         * @param parts the parts of a thing
         * @param table what a part publishes
         * @param placing what is around a part
         * @param <C> kind of part
         * @return this builder
         */
        public <C> Builder<T> each(
                String key, Function<T, List<C>> parts, FigureTable<C> table, Placing<T, C> placing) {
            members.add(new Branch<>(key, Shape.LIST, parts, table, placing, Presence.ALWAYS));
            return this;
        }

        /**
         * @param key key of the part
         * @param part the part of a thing, if it has it
         * @param table what the part publishes
         * @param placing what is around the part
         * @param <C> kind of part
         * @return this builder
         */
        public <C> Builder<T> part(
                String key, Function<T, Optional<C>> part, FigureTable<C> table, Placing<T, C> placing) {
            members.add(new Branch<>(
                    key, Shape.ONE, thing -> part.apply(thing).stream().toList(), table, placing, Presence.ALWAYS));
            return this;
        }

        /**
         * @param key key of the list
         * @param parts the parts of a thing
         * @param table what a part publishes
         * @param <C> kind of part
         * @return this builder
         */
        public <C> Builder<T> each(String key, Function<T, List<C>> parts, FigureTable<C> table) {
            return each(key, parts, table, (thing, part, at) -> at);
        }

        /**
         * @param key key of the part
         * @param part the part of a thing, if it has it
         * @param table what the part publishes
         * @param <C> kind of part
         * @return this builder
         */
        public <C> Builder<T> part(String key, Function<T, Optional<C>> part, FigureTable<C> table) {
            return part(key, part, table, (thing, owned, at) -> at);
        }

        /**
         * @param key key of the object
         * @param parts the parts of a thing, each with a name
         * @param table what a part publishes
         * @param <C> kind of part
         * @return this builder
         */
        public <C> Builder<T> keyed(String key, Function<T, List<C>> parts, FigureTable<C> table) {
            members.add(new Branch<>(key, Shape.KEYED, parts, table, (thing, part, at) -> at, Presence.ALWAYS));
            return this;
        }

        /** @return the table */
        public FigureTable<T> table() {
            return new FigureTable<>(name, members);
        }

        private Builder<T> change(Function<Figure<T>, Figure<T>> change) {
            int last = members.size() - 1;
            if (last >= 0 && members.get(last) instanceof Figure<T> figure) {
                members.set(last, change.apply(figure));
                return this;
            }
            throw new IllegalStateException("no figure was declared before");
        }

        private static List<String> paths(Place at, Place.Source... sources) {
            Set<String> paths = new LinkedHashSet<>();
            for (Place.Source source : sources) {
                paths.addAll(source.paths(at));
            }
            return List.copyOf(paths);
        }
    }
}
