/**
 * Whether the metals of parts bear the oxygen and hydrogen that they meet: {@link MetalReport}.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.turbomachinery.metal;
