/** Properties as functions of temperature, and transport models beside an equation of state. */
package dev.penstock.fluids.property;
