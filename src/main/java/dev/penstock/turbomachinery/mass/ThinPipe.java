package dev.penstock.turbomachinery.mass;

/**
 * A pipe that holds its pressure by its hoop.
 * <pre>
 * d = √(4 ṁ/(π ρ v)),   s = p d FS/(2σ), at least 1.5 mm,   m = π d s ρ_m L
 * </pre>
 *
 * @param bore d (m)
 * @param wall s (m)
 */
record ThinPipe(double bore, double wall) {

    private static final double THINNEST = 1.5e-3;

    /**
     * @param massFlow through it (kg/s)
     * @param density of what flows (kg/m³)
     * @param velocity at which it flows (m/s)
     * @param pressure in it (Pa)
     * @param safetyOverStrength FS/σ (1/Pa)
     */
    static ThinPipe of(double massFlow, double density, double velocity, double pressure, double safetyOverStrength) {
        double bore = Math.sqrt(4 * massFlow / (Math.PI * density * velocity));
        return new ThinPipe(bore, Math.max(0.5 * pressure * bore * safetyOverStrength, THINNEST));
    }

    /** Mass of so much of it (kg). */
    double mass(double length) {
        return Math.PI * bore * wall * EngineMetal.DENSITY * length;
    }
}
