package dev.penstock.input;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dev.penstock.errors.InvalidInput;
import dev.penstock.provenance.Scatter;
import dev.penstock.provenance.Spread;
import dev.penstock.quantities.Dimension;
import dev.penstock.quantities.Range;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InputTest {

    private enum Shape {
        ROUND,
        EGG_SHAPED
    }

    private static final Input<Double> LENGTH = Input.quantity("length", Dimension.LENGTH, Range.of(0.1, 5), "Length")
            .example("\"1 m\"");
    private static final Input<Double> LOSS = Input.ratio("loss", Range.of(0, 1), "Loss")
            .usual(Usual.between(0.1, 0.2, 0.4, "a-source").because("as built"));
    private static final Input<Double> GUESS =
            Input.ratio("guess", Range.of(0, 1), "Guess").follows("from length").scatter(Scatter.factors(0.5, 3));
    private static final Input<Double> OPEN =
            Input.ratio("open", Range.of(0, 1), "Open").computed("by a model");
    private static final Input<Shape> SHAPE =
            Input.choice("shape", Shape.class, "Shape").usual(Usual.common(Shape.EGG_SHAPED));
    private static final InputGroup GROUP = InputGroup.table("part", "A part", LENGTH, LOSS, GUESS, OPEN, SHAPE);
    private static final InputGroup TOP = InputGroup.table("", "A file").with(GROUP);

    private static InputFile file(String part) {
        return InputFile.parse("case.toml", "[part]\n" + part, Map.of());
    }

    private static InputTable part(InputFile file) {
        return file.root().as(TOP).table("part");
    }

    @Test
    void aFileThatIsSilentGetsTheDefaultWithItsSpreadAndReason() {
        InputFile file = file("length = \"20 cm\"");
        InputTable part = part(file);
        assertThat(part.read(LENGTH)).isEqualTo(0.2);
        assertThat(part.read(LOSS)).isEqualTo(0.2);
        assertThat(part.read(GUESS, Usual.of(0.5, "two and a half lengths", "")))
                .isEqualTo(0.5);
        assertThat(part.number(OPEN)).isEmpty();
        assertThat(part.read(SHAPE)).isEqualTo(Shape.EGG_SHAPED);
        file.finish();

        List<InputValue> read = file.inputs();
        assertThat(read)
                .extracting(InputValue::key)
                .containsExactly("part.length", "part.loss", "part.guess", "part.open", "part.shape");
        assertThat(read).extracting(InputValue::value).containsExactly("0.2", "0.2", "0.5", "computed", "egg-shaped");
        assertThat(read).extracting(InputValue::given).containsExactly(true, false, false, false, false);
        assertThat(read.get(1).source()).isEqualTo("default: as built, a-source");
        assertThat(read.get(1).spread()).contains(new Spread(0.1, 0.2, 0.4));
        // three times the value in use is more than what is allowed
        assertThat(read.get(2).spread()).contains(new Spread(0.25, 0.5, 1));
        assertThat(read.get(3).spread()).isEmpty();
    }

    @Test
    void aMissingValueSaysWhatToWriteAndAWrongOneWhatIsAllowed() {
        InputFile file = file("loss = 1.5\nshape = \"square\"");
        InputTable part = part(file);
        assertThat(part.read(LENGTH)).isNaN();
        assertThat(part.read(LOSS)).isEqualTo(0.2);
        part.read(SHAPE);
        assertThat(catchThrowableOfType(InvalidInput.class, file::finish).problems())
                .extracting(InvalidInput.Problem::sentence)
                .containsExactly(
                        "case.toml:1: part.length is missing; write a length such as \"1.2 mm\"",
                        "case.toml:2: part.loss is 1.5; allowed is 0 to 1",
                        "case.toml:3: part.shape is \"square\"; allowed are round, egg-shaped");
    }

    @Test
    void unknownKeysAreComparedWithTheDeclaration() {
        InputFile file = file("lenght = \"1 m\"\nguess = 0.3");
        part(file);
        assertThat(catchThrowableOfType(InvalidInput.class, file::finish).problems())
                .extracting(InvalidInput.Problem::allowed)
                .containsExactly("did you mean length?", "it means nothing beside what else is chosen here");
    }

    @Test
    void whatIsNotDeclaredCannotBeRead() {
        InputTable part = part(file("length = \"1 m\""));
        Input<Double> other = Input.ratio("other", Range.FRACTION, "Other").usual(Usual.common(0.1));
        assertThatThrownBy(() -> part.read(other)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> part.table("inner")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> part.read(GUESS)).isInstanceOf(IllegalStateException.class);
    }

    /** Identities: conversions by definition of the units. */
    @ParameterizedTest
    @CsvSource({
        "0.2617993877991494, ANGLE, 15 deg",
        "2000000.0, PRESSURE, 2 MPa",
        "40000.0, PRESSURE, 40 kPa",
        "7.0E-4, LENGTH, 0.7 mm",
        "0.8, RATIO, 0.8"
    })
    void aValueReadsAsPeopleWriteIt(double value, Dimension dimension, String text) {
        InputFile file = InputFile.parse("case.toml", "", Map.of());
        Input<Double> input = Input.quantity("x", dimension, Range.ANY, "X").usual(Usual.common(value));
        file.root().as(InputGroup.table("", "A file", input)).read(input);
        InputValue read = file.inputs().get(0);
        assertThat(read.readable()).isEqualTo(text);

        InputFile again = InputFile.parse("case.toml", "x = " + read.toml().orElseThrow(), Map.of());
        assertThat(again.root().as(InputGroup.table("", "A file", input)).read(input))
                .isEqualTo(value);
    }

    @Test
    void boundsAreReadInTheUnitOfTheirInput() {
        InputFile file = InputFile.parse(
                "case.toml", "\"a.b\" = [\"10 cm\", \"0.2 m\", \"300 mm\"]\n\"c\" = [3, 2, 1]", Map.of());
        assertThat(file.root().spread("a.b", LENGTH)).contains(new Spread(0.1, 0.2, 0.3));
        assertThat(file.root().spread("c", LENGTH)).isEmpty();
        assertThat(file.sound()).isFalse();
    }
}
