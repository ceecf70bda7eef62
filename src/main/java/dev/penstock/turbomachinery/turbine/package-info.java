/**
 * Efficiency, flow, speed and size of a turbine: {@link TurbineModel} sizes one, {@link TurbineMap} runs it off its
 * design point.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.turbomachinery.turbine;
