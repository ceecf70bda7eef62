package dev.penstock.combustion;

import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.state.ExpansionState;
import dev.penstock.fluids.state.KnownStates;
import dev.penstock.provenance.ModelCard;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * A heated propellant that drives a turbine unburnt, with the properties of the real fluid and enthalpies relative to the
 * elements. gamma is −(∂ln p/∂ln v)_s = ρ a²/p. Immutable, unless it keeps states that it found ({@link #keepingStates}).
 */
public final class RealFluidWorkingFluid implements WorkingFluid {

    /** States found from a nearby one in whose time saturation is solved for (-): fitted to the time of slow engines. */
    private static final long SATURATION = 6;

    private final Propellant propellant;
    private final Optional<KnownStates> known;
    private long asked;

    /** @param propellant the fluid */
    public RealFluidWorkingFluid(Propellant propellant) {
        this(propellant, Optional.empty());
    }

    private RealFluidWorkingFluid(Propellant propellant, Optional<KnownStates> known) {
        this.propellant = propellant;
        this.known = known;
    }

    /**
     * The same fluid for one series of questions, each sought from the states that the ones before found: for solvers, which ask for
     * the same expansion with small changes.
     *
     * @param propellant the fluid
     * @return the fluid; not thread-safe
     */
    public static RealFluidWorkingFluid keepingStates(Propellant propellant) {
        return new RealFluidWorkingFluid(propellant, Optional.of(new KnownStates()));
    }

    /**
     * @return effort so far of a fluid that keeps its states, in states that were found from a nearby one; it depends on nothing but
     *     what this fluid was asked
     */
    public long effort() {
        return known.map(k -> asked + k.sought() + SATURATION * k.saturations()).orElse(0L);
    }

    @Override
    public String description() {
        return "heated " + propellant.fluid().name() + ", real fluid";
    }

    @Override
    public ModelCard model() {
        return propellant.fluid().model();
    }

    @Override
    public OptionalDouble moleFraction(String species, double pressure, double temperature) {
        return OptionalDouble.of(propellant.moleFraction(species));
    }

    @Override
    public WorkingState atPressureTemperature(double pressure, double temperature) {
        return state(ExpansionState.of(propellant.fluid().atPressureTemperature(pressure, temperature)));
    }

    @Override
    public WorkingState atPressureEnthalpy(double pressure, double enthalpy) {
        double own = enthalpy - propellant.absoluteEnthalpy(0);
        return state(sought(states -> propellant.fluid().expansionAtPressureEnthalpy(pressure, own, states)));
    }

    @Override
    public WorkingState atPressureEntropy(double pressure, double entropy) {
        return state(sought(states -> propellant.fluid().expansionAtPressureEntropy(pressure, entropy, states)));
    }

    /**
     * A search from nothing leaves some 1e-10 of pressure far above the critical temperature, which is 1e-7 of a small drop; a second
     * one from where it ended takes that off, so that a fluid that keeps states and one that does not give the same.
     */
    private ExpansionState sought(Function<KnownStates, ExpansionState> search) {
        if (known.isPresent()) {
            asked++;
            return search.apply(known.get());
        }
        KnownStates own = new KnownStates();
        search.apply(own);
        return search.apply(own);
    }

    private WorkingState state(ExpansionState s) {
        return new WorkingState(
                s.pressure(),
                s.temperature(),
                s.density(),
                propellant.absoluteEnthalpy(s.enthalpy()),
                s.entropy(),
                s.isobaricHeatCapacity(),
                s.density() * s.soundSpeed() * s.soundSpeed() / s.pressure(),
                s.soundSpeed(),
                s.twoPhase());
    }
}
