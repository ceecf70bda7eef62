/**
 * Which channels cool best, and what can be cooled at all: {@link JacketSearch}, {@link FeasibilityStudy}.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.cooling.search;
