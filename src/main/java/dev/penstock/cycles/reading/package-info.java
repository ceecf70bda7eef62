/** Reads concept files: {@link ConceptReader}; writes a template of one: {@link ConceptTemplate}. */
package dev.penstock.cycles.reading;
