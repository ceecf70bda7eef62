/**
 * Power balance, mechanical losses and mass of what turns on one shaft: {@link ShaftModel}.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.turbomachinery.shaft;
