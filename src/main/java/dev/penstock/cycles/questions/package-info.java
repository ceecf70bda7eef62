/**
 * The questions that are put to an engine: balance, limit, off-design, pressure feed. {@link EngineStudy} is the
 * entry.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.cycles.questions;
