/**
 * How well an engine, and the vehicle that it drives, fits claims: first by its thrust chamber alone, then as balanced.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.claims.likelihood;
