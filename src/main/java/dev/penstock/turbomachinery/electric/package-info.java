/**
 * Electric drive of pumps: motors, inverters and batteries. Entry class:
 * {@link dev.penstock.turbomachinery.electric.ElectricDrive}; out:
 * {@link dev.penstock.turbomachinery.electric.ElectricSizing}.
 */
package dev.penstock.turbomachinery.electric;
