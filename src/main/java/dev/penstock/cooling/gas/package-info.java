/** Heat transfer from the gas to the wall: {@link GasSide} and its models, radiation, soot and film. */
package dev.penstock.cooling.gas;
