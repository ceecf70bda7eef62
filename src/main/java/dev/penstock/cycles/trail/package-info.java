/**
 * Where every number of a balanced engine comes from: {@link BalanceTrail}.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.cycles.trail;
