/**
 * The questions that are put to an engine: balance, limit, off-design, pressure feed. {@link EngineStudy} is the
 * entry.
 */
package dev.penstock.cycles.questions;
