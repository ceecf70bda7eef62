/**
 * Points that fill the unit cube: grid, Latin hypercube, scrambled Sobol points, each computed from its number alone so that
 * a million of them take no memory.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.numerics.design;
