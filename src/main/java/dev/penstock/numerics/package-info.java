/**
 * Guarded use of Commons Math: roots, minima and differential equations that refuse non-finite values and say their effort; and
 * of our own the bounded solver for systems and the mixing of repeated substitutions. No other package calls the solvers of
 * Commons Math.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.numerics;
