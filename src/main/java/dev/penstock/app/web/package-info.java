/**
 * The local page: a local page on which a concept is opened, changed, compared, swept and saved. Entry:
 * {@link dev.penstock.app.web.LocalServer}. In: requests of one browser on this machine; out: pages, JSON, drawings, files of
 * the workspace and nothing outside it.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.app.web;
