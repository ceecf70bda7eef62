package dev.penstock.fluids;

import dev.penstock.errors.InvalidInput;
import dev.penstock.fluids.property.ElementalComposition;
import dev.penstock.fluids.state.Fluid;
import dev.penstock.fluids.state.FluidState;
import dev.penstock.fluids.traits.CombustionTraits;
import dev.penstock.fluids.traits.CoolantTraits;
import dev.penstock.fluids.traits.PropellantTraits;
import dev.penstock.fluids.traits.TankTraits;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A propellant, coolant or pressurant as stored and burnt: a {@link Fluid} with what the combustion, the tank and the
 * people around it must know.
 *
 * @param fluid property model
 * @param composition atoms per kilogram
 * @param formationEnthalpy enthalpy of the substance in its reference state relative to the elements at 298.15 K and
 *     1 bar (J/kg)
 * @param referencePressure pressure of the reference state (Pa)
 * @param referenceTemperature temperature of the reference state (K)
 * @param referenceFluidEnthalpy the fluid model's own enthalpy in the reference state (J/kg)
 * @param storageState state in the tank at normal loading; its pressure is assumed when a concept states none
 * @param loadingDensity density at normal loading (kg/m³)
 * @param subcooledTemperature loading temperature when subcooled (K), if that is in use
 * @param subcooledDensity density at subcooled loading (kg/m³), if that is in use
 * @param limits temperatures that bound its use
 * @param traits what models of engine and vehicle must know of it besides its states
 * @param roles what it can serve as
 * @param hazards what can hurt people
 * @param sources where the figures come from, keys into docs/sources.md
 */
public record Propellant(
        Fluid fluid,
        ElementalComposition composition,
        double formationEnthalpy,
        double referencePressure,
        double referenceTemperature,
        double referenceFluidEnthalpy,
        FluidState storageState,
        double loadingDensity,
        OptionalDouble subcooledTemperature,
        OptionalDouble subcooledDensity,
        PropellantLimits limits,
        PropellantTraits traits,
        Set<Role> roles,
        List<String> hazards,
        List<String> sources) {

    /** What a propellant can serve as. */
    public enum Role {
        OXIDIZER,
        FUEL,
        MONOPROPELLANT,
        PRESSURANT,
        COOLANT
    }

    public Propellant {
        roles = Set.copyOf(roles);
        hazards = List.copyOf(hazards);
        sources = List.copyOf(sources);
    }

    /**
     * @param oxidizer oxidizer
     * @param fuel fuel
     * @return both as they stand within a sentence: {@code liquid oxygen and kerosene (RP-1)}
     */
    public static String pair(Propellant oxidizer, Propellant fuel) {
        return within(oxidizer.fluid().name()) + " and " + within(fuel.fluid().name());
    }

    /** A name with a small first letter, unless it is an abbreviation. */
    private static String within(String name) {
        return name.length() > 1 && Character.isLowerCase(name.charAt(1))
                ? Character.toLowerCase(name.charAt(0)) + name.substring(1)
                : name;
    }

    /** @return id of the fluid */
    public String id() {
        return fluid.id();
    }

    /** @return name for people */
    public String name() {
        return fluid.name();
    }

    /** @return name of its file, below the home folder */
    public String file() {
        return "fluids/" + id() + ".toml";
    }

    /**
     * @param species name of a gas species of one element, for example "O2"
     * @return moles of it per mole of the propellant (-): one if it consists of that element alone, else none
     */
    public double moleFraction(String species) {
        boolean only = composition.molesPerKilogram().size() == 1;
        return only && composition.of(species.replaceAll("[0-9]", "")) > 0 ? 1 : 0;
    }

    /** @return what chamber and burners must know of it */
    public CombustionTraits combustion() {
        return traits.combustion();
    }

    /** @return what tank, pressurisation and feed line must know of it */
    public TankTraits tank() {
        return traits.tank();
    }

    /** @return what a cooling jacket must know of it */
    public CoolantTraits cooling() {
        return traits.cooling();
    }

    /**
     * @param loadingTemperature temperature at which it is loaded (K)
     * @return pressurant used over the gas that would fill the tank without cooling or condensing (-)
     */
    public double collapseFactor(double loadingTemperature) {
        OptionalDouble cold = tank().coldCollapseFactor();
        return cold.isPresent() && loadingTemperature < TankTraits.COLD_BELOW
                ? cold.getAsDouble()
                : needed(tank().collapseFactor(), "tank.collapse_factor", "a factor such as 1.15");
    }

    /**
     * A value that a model cannot do without.
     *
     * @param value value in this propellant's file
     * @param key its key, with the tables that it is in
     * @param what what it is, as the end of a sentence
     * @return the value
     * @throws InvalidInput if the file does not state it
     */
    public double needed(OptionalDouble value, String key, String what) {
        return value.orElseThrow(() -> missing(key, what));
    }

    /**
     * @param key key that this propellant's file lacks, with the tables that it is in
     * @param what what it is, as the end of a sentence
     * @return the refusal
     */
    public InvalidInput missing(String key, String what) {
        return new InvalidInput(file(), key, "missing", "write " + what);
    }

    /**
     * Enthalpy relative to the elements at 298.15 K: Δfh(reference) + h(state) − h(reference).
     *
     * @param fluidEnthalpy the fluid model's own enthalpy (J/kg)
     * @return absolute enthalpy (J/kg)
     */
    public double absoluteEnthalpy(double fluidEnthalpy) {
        return formationEnthalpy + fluidEnthalpy - referenceFluidEnthalpy;
    }

    /** @return absolute enthalpy in the tank at normal loading (J/kg) */
    public double storedEnthalpy() {
        return absoluteEnthalpy(storageState.enthalpy());
    }

    /** @return normal loading temperature (K) */
    public double storageTemperature() {
        return storageState.temperature();
    }

    /** @return tank pressure assumed when a concept states none (Pa) */
    public double storagePressure() {
        return storageState.pressure();
    }
}
