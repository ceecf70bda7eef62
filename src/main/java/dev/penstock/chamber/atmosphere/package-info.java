/** Ambient pressure with altitude, and averages over an ascent. */
package dev.penstock.chamber.atmosphere;
