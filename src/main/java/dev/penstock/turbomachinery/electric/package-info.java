/**
 * Electric drive of pumps: motors, inverters and batteries. Entry class:
 * {@link dev.penstock.turbomachinery.electric.ElectricDrive}; out:
 * {@link dev.penstock.turbomachinery.electric.ElectricSizing}.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.turbomachinery.electric;
