/** What models must know of a propellant beside its states, as its file says it: combustion, cooling, tanks, metals. */
package dev.penstock.fluids.traits;
