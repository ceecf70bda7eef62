package dev.penstock.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

class EvidenceTest {

    @Test
    void aFigureFromMemoryCannotCallItselfPublished() {
        assertThat(Evidence.of("from memory", "[ito-1959] table 2")).isEqualTo(Evidence.FROM_MEMORY);
        assertThatThrownBy(() -> Evidence.of("published", "[ito-1959] table 2 (from memory)"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("write \"from memory\" as the kind");
    }

    @Test
    void anUnknownKindIsRefusedWithTheKindsThereAre() {
        assertThatThrownBy(() -> Evidence.of("measured", "[ito-1959]"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("kind \"measured\" is none of published, from memory, worked by hand");
    }

    @Test
    void anEngineIsAsGoodAsItsWeakestFigure() {
        Map<String, String> cells =
                new LinkedHashMap<>(PublishedEngine.named("RD-253").cells());
        assertThat(cells.get("confidence")).isEqualTo("published");
        cells.put("fuel_pump_speed_rpm", "13800");
        assertThatThrownBy(() -> new PublishedEngine(cells))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("its weakest figure is from memory, the row says published");
    }
}
