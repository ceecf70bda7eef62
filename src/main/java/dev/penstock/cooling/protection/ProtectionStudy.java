package dev.penstock.cooling.protection;

import dev.penstock.cooling.wall.WallMaterial;
import dev.penstock.errors.PenstockException;
import dev.penstock.errors.Require;
import dev.penstock.fluids.Propellant;
import dev.penstock.numerics.RootFinder;
import java.util.ArrayList;
import java.util.List;

/**
 * Compares ways to protect a base, a heat shield or a chamber that fires for a short time without a jacket: a heat sink, an
 * ablator, and transpiration with a propellant. Masses per area; structure behind is left out. Immutable.
 */
public final class ProtectionStudy {

    private static final double THICKEST = 0.2;
    private static final double THINNEST = 1e-4;

    /**
     * Heat load on the wall.
     *
     * @param gasCoefficient coefficient to the gas (W/(m²·K))
     * @param adiabaticWallTemperature adiabatic wall temperature (K)
     * @param time time under load (s)
     * @param initialTemperature temperature of the wall at the start (K)
     */
    public record Load(double gasCoefficient, double adiabaticWallTemperature, double time, double initialTemperature) {

        public Load {
            Require.positive("heat load", "coefficient (W/(m²·K))", gasCoefficient);
            Require.positive("heat load", "adiabatic wall temperature (K)", adiabaticWallTemperature);
            Require.positive("heat load", "time (s)", time);
            Require.positive("heat load", "initial temperature (K)", initialTemperature);
        }

        /**
         * A load given as flux to a cold wall.
         *
         * @param coldWallFlux flux into a wall at its initial temperature (W/m²)
         * @param adiabatic adiabatic wall temperature (K)
         * @param time time under load (s)
         * @param initial temperature of the wall at the start (K)
         * @return the load
         */
        public static Load ofFlux(double coldWallFlux, double adiabatic, double time, double initial) {
            return new Load(coldWallFlux / (adiabatic - initial), adiabatic, time, initial);
        }
    }

    /**
     * One way to protect.
     *
     * @param name what it is
     * @param possible whether it stands the load
     * @param thickness thickness (m); zero where it is not possible
     * @param arealMass mass per area, coolant used up included (kg/m²)
     * @param reusable whether it can be used again as it is
     * @param note what the reader should know
     */
    public record Option(
            String name, boolean possible, double thickness, double arealMass, boolean reusable, String note) {}

    private final Load load;

    /** @param load heat load */
    public ProtectionStudy(Load load) {
        this.load = load;
    }

    /**
     * @param material material of the heat sink
     * @return the thinnest plate that stays below its limit
     */
    public Option heatSink(WallMaterial material) {
        HeatSinkWall.Firing firing =
                new HeatSinkWall.Firing(load.gasCoefficient(), load.adiabaticWallTemperature(), load.time(), 0, 1);
        String name = "heat sink of " + material.id();
        if (excess(material, THICKEST, firing) > 0) {
            return new Option(name, false, 0, 0, true, "the hot face passes its limit however thick the plate");
        }
        double thickness = excess(material, THINNEST, firing) <= 0
                ? THINNEST
                : Math.exp(RootFinder.between(
                                "thickness of a heat sink",
                                t -> excess(material, Math.exp(t), firing),
                                Math.log(THINNEST),
                                Math.log(THICKEST),
                                1e-6)
                        .value());
        return new Option(
                name,
                true,
                thickness,
                thickness * material.density(),
                true,
                thickness == THINNEST ? "radiation alone carries the load" : "");
    }

    private double excess(WallMaterial material, double thickness, HeatSinkWall.Firing firing) {
        double peak = HeatSinkWall.fire(material, thickness, load.initialTemperature(), firing)
                .peakTemperature();
        return peak - material.maximumTemperature();
    }

    /**
     * @param ablator ablator
     * @return the layer it needs
     */
    public Option ablative(Ablator ablator) {
        double surface = load.adiabaticWallTemperature();
        double flux = load.gasCoefficient() * Math.max(0, surface - ablator.charTemperature());
        double thickness = ablator.thickness(flux, surface, load.initialTemperature(), load.time());
        return new Option(
                "ablator of " + ablator.name(),
                true,
                thickness,
                thickness * ablator.density(),
                false,
                "recedes and chars; surface taken at the adiabatic wall temperature");
    }

    /**
     * @param propellant propellant that seeps through
     * @param pressure pressure behind the wall (Pa)
     * @param wallTemperature temperature to be held (K)
     * @param shell porous shell per area (kg/m²)
     * @return the coolant it uses up
     */
    public Option transpired(Propellant propellant, double pressure, double wallTemperature, double shell) {
        String name = "transpiration of " + propellant.name();
        try {
            double start = propellant
                    .fluid()
                    .atPressureTemperature(pressure, propellant.storageTemperature())
                    .enthalpy();
            double hot = propellant
                    .fluid()
                    .atPressureTemperature(pressure, wallTemperature)
                    .enthalpy();
            double heatCapacity = (hot - start) / (wallTemperature - propellant.storageTemperature());
            double flow = Transpiration.massFlux(
                    load.gasCoefficient(),
                    load.adiabaticWallTemperature(),
                    wallTemperature,
                    propellant.storageTemperature(),
                    heatCapacity);
            return new Option(name, true, 0, shell + flow * load.time(), true, "shell and coolant used up");
        } catch (PenstockException e) {
            return new Option(name, false, 0, 0, true, e.getMessage());
        }
    }

    /**
     * @param materials heat sinks to try
     * @param ablators ablators to try
     * @return every option, the possible ones first, lightest first
     */
    public List<Option> compare(List<WallMaterial> materials, List<Ablator> ablators) {
        List<Option> options = new ArrayList<>();
        materials.forEach(m -> options.add(heatSink(m)));
        ablators.forEach(a -> options.add(ablative(a)));
        options.sort((a, b) -> a.possible() != b.possible()
                ? Boolean.compare(b.possible(), a.possible())
                : Double.compare(a.arealMass(), b.arealMass()));
        return options;
    }
}
