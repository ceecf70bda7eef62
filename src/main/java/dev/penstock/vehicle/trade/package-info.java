/**
 * One mission, several answers: propellant pair against pair, reuse against loss, and where a single stage stops closing.
 */
package dev.penstock.vehicle.trade;
