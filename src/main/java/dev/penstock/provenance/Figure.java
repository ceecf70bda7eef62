package dev.penstock.provenance;

import dev.penstock.provenance.FigureTable.Presence;
import dev.penstock.quantities.Notation;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * One value that a kind of thing publishes, declared once: documents, tables, pages, comparisons, studies and trails walk
 * the declarations. A figure is a number, or a word or list that only documents and tables show. Made by a
 * {@link FigureTable}. Immutable.
 *
 * @param <T> kind of thing
 */
public final class Figure<T> implements FigureTable.Member<T> {

    private static final Notation PLAIN = Notation.significant("", 4);

    private final String key;
    private final String title;
    private final String brief;
    private final Function<T, ?> value;
    private final Optional<Notation> shared;
    private final Optional<Function<T, Notation>> notation;
    private final BiFunction<T, Place, Optional<Origin>> origin;
    private final int better;
    private final Presence presence;

    private Figure(
            String key,
            String title,
            String brief,
            Function<T, ?> value,
            Optional<Notation> shared,
            Optional<Function<T, Notation>> notation,
            BiFunction<T, Place, Optional<Origin>> origin,
            int better,
            Presence presence) {
        this.key = key;
        this.title = title;
        this.brief = brief;
        this.value = value;
        this.shared = shared;
        this.notation = notation;
        this.origin = origin;
        this.better = better;
        this.presence = presence;
    }

    static <T> Figure<T> word(String key, String title, Function<T, ?> value) {
        return new Figure<>(
                key, title, title, value, Optional.empty(), Optional.empty(), nowhere(), 0, Presence.ALWAYS);
    }

    static <T> Figure<T> number(String key, String title, Notation notation, Function<T, ?> value) {
        return new Figure<>(
                key,
                title,
                title,
                value,
                Optional.of(notation),
                Optional.of(t -> notation),
                nowhere(),
                0,
                Presence.ALWAYS);
    }

    static <T> Figure<T> number(String key, String title, Function<T, Notation> notation, Function<T, ?> value) {
        return new Figure<>(
                key, title, title, value, Optional.empty(), Optional.of(notation), nowhere(), 0, Presence.ALWAYS);
    }

    private static <T> BiFunction<T, Place, Optional<Origin>> nowhere() {
        return (thing, at) -> Optional.empty();
    }

    <S> Figure<S> of(Function<S, T> owner) {
        return new Figure<>(
                key,
                title,
                brief,
                thing -> value(owner.apply(thing)),
                shared,
                notation.map(n -> (Function<S, Notation>) thing -> n.apply(owner.apply(thing))),
                (thing, at) -> origin(owner.apply(thing), at),
                better,
                presence);
    }

    /** The figure of a part, as a figure of the whole. */
    <S> Figure<S> within(Function<S, Optional<T>> part, String wholeTitle) {
        return new Figure<>(
                key,
                wholeTitle,
                wholeTitle.equals(title) ? brief : wholeTitle,
                whole -> part.apply(whole).map(this::value).flatMap(Figure::held),
                shared,
                notation.map(n -> (Function<S, Notation>)
                        whole -> part.apply(whole).map(n).orElse(shared.orElse(PLAIN))),
                (whole, at) -> part.apply(whole).flatMap(owned -> origin(owned, at)),
                better,
                presence);
    }

    private static Optional<Object> held(Object value) {
        return value instanceof Optional<?> optional ? optional.map(held -> (Object) held) : Optional.of(value);
    }

    Figure<T> from(BiFunction<T, Place, Optional<Origin>> made) {
        return new Figure<>(key, title, brief, value, shared, notation, made, better, presence);
    }

    Figure<T> better(int direction) {
        return new Figure<>(key, title, brief, value, shared, notation, origin, direction, presence);
    }

    Figure<T> briefly(String head) {
        return new Figure<>(key, title, head, value, shared, notation, origin, better, presence);
    }

