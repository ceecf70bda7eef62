package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.claims.file.ClaimsInputs;
import dev.penstock.input.Input;
import dev.penstock.study.StudyInputs;
import dev.penstock.vehicle.plan.VehicleInputs;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Files to start from run as they are, and show every input; a diagram is a picture. */
class NewFilesTest {

    @TempDir
    private Path folder;

    static Stream<Arguments> kinds() {
        return Stream.of(
                Arguments.of("vehicle", List.of("size"), VehicleInputs.FILE.all()),
                Arguments.of("claims", List.of("judge", "--samples", "20"), ClaimsInputs.FILE.all()),
                Arguments.of("study", List.of("study"), StudyInputs.FILE.all()));
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void whatIsWrittenRunsAndShowsEveryInput(String kind, List<String> next, Map<String, Input<?>> inputs)
            throws Exception {
        Path file = folder.resolve("mine.toml");
        Run written = Run.of("new", kind, file.toString());
        assertThat(written.code()).as(written.err()).isZero();
        assertThat(written.out()).contains("penstock " + next.get(0));
        String text = Files.readString(file);
        for (Input<?> input : inputs.values()) {
            assertThat(text).containsPattern("(?m)^(## |# )?" + input.key() + " = ");
        }
        Run run = Run.of(Stream.concat(Stream.of(next.get(0), file.toString()), next.subList(1, next.size()).stream())
                .toArray(String[]::new));
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).isNotEmpty();
    }

    @Test
    void aDiagramIsDrawnAsSvgAndAsAPicture() throws Exception {
        Path svg = folder.resolve("heron.svg");
        Path png = folder.resolve("heron.png");
        assertThat(Run.of("balance", "heron", "--diagram", svg.toString()).out())
                .contains("wrote " + svg);
        assertThat(Files.readString(svg))
                .startsWith("<svg")
                .contains("http://www.w3.org/2000/svg", "Flow diagram of Heron");
        assertThat(Run.of("balance", "heron", "--diagram", png.toString()).code())
                .isZero();
        BufferedImage picture = ImageIO.read(png.toFile());
        assertThat(picture.getWidth()).isEqualTo(1720);
        int dark = 0;
        for (int x = 0; x < picture.getWidth(); x++) {
            for (int y = 0; y < picture.getHeight(); y++) {
                dark += (picture.getRGB(x, y) & 0xff) < 128 ? 1 : 0;
            }
        }
        assertThat(dark).isGreaterThan(2000);
        assertThat(Run.of("balance", "heron", "--diagram", "heron.gif").problems())
                .singleElement()
                .asString()
                .contains("--diagram", "heron.gif", ".png");
    }
}
