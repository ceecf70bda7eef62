/**
 * Studies of many points: which points ({@link dev.penstock.study.sample.SamplePoints}), what each becomes as a row
 * ({@link dev.penstock.study.sample.SamplePlan}), and the batches of rows on the cores of this machine
 * ({@link dev.penstock.study.sample.LocalBatches}) or elsewhere.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.study.sample;
