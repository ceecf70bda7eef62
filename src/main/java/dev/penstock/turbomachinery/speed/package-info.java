/**
 * What bounds the speed of a rotor, and how bounds are joined without a jump.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.turbomachinery.speed;
