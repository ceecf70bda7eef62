/**
 * Reads concept files: {@link ConceptReader}; writes a template of one: {@link ConceptTemplate}.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.cycles.reading;
