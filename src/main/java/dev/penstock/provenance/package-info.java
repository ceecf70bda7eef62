/**
 * Where a number comes from: {@link dev.penstock.provenance.ModelCard} describes a model (equation, source, range,
 * uncertainty); {@link dev.penstock.provenance.Trail} ties a result's values to the models and inputs that made them.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.provenance;
