/** What the commands share: options, progress, exit codes, failures in one sentence. */
package dev.penstock.app.console;
