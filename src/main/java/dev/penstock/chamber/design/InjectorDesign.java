package dev.penstock.chamber.design;

import dev.penstock.errors.Require;
import java.util.OptionalDouble;

/**
 * The main injector: what arrives at it as a liquid, how hard that is driven, and how far it is from its design point.
 *
 * @param oxidizer side of the oxidizer
 * @param fuel side of the fuel
 * @param usualLength L* that the pair usually needs (m), for which an injector of no stated drop size is developed
 * @param dropRadius mass-median drop radius at the design point (m); empty for a developed injector
 * @param pressureShare chamber pressure over that of the design point (-)
 */
public record InjectorDesign(
        Side oxidizer, Side fuel, OptionalDouble usualLength, OptionalDouble dropRadius, double pressureShare) {

    private static final double USUAL_LOSS = 0.2;

    /**
     * One side of an injector of fixed orifices.
     *
     * @param gas whether its propellant arrives as a gas, or as light as one
     * @param loss pressure loss over chamber pressure, both at the design point (-)
     * @param flowShare mass flow over that of the design point (-)
     */
    public record Side(boolean gas, double loss, double flowShare) {

        public Side {
            Require.within("injector", "loss (-)", loss, 0, 2);
            Require.within("injector", "flow share (-)", flowShare, 0.005, 3);
        }
    }

    public InjectorDesign {
        usualLength.ifPresent(x -> Require.within("injector", "usual characteristic length (m)", x, 0.1, 10));
        dropRadius.ifPresent(x -> Require.within("injector", "drop radius (m)", x, 1e-6, 2e-3));
        Require.within("injector", "pressure share (-)", pressureShare, 0.005, 3);
    }

    /**
     * @param state how the propellants arrive
     * @param oxidizerGas whether a single gas is the oxidizer
     * @return a developed injector at its design point, with usual losses, for the L* that its chamber has
     */
    public static InjectorDesign of(InjectionState state, boolean oxidizerGas) {
        boolean one = state == InjectionState.GAS_LIQUID;
        boolean both = state == InjectionState.GAS_GAS;
        return of(both || one && oxidizerGas, both || one && !oxidizerGas);
    }

    /**
     * @param oxidizerGas whether the oxidizer arrives as a gas
     * @param fuelGas whether the fuel does
     * @return a developed injector at its design point, with usual losses, for the L* that its chamber has
     */
    public static InjectorDesign of(boolean oxidizerGas, boolean fuelGas) {
        return new InjectorDesign(
                new Side(oxidizerGas, USUAL_LOSS, 1),
                new Side(fuelGas, USUAL_LOSS, 1),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                1);
    }

    /** @return how the propellants arrive */
    public InjectionState state() {
        if (oxidizer.gas() && fuel.gas()) {
            return InjectionState.GAS_GAS;
        }
        return oxidizer.gas() || fuel.gas() ? InjectionState.GAS_LIQUID : InjectionState.LIQUID_LIQUID;
    }

    /**
     * @param length L* that the pair usually needs (m)
     * @param radius stated drop radius (m), if any
     * @return this injector, developed for that
     */
    public InjectorDesign developedFor(double length, OptionalDouble radius) {
        return new InjectorDesign(oxidizer, fuel, OptionalDouble.of(length), radius, pressureShare);
    }

    /**
     * @param oxidizerLoss pressure loss of the oxidizer's side over chamber pressure at the design point (-)
     * @param fuelLoss the same of the fuel's side (-)
     * @return this injector with those losses
     */
    public InjectorDesign withLosses(double oxidizerLoss, double fuelLoss) {
        return new InjectorDesign(
                new Side(oxidizer.gas(), oxidizerLoss, oxidizer.flowShare()),
                new Side(fuel.gas(), fuelLoss, fuel.flowShare()),
                usualLength,
                dropRadius,
                pressureShare);
    }

    /**
     * The same injector in a throttled engine. Flows go with the chamber pressure: what c* loses on the way, which makes the flow a
     * little larger, is left out wherever an engine is throttled.
     *
     * @param throttle chamber pressure over that of the design point (-)
     * @param oxidizerShare oxidizer's share of the flow over that of the design point (-)
     * @param fuelShare fuel's share of the flow over that of the design point (-)
     * @return the same injector at that operating point
     */
    public InjectorDesign throttled(double throttle, double oxidizerShare, double fuelShare) {
        return new InjectorDesign(
                new Side(oxidizer.gas(), oxidizer.loss(), throttle * oxidizerShare),
                new Side(fuel.gas(), fuel.loss(), throttle * fuelShare),
                usualLength,
                dropRadius,
                throttle);
    }

    /**
     * @param throttle chamber pressure over that of the design point (-)
     * @return the same injector throttled to that at the mixture ratio of the design
     */
    public InjectorDesign throttled(double throttle) {
        return throttled(throttle, 1, 1);
    }
}
