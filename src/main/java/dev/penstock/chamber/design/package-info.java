/**
 * What a thrust chamber is asked to be: {@link ChamberDesign} with its combustor, nozzle and stated efficiencies.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.chamber.design;
