package dev.penstock.study.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.penstock.errors.InvalidInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BatchFolderTest {

    private static final RowSchema SCHEMA = new RowSchema(List.of(
            new Column("point", Column.Kind.WHOLE, Column.Role.POINT, "", "Point"),
            new Column("engine.thrust", Column.Kind.NUMBER, Column.Role.INPUT, "N", "Thrust"),
            new Column("engine.isp_vacuum_s", Column.Kind.NUMBER, Column.Role.FIGURE, "s", "Isp"),
            new Column("engine.mass_kg", Column.Kind.NUMBER, Column.Role.FIGURE, "kg", "Mass"),
            new Column("within_limits", Column.Kind.TRUTH, Column.Role.LIMIT, "", "Within limits"),
            new Column("limits_missed", Column.Kind.WORDS, Column.Role.LIMIT, "", "Limits missed"),
            new Column("tightest_limit", Column.Kind.WORD, Column.Role.LIMIT, "", "Tightest limit"),
            new Column("failure", Column.Kind.WORD, Column.Role.FAILURE, "", "Failure"),
            new Column("failure_kind", Column.Kind.WORD, Column.Role.FAILURE, "", "Kind"),
            new Column("failure_subject", Column.Kind.WORD, Column.Role.FAILURE, "", "Subject")));

    private static final Map<String, String> ORIGIN = Map.of(
            "study.toml",
            "name = \"A\"\nseed = 1\n",
            "schema.json",
            """
            {"study": "A", "points": 40, "batches": 4, "columns": [
              {"name": "point", "kind": "whole", "role": "point", "unit": "", "title": "Point"},
              {"name": "engine.thrust", "kind": "number", "role": "input", "unit": "N", "title": "Thrust"},
              {"name": "engine.isp_vacuum_s", "kind": "number", "role": "figure", "unit": "s", "title": "Isp"},
              {"name": "engine.mass_kg", "kind": "number", "role": "figure", "unit": "kg", "title": "Mass"},
              {"name": "within_limits", "kind": "truth", "role": "limit", "unit": "", "title": "Within limits"},
              {"name": "limits_missed", "kind": "words", "role": "limit", "unit": "", "title": "Limits missed"},
              {"name": "tightest_limit", "kind": "word", "role": "limit", "unit": "", "title": "Tightest limit"},
              {"name": "failure", "kind": "word", "role": "failure", "unit": "", "title": "Failure"},
              {"name": "failure_kind", "kind": "word", "role": "failure", "unit": "", "title": "Kind"},
              {"name": "failure_subject", "kind": "word", "role": "failure", "unit": "", "title": "Subject"}]}
            """);

    @TempDir
    Path folder;

    /** Rows whose every fifth failed; impulse is the point's number, mass its distance from 20. */
    private static List<Row> rows(long from) {
        return LongStream.range(from, from + 10)
                .mapToObj(i -> i % 5 == 4
                        ? new Row(List.of(
                                Optional.of(i),
                                Optional.of(1e3 * i),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.of("no balance at " + i + ".5e-3 MPa of 'this'"),
                                Optional.of("limit reached"),
                                Optional.of("balance")))
                        : new Row(List.of(
                                Optional.of(i),
                                Optional.of(1e3 * i),
                                Optional.of((double) i),
                                Optional.of(Math.abs(i - 20.0)),
                                Optional.of(i % 2 == 0),
                                Optional.of(i % 2 == 0 ? List.of() : List.of("pump.speed", "wall.temperature")),
                                Optional.of("pump.speed"),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty())))
                .toList();
    }

    @Test
    void theSameRowsGiveTheSameBytes() {
        assertThat(RowFile.parquet(SCHEMA, rows(0))).isEqualTo(RowFile.parquet(SCHEMA, rows(0)));
    }

    @Test
    void onlyFinishedBatchesCount() throws IOException {
        try (BatchFolder out = BatchFolder.open(folder, ORIGIN)) {
            out.keep(0, RowFile.parquet(SCHEMA, rows(0)));
            out.keep(2, RowFile.parquet(SCHEMA, rows(20)));
            out.keep(3, RowFile.parquet(SCHEMA, rows(30)));
        }
        Files.delete(folder.resolve("batch=00003/_SUCCESS"));
        try (BatchFolder out = BatchFolder.open(folder, ORIGIN)) {
            assertThat(out.finished().stream()).containsExactly(0, 2);
        }
        try (Stream<Path> files = Files.list(folder.resolve("batch=00002"))) {
            assertThat(files.map(f -> f.getFileName().toString()))
                    .containsExactlyInAnyOrder("part.parquet", "_SUCCESS");
        }
    }

    @Test
    void aFolderOfAnotherStudyIsRefused() throws IOException {
        BatchFolder.open(folder, ORIGIN).close();
        assertThatThrownBy(() -> BatchFolder.open(
                        folder,
                        Map.of("study.toml", "name = \"A\"\nseed = 2\n", "schema.json", ORIGIN.get("schema.json"))))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("holds another study (study.toml says seed = 1 where this one says seed = 2)");
        Path other = Files.createDirectory(folder.resolve("other"));
        Files.writeString(other.resolve("letter.txt"), "dear");
        assertThatThrownBy(() -> BatchFolder.open(other, ORIGIN))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("it holds other files");
        assertThat(other.resolve("study.toml")).doesNotExist();
    }

    @Test
    void oneRunAtATimeWrites() {
        try (BatchFolder first = BatchFolder.open(folder, ORIGIN)) {
            assertThat(first.finished()).isEqualTo(new java.util.BitSet());
            assertThatThrownBy(() -> BatchFolder.open(folder, ORIGIN))
                    .isInstanceOf(InvalidInput.class)
                    .hasMessageContaining("another run is writing there");
        }
        BatchFolder.open(folder, ORIGIN).close();
    }

    @Test
    void theSummaryAsksTheFiles() {
        try (BatchFolder out = BatchFolder.open(folder, ORIGIN)) {
            for (int batch = 0; batch < 3; batch++) {
                out.keep(batch, RowFile.parquet(SCHEMA, rows(10L * batch)));
            }
        }
        StudySummary summary;
        try (StoredRows rows = StoredRows.open(folder)) {
            summary = rows.summary(List.of(
                    new StoredRows.Objective("engine.isp_vacuum_s", false),
                    new StoredRows.Objective("engine.mass_kg", true)));
        }
        assertThat(summary.points()).isEqualTo(40);
        assertThat(summary.finished()).isEqualTo(3);
        assertThat(summary.rows()).isEqualTo(30);
        assertThat(summary.answered()).isEqualTo(24);
        assertThat(summary.withinLimits()).isEqualTo(12);
        StudySummary.Spread impulse = summary.figures().get(0);
        assertThat(impulse.count()).isEqualTo(24);
        assertThat(impulse.least()).isEqualTo(0);
        assertThat(impulse.most()).isEqualTo(28);
        // The 24 values are 0..29 without 4, 9, ...: the 12th and 13th are 13 and 15.
        assertThat(impulse.percentiles().get(2)).isEqualTo(14);
        assertThat(summary.missed()).extracting(StudySummary.Share::count).containsExactly(12L, 12L);
        assertThat(summary.failures()).singleElement().satisfies(reason -> {
            assertThat(reason.words()).isEqualTo("no balance at # MPa of 'this'");
            assertThat(reason.example()).isEqualTo("no balance at 4.5e-3 MPa of 'this'");
            assertThat(reason.count()).isEqualTo(6);
        });
        // Of the even points that close, 28 has the most impulse and 20 the least mass; those between trade one for the
        // other.
        assertThat(summary.frontier().orElseThrow())
                .extracting(row -> row.get("point"))
                .containsExactly(28, 26, 22, 20);
    }

    @Test
    void aFolderThatIsNoStudyIsRefused() {
        assertThatThrownBy(() -> StoredRows.open(folder))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("it must be the folder that a study of many points has written");
    }
}
