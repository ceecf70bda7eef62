package dev.penstock.reports.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sentence that report and local page share, for each way in which limits and warnings can stand. */
class LimitsSentenceTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            ignoreLeadingAndTrailingWhitespace = false,
            value = {
                "32|2|4|3|, but misses 2 of 32 limits.",
                "32|0|4|0| and keeps all 32 limits.",
                "32|0|4|3| and keeps all 32 limits; 3 of 4 warnings may change that.",
                "32|0|1|1| and keeps all 32 limits; a warning may change that.",
                "32|0|2|2| and keeps all 32 limits; 2 warnings may change that.",
            })
    void saysWhatIsKeptAndWhatMayChangeThat(int limits, int missed, int warnings, int doubts, String sentence) {
        assertThat(LimitsSentence.of(limits, missed, warnings, doubts)).isEqualTo(sentence);
    }
}
