package dev.penstock.cooling.protection;

import dev.penstock.cooling.wall.FatigueLife;
import dev.penstock.cooling.wall.WallMaterial;
import dev.penstock.errors.PenstockException;
import dev.penstock.errors.Require;
import dev.penstock.fluids.Propellant;
import dev.penstock.numerics.RootFinder;
import dev.penstock.quantities.Constants;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Compares ways to protect a base, a heat shield or a chamber that fires for a short time without a jacket: a heat sink, an
 * ablator, transpiration with a propellant and, where the wall radiates to the open, a radiating sheet. Masses per area; structure behind is left out. Immutable.
 */
public final class ProtectionStudy {

    private static final double THICKEST = 0.2;

    /** More uses than this are not told: other things wear out first. */
    private static final double MOST_USES = 1000;
    /** Thinnest sheet that is built (m), and fibre behind it (kg/m³, m²/s, depth over √(α t)): common practice, no source. */
    private static final double SHEET = 8e-4;

    private static final double INSULATION_DENSITY = 96;
    private static final double INSULATION_DIFFUSIVITY = 1e-6;
    private static final double INSULATION_DEPTH = 1.5;
    /** Emissivity of char: common practice, no source. */
    private static final double CHAR_EMISSIVITY = 0.85;

    /**
     * Heat load on the wall.
     *
     * @param gasCoefficient coefficient to the gas (W/(m²·K))
     * @param adiabaticWallTemperature adiabatic wall temperature (K)
     * @param time time under load (s)
     * @param initialTemperature temperature of the wall at the start (K)
     * @param open whether the wall radiates to the open, as one that enters the air does, and not to hot gas
     */
    public record Load(
            double gasCoefficient,
            double adiabaticWallTemperature,
            double time,
            double initialTemperature,
            boolean open) {

        /** A load on a wall that radiates to hot gas. */
        public Load(double gasCoefficient, double adiabaticWallTemperature, double time, double initialTemperature) {
            this(gasCoefficient, adiabaticWallTemperature, time, initialTemperature, false);
        }

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

        /** @return the same load on a wall that radiates to the open */
        public Load inTheOpen() {
            return new Load(gasCoefficient, adiabaticWallTemperature, time, initialTemperature, true);
        }

        /**
         * <pre>h (T_aw − T) = ε σ T⁴</pre>
         *
         * @param emissivity emissivity of the wall (-)
         * @return temperature at which the wall radiates away what it takes up (K)
         */
        public double radiativeEquilibrium(double emissivity) {
            return RootFinder.between(
                            "temperature of a radiating wall",
                            t -> gasCoefficient * (adiabaticWallTemperature - t)
                                    - emissivity * Constants.STEFAN_BOLTZMANN * Math.pow(t, 4),
                            1,
                            adiabaticWallTemperature,
                            1e-9)
                    .value();
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
     * @param usedUp what one use takes of that, coolant or ablator (kg/m²)
     * @param uses uses until it is renewed (-)
     * @param note what the reader should know
     */
    public record Option(
            String name,
            boolean possible,
            double thickness,
            double arealMass,
            boolean reusable,
            double usedUp,
            double uses,
            String note) {

        private static Option impossible(String name, boolean reusable, String note) {
            return new Option(name, false, 0, 0, reusable, 0, 0, note);
        }
    }

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
            return Option.impossible(name, true, "the hot face passes its limit however thick the plate");
        }
        double thickness = excess(material, SHEET, firing) <= 0
                ? SHEET
                : Math.exp(RootFinder.between(
                                "thickness of a heat sink",
                                t -> excess(material, Math.exp(t), firing),
                                Math.log(SHEET),
                                Math.log(THICKEST),
                                1e-6)
                        .value());
        return new Option(
                name,
                true,
                thickness,
                thickness * material.density(),
                true,
                0,
                life(material, peak(material, thickness, firing)),
                thickness == SHEET ? "the thinnest sheet that is built is enough" : "");
    }

    private double excess(WallMaterial material, double thickness, HeatSinkWall.Firing firing) {
        return peak(material, thickness, firing) - material.maximumTemperature();
    }

    private double peak(WallMaterial material, double thickness, HeatSinkWall.Firing firing) {
        return HeatSinkWall.fire(material, thickness, load.initialTemperature(), firing)
                .peakTemperature();
    }

    /** Uses by low-cycle fatigue between the start and the hottest (-), the sheet's back taken at the temperature of the start. */
    private double life(WallMaterial material, double hot) {
        return Math.min(
                MOST_USES, FatigueLife.life(material, hot, load.initialTemperature(), load.initialTemperature()));
    }

    /**
     * A thin sheet that radiates to the open, with insulation behind it.
     *
     * @param material material of the sheet
     * @return that; not possible where it gets too hot
     */
    public Option radiative(WallMaterial material) {
        String name = "radiating sheet of " + material.id();
        double hot = load.radiativeEquilibrium(material.emissivity());
        if (hot > material.maximumTemperature()) {
            return Option.impossible(
                    name,
                    true,
                    String.format(
                            Locale.ROOT,
                            "it would glow at %.0f K, its limit is %.0f K",
                            hot,
                            material.maximumTemperature()));
        }
        double insulation = INSULATION_DEPTH * Math.sqrt(INSULATION_DIFFUSIVITY * load.time());
        return new Option(
                name,
                true,
                SHEET + insulation,
                SHEET * material.density() + insulation * INSULATION_DENSITY,
                true,
                0,
                life(material, hot),
                String.format(Locale.ROOT, "glows at %.0f K; sheet of %.1f mm over fibre", hot, 1e3 * SHEET));
    }

    /**
     * @param ablator ablator
     * @return the layer it needs
     */
    public Option ablative(Ablator ablator) {
        double surface = load.open() ? load.radiativeEquilibrium(CHAR_EMISSIVITY) : load.adiabaticWallTemperature();
        double radiated =
                load.open() ? CHAR_EMISSIVITY * Constants.STEFAN_BOLTZMANN * Math.pow(ablator.charTemperature(), 4) : 0;
        double flux = Math.max(
                0, load.gasCoefficient() * (load.adiabaticWallTemperature() - ablator.charTemperature()) - radiated);
        double thickness = ablator.thickness(flux, surface, load.initialTemperature(), load.time());
        double spent = ablator.spent(flux, surface, load.initialTemperature(), load.time());
        return new Option(
                "ablator of " + ablator.name(),
                true,
                thickness,
                thickness * ablator.density(),
                false,
                spent * ablator.density(),
                1,
                load.open()
                        ? "recedes and chars; surface taken where it radiates what it takes up"
                        : "recedes and chars; surface taken at the adiabatic wall temperature");
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
            double used = flow * load.time();
            return new Option(name, true, 0, shell + used, true, used, MOST_USES, "shell and coolant used up");
        } catch (PenstockException e) {
            return Option.impossible(name, true, e.getMessage());
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
        if (load.open()) {
            materials.forEach(m -> options.add(radiative(m)));
        }
        ablators.forEach(a -> options.add(ablative(a)));
        options.sort((a, b) -> a.possible() != b.possible()
                ? Boolean.compare(b.possible(), a.possible())
                : Double.compare(a.arealMass(), b.arealMass()));
        return options;
    }
}
