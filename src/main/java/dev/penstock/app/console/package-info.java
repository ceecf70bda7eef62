/**
 * What the commands share: options, progress, exit codes, failures in one sentence.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.app.console;
