/**
 * State and transport properties of a gas mixture: {@link GasState}, {@link MixtureTransport}.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.combustion.gas;
