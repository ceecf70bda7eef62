/**
 * What is a page told of an engine, a vehicle or claims? Begin with {@link dev.penstock.app.answer.EngineAnswer}: figures, tables and
 * drawings as maps that the pages' scripts show.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.app.answer;
