package dev.penstock.combustion.equilibrium;

/** What is assigned besides pressure. */
enum Assigned {
    TEMPERATURE,
    ENTHALPY,
    ENTROPY
}
