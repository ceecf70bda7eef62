/**
 * The command line: {@link dev.penstock.app.CommandLineProgram} is the main class, each command one class. The only package that
 * prints, ends the program, or turns an exception into a sentence and an exit code.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.app;
