/**
 * Closes a cycle: {@link Balancer} solves the arrangement, {@link BalanceReport} writes down what was found and
 * audits it.
 */
package dev.penstock.cycles.solving;
