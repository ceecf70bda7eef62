/**
 * Thrust chamber and nozzle: what does this gas deliver through this throat and area ratio? In: reactants and a
 * {@link dev.penstock.chamber.design.ChamberDesign}; out: {@link dev.penstock.chamber.ChamberPerformance} with the ideal
 * expansion, every loss by name, the contour and the thrust at any ambient pressure. Entry classes:
 * {@link dev.penstock.chamber.ThrustChamber} and {@link dev.penstock.chamber.flow.NozzleFlow}. Main sources: NASA RP-1311,
 * NASA SP-8120, NASA SP-125, U.S. Standard Atmosphere 1976.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.chamber;
