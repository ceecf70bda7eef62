/**
 * Real-fluid states of propellants, coolants and pressurants: {@link dev.penstock.fluids.FluidLibrary} reads
 * {@code fluids/*.toml}; a {@link dev.penstock.fluids.state.Fluid} answers with {@link dev.penstock.fluids.state.FluidState}s, from
 * CoolProp or from published correlations. The only package that touches JNA.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.fluids;
