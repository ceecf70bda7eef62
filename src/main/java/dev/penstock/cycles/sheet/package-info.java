/**
 * The sheet on which an engine is laid out: components joined at stations, machines on shafts, and what comes out of
 * it, {@link EngineBalance}.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.cycles.sheet;
