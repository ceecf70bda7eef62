package dev.penstock.reports.slide;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.input.HomeFolder;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.chart.ChartFont;
import dev.penstock.study.EngineRuns;
import dev.penstock.study.VehicleRuns;
import dev.penstock.vehicle.reading.VehicleReader;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Drawings for an audience: of the sizes that are promised, with every word on the sheet, and with figures that are the engine's. */
class SlideFilesTest {

    private static final Pattern TEXT = Pattern.compile("<text([^>]*)>([^<]*)</text>");

    private static EngineBalance balance;
    private static Map<String, byte[]> files;

    @BeforeAll
    static void balanceGannet() {
        var home = HomeFolder.find();
        EngineRuns runs = new EngineRuns(home, FluidLibrary.open(home));
        Concept concept = runs.read(home.resolve("cycles/gannet.toml"), Map.of());
        balance = runs.study().balance(concept);
        Optional<VehicleSizing> vehicle =
                new VehicleReader(FluidLibrary.open(home)).of(concept).map(plan -> VehicleRuns.size(plan, balance));
        files = new SlideFiles("Gannet", EngineSlides.of(balance, vehicle)).files();
    }

    @Test
    void everyDrawingComesInTwoShapesTwoThemesAndTwoForms() throws IOException {
        // Five steps of the flow diagram, pressures, powers, cutaway, and the vehicle that the concept describes.
        assertThat(files).hasSize(9 * 8);
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            if (file.getKey().endsWith(".png")) {
                BufferedImage image = ImageIO.read(new ByteArrayInputStream(file.getValue()));
                assertThat(image.getHeight()).isEqualTo(1080);
                assertThat(image.getWidth()).isEqualTo(file.getKey().contains("wide") ? 1920 : 1080);
                int corner = image.getRGB(5, 1070) & 0xff;
                assertThat(corner > 128)
                        .as(file.getKey())
                        .isEqualTo(file.getKey().contains("light"));
            }
        }
    }

    @Test
    void everyWordLiesOnTheSheet() {
        int seen = 0;
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            if (!file.getKey().endsWith(".svg")) {
                continue;
            }
            Matcher text = TEXT.matcher(svg(file.getKey()));
            double right = file.getKey().contains("wide") ? 1920 : 1080;
            while (text.find()) {
                double x = attribute(text.group(1), " x");
                double y = attribute(text.group(1), " y");
                double size = size(text.group(1));
                assertThat(x).as(text.group(2)).isBetween(0.0, right);
                assertThat(x + ChartFont.width(text.group(2), size))
                        .as(file.getKey() + " " + text.group(2))
                        .isLessThan(right);
                assertThat(y).as(text.group(2)).isBetween(0.0, 1080.0);
                seen++;
            }
        }
        assertThat(seen).isGreaterThan(500);
    }

    @Test
    void stepsShowPartsInTheOrderInWhichTheyAreBuiltUp() {
        assertThat(svg("gannet-01-flow-tanks-wide-light.svg"))
                .contains("oxidizer tank")
                .doesNotContain(">oxidizer pump<");
        assertThat(svg("gannet-02-flow-pumps-wide-light.svg"))
                .contains(">oxidizer pump<")
                .doesNotContain(">fuel turbine<");
        assertThat(svg("gannet-03-flow-drive-wide-light.svg"))
                .contains(">fuel turbine<")
                .doesNotContain(">cooling jacket<");
        assertThat(svg("gannet-04-flow-jacket-wide-light.svg"))
                .contains(">cooling jacket<")
                .doesNotContain(">thrust chamber<");
        assertThat(svg("gannet-05-flow-chamber-wide-light.svg")).contains(">thrust chamber<");
    }

    @Test
    void sharesOfTheShaftPowerAddUpToWhatTheTurbinesGive() {
        String svg = svg("gannet-07-power-wide-light.svg");
        String shafts = svg.substring(svg.indexOf("Shaft power: turbines give "));
        double given = balance.turbines().stream().mapToDouble(t -> t.power()).sum();
        assertThat(shafts).startsWith("Shaft power: turbines give " + Notation.POWER.write(given));
        Matcher share = Pattern.compile(">([\\d.]+) ([kM])W, ").matcher(shafts);
        double sum = 0;
        while (share.find()) {
            sum += Double.parseDouble(share.group(1)) * (share.group(2).equals("M") ? 1e6 : 1e3);
        }
        // Each part is written to four digits.
        assertThat(sum / given).isBetween(0.999, 1.001);
    }

    private static String svg(String name) {
        return new String(files.get(name), StandardCharsets.UTF_8).replaceAll("\\s+", " ");
    }

    private static double attribute(String attributes, String name) {
        Matcher m = Pattern.compile(name + "=\"([-\\d.]+)\"").matcher(attributes);
        assertThat(m.find()).as(name + " in " + attributes).isTrue();
        return Double.parseDouble(m.group(1));
    }

    /** A size that only a group names is the largest of the sheet, to be on the safe side for short texts. */
    private static double size(String attributes) {
        Matcher m = Pattern.compile("font-size: ?([\\d.]+)").matcher(attributes);
        return m.find() ? Double.parseDouble(m.group(1)) : 20;
    }
}
