/** The page of one concept and the sections that stand on it: {@link ConceptPage}. */
package dev.penstock.reports.concept;
