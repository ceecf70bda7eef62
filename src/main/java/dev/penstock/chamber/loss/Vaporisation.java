package dev.penstock.chamber.loss;

import dev.penstock.chamber.design.CombustorDesign;
import dev.penstock.chamber.design.InjectorDesign;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.numerics.RootFinder;
import dev.penstock.provenance.ModelCard;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How much of the liquid propellants a chamber leaves unvaporised; what has not vaporised does not burn.
 * <pre>
 * generalised length   L_g = L_e (p_c/2.07 MPa)^0.66/[(1 − T_r)^0.4 (r_m/76 µm)^1.45 (V/30.5 m/s)^0.75 (h_fg/326 kJ/kg)^0.8 (M/100 g/mol)^0.35]
 * effective length     L_e = (L* /ε_c)/ε_c^0.44
 * unvaporised share    u = Σ x_i exp(−L_g,i/0.11 m)
 * off its design       r_m ~ V^−1/2,  V ~ flow
 * </pre>
 * The generalised length is that of [priem-heidmann-1960]; the drop size against injection velocity that of [ingebo-1958]. The
 * exponential is a fit to the curves of the former (50, 90 and 99 % vaporised at 3, 10 and 20 inches), from memory. V follows from the
 * injector's pressure drop, liquids are at their storage temperature. Where no drop size is stated the injector is a developed one:
 * fine enough, between 25 and 150 µm, to leave 0.3 % at the L* that the pair usually needs, at the design's pressure (common
 * practice, no source); a chamber of another L* then pays or gains, and so does another operating point. Below 0.4 of the design
 * flow a trend. An injector with variable orifices does not lose by throttling.
 */
public final class Vaporisation {

    public static final ModelCard CARD = new ModelCard(
            "chamber.vaporisation",
            "Vaporisation-limited combustion",
            "u = Σ x_i exp(−L_g/0.11 m), L_g = L_e p_c^0.66/[(1 − T_r)^0.4 r_m^1.45 V^0.75 h_fg^0.8 M^0.35] over reference values",
            "liquid sprays, r_m 5 to 500 µm, part flow 0.05 to 1.2",
            "a factor of 2 on drop life",
            List.of("priem-heidmann-1960", "ingebo-1958", "poling-2001", "common practice, no source"));

    /** Share of the flow that a developed injector leaves unvaporised (-): common practice, no source. */
    public static final double DEVELOPED = 0.003;

    private static final double DECAY = 0.11;
    private static final double FINEST = 25e-6;
    private static final double COARSEST = 150e-6;

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
        Optional<Reactants.Part> fuel = mixture.leading();
        List<Spray> list = new ArrayList<>();
        for (Reactants.Part part : mixture.parts()) {
            InjectorDesign.Side side = part.equals(fuel.orElse(null)) ? injector.fuel() : injector.oxidizer();
            if (!side.gas() && part.massFraction() > 0 && side.loss() > 0) {
                list.add(Spray.of(
                        part.propellant(), part.massFraction(), side.loss() * designPressure, side.flowShare()));
            }
        }
        this.sprays = list;
        this.radius = injector.dropRadius().orElseGet(this::developedRadius);
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
        return unvaporised(sprays, radius, combustor.characteristicLength(), pressure);
    }

    /** @return the same at the injector's design point (-) */
    public double unvaporisedAtDesign() {
        return unvaporised(atDesign(), radius, combustor.characteristicLength(), designPressure);
    }

    /** @return vaporised share over that at the design point (-) */
    public double partFlow() {
        return (1 - unvaporised()) / (1 - unvaporisedAtDesign());
    }

    private List<Spray> atDesign() {
        return sprays.stream().map(Spray::atDesign).toList();
    }

    private double developedRadius() {
        double length = combustor.injector().usualLength().orElse(combustor.characteristicLength());
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

    private double unvaporised(List<Spray> list, double drops, double characteristicLength, double at) {
        double effective = characteristicLength / Math.pow(combustor.contractionRatio(), 1.44);
        double left = 0;
        for (Spray spray : list) {
            left += spray.share() * Math.exp(-spray.generalisedLength(drops, effective, at) / DECAY);
        }
        return left;
    }
}
