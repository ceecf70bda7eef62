package dev.penstock.provenance;

import java.util.List;
import java.util.Locale;

/** What a limit bounds: a type of its own, declared by the package whose parts it is held against. */
public interface LimitKind {

    /**
     * What is said of a kind of limit.
     *
     * @param equation how the value is made from the figures of its part; empty if it is that figure itself
     * @param figures keys of the part's figures that the value is made from
     * @param inputs keys of the part's tables in the concept file that the value is made from besides
     * @param bounds keys of the part's tables in the concept file that set the bound
     */
    record Terms(String equation, List<String> figures, List<String> inputs, List<String> bounds) {

        public Terms {
            figures = List.copyOf(figures);
            inputs = List.copyOf(inputs);
            bounds = List.copyOf(bounds);
        }

        /**
         * @param figure key of the part's figure that is held against the bound as it is
         * @return terms of such a limit
         */
        public static Terms shown(String figure) {
            return made("", figure);
        }

        /**
         * @param equation how the value is made from the figures of its part
         * @param figures keys of these
         * @return terms of such a limit
         */
        public static Terms made(String equation, String... figures) {
            return new Terms(equation, List.of(figures), List.of(), List.of());
        }

        /**
         * @param keys keys of the part's tables in the concept file that the value is made from besides
         * @return the same terms with these
         */
        public Terms with(String... keys) {
            return new Terms(equation, figures, List.of(keys), bounds);
        }

        /**
         * @param keys keys of the part's tables in the concept file that set the bound
         * @return the same terms with these
         */
        public Terms boundBy(String... keys) {
            return new Terms(equation, figures, inputs, List.of(keys));
        }
    }

    /** @return what is said of this kind */
    Terms terms();

    /** What a sizing chooses so that a limit is kept. */
    enum Choice {
        /** Nothing: the margin tells how far the machine is from its limit. */
        NOTHING("nothing"),
        /** Speed of a shaft, unless it is stated or built. */
        SPEED("the speed"),
        /** Diameter of a turbine wheel, unless it is stated. */
        WHEEL("the wheel"),
        /** Stiffness of the bearings. */
        BEARINGS("the bearings"),
        /** Temperature of a burner's gas, where a search chooses it. */
        GAS_TEMPERATURE("the gas temperature");

        private final String title;

        Choice(String title) {
            this.title = title;
        }

        /** @return name for people */
        public String title() {
            return title;
        }
    }

    /** @return what the sizing chooses to keep it, where that is free, so that its margin says nothing */
    default Choice sets() {
        return Choice.NOTHING;
    }

    /** @return name of the constant */
    String name();

    /** @return last part of the limit's name, for example "tip_speed" */
    default String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * @param owner name of the part
     * @return path under which the figures of the part stand
     */
    String path(String owner);

    /** @return how the value is made; for a figure that is published anyway, that it is shown again */
    default ModelCard card() {
        if (terms().equation().isEmpty()) {
            return ModelCard.SAME;
        }
        return ModelCard.definition(
                "cycles.limit-figure." + key().replace('_', '-'),
                "Figure held against a limit: " + key().replace('_', ' '),
                terms().equation(),
                "where the figures of the part hold",
                "that of the figures of the part");
    }
}
