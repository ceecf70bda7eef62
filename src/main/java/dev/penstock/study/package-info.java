/**
 * Many engines at once: several concepts side by side, and (over all processors) whatever asks for more than one balance.
 * In: files and changes; out: {@link dev.penstock.study.Outcome}s, each a balance or the reason why there is none.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.study;
