package dev.penstock.turbomachinery;

import dev.penstock.fluids.Propellant;
import dev.penstock.provenance.Spread;
import java.util.Optional;

/**
 * Alloys of impellers and inducers with the tip speed that each stands in a liquid, from strength over density and, in dense
 * liquids, blade loading [nasa-sp-8109, from memory].
 */
public enum ImpellerMaterial {
    ALUMINIUM("aluminium alloy", 2800, new Spread(400, 450, 520), new Spread(240, 260, 270)),
    TITANIUM("titanium alloy", 4450, new Spread(560, 610, 700), new Spread(380, 430, 480)),
    STEEL("stainless steel", 7900, new Spread(350, 400, 460), new Spread(320, 360, 420)),
    NICKEL("nickel alloy", 8200, new Spread(420, 480, 550), new Spread(370, 400, 450));

    private final String title;
    private final double density;
    private final Spread inHydrogen;
    private final Spread inDenseLiquids;

    ImpellerMaterial(String title, double density, Spread inHydrogen, Spread inDenseLiquids) {
        this.title = title;
        this.density = density;
        this.inHydrogen = inHydrogen;
        this.inDenseLiquids = inDenseLiquids;
    }

    /**
     * @param propellant what is pumped
     * @return the alloy in use where speed matters: titanium for hydrogen, a nickel alloy for everything else
     */
    public static ImpellerMaterial usual(Propellant propellant) {
        return propellant.loadingDensity() < PumpStages.HYDROGEN_DENSITY ? TITANIUM : NICKEL;
    }

    /** @return name for people */
    public String title() {
        return title;
    }

    /** @return density (kg/m³) */
    public double density() {
        return density;
    }

    /**
     * @param propellant what is pumped
     * @return highest tip speed (m/s)
     */
    public Spread tipSpeed(Propellant propellant) {
        return propellant.loadingDensity() < PumpStages.HYDROGEN_DENSITY ? inHydrogen : inDenseLiquids;
    }

    /**
     * @param propellant what is pumped
     * @return why this alloy must not be used with it; empty if nothing is known against it
     */
    public Optional<String> objection(Propellant propellant) {
        boolean oxidizer = propellant.roles().contains(Propellant.Role.OXIDIZER);
        if (this == TITANIUM && oxidizer) {
            return Optional.of("titanium burns in oxygen and other oxidizers when rubbed or struck");
        }
        if (this == ALUMINIUM && propellant.id().equals("oxygen")) {
            return Optional.of(
                    "aluminium can ignite in oxygen when rubbed: low pressures only, with non-rubbing clearances");
        }
        return Optional.empty();
    }

    /** @return whether {@link #objection} forbids the use with that propellant, rather than cautions */
    public boolean barred(Propellant propellant) {
        return this == TITANIUM && propellant.roles().contains(Propellant.Role.OXIDIZER);
    }
}
