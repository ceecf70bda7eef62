/**
 * What has to be built of an engine, counted: {@link HardwareCount}.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.cycles.hardware;
