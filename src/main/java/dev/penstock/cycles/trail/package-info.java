/** Where every number of a balanced engine comes from: {@link BalanceTrail}. */
package dev.penstock.cycles.trail;
