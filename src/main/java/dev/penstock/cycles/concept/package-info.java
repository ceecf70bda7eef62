/**
 * What an engineer asked for, validated and in SI: {@link Concept}.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.cycles.concept;
