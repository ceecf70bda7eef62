/**
 * What can be claimed: inputs and figures of an engine and of the vehicle that it drives, by their paths.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.claims.figure;
