/** What a thrust chamber is asked to be: {@link ChamberDesign} with its combustor, nozzle and stated efficiencies. */
package dev.penstock.chamber.design;
