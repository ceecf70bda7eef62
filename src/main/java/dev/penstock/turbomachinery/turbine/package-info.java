/**
 * Efficiency, flow, speed and size of a turbine: {@link TurbineModel} sizes one, {@link TurbineMap} runs it off its
 * design point.
 */
package dev.penstock.turbomachinery.turbine;
