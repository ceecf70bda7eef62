/**
 * Head, efficiency, speed, stages and size of a pump: {@link PumpModel} sizes one, {@link PumpMap} runs it off its
 * design point.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.turbomachinery.pump;
