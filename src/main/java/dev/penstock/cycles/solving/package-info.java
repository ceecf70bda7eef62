/**
 * Closes a cycle: {@link Balancer} solves the arrangement, {@link BalanceReport} writes down what was found and
 * audits it.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.cycles.solving;
