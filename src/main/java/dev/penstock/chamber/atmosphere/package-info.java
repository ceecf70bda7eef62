/**
 * Ambient pressure with altitude, and averages over an ascent.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.chamber.atmosphere;
