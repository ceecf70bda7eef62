package dev.penstock.turbomachinery.mass;

/** The metal that an engine's parts are weighed with: common practice, no source. */
final class EngineMetal {

    /** Of steels and nickel alloys (kg/m³). */
    static final double DENSITY = 8000;

    /** FS/σ: safety factor over strength (1/Pa). */
    static final double SAFETY_OVER_STRENGTH = 1.5 / 500e6;

    /** The same of hot parts. */
    static final double SAFETY_OVER_HOT_STRENGTH = 1.5 / 300e6;

    private EngineMetal() {}
}
