/**
 * Pumps, turbines and shafts: head, speed, efficiency, power, size and limits. In: a duty (what the cycle asks of the
 * machine) and a design (what the engineer fixed or left to the tool); out: {@link dev.penstock.turbomachinery.pump.PumpSizing},
 * {@link dev.penstock.turbomachinery.turbine.TurbineSizing}, {@link dev.penstock.turbomachinery.shaft.ShaftBalance}. Entry classes:
 * {@link dev.penstock.turbomachinery.pump.PumpModel}, {@link dev.penstock.turbomachinery.turbine.TurbineModel}. Main sources: NASA
 * SP-125, SP-8107, SP-8109, SP-8110, SP-8052; Gülich, Centrifugal Pumps.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.turbomachinery;
