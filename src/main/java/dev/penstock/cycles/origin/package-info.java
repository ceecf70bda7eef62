/**
 * What a balance says of itself while it is made: paths of inputs, keys of pumps and shafts, where parts stand, and the
 * relations that no publication is needed for.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.cycles.origin;
