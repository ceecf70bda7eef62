/**
 * Penstock for other programs. {@link dev.penstock.Penstock} opens the data and answers questions;
 * {@link dev.penstock.EngineConcept} says what is asked; the answers are records of plain numbers in SI units. These types and
 * the failures in {@link dev.penstock.errors} are what others may use and what stays. Every other package is internal: it may
 * change with any version.
 */
package dev.penstock;
