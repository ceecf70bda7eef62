/**
 * Heat transfer and friction on the side of the coolant: {@link CoolantCorrelations} chooses a {@link
 * CoolantSideHeatTransfer}.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.cooling.coolant;
