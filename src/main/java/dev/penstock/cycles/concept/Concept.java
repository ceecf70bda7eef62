package dev.penstock.cycles.concept;

import dev.penstock.chamber.design.ChamberDesign;
import dev.penstock.cooling.design.ExtensionDesign;
import dev.penstock.cycles.reading.ConceptReader;
import dev.penstock.errors.Require;
import dev.penstock.fluids.Propellant;
import dev.penstock.turbomachinery.mass.MassFactors;
import dev.penstock.turbomachinery.metal.MetalDesign;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * All that an engineer asked for, validated and in SI. {@link ConceptReader} makes it from a concept file. At another chamber
 * pressure it is made anew from its text, so that no value that follows the pressure where the file is silent can stay behind.
 *
 * @param document the text it was read from
 * @param name name of the engine
 * @param description a sentence about it; may be empty text
 * @param cycle its cycle
 * @param oxidizerFeed oxidizer from tank to injector
 * @param fuelFeed fuel from tank to injector
 * @param mixtureRatio oxidizer over fuel leaving the tanks, by mass (-)
 * @param thrust what fixes its size
 * @param chamber thrust chamber, each of them where there are several, with the chamber pressure
 * @param cooling cooling circuits, from the injector to the nozzle exit; none if nothing cools
 * @param uncooledWall the wall that no circuit cools
 * @param burners gas generator or preburners that the cycle has
 * @param turbines turbines that the cycle has
 * @param shafts coupling of the machines
 * @param gasPath way of the turbine gas
 * @param electric electric drive, for the cycle that has one
 * @param limits hardware limits
 * @param mass what the masses of the models are multiplied by
 * @param metals what the parts are made of that meet oxygen or hydrogen
 * @param pressurization how the tanks are kept under pressure, for the cycle without pumps
 * @param atPressure how it is made at another chamber pressure
 */
