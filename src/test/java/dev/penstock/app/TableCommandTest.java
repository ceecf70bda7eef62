package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code table}. */
class TableCommandTest {

    @TempDir
    private Path folder;

    private static List<Double> numbers(JsonNode array) {
        List<Double> list = new ArrayList<>();
        array.forEach(n -> list.add(n.doubleValue()));
        return list;
    }

    @Test
    void everyCombinationHasALineAndTheAxesRise() {
        JsonNode table = Run.of(
                        "table",
                        "heron",
                        "--altitude",
                        "30km,0km,10km",
                        "--throttle",
                        "1,0.8",
                        "--mixture-ratio",
                        "2.4,2.3",
                        "--json")
                .json();
        assertThat(numbers(table.at("/axes/altitude_m"))).containsExactly(0.0, 10e3, 30e3);
        assertThat(numbers(table.at("/axes/throttle"))).containsExactly(0.8, 1.0);
        assertThat(numbers(table.at("/axes/mixture_ratio"))).containsExactly(2.3, 2.4);
        assertThat(table.get("points")).hasSize(12);
        assertThat(table.get("complete").booleanValue()).isTrue();
        List<String> keys = new ArrayList<>();
        table.get("points").get(0).fieldNames().forEachRemaining(keys::add);
        assertThat(table.get("columns")).hasSize(keys.size());
        for (int i = 0; i < keys.size(); i++) {
            assertThat(table.get("columns").get(i).get("name").asText()).isEqualTo(keys.get(i));
        }
        for (JsonNode point : table.get("points")) {
            // identities: impulse is thrust over weight flow, the two flows are the whole in the ratio asked for
            assertThat(point.get("thrust_N").doubleValue()
                            / point.get("mass_flow_kg_s").doubleValue()
                            / 9.80665)
                    .isCloseTo(point.get("isp_s").doubleValue(), within(1e-9));
            assertThat(point.get("oxidizer_flow_kg_s").doubleValue()
                            / point.get("fuel_flow_kg_s").doubleValue())
                    .isCloseTo(point.get("mixture_ratio").doubleValue(), within(1e-9));
        }
        // the pressure of the air at 10 km is 26 500 Pa [us-std-atm-1976, table I]
        assertThat(table.at("/points/1/ambient_pressure_Pa").doubleValue()).isCloseTo(26_500, within(10.0));
    }

    /** What the table says in vacuum and at sea level is what the engine's own answers say. */
    @Test
    void theTableAgreesWithTheOffDesignAnswer() {
        JsonNode points = Run.of(
                        "table",
                        "heron",
                        "--ambient-pressure",
                        "0Pa,101325Pa",
                        "--throttle",
                        "0.7",
                        "--mixture-ratio",
                        "2.4",
                        "--json")
                .json()
                .get("points");
        JsonNode point = Run.of("off-design", "heron", "--throttle", "0.7", "--mixture-ratio", "2.4", "--json")
                .json()
                .at("/points/0");
        assertThat(points.get(0).get("thrust_N").doubleValue())
                .isCloseTo(point.get("thrust_vacuum_N").doubleValue(), within(1e-6));
        assertThat(points.get(1).get("thrust_N").doubleValue())
                .isCloseTo(point.get("thrust_sea_level_N").doubleValue(), within(1e-6));
        assertThat(points.get(0).get("altitude_m").isNull()).isTrue();
        assertThat(points.get(0).get("separated").booleanValue()).isFalse();
    }

    /** Twenty times the mixture ratio: no chamber of this hardware, but the line stays and says so. */
    @Test
    void aSettingThatDoesNotCloseKeepsItsLine() {
        Run run = Run.of(
                "table", "heron", "--altitude", "0km", "--throttle", "1", "--mixture-ratio", "2.34,45", "--json");
        JsonNode table = run.json();
        assertThat(run.code()).isZero();
        assertThat(table.get("points")).hasSize(2);
        assertThat(table.at("/points/1/thrust_N").isNull()).isTrue();
        assertThat(table.at("/points/1/failure").asText()).isNotEmpty();
        assertThat(table.get("complete").booleanValue()).isFalse();
        assertThat(table.get("not_closed").get(0).asText()).contains("mixture ratio 45");
    }

    @Test
    void parquetAndCommaSeparatedLinesHoldTheSame() throws Exception {
        Path parquet = folder.resolve("heron.parquet");
        Path csv = folder.resolve("heron.csv");
        List<String> words =
                List.of("table", "heron", "--altitude", "0..40km:3", "--throttle", "1", "--mixture-ratio", "2.34");
        for (Path file : List.of(parquet, csv)) {
            List<String> all = new ArrayList<>(words);
            all.addAll(List.of("--output", file.toString()));
            Run run = Run.of(all.toArray(String[]::new));
            assertThat(run.code()).as(run.err()).isZero();
        }
        List<String> lines = Files.readAllLines(csv);
        assertThat(lines).hasSize(4);
        int thrust = List.of(lines.get(0).split(",")).indexOf("thrust_N");
        try (Connection sql = DriverManager.getConnection("jdbc:duckdb:");
                Statement statement = sql.createStatement();
                ResultSet rows = statement.executeQuery(
                        "SELECT thrust_N, separated, failure FROM '" + parquet + "' ORDER BY altitude_m")) {
            for (String line : lines.subList(1, 4)) {
                assertThat(rows.next()).isTrue();
                assertThat(rows.getDouble(1)).isEqualTo(Double.parseDouble(line.split(",")[thrust]));
                assertThat(rows.getString(3)).isNull();
            }
            assertThat(rows.next()).isFalse();
        }
    }

    @Test
    void whatCannotBeAskedIsSaid() {
        Run run = Run.of("table", "heron", "--altitude", "0km", "--ambient-pressure", "1bar", "--output", "x.txt");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.problems()).anyMatch(p -> p.contains("not both")).anyMatch(p -> p.contains(".parquet"));
    }
}
