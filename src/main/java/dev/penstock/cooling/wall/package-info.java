/** Wall materials of {@code fluids/walls}, conduction through wall and fins, stress, fatigue and buckling. */
package dev.penstock.cooling.wall;
