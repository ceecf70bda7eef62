package dev.penstock.turbomachinery.pump;

import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.traits.Metal;
import dev.penstock.fluids.traits.MetalAttack;
import dev.penstock.provenance.Spread;
import java.util.Optional;

/**
 * Alloys of impellers and inducers with the tip speed that each stands in a liquid, from strength over density and, in dense
 * liquids, blade loading [nasa-sp-8109, from memory].
 */
public enum ImpellerMaterial {
    ALUMINIUM(Metal.ALUMINIUM, "aluminium alloy", new Spread(400, 450, 520), new Spread(240, 260, 270)),
    TITANIUM(Metal.TITANIUM, "titanium alloy", new Spread(560, 610, 700), new Spread(380, 430, 480)),
    STEEL(Metal.STEEL, "stainless steel", new Spread(350, 400, 460), new Spread(320, 360, 420)),
    NICKEL(Metal.NICKEL, "nickel alloy", new Spread(420, 480, 550), new Spread(370, 400, 450));

    private final Metal metal;
    private final String title;
    private final Spread inHydrogen;
    private final Spread inDenseLiquids;

    ImpellerMaterial(Metal metal, String title, Spread inHydrogen, Spread inDenseLiquids) {
        this.metal = metal;
        this.title = title;
        this.inHydrogen = inHydrogen;
        this.inDenseLiquids = inDenseLiquids;
    }

    /**
     * @param propellant what is pumped
     * @return the alloy in use where speed matters: titanium for hydrogen, a nickel alloy for everything else
     */
    public static ImpellerMaterial usual(Propellant propellant) {
        return LightLiquid.is(propellant.loadingDensity()) ? TITANIUM : NICKEL;
    }

    /** @return name for people */
    public String title() {
        return title;
    }

    /**
     * @param propellant what is pumped
     * @return highest tip speed (m/s)
     */
    public Spread tipSpeed(Propellant propellant) {
        return LightLiquid.is(propellant.loadingDensity()) ? inHydrogen : inDenseLiquids;
    }

    /**
     * @param propellant what is pumped
     * @return why this alloy must not be used with it; empty if nothing is known against it
     */
    public Optional<String> objection(Propellant propellant) {
        return attack(propellant).map(MetalAttack::reason);
    }

    /** @return whether {@link #objection} forbids the use with that propellant, rather than cautions */
    public boolean barred(Propellant propellant) {
        return attack(propellant).map(MetalAttack::barred).orElse(false);
    }

    private Optional<MetalAttack> attack(Propellant propellant) {
        return Optional.ofNullable(propellant.traits().metals().get(metal));
    }
}
