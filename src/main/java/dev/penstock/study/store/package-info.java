/**
 * Rows of large studies on disk: {@link dev.penstock.study.store.BatchFolder} holds them in finished batches,
 * {@link dev.penstock.study.store.RowFile} makes the Parquet file of one, {@link dev.penstock.study.store.StoredRows}
 * asks about all of them by SQL, file by file, without loading them. Knows nothing of engines.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.study.store;
