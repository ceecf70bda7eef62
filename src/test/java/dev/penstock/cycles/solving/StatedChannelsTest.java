package dev.penstock.cycles.solving;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.combustion.species.SpeciesLibrary;
import dev.penstock.cooling.jacket.JacketSolver;
import dev.penstock.cooling.wall.WallLibrary;
import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.sheet.Models;
import dev.penstock.input.HomeFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StatedChannelsTest {

    /**
     * Conservation: 36 kg/s of hydrogen through 300 channels of 1.2 by 3 mm have 33,000 kg/(m² s), and with 2.6 m of wall, a friction
     * factor of 0.02 and 50 to 80 kg/m³ lose 2,000 to 3,300 bar.
     */
    @Test
    void whatNarrowChannelsTakeIsTold() throws IOException {
        Concept tern = tern();
        assertThat(StatedChannels.tooNarrow(tern, () -> Optional.of(balancer().firstGuess(tern)))
                        .orElseThrow())
                .contains("larger channel_height, channel_width or channel_count")
                .containsPattern("take about (2[0-9]{3}|3[0-3][0-9]{2}) bar");
    }

    @Test
    void nothingIsSaidOfChannelsThatAreSized() throws IOException {
        Concept sized = Concepts.READER.read(Path.of("cycles", "tern.toml"));
        assertThat(StatedChannels.tooNarrow(sized, () -> Optional.of(balancer().firstGuess(sized))))
                .isEmpty();
    }

    private static Balancer balancer() {
        Path home = HomeFolder.find();
        return new Balancer(new Models(SpeciesLibrary.open(home), new JacketSolver(WallLibrary.open(home))));
    }

    private static Concept tern() throws IOException {
        return Concepts.READER.parse(
                "tern.toml",
                Files.readString(Path.of("cycles", "tern.toml")),
                Map.of(
                        "engine.chamber_pressure", "18 MPa",
                        "cooling.channel_count", "300",
                        "cooling.channel_width", "1.2 mm",
                        "cooling.channel_height", "3 mm"));
    }
}
