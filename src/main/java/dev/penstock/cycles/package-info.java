/**
 * Engine cycles: which components stand where, and what closes flow, pressure and power. In: a
 * {@link dev.penstock.cycles.concept.Concept} from {@link dev.penstock.cycles.reading.ConceptReader}; out: an
 * {@link dev.penstock.cycles.sheet.EngineBalance} from {@link dev.penstock.cycles.questions.EngineStudy}. Every cycle is one file that
 * states its arrangement, its unknowns and its residuals; one bounded solver closes them all.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.cycles;
