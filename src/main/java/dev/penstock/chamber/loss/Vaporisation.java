package dev.penstock.chamber.loss;

import dev.penstock.chamber.design.CombustorDesign;
import dev.penstock.chamber.design.InjectorDesign;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.fluids.Propellant;
import dev.penstock.numerics.RootFinder;
import dev.penstock.provenance.ModelCard;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * How much of the liquid propellants a chamber leaves unvaporised; what has not vaporised does not burn.
 * <pre>
 * generalised length   L_g = L_e (p_c/2.07 MPa)^0.66/[(1 − T_r)^0.4 (r_m/76 µm)^1.45 (V/30.5 m/s)^0.75 (h_fg/326 kJ/kg)^0.8 (M/100 g/mol)^0.35]
 *                      times b, how many times as fast drops burn as they would evaporate (1 but for hydrazines)
 * effective length     L_e = (L* /ε_c)/ε_c^0.44
 * unvaporised share    u = Σ x_i exp(−L_g,i/0.11 m)
 * off its design       r_m ~ V^−1/2,  V ~ flow
 * </pre>
 * The generalised length is that of [priem-heidmann-1960]; the drop size against injection velocity that of [ingebo-1958]. The
 * exponential is a fit to the curves of the former (50, 90 and 99 % vaporised at 3, 10 and 20 inches), from memory. V follows from the
 * injector's pressure drop, liquids are at their storage temperature. Where no drop size is stated the injector is a developed one:
 * fine enough, between 25 and 150 µm, to leave 0.3 % at the L* that the pair usually needs, at the design's pressure (common
 * practice, no source); a chamber of another L* then pays or gains, and so does another operating point. Where even the finest drops
 * leave more than that, as in the wide chambers of small throats, chambers are longer than usual ({@link #lengthFor}). Below 0.4 of the
 * design flow a trend. An injector with variable orifices does not lose by throttling.
 */
public final class Vaporisation {

    public static final ModelCard CARD = new ModelCard(
            "chamber.vaporisation",
            "Vaporisation-limited combustion",
            "u = Σ x_i exp(−L_g/0.11 m), L_g = b L_e p_c^0.66/[(1 − T_r)^0.4 r_m^1.45 V^0.75 h_fg^0.8 M^0.35] over reference values",
            "liquid sprays, r_m 5 to 500 µm, part flow 0.05 to 1.2",
            "a factor of 2 on drop life",
            List.of("priem-heidmann-1960", "ingebo-1958", "poling-2001", "common practice, no source"));

    /** Share of the flow that a developed injector leaves unvaporised (-): common practice, no source. */
    public static final double DEVELOPED = 0.003;

    private static final double DECAY = 0.11;
    private static final double FINEST = 25e-6;
    private static final double COARSEST = 150e-6;

    /** Longest usual L* of a pair (m): 70 inches, of peroxide with kerosene, in table 4-1 of [nasa-sp-125] (from memory). */
    private static final double LONGEST = 1.78;

    /**
     * Two propellants from their tanks.
     *
     * @param oxidizer oxidizer
     * @param fuel fuel
     * @param mixtureRatio mass of oxidizer over that of fuel (-)
     */
    public record Pair(Propellant oxidizer, Propellant fuel, double mixtureRatio) {}

    private final List<Spray> sprays;
    private final CombustorDesign combustor;
    private final double pressure;
    private final double designPressure;
    private final double radius;

    /**
     * @param combustor combustor with its injector
     * @param pressure chamber pressure (Pa)
     * @param mixture what is injected
     */
    public Vaporisation(CombustorDesign combustor, double pressure, Reactants mixture) {
        this.combustor = combustor;
        this.pressure = pressure;
        InjectorDesign injector = combustor.injector();
        this.designPressure = pressure / injector.pressureShare();
        this.sprays = sprays(injector, designPressure, mixture);
        this.radius = injector.dropRadius().orElseGet(this::developedRadius);
    }

    private static List<Spray> sprays(InjectorDesign injector, double designPressure, Reactants mixture) {
        Optional<Reactants.Part> fuel = mixture.leading();
        List<Spray> list = new ArrayList<>();
        for (Reactants.Part part : mixture.parts()) {
            InjectorDesign.Side side = part.equals(fuel.orElse(null)) ? injector.fuel() : injector.oxidizer();
            addTo(list, side, part.propellant(), part.massFraction(), designPressure);
        }
        return list;
    }

    private static void addTo(
            List<Spray> list, InjectorDesign.Side side, Propellant propellant, double share, double designPressure) {
        if (!side.gas() && share > 0 && side.loss() > 0) {
            list.add(Spray.of(propellant, share, side.loss() * designPressure, side.flowShare()));
        }
    }

    /**
     * L* of a chamber in which the finest drops of a developed injector leave no more than usual: that of the pair, or longer where that
     * is too short for them, up to the longest that any pair has.
     *
     * @param usual L* that the pair usually needs (m)
     * @param contractionRatio contraction ratio of the chamber (-)
     * @param injector injector at its design point
     * @param pressure chamber pressure (Pa)
     * @param pair what is injected
     * @return L* (m)
     */
    public static double lengthFor(
            double usual, double contractionRatio, InjectorDesign injector, double pressure, Pair pair) {
        double fuelShare = 1 / (1 + pair.mixtureRatio);
        List<Spray> sprays = new ArrayList<>();
        addTo(sprays, injector.oxidizer(), pair.oxidizer, 1 - fuelShare, pressure);
        addTo(sprays, injector.fuel(), pair.fuel, fuelShare, pressure);
        DoubleUnaryOperator left = length ->
                Math.log(unvaporised(sprays, FINEST, effective(length, contractionRatio), pressure) / DEVELOPED);
        if (usual >= LONGEST || sprays.isEmpty() || left.applyAsDouble(usual) <= 0) {
            return usual;
        }
        return left.applyAsDouble(LONGEST) >= 0
                ? LONGEST
                : RootFinder.between("length of a chamber for the finest drops", left, usual, LONGEST, 1e-9)
                        .value();
    }

    /** @return mass-median drop radius at the design point (m) */
    public double dropRadius() {
        return radius;
    }

    /** @return whether anything is injected as a liquid */
    public boolean liquid() {
        return !sprays.isEmpty();
    }

    /** @return share of all that is injected that leaves unvaporised (-) */
    public double unvaporised() {
        return unvaporised(sprays, radius, effective(combustor.characteristicLength()), pressure);
    }

    /** @return the same at the injector's design point (-) */
    public double unvaporisedAtDesign() {
        return unvaporised(atDesign(), radius, effective(combustor.characteristicLength()), designPressure);
    }

    /** @return vaporised share over that at the design point (-) */
    public double partFlow() {
        return (1 - unvaporised()) / (1 - unvaporisedAtDesign());
    }

    private List<Spray> atDesign() {
        return sprays.stream().map(Spray::atDesign).toList();
    }

    private double developedRadius() {
        double length = effective(combustor.injector().usualLength().orElse(combustor.characteristicLength()));
        List<Spray> design = atDesign();
        if (unvaporised(design, FINEST, length, designPressure) >= DEVELOPED) {
            return FINEST;
        }
        if (unvaporised(design, COARSEST, length, designPressure) <= DEVELOPED) {
            return COARSEST;
        }
        return RootFinder.between(
                        "drop size of a developed injector",
                        r -> Math.log(unvaporised(design, r, length, designPressure) / DEVELOPED),
                        FINEST,
                        COARSEST,
                        1e-12)
                .value();
    }

    private double effective(double characteristicLength) {
        return effective(characteristicLength, combustor.contractionRatio());
    }

    private static double effective(double characteristicLength, double contractionRatio) {
        return characteristicLength / Math.pow(contractionRatio, 1.44);
    }

    private static double unvaporised(List<Spray> list, double drops, double effectiveLength, double at) {
        double left = 0;
        for (Spray spray : list) {
            left += spray.share() * Math.exp(-spray.generalisedLength(drops, effectiveLength, at) / DECAY);
        }
        return left;
    }
}
