/**
 * What every study of many points shares: a case, read once; the inputs that vary; the figures that are asked for; the
 * constraints. In: a concept or vehicle file; out: {@link dev.penstock.study.space.StudyPoint}s, numbers only.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.study.space;
