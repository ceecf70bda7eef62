/** State and transport properties of a gas mixture: {@link GasState}, {@link MixtureTransport}. */
package dev.penstock.combustion.gas;
