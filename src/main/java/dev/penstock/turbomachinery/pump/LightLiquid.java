package dev.penstock.turbomachinery.pump;

/** Tells liquids so light that pumps, shafts and alloys for them are of their own kind. */
public final class LightLiquid {

    /** Of the liquids in use hydrogen alone is lighter than this (kg/m³). */
    private static final double LIGHTER_THAN = 150;

    private LightLiquid() {}

    /**
     * @param density liquid density (kg/m³)
     * @return whether the liquid is as light as hydrogen
     */
    public static boolean is(double density) {
        return density < LIGHTER_THAN;
    }
}
