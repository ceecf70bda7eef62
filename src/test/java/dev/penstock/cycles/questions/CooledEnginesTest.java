package dev.penstock.cycles.questions;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.cooling.jacket.JacketResult;
import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.Warning;
import dev.penstock.provenance.LimitCheck;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Cooled engines whose jackets once stood in the way of an answer. */
class CooledEnginesTest {

    private static EngineBalance demo(String file, Map<String, String> changes) throws IOException {
        return Concepts.STUDY.balance(Concepts.READER.parse(file, Files.readString(Path.of("cycles", file)), changes));
    }

    /** Stated channels that take more pressure than the first guess has before the jacket; the guess rises until the coolant passes. */
    @Test
    void statedChannelsBalanceAlthoughTheyTakeMoreThanTheFirstGuess() throws IOException {
        EngineBalance balance = demo(
                "tern.toml",
                Map.of(
                        "cooling.channel_count", "300",
                        "cooling.channel_width", "1.2 mm",
                        "cooling.channel_height", "10 mm"));
        JacketResult jacket = balance.cooling().get(0);
        assertThat(jacket.layout().count().orElseThrow()).isEqualTo(300);
        assertThat(jacket.pressureDrop()).isGreaterThan(2 * 13e6);
        assertThat(balance.engine().vacuumIsp()).isBetween(435.0, 455.0);
    }

    /** A small storable engine cooled by its fuel overheats it: a missed limit that says where. */
    @Test
    void anOverheatedCoolantIsAMissedLimit() {
        String text =
                """
                name = "Small"
                cycle = "pressure-fed"

                [propellants]
                oxidizer = "nitrogen-tetroxide"
                fuel = "mmh"
                mixture_ratio = 1.65

                [engine]
                thrust_vacuum = "500 N"
                chamber_pressure = "1 MPa"

                [nozzle]
                area_ratio = 60

                [cooling]
                coolant = "fuel"
                """;
        EngineBalance balance = Concepts.STUDY.balance(Concepts.READER.parse("small.toml", text, Map.of()));
        assertThat(balance.cooling().get(0).feasible()).isFalse();
        assertThat(balance.cooling().get(0).warnings())
                .extracting(Warning::message)
                .anyMatch(
                        m -> m.contains("heated beyond what its properties are known for") && m.contains("area ratio"));
    }

    /** A film lowers heat load and impulse together. */
    @Test
    void aFilmCoolsAndCosts() throws IOException {
        EngineBalance bare = demo("heron.toml", Map.of("cooling.film.fuel_fraction", "1e-5"));
        EngineBalance filmed = demo("heron.toml", Map.of());
        assertThat(filmed.cooling().get(0).heatLoad())
                .isLessThan(0.9 * bare.cooling().get(0).heatLoad());
        assertThat(filmed.engine().vacuumIsp()).isLessThan(bare.engine().vacuumIsp() - 0.5);
    }

    /** Whoever reads a kerosene engine is told what soot does to it. */
    @Test
    void aKeroseneEngineSpeaksOfSoot() throws IOException {
        assertThat(demo("heron.toml", Map.of()).cooling().get(0).warnings())
                .extracting(Warning::message)
                .anyMatch(m -> m.contains("soot on the wall takes"));
    }

    /** A wall thinner than usual keeps every limit far above the pressure of the demo: it must not lower the highest one. */
    @Test
    void aThinWallReachesHighPressure() throws IOException {
        EngineBalance thin =
                demo("tern.toml", Map.of("engine.chamber_pressure", "20 MPa", "cooling.wall_thickness", "0.4 mm"));
        assertThat(thin.cooling().get(0).limits()).allMatch(LimitCheck::met);
    }
}
