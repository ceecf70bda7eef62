package dev.penstock.cycles.concept;

import dev.penstock.errors.Require;
import dev.penstock.fluids.Propellant;
import dev.penstock.turbomachinery.feed.UllageGas;
import java.util.OptionalDouble;

/**
 * How a cycle without pumps keeps its tanks under pressure.
 *
 * @param feed regulated, heated or blowdown
 * @param gas pressurant
 * @param propellantMass propellant loaded, both together (kg); empty for what burns in {@code burnTime} at the start
 * @param burnTime burn time that loads the tanks where their mass is not given (s)
 * @param oxidizerUllage gas volume over volume of the oxidizer tank at the start (-)
 * @param fuelUllage the same of the fuel tank (-)
 * @param law how closed-in gas expands
 * @param exponent exponent of the polytropic law (-)
 * @param bottlePressure pressure of the full bottle (Pa)
 * @param bottleTemperature temperature of the full bottle (K)
 * @param heatedTo temperature behind the heat exchanger (K)
 * @param heatSource what heats the gas
 * @param oxidizerCollapse collapse factor in the oxidizer tank (-)
 * @param fuelCollapse collapse factor in the fuel tank (-)
 */
public record PressurizationDesign(
        Feed feed,
        Propellant gas,
        OptionalDouble propellantMass,
        double burnTime,
        double oxidizerUllage,
        double fuelUllage,
        UllageGas.Law law,
        double exponent,
        double bottlePressure,
        double bottleTemperature,
        double heatedTo,
        HeatSource heatSource,
        double oxidizerCollapse,
        double fuelCollapse) {

    /** Where the pressure comes from. */
    public enum Feed {
        /** A bottle behind a regulator keeps the tank pressure. */
        REGULATED,
        /** The same, with a heat exchanger behind the regulator. */
        HEATED,
        /** Gas closed into the tanks expands; nothing is added. */
        BLOWDOWN
    }

    /** What heats the gas. */
    public enum HeatSource {
        /** A coil about the nozzle: the heat is missing in the jet. */
        NOZZLE_COIL,
        /** Electric power from the vehicle. */
        ELECTRIC;

        /** @return name for people */
        public String title() {
            return this == NOZZLE_COIL ? "nozzle coil" : "electric";
        }
    }

    public PressurizationDesign {
        Require.positive("pressurization", "burn time (s)", burnTime);
        Require.within("pressurization", "initial ullage of the oxidizer (-)", oxidizerUllage, 0.01, 0.95);
        Require.within("pressurization", "initial ullage of the fuel (-)", fuelUllage, 0.01, 0.95);
    }

    /**
     * @param side oxidizer or fuel
     * @return gas volume over volume of its tank at the start (-)
     */
    public double initialUllage(Side side) {
        return side == Side.OXIDIZER ? oxidizerUllage : fuelUllage;
    }

    /**
     * @param side oxidizer or fuel
     * @return collapse factor in its tank (-)
     */
    public double collapse(Side side) {
        return side == Side.OXIDIZER ? oxidizerCollapse : fuelCollapse;
    }
}
