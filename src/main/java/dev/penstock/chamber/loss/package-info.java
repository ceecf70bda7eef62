/**
 * What is lost between the ideal and the delivered impulse: one {@link LossModel} per loss, summed by {@link
 * LossAccount}.
 */
package dev.penstock.chamber.loss;
