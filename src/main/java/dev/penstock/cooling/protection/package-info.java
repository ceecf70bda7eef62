/**
 * Walls without a jacket: ablation, heat sink, transpiration, see {@link ProtectionStudy}.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.cooling.protection;
