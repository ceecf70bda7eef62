package dev.penstock.cycles.sheet;

import dev.penstock.combustion.WorkingFluid;
import dev.penstock.errors.Warning;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.provenance.ModelCard;
import java.util.List;

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

    /** Temperature (K), density (kg/m³) and what the fluid model says of the state. */
    record Condition(double temperature, double density, List<Warning> warnings) {}

    /** A propellant as delivered by its tank. */
    record Liquid(Propellant propellant) implements Medium {

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

        /** Path of the enthalpy of formation of a propellant. */
        static String formationEnthalpy(Propellant propellant) {
            return "fluids." + propellant.id() + ".formation_enthalpy_J_kg";
        }

        @Override
        public Condition at(double pressure, double enthalpy) {
            FluidState state = state(pressure, enthalpy);
            return new Condition(
                    state.temperature(), state.density(), propellant.fluid().warnings(state));
        }

        FluidState state(double pressure, double enthalpy) {
            return propellant.fluid().atPressureEnthalpy(pressure, ownEnthalpy(enthalpy));
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
        public Condition at(double pressure, double enthalpy) {
            var state = fluid.atPressureEnthalpy(pressure, enthalpy);
            return new Condition(state.temperature(), state.density(), List.of());
        }
    }
}
