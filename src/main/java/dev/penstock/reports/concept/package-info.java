/**
 * The page of one concept and the sections that stand on it: {@link ConceptPage}.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.reports.concept;
