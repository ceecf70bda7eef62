package dev.penstock.reports.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class JsonTextTest {

    @Test
    void keepsOrderKindsAndNulls() {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("b", List.of(1, 2.5));
        map.put("a", Map.of("flag", true));
        map.put("none", Optional.empty());
        map.put("some", Optional.of("x"));
        assertThat(JsonText.of(map).replaceAll("\\s", ""))
                .isEqualTo("{\"b\":[1,2.5],\"a\":{\"flag\":true},\"none\":null,\"some\":\"x\"}");
    }

    @Property(tries = 200)
    void anyTextComesBack(@ForAll String text) throws Exception {
        // a lone surrogate is no character and is replaced on writing
        net.jqwik.api.Assume.that(text.chars().noneMatch(c -> Character.isSurrogate((char) c)));
        String json = JsonText.of(Map.of("text", text));
        assertThat(new ObjectMapper().readTree(json).get("text").textValue()).isEqualTo(text);
    }

    @Property(tries = 200)
    void anyFiniteNumberComesBackExactly(@ForAll double number) throws Exception {
        String json = JsonText.of(Map.of("number", number));
        assertThat(new ObjectMapper().readTree(json).get("number").doubleValue())
                .isEqualTo(number);
    }

    @Test
    void refusesWhatJsonCannotSay() {
        assertThatThrownBy(() -> JsonText.of(Map.of("a", Map.of("b", Double.NaN))))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("/a/b is NaN");
        assertThatThrownBy(() -> JsonText.of(Map.of("a", new Object()))).isInstanceOf(IllegalStateException.class);
    }
}
