/**
 * Guarded use of Commons Math: root finding that refuses non-finite values and checks its answer, and the bounded
 * solver for systems. Nothing else in Penstock calls those solvers directly.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.numerics;
