package dev.penstock.combustion;

/** What is assigned besides pressure. */
enum Assigned {
    TEMPERATURE,
    ENTHALPY,
    ENTROPY
}
