/**
 * What is lost between the ideal and the delivered impulse: one {@link LossModel} per loss, summed by {@link
 * LossAccount}.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.chamber.loss;
