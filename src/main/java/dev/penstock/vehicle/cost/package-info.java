/**
 * What building and launching costs, in work-years, with and without reuse: {@link dev.penstock.vehicle.cost.CostTrade}.
 * The weakest numbers of all.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.vehicle.cost;
