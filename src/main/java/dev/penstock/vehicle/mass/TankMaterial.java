package dev.penstock.vehicle.mass;

/** What a tank is made of. Room-temperature figures of welded or wound sheet, from memory of handbook values. */
public enum TankMaterial {
    /** Age-hardened aluminium-copper alloy. */
    ALUMINIUM(2840, 420e6, 73e9, 1.2e-3, 0.9),
    /** Aluminium-lithium alloy. */
    ALUMINIUM_LITHIUM(2700, 520e6, 77e9, 1.2e-3, 0.85),
    /** Cold-rolled austenitic stainless steel. */
    STAINLESS_STEEL(7900, 1250e6, 190e9, 0.4e-3, 0.9),
    /** Carbon fibre in epoxy, quasi-isotropic lay-up with liner. */
    CARBON_FIBRE(1600, 600e6, 60e9, 1.2e-3, 0.9);

    private final double density;
    private final double strength;
    private final double modulus;
    private final double minimumGauge;
    private final double jointEfficiency;

    TankMaterial(double density, double strength, double modulus, double minimumGauge, double jointEfficiency) {
        this.density = density;
        this.strength = strength;
        this.modulus = modulus;
        this.minimumGauge = minimumGauge;
        this.jointEfficiency = jointEfficiency;
    }

    /** @return density (kg/m³) */
    public double density() {
        return density;
    }

    /** @return ultimate strength (Pa) */
    public double strength() {
        return strength;
    }

    /** @return elastic modulus (Pa) */
    public double modulus() {
        return modulus;
    }

    /** @return thinnest sheet (m) */
    public double minimumGauge() {
        return minimumGauge;
    }

    /** @return strength of a joint over that of the sheet (-) */
    public double jointEfficiency() {
        return jointEfficiency;
    }
}
