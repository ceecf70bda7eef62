package dev.penstock.study;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.toml.TomlMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import dev.penstock.claims.file.ClaimsInputs;
import dev.penstock.cycles.reading.ConceptInputs;
import dev.penstock.input.InputGroup;
import dev.penstock.input.JsonSchema;
import dev.penstock.vehicle.plan.VehicleInputs;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The published schemas: as declared, right about every demo file, and able to refuse. */
class JsonSchemaTest {

    private static final Path FOLDER = Path.of("docs/schema");
    private static final TomlMapper TOML = new TomlMapper();

    static Stream<Arguments> kinds() {
        return Stream.of(
                Arguments.of("concept", ConceptInputs.ofAll(VehicleInputs.IN_CONCEPT)),
                Arguments.of("vehicle", VehicleInputs.FILE),
                Arguments.of("study", StudyInputs.FILE),
                Arguments.of("claims", ClaimsInputs.FILE));
    }

    /** Rewritten with {@code -Dpenstock.docs.write=true}. */
    @ParameterizedTest
    @MethodSource("kinds")
    void theSchemaInDocsIsWhatTheDeclarationsSay(String kind, InputGroup declared) throws IOException {
        String schema = new ObjectMapper()
                        .writerWithDefaultPrettyPrinter()
                        .writeValueAsString(JsonSchema.of(declared))
                        .replace(System.lineSeparator(), "\n")
                + "\n";
        Path file = FOLDER.resolve(kind + ".json");
        if (Boolean.getBoolean("penstock.docs.write")) {
            Files.writeString(file, schema);
        }
        assertThat(Files.readString(file)).isEqualTo(schema);
    }

    private static List<String> faults(String kind, String toml) throws IOException {
        JsonNode schema =
                new ObjectMapper().readTree(FOLDER.resolve(kind + ".json").toFile());
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V4)
                .getSchema(schema)
                .validate(TOML.readTree(toml))
                .stream()
                .map(Object::toString)
                .toList();
    }

    static Stream<Arguments> demos() throws IOException {
        Stream.Builder<Arguments> all = Stream.builder();
        for (String kind : List.of("concept", "vehicle", "study", "claims")) {
            Path folder = Path.of(
                    switch (kind) {
                        case "concept" -> "cycles";
                        case "vehicle" -> "cycles/vehicles";
                        case "claims" -> "cycles/claims";
                        default -> "cycles/studies";
                    });
            try (Stream<Path> files = Files.list(folder)) {
                files.filter(f -> f.toString().endsWith(".toml")).sorted().forEach(f -> all.add(Arguments.of(kind, f)));
            }
        }
        return all.build();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void everyDemoFileIsValid(String kind, Path file) throws IOException {
        assertThat(faults(kind, Files.readString(file))).isEmpty();
    }

    /** A line of a sound file put in place of another. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "concept | cycles/heron.toml | name = | nam =",
                "concept | cycles/heron.toml | name = .* | name = 3",
                "concept | cycles/heron.toml | cycle = .* | cycle = \"perpetual\"",
                "concept | cycles/heron.toml | mixture_ratio = .* | mixture_ratio = 99",
                "concept | cycles/heron.toml | mixture_ratio = .* | mixture_ratio = \"rich\"",
                "concept | cycles/heron.toml | mixture_ratio = .* | ",
                "concept | cycles/heron.toml | chamber_pressure = .* | chamber_pressure = 8",
                "concept | cycles/heron.toml | chamber_pressure = .* | chamber_pressure = \"8\"",
                "concept | cycles/heron.toml | chamber_pressure = .* | chamber_presure = \"8 MPa\"",
                "concept | cycles/heron.toml | \\[nozzle\\] | [nozle]",
                "concept | cycles/heron.toml | \\[nozzle\\] | [nozzle]\\nshape = \"trumpet\"",
                "concept | cycles/heron.toml | \\[cooling\\] | [cooling]\\ncells = 2.5",
                "concept | cycles/heron.toml | \\[cooling\\] | [cooling]\\ncells = 5",
                "concept | cycles/heron.toml | \\[cooling\\] | [cooling]\\nradiation = 1",
                "vehicle | cycles/vehicles/skerry.toml | payload = .* | payload = 12",
                "vehicle | cycles/vehicles/skerry.toml | name = .* | ",
                "vehicle | cycles/vehicles/skerry.toml | engines_out = 1 | engines_out = 30",
                "vehicle | cycles/vehicles/skerry.toml | gravity = .* | gravity = 1350",
                "study | cycles/studies/skerry-flown.toml | study = .* | study = \"dream\"",
                "study | cycles/studies/skerry-flown.toml | cases = .* | ",
                "study | cycles/studies/skerry-flown.toml | fly = true | fly = \"yes\""
            })
    void aBrokenFileIsNot(String kind, Path file, String line, String broken) throws IOException {
        String sound = Files.readString(file);
        String text = sound.replaceFirst("(?m)^" + line, broken == null ? "" : broken.replace("\\n", "\n"));
        assertThat(text).isNotEqualTo(sound);
        assertThat(faults(kind, text)).isNotEmpty();
    }
}