    Figure<T> shown(Presence where) {
        return new Figure<>(key, title, brief, value, shared, notation, origin, better, where);
    }

    /** @return key in documents and paths; of a number with a unit it ends in the SI unit */
    @Override
    public String key() {
        return key;
    }

    /** @return name for people, without the unit */
    public String title() {
        return title;
    }

    /**
     * @param thing a thing of this kind
     * @return what documents hold: a {@link Double} in SI, {@link Integer}, {@link Boolean}, text, list of those, or an
     *     {@link Optional} of one
     */
    public Object value(T thing) {
        Object raw = value.apply(thing);
        return raw instanceof OptionalDouble number
                ? number.isPresent() ? Optional.of(number.getAsDouble()) : Optional.empty()
                : raw;
    }

    /**
     * @param thing a thing of this kind
     * @return the value in SI; empty if it is no number, or this thing does not have it
     */
    public OptionalDouble number(T thing) {
        Optional<Object> held = isNumber() ? held(value(thing)) : Optional.empty();
        return held.isPresent() && held.get() instanceof Number number
                ? OptionalDouble.of(number.doubleValue())
                : OptionalDouble.empty();
    }

    /** @return whether it is a number with a unit and a trail; otherwise a word, a list or the truth of something */
    public boolean isNumber() {
        return notation.isPresent();
    }

    /**
     * @param thing a thing of this kind
     * @return how people read the number
     * @throws java.util.NoSuchElementException if it is no number (a defect in the caller)
     */
    public Notation notation(T thing) {
        return notation.orElseThrow().apply(thing);
    }

    /**
     * @return how people read the number, of all things of this kind; a plain number where each has a unit of its own
     */
    public Notation notation() {
        return shared.orElse(PLAIN);
    }

    /** @return unit that the numbers of all things of this kind are written in; empty where each names its own */
    public String unit() {
        return notation().unit();
    }

    /** @return title, or what stands for it in few letters, with the unit: for the head of a column */
    public String heading() {
        return unit().isEmpty() ? brief : brief + " (" + unit() + ")";
    }

    /**
     * @param things things of this kind that stand in one column
     * @return the same figure, written in one unit for all of them
     */
    public Figure<T> column(List<T> things) {
        double largest = things.stream()
                .flatMapToDouble(thing -> number(thing).stream())
                .map(Math::abs)
                .max()
                .orElse(0);
        Optional<Notation> one = shared.map(n -> n.column(largest));
        Optional<Function<T, Notation>> each = one.isEmpty() ? notation : one.map(n -> thing -> n);
        return new Figure<>(key, title, brief, value, one, each, origin, better, presence);
    }

    /**
     * @param thing a thing of this kind
     * @return the value for people without its unit, unless only the number tells the unit; a dash for a number that
     *     this thing does not have
     */
    public String text(T thing) {
        OptionalDouble number = number(thing);
        if (number.isPresent()) {
            return notation(thing).write(number.getAsDouble());
        }
        Object held = held(value(thing)).orElse(isNumber() ? "-" : "");
        if (held instanceof Iterable<?> list) {
            StringBuilder joined = new StringBuilder();
            list.forEach(part -> joined.append(joined.isEmpty() ? "" : ", ").append(part));
            return joined.toString();
        }
        return held.toString();
    }

    /**
     * @param thing a thing of this kind
     * @return the value as documents hold it, as text: a number in SI with every digit; empty text if the thing lacks it
     */
    public String plain(T thing) {
        return held(value(thing)).map(Object::toString).orElse("");
    }

    /**
     * @param thing a thing of this kind
     * @param at where it stands
     * @return the model that made the number and what went in; empty for words, and where the trail ends
     */
    public Optional<Origin> origin(T thing, Place at) {
        return origin.apply(thing, at);
    }

    /** @return +1 if more is better, −1 if less is, 0 if neither */
    public int better() {
        return better;
    }

    @Override
    public Presence presence() {
        return presence;
    }
}
