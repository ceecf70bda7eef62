package dev.penstock.cycles.sheet;

import dev.penstock.combustion.WorkingFluid;
import dev.penstock.errors.PenstockException;
import dev.penstock.errors.PropertyFailure;
import dev.penstock.errors.Warning;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.fluids.state.KnownStates;
import dev.penstock.provenance.ModelCard;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** What flows between components: a propellant, or burnt gas. Enthalpies are relative to the elements. */
public sealed interface Medium {

    /** Name for tables. */
    String name();

    /** Model that gives its states. */
    ModelCard model();

    /** Paths of what it is made of, apart from its pressure and enthalpy. */
    List<String> madeFrom();

    /** Whether a reaction made it. */
    boolean burnt();

    /** Temperature (K) and density (kg/m³) at a pressure (Pa) and absolute enthalpy (J/kg). */
    Condition at(double pressure, double enthalpy);

    /** Moles of a species, for example "O2", per mole (-) at a pressure (Pa) and temperature (K); empty if not known. */
    OptionalDouble moleFraction(String species, double pressure, double temperature);

    /** Temperature (K), density (kg/m³) and what the fluid model says of the state. */
    record Condition(double temperature, double density, List<Warning> warnings) {}

    /** A propellant as delivered by its tank. */
    record Liquid(Propellant propellant) implements Medium {

        private static final int HALVINGS = 40;

        @Override
        public String name() {
            return propellant.id();
        }

        @Override
        public ModelCard model() {
            return propellant.fluid().model();
        }

        @Override
        public List<String> madeFrom() {
            return List.of(formationEnthalpy(propellant));
        }

        @Override
        public boolean burnt() {
            return false;
        }

        @Override
        public OptionalDouble moleFraction(String species, double pressure, double temperature) {
            return OptionalDouble.of(propellant.moleFraction(species));
        }

        /** Path of the enthalpy of formation of a propellant. */
        static String formationEnthalpy(Propellant propellant) {
            return "fluids." + propellant.id() + ".formation_enthalpy_J_kg";
        }

        @Override
        public Condition at(double pressure, double enthalpy) {
            FluidState state;
            try {
                state = state(pressure, enthalpy);
            } catch (PropertyFailure e) {
                return beyond(pressure, ownEnthalpy(enthalpy), e);
            }
            return new Condition(
                    state.temperature(), state.density(), propellant.fluid().warnings(state));
        }

        /** Hotter than the fluid's model goes: carried on with constant cp from its last temperature, and said so. */
        private Condition beyond(double pressure, double own, PropertyFailure failure) {
            double low = propellant.storageTemperature();
            double high = propellant.fluid().range().maximumTemperature();
            Optional<FluidState> last = existing(pressure, low);
            if (last.isEmpty() || own <= last.get().enthalpy()) {
                throw failure;
            }
            for (int i = 0; i < HALVINGS; i++) {
                double middle = i == 0 ? high : 0.5 * (low + high);
                Optional<FluidState> there = existing(pressure, middle);
                last = there.isPresent() ? there : last;
                low = there.isPresent() ? middle : low;
                high = there.isPresent() ? high : middle;
            }
            FluidState edge = last.get();
            double temperature = edge.temperature() + (own - edge.enthalpy()) / edge.isobaricHeatCapacity();
            return new Condition(
                    temperature,
                    edge.density() * edge.temperature() / temperature,
                    List.of(new Warning(
                            propellant.fluid().model().id(),
                            String.format(
                                    Locale.ROOT,
                                    "%s is hotter than its model goes, %.4g K at %.3g MPa; its state is carried on from there"
                                            + " with constant cp and is not to be believed",
                                    propellant.name(),
                                    edge.temperature(),
                                    pressure / 1e6))));
        }

        private Optional<FluidState> existing(double pressure, double temperature) {
            try {
                return Optional.of(propellant.fluid().atPressureTemperature(pressure, temperature));
            } catch (PenstockException e) {
                return Optional.empty();
            }
        }

        FluidState state(double pressure, double enthalpy) {
            return propellant.fluid().atPressureEnthalpy(pressure, ownEnthalpy(enthalpy));
        }

        FluidState state(double pressure, double enthalpy, KnownStates known) {
            return propellant.fluid().atPressureEnthalpy(pressure, ownEnthalpy(enthalpy), known);
        }

        /** Enthalpy on the fluid model's own zero (J/kg). */
        public double ownEnthalpy(double absolute) {
            return absolute - propellant.absoluteEnthalpy(0);
        }
    }

    /** Gas from a burner, or a propellant heated until it works like one. */
    record Gas(String name, WorkingFluid fluid, List<String> madeFrom, boolean burnt) implements Medium {

        @Override
        public ModelCard model() {
            return fluid.model();
        }

        @Override
        public OptionalDouble moleFraction(String species, double pressure, double temperature) {
            return fluid.moleFraction(species, pressure, temperature);
        }

        @Override
        public Condition at(double pressure, double enthalpy) {
            var state = fluid.atPressureEnthalpy(pressure, enthalpy);
            return new Condition(state.temperature(), state.density(), List.of());
        }
    }
}
