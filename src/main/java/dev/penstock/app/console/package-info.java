/**
 * What the commands share: a session, progress, exit codes, failures in one sentence.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.app.console;
