package dev.penstock.quantities;

/** Physical constants, each named by source where more than one value is in use. SI. */
public final class Constants {

    /** Standard acceleration of gravity (m/s²), by definition (3rd CGPM, 1901). */
    public static final double STANDARD_GRAVITY = 9.80665;

    /** Molar gas constant (J/(mol K)), CODATA 2018, exact since the 2019 SI. */
    public static final double MOLAR_GAS_CONSTANT = 8.31446261815324;

    /** Standard atmosphere (Pa), by definition (10th CGPM, 1954). */
    public static final double STANDARD_ATMOSPHERE = 101325.0;

    /** Standard-state pressure of NASA and JANAF thermodynamic data (Pa): 1 bar. */
    public static final double STANDARD_STATE_PRESSURE = 1.0e5;

    /** Stefan-Boltzmann constant (W/(m² K⁴)), CODATA 2018. */
    public static final double STEFAN_BOLTZMANN = 5.670374419e-8;

    private Constants() {}
}
