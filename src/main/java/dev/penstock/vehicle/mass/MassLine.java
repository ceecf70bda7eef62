package dev.penstock.vehicle.mass;

import dev.penstock.cycles.origin.Definitions;
import dev.penstock.errors.Require;
import dev.penstock.input.Input;
import dev.penstock.provenance.ModelCard;
import java.util.ArrayList;
import java.util.List;

/**
 * One line of a mass table.
 *
 * @param name what it is, for example "oxidizer tank"
 * @param mass mass without growth margin (kg)
 * @param scatter relative scatter of the relation (-): about two vehicles in three lie within ± this
 * @param source source key, or where the figure comes from
 * @param made what makes it
 */
public record MassLine(String name, double mass, double scatter, String source, Made made) {

    /** What a line is made from beside the inputs that it names. */
    public enum Basis {
        /** nothing: the plan states it */
        PLAN,
        /** engines of the stage */
        ENGINES,
        /** the whole stage: what it carries, its tanks, its shape */
        STAGE
    }

    /**
     * What makes a line.
     *
     * @param model model of its mass
     * @param basis what it is made from
     * @param inputs keys of the inputs of the stage that it is made from, without their tables
     * @param factors keys of inputs that multiply what comes of that
     */
    public record Made(ModelCard model, Basis basis, List<String> inputs, List<String> factors) {

        public Made {
            inputs = List.copyOf(inputs);
            factors = List.copyOf(factors);
        }

        private Made(ModelCard model, Basis basis, List<String> inputs) {
            this(model, basis, inputs, List.of());
        }

        /**
         * @param factor input that multiplies it
         * @return the same times that
         */
        Made times(Input<?> factor) {
            return new Made(model, basis, inputs, List.of(factor.key()));
        }

        /**
         * @param model model that makes a line from the whole stage
         * @param inputs keys of inputs that it uses besides
         * @return what makes it
         */
        public static Made of(ModelCard model, Input<?>... inputs) {
            return new Made(model, Basis.STAGE, keys(inputs));
        }

        /**
         * @param input input that states the mass
         * @return what makes a stated line
         */
        public static Made stated(Input<?> input) {
            return new Made(ModelCard.SAME, Basis.PLAN, keys(input));
        }

        /**
         * @param inputs input that states the mass of an engine, where it is stated
         * @return what makes the mass of all engines
         */
        public static Made engines(Input<?>... inputs) {
            return new Made(Definitions.PRODUCT, Basis.ENGINES, keys(inputs));
        }

        private static List<String> keys(Input<?>... inputs) {
            List<String> keys = new ArrayList<>(inputs.length);
            for (Input<?> input : inputs) {
                keys.add(input.key());
            }
            return keys;
        }
    }

    /** @return whether the plan states this mass, so that it does not grow */
    public boolean stated() {
        return made.basis() == Basis.PLAN
                || made.basis() == Basis.ENGINES && !made.inputs().isEmpty();
    }

    public MassLine {
        Require.notNegative(name, "mass (kg)", mass);
        Require.within(name, "scatter (-)", scatter, 0, 10);
    }
}
