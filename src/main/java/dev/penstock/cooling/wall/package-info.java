/**
 * Wall materials of {@code fluids/walls}, conduction through wall and fins, stress, fatigue and buckling.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.cooling.wall;
