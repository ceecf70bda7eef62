/** Walls without a jacket: ablation, heat sink, transpiration, see {@link ProtectionStudy}. */
package dev.penstock.cooling.protection;
