/**
 * Commands of studies of many points.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.app.study;
