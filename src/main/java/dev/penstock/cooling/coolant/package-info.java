/**
 * Heat transfer and friction on the side of the coolant: {@link CoolantCorrelations} chooses a {@link
 * CoolantSideHeatTransfer}.
 */
package dev.penstock.cooling.coolant;
