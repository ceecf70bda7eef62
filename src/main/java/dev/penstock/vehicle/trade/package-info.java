/**
 * One mission, several answers: propellant pair against pair, reuse against loss, and where a single stage stops closing.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.vehicle.trade;