public record Concept(
        ConceptDocument document,
        String name,
        String description,
        CycleKind cycle,
        FeedDesign oxidizerFeed,
        FeedDesign fuelFeed,
        double mixtureRatio,
        ThrustTarget thrust,
        ChamberDesign chamber,
        List<CoolingCircuit> cooling,
        ExtensionDesign uncooledWall,
        Map<Burner, BurnerDesign> burners,
        Map<TurbinePlace, TurbineOption> turbines,
        ShaftDesign shafts,
        GasPathDesign gasPath,
        Optional<ElectricDesign> electric,
        DesignLimits limits,
        MassFactors mass,
        MetalDesign metals,
        Optional<PressurizationDesign> pressurization,
        AtPressure atPressure) {

    /** Makes a concept at a chamber pressure. */
    @FunctionalInterface
    public interface AtPressure {

        /**
         * @param pressure chamber pressure (Pa)
         * @return the concept at that pressure, with everything that follows it
         */
        Concept at(double pressure);
    }

    public Concept {
        Require.positive("concept", "mixture ratio (-)", mixtureRatio);
        cooling = List.copyOf(cooling);
        burners = Collections.unmodifiableMap(new LinkedHashMap<>(burners));
        turbines = Collections.unmodifiableMap(new LinkedHashMap<>(turbines));
    }

    /**
     * @param side oxidizer or fuel
     * @return its feed
     */
    public FeedDesign feed(Side side) {
        return side == Side.OXIDIZER ? oxidizerFeed : fuelFeed;
    }

    /**
     * @param drive what turns a boost pump
     * @return whether that turns one of the boost pumps
     */
    public boolean boostedBy(BoostDesign.Drive drive) {
        return Stream.of(oxidizerFeed, fuelFeed)
                .flatMap(feed -> feed.boost().stream())
                .anyMatch(boost -> boost.drive() == drive);
    }

    /** @return a third fluid that a burner takes, if one does */
    public Optional<BurnerDesign.Diluent> diluent() {
        return burners.values().stream()
                .flatMap(burner -> burner.diluent().stream())
                .findFirst();
    }

    /** @return the oxidizer */
    public Propellant oxidizer() {
        return oxidizerFeed.propellant();
    }

    /** @return the fuel */
    public Propellant fuel() {
        return fuelFeed.propellant();
    }

    /**
     * @param side oxidizer or fuel
     * @return whether it cools any part of the wall and goes on from there
     */
    public boolean cooledBy(Side side) {
        return cooling.stream().anyMatch(circuit -> circuit.coolant() == side && circuit.returns());
    }

    /**
     * @param side oxidizer or fuel
     * @return the circuit in which some of it cools the end of the nozzle and is dumped; none or one, the last
     */
    public Optional<CoolingCircuit> dumping(Side side) {
        return cooling.stream()
                .filter(circuit -> circuit.coolant() == side && !circuit.returns())
                .findFirst();
    }

    /** @return number of thrust chambers on its one set of pumps */
    public int chambers() {
        return thrust.chambers();
    }

    /** @return nozzle stagnation pressure (Pa) */
    public double chamberPressure() {
        return chamber.chamberPressure();
    }

    /**
     * @param pressure chamber pressure (Pa)
     * @return the concept at that chamber pressure, with every default that follows it
     * @throws dev.penstock.errors.LimitReached if what the concept states cannot be read at that pressure
     */
    public Concept withChamberPressure(double pressure) {
        return pressure == chamberPressure() ? this : atPressure.at(pressure);
    }

    /** @return highest inlet temperature that any of its turbines stands (K); empty without turbines */
    public OptionalDouble hottestTurbineLimit() {
        return turbines.values().stream()
                .mapToDouble(t -> t.design().inletTemperatureLimit())
                .max();
    }

    /**
     * @param temperature temperature (K)
     * @return the same concept with the limit of each turbine lowered to that, and with the gas of burners whose
     *     temperature is stated as hot as their turbine then stands
     */
    public Concept withTurbineTemperature(double temperature) {
        Map<TurbinePlace, TurbineOption> limited = new LinkedHashMap<>();
        turbines.forEach((place, turbine) -> limited.put(
                place,
                turbine.with(turbine.design()
                        .withInletTemperatureLimit(
                                Math.min(temperature, turbine.design().inletTemperatureLimit())))));
        AtPressure cooled = pressure -> atPressure.at(pressure).withTurbineTemperature(temperature);
        return withGas(burners, limited, cooled).withHottestGas(1, cooled);
    }

    /**
     * @param factor factor on the limits of the turbines (-)
     * @return the same concept, with the gas of burners whose temperature is stated as hot as the turbine behind them stands
     */
    public Concept withHottestGas(double factor) {
        return withHottestGas(factor, pressure -> atPressure.at(pressure).withHottestGas(factor));
    }

    private Concept withHottestGas(double factor, AtPressure again) {
        Map<Burner, BurnerDesign> heated = new LinkedHashMap<>();
        burners.forEach((burner, design) -> heated.put(
                burner, design.temperature().isPresent() ? design.asHotAs(factor * turbineLimit(burner)) : design));
        return withGas(heated, turbines, again);
    }

    /**
     * @param burner a burner
     * @return the lowest limit of the turbine inlet temperatures behind it (K)
     */
    public double turbineLimit(Burner burner) {
        return turbines.entrySet().stream()
                .filter(e -> drives(burner, e.getKey()))
                .mapToDouble(e -> e.getValue().design().inletTemperatureLimit())
                .min()
                .orElseThrow();
    }

    /**
     * @param burner a burner
     * @param turbine a turbine
     * @return whether the turbine runs on that burner's gas
     */
    public boolean drives(Burner burner, TurbinePlace turbine) {
        return burners.size() == 1
                || turbine == (burner == Burner.OXIDIZER_RICH ? TurbinePlace.OXIDIZER : TurbinePlace.FUEL);
    }

    private Concept withGas(
            Map<Burner, BurnerDesign> newBurners, Map<TurbinePlace, TurbineOption> newTurbines, AtPressure again) {
        return new Concept(
                document,
                name,
                description,
                cycle,
                oxidizerFeed,
                fuelFeed,
                mixtureRatio,
                thrust,
                chamber,
                cooling,
                uncooledWall,
                newBurners,
                newTurbines,
                shafts,
                gasPath,
                electric,
                limits,
                mass,
                metals,
                pressurization,
                again);
    }
}
