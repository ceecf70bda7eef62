/**
 * What the points of a case teach: which inputs move its figures, where it is best, what one objective costs of another. In: a
 * {@link dev.penstock.study.space.StudyCase} and the space of its inputs; out: numbers, each checked by a balance of its own.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.study.search;
